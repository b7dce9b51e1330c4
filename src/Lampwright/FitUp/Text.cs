using System.Globalization;

namespace Lampwright.FitUp;

/// <summary>Numbers in findings.</summary>
internal static class Text
{
    /// <summary>Text in the invariant culture.</summary>
    public static string Of(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>Metres as millimetres with their unit.</summary>
    public static string Mm(double metres) => Of($"{Math.Round(metres * 1000, 2) + 0.0:0.##} mm");

    /// <summary>Radians as degrees with their sign.</summary>
    public static string Degrees(double radians) => Of($"{Math.Round(radians * 180 / Math.PI, 1) + 0.0:0.#}°");
}
