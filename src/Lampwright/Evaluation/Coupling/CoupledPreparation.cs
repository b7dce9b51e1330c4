using Lampwright.Design;
using Lampwright.Evaluation.Maps;
using Lampwright.Findings;
using Lampwright.Heat;
using Lampwright.Light;
using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Lets steps, heat and light look at a design's nominal values and gathers what the coupled light is made of.</summary>
internal static class CoupledPreparation
{
    /// <summary>What the coupled light is made of; null with findings when the design does not say enough.</summary>
    /// <param name="design">The design.</param>
    /// <param name="openings">Openings of folded parts that air passes.</param>
    /// <param name="boxes">Sizes of what else gets warm.</param>
    /// <param name="findings">Takes what the stations say.</param>
    public static CoupledInputs? Of(
        LightDesign design,
        IReadOnlyList<AirOpening> openings,
        Func<LightParts, BoxSizes> boxes,
        List<Finding> findings
    )
    {
        if (LightParts.Of(design) is not { } parts)
        {
            findings.Add(EvaluationRules.NoEmitter.At("emitter", "There is no emitter with points or a rating."));
            return null;
        }

        if (StepsMap.Driver(parts) is not { } driverSpec)
        {
            findings.Add(
                EvaluationRules.NoDriver.At(parts.DriverPath, "There is no driver with a rated or a measured current.")
            );
            return null;
        }

        var steps = design.Steps ?? new Design.Steps { Emitter = parts.Emitter.Name, Driver = parts.Driver!.Name };
        var emitterSpec = StepsMap.Emitter(parts);
        var threshold = SenseThreshold.From(driverSpec);
        if (DriverModel.From(driverSpec, threshold) is not { } driver)
        {
            findings.AddRange(StepsStation.Evaluate(new(emitterSpec, driverSpec, null)).Findings);
            return null;
        }

        var fit = EmitterFit.From(emitterSpec);
        var (chain, onBoard, chosenBy) = Chain(steps, fit, driver, threshold, parts);
        var told = StepsStation.Evaluate(new(emitterSpec, driverSpec, chain));
        findings.AddRange(told.Findings);
        if (told.Network is not { } network)
        {
            return null;
        }

        var sink = Sink(design, parts, openings, findings);
        var light = LightMap.Spec(design, parts) is { } spec ? LightModel.Prepare(spec) : null;
        if (light is null)
        {
            findings.Add(
                EvaluationRules.NoFace.At(
                    parts.EmitterPath + ".face",
                    "The light-emitting surface is not given, so no light on the subject can be computed."
                )
            );
        }

        return new CoupledInputs
        {
            Design = design,
            Parts = parts,
            Steps = steps,
            Fit = fit,
            Threshold = threshold,
            Driver = driver,
            Network = network,
            FixedIsOnBoard = onBoard,
            ChosenBy = chosenBy,
            Sink = sink,
            Light = light,
            Boxes = boxes(parts),
        };
    }

    private static (ChainSpec Chain, bool OnBoard, string ChosenBy) Chain(
        Design.Steps steps,
        EmitterFit fit,
        DriverModel driver,
        SenseThreshold threshold,
        LightParts parts
    )
    {
        if (steps.Chosen is { } chosen)
        {
            return (
                StepsMap.Chain(steps, chosen.Fixed?.Nominal ?? threshold.Ohm, [.. chosen.Chain.Select(v => v.Nominal)]),
                chosen.Fixed is null,
                "given"
            );
        }

        return FirstSearch.Of(steps, fit, driver, threshold, parts) is { } found
            ? (StepsMap.Chain(steps, found.FixedOhm, found.ChainOhm), found.FixedOhm == threshold.Ohm, "first search")
            : (StepsMap.Chain(steps, threshold.Ohm, []), true, "given");
    }

    private static PreparedSink? Sink(
        LightDesign design,
        LightParts parts,
        IReadOnlyList<AirOpening> openings,
        List<Finding> findings
    )
    {
        if (HeatMap.Sink(design, parts, openings) is not { } spec)
        {
            if (parts.Sink?.Measured is null)
            {
                findings.Add(
                    EvaluationRules.NoSink.At(
                        parts.Sink is null ? "sink" : parts.SinkPath,
                        "Sink or emitter body is not described, so the junction is shown at its reference temperature."
                    )
                );
            }

            return null;
        }

        findings.AddRange(HeatFindings.Sink(spec, parts.SinkPath, "fan." + (parts.Fan?.Name ?? "main")));
        return SinkModel.IsUsable(spec) && Sound(spec) ? SinkModel.Prepare(spec) : null;
    }

    private static bool Sound(SinkSpec spec) =>
        spec
            is {
                AcrossM: > 1e-4 and < 10,
                AlongM: > 1e-4 and < 10,
                BaseThicknessM: > 1e-5 and < 1,
                FinCount: < 10_000
            };
}
