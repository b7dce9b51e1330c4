namespace Lampwright.Quantities;

/// <summary>One number of a design: nominal value, spread, origin and the place it stands at.</summary>
/// <param name="Nominal">Nominal value in SI units (temperatures in kelvin, angles in radians, lengths in metres).</param>
/// <param name="HalfWidth">
/// Half of the spread in the same unit, 0 where none was given. A spread states limits within which every value is equally
/// likely (rectangular; JCGM 100:2008, 4.3.7).
/// </param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="Path">Path in the design file, for example <c>driver.main.current.rated</c>; it names the variable in the draws.</param>
public sealed record Value(double Nominal, double HalfWidth, Origin Origin, string Path)
{
    /// <summary>A value without spread that the program itself computed or assumed.</summary>
    public static Value Exact(double nominal, string path = "") => new(nominal, 0, Origin.Computed, path);
}
