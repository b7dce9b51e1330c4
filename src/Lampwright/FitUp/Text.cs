using System.Globalization;

namespace Lampwright.FitUp;

/// <summary>Numbers in findings.</summary>
internal static class Text
{
    /// <summary>Text in the invariant culture.</summary>
    public static string Of(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>Metres as millimetres with their unit.</summary>
    public static string Mm(double metres) => Of($"{metres * 1000:0.##} mm");

    /// <summary>Radians as degrees with their sign.</summary>
    public static string Degrees(double radians) => Of($"{radians * 180 / Math.PI:0.#}°");
}
