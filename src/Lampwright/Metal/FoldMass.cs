using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Centre of mass of the folded part: flats and holes exactly, bends as pieces of a ring.</summary>
/// <remarks>
/// Each region weighs what it weighs on the blank (so that the mass is the blank's, not that of a solid drawn at mid-thickness, which is
/// too heavy by (0.5 - K) T · angle · T per width). <b>Checked by</b>: invariant (a box's balance against sums by hand).
/// </remarks>
internal static class FoldMass
{
    public static Vec3 Centre(List<Panel> panels, List<PlacedHole> holes, double thickness)
    {
        var (area, moment) = (0.0, default(Vec3));
        foreach (var panel in panels)
        {
            var flat = new Outline(panel.Flat);
            var a = flat.SignedArea;
            var c = flat.Centroid;
            area += a;
            moment += panel.Frame.Out(new(c.X, c.Y, -thickness / 2)) * a;
            if (panel.IsFlange)
            {
                var (zoneArea, zoneMoment) = Zone(panel, thickness);
                area += zoneArea;
                moment += zoneMoment;
            }
        }

        foreach (var hole in holes)
        {
            var a = hole.Outline.Area;
            var c = hole.Outline.Centroid;
            area -= a;
            moment -= hole.Panel.Frame.Out(new(c.X, c.Y, -thickness / 2)) * a;
        }

        return area > 0 ? moment / area : default;
    }

    /// <summary>Point of a bend: x along the root, angle turned so far (signed), depth below the outer skin.</summary>
    public static Vec3 BendPoint(Panel panel, double x, double turned, double depth, double thickness)
    {
        var reach =
            (panel.SignedAngle > 0 ? panel.Bend!.InsideRadiusM + thickness : -panel.Bend!.InsideRadiusM) - depth;
        var (sin, cos) = Math.SinCos(turned);
        return panel.AxisFrame.Out(new(x, reach * sin, reach * cos));
    }

    private static (double Area, Vec3 Moment) Zone(Panel panel, double thickness)
    {
        var (r, t) = (panel.Bend!.InsideRadiusM, thickness);
        var (outer, inner) = (r + t, r);
        var ring = 2.0 / 3 * ((outer * outer * outer) - (inner * inner * inner)) / ((outer * outer) - (inner * inner));
        var depth = panel.SignedAngle > 0 ? outer - ring : ring - inner;
        var (area, moment) = (0.0, default(Vec3));
        var stops = BendZone.Stops(panel);
        for (var k = 1; k < stops.Count; k++)
        {
            var (v0, v1) = (stops[k - 1], stops[k]);
            foreach (var (at, weight) in Gauss)
            {
                var v = v0 + ((v1 - v0) * at);
                var (from, to) = BendZone.Range(panel, v);
                var piece = (to - from) * (v1 - v0) * weight;
                var turned = panel.SignedAngle * v / panel.Bend.AllowanceM;
                area += piece;
                moment += BendPoint(panel, (from + to) / 2, turned, depth, thickness) * piece;
            }
        }

        return (area, moment);
    }

    /// <summary>Gauss-Legendre on 0 to 1, three points.</summary>
    private static readonly (double At, double Weight)[] Gauss =
    [
        (0.5 - (Math.Sqrt(0.6) / 2), 5.0 / 18),
        (0.5, 8.0 / 18),
        (0.5 + (Math.Sqrt(0.6) / 2), 5.0 / 18),
    ];
}
