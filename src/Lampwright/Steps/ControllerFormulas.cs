namespace Lampwright.Steps;

/// <summary>Published formulas of constant-current controllers, for reading a board and for the checks of the driver model.</summary>
/// <remarks>
/// <b>Source</b>: beside each method. <b>Validity</b>: continuous conduction, ideal parts.
/// <b>Checked by</b>: printed (references, electrical.md section 3).
/// </remarks>
public static class ControllerFormulas
{
    /// <summary>Average current of a peak-controlled buck stage: Vcs/Rs − ΔI/2 (TI AN-1954 p. 8).</summary>
    /// <param name="senseV">Peak sense voltage in volts.</param>
    /// <param name="senseOhm">Sense resistance in ohm.</param>
    /// <param name="rippleA">Peak-to-peak ripple in amperes.</param>
    public static double PeakBuckAverageA(double senseV, double senseOhm, double rippleA) =>
        (senseV / senseOhm) - (rippleA / 2);

    /// <summary>Resistor that sets the threshold of a peak-controlled buck: (Iavg + ΔI/2)·Rs/Ib (TI AN-1954 p. 8).</summary>
    /// <param name="averageA">Average current in amperes.</param>
    /// <param name="rippleA">Peak-to-peak ripple in amperes.</param>
    /// <param name="senseOhm">Sense resistance in ohm.</param>
    /// <param name="biasA">Bias current in amperes.</param>
    public static double ThresholdResistorOhm(double averageA, double rippleA, double senseOhm, double biasA) =>
        (averageA + (rippleA / 2)) * senseOhm / biasA;

    /// <summary>Current of a scaled high-side sense: Vref·Rhsp/(Rs·Rcsh) (TI SNVS574E p. 41).</summary>
    /// <param name="referenceV">Reference in volts.</param>
    /// <param name="highSideOhm">Resistor at the high side, in ohm.</param>
    /// <param name="senseOhm">Sense resistance in ohm.</param>
    /// <param name="setOhm">Resistor that sets the current, in ohm.</param>
    public static double HighSideCurrentA(double referenceV, double highSideOhm, double senseOhm, double setOhm) =>
        referenceV * highSideOhm / (senseOhm * setOhm);

    /// <summary>Duty of a buck stage: Vout/(η·Vin) (TI AN-1953 p. 7).</summary>
    /// <param name="outputV">Output voltage in volts.</param>
    /// <param name="efficiency">Efficiency, 0 to 1.</param>
    /// <param name="inputV">Input voltage in volts.</param>
    public static double BuckDuty(double outputV, double efficiency, double inputV) => outputV / (efficiency * inputV);

    /// <summary>Root mean square of the switch current of a buck: I·sqrt(D·(1 + (ΔI/I)²/12)) (TI AN-1953 p. 7).</summary>
    /// <param name="currentA">Output current in amperes.</param>
    /// <param name="duty">Duty, 0 to 1.</param>
    /// <param name="rippleA">Peak-to-peak ripple in amperes.</param>
    public static double BuckSwitchRmsA(double currentA, double duty, double rippleA)
    {
        var relative = rippleA / currentA;
        return currentA * Math.Sqrt(duty * (1 + (relative * relative / 12)));
    }

    /// <summary>Sense resistance of a primary-side regulated flyback: Vccr·Nps/(2·Iocc)·sqrt(η) (TI SLUSBL5A).</summary>
    /// <param name="regulationV">Constant-current regulating level in volts.</param>
    /// <param name="turnsRatio">Primary to secondary turns.</param>
    /// <param name="outputA">Output current in amperes.</param>
    /// <param name="transformerEfficiency">Efficiency of the transformer, 0 to 1.</param>
    public static double PrimarySenseOhm(
        double regulationV,
        double turnsRatio,
        double outputA,
        double transformerEfficiency
    ) => regulationV * turnsRatio / (2 * outputA) * Math.Sqrt(transformerEfficiency);

    /// <summary>Relative error of the current from an amplifier's offset: Vos/Vsense (ST TSM1012 table 5).</summary>
    /// <param name="offsetV">Offset in volts.</param>
    /// <param name="senseV">Sense voltage in volts.</param>
    public static double OffsetError(double offsetV, double senseV) => offsetV / senseV;

    /// <summary>
    /// Ripple depth of the emitter's current behind a single-stage power-factor converter: 1/sqrt(1 + (2·2π·f·Rd·C)²), (max − min)/(max + min).
    /// </summary>
    /// <param name="lineHz">Frequency of the mains in hertz; the ripple has twice that.</param>
    /// <param name="dynamicOhm">Dynamic resistance of the emitter, in ohm.</param>
    /// <param name="farad">Output capacitor in farads.</param>
    /// <remarks><b>Validity</b>: a source of I0·(1 + sin), an emitter of Vd + Rd. <b>Source</b>: current divider (derived).</remarks>
    public static double LineRippleDepth(double lineHz, double dynamicOhm, double farad)
    {
        var x = 2 * (2 * Math.PI * lineHz) * dynamicOhm * farad;
        return 1 / Math.Sqrt(1 + (x * x));
    }
}
