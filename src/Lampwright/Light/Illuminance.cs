namespace Lampwright.Light;

/// <summary>Illuminance of extended sources on a plane parallel to them, in closed form.</summary>
/// <remarks>
/// <b>Validity</b>: source of even luminance (Lambertian), nothing in between. <b>Source</b>: shared reference page light, section 3;
/// IES definitions 9.1.1 for the five-times rule. <b>Checked by</b>: L.P-5a, L.P-5b, L.P-6a, L.P-7.
/// </remarks>
public static class Illuminance
{
    /// <summary>Illuminance in lux on the axis of a disc of even luminance.</summary>
    /// <param name="luminance">Luminance in candela per square metre, 0 or more.</param>
    /// <param name="diameterM">Diameter in metres, above 0.</param>
    /// <param name="distanceM">Distance in metres, above 0.</param>
    public static double OnAxisOfDisc(double luminance, double diameterM, double distanceM)
    {
        var radius = Guard.Positive(diameterM) / 2;
        return Math.PI * luminance * radius * radius / ((radius * radius) + (Guard.Positive(distanceM) * distanceM));
    }

    /// <summary>Illuminance in lux on the axis of a rectangle of even luminance.</summary>
    /// <param name="luminance">Luminance in candela per square metre, 0 or more.</param>
    /// <param name="widthM">Width in metres, above 0.</param>
    /// <param name="heightM">Height in metres, above 0.</param>
    /// <param name="distanceM">Distance in metres, above 0.</param>
    public static double OnAxisOfRectangle(double luminance, double widthM, double heightM, double distanceM) =>
        Math.PI
        * luminance
        * 4
        * ViewFactors.ElementToCornerRectangle(
            Guard.Positive(widthM) / 2,
            Guard.Positive(heightM) / 2,
            Guard.Positive(distanceM)
        );

    /// <summary>Illuminance in lux of a rectangle of even luminance at a point of a parallel plane off its axis.</summary>
    /// <param name="luminance">Luminance in candela per square metre, 0 or more.</param>
    /// <param name="widthM">Width in metres, above 0.</param>
    /// <param name="heightM">Height in metres, above 0.</param>
    /// <param name="distanceM">Distance of the planes in metres, above 0.</param>
    /// <param name="xM">Offset from the axis along the width, metres.</param>
    /// <param name="yM">Offset from the axis along the height, metres.</param>
    public static double OfRectangleAt(
        double luminance,
        double widthM,
        double heightM,
        double distanceM,
        double xM,
        double yM
    )
    {
        var (a, b) = (Guard.Positive(widthM) / 2, Guard.Positive(heightM) / 2);
        return Math.PI
            * luminance
            * ViewFactors.ElementToRectangle(-a - xM, a - xM, -b - yM, b - yM, Guard.Positive(distanceM));
    }

    /// <summary>By how much the inverse-square shortcut reads high on the axis of a disc (0.01 is 1 %).</summary>
    /// <param name="diameterM">Diameter in metres, above 0.</param>
    /// <param name="distanceM">Distance in metres, above 0.</param>
    public static double ShortcutErrorOfDisc(double diameterM, double distanceM)
    {
        var ratio = Guard.Positive(diameterM) / 2 / Guard.Positive(distanceM);
        return ratio * ratio;
    }

    /// <summary>By how much the inverse-square shortcut reads high on the axis of a rectangle (0.01 is 1 %).</summary>
    /// <param name="widthM">Width in metres, above 0.</param>
    /// <param name="heightM">Height in metres, above 0.</param>
    /// <param name="distanceM">Distance in metres, above 0.</param>
    public static double ShortcutErrorOfRectangle(double widthM, double heightM, double distanceM) =>
        (widthM * heightM / (distanceM * distanceM) / OnAxisOfRectangle(1, widthM, heightM, distanceM)) - 1;
}
