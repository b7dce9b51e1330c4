using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Maps;
using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Evaluation.Dimming;

/// <summary>What the comparison of ways is made of. It asks for less than the coupled light: an emitter and a driver are enough.</summary>
/// <param name="Parts">Which emitter, which driver.</param>
/// <param name="Fit">The emitter's curves.</param>
/// <param name="Driver">What is known of the driver.</param>
/// <param name="Threshold">Its sense threshold, as far as it is known.</param>
/// <param name="Chosen">The way that the design has chosen; null where it says nothing.</param>
/// <param name="Spec">What the comparison is told, at the temperatures of a light that heat has not settled.</param>
internal sealed record DimmingInputs(
    LightParts Parts,
    EmitterFit Fit,
    DriverSpec Driver,
    SenseThreshold Threshold,
    WayKind? Chosen,
    WaysSpec Spec
)
{
    /// <summary>Gathers it; null when the design has no emitter or no driver that can be computed with.</summary>
    /// <param name="design">The design.</param>
    /// <param name="told">What the coupled light is made of, null where the design does not say enough for one.</param>
    public static DimmingInputs? Of(LightDesign design, CoupledInputs? told)
    {
        if (
            (told?.Parts ?? LightParts.Of(design)) is not { Driver: { } driver } parts
            || (told?.StepsSpec.Driver ?? StepsMap.Driver(driver)) is not { } driverSpec
        )
        {
            return null;
        }

        var fit = told?.Fit ?? EmitterFit.From(StepsMap.Emitter(parts));
        var usual = new WaysSpec(
            fit.Model,
            parts.Emitter.CurrentMax?.Nominal,
            driverSpec,
            StepsMap.Surroundings(driver),
            StepsMap.Supply(design.Place),
            told?.StepsSpec.Chain
        );
        return new(
            parts,
            fit,
            driverSpec,
            told?.Threshold ?? SenseThreshold.From(driverSpec),
            ChosenBy(design.Steps),
            usual with
            {
                ColdJunctionK = design.Place.Ambient.Nominal,
                HotJunctionK = Math.Max(usual.HotJunctionK, design.Place.AmbientMax.Nominal),
            }
        );
    }

    /// <summary>The way that <c>[steps]</c> says; a selector of an unknown kind is taken as one that opens.</summary>
    private static WayKind? ChosenBy(Design.Steps? steps) =>
        steps switch
        {
            null => null,
            { Switches: 0, Chosen: null or { Chain.Count: 0 } } => WayKind.FixedSense,
            { Arrangement: Design.Arrangement.ParallelBranches } => WayKind.ParallelBranches,
            { Arrangement: Design.Arrangement.Selector } => WayKind.SelectorOpening,
            _ => WayKind.SteppedChain,
        };
}
