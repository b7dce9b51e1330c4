using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Finds the places at which findings bite. Until a part is finished they count in the plane of its first face laid flat.</summary>
internal static class Places
{
    private static readonly double Sag = 1e-4;

    /// <summary>A finding with its place, given in the plane of a flat.</summary>
    public static Finding On(this Finding finding, PartSpec spec, Panel panel, Vec2 a, Vec2? b = null) =>
        finding with
        {
            Place = new(spec.Name, panel.Id, panel.InBlank.Out(a), panel.InBlank.Out(b ?? a)),
        };

    /// <summary>A finding of a hole, at its centre; unchanged where no hole was placed.</summary>
    public static Finding On(this Finding finding, PartSpec spec, PlacedHole? hole) =>
        hole is null ? finding : finding.On(spec, hole.Panel, hole.Centre);

    /// <summary>A finding of a bend, along the middle of its zone.</summary>
    public static Finding OnBend(this Finding finding, PartSpec spec, Panel flange)
    {
        var v = flange.Bend!.AllowanceM / 2;
        var (from, to) = BendZone.Range(flange, v);
        var parent = flange.Parent!.InBlank;
        return finding with
        {
            Place = new(
                spec.Name,
                flange.Id,
                parent.Out(flange.ZonePoint(from, v)),
                parent.Out(flange.ZonePoint(to, v))
            ),
        };
    }

    /// <summary>A finding of the height of a flange, from the end of its bend to its far edge.</summary>
    public static Finding OnHeight(this Finding finding, PartSpec spec, Panel flange)
    {
        var far = flange.Edges[2];
        var middle = (far.From + far.To) / 2;
        return finding.On(spec, flange, new(middle.X, Math.Min(flange.Bend!.SetbackM, middle.Y)), middle);
    }

    /// <summary>A finding of an edge by the name of its flat and its own, <c>wall_l.far</c>; unchanged where there is none.</summary>
    public static Finding OnEdge(this Finding finding, PartSpec spec, List<Panel> panels, string name)
    {
        var (on, id) = EdgeName.Split(name);
        var panel = panels.Find(p => string.Equals(p.Id, on, StringComparison.Ordinal));
        var edge = panel is null
            ? null
            : Array.Find(panel.Edges, e => string.Equals(e.Id, id, StringComparison.Ordinal));
        return edge is null ? finding : finding.On(spec, panel!, edge.From, edge.To);
    }

    /// <summary>The thin metal between a hole and the nearest bend or free edge of its flat.</summary>
    public static Finding Beside(this Finding finding, PartSpec spec, PlacedHole? hole, bool bend)
    {
        if (hole is null)
        {
            return finding;
        }

        var panel = hole.Panel;
        var bent = panel.Edges.SelectMany(e => e.Flanges).Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
        bent.UnionWith(panel.Rounded);
        if (panel.IsFlange)
        {
            bent.Add("root");
        }

        List<(Vec2, Vec2)> sides = [];
        for (var i = 0; i < panel.Flat.Count; i++)
        {
            if (bent.Contains(panel.Flat[i].EdgeId) == bend)
            {
                sides.Add((panel.Flat[i].Point, panel.Flat[(i + 1) % panel.Flat.Count].Point));
            }
        }

        var (a, b) = Nearest(hole.Outline.Points(Sag), sides);
        return double.IsFinite(a.X) ? finding.On(spec, panel, a, b) : finding.On(spec, hole);
    }

    /// <summary>The thin metal between two holes of one flat.</summary>
    public static Finding Between(this Finding finding, PartSpec spec, PlacedHole? one, PlacedHole? other)
    {
        if (one is null || other is null)
        {
            return finding;
        }

        var rim = other.Outline.Points(Sag);
        var (a, b) = Nearest(one.Outline.Points(Sag), [.. rim.Select((p, i) => (p, rim[(i + 1) % rim.Count]))]);
        return double.IsFinite(a.X) ? finding.On(spec, one.Panel, a, b) : finding.On(spec, one);
    }

    /// <summary>Where the flat of one flange cuts through another when folded; the middle of the first where no corner tells.</summary>
    public static Finding Through(this Finding finding, PartSpec spec, Panel one, Panel other)
    {
        var t = spec.Sheet.ThicknessM;
        var (best, depth) = (default(Vec2?), t);
        var outline = new Outline(other.Flat).Points(Sag);
        for (var i = 0; i < one.Flat.Count; i++)
        {
            var (p, q) = (one.Flat[i].Point, one.Flat[(i + 1) % one.Flat.Count].Point);
            for (var k = 0; k < 24; k++)
            {
                var at = p + ((q - p) * (k / 24.0));
                var there = other.Frame.In(one.Frame.Out(new(at.X, at.Y, -t / 2)));
                var off = Math.Abs(there.Z + (t / 2));
                if (off < depth && Polygon2.Contains(outline, new(there.X, there.Y)))
                {
                    (best, depth) = (at, off);
                }
            }
        }

        return finding.On(spec, one, best ?? new Outline(one.Flat).Centroid);
    }

    /// <summary>Carries all places into the frame of the finished blank.</summary>
    public static void Settle(List<Finding> findings, Vec2 shift, double? mirroredWidth)
    {
        Vec2 Map(Vec2 p) => mirroredWidth is { } w ? new(w - p.X - shift.X, p.Y + shift.Y) : p + shift;
        for (var i = 0; i < findings.Count; i++)
        {
            if (findings[i].Place is { } place)
            {
                findings[i] = findings[i] with { Place = place with { A = Map(place.A), B = Map(place.B) } };
            }
        }
    }

    private static (Vec2 On, Vec2 Side) Nearest(IReadOnlyList<Vec2> rim, List<(Vec2 A, Vec2 B)> sides)
    {
        var (least, on, side) = (double.PositiveInfinity, new Vec2(double.NaN, 0), default(Vec2));
        void Try(Vec2 p, Vec2 q, Vec2 rimPoint, Vec2 sidePoint)
        {
            if ((q - p).Length < least)
            {
                (least, on, side) = ((q - p).Length, rimPoint, sidePoint);
            }
        }

        for (var i = 0; i < rim.Count; i++)
        {
            foreach (var (a, b) in sides)
            {
                var beside = Foot(rim[i], a, b);
                Try(rim[i], beside, rim[i], beside);
                var foot = Foot(a, rim[i], rim[(i + 1) % rim.Count]);
                Try(a, foot, foot, a);
            }
        }

        return (on, side);
    }

    private static Vec2 Foot(Vec2 p, Vec2 a, Vec2 b)
    {
        var d = b - a;
        var square = d.Dot(d);
        return square < 1e-18 ? a : a + (d * Math.Clamp((p - a).Dot(d) / square, 0, 1));
    }
}
