namespace Lampwright.Steps.Ways;

/// <summary>A converter of constant power behind a constant current: C·dV/dt = I0 − P/V.</summary>
/// <remarks>
/// <b>Validity</b>: the converter regulates; in drop-out it is no load of constant power.
/// <b>Source</b>: derived from the equation above. <b>Checked by</b>: derived rows E.C-1 to E.C-7 and transient solutions of the circuit.
/// </remarks>
public static class ConverterOnCurrent
{
    /// <summary>Voltage at which source and load agree on the flat part of the source, P/I0, in volts; never stable.</summary>
    /// <param name="powerW">Power in watts.</param>
    /// <param name="setA">Current of the source in amperes; above 0.</param>
    public static double CrossingV(double powerW, double setA) => powerW / setA;

    /// <summary>Time in which a distance from that voltage grows by e, C·P/I0², in seconds.</summary>
    /// <param name="powerW">Power in watts.</param>
    /// <param name="setA">Current of the source in amperes; above 0.</param>
    /// <param name="farad">Capacitor at the node, in farad.</param>
    public static double GrowthS(double powerW, double setA, double farad) => farad * powerW / (setA * setA);

    /// <summary>Charging time of the hiccup, C·(Von − Voff)/I0, in seconds.</summary>
    /// <param name="setA">Current of the source in amperes; above 0.</param>
    /// <param name="farad">Capacitor at the node, in farad.</param>
    /// <param name="onV">Voltage at which the converter starts, in volts.</param>
    /// <param name="offV">Voltage at which it stops, in volts.</param>
    public static double ChargingS(double setA, double farad, double onV, double offV) => farad * (onV - offV) / setA;

    /// <summary>On-time of the hiccup, C·(−(Von − Voff)/I0 − P/I0²·ln((P − I0·Von)/(P − I0·Voff))), in seconds; infinite where it does not collapse.</summary>
    /// <param name="powerW">Power in watts.</param>
    /// <param name="setA">Current of the source in amperes; above 0.</param>
    /// <param name="farad">Capacitor at the node, in farad.</param>
    /// <param name="onV">Voltage at which the converter starts, in volts.</param>
    /// <param name="offV">Voltage at which it stops, in volts.</param>
    public static double OnS(double powerW, double setA, double farad, double onV, double offV) =>
        onV < CrossingV(powerW, setA)
            ? (GrowthS(powerW, setA, farad) * Math.Log((powerW - (setA * offV)) / (powerW - (setA * onV))))
                - ChargingS(setA, farad, onV, offV)
            : double.PositiveInfinity;

    /// <summary>Time of one start and stop, in seconds; infinite where it does not collapse.</summary>
    /// <param name="powerW">Power in watts.</param>
    /// <param name="setA">Current of the source in amperes; above 0.</param>
    /// <param name="farad">Capacitor at the node, in farad.</param>
    /// <param name="onV">Voltage at which the converter starts, in volts.</param>
    /// <param name="offV">Voltage at which it stops, in volts.</param>
    public static double HiccupPeriodS(double powerW, double setA, double farad, double onV, double offV) =>
        ChargingS(setA, farad, onV, offV) + OnS(powerW, setA, farad, onV, offV);
}
