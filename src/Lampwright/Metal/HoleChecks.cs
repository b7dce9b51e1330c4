using System.Globalization;
using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Holds holes against bends, edges and each other; one finding per hole of the design, for its worst member.</summary>
internal static class HoleChecks
{
    public static void Check(PartSpec spec, List<PlacedHole> holes, List<Finding> findings)
    {
        var flats = new Dictionary<Panel, FlatRim>();
        var worst = new Dictionary<HoleSpec, HoleDistances>();
        foreach (var hole in holes)
        {
            if (!flats.TryGetValue(hole.Panel, out var rim))
            {
                flats[hole.Panel] = rim = new FlatRim(hole.Panel);
            }

            if (!worst.TryGetValue(hole.Spec, out var distances))
            {
                worst[hole.Spec] = distances = new();
            }

            distances.Take(hole, rim);
        }

        foreach (var group in holes.GroupBy(h => h.Panel))
        {
            HoleWebs.Take([.. group], spec.Limits.WebM ?? spec.Sheet.ThicknessM, worst);
        }

        foreach (var (hole, distances) in worst)
        {
            Report(spec, hole, distances, findings);
        }
    }

    private static void Report(PartSpec spec, HoleSpec hole, HoleDistances seen, List<Finding> findings)
    {
        var (path, t, limits) = ($"part.{spec.Name}.hole.{hole.Id}", spec.Sheet.ThicknessM, spec.Limits);
        void Say(Rule rule, string at, string what, double observed, double limit) =>
            findings.Add(
                rule.At(
                    path,
                    $"Hole {hole.Id}{at} in {hole.On} {what} {Mm.Of(observed)}; {Mm.Of(limit)} is wanted.",
                    Mm.Of(observed),
                    Mm.Of(limit)
                )
            );

        if (seen.Edge.Distance < -1e-9 || seen.IsOutside)
        {
            findings.Add(
                MetalRules.HoleOutside.At(
                    path + ".at",
                    $"Hole {hole.Id}{seen.Edge.Member} does not lie inside {hole.On}"
                        + (seen.IsOutside ? "." : $": it reaches {Mm.Of(-seen.Edge.Distance)} past an edge.")
                )
            );
            return;
        }

        if (seen.Bend.Distance < -1e-9)
        {
            findings.Add(
                MetalRules.HoleInBend.At(
                    path + ".at",
                    $"Hole {hole.Id}{seen.Bend.Member} reaches {Mm.Of(-seen.Bend.Distance)} into a bend of {hole.On}."
                )
            );
            return;
        }

        var large = hole.Shape.Kind != HoleShapeKind.Round || hole.Shape.DiameterM > limits.LargeHoleThicknesses * t;
        var toBend =
            (large ? limits.LargeHoleToBendM : limits.HoleToBendM) ?? (((large ? 2.5 : 2) * t) + seen.BendRadius);
        if (seen.Bend.Distance < toBend - 1e-9)
        {
            Say(
                MetalRules.HoleNearBend,
                seen.Bend.Member,
                "lies beside a bend's tangent by",
                seen.Bend.Distance,
                toBend
            );
        }

        var (least, good) = (limits.HoleToEdgeLeastM ?? t, limits.HoleToEdgeM ?? (2 * t));
        if (seen.Edge.Distance < least - 1e-9)
        {
            Say(MetalRules.HoleAtEdge, seen.Edge.Member, "leaves metal to an edge of", seen.Edge.Distance, least);
        }
        else if (seen.Edge.Distance < good - 1e-9)
        {
            Say(MetalRules.HoleNearEdge, seen.Edge.Member, "leaves metal to an edge of", seen.Edge.Distance, good);
        }

        if (seen.Web.Distance < 0)
        {
            findings.Add(
                MetalRules.HolesOverlap.At(path, $"Hole {hole.Id}{seen.Web.Member} runs into {seen.WebWith}.")
            );
        }
        else if (seen.Web.Distance < (limits.WebM ?? t) - 1e-9)
        {
            Say(
                MetalRules.ThinWeb,
                seen.Web.Member,
                $"leaves a web to {seen.WebWith} of",
                seen.Web.Distance,
                limits.WebM ?? t
            );
        }

        var smallest = Math.Min(hole.Shape.LengthM, hole.Shape.WidthM);
        if (smallest < (limits.LeastHoleM ?? t) - 1e-9)
        {
            Say(MetalRules.SmallHole, "", "measures", smallest, limits.LeastHoleM ?? t);
        }
    }
}

/// <summary>Least distances of the members of one hole of the design.</summary>
internal sealed class HoleDistances
{
    public (double Distance, string Member) Edge { get; private set; } = (double.PositiveInfinity, "");

    public (double Distance, string Member) Bend { get; private set; } = (double.PositiveInfinity, "");

    public (double Distance, string Member) Web { get; private set; } = (double.PositiveInfinity, "");

    public string WebWith { get; private set; } = "";

    public double BendRadius { get; private set; }

    public bool IsOutside { get; private set; }

    public void Take(PlacedHole hole, FlatRim rim)
    {
        var (edge, bend, radius, inside) = rim.Distances(hole);
        IsOutside |= !inside;
        if (edge < Edge.Distance)
        {
            Edge = (edge, hole.Member);
        }

        if (bend < Bend.Distance)
        {
            (Bend, BendRadius) = ((bend, hole.Member), radius);
        }
    }

    public void TakeWeb(double web, PlacedHole own, PlacedHole other)
    {
        if (web < Web.Distance)
        {
            Web = (web, own.Member);
            WebWith = string.Create(CultureInfo.InvariantCulture, $"{other.Spec.Id}{other.Member}");
        }
    }
}

/// <summary>The rim of a flat as straight pieces, each knowing whether it is a free edge or a bend's tangent.</summary>
internal sealed class FlatRim
{
    private static readonly double Sag = 1e-5;

    private readonly List<(Vec2 A, Vec2 B, double BendRadius)> _pieces = [];

    public FlatRim(Panel panel)
    {
        var flat = new Outline(panel.Flat);
        var radii = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var child in panel.Edges.SelectMany(e => e.Flanges))
        {
            radii[child.Id] = child.Bend!.InsideRadiusM;
        }

        if (panel.IsFlange)
        {
            radii["root"] = panel.Bend!.InsideRadiusM;
        }

        for (var i = 0; i < panel.Flat.Count; i++)
        {
            var (corner, next) = (panel.Flat[i], panel.Flat[(i + 1) % panel.Flat.Count]);
            var radius = radii.GetValueOrDefault(corner.EdgeId, -1);
            var points = corner.Bulge == 0 ? [corner.Point] : new Outline([corner, new(next.Point)]).Points(Sag);
            for (var k = 0; k < points.Count; k++)
            {
                var to = k + 1 < points.Count ? points[k + 1] : next.Point;
                if (corner.Bulge == 0 || k + 1 < points.Count)
                {
                    _pieces.Add((points[k], to, radius));
                }
            }
        }
    }

    /// <summary>Distance to the nearest free edge, to the nearest bend and its radius; whether the hole's middle is in the metal.</summary>
    public (double Edge, double Bend, double BendRadius, bool Inside) Distances(PlacedHole hole)
    {
        var (edge, bend, radius) = (double.PositiveInfinity, double.PositiveInfinity, 0.0);
        var round = hole.DiameterM / 2;
        var rim = round > 0 ? null : hole.Outline.Points(Sag);
        var inside = false;
        var probe = rim is null ? hole.Centre : rim[0];
        foreach (var (a, b, bendRadius) in _pieces)
        {
            // Even-odd rule with a ray along x.
            if (a.Y > probe.Y != b.Y > probe.Y && probe.X < a.X + ((probe.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                inside = !inside;
            }

            var distance = rim is null ? Apart(hole.Centre, a, b) - round : Signed(rim, a, b);
            if (bendRadius >= 0)
            {
                (bend, radius) = distance < bend ? (distance, bendRadius) : (bend, radius);
            }
            else
            {
                edge = Math.Min(edge, distance);
            }
        }

        return (edge, bend, radius, inside);
    }

    /// <summary>Least distance of a rim from a piece of edge; negative where the rim crosses it.</summary>
    private static double Signed(IReadOnlyList<Vec2> rim, Vec2 a, Vec2 b)
    {
        var least = double.PositiveInfinity;
        var way = (b - a).Unit;
        var length = (b - a).Length;
        for (var i = 0; i < rim.Count; i++)
        {
            var (p, q) = (rim[i], rim[(i + 1) % rim.Count]);
            var off = way.Cross(p - a);
            var along = (p - a).Dot(way);
            if (off < 0 && along >= 0 && along <= length && way.Cross(q - a) > 0)
            {
                least = Math.Min(least, off);
            }

            least = Math.Min(least, Math.Min(Apart(p, a, b), Apart(a, p, q)));
        }

        return least;
    }

    public static double Apart(Vec2 p, Vec2 a, Vec2 b)
    {
        var d = b - a;
        var share = Math.Clamp((p - a).Dot(d) / Math.Max(d.Dot(d), 1e-30), 0, 1);
        return (p - (a + (d * share))).Length;
    }
}
