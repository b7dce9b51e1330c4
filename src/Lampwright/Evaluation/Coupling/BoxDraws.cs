using Lampwright.Evaluation.Draws;
using Lampwright.Heat;
using Lampwright.Quantities;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Sizes of what else gets warm.</summary>
/// <param name="CompartmentM2">Outer area of the driver's compartment, m².</param>
/// <param name="DriverM2">Area of the driver's case, m².</param>
/// <param name="FrontM2">Outer area that reflector and diffuser warm, m².</param>
/// <param name="Emissivity">Emissivity of those surfaces.</param>
internal sealed record BoxSizes(double CompartmentM2, double DriverM2, double FrontM2, Value Emissivity);

/// <summary>Driver's compartment and front of one draw in one scene.</summary>
internal readonly record struct Boxes(double AirKPerW, double CaseKPerW, double FrontKPerW)
{
    /// <summary>Air of the compartment and case of the driver, K.</summary>
    public (double AirK, double CaseK) Driver(double lossW, double ambientK) =>
        (ambientK + (AirKPerW * lossW), ambientK + ((AirKPerW + CaseKPerW) * lossW));

    /// <summary>Rise of the front, K.</summary>
    public double FrontRiseK(double absorbedW) => FrontKPerW * absorbedW;
}

/// <summary>Driver's compartment and front of a draw.</summary>
internal sealed class BoxDraws
{
    private readonly BoxSizes _sizes;
    private readonly int _emissivity;

    public BoxDraws(BoxSizes sizes, Variables variables)
    {
        _sizes = sizes;
        _emissivity = variables.Of(sizes.Emissivity);
    }

    /// <summary>The boxes of one draw in one scene.</summary>
    public Boxes At(ReadOnlySpan<double> x, HeatFactors factors, double ambientK)
    {
        var radiation = 4 * 5.670374e-8 * Math.Pow(ambientK + 10, 3) * Math.Clamp(x[_emissivity], 0.01, 1);
        var film = (4.5 * factors.PanelFilm) + (radiation * factors.Emissivity);
        var inside = (4.5 * factors.InsideFilm) + (radiation * factors.Emissivity);
        return new(1 / (film * _sizes.CompartmentM2), 1 / (inside * _sizes.DriverM2), 1 / (film * _sizes.FrontM2));
    }
}
