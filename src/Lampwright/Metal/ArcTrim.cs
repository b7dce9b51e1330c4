using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Pieces of an edge that is an arc.</summary>
internal static class ArcTrim
{
    /// <summary>Share of the arc's angle at which a point of its circle lies; outside 0 to 1 where it is not on the arc.</summary>
    public static double Share(PanelEdge edge, Vec2 point)
    {
        var (centre, _) = new Outline([new(edge.From, edge.Bulge), new(edge.To)]).Arc(0);
        var angle = 4 * Math.Atan(edge.Bulge);
        var (a, p) = (edge.From - centre, point - centre);
        var turned = Math.Atan2(a.Cross(p), a.Dot(p));
        if (angle < 0)
        {
            (turned, angle) = (-turned, -angle);
        }

        if (turned < -1e-9)
        {
            turned += 2 * Math.PI;
        }

        return Math.Max(0, turned) / angle;
    }

    /// <summary>Bulge of the piece of the edge between two of its points.</summary>
    public static double Bulge(PanelEdge edge, Vec2 from, Vec2 to)
    {
        if (edge.IsStraight)
        {
            return 0;
        }

        var share = Share(edge, to) - Share(edge, from);
        return Math.Tan(Math.Atan(edge.Bulge) * Math.Clamp(share, 0, 1));
    }
}
