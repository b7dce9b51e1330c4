using Lampwright.Findings;

namespace Lampwright.Heat;

/// <content>Forms of sinks, fans over voltage, openings.</content>
public static partial class HeatFindings
{
    /// <summary>Highest ambient against a limit: HEA024.</summary>
    /// <param name="ambientK">Highest ambient, K.</param>
    /// <param name="limitK">Limit of what is cooled, K.</param>
    /// <param name="path">Path of the ambient in the design file.</param>
    public static Finding? Ambient(double ambientK, double limitK, string path) =>
        ambientK >= limitK
            ? HeatRules.AmbientOverLimit.At(
                path,
                $"The air may come to {C(ambientK)}; the junction may have {C(limitK)}.",
                C(ambientK),
                C(limitK)
            )
            : null;

    /// <summary>A brightest position without heat: HEA025.</summary>
    /// <param name="heatW">Heat of the emitter, W.</param>
    /// <param name="path">Path of the emitter in the design file.</param>
    public static Finding? Heatless(double heatW, string path) =>
        heatW > 1e-6
            ? null
            : HeatRules.NoHeat.At(path, "At the brightest position the emitter gives no heat.", $"{N(heatW)} W");

    /// <summary>Load of heat pipes: HEA027.</summary>
    /// <param name="tower">The pipes.</param>
    /// <param name="heatW">Heat of all of them, W.</param>
    /// <param name="sinkPath">Path of the sink in the design file.</param>
    /// <param name="scene">Name of the scene.</param>
    public static Finding? Pipes(HeatPipeTower tower, double heatW, string sinkPath, string scene)
    {
        ArgumentNullException.ThrowIfNull(tower);
        var each = heatW / tower.Pipes;
        return tower.PipeMostW is { } most && each > most
            ? HeatRules.HeatPipesDry.At(
                $"{sinkPath}.pipes.carries",
                $"Each of {tower.Pipes} legs carries {N(each)} W; it bears {N(most)} W.",
                $"{N(each)} W",
                $"{N(most)} W",
                scene
            )
            : null;
    }

    /// <summary>An opening that does not bring the wanted temperature: HEA026.</summary>
    /// <param name="opening">What was found.</param>
    /// <param name="ambientK">Air, K.</param>
    /// <param name="wantedK">Wanted temperature of the base, K.</param>
    /// <param name="sinkPath">Path of the sink in the design file.</param>
    /// <param name="scene">Name of the scene.</param>
    public static Finding? Unreached(Opening opening, double ambientK, double wantedK, string sinkPath, string scene)
    {
        ArgumentNullException.ThrowIfNull(opening);
        return opening.IsReached
            ? null
            : HeatRules.NoOpeningReaches.At(
                $"{sinkPath}.wanted",
                $"Even with openings {N(opening.Times)} times as large the base comes to {C(ambientK + opening.BaseRiseK)}; {C(wantedK)} is wanted.",
                C(ambientK + opening.BaseRiseK),
                C(wantedK),
                scene
            );
    }

    /// <summary>A step that no voltage of the fan holds: HEA023.</summary>
    /// <param name="where">The switch positions, for the message.</param>
    /// <param name="mostV">Most voltage that was tried, V.</param>
    /// <param name="limitK">Limit of the junction, K.</param>
    /// <param name="fanPath">Path of the fan in the design file.</param>
    /// <param name="scene">Name of the scene.</param>
    public static Finding NoSpeed(string where, double mostV, double limitK, string fanPath, string scene) =>
        HeatRules.NoFanSpeedHolds.At(
            $"{fanPath}.run_at",
            $"At {where} the junction passes {C(limitK)} even at {N(mostV)} V, the fan's rated voltage.",
            scene: scene
        );

    private static Finding? Standing(SinkSpec spec, string sinkPath) =>
        spec.Form switch
        {
            SinkForm.Pins when spec.Pins!.GapM(spec.AcrossM, spec.AlongM) <= 1e-5 => HeatRules.FinsDoNotFit.At(
                $"{sinkPath}.pins",
                $"{spec.Pins.AcrossCount} by {spec.Pins.AlongCount} pins of {Mm(spec.Pins.DiameterM)} leave no gap on {Mm(spec.AcrossM)} by {Mm(spec.AlongM)}.",
                Mm(spec.Pins.GapM(spec.AcrossM, spec.AlongM)),
                "more than 0 mm"
            ),
            SinkForm.Tower when !spec.Tower!.IsUsable => HeatRules.FinsDoNotFit.At(
                $"{sinkPath}.stack",
                $"{spec.Tower.Pipes} pipes of {Mm(spec.Tower.PipeDiameterM)} fill plates of {Mm(spec.Tower.AcrossM)} by {Mm(spec.Tower.AlongM)}, or the plates leave no gap."
            ),
            _ => null,
        };
}
