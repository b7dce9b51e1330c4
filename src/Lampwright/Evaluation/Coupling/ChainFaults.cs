using Lampwright.Design;
using Lampwright.Findings;
using Lampwright.Steps;
using Lampwright.Steps.Faults;

namespace Lampwright.Evaluation.Coupling;

/// <summary>What follows from the chain as it is built: its faults, its corners, what is soldered. Computed once, at nominal.</summary>
/// <param name="Faults">Every single fault, the worst first; empty for a chain without switches.</param>
/// <param name="Build">What is soldered.</param>
/// <param name="Corners">Worst corners, in the order of the network.</param>
/// <param name="Fuse">Fuse of the supply; null where the supply is not known.</param>
/// <param name="Recommended">Positions for the switch plate, brightest first.</param>
/// <param name="Findings">What is to be said.</param>
internal sealed record ChainFaults(
    IReadOnlyList<FaultResult> Faults,
    ChainBuild Build,
    IReadOnlyList<WorstCorner> Corners,
    FuseRow? Fuse,
    IReadOnlyList<string> Recommended,
    IReadOnlyList<Finding> Findings
)
{
    private static readonly double ZeroC = 273.15;

    // A power factor where the label does not say one: single-stage drivers without correction (common practice, no source).
    private static readonly double PowerFactor = 0.6;

    /// <summary>Plays the faults of a light that has come to rest.</summary>
    public static ChainFaults Of(CoupledLight light, double[] row)
    {
        var inputs = light.Inputs;
        var (network, driver, part) = (inputs.Network, inputs.Driver, inputs.Steps.Part);
        double Most(int scene, int number) =>
            Enumerable.Range(0, light.Positions).Max(i => row[light.Place(scene, i) + number]);
        var airK = Most(Scene.AtHighestAmbient, PositionRow.CompartmentC) + ZeroC;
        var amps = Most(Scene.Normal, PositionRow.CurrentA);
        var limit = inputs.Parts.Emitter.CurrentMax?.Nominal;
        var spec = new FaultsSpec(
            network.Spec,
            driver,
            inputs.StepsSpec.Driver,
            EmitterStraight.Of(
                inputs.Fit.Model,
                Math.Max(amps, 1e-3),
                Most(Scene.AtHighestAmbient, PositionRow.JunctionC) + ZeroC,
                limit
            ),
            airK
        );
        var tolerance = part.Tolerance.Nominal;
        var errors = DriverModel.MethodErrors(inputs.Threshold);
        var corners = new CornerSpec(
            tolerance,
            inputs.FixedIsOnBoard ? 0 : tolerance,
            Math.Min(0.5, errors[0].HalfWidth),
            StepsMethods.MethodErrors.First(e => e.Name == "steps.lead_resistance").HalfWidth,
            StepsMethods.MethodErrors.First(e => e.Name == "steps.resistor_rise").HalfWidth
        );
        var faults = network.SwitchCount > 0 ? FaultPlay.All(spec) : [];
        var least = Enumerable
            .Range(0, light.Positions)
            .Min(i => row[light.Place(Scene.Normal, i) + PositionRow.CurrentA]);
        return new(
            faults,
            ChainBuilds.Of(spec, network, corners),
            WorstCorners.Of(network, driver, airK, corners),
            SupplysFuse(inputs.Design, inputs.Parts, Most(Scene.Normal, PositionRow.InputW)),
            Plate(light, row),
            [.. FaultFindings.Judge(spec, faults, amps, least)]
        );
    }

    private static FuseRow? SupplysFuse(LightDesign design, LightParts parts, double inputW)
    {
        if (design.Place.Supply is not { } supply || !(inputW > 0))
        {
            return null;
        }

        var volts = supply.Voltage.Nominal - supply.Voltage.HalfWidth;
        var isAc = supply.Kind == SupplyKind.Ac;
        var factor = isAc ? Math.Clamp(parts.Driver?.PowerFactor?.Nominal ?? PowerFactor, 0.05, 1) : 1;
        return volts > 0 ? SupplyFuse.Of(inputW, volts, factor, isAc) : null;
    }

    // What was wanted; where nothing was, positions at least a third of a stop apart, which is what a photographer sees.
    private static List<string> Plate(CoupledLight light, double[] row)
    {
        double Lumens(int i) => row[light.Place(Scene.Normal, i) + PositionRow.FluxLm];
        var wanted = light.Nearest.Distinct().OrderByDescending(Lumens).ToList();
        if (wanted.Count == 0)
        {
            foreach (var i in Enumerable.Range(0, light.Positions).OrderByDescending(Lumens))
            {
                if (wanted.Count == 0 || (Lumens(i) > 0 && Math.Log2(Lumens(wanted[^1]) / Lumens(i)) >= 1.0 / 3))
                {
                    wanted.Add(i);
                }
            }
        }

        return [.. wanted.Select(light.Inputs.Network.Switches)];
    }
}
