namespace Lampwright.Steps;

/// <summary>How the flux bends away from the straight line as the current rises.</summary>
public enum FluxForm
{
    /// <summary>x·(1 + s)/(1 + x·s): a straight line that saturates; s ≥ 0.</summary>
    Saturating,

    /// <summary>x to the power s, 0 &lt; s ≤ 1.</summary>
    Power,
}

/// <summary>Voltage and flux of one emitter over current and junction temperature; closed form, made for the draws.</summary>
/// <remarks>
/// V(I, Tj) = LogV·ln I + OffsetV + SeriesOhm·I + SlopeVPerK·(Tj − ReferenceK);
/// Φ(I, Tj) = FluxRefLm·g(I/FluxRefA)·exp(−FluxDecayPerK·(Tj − ReferenceK)).
/// <b>Validity</b>: currents from <see cref="FromA"/> to <see cref="ToA"/>; beyond them the errors named
/// <c>steps.emitter_voltage_beyond</c> and <c>steps.emitter_flux_beyond</c> grow with the logarithm of the distance.
/// LogV absorbs the series junctions; it is no physical ideality factor.
/// <b>Source</b>: diode equation with series resistance; flux form: references, light.md section 1.
/// <b>Accuracy</b>: see <see cref="EmitterFit.MethodErrors"/>.
/// <b>Checked by</b>: printed (Lumileds DS60), solver (general-purpose circuit simulator on the same four points).
/// </remarks>
/// <param name="LogV">Volts per natural logarithm of the current; ≥ 0.</param>
/// <param name="OffsetV">Voltage at 1 A without the series part, in volts.</param>
/// <param name="SeriesOhm">Series resistance in ohm; ≥ 0.</param>
/// <param name="SlopeVPerK">Change of voltage with junction temperature, in V/K; normally negative.</param>
/// <param name="ReferenceK">Junction temperature that the points hold at, in kelvin.</param>
/// <param name="FluxRefLm">Flux at <paramref name="FluxRefA"/> and <paramref name="ReferenceK"/>, in lumens.</param>
/// <param name="FluxRefA">Current that the flux is scaled by, in amperes; above 0.</param>
/// <param name="FluxForm">Form of g.</param>
/// <param name="FluxShape">s of the form.</param>
/// <param name="FluxDecayPerK">1/T0 of the thermal roll-off, in 1/K.</param>
/// <param name="FromA">Least current the points cover.</param>
/// <param name="ToA">Greatest current the points cover.</param>
/// <param name="VoltageBeyond">Relative voltage added per factor e of current beyond the points; 0 at nominal.</param>
/// <param name="FluxBeyond">Relative flux added per factor e of current beyond the points; 0 at nominal.</param>
public readonly record struct EmitterModel(
    double LogV,
    double OffsetV,
    double SeriesOhm,
    double SlopeVPerK,
    double ReferenceK,
    double FluxRefLm,
    double FluxRefA,
    FluxForm FluxForm,
    double FluxShape,
    double FluxDecayPerK,
    double FromA,
    double ToA,
    double VoltageBeyond = 0,
    double FluxBeyond = 0
)
{
    /// <summary>Current below which an emitter counts as dark; it keeps the logarithm finite.</summary>
    public static double LeastA => 1e-9;

    /// <summary>Forward voltage in volts, never below zero.</summary>
    /// <param name="currentA">Current in amperes; at or below zero counts as dark.</param>
    /// <param name="junctionK">Junction temperature in kelvin.</param>
    public double VoltageV(double currentA, double junctionK)
    {
        var i = Math.Max(currentA, LeastA);
        var v = (LogV * Math.Log(i)) + OffsetV + (SeriesOhm * i) + (SlopeVPerK * (junctionK - ReferenceK));
        if (VoltageBeyond != 0)
        {
            v *= 1 + (VoltageBeyond * LogBeyond(i));
        }

        return Math.Max(v, 0);
    }

    /// <summary>Luminous flux in lumens, never below zero.</summary>
    /// <param name="currentA">Current in amperes; at or below zero gives no light.</param>
    /// <param name="junctionK">Junction temperature in kelvin.</param>
    public double FluxLm(double currentA, double junctionK)
    {
        if (currentA <= LeastA)
        {
            return 0;
        }

        var x = currentA / FluxRefA;
        var g = FluxForm == FluxForm.Power ? Math.Pow(x, FluxShape) : x * (1 + FluxShape) / (1 + (x * FluxShape));

        // The bound keeps a runaway junction from becoming infinite light where the decay was given with the wrong sign.
        var flux = FluxRefLm * g * Math.Exp(Math.Min(5, -FluxDecayPerK * (junctionK - ReferenceK)));
        if (FluxBeyond != 0)
        {
            flux *= Math.Max(0, 1 + (FluxBeyond * LogBeyond(currentA)));
        }

        return flux;
    }

    /// <summary>Slope of the voltage over the current, dV/dI = LogV/I + SeriesOhm, in ohm.</summary>
    /// <param name="currentA">Current in amperes.</param>
    public double DynamicResistanceOhm(double currentA) => (LogV / Math.Max(currentA, LeastA)) + SeriesOhm;

    /// <summary>Whether a current lies within the points the model was fitted to.</summary>
    public bool Covers(double currentA) => currentA >= FromA * (1 - 1e-9) && currentA <= ToA * (1 + 1e-9);

    /// <summary>How far a current lies beyond the points, as a natural logarithm; 0 inside.</summary>
    public double LogBeyond(double currentA)
    {
        if (currentA < FromA)
        {
            return Math.Log(FromA / Math.Max(currentA, LeastA));
        }

        return currentA > ToA ? Math.Log(currentA / ToA) : 0;
    }

    /// <summary>The current that gives a wanted flux, or null where the model cannot reach it.</summary>
    /// <remarks>Closed form. The growth of error beyond the points is left out: wishes are mapped at nominal.</remarks>
    /// <param name="fluxLm">Wanted flux in lumens; ≥ 0.</param>
    /// <param name="junctionK">Junction temperature in kelvin.</param>
    public double? CurrentForFlux(double fluxLm, double junctionK)
    {
        if (fluxLm <= 0)
        {
            return 0;
        }

        var full = FluxRefLm * Math.Exp(-FluxDecayPerK * (junctionK - ReferenceK));
        if (full <= 0)
        {
            return null;
        }

        var g = fluxLm / full;
        if (FluxForm == FluxForm.Power)
        {
            return FluxRefA * Math.Pow(g, 1 / FluxShape);
        }

        var below = 1 + FluxShape - (g * FluxShape);
        return below <= 1e-9 ? null : FluxRefA * g / below;
    }

    /// <summary>The model of one draw: each named error of the fit multiplied in, without a new fit.</summary>
    /// <remarks>The dynamic resistance and the bend of the flux turn about the upper end of the points.</remarks>
    public EmitterModel With(in EmitterFactors f)
    {
        // About the pivot, V' = Vp + d·(V − Vp) keeps the voltage there and scales its slope; then the whole is scaled.
        var pivot = (LogV * Math.Log(Math.Max(ToA, LeastA))) + OffsetV + (SeriesOhm * ToA);
        var scale = f.Voltage * f.Dynamic;
        var shape =
            FluxForm == FluxForm.Power
                ? Math.Clamp(1 - ((1 - FluxShape) * f.Droop), 0.05, 1)
                : Math.Max(0, FluxShape * f.Droop);
        return this with
        {
            LogV = LogV * scale,
            SeriesOhm = SeriesOhm * scale,
            OffsetV = (OffsetV * scale) + (f.Voltage * (1 - f.Dynamic) * pivot) + f.OffsetV,
            SlopeVPerK = SlopeVPerK * f.Slope,
            FluxRefLm = FluxRefLm * f.Flux,
            FluxShape = shape,
            FluxDecayPerK = FluxDecayPerK * f.Hot,
            VoltageBeyond = f.VoltageBeyond - 1,
            FluxBeyond = f.FluxBeyond - 1,
        };
    }
}
