using Lampwright.Evaluation.Draws;
using Lampwright.Light;

namespace Lampwright.Evaluation.Coupling;

/// <summary>The ripple of the driver's output in a draw.</summary>
/// <remarks>The light is taken to follow the current: a phosphor forgets within a microsecond what 100 Hz does.</remarks>
internal sealed class RippleDraws
{
    private readonly int _depth;
    private readonly double _frequencyHz;

    private RippleDraws(int depth, double frequencyHz)
    {
        (_depth, _frequencyHz) = (depth, frequencyHz);
    }

    /// <summary>The ripple of the driver; null when the design does not give it.</summary>
    public static RippleDraws? Of(LightParts parts, Variables variables) =>
        parts.Driver is { RippleDepth: { } depth, RippleFrequency: { } frequency } && frequency.Nominal > 0
            ? new(variables.Of(depth), frequency.Nominal)
            : null;

    /// <summary>Flicker of one draw.</summary>
    public FlickerResult At(ReadOnlySpan<double> x, double shutterS) =>
        Flicker.Of(new(Math.Clamp(x[_depth], 0, 1), _frequencyHz), shutterS);
}
