using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Steps;
using Lampwright.Steps.Board;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out the answer of the station steps.</summary>
internal static class StepsBuild
{
    public static StepsAnswer Of(CoupledLight light, Bands bands, ChainFaults? faults = null)
    {
        var inputs = light.Inputs;
        ResistorPart[] parts = [inputs.Network.Spec.Fixed, .. inputs.Network.Spec.Switched];
        return new StepsAnswer
        {
            SenseThresholdV = bands.At(light.CommonPlace(CommonRow.ThresholdV)),
            ThresholdIsPlausible = inputs.Threshold.Likelihood == ThresholdLikelihood.Plausible,
            ChosenBy = inputs.ChosenBy,
            Arrangement = inputs.Network.Spec.Arrangement switch
            {
                Arrangement.ParallelBranches => "parallel branches",
                Arrangement.Selector => "selector",
                _ => "series chain",
            },
            LeadOhm = bands.At(light.CommonPlace(CommonRow.LeadOhm)),
            Parts = [.. parts.Select((p, k) => Part(light, bands, p, k))],
            Combinations =
            [
                .. Order(light, bands).Select(i => Position(light, bands, i) with { Corner = faults?.Corners[i] }),
            ],
            Faults = faults?.Faults ?? [],
            // No wire may leave such a driver: then there is nothing to solder and nothing to measure under power.
            Build = BoardStops.Of(inputs.StepsSpec.Driver).Count > 0 ? null : faults?.Build,
            Fuse = faults?.Fuse,
            Recommended = faults?.Recommended ?? [],
            Targets =
            [
                .. Enumerable
                    .Range(0, light.Wanted.Count)
                    .Select(k => new TargetMatch(
                        light.Wanted.Words(k),
                        bands.At(light.WantedPlace(k)),
                        inputs.Network.Switches(light.MetBy[k]),
                        bands.At(light.WantedPlace(k) + 1)
                    )),
            ],
        };
    }

    private static ChainPart Part(CoupledLight light, Bands bands, ResistorPart part, int k)
    {
        var rows = Enumerable.Range(0, light.Soldered.Count).Where(i => light.Soldered[i].Position == k).ToArray();
        ChainPart One(int i, string name, double share) =>
            new(
                name,
                light.Soldered[i].Part.Ohm,
                light.Soldered[i].Part.RatingW,
                bands.At(light.PartPlace(i, PartRow.MostW)).In(share),
                bands.At(light.PartPlace(i, PartRow.DeratedW)).In(share),
                bands.At(light.PartPlace(i, PartRow.HottestC))
            );
        if (part.Pair is not { } pair)
        {
            return One(rows[0], $"R{k}", 1);
        }

        // The position as the part that comes to its limit first sees it: power and limit over that part's share.
        ChainPart[] both = [One(rows[0], $"R{k}a", 1), One(rows[1], $"R{k}b", 1)];
        double Load(ChainPart p) => p.MostW.Value / Math.Max(p.DeratedW.Value, 1e-9);
        var first = Load(both[0]) >= Load(both[1]) ? 0 : 1;
        return One(rows[first], $"R{k}", 1 / light.Soldered[rows[first]].Share) with
        {
            ResistanceOhm = part.Ohm,
            RatingW = part.RatingW,
            HottestC = both.MaxBy(p => p.HottestC.Value)!.HottestC,
            Joined = pair.Joint == Steps.ChainProof.Joint.Parallel ? "parallel" : "series",
            Pair = both,
        };
    }

    /// <summary>Positions from the brightest to the dimmest at nominal values.</summary>
    public static IEnumerable<int> Order(CoupledLight light, Bands bands) =>
        Enumerable
            .Range(0, light.Positions)
            .OrderByDescending(i => bands.At(light.Place(Scene.Normal, i) + PositionRow.CurrentA).Value)
            .ThenByDescending(i => i);

    private static Answers.Combination Position(CoupledLight light, Bands bands, int i)
    {
        var normal = light.Place(Scene.Normal, i);
        Predicted At(int number) => bands.At(normal + number);
        Predicted In(int scene, int number) => bands.At(light.Place(scene, i) + number);
        return new Answers.Combination
        {
            Switches = light.Inputs.Network.Switches(i),
            ResistanceOhm = At(PositionRow.ResistanceOhm),
            CurrentA = At(PositionRow.CurrentA),
            VoltageV = At(PositionRow.VoltageV),
            EmitterW = At(PositionRow.EmitterW),
            FluxLm = At(PositionRow.FluxLm),
            FluxOutLm = At(PositionRow.FluxOutLm),
            LuxAtSubject = At(PositionRow.Lux),
            Share = Math.Pow(2, At(PositionRow.Stops).Value),
            Stops = At(PositionRow.Stops),
            Ev = At(PositionRow.Ev),
            Aperture = At(PositionRow.Aperture),
            JunctionC = At(PositionRow.JunctionC),
            JunctionHotC = In(Scene.AtHighestAmbient, PositionRow.JunctionC),
            JunctionFanStoppedC = In(Scene.FanStopped, PositionRow.JunctionC),
            DriverLossW = At(PositionRow.DriverLossW),
            InputW = At(PositionRow.InputW),
            ResistorsW = [.. Enumerable.Range(0, light.Resistors).Select(k => At(PositionRow.FirstResistorW + k))],
            CurrentMarginA = At(PositionRow.CurrentMarginA),
            JunctionMarginK = In(Scene.AtHighestAmbient, PositionRow.JunctionMarginK),
        };
    }
}
