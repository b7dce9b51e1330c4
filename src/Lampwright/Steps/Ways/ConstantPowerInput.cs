namespace Lampwright.Steps.Ways;

/// <summary>A supply behind a resistance that feeds an input of constant power: a driver, or a converter that regulates.</summary>
/// <remarks>
/// <b>Validity</b>: the input regulates (it is neither locked out nor in drop-out); alternating current is reckoned by its rms values with
/// the power over the power factor in place of the power, which takes the whole current to act on the resistance in phase and so
/// overstates the drop.
/// <b>Source</b>: Kirchhoff; why such an input is not stable on a resistance: EE Times, Power Tip 3 (2008).
/// <b>Checked by</b>: derived rows E.D-13, solver (time simulation).
/// </remarks>
public static class ConstantPowerInput
{
    /// <summary>The two voltages at which source and load agree, (Vs ± sqrt(Vs² − 4·P·R))/2; only the upper is stable. Null where there is none.</summary>
    /// <param name="openV">Voltage of the supply without load, in volts.</param>
    /// <param name="ohm">Resistance in ohm; ≥ 0.</param>
    /// <param name="powerW">Power in watts; ≥ 0.</param>
    public static (double UpperV, double LowerV)? Voltages(double openV, double ohm, double powerW)
    {
        var below = (openV * openV) - (4 * powerW * ohm);
        if (!(below >= 0))
        {
            return null;
        }

        // The lower root from the product of both, so that it does not drown in the difference.
        var upper = 0.5 * (openV + Math.Sqrt(below));
        return (upper, upper > 0 ? powerW * ohm / upper : 0);
    }

    /// <summary>Greatest power a supply gives through a resistance, Vs²/(4·R), in watts.</summary>
    /// <param name="openV">Voltage of the supply without load, in volts.</param>
    /// <param name="ohm">Resistance in ohm; above 0.</param>
    public static double MostW(double openV, double ohm) => openV * openV / (4 * ohm);

    /// <summary>Greatest resistance through which the input starts and stays on, in ohm.</summary>
    /// <remarks>
    /// The resistance gives the power at V where R ≤ (Vs − V)·V/P. Running needs that at the upper crossing, which lies at Vs/2 or above and has to
    /// be over Voff: R ≤ Vs²/(4·P), and (Vs − Voff)·Voff/P where Voff is over Vs/2. Starting needs it too: the input climbs from nothing and takes its
    /// whole power at Von; where that is under Vs/2 it must lie over the lower crossing, or the voltage falls back: (Vs − Von)·Von/P. A
    /// Von over Vs/2 asks nothing more: from there the voltage falls to the upper crossing and stays. All three in one: V is the middle of
    /// Voff, Vs/2 and Von. A soft start, which takes its power little by little, may bear more; this is the safe side.
    /// <b>Source</b>: derived from C·dV/dt = (Vs − V)/R − P/V. <b>Checked by</b>: solver (time simulation from both sides).
    /// </remarks>
    /// <param name="openV">Voltage of the supply without load, in volts.</param>
    /// <param name="powerW">Power in watts; above 0.</param>
    /// <param name="offV">Voltage under which the input stops, in volts; 0 where there is none.</param>
    /// <param name="onV">Voltage at which it starts, in volts; infinite where it is not known and starting is left out.</param>
    public static double MostOhm(double openV, double powerW, double offV = 0, double onV = double.PositiveInfinity) =>
        onV >= openV && double.IsFinite(onV)
            ? 0
            : (openV - WeakestV(openV, offV, onV)) * WeakestV(openV, offV, onV) / powerW;

    /// <summary>Voltage of the input at that resistance, in volts: the middle of Voff, half of the supply and Von.</summary>
    /// <param name="openV">Voltage of the supply without load, in volts.</param>
    /// <param name="offV">Voltage under which the input stops, in volts; 0 where there is none.</param>
    /// <param name="onV">Voltage at which it starts, in volts; infinite where it is not known.</param>
    public static double WeakestV(double openV, double offV, double onV) =>
        Math.Min(Math.Max(Math.Min(openV / 2, onV), offV), openV);

    /// <summary>Time of one start and stop, in seconds; infinite where it does not stop again.</summary>
    /// <remarks>
    /// Off: R·C·ln((Vs − Voff)/(Vs − Von)). On: R·C·∫V dV/(V² − Vs·V + P·R) from Voff to Von, in closed form.
    /// Derived; checked against numerical integration.
    /// </remarks>
    /// <param name="openV">Voltage of the supply without load, in volts.</param>
    /// <param name="ohm">Resistance in ohm; above 0.</param>
    /// <param name="powerW">Power in watts; above 0.</param>
    /// <param name="farad">Capacitor at the input, in farad.</param>
    /// <param name="onV">Voltage at which the input starts, in volts.</param>
    /// <param name="offV">Voltage at which it stops, in volts.</param>
    public static double HiccupPeriodS(double openV, double ohm, double powerW, double farad, double onV, double offV)
    {
        if (!(onV < openV) || !(offV < onV) || !(offV >= 0))
        {
            return double.PositiveInfinity;
        }

        var (a, b) = (offV - (openV / 2), onV - (openV / 2));
        var d = (powerW * ohm) - (openV * openV / 4);
        var (qa, qb) = ((a * a) + d, (b * b) + d);
        if (!(qa > 0) || !(qb > 0) || (d <= 0 && a * b <= 0))
        {
            return double.PositiveInfinity;
        }

        var root = Math.Sqrt(Math.Abs(d));
        var inner =
            root < 1e-9 * openV ? (1 / a) - (1 / b)
            : d > 0 ? (Math.Atan(b / root) - Math.Atan(a / root)) / root
            : Math.Log(((b - root) * (a + root)) / ((b + root) * (a - root))) / (2 * root);
        var on = (0.5 * Math.Log(qb / qa)) + (openV / 2 * inner);
        var off = Math.Log((openV - offV) / (openV - onV));
        return ohm * farad * (on + off);
    }
}
