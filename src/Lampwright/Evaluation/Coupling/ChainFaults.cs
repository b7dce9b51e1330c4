using Lampwright.Design;
using Lampwright.Findings;
using Lampwright.Quantities;
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

    // What film, strip and wire resistors drift over their life under load (stability classes of IEC 60115-1, memory: 0.5 % to 2 %).
    private static readonly double Age = 0.01;

    /// <summary>Plays the faults of a light that has come to rest.</summary>
    public static ChainFaults Of(CoupledLight light, double[] row)
    {
        var inputs = light.Inputs;
        var (network, driver, part) = (inputs.Network, inputs.Driver, inputs.Steps.Part);
        double Hottest(int scene, int number) =>
            Enumerable.Range(0, light.Positions).Max(i => row[light.Place(scene, i) + number]);
        var airK = Hottest(Scene.AtHighestAmbient, PositionRow.CompartmentC) + ZeroC;
        var amps = Hottest(Scene.Normal, PositionRow.CurrentA);

        // What is given with a spread counts at the end that is worse.
        var limit = inputs.Parts.Emitter.CurrentMax is { } given
            ? Math.Max(0, given.Nominal - given.HalfWidth)
            : (double?)null;
        var tolerance = part.Tolerance.Nominal;
        var errors = DriverModel.MethodErrors(inputs.Threshold);
        var corners = new CornerSpec(
            tolerance,
            tolerance,
            inputs.Threshold.CornerShare,
            StepsMethods.MethodErrors.First(e => e.Name == "steps.lead_resistance").HalfWidth,
            StepsMethods.MethodErrors.First(e => e.Name == "steps.resistor_rise").HalfWidth,
            Math.Min(0.5, errors[1].HalfWidth),
            Age,
            Most(inputs.Parts.Driver?.Limit),
            Most(inputs.Parts.Driver?.OverVoltage)
        );
        var spec = new FaultsSpec(
            network.Spec,
            driver,
            inputs.StepsSpec.Driver,
            EmitterStraight.Of(
                inputs.Fit.Model,
                Math.Max(amps, 1e-3),
                Hottest(Scene.AtHighestAmbient, PositionRow.JunctionC) + ZeroC,
                limit
            ),
            airK,
            Corners: corners
        );
        var faults = network.SwitchCount > 0 ? FaultPlay.All(spec) : [];
        var least = Enumerable
            .Range(0, light.Positions)
            .Min(i => row[light.Place(Scene.Normal, i) + PositionRow.CurrentA]);
        var fuse = SupplysFuse(inputs.Design, inputs.Parts, Hottest(Scene.Normal, PositionRow.InputW));
        return new(
            faults,
            ChainBuilds.Of(spec, network, corners),
            WorstCorners.Of(network, driver, airK, corners),
            fuse,
            Plate(light, row),
            [.. FaultFindings.Judge(spec, faults, amps, least), .. FaultFindings.Judge(fuse, "place.supply")]
        );
    }

    private static double? Most(Value? given) => given is { } v ? v.Nominal + v.HalfWidth : null;

    private static FuseRow? SupplysFuse(LightDesign design, LightParts parts, double inputW)
    {
        if (design.Place.Supply is not { } supply || !(inputW > 0))
        {
            return null;
        }

        var volts = supply.Voltage.Nominal - supply.Voltage.HalfWidth;
        var isAc = supply.Kind == SupplyKind.Ac;
        var factor = parts.Driver?.PowerFactor?.Nominal is > 0.05 and <= 1 and var said ? said : (double?)null;
        return volts > 0 ? SupplyFuse.Of(inputW, volts, factor, isAc) : null;
    }

    // What was wanted; where nothing was, positions at least a third of a stop apart, which is what a photographer sees.
    private static List<string> Plate(CoupledLight light, double[] row)
    {
        double Lumens(int i) => row[light.Place(Scene.Normal, i) + PositionRow.FluxLm];
        var wanted = light.MetBy.Distinct().OrderByDescending(Lumens).ToList();
        if (wanted.Count == 0)
        {
            foreach (var i in (light.InTurn ?? [.. Enumerable.Range(0, light.Positions)]).OrderByDescending(Lumens))
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
