using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Rounds or cuts off the corners of a face that no flange touches.</summary>
/// <remarks>
/// A corner of the turn θ rounded with r begins r·tan(θ/2) before it; cut off by a leg c it begins c before it. Edges keep their names, the new
/// pieces are called after their neighbours (<c>right_top</c>). Corners at arcs stay. <b>Source</b>: geometry. <b>Checked by</b>: <i>invariant</i>.
/// </remarks>
public static class FaceCornerCut
{
    /// <summary>The outline with its free corners rounded or cut off.</summary>
    /// <param name="outline">The outline of the face.</param>
    /// <param name="sizeM">Radius, or leg cut off each way, metres, above 0.</param>
    /// <param name="round">True for a radius.</param>
    /// <param name="bent">Ids of the edges that carry a flange; their corners stay.</param>
    public static Outline Of(Outline outline, double sizeM, bool round, IReadOnlySet<string> bent)
    {
        Guard.Positive(sizeM);
        var corners = EdgeName.Named(outline);
        var cut = new List<Corner>(2 * corners.Length);
        for (var i = 0; i < corners.Length; i++)
        {
            var (before, here) = (corners[(i + corners.Length - 1) % corners.Length], corners[i]);
            var after = corners[(i + 1) % corners.Length];
            var (into, outOf) = ((here.Point - before.Point).Unit, (after.Point - here.Point).Unit);
            var turn = Math.Atan2(into.Cross(outOf), into.Dot(outOf));
            var free = !bent.Contains(before.EdgeId) && !bent.Contains(here.EdgeId);
            if (!free || before.Bulge != 0 || here.Bulge != 0 || Math.Abs(turn) < 1e-6)
            {
                cut.Add(here);
                continue;
            }

            var back = round ? sizeM * Math.Tan(Math.Abs(turn) / 2) : sizeM;
            cut.Add(new(here.Point - (into * back), round ? Math.Tan(turn / 4) : 0, $"{before.EdgeId}_{here.EdgeId}"));
            cut.Add(here with { Point = here.Point + (outOf * back) });
        }

        return new(cut);
    }

    /// <summary>The largest radius that all corners of straight edges can be rounded with, and the edge that allows no more.</summary>
    /// <param name="outline">The outline, its corners sharp.</param>
    public static (double MostM, int Edge) LargestRound(Outline outline)
    {
        var n = outline.Corners.Count;
        Vec2 Edge(int i) => outline.Corners[(i + 1) % n].Point - outline.Corners[i % n].Point;
        double Share(int corner)
        {
            var (into, outOf) = (Edge(corner + n - 1), Edge(corner));
            return Math.Tan(Math.Abs(Math.Atan2(into.Cross(outOf), into.Dot(outOf))) / 2);
        }

        var (most, edge) = (double.PositiveInfinity, 0);
        for (var i = 0; i < n; i++)
        {
            var fits = Edge(i).Length / (Share(i) + Share(i + 1));
            if (fits < most)
            {
                (most, edge) = (fits, i);
            }
        }

        return (most, edge);
    }
}
