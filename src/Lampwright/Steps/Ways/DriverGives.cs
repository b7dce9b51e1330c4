namespace Lampwright.Steps.Ways;

/// <summary>How much of its set current a driver gives into one emitter, by the top of its window and by its protection.</summary>
/// <remarks>
/// Over the top of its window a driver promises nothing; over its voltage limit it lets the current fall (clamp) or switches off (trip).
/// A clamp is judged warm, as the light runs. A trip is judged cold: a light that trips when it is switched on never becomes warm.
/// <b>Validity</b>: the junction as warm as at full current. <b>Source</b>: the driver's label; emitter's curve.
/// <b>Checked by</b>: derived rows, solver (time simulation).
/// </remarks>
/// <param name="AtMostA">Greatest emitter current that can be had, in amperes; the set current where nothing bounds it.</param>
/// <param name="TripsAtOnce">Whether the protection switches off before the cold emitter has the set current.</param>
internal readonly record struct DriverGives(double AtMostA, bool TripsAtOnce)
{
    /// <summary>Greatest current of ways that leave the driver at its own current and hold nothing back, in amperes; 0 where it trips.</summary>
    public double AsItIsA => TripsAtOnce ? 0 : AtMostA;

    public static DriverGives Of(WayFacts facts, in WayDraw draw, in HalfLight half)
    {
        if (double.IsPositiveInfinity(facts.GivesUpToV))
        {
            return new(half.SetA, false);
        }

        var limitV = facts.KnownLimitV is null ? double.PositiveInfinity : draw.LimitV;
        var topV = Math.Min(limitV, facts.WindowMostV ?? double.PositiveInfinity);
        var most = Within(draw, topV, draw.JunctionK);
        if (facts.Over != OverVoltage.Trips)
        {
            return new(most, false);
        }

        var cold = Within(draw, limitV, Math.Min(facts.ColdK, draw.JunctionK));
        return new(Math.Min(most, cold), cold < half.SetA);
    }

    private static double Within(in WayDraw draw, double volts, double kelvin) =>
        draw.Model.VoltageV(draw.SetA, kelvin) > volts
            ? EmitterCurve.CurrentA(draw.Model, volts, kelvin, draw.SetA)
            : draw.SetA;
}
