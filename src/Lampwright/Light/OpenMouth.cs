namespace Lampwright.Light;

/// <summary>What a point before an open funnel sees through its mouth: the emitter, the base and the wall's bands.</summary>
/// <remarks>
/// Seen from a point, a cross-section of the funnel is a rectangle in the plane of the mouth, cut by the mouth; a band is what is seen
/// of its nearer cross-section less what is seen of its farther one. Light that leaves after mirror reflections is spread evenly over
/// the mouth (stated approximation). <b>Source</b>: derived.
/// </remarks>
internal static class OpenMouth
{
    /// <summary>Illuminance at a point of a plane parallel to the mouth, lux per emitter lumen.</summary>
    public static double Seen(
        FunnelEnclosure box,
        ReadOnlySpan<double> bands,
        double mirrored,
        double x,
        double y,
        double distance,
        double exponent,
        double beamFactor
    )
    {
        var (geometry, funnel) = (box.Geometry, box.Geometry.Funnel);
        var perBand = FunnelGeometry.Walls / FunnelEnclosure.PairBands;
        var inner = View(funnel, 0, x, y, distance);
        var sum = bands[0] / geometry.AreasM2[0] * inner;
        for (var b = 1; b <= FunnelEnclosure.PairBands; b++)
        {
            var outer = View(funnel, geometry.Levels[b * perBand], x, y, distance);
            sum += Brightness(box, bands, b) * Math.Max(outer - inner, 0);
            inner = outer;
        }

        sum += mirrored / (funnel.LargeWidthM * funnel.LargeHeightM) * inner;
        return sum + (beamFactor * Emitter(geometry, x, y, distance, exponent));
    }

    /// <summary>Intensity along the axis from far away, candela per emitter lumen.</summary>
    public static double AxisIntensity(
        FunnelEnclosure box,
        ReadOnlySpan<double> bands,
        double mirrored,
        double exponent,
        double beamFactor
    )
    {
        var (geometry, funnel) = (box.Geometry, box.Geometry.Funnel);
        var perBand = FunnelGeometry.Walls / FunnelEnclosure.PairBands;
        var mouth = funnel.LargeWidthM * funnel.LargeHeightM;
        var inner = Math.Min(geometry.AreasM2[0], mouth);
        var sum = bands[0] / geometry.AreasM2[0] * inner;
        for (var b = 1; b <= FunnelEnclosure.PairBands; b++)
        {
            var z = geometry.Levels[b * perBand];
            var outer = Math.Min(4 * funnel.HalfWidthAt(z) * funnel.HalfHeightAt(z), mouth);
            sum += Brightness(box, bands, b) * Math.Max(outer - inner, 0);
            inner = outer;
        }

        return ((sum + mirrored) / Math.PI) + (beamFactor * Emission.PeakIntensityPerLumen(exponent));
    }

    /// <summary>Light scattered by a band of all four walls over its area.</summary>
    private static double Brightness(FunnelEnclosure box, ReadOnlySpan<double> bands, int band)
    {
        var other = band + FunnelEnclosure.PairBands;
        return (bands[band] + bands[other]) / (box.BandAreaM2(band) + box.BandAreaM2(other));
    }

    private static double View(FunnelSpec funnel, double z, double x, double y, double distance)
    {
        var (x0, x1, y0, y1) = Window(funnel, funnel.HalfWidthAt(z), funnel.HalfHeightAt(z), z, x, y, distance);
        return ViewFactors.ElementToRectangle(x0, x1, y0, y1, distance);
    }

    private static double Emitter(FunnelGeometry geometry, double x, double y, double distance, double exponent)
    {
        var (funnel, face) = (geometry.Funnel, geometry.Face);
        var (a, b) = face.Round
            ? (Math.Sqrt(face.AreaM2) / 2, Math.Sqrt(face.AreaM2) / 2)
            : (face.WidthM / 2, face.HeightM / 2);
        var (x0, x1, y0, y1) = Window(funnel, a, b, 0, x, y, distance);
        return BeamThroughRectangle.Share(x0, x1, y0, y1, distance, exponent) / face.AreaM2;
    }

    /// <summary>A centred rectangle at a height in the funnel, seen from the point, in the plane of the mouth and cut by the mouth.</summary>
    private static (double X0, double X1, double Y0, double Y1) Window(
        FunnelSpec funnel,
        double halfWidth,
        double halfHeight,
        double z,
        double x,
        double y,
        double distance
    )
    {
        var shrink = distance / (distance + funnel.DepthM - z);
        var (mx, my) = (funnel.LargeWidthM / 2, funnel.LargeHeightM / 2);
        return (
            Math.Max((-halfWidth - x) * shrink, -mx - x),
            Math.Min((halfWidth - x) * shrink, mx - x),
            Math.Max((-halfHeight - y) * shrink, -my - y),
            Math.Min((halfHeight - y) * shrink, my - y)
        );
    }
}
