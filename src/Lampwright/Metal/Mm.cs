using System.Globalization;

namespace Lampwright.Metal;

/// <summary>Lengths as people in a shop say them.</summary>
internal static class Mm
{
    /// <summary>Metres as millimetres with at most two places.</summary>
    public static string Of(double metres) =>
        double.IsFinite(metres)
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(metres * 1000, 2) + 0.0:0.##} mm")
            : "no number";

    /// <summary>Radians as degrees with at most one place.</summary>
    public static string Degrees(double radians) =>
        double.IsFinite(radians)
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(radians * 180 / Math.PI, 1) + 0.0:0.#}°")
            : "no number";
}
