using System.Globalization;

namespace Lampwright.Files.Drawings;

/// <summary>Numbers as drawings and files write them, whatever the machine's culture.</summary>
internal static class Numbers
{
    /// <summary>Metres as millimetres for people, to a hundredth: <c>4.3</c>, <c>27.75</c>.</summary>
    public static string Mm(double metres) => (metres * 1000).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Millimetres as a rule is read: to a twentieth, the finest a scriber follows.</summary>
    public static double Rounded(double millimetres) => (Math.Floor((millimetres * 20) + 0.5 + 1e-6) / 20) + 0.0;

    /// <summary>A place in millimetres as a rule is read: <c>72.75</c>, <c>120</c>.</summary>
    public static string Place(double millimetres) =>
        Rounded(millimetres).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A number for people, to a tenth, without a trailing zero and without a minus before zero.</summary>
    public static string Tenths(double value) =>
        (Math.Round(value, 1, MidpointRounding.AwayFromZero) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A number for a file, to a millionth.</summary>
    public static string File(double value) =>
        (Math.Round(value, 6) + 0.0).ToString("0.0#####", CultureInfo.InvariantCulture);

    /// <summary>A number for an SVG, to a ten-thousandth.</summary>
    public static string Svg(double value) =>
        (Math.Round(value, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);
}
