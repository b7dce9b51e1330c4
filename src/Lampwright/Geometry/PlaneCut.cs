namespace Lampwright.Geometry;

/// <summary>What a plane cuts out of solids. The plane is a frame: x and y lie in it, z is its normal; results are in its x and y, metres.</summary>
/// <remarks>
/// Exact for boxes and for plates with straight edges; arcs are cut into chords that leave them by 0.05 mm at most. A face that lies in the plane itself is
/// taken as lying just beside it.
/// </remarks>
public static class PlaneCut
{
    private static readonly double SagM = 5e-5;

    // Solids that only touch the plane are moved off it by this, so that no corner counts twice.
    private static readonly double AsideM = 1e-8;

    // A plate whose normal leaves the plane's by less than this sine lies along the plane.
    private static readonly double AlongSine = 0.02;

    private static readonly (int A, int B)[] BoxEdges =
    [
        .. Enumerable
            .Range(0, 8)
            .SelectMany(i => new[] { 1, 2, 4 }.Where(bit => (i & bit) == 0).Select(bit => (i, i | bit))),
    ];

    /// <summary>The convex outline that the plane cuts out of a box; empty where it misses it.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="place">Frame of the box, whose corner lies at its zero.</param>
    /// <param name="size">Sizes along that frame's axes, metres, above 0.</param>
    public static IReadOnlyList<Vec2> Box(Frame plane, Frame place, Vec3 size)
    {
        var corners = Enumerable
            .Range(0, 8)
            .Select(i =>
                plane.In(
                    place.Out(new((i & 1) == 0 ? 0 : size.X, (i & 2) == 0 ? 0 : size.Y, (i & 4) == 0 ? 0 : size.Z))
                )
            )
            .Select(p => p with { Z = p.Z + AsideM })
            .ToArray();
        var met = new List<Vec2>();
        foreach (var (a, b) in BoxEdges)
        {
            var (p, q) = (corners[a], corners[b]);
            if (p.Z < 0 != q.Z < 0)
            {
                var at = p + ((q - p) * (p.Z / (p.Z - q.Z)));
                met.Add(new(at.X, at.Y));
            }
        }

        return Hull(met);
    }

    /// <summary>What the plane cuts out of a plate with holes: a four-cornered piece for each stretch of metal.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="place">Frame of the plate: its outline lies at z = 0, its metal from there to -thickness.</param>
    /// <param name="outline">Outline, in x and y of that frame.</param>
    /// <param name="holes">Holes, in the same frame.</param>
    /// <param name="thicknessM">Thickness, metres, above 0.</param>
    public static IReadOnlyList<IReadOnlyList<Vec2>> Plate(
        Frame plane,
        Frame place,
        Outline outline,
        IEnumerable<Outline> holes,
        double thicknessM
    )
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(holes);

        // The plane n·p = d, told in the plate's frame.
        var n = new Vec3(plane.Z.Dot(place.X), plane.Z.Dot(place.Y), plane.Z.Dot(place.Z));
        var d = plane.Z.Dot(plane.Origin - place.Origin) + AsideM;
        var across = new Vec2(n.X, n.Y);
        if (across.Length < AlongSine)
        {
            return [];
        }

        Vec2 Foot(double z) => across * ((d - (n.Z * z)) / across.Dot(across));
        var along = across.Unit.Left;
        var middle = Foot(-thicknessM / 2);
        var metal = Stretches(outline, middle, along);
        foreach (var hole in holes)
        {
            metal = [.. metal.SelectMany(m => Without(m, Stretches(hole, middle, along)))];
        }

        Vec2 At(double s, double z)
        {
            var on = Foot(z) + (along * s);
            var p = plane.In(place.Out(new(on.X, on.Y, z)));
            return new(p.X, p.Y);
        }

        return
        [
            .. metal.Select(m =>
                (IReadOnlyList<Vec2>)[At(m.From, 0), At(m.To, 0), At(m.To, -thicknessM), At(m.From, -thicknessM)]
            ),
        ];
    }

    /// <summary>The convex outline round points, counter-clockwise; empty for fewer than three that do not lie on a line.</summary>
    /// <remarks>Source: Andrew, Another efficient algorithm for convex hulls in two dimensions, 1979.</remarks>
    public static IReadOnlyList<Vec2> Hull(IEnumerable<Vec2> points)
    {
        var sorted = points.OrderBy(p => p.X).ThenBy(p => p.Y).ToList();
        if (sorted.Count < 3)
        {
            return [];
        }

        List<Vec2> Half(IEnumerable<Vec2> order)
        {
            var chain = new List<Vec2>();
            foreach (var p in order)
            {
                while (chain.Count > 1 && (chain[^1] - chain[^2]).Cross(p - chain[^1]) <= 1e-14)
                {
                    chain.RemoveAt(chain.Count - 1);
                }

                chain.Add(p);
            }

            chain.RemoveAt(chain.Count - 1);
            return chain;
        }

        List<Vec2> hull = [.. Half(sorted), .. Half(Enumerable.Reverse(sorted))];
        return hull.Count < 3 ? [] : hull;
    }

    private static List<(double From, double To)> Stretches(Outline outline, Vec2 on, Vec2 along)
    {
        var points = outline.Points(SagM);
        var met = new List<double>();
        for (var i = 0; i < points.Count; i++)
        {
            var (a, b) = (points[i] - on, points[(i + 1) % points.Count] - on);
            var (p, q) = (along.Cross(a), along.Cross(b));
            if (p < 0 != q < 0)
            {
                met.Add((a + ((b - a) * (p / (p - q)))).Dot(along));
            }
        }

        met.Sort();
        return [.. met.Chunk(2).Where(c => c.Length == 2).Select(c => (c[0], c[1]))];
    }

    private static IEnumerable<(double From, double To)> Without(
        (double From, double To) metal,
        List<(double From, double To)> holes
    )
    {
        var from = metal.From;
        foreach (var (start, end) in holes)
        {
            if (end <= from || start >= metal.To)
            {
                continue;
            }

            if (start > from)
            {
                yield return (from, start);
            }

            from = Math.Max(from, end);
        }

        if (from < metal.To)
        {
            yield return (from, metal.To);
        }
    }
}
