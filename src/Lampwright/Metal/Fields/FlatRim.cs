using Lampwright.Geometry;
using Lampwright.Geometry.Fields;

namespace Lampwright.Metal.Fields;

/// <summary>The rim of a flat as straight pieces in a grid, each knowing whether it is a free edge or a bend's tangent.</summary>
internal sealed class FlatRim
{
    private static readonly double Sag = 1e-5;

    private readonly List<Segment2> _pieces = [];
    private readonly List<double> _bendRadii = [];
    private readonly List<int> _near = [];
    private readonly RimGrid _grid;

    public FlatRim(Panel panel, int holes)
    {
        var radii = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var child in panel.Edges.SelectMany(e => e.Flanges))
        {
            radii[child.Id] = child.Bend!.InsideRadiusM;
        }

        if (panel.IsFlange)
        {
            radii["root"] = panel.Bend!.InsideRadiusM;
        }

        foreach (var id in panel.Rounded)
        {
            radii[id] = 0;
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
                    _pieces.Add(Segment2.Of(points[k], to));
                    _bendRadii.Add(radius);
                }
            }
        }

        LargestRadius = radii.Values.DefaultIfEmpty(0).Max();
        _grid = new(_pieces, holes);
    }

    /// <summary>Largest radius of the bends round it.</summary>
    public double LargestRadius { get; }

    /// <summary>
    /// Metal to the nearest free edge and to the nearest bend with its radius, both infinite beyond <paramref name="within"/>, and whether the hole
    /// lies in the metal.
    /// </summary>
    public (double Edge, double Bend, double BendRadius, bool Inside) Distances(HoleCore hole, double within)
    {
        var (edge, bend, radius) = (double.PositiveInfinity, double.PositiveInfinity, 0.0);
        var margin = new Vec2(within, within);
        _grid.Near(hole.Least - margin, hole.Most + margin, _near);
        foreach (var at in _near)
        {
            var distance = hole.From(_grid.Pieces[at]);
            if (_bendRadii[at] < 0)
            {
                edge = Math.Min(edge, distance);
            }
            else if (distance < bend)
            {
                (bend, radius) = (distance, _bendRadii[at]);
            }
        }

        var probe = hole.Points[0];
        return (edge, bend, radius, _grid.Contains(probe.X, probe.Y));
    }
}
