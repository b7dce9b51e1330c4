using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>A folded flat as a thin plate, for collisions.</summary>
internal sealed class Plate
{
    private readonly Panel _panel;
    private readonly IReadOnlyList<Vec2> _points;
    private readonly List<PlacedHole> _holes;
    private readonly Vec3[] _corners;
    private readonly Vec3 _least;
    private readonly Vec3 _most;

    public Plate(Panel panel, double thickness, List<PlacedHole> holes)
    {
        _panel = panel;
        _holes = holes;
        _points = new Outline(panel.Flat).Points(1e-4);
        _corners = [.. _points.Select(p => panel.Frame.Out(new(p.X, p.Y, -thickness / 2)))];
        (_least, _most) = (_corners[0], _corners[0]);
        foreach (var c in _corners)
        {
            _least = new(Math.Min(_least.X, c.X), Math.Min(_least.Y, c.Y), Math.Min(_least.Z, c.Z));
            _most = new(Math.Max(_most.X, c.X), Math.Max(_most.Y, c.Y), Math.Max(_most.Z, c.Z));
        }
    }

    /// <summary>How far along two plates cut through each other; 0 where they do not.</summary>
    public double Depth(Plate other, double thickness)
    {
        var slack = thickness;
        if (
            _least.X > other._most.X + slack
            || _least.Y > other._most.Y + slack
            || _least.Z > other._most.Z + slack
            || other._least.X > _most.X + slack
            || other._least.Y > _most.Y + slack
            || other._least.Z > _most.Z + slack
        )
        {
            return 0;
        }

        var (n, m) = (_panel.Frame.Z, other._panel.Frame.Z);
        var line = n.Cross(m);
        return line.Length < 1e-6 ? Coplanar(other, thickness) : Crossing(other, line.Unit, thickness);
    }

    /// <summary>Two plates in one plane: the mean width of what they share.</summary>
    private double Coplanar(Plate other, double thickness)
    {
        if (Math.Abs((other._corners[0] - _corners[0]).Dot(_panel.Frame.Z)) > 0.9 * thickness)
        {
            return 0;
        }

        var theirs = other._corners.Select(c => _panel.Frame.In(c)).Select(p => new Vec2(p.X, p.Y)).ToList();
        for (var i = 0; i < _points.Count; i++)
        {
            for (var j = 0; j < theirs.Count; j++)
            {
                if (
                    Polygon2.Cross(
                        _points[i],
                        _points[(i + 1) % _points.Count],
                        theirs[j],
                        theirs[(j + 1) % theirs.Count]
                    )
                )
                {
                    var inside = theirs
                        .Where(p => Polygon2.Contains(_points, p))
                        .Concat(_points.Where(p => Polygon2.Contains(theirs, p)));
                    return inside.Select(p => (p - _points[i]).Length).DefaultIfEmpty(thickness).Max();
                }
            }
        }

        return Polygon2.Contains(_points, theirs[0]) || Polygon2.Contains(theirs, _points[0]) ? thickness : 0;
    }

    private double Crossing(Plate other, Vec3 along, double thickness)
    {
        var mine = Cut(other, along);
        var theirs = other.Cut(this, along);
        var most = 0.0;
        foreach (var (a0, a1) in mine)
        {
            foreach (var (b0, b1) in theirs)
            {
                var (from, to) = (Math.Max(a0, b0), Math.Min(a1, b1));

                // A corner that only grazes is not a collision; the bend's scatter is larger.
                if (to - from > Math.Max(0.5 * thickness, most) && !InHole(other, along, (from + to) / 2))
                {
                    most = to - from;
                }
            }
        }

        return most;
    }

    /// <summary>Intervals along the common line that lie in this plate.</summary>
    private List<(double From, double To)> Cut(Plate other, Vec3 along)
    {
        var places = new List<double>();
        var (n, at) = (other._panel.Frame.Z, other._corners[0]);
        for (var i = 0; i < _corners.Length; i++)
        {
            var (a, b) = (_corners[i], _corners[(i + 1) % _corners.Length]);
            var (da, db) = ((a - at).Dot(n), (b - at).Dot(n));
            if (da >= 0 != db >= 0)
            {
                places.Add((a + ((b - a) * (da / (da - db)))).Dot(along));
            }
        }

        places.Sort();
        var cuts = new List<(double, double)>(places.Count / 2);
        for (var i = 0; i + 1 < places.Count; i += 2)
        {
            cuts.Add((places[i], places[i + 1]));
        }

        return cuts;
    }

    /// <summary>Whether the middle of a crossing lies in a hole of either plate (a tab through its slot).</summary>
    private bool InHole(Plate other, Vec3 along, double place)
    {
        // The point of the common line nearest to this plate's first corner, moved to the place.
        var (n, m) = (_panel.Frame.Z, other._panel.Frame.Z);
        var (dn, dm) = (_corners[0].Dot(n), other._corners[0].Dot(m));
        var c = n.Dot(m);
        var point = (n * ((dn - (c * dm)) / (1 - (c * c)))) + (m * ((dm - (c * dn)) / (1 - (c * c)))) + (along * place);
        return In(_panel, point) || In(other._panel, point);
    }

    private bool In(Panel panel, Vec3 point)
    {
        var p = panel.Frame.In(point);
        return _holes.Exists(h => h.Panel == panel && Polygon2.Contains(h.Outline.Points(1e-5), new(p.X, p.Y)));
    }
}
