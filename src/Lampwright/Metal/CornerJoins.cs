using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Decides how the sides of the flanges of one flat meet what lies beside them: edges, notches, shared corners.</summary>
/// <remarks>Called for parents before children, since a trimmed side is what its own flanges meet.</remarks>
internal sealed class CornerJoins(PartSpec spec)
{
    private readonly double _notchWidth =
        spec.Relief.NotchWidthM
        ?? (spec.Relief.Kind == CornerRelief.Slit ? SlitWidthM : Math.Max(spec.Sheet.ThicknessM, LeastNotchWidthM));

    /// <summary>Narrowest notch that is cut by hand (common practice, no source).</summary>
    private static double LeastNotchWidthM => 0.0015;

    /// <summary>A cut with a saw or a thin wheel (common practice, no source).</summary>
    private static double SlitWidthM => 0.001;

    /// <summary>Settles all sides on one flat; the id of an edge that is wholly used up where it must not be, else null.</summary>
    public string? Join(Panel panel)
    {
        if (panel.IsFlange)
        {
            Trim(panel);
        }

        var edges = panel.Edges;
        for (var i = 0; i < edges.Length; i++)
        {
            var k = (i + 1) % edges.Length;
            if (Corner(panel, i, k) is { } bad)
            {
                return bad;
            }
        }

        foreach (var edge in edges)
        {
            for (var j = 0; j < edge.Flanges.Count; j++)
            {
                var child = edge.Flanges[j];
                Notch(child, child.End, j > 0);
                Notch(child, child.Start, j < edge.Flanges.Count - 1);
            }
        }

        return null;
    }

    /// <summary>The free lines of a flange's flat, from its settled sides.</summary>
    private static void Trim(Panel panel)
    {
        Settle(panel, panel.Start, panel.Spec!.StartAngleRad);
        Settle(panel, panel.End, panel.Spec!.EndAngleRad);
        var (s, h, l) = (panel.Bend!.SetbackM, panel.Height, panel.RootLength);
        var edges = panel.Edges;
        var (a, b) = (panel.Start, panel.End);
        var (farStart, farEnd) = (a.FlatU + (a.Slope * (h - s)), l - b.FlatU - (b.Slope * (h - s)));
        edges[1].FreeFrom = edges[1].Begin = new(l - b.FlatU, s);
        edges[1].FreeTo = edges[1].End = new(farEnd, h);
        edges[2].FreeFrom = edges[2].Begin = new(farEnd, h);
        edges[2].FreeTo = edges[2].End = new(farStart, h);
        edges[3].FreeFrom = edges[3].Begin = new(farStart, h);
        edges[3].FreeTo = edges[3].End = new(a.FlatU, s);
    }

    private static void Settle(Panel panel, FlangeSide side, double? angle)
    {
        var (s, h) = (panel.Bend!.SetbackM, panel.Height);
        var mitre = angle is { } given ? (At: 0.0, Slope: Math.Tan(given)) : side.Mitre;
        if (mitre is not { } line)
        {
            return;
        }

        var (near, far) = (line.At + (line.Slope * s), line.At + (line.Slope * h));
        var from = Math.Max(side.FlatU, near);
        var to = angle is null ? Math.Max(side.FlatU, far) : from + (line.Slope * (h - s));
        (side.FlatU, side.Slope) = (from, (to - from) / (h - s));
        if (side.Zone.Count > 0 && side.Zone[^1].X < from)
        {
            side.Zone[^1] = new(from, side.Zone[^1].Y);
        }
    }

    private string? Corner(Panel panel, int i, int k)
    {
        var (before, after) = (panel.Edges[i], panel.Edges[k]);
        var a = Bent.AtEnd(panel, i);
        var b = Bent.AtBegin(panel, k);
        var q = a is null || b is null ? null : a.Tangent.Crossing(b.Tangent);
        var p = a is null || b is null ? null : a.Centre.Crossing(b.Centre);
        if (q is { } tangents && p is { } centres)
        {
            var convex = before.Along.Cross(after.Along) > 0;
            if (convex && a!.U(tangents) >= -_notchWidth && b!.U(tangents) >= -_notchWidth)
            {
                if (a.IsRoot || b.IsRoot)
                {
                    ShareWithRoot(a, b, tangents, centres);
                }
                else
                {
                    new SharedCorner(spec, panel, before.To, a, b, tangents, centres).Settle();
                }

                return null;
            }
        }

        if (Math.Abs(before.Along.Cross(after.Along)) < 1e-6 && before.IsStraight && after.IsStraight)
        {
            Collinear(a, b, before, after);
            return null;
        }

        if (a is { IsRoot: false } && a.Offset < 1e-9 && !Flush(panel, a, k, forward: true))
        {
            return after.Id;
        }

        return b is { IsRoot: false } && b.Offset < 1e-9 && !Flush(panel, b, i, forward: false) ? before.Id : null;
    }

    /// <summary>An edge that goes on straight into a free one is left by a notch, as inside an edge.</summary>
    private void Collinear(Bent? a, Bent? b, PanelEdge before, PanelEdge after)
    {
        if (a is { Offset: < 1e-9 } && b is null)
        {
            a.Side.Kind = SideKind.Notched;
            before.End = after.Begin = before.To + (before.Along * _notchWidth);
        }
        else if (b is { Offset: < 1e-9 } && a is null)
        {
            b.Side.Kind = SideKind.Notched;
            before.End = after.Begin = before.To - (before.Along * _notchWidth);
        }
    }

    /// <summary>A side that is flush with a free edge: the edge is cut where the bend's tangent crosses it.</summary>
    private static bool Flush(Panel panel, Bent bent, int edge, bool forward, double depth = 0)
    {
        var line = bent.Tangent.MovedLeft(depth);
        var found = EdgeCrossing.Along(panel, edge, forward, line);
        if (found is not { } at)
        {
            return false;
        }

        var u = Math.Max(0, bent.U(at));
        bent.Side.Kind = depth > 0 ? SideKind.CutAway : SideKind.Flush;
        bent.Side.ParentPoint = at;
        bent.Side.NotchDepth = depth;
        var side = depth > 0 ? 0 : u;
        bent.Side.Zone.Add(new(side, 0));
        bent.Side.Zone.Add(new(side, bent.Allowance));
        bent.Side.FlatU = side;
        return true;
    }

    /// <summary>The corner between a flange's own bend and a flange on its side edge.</summary>
    private static void ShareWithRoot(Bent a, Bent b, Vec2 tangents, Vec2 centres)
    {
        var (root, tab) = a.IsRoot ? (a, b) : (b, a);
        var zone = root.Side.Zone;
        // Only the zone's last point, on the flange's tangent, belongs to this corner; the others are the parent's.
        zone.RemoveAt(zone.Count - 1);
        var last = zone.Count == 0 ? default : zone[^1];
        var half = root.Allowance / 2;
        var (rootP, rootQ) = (root.U(centres), root.U(tangents));
        var notched = last.Y <= half + 1e-9 && tab.U(centres) >= 0;

        // Inside a notch the zone begins where the tangents cross, also a little before the nominal side: what lies between belongs to it.
        var uQ = notched ? tab.U(tangents) : Math.Max(0, tab.U(tangents));
        var uP = Math.Max(0, tab.U(centres));
        if (notched)
        {
            zone.Add(new(Math.Max(last.X, rootP), half));
            root.Side.OutlineTo = zone.Count;
            zone.Add(new(rootP, half));
            zone.Add(new(rootQ, root.Allowance));
        }
        else
        {
            zone.Add(new(Math.Max(last.X, rootQ), root.Allowance));
        }

        root.Side.FlatU = zone[^1].X;
        tab.Side.Kind = SideKind.Shared;
        tab.Side.OutlineFrom = notched ? 1 : 0;
        tab.Side.ParentPoint = tangents;
        tab.Side.Zone.Add(new(uQ, 0));
        tab.Side.Zone.Add(new(uP, tab.Allowance / 2));
        tab.Side.Zone.Add(new(uP, tab.Allowance));
        tab.Side.FlatU = tab.IsExplicit ? 0 : uP;
    }

    /// <summary>A side that ends short of its edge gets a notch, or the rest of the edge is cut away.</summary>
    private void Notch(Panel child, FlangeSide side, bool hasNeighbour)
    {
        if (side.Zone.Count > 0)
        {
            return;
        }

        var depth = spec.Relief.NotchDepthM ?? (child.Bend!.InsideRadiusM + spec.Sheet.ThicknessM);
        var edge = child.OnEdge!;
        var isStart = side == child.Start;
        var room = isStart ? edge.Length - child.EdgeTo : child.EdgeFrom;
        var parent = child.Parent!;
        var at = Array.IndexOf(parent.Edges, edge);
        var n = parent.Edges.Length;
        if (!hasNeighbour && room <= _notchWidth && side.Kind != SideKind.Notched)
        {
            var bent = isStart ? Bent.AtEnd(parent, at)! : Bent.AtBegin(parent, at)!;
            if (Flush(parent, bent, (at + (isStart ? 1 : n - 1)) % n, isStart, depth))
            {
                return;
            }
        }

        side.Kind = SideKind.Notched;
        side.NotchDepth = depth;
        side.Zone.Add(default);
        side.Zone.Add(new(0, child.Bend!.AllowanceM));
    }

    /// <summary>Width of the notch beside a flange, metres.</summary>
    public double NotchWidthM => _notchWidth;
}
