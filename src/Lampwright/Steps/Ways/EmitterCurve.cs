namespace Lampwright.Steps.Ways;

/// <summary>The emitter's curve read the other way: current over voltage.</summary>
/// <remarks>
/// Newton's method on the logarithm of the current inside a bracket that halves where a step leaves it.
/// <b>Validity</b>: a voltage that rises with the current. <b>Accuracy</b>: 1e-12 of the current. <b>Checked by</b>: invariant.
/// </remarks>
internal static class EmitterCurve
{
    /// <summary>Current at a voltage, in amperes: 0 below the voltage of a dark emitter, <paramref name="mostA"/> where it would be more.</summary>
    /// <param name="model">The emitter's curve.</param>
    /// <param name="volts">Voltage in volts.</param>
    /// <param name="junctionK">Junction temperature in kelvin.</param>
    /// <param name="mostA">Current at which the search ends, in amperes.</param>
    public static double CurrentA(in EmitterModel model, double volts, double junctionK, double mostA = 1e4)
    {
        if (!(model.VoltageV(EmitterModel.LeastA, junctionK) < volts))
        {
            return 0;
        }

        if (!(model.VoltageV(mostA, junctionK) > volts))
        {
            return mostA;
        }

        var (low, high) = (Math.Log(EmitterModel.LeastA), Math.Log(mostA));
        var u = Math.Min(high, 0.0);
        for (var pass = 0; pass < 100; pass++)
        {
            var i = Math.Exp(u);
            var over = model.VoltageV(i, junctionK) - volts;
            if (over > 0)
            {
                high = u;
            }
            else
            {
                low = u;
            }

            var slope = model.LogV + (model.SeriesOhm * i);
            var next = slope > 0 ? u - (over / slope) : double.NaN;
            next = next > low && next < high ? next : 0.5 * (low + high);
            if (Math.Abs(next - u) < 1e-12)
            {
                return Math.Exp(next);
            }

            u = next;
        }

        return Math.Exp(u);
    }
}
