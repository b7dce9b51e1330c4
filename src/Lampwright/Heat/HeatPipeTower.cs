namespace Lampwright.Heat;

/// <summary>A stack of plates on heat pipes that stand on the base.</summary>
/// <remarks>
/// Stated simplifications: each pipe is one resistance, evenly heated; a plate is fins round each pipe, of equal area; the air passes between the
/// plates as between walls of one temperature, and the pipes do not disturb it; base and pipes give nothing off themselves.
/// The error of it all is <see cref="HeatMethods.HeatPipes"/>.
/// </remarks>
/// <param name="Pipes">Legs of pipe that pass the stack, 1 or more.</param>
/// <param name="PipeDiameterM">Diameter of a pipe, m, above 0.</param>
/// <param name="PipeKPerW">From base to plates of one leg, K/W, above 0.</param>
/// <param name="PipeMostW">Heat that one leg carries at most, W; null where it is not known.</param>
/// <param name="Plates">Number of plates, 2 or more.</param>
/// <param name="AcrossM">Plate across the air's way, m, above 0.</param>
/// <param name="AlongM">Plate along the air's way, m, above 0.</param>
/// <param name="ThicknessM">Thickness of a plate, m, above 0.</param>
/// <param name="GapM">Free gap between two plates, m, above 0.</param>
public sealed record HeatPipeTower(
    int Pipes,
    double PipeDiameterM,
    double PipeKPerW,
    double? PipeMostW,
    int Plates,
    double AcrossM,
    double AlongM,
    double ThicknessM,
    double GapM
)
{
    /// <summary>Height of the stack, m.</summary>
    public double HeightM => (Plates * ThicknessM) + ((Plates - 1) * GapM);

    /// <summary>Resistance of all pipes together, K/W.</summary>
    public double PipesKPerW => PipeKPerW / Pipes;

    /// <summary>True when it can be computed with.</summary>
    public bool IsUsable =>
        Pipes > 0
        && Plates > 1
        && PipeKPerW > 0
        && GapM > 1e-5
        && ThicknessM > 0
        && PipeDiameterM > 0
        && AlongM > 0
        && AcrossM > 0
        && EqualRadiusM > 1.01 * PipeDiameterM / 2;

    /// <summary>Outer radius of the round fin that has the share of the plate of one pipe, m.</summary>
    internal double EqualRadiusM => Math.Sqrt(AcrossM * AlongM / (Math.PI * Pipes));
}
