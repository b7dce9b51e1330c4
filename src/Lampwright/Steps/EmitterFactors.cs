namespace Lampwright.Steps;

/// <summary>What one draw multiplies an emitter model by; all 1 at nominal.</summary>
/// <param name="Voltage">Forward voltage (<c>steps.emitter_voltage</c>).</param>
/// <param name="Dynamic">Dynamic resistance about the upper end of the points (<c>steps.emitter_dynamic</c>).</param>
/// <param name="Slope">Voltage slope over temperature (<c>steps.emitter_slope</c>).</param>
/// <param name="Flux">Flux (<c>steps.emitter_flux</c>).</param>
/// <param name="Droop">Bend of the flux over the current (<c>steps.emitter_droop</c>).</param>
/// <param name="Hot">Thermal roll-off of the flux (<c>steps.emitter_hot</c>).</param>
/// <param name="VoltageBeyond">1 + relative voltage per factor e of current beyond the points.</param>
/// <param name="FluxBeyond">1 + relative flux per factor e of current beyond the points.</param>
/// <param name="OffsetV">Voltage added, in volts; 0 at nominal. For a measured shift of one sample.</param>
public readonly record struct EmitterFactors(
    double Voltage,
    double Dynamic,
    double Slope,
    double Flux,
    double Droop,
    double Hot,
    double VoltageBeyond,
    double FluxBeyond,
    double OffsetV = 0
)
{
    /// <summary>Factors that change nothing.</summary>
    public static EmitterFactors Nominal { get; } = new(1, 1, 1, 1, 1, 1, 1, 1);

    /// <summary>How many factors a fit names: the length and order of <see cref="EmitterFit.MethodErrors"/>.</summary>
    public static int Count => 8;

    /// <summary>The factors from as many numbers, in the order of <see cref="EmitterFit.MethodErrors"/>.</summary>
    public static EmitterFactors From(ReadOnlySpan<double> f) =>
        f.Length == Count
            ? new(f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7])
            : throw new ArgumentException("An emitter takes eight factors.", nameof(f));
}
