using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Heat;
using Lampwright.Heat.Life;
using Lampwright.Heat.Time;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out the box: skins, courses, cut-outs, hottest rooms, duty, life.</summary>
internal static class BoxBuild
{
    private static readonly double ZeroC = 273.15;
    private static readonly int Moments = 48;
    private static readonly double ShowsStops = 1.0 / 3;

    /// <summary>The answer; null where the light has no network or it came to no rest.</summary>
    public static BoxAnswer? Of(BoxStudy study, Bands bands)
    {
        if (study.Normal?.Kelvin is null || study.Hot?.Kelvin is null)
        {
            return null;
        }

        var banded = bands.Draws > 0;
        var place = study.Light.Inputs.Design.Place;
        BoxState?[] states = [study.Normal, study.Hot, study.Stopped, study.StoppedHot];
        return new BoxAnswer
        {
            Scenes =
            [
                .. states
                    .OfType<BoxState>()
                    .Where(s => s.Kelvin is not null)
                    .Select(s =>
                        SceneOf(
                            study,
                            s,
                            bands,
                            ReferenceEquals(s, study.Hot) || ReferenceEquals(s, study.StoppedHot)
                                ? place.AmbientMax.HalfWidth
                                : place.Ambient.HalfWidth
                        )
                    ),
            ],
            Flows = Flows(study.Normal),
            WarmUp = Curves(study, study.Normal, study.WarmsUnder, banded, place.Ambient.HalfWidth, study.HasFan),
            CoolDown = Curves(study, study.Normal, study.CoolsUnder, banded, place.Ambient.HalfWidth, false),
            FanStop = FanStopOf(study, banded),
            CutOuts = BoxCutOuts.Places(study),
            Played = BoxCutOuts.Played(study),
            RoomLimits = Rooms(study, bands),
            Duty = DutyOf(study),
            Life = LifeOf(study),
        };
    }

    /// <summary>Run and rest at the highest ambient.</summary>
    public static Duty DutyOf(BoxStudy study)
    {
        var hot = study.Hot!;
        var off = Heat.Network.LightNetwork.Of(hot.Dark);
        var advice = DutyCycle.Of(hot.Light.Network, off.Network, hot.Spec.AmbientK, study.PartLimits(hot.Light));
        var rests = advice.Share < 1;
        return new(
            hot.Spec.AmbientK - ZeroC,
            advice.Share,
            rests ? advice.OnS : null,
            rests ? advice.OffS : null,
            advice.What
        );
    }

    /// <summary>Loss of light over the years; null where no test is given.</summary>
    public static LifeAnswer? LifeOf(BoxStudy study)
    {
        var tests = study.Light.Inputs.Parts.Emitter.Maintenance;
        if (tests.Count == 0)
        {
            return null;
        }

        var caseC = study.At(Scene.Normal, study.Light.Brightest, PositionRow.CaseC);
        var claim = LumenMaintenance.Claim(
            [
                .. tests.Select(t => new MaintenanceTest(
                    t.Case.Nominal,
                    [.. t.Hours.Select(h => h.Nominal / 3600)],
                    [.. t.Shares.Select(s => s.Nominal)],
                    t.Samples
                )),
            ],
            caseC + ZeroC
        );
        return new(
            caseC,
            0.7,
            claim.ReportedH,
            double.IsFinite(claim.CalculatedH) ? claim.CalculatedH : null,
            claim.CapH,
            claim.IsCapped,
            claim.Fit is null
                ? []
                :
                [
                    .. Enumerable
                        .Range(0, 25)
                        .Select(i => claim.CapH * i / 24)
                        .Select(h => new LifePoint(h, claim.ShareAt(h) ?? 0)),
                ],
            claim.Why
        );
    }

    /// <summary>Every node of a state at rest.</summary>
    public static BoxScene SceneOf(BoxStudy study, BoxState state, Bands bands, double ambientHalfK)
    {
        var banded = bands.Draws > 0;
        var kelvin = state.Kelvin!;
        var n = state.Light;
        var halves =
            !banded ? new double[kelvin.Count]
            : ReferenceEquals(state, study.Hot) ? study.HotHalves
            : state.Halves(ambientHalfK);
        var skins = state.Skins(study.Map.Sheet, study.SinkIsOpen).ToDictionary(s => s.Node);
        var limits = study.PartLimits(n).ToDictionary(l => l.Node, l => l.Kelvin);
        var drawn = BoxDrawn.Of(study, state, bands);
        BoxNode NodeOf(int i)
        {
            // What the draws know is told with their band, here as everywhere.
            var at = drawn.TryGetValue(i, out var own) ? own : Celsius(kelvin[i], halves[i]);
            double? limit = limits.TryGetValue(i, out var most) ? most - ZeroC : null;
            if (skins.TryGetValue(i, out var skin))
            {
                return new(
                    n.Network.Nodes[i].Name,
                    "skin",
                    at,
                    Math.Min(limit ?? double.PositiveInfinity, skin.LimitK - ZeroC),
                    Finite(TouchLimits.LongestContactS(TouchStandard.Equipment, skin.Material, kelvin[i])),
                    Finite(TouchLimits.BurnsFromS(skin.Material, kelvin[i]))
                );
            }

            var air = n.Network.Nodes[i].Name.EndsWith("air", StringComparison.Ordinal);
            return new(n.Network.Nodes[i].Name, air ? "air" : "inside", at, limit, null, null);
        }

        return new(
            state.Name,
            state.Spec.AmbientK - ZeroC,
            [.. Enumerable.Range(0, kelvin.Count).Where(i => i != n.Room).Select(NodeOf)]
        );
    }

    private static IReadOnlyList<BoxFlow> Flows(BoxState state)
    {
        var network = state.Light.Network;
        var heats = network.LinkHeatsW(state.Kelvin!);
        return
        [
            .. network
                .Links.Zip(heats)
                .GroupBy(l => l.First.From < l.First.To ? (l.First.From, l.First.To) : (l.First.To, l.First.From))
                .Select(g => (g.Key, Sum: g.Sum(l => l.First.From == g.Key.Item1 ? l.Second : -l.Second)))
                .Select(g =>
                    g.Sum >= 0
                        ? new BoxFlow(network.Nodes[g.Key.Item1].Name, network.Nodes[g.Key.Item2].Name, g.Sum)
                        : new BoxFlow(network.Nodes[g.Key.Item2].Name, network.Nodes[g.Key.Item1].Name, -g.Sum)
                ),
        ];
    }

    private static HeatCurves Curves(
        BoxStudy study,
        BoxState state,
        Func<Heat.Network.NetworkFactors, HeatCourse?> under,
        bool banded,
        double ambientHalfK,
        bool fanRuns,
        IReadOnlyList<int>? more = null
    )
    {
        var times = CourseBand.Moments(1, 4 * 3600, Moments);
        var nodes = Lines(study, state, more);
        double? To90(HeatCourse? c)
        {
            if (c is null)
            {
                return null;
            }

            var (from, to) = (c.KelvinAt(state.Light.Base, 0), c.EndK[state.Light.Base]);
            return c.FirstS(state.Light.Base, from + (0.9 * (to - from)), to > from);
        }

        // The time to nine tenths is one more number that the errors move.
        List<HeatCourse?> seen = [];
        HeatCourse? Keep(Heat.Network.NetworkFactors f)
        {
            var course = under(f);
            seen.Add(course);
            return course;
        }

        var band = CourseBand.Of(fanRuns, times, nodes, Keep, banded, ambientHalfK);
        var all = seen.Select(To90).ToList();
        if (seen[0] is null)
        {
            return new([], [], Predicted.Sharp(0));
        }

        var (to90, square) = (all[0] ?? 0, 0.0);
        foreach (var t in all.Skip(1))
        {
            square += t is { } at ? (at - to90) * (at - to90) : 0;
        }

        return new(
            times,
            [
                .. nodes.Select(
                    (node, k) =>
                        new HeatLine(
                            state.Light.Network.Nodes[node].Name,
                            [.. band.Kelvin[k].Select(t => t - ZeroC)],
                            [.. band.Kelvin[k].Zip(band.HalfK[k], (t, h) => t - h - ZeroC)],
                            [.. band.Kelvin[k].Zip(band.HalfK[k], (t, h) => t + h - ZeroC)]
                        )
                ),
            ],
            new(to90, Math.Max(0, to90 - Math.Sqrt(square)), to90 + Math.Sqrt(square))
        );
    }

    // What a drawing shows: the way of the heat, the driver, the front, and the hottest skin.
    private static IReadOnlyList<int> Lines(BoxStudy study, BoxState state, IReadOnlyList<int>? more)
    {
        var n = state.Light;
        var skin = state
            .Skins(study.Map.Sheet, study.SinkIsOpen)
            .Select(s => s.Node)
            .Where(i => i != n.Diffuser)
            .OrderByDescending(i => state.Kelvin![i])
            .Take(1);
        return
        [
            .. new[] { n.Junction, n.Case, n.Base, n.ChannelAir, n.CompartmentAir, n.Driver, n.Reflector, n.Diffuser }
                .Concat(skin)
                .Concat(more ?? [])
                .Where(i => i >= 0)
                .Distinct(),
        ];
    }

    private static FanStop? FanStopOf(BoxStudy study, bool banded)
    {
        if (
            study.StoppedHot is not { Kelvin: not null } stopped
            || study.FanStops is not { } course
            || study.Hot is not { } hot
        )
        {
            return null;
        }

        var skins = stopped.Skins(study.Map.Sheet, study.SinkIsOpen).ToList();
        var firstSkin = skins
            .Select(s => (s.Node, s.LimitK, At: course.FirstS(s.Node, s.LimitK)))
            .Where(s => s.At is not null)
            .OrderBy(s => s.At)
            .FirstOrDefault();
        var half = study.Light.Inputs.Design.Place.AmbientMax.HalfWidth;
        Predicted? Time(int node, double limitK) =>
            course.FirstS(node, limitK) is { } at ? Spread(study, course, node, limitK, at, banded) : null;
        var junction = Time(stopped.Light.Junction, study.JunctionMaxK);
        var at = Math.Min(stopped.Kelvin[stopped.Light.Junction], study.JunctionMaxK);
        var emitter = study.HeatAt(Scene.AtHighestAmbient, false).Emitter;
        var loss = Math.Log2(emitter.FluxLm(hot.Kelvin![hot.Light.Junction]) / Math.Max(emitter.FluxLm(at), 1e-9));
        List<FanStopEvent> events = [new(0, "the fan stops")];
        events.AddRange(
            study
                .FaultLimits()
                .Select(l => (l.What, At: course.FirstS(l.Node, l.Kelvin)))
                .Where(l => l.At is not null)
                .Select(l => new FanStopEvent(l.At!.Value, $"{l.What} over its limit"))
        );
        events.AddRange(
            BoxCutOuts
                .Played(study)
                .Where(p => p.TripsAfterS is not null)
                .Select(p => new FanStopEvent(p.TripsAfterS!.Value, $"cut-out {p.Name} opens the driver's input"))
        );
        return new(
            stopped.Spec.AmbientK - ZeroC,
            Curves(study, stopped, study.FanStopsUnder, banded, half, false),
            junction,
            firstSkin.At is null ? null : Time(firstSkin.Node, firstSkin.LimitK),
            firstSkin.At is null ? "" : stopped.Light.Network.Nodes[firstSkin.Node].Name,
            double.IsFinite(loss) ? loss : 0,
            loss >= ShowsStops,
            [.. events.OrderBy(e => e.TimeS)]
        );
    }

    // Errors move a crossing by what they move the temperature there over how fast it rises; late in a flat course that is for ever.
    private static Predicted Spread(BoxStudy study, HeatCourse course, int node, double limitK, double at, bool banded)
    {
        if (!banded)
        {
            return Predicted.Sharp(at);
        }

        double early = 0,
            late = 0;
        foreach (var (error, with) in Heat.Network.NetworkFactors.All(false))
        {
            var worse = study.FanStopsUnder(with(Heat.Network.NetworkFactors.Nominal, 1 + error.HalfWidth));
            var better = study.FanStopsUnder(with(Heat.Network.NetworkFactors.Nominal, 1 / (1 + error.HalfWidth)));
            var moved = new[] { worse, better }
                .OfType<HeatCourse>()
                .Select(c => c.FirstS(node, limitK) ?? course.EndS)
                .Append(at)
                .ToList();
            early += Math.Pow(at - moved.Min(), 2);
            late += Math.Pow(moved.Max() - at, 2);
        }

        return new(at, Math.Max(0, at - Math.Sqrt(early)), Math.Min(course.EndS, at + Math.Sqrt(late)));
    }

    private static IReadOnlyList<RoomLimit> Rooms(BoxStudy study, Bands bands)
    {
        var light = study.Light;
        var room = study.AmbientC(Scene.AtHighestAmbient);
        var list = new List<RoomLimit>();
        foreach (var i in StepsBuild.Order(light, bands))
        {
            var row = light.Place(Scene.AtHighestAmbient, i);
            var junction = bands.At(row + PositionRow.JunctionMarginK);
            List<(string What, Predicted Margin)> margins = [("junction", junction)];
            if (study.State(Scene.AtHighestAmbient, study.HasFan, "hot", i) is { Kelvin: { } kelvin } state)
            {
                var names = state.Light.Network.Nodes;
                var others = study
                    .PartLimits(state.Light)
                    .Where(l => l.Node != state.Light.Junction)
                    .Select(l => (l.Node, l.Kelvin))
                    .Concat(state.Skins(study.Map.Sheet, study.SinkIsOpen).Select(s => (s.Node, Kelvin: s.LimitK)));
                foreach (var (node, limit) in others)
                {
                    // The band of a dimmer position is that of the brightest, by its share of the rise.
                    var share = study.Hot is { Kelvin: { } full } h
                        ? (kelvin[node] - state.Spec.AmbientK) / Math.Max(full[node] - h.Spec.AmbientK, 1e-3)
                        : 0;
                    var half = bands.Draws > 0 ? study.HotHalves[node] * share : 0;
                    var margin = limit - kelvin[node];
                    margins.Add((names[node].Name, new(margin, margin - half, margin + half)));
                }
            }

            var (what, least) = margins.MinBy(m => m.Margin.Value);
            list.Add(new(light.Inputs.Network.Switches(i), least.In(1, room), what));
        }

        return list;
    }

    private static double? Finite(double? s) => s is { } v && double.IsFinite(v) ? v : null;

    private static Predicted Celsius(double kelvin, double half) =>
        new(kelvin - ZeroC, kelvin - half - ZeroC, kelvin + half - ZeroC);
}
