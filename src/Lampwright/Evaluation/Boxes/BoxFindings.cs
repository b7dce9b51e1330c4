using System.Globalization;
using Lampwright.Evaluation.Build;
using Lampwright.Findings;
using Lampwright.Heat;
using Lampwright.Heat.Network;
using Lampwright.Heat.Time;

namespace Lampwright.Evaluation.Boxes;

/// <summary>What a foreman would say of the box: skins, neighbours, cut-outs, rest, life.</summary>
internal static class BoxFindings
{
    private static readonly double ZeroC = 273.15;

    // Hands touch the light to aim it: a few seconds.
    private static readonly double TouchS = 5;

    /// <summary>All findings of a box.</summary>
    public static IEnumerable<Finding> Of(BoxStudy study)
    {
        if (study.Hot is not { } hot)
        {
            return [];
        }

        var stuck = new[] { hot, study.StoppedHot, study.Stopped }
            .OfType<BoxState>()
            .FirstOrDefault(s => s.Kelvin is null);
        return stuck is null
            ?
            [
                .. Skins(study),
                .. Driver(study, hot),
                .. Rest(study, hot),
                .. CutOuts(study),
                .. Life(study),
                .. Bands(study),
            ]
            : [NotSolved(study.Light.Inputs.Parts.SinkPath, stuck)];
    }

    /// <summary>Errors that the bands do not carry; null where they carry all.</summary>
    public static Finding? LeftOut(string path, IReadOnlyList<string> errors) =>
        errors.Count == 0
            ? null
            : BoxRules.BandLeavesOut.At(
                path,
                $"With {string.Join(", ", errors)} at either end of what it may be no answer is found, so that no band holds it."
            );

    /// <summary>A state that came to no rest.</summary>
    public static Finding NotSolved(string path, BoxState state) =>
        BoxRules.NotSolved.At(
            path,
            string.Create(
                CultureInfo.InvariantCulture,
                $"After {state.Solve.Passes} passes {state.Solve.WorstNode} still keeps {state.Solve.ResidualW:G3} W."
            ),
            scene: state.Name
        );

    // One finding for the hottest panel of a part in a scene; the sink and the front itself are told elsewhere.
    private static IEnumerable<Finding> Skins(BoxStudy study)
    {
        foreach (var state in new[] { study.Hot, study.Stopped }.OfType<BoxState>())
        {
            var kelvin = state.Kelvin!;
            var hottest = state
                .Skins(study.Map.Sheet, false)
                .Where(s => s.Node != state.Light.Diffuser)
                .GroupBy(s => state.Light.Network.Nodes[s.Node].Name.Split('.')[0], StringComparer.Ordinal)
                .Select(g => (Part: g.Key, Skin: g.MaxBy(s => kelvin[s.Node])));
            foreach (var (part, skin) in hottest)
            {
                if (HeatFindings.Surface(kelvin[skin.Node], skin.Material, TouchS, "part." + part, state.Name) is { } f)
                {
                    yield return f;
                }
            }
        }
    }

    private static IEnumerable<Finding> Driver(BoxStudy study, BoxState hot)
    {
        var together = hot.Kelvin![hot.Light.Driver] - ZeroC;
        var most = study.DriverMaxK - ZeroC;
        if (together <= most)
        {
            yield break;
        }

        // The same box with emitter and front dark is the driver by itself.
        var dark = hot.Dark with
        {
            DriverW = hot.Spec.DriverW,
            Resistors = hot.Spec.Resistors,
        };
        var by = LightNetwork.Of(dark);
        if (
            by.Network.Steady([.. hot.Kelvin]).Result is { } rest
            && rest.Kelvin[by.Driver] - ZeroC is var alone
            && alone <= most
        )
        {
            yield return BoxRules.DriverHeatedByNeighbours.At(
                study.Light.Inputs.Parts.DriverPath + ".case_max",
                $"With the heat that sheet and joints bring the driver's case comes to {C(together)}, alone to {C(alone)}.",
                C(together),
                C(most),
                hot.Name
            );
        }
    }

    private static IEnumerable<Finding> Rest(BoxStudy study, BoxState hot)
    {
        if (study.PartLimits(hot.Light).All(l => hot.Kelvin![l.Node] <= l.Kelvin))
        {
            yield break;
        }

        var duty = BoxBuild.DutyOf(study);
        yield return BoxRules.MustRest.At(
            study.Light.Inputs.Parts.EmitterPath,
            duty is { OnS: { } on, OffS: { } off } && on > 0
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"At {duty.AmbientC:0} °C and the brightest position: {Minutes(on)} on, {Minutes(off)} off; {duty.What} is what limits it."
                )
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"At {duty.AmbientC:0} °C the brightest position may not burn at all; {duty.What} is what limits it."
                ),
            string.Create(CultureInfo.InvariantCulture, $"{100 * duty.Share:0} %"),
            "100 %",
            hot.Name
        );
    }

    private static IEnumerable<Finding> CutOuts(BoxStudy study)
    {
        var design = study.Light.Inputs.Design;
        foreach (var cutOut in design.CutOuts)
        {
            var path = "cutout." + cutOut.Name;
            if (cutOut.In != "driver input")
            {
                yield return BoxRules.CutOutInWrongLine.At(
                    path + ".in",
                    $"It opens the {cutOut.In}.",
                    cutOut.In,
                    "driver input"
                );
            }

            if (BoxStudy.NodeOf(study.Hot!.Light, cutOut.Place) < 0)
            {
                yield return BoxRules.CutOutPlaceUnknown.At(
                    path + ".place",
                    $"Nothing is computed at \"{cutOut.Place}\"."
                );
            }
        }

        if (design.CutOuts.Any(c => c.Opens is not null))
        {
            foreach (var played in BoxCutOuts.Played(study))
            {
                var path = $"cutout.{played.Name}.opens";
                var setting = string.Create(
                    CultureInfo.InvariantCulture,
                    $"{played.OpensC:0} °C ± {played.ToleranceK:0.#} K"
                );
                if (played.Verdict == "too late")
                {
                    yield return BoxRules.CutOutTooLate.At(
                        path,
                        played.TripsAfterS is { } at
                            ? $"After the fan has stopped on the hottest day it opens after {Minutes(at)} at the latest, when something is past its limit."
                            : "After the fan has stopped on the hottest day it never opens, although something passes its limit.",
                        setting,
                        scene: "fan stopped, hot"
                    );
                }
                else if (played.Verdict == "trips in normal use")
                {
                    yield return BoxRules.CutOutTripsInUse.At(
                        path,
                        $"Its place comes to {C(played.NormalC)} in normal use on the hottest day.",
                        setting,
                        C(played.NormalC),
                        "hot"
                    );
                }
            }
        }
        else if (
            Harms(study)
            && BoxCutOuts.Places(study) is { Count: > 0 } places
            && places.All(p => p.SettingC is null)
        )
        {
            var best = places.MaxBy(p => (p.MostC ?? 1e3) - p.LeastC)!;
            yield return BoxRules.NoCutOutSetting.At(
                "fan." + (study.Light.Inputs.Parts.Fan?.Name ?? "main"),
                $"At the best place, {best.Place}, it must lie above {C(best.LeastC)} not to trip in use and below {C(best.MostC ?? 0)} to trip before {best.Harm} is harmed.",
                C(best.LeastC),
                C(best.MostC ?? 0),
                "fan stopped, hot"
            );
        }
    }

    private static bool Harms(BoxStudy study) =>
        study.StoppedHot is { Kelvin: { } stopped } && study.FaultLimits().Any(l => stopped[l.Node] > l.Kelvin);

    private static IEnumerable<Finding> Life(BoxStudy study)
    {
        if (BoxBuild.LifeOf(study) is { Why.Length: > 0 } life)
        {
            yield return BoxRules.LifeNotClaimed.At(
                study.Light.Inputs.Parts.EmitterPath + ".maintenance",
                $"The case of the emitter comes to {C(life.CaseC)}; {life.Why}."
            );
        }
    }

    private static IEnumerable<Finding> Bands(BoxStudy study) =>
        LeftOut(study.Light.Inputs.Parts.SinkPath, study.UnfollowedErrors()) is { } finding ? [finding] : [];

    private static string Minutes(double s) =>
        s < 120
            ? s.ToString("0", CultureInfo.InvariantCulture) + " s"
            : (s / 60).ToString("0", CultureInfo.InvariantCulture) + " min";

    private static string C(double celsius) => celsius.ToString("0", CultureInfo.InvariantCulture) + " °C";
}
