using System.Globalization;

namespace Lampwright.Quantities;

/// <summary>A number with its dimension.</summary>
/// <param name="Si">The value in SI base units (temperatures in kelvin, angles in radians).</param>
/// <param name="Dimension">What kind of quantity it is.</param>
public readonly record struct Quantity(double Si, Dimension Dimension)
{
    /// <summary>The value in base units, for messages of last resort.</summary>
    public override string ToString() =>
        Dimension.IsNone
            ? Si.ToString("G6", CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{Si:G6} {Dimension}");
}
