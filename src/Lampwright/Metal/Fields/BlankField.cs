using Lampwright.Geometry;
using Lampwright.Geometry.Fields;

namespace Lampwright.Metal.Fields;

/// <summary>Round holes of a blank, held against its outline and each other. Any one unit of length.</summary>
/// <param name="Rims">Rims of the faces laid together, material to the left.</param>
/// <param name="Area">Their area, holes not taken out.</param>
/// <param name="Outside">Places of the holes whose centre does not lie in the metal.</param>
/// <param name="NearEdge">Places of the others whose rim lies nearer to an edge than is wanted, or over it.</param>
/// <param name="ThinWebs">Pairs with less metal between them than is wanted; negative where they run into each other.</param>
public sealed record BlankField(
    IReadOnlyList<Vec2[]> Rims,
    double Area,
    IReadOnlyList<int> Outside,
    IReadOnlyList<int> NearEdge,
    IReadOnlyList<DiscPair> ThinWebs
)
{
    /// <summary>Lays faces together and looks where every hole lies.</summary>
    /// <param name="faces">Corners of the flats and bend zones as they adjoin on the blank.</param>
    /// <param name="x">Centres of the holes.</param>
    /// <param name="y">Centres of the holes.</param>
    /// <param name="radius">Their radii, 0 or more.</param>
    /// <param name="edge">Least metal wanted between a hole and an edge.</param>
    /// <param name="web">Least metal wanted between two holes.</param>
    /// <remarks>A gap that misses what is wanted by less than 1e-9 of it passes: it is the last digit of a number in a file.</remarks>
    public static BlankField Of(
        IReadOnlyList<IReadOnlyList<Vec2>> faces,
        double[] x,
        double[] y,
        double[] radius,
        double edge,
        double web
    )
    {
        Guard.InRange(edge, 0, double.MaxValue);
        Guard.InRange(web, 0, double.MaxValue);
        var rims = FaceUnion.Of(faces);
        var area = 0.0;
        var pieces = new List<Segment2>();
        foreach (var rim in rims)
        {
            area += FaceUnion.SignedArea(rim);
            for (var i = 0; i < rim.Length; i++)
            {
                pieces.Add(Segment2.Of(rim[i], rim[(i + 1) % rim.Length]));
            }
        }

        var grid = new RimGrid(pieces, x.Length);
        var (outside, near) = (new List<int>(), new List<int>());
        var wanted = edge * (1 - 1e-9);
        for (var i = 0; i < x.Length; i++)
        {
            if (!grid.Contains(x[i], y[i]))
            {
                outside.Add(i);
            }
            else if (grid.Distance(x[i], y[i], radius[i] + wanted) < double.PositiveInfinity)
            {
                near.Add(i);
            }
        }

        return new(rims, area, outside, near, DiscGrid.Near(x, y, radius, web * (1 - 1e-9)));
    }
}
