using Lampwright.Geometry;

namespace Lampwright.Light;

/// <summary>
/// How the exchange of the funnel's rings is shared between the pair of walls across x and the pair across y, which see each other and the
/// mouth differently when the funnel is not square.
/// </summary>
/// <remarks>
/// View of a point to a polygon by Lambert's sum over its sides (closed form), at two by three Gauss points of each half wall ring. Only the shares
/// are taken from here: the sums of ring and ring stay those of the exact exchange areas. <b>Source</b>: Lambert's formula as in Siegel
/// and Howell, Thermal Radiation Heat Transfer, 4th ed. <b>Accuracy</b>: a few percent of a share where two walls meet at an edge.
/// </remarks>
internal sealed class WallPairs
{
    private readonly FunnelSpec funnel;
    private readonly double[] levels;

    public WallPairs(FunnelSpec funnel, double[] levels)
    {
        this.funnel = funnel;
        this.levels = levels;
    }

    /// <summary>Area of both walls of a pair in a ring, square metres.</summary>
    /// <param name="pair">0 for the walls across x, 1 for those across y.</param>
    /// <param name="ring">Ring, from the small opening up.</param>
    public double AreaM2(int pair, int ring)
    {
        var (z0, z1) = (levels[ring], levels[ring + 1]);
        var (a0, b0, a1, b1) = (
            funnel.HalfWidthAt(z0),
            funnel.HalfHeightAt(z0),
            funnel.HalfWidthAt(z1),
            funnel.HalfHeightAt(z1)
        );
        var rise = z1 - z0;
        return pair == 0
            ? 2 * (b0 + b1) * Math.Sqrt((rise * rise) + ((a1 - a0) * (a1 - a0)))
            : 2 * (a0 + a1) * Math.Sqrt((rise * rise) + ((b1 - b0) * (b1 - b0)));
    }

    /// <summary>Exchange areas of one ring's pairs with another's: from x to x, x to y, y to x, y to y, square metres.</summary>
    public (double XX, double XY, double YX, double YY) Between(int from, int to)
    {
        var (xx, xy) = OfPair(0, from, to);
        var (yy, yx) = OfPair(1, from, to);
        return (xx, xy, yx, yy);
    }

    /// <summary>Exchange area of a pair of walls in a ring with a centred rectangle of the mouth or the base, square metres.</summary>
    public double WithRectangle(int pair, int ring, double halfWidth, double halfHeight, double z)
    {
        ReadOnlySpan<Vec3> corners =
        [
            new(-halfWidth, -halfHeight, z),
            new(halfWidth, -halfHeight, z),
            new(halfWidth, halfHeight, z),
            new(-halfWidth, halfHeight, z),
        ];
        var sum = 0.0;
        foreach (var (at, weight) in Points(pair, ring))
        {
            sum += weight * View(at, Inward(pair), corners);
        }

        return sum * AreaM2(pair, ring);
    }

    /// <summary>View of a point of the base to both walls of a pair in a ring.</summary>
    public double FromBase(Vec3 point, int pair, int ring)
    {
        Span<Vec3> corners = stackalloc Vec3[4];
        var up = new Vec3(0, 0, 1);
        Corners(pair, ring, 1, corners);
        var sum = View(point, up, corners);
        Corners(pair, ring, -1, corners);
        return sum + View(point, up, corners);
    }

    private (double Same, double Other) OfPair(int pair, int from, int to)
    {
        Span<Vec3> corners = stackalloc Vec3[4];
        var normal = Inward(pair);
        var (same, other) = (0.0, 0.0);
        foreach (var (at, weight) in Points(pair, from))
        {
            Corners(pair, to, -1, corners);
            same += weight * View(at, normal, corners);
            Corners(1 - pair, to, 1, corners);
            other += weight * View(at, normal, corners);
            Corners(1 - pair, to, -1, corners);
            other += weight * View(at, normal, corners);
        }

        var area = AreaM2(pair, from);
        return (same * area, other * area);
    }

    /// <summary>Gauss points on half of the wall on the positive side (the other half mirrors it), with weights that sum to 1.</summary>
    private (Vec3 At, double Weight)[] Points(int pair, int ring)
    {
        ReadOnlySpan<double> up = [0.2113248654051871, 0.7886751345948129];
        ReadOnlySpan<double> along = [0.1127016653792583, 0.5, 0.8872983346207417];
        ReadOnlySpan<double> weights = [5.0 / 18, 8.0 / 18, 5.0 / 18];
        var points = new (Vec3, double)[6];
        var total = 0.0;
        for (var i = 0; i < 2; i++)
        {
            var z = levels[ring] + (up[i] * (levels[ring + 1] - levels[ring]));
            var (a, b) = (funnel.HalfWidthAt(z), funnel.HalfHeightAt(z));
            for (var j = 0; j < 3; j++)
            {
                // Longer lines of the trapezoid count more.
                var weight = weights[j] * (pair == 0 ? b : a);
                points[(i * 3) + j] = (pair == 0 ? new Vec3(a, b * along[j], z) : new Vec3(a * along[j], b, z), weight);
                total += weight;
            }
        }

        for (var i = 0; i < points.Length; i++)
        {
            points[i].Item2 /= total;
        }

        return points;
    }

    private Vec3 Inward(int pair)
    {
        var slope =
            (pair == 0 ? funnel.LargeWidthM - funnel.SmallWidthM : funnel.LargeHeightM - funnel.SmallHeightM)
            / 2
            / funnel.DepthM;
        return (pair == 0 ? new Vec3(-1, 0, slope) : new Vec3(0, -1, slope)) / Math.Sqrt(1 + (slope * slope));
    }

    private void Corners(int pair, int ring, double sign, Span<Vec3> corners)
    {
        var (z0, z1) = (levels[ring], levels[ring + 1]);
        var (a0, b0, a1, b1) = (
            funnel.HalfWidthAt(z0),
            funnel.HalfHeightAt(z0),
            funnel.HalfWidthAt(z1),
            funnel.HalfHeightAt(z1)
        );
        if (pair == 0)
        {
            corners[0] = new(sign * a0, -b0, z0);
            corners[1] = new(sign * a0, b0, z0);
            corners[2] = new(sign * a1, b1, z1);
            corners[3] = new(sign * a1, -b1, z1);
        }
        else
        {
            corners[0] = new(-a0, sign * b0, z0);
            corners[1] = new(a0, sign * b0, z0);
            corners[2] = new(a1, sign * b1, z1);
            corners[3] = new(-a1, sign * b1, z1);
        }
    }

    /// <summary>Lambert's formula: half the sum, over the polygon's sides, of the angle a side takes times the tilt of its plane.</summary>
    private static double View(Vec3 point, Vec3 normal, ReadOnlySpan<Vec3> corners)
    {
        var sum = 0.0;
        var before = corners[^1] - point;
        foreach (var corner in corners)
        {
            var here = corner - point;
            var cross = before.Cross(here);
            var sine = cross.Length;
            if (sine > 0)
            {
                sum += Math.Atan2(sine, before.Dot(here)) * cross.Dot(normal) / sine;
            }

            before = here;
        }

        return Math.Abs(sum) / (2 * Math.PI);
    }
}
