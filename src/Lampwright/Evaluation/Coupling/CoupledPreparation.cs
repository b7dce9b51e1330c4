using Lampwright.Design;
using Lampwright.Evaluation.Assembling;
using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Findings;
using Lampwright.FitUp;
using Lampwright.Heat;
using Lampwright.Light;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Lets steps, heat and light look at a design's nominal values and gathers what the coupled light is made of.</summary>
internal static class CoupledPreparation
{
    /// <summary>What the coupled light is made of; null with findings when the design does not say enough.</summary>
    /// <param name="design">The design.</param>
    /// <param name="made">Its folded parts.</param>
    /// <param name="fitUp">Where everything lies.</param>
    /// <param name="findings">Takes what the stations say.</param>
    public static CoupledInputs? Of(
        LightDesign design,
        IReadOnlyList<MadePart> made,
        FitUpResult fitUp,
        List<Finding> findings
    )
    {
        if (LightParts.Of(design) is not { } parts)
        {
            findings.Add(EvaluationRules.NoEmitter.At("emitter", "There is no emitter with points or a rating."));
            return null;
        }

        if (StepsMap.Driver(parts.Driver) is not { } driverSpec)
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
            findings.Add(StepsRules.NoThreshold.At(driverSpec.Path + ".sense", threshold.Reason));
            return null;
        }

        var fit = EmitterFit.From(emitterSpec);
        var light = LightMap.Spec(design, parts) is { } spec ? LightModel.Prepare(spec) : null;
        var luxPerLm = light?.Result(light.Spec.Nominal).CentreLuxPerLm ?? 0;
        if (ChainRules.Order(FirstSearch.Wanted(steps, fit.Model, luxPerLm), "steps.targets") is { } order)
        {
            findings.Add(order);
        }

        var (chain, onBoard, asked) = Chain(steps, fit, driver, threshold, parts, luxPerLm);
        if (asked is { } searched)
        {
            findings.AddRange(ChainRules.Searched(searched.Spec, searched.Found, chain.Path));
        }

        var stepsSpec = new StepsSpec(emitterSpec, driverSpec, chain);
        var told = StepsStation.Evaluate(stepsSpec);
        if (told.Network is not { } network)
        {
            findings.AddRange(told.Findings);
            return null;
        }

        var sink = Sink(design, parts, made, fitUp, findings);
        if (light is null)
        {
            findings.Add(
                EvaluationRules.NoFace.At(
                    parts.EmitterPath + ".face",
                    "The light-emitting surface is not given, so no light on the subject can be computed."
                )
            );
        }

        var boxes = BoxMap.Of(design, parts, made);
        return new CoupledInputs
        {
            Design = design,
            Parts = parts,
            Steps = steps,
            StepsSpec = stepsSpec,
            Told = told,
            Fit = fit,
            Threshold = threshold,
            Driver = driver,
            Network = network,
            FixedIsOnBoard = onBoard,
            ChosenBy = asked?.Found.Found == true ? "first search" : "given",
            Search = asked?.Found,
            Sink = sink,
            Duct = Duct.Of(parts, made, fitUp),
            OutsideRange = OutsideRange(sink, design, emitterSpec, fit),
            Light = light,
            Boxes = boxes,
            Map = new(parts, boxes, SheetPanelsMap.Of(design, parts, made, fitUp), made),
        };
    }

    private static (ChainSpec Chain, bool OnBoard, (ChainSearchSpec Spec, ChainSearchResult Found)? Asked) Chain(
        Design.Steps steps,
        EmitterFit fit,
        DriverModel driver,
        SenseThreshold threshold,
        LightParts parts,
        double luxPerLm
    )
    {
        if (steps.Chosen is { } chosen)
        {
            return (
                StepsMap.Chain(
                    steps,
                    chosen.Fixed is { } first ? StepsMap.Part(steps, first) : StepsMap.Part(steps, threshold.Ohm),
                    [.. chosen.Chain.Select(p => StepsMap.Part(steps, p))]
                ),
                chosen.Fixed is null,
                null
            );
        }

        var asked = FirstSearch.Of(steps, fit, driver, threshold, parts, luxPerLm);
        return asked is { Found: { Found: true } found }
            ? (
                StepsMap.Chain(
                    steps,
                    StepsMap.Part(steps, found.Parts[0]),
                    [.. found.Parts.Skip(1).Select(p => StepsMap.Part(steps, p))]
                ),
                found.Ohms[0] == threshold.Ohm,
                asked
            )
            : (StepsMap.Chain(steps, StepsMap.Part(steps, threshold.Ohm), []), true, asked);
    }

    private static PreparedSink? Sink(
        LightDesign design,
        LightParts parts,
        IReadOnlyList<MadePart> made,
        FitUpResult fitUp,
        List<Finding> findings
    )
    {
        findings.AddRange(SinkFindings.Of(design, parts));
        if (HeatMap.Sink(design, parts, AirOpenings.Of(design, made), made) is not { } flat)
        {
            if (parts.Sink is not { IsMeasured: true })
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

        var spec = flat with
        {
            ChannelTiltRad = Orientation.ChannelTiltRad(design, fitUp, parts.SinkPath),
            FaceUp = Orientation.FaceUp(design, fitUp, parts.SinkPath),
        };
        if (SinkModel.IsUsable(spec) && Duct.Of(parts, made, fitUp) is { } duct)
        {
            var ambient = Math.Clamp(design.Place.Ambient.Nominal, 200, 400);
            spec = spec with { BypassShare = Bypass.Share(spec, duct.AcrossM, duct.HeightM, ambient) };
        }

        findings.AddRange(HeatFindings.Sink(spec, parts.SinkPath, "fan." + (parts.Fan?.Name ?? "main")));
        return SinkModel.IsUsable(spec) && Sound(spec) ? SinkModel.Prepare(spec) : null;
    }

    // Ranges hang on flow and geometry, hardly on watts: the emitter's full power, all of it as heat, settles them.
    private static string[] OutsideRange(PreparedSink? sink, LightDesign design, EmitterSpec emitter, EmitterFit fit)
    {
        var ampere = emitter.MostA ?? fit.Model.ToA;
        var watts = ampere * fit.Model.VoltageV(ampere, fit.Model.ReferenceK);
        if (sink is null || !(watts > 0))
        {
            return [];
        }

        var ambient = Math.Clamp(design.Place.Ambient.Nominal, 200, 400);
        return
        [
            .. new[] { true, false }
                .SelectMany(runs => sink.At(sink.Nominal, ambient, runs, watts)?.OutsideRange ?? [])
                .Distinct(),
        ];
    }

    private static bool Sound(SinkSpec spec) =>
        spec
            is {
                AcrossM: > 1e-4 and < 10,
                AlongM: > 1e-4 and < 10,
                BaseThicknessM: > 1e-5 and < 1,
                FinCount: < 10_000,
                Pins: null or { AcrossCount: <= 500, AlongCount: <= 500 }
            };
}
