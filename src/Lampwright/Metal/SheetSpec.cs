namespace Lampwright.Metal;

/// <summary>The sheet that a part is cut from and how the shop bends it. SI units.</summary>
/// <param name="Name">Name in the design file, for example <c>mild</c>.</param>
/// <param name="ThicknessM">Thickness, metres, above 0.</param>
/// <param name="InsideRadiusM">Inside radius the brake makes, metres, 0 or more.</param>
/// <param name="Rule">How bends are allowed for.</param>
/// <param name="DensityKgPerM3">Density, kg/m³, above 0.</param>
public sealed record SheetSpec(
    string Name,
    double ThicknessM,
    double InsideRadiusM,
    BendRule Rule,
    double DensityKgPerM3 = 7850
)
{
    /// <summary>Material designation, for example <c>DC01</c>; names the row of the tables.</summary>
    public string Material { get; init; } = "";

    /// <summary>Modulus of elasticity, pascals; 0 where unknown.</summary>
    public double ElasticModulusPa { get; init; }

    /// <summary>Yield strength, pascals; 0 where unknown.</summary>
    public double YieldPa { get; init; }

    /// <summary>Tensile strength Rm, pascals; 0 where unknown (the least radius is then not checked).</summary>
    public double TensileStrengthPa { get; init; }

    /// <summary>Size of the sheet on the shelf, metres; null where not given (then it is not checked).</summary>
    public (double WidthM, double HeightM)? SheetSizeM { get; init; }
}
