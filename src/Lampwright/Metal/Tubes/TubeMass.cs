using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Volume and centre of mass of a tube between two plane cuts.</summary>
/// <remarks>
/// The section is symmetric about its middle, so the volume is the section times the length there. Over the section a cut lies at
/// x = m + a·η + b·ζ; with the second moments I of the section ∫x² dA = A·m² + a²·I_η + b²·I_ζ and ∫x·η dA = a·I_η.
/// <b>Source</b>: geometry. <b>Checked by</b>: <i>invariant</i> (sums over slices).
/// </remarks>
internal static class TubeMass
{
    public static double Volume(TubeShape shape, TubeSpec tube) =>
        shape.Section.AreaM2 * (tube.LengthM - shape.Plane(tube.Start).Middle - shape.Plane(tube.End).Middle);

    public static Vec3 Centre(TubeShape shape, TubeSpec tube, List<PlacedHole> holes)
    {
        var section = shape.Section;
        var (area, iy, iz) = (section.AreaM2, section.AcrossWidthM4, section.AcrossHeightM4);
        var (s, e) = (shape.Plane(tube.Start), shape.Plane(tube.End));
        var (from, to) = (s.Middle, tube.LengthM - e.Middle);
        double Square(double m, double a, double b) => (area * m * m) + (a * a * iy) + (b * b * iz);
        var volume = area * (to - from);
        var moment = new Vec3(
            (Square(to, -e.SlopeY, -e.SlopeDepth) - Square(from, s.SlopeY, s.SlopeDepth)) / 2,
            (volume * tube.WidthM / 2) - ((e.SlopeY + s.SlopeY) * iy),
            -((volume * tube.HeightM / 2) - ((e.SlopeDepth + s.SlopeDepth) * iz))
        );
        foreach (var hole in holes)
        {
            var (taken, c) = (hole.Outline.Area * shape.WallM, hole.Outline.Centroid);
            volume -= taken;
            moment -= hole.Panel.Frame.Out(new(c.X, c.Y, -shape.WallM / 2)) * taken;
        }

        return volume > 0 ? moment / volume : default;
    }
}
