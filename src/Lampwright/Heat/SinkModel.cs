namespace Lampwright.Heat;

/// <summary>Entry to the sinks: prepares the heavy things once, at nominal.</summary>
public static class SinkModel
{
    /// <summary>True where the shape and the fan's points can be computed with; what is wrong is told by <see cref="HeatFindings"/>.</summary>
    /// <param name="spec">The sink.</param>
    public static bool IsUsable(SinkSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return spec.Footprints.Any(f => f.OtherW <= 0)
            && spec.Form switch
            {
                SinkForm.Fins => spec.GapM > 1e-5 && spec.FinHeightM > 0 && spec.FinThicknessM > 0,
                SinkForm.Pins => Fits(spec, spec.Pins!),
                SinkForm.Tower => spec.Tower!.IsUsable,
                _ => true,
            }
            && (spec.Fan is null || FanCurve.IsUsable(spec.Fan.Curve));
    }

    private static bool Fits(SinkSpec spec, PinArray pins) =>
        pins is { AcrossCount: > 0, AlongCount: > 0, DiameterM: > 0, HeightM: > 0 }
        && pins.GapM(spec.AcrossM, spec.AlongM) > 1e-5
        && pins.FreeAreaM2(spec.AcrossM, spec.AlongM) > 0;

    /// <summary>A sink made ready for the draws. <b>Heavy</b> (about 0.4 ms for one emitter): the spreading series, the channel's view factor, the fan's curve.</summary>
    /// <param name="nominal">The sink at nominal; must be usable.</param>
    /// <returns>An object the draws share; it is immutable and safe on several threads.</returns>
    /// <exception cref="ArgumentException">The sink is not usable.</exception>
    public static PreparedSink Prepare(SinkSpec nominal)
    {
        if (!IsUsable(nominal))
        {
            throw new ArgumentException("The sink cannot be computed with; ask IsUsable first.", nameof(nominal));
        }

        Guard.Positive(nominal.AcrossM);
        Guard.Positive(nominal.AlongM);
        Guard.Positive(nominal.BaseThicknessM);
        Guard.Positive(nominal.ConductivityWPerMK);
        Guard.Positive(nominal.PressurePa);
        return new PreparedSink(nominal);
    }
}
