namespace Lampwright.Steps.Ways;

/// <summary>The emitter, with a resistor in series and one across it where there are any.</summary>
/// <remarks>
/// The series resistor carries all of the current, the one across lies right at the emitter:
/// V = Ve·(1 + Rs/Rsh) + Rs·I, with Ve = a·ln I + c + r·I the emitter's own curve at its junction temperature. In w = (r'/a')·I
/// this is w + ln w = z, solved to the last digits by two steps of third order; without the logarithm it is a straight line.
/// Current never flows backwards; where the fitted curve does not reach zero volts it is led to zero over the last 0.05 V.
/// The growth of error beyond the emitter's points (<see cref="EmitterModel.VoltageBeyond"/>) is left out, as it is for wishes.
/// <b>Validity</b>: that of <see cref="EmitterModel"/>. <b>Source</b>: circuit laws; w + ln w = z: Corless and others, On the Lambert W
/// function, Adv. Comput. Math. 5 (1996), sec. 1. <b>Accuracy</b>: 1e-12 of the current. <b>Checked by</b>: invariant (the voltage of the
/// current is the voltage), solver (general-purpose circuit simulator).
/// </remarks>
/// <param name="Model">The emitter's curve.</param>
/// <param name="JunctionK">Its junction temperature, in kelvin.</param>
/// <param name="SeriesOhm">Resistance in series, in ohm; 0 where there is none.</param>
/// <param name="ShuntOhm">Resistance across the emitter, in ohm; infinite where there is none.</param>
public sealed record EmitterLine(
    EmitterModel Model,
    double JunctionK,
    double SeriesOhm = 0,
    double ShuntOhm = double.PositiveInfinity
) : LoadLine
{
    /// <summary>No circuit has less resistance than this, in ohm: it keeps an emitter without slope from being a short.</summary>
    private static readonly double LeastOhm = 1e-6;

    /// <summary>Voltage over which a curve that does not reach zero volts is led to zero current, in volts.</summary>
    private static readonly double TaperV = 0.05;

    /// <inheritdoc/>
    public override double CurrentA(double volts)
    {
        var emitter = EmitterA(volts);
        return emitter + (EmitterV(volts, emitter) / Shunt);
    }

    /// <inheritdoc/>
    public override double EmitterA(double volts)
    {
        if (!(volts > 0))
        {
            return 0;
        }

        var current = OnCurve(volts);
        var emitter = EmitterV(volts, current);
        if (emitter >= TaperV)
        {
            return current;
        }

        // So low that only the foot of a fitted logarithm is left: a straight line to nothing at nothing.
        var top = TaperV * (1 + (SeriesOhm / Shunt));
        return OnCurve(top) * Math.Min(1, volts / top);
    }

    /// <summary>Voltage across the emitter itself at a voltage of the node, in volts.</summary>
    /// <param name="volts">Voltage of the node, in volts.</param>
    /// <param name="emitterA">Emitter current there, in amperes.</param>
    internal double EmitterV(double volts, double emitterA) =>
        Math.Max(0, volts - (SeriesOhm * emitterA)) / (1 + (SeriesOhm / Shunt));

    private double Shunt => Math.Max(ShuntOhm, LeastOhm);

    private double OnCurve(double volts)
    {
        var k = 1 + (SeriesOhm / Shunt);
        var log = k * Math.Max(Model.LogV, 0);
        var offset = k * (Model.OffsetV + (Model.SlopeVPerK * (JunctionK - Model.ReferenceK)));
        var ohm = Math.Max((k * Math.Max(Model.SeriesOhm, 0)) + SeriesOhm, LeastOhm);
        if (log < 1e-9)
        {
            return Math.Max(0, (volts - offset) / ohm);
        }

        var z = ((volts - offset) / log) + Math.Log(ohm / log);
        return log / ohm * SumWithLog(z);
    }

    /// <summary>The w &gt; 0 with w + ln w = z.</summary>
    private static double SumWithLog(double z)
    {
        if (z < -36)
        {
            return Math.Exp(z);
        }

        var w = z > 1.5 ? z - Math.Log(z) : Math.Exp(z) / (1 + Math.Exp(0.6 * z));
        for (var i = 0; i < 4; i++)
        {
            // Halley's rule in ln w, so that w stays positive.
            var miss = z - w - Math.Log(w);
            var slope = 1 + w;
            var step = miss / slope;
            w *= Math.Exp(step / (1 + (0.5 * step * w / slope)));
            if (Math.Abs(step) < 1e-5)
            {
                break;
            }
        }

        return w;
    }
}
