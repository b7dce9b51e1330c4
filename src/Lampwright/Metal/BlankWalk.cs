using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Walks round the blank once and collects its outline, the outline of every flat, every bend zone and every free edge.</summary>
internal sealed class BlankWalk(double notchWidth)
{
    private readonly Chain _outline = new();

    /// <summary>Free runs of edges: flat, edge id, ends in the flat's plane.</summary>
    public List<(Panel Panel, PanelEdge Edge, Vec2 From, Vec2 To)> FreeRuns { get; } = [];

    /// <summary>Edges of which bends take more than there is.</summary>
    public List<string> Backward { get; } = [];

    /// <summary>The outline of the blank, in the plane of the first face laid flat.</summary>
    public Outline Outline(Panel face)
    {
        Walk(face, 0);
        _outline.Close();
        return new([.. _outline.Corners]);
    }

    private void Walk(Panel panel, int firstEdge)
    {
        var flat = new Chain();
        for (var i = firstEdge; i < panel.Edges.Length; i++)
        {
            var edge = panel.Edges[i];
            if (!edge.Consumed)
            {
                Edge(panel, edge, flat);
            }
        }

        if (panel.IsFlange)
        {
            // The root's tangent closes the flat; at a notch beside a tab the blank's outline runs outside that corner.
            var tab = panel.Edges[3].Flanges.LastOrDefault()?.Start;
            var end =
                tab is { Kind: SideKind.Shared } ? tab.ParentPoint
                : panel.Edges[3].Consumed ? panel.Edges[2].End
                : panel.Edges[3].End;
            if (tab is not { Kind: SideKind.Shared, OutlineFrom: 1 })
            {
                _outline.Add(panel.InBlank.Out(end), 0, "");
            }

            flat.Add(end, 0, "root");
        }

        flat.Close();
        panel.Flat.AddRange(flat.Corners);
    }

    private void Edge(Panel panel, PanelEdge edge, Chain flat)
    {
        var at = edge.Begin;
        for (var j = 0; j < edge.Flanges.Count; j++)
        {
            var child = edge.Flanges[j];
            var next = j + 1 < edge.Flanges.Count ? edge.Flanges[j + 1] : null;
            var previous = j > 0 ? edge.Flanges[j - 1] : null;
            Approach(panel, edge, child, previous, at, flat);
            Child(panel, child, flat);
            at = Leave(panel, edge, child, next, flat);
        }

        if (edge.Flanges.Count == 0 || edge.Flanges[^1].Start.Kind == SideKind.Notched)
        {
            Run(panel, edge, at, edge.End, flat);
        }
    }

    /// <summary>From the free part of the edge to the end side of a flange.</summary>
    private void Approach(Panel panel, PanelEdge edge, Panel child, Panel? previous, Vec2 at, Chain flat)
    {
        var side = child.End;
        switch (side.Kind)
        {
            case SideKind.Flush:
                Both(panel, side.ParentPoint, flat);
                break;
            case SideKind.CutAway:
                Both(panel, side.ParentPoint, flat);
                Both(panel, child.EndPoint(new(0, -side.NotchDepth)), flat);
                break;
            case SideKind.Notched:
                var depth = Math.Max(side.NotchDepth, previous?.Start.NotchDepth ?? 0);
                var room = previous is null ? double.PositiveInfinity : child.EdgeFrom - previous.EdgeTo;
                if (room > 2 * notchWidth)
                {
                    var rim = edge.OnFree(child.EndPoint(new(-notchWidth, 0)));
                    Run(panel, edge, at, rim, flat);
                    Both(panel, rim, flat);
                    Both(panel, child.EndPoint(new(-notchWidth, -side.NotchDepth)), flat);
                    depth = side.NotchDepth;
                }

                Both(panel, child.EndPoint(new(0, -depth)), flat);
                break;
            case SideKind.Shared when side.OutlineFrom == 0:
                Both(panel, side.ParentPoint, flat);
                break;
            case SideKind.Shared when child.End.ReliefHole is false:
                flat.Add(side.ParentPoint, 0, "");
                break;
            default:
                break;
        }
    }

    /// <summary>From the start side of a flange back to the free part of the edge; where that part begins.</summary>
    private Vec2 Leave(Panel panel, PanelEdge edge, Panel child, Panel? next, Chain flat)
    {
        var side = child.Start;
        switch (side.Kind)
        {
            case SideKind.Flush:
                Both(panel, side.ParentPoint, flat);
                return side.ParentPoint;
            case SideKind.CutAway:
                Both(panel, child.StartPoint(new(0, -side.NotchDepth)), flat);
                Both(panel, side.ParentPoint, flat);
                return side.ParentPoint;
            case SideKind.Notched:
                var room = next is null ? double.PositiveInfinity : next.EdgeFrom - child.EdgeTo;
                if (room <= 2 * notchWidth)
                {
                    Both(panel, child.StartPoint(new(0, -Math.Max(side.NotchDepth, next!.End.NotchDepth))), flat);
                    return child.StartPoint(default);
                }

                Both(panel, child.StartPoint(new(0, -side.NotchDepth)), flat);
                Both(panel, child.StartPoint(new(-notchWidth, -side.NotchDepth)), flat);
                return edge.OnFree(child.StartPoint(new(-notchWidth, 0)));
            default:
                return child.StartPoint(default);
        }
    }

    private void Child(Panel panel, Panel child, Chain flat)
    {
        flat.Add(child.EndPoint(new(child.End.RootU, 0)), 0, child.Id);
        Side(panel, child, child.End, isStart: false);
        Walk(child, 1);
        Side(panel, child, child.Start, isStart: true);
        flat.Add(child.StartPoint(new(child.Start.RootU, 0)), child.Start.FlatBulge, "");

        // Run counter-clockwise in the end: a bulge stands at the point from which its arc then leaves.
        for (var k = 0; k < child.Start.Zone.Count; k++)
        {
            child.Zone.Add(new(child.Start.Zone[k], k == 1 ? child.Start.ZoneBulge : 0));
        }

        for (var k = child.End.Zone.Count - 1; k >= 0; k--)
        {
            var uv = child.End.Zone[k];
            child.Zone.Add(new(new(child.RootLength - uv.X, uv.Y), k == 0 ? child.End.ZoneBulge : 0));
        }

        // From start up and end down the zone is run clockwise.
        child.Zone.Reverse();
    }

    private void Side(Panel panel, Panel child, FlangeSide side, bool isStart)
    {
        var (from, to) = (side.OutlineFrom, side.OutlineTo ?? side.Zone.Count);
        for (var k = from; k < to; k++)
        {
            var uv = side.Zone[isStart ? to - 1 - (k - from) : k];
            var last = isStart && k == to - 1;
            var point = isStart ? child.StartPoint(uv) : child.EndPoint(uv);
            _outline.Add(panel.InBlank.Out(point), last ? side.ReliefBulge : 0, "");
        }
    }

    private void Run(Panel panel, PanelEdge edge, Vec2 from, Vec2 to, Chain flat)
    {
        var length = edge.IsStraight ? (to - from).Dot(edge.Along) : (to - from).Length;
        if (length < 1e-9)
        {
            if (length < -1e-6)
            {
                Backward.Add($"{panel.Id}.{edge.Id}");
            }

            return;
        }

        var bulge = ArcTrim.Bulge(edge, from, to);
        _outline.Add(panel.InBlank.Out(from), bulge, $"{panel.Id}.{edge.Id}");
        flat.Add(from, bulge, edge.Id);
        if (edge.IsStraight)
        {
            FreeRuns.Add((panel, edge, from, to));
        }

        Both(panel, to, flat);
    }

    private void Both(Panel panel, Vec2 point, Chain flat)
    {
        _outline.Add(panel.InBlank.Out(point), 0, "");
        flat.Add(point, 0, "");
    }

    /// <summary>Corners in a row; a corner that repeats the last one takes its place.</summary>
    private sealed class Chain
    {
        public List<Corner> Corners { get; } = [];

        public void Add(Vec2 point, double bulge, string id)
        {
            if (Corners.Count > 0 && (Corners[^1].Point - point).Length < 1e-10)
            {
                Corners[^1] = new(Corners[^1].Point, bulge, id);
            }
            else
            {
                Corners.Add(new(point, bulge, id));
            }
        }

        public void Close()
        {
            if (Corners.Count > 1 && (Corners[^1].Point - Corners[0].Point).Length < 1e-10)
            {
                Corners.RemoveAt(Corners.Count - 1);
            }

            Straighten();
        }

        /// <summary>Drops corners at which a straight edge goes on straight, unless two named edges part there.</summary>
        private void Straighten()
        {
            for (var i = Corners.Count - 1; i >= 0 && Corners.Count > 3; i--)
            {
                var (before, here) = (Corners[(i + Corners.Count - 1) % Corners.Count], Corners[i]);
                var after = Corners[(i + 1) % Corners.Count];
                if (before.Bulge != 0 || here.Bulge != 0 || (before.EdgeId.Length > 0 && here.EdgeId.Length > 0))
                {
                    continue;
                }

                var (a, b) = ((here.Point - before.Point).Unit, (after.Point - here.Point).Unit);
                if (Math.Abs(a.Cross(b)) < 1e-9 && a.Dot(b) > 0)
                {
                    var id = before.EdgeId.Length > 0 ? before.EdgeId : here.EdgeId;
                    Corners[(i + Corners.Count - 1) % Corners.Count] = before with { EdgeId = id };
                    Corners.RemoveAt(i);
                }
            }
        }
    }
}
