using Lampwright.Evaluation.Answers;
using Lampwright.Heat.Time;

namespace Lampwright.Evaluation.Boxes;

/// <summary>Where a thermal cut-out could sit, and what those of the design file do.</summary>
internal static class BoxCutOuts
{
    private static readonly double ZeroC = 273.15;

    // Emitter and place do not rise together exactly: a share of what lies between them (common practice, no source).
    private static readonly double DifferenceError = 0.15;

    /// <summary>Advice for each place that is computed; empty without a fan.</summary>
    public static IReadOnlyList<CutOutPlace> Places(BoxStudy study)
    {
        if (study.FanStops is not { } course || study.Hot is not { } hot)
        {
            return [];
        }

        var names = new List<string> { "sink base", "emitter case" };
        if (hot.Light.ChannelAir >= 0)
        {
            names.Add("channel air");
            var wall = study
                .Map.Sheet.Panels.Where(p => p.Zone == Heat.Network.PanelZone.Channel)
                .MaxBy(p => hot.Kelvin?[hot.Light.Network.IndexOf(p.Name)] ?? 0);
            names.AddRange(wall is null ? [] : [wall.Name]);
        }

        // The sheet that the sink lies on is where a screw holds a disc most easily.
        names.AddRange(study.Map.Sheet.Seats.Select(s => study.Map.Sheet.Panels[s.Panel].Name));
        var found = names
            .Select(name => (Name: name, Window: Window(study, course, name, CutOut.UsualToleranceK, CutOut.UsualLagS)))
            .Where(w => w.Window is not null)
            .ToList();
        // The base is where a hand finds it: another place must have five kelvin more room.
        double Room(string name, CutOutWindow w) =>
            (double.IsInfinity(w.MostK) ? 0 : w.MostK - w.LeastK) + (name == "sink base" ? CutOut.MarginK : 0);
        var best = found
            .Where(w => w.Window!.SettingK is not null)
            .OrderByDescending(w => Room(w.Name, w.Window!))
            .Select(w => w.Name)
            .FirstOrDefault();
        return [.. found.Select(w => Told(w.Name, w.Window!, w.Name == best))];
    }

    /// <summary>The cut-outs of the design file, played through; those whose place is unknown are left out.</summary>
    public static IReadOnlyList<CutOutPlayed> Played(BoxStudy study)
    {
        var list = new List<CutOutPlayed>();
        foreach (var cutOut in study.Light.Inputs.Design.CutOuts)
        {
            if (cutOut.Opens is not { } opens || study.Hot is not { } hot || hot.Kelvin is null)
            {
                continue;
            }

            var lag = cutOut.Lag?.Nominal ?? CutOut.UsualLagS;
            var place = BoxStudy.NodeOf(hot.Light, cutOut.Place);
            if (place < 0)
            {
                continue;
            }

            var normalK = hot.Kelvin[place] + study.HotHalves[place];
            var tolerance = opens.HalfWidth;
            var tripsInUse = opens.Nominal - tolerance < normalK + CutOut.MarginK;
            double? trips = null,
                junction = null;
            var verdict =
                tripsInUse ? "trips in normal use"
                : study.HasFan && study.FanStops is null ? "not known"
                : "not needed";
            if (study.FanStops is { } course && Window(study, course, cutOut.Place, tolerance, lag) is { } window)
            {
                trips = CutOut.TripsS(course, place, opens.Nominal + tolerance, lag);
                junction = trips is { } at ? course.KelvinAt(hot.Light.Junction, at) - ZeroC : null;
                var late = window.HarmS is not null && opens.Nominal > window.MostK;
                verdict =
                    late ? "too late"
                    : tripsInUse ? "trips in normal use"
                    : window.HarmS is not null ? "protects"
                    : "not needed";
            }

            list.Add(
                new(
                    cutOut.Name,
                    cutOut.Place,
                    opens.Nominal - ZeroC,
                    tolerance,
                    normalK - ZeroC,
                    trips,
                    junction,
                    verdict
                )
            );
        }

        return list;
    }

    private static CutOutWindow? Window(BoxStudy study, HeatCourse course, string name, double tolerance, double lag)
    {
        var hot = study.Hot!;
        var place = BoxStudy.NodeOf(hot.Light, name);
        if (place < 0 || hot.Kelvin is not { } rest)
        {
            return null;
        }

        // The limits come nearer by what is not known of the difference between what is harmed and where it is felt.
        var limits = study
            .FaultLimits()
            .Select(l =>
                l with
                {
                    Kelvin = Math.Max(
                        rest[l.Node] + 0.1,
                        l.Kelvin
                            - (
                                DifferenceError
                                * Math.Abs(
                                    l.Kelvin - course.KelvinAt(place, course.FirstS(l.Node, l.Kelvin) ?? course.EndS)
                                )
                            )
                    ),
                }
            )
            .ToList();
        return CutOut.Window(course, place, rest[place] + study.HotHalves[place], limits, tolerance, lag);
    }

    private static CutOutPlace Told(string name, CutOutWindow w, bool best) =>
        new(
            name,
            w.NormalK - ZeroC,
            w.LeastK - ZeroC,
            double.IsFinite(w.MostK) ? w.MostK - ZeroC : null,
            w.SettingK - ZeroC,
            w.TripsAfterS,
            w.HarmS,
            w.HarmWhat,
            best
        );
}
