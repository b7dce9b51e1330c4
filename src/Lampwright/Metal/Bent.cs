using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>One bend as seen from a corner of the flat it belongs to: a flange's, or the flat's own root.</summary>
internal sealed class Bent
{
    private Bent(Panel bend, bool isRoot, bool isStart)
    {
        (Panel, IsRoot) = (bend, isRoot);
        Side = isStart ? bend.Start : bend.End;
        Allowance = bend.Bend!.AllowanceM;
        var setback = bend.Bend.SetbackM;
        if (isRoot)
        {
            Along = new(isStart ? 1 : -1, 0);
            Zero = new(isStart ? 0 : bend.RootLength, 0);
            Tangent = new(new(0, setback), new(1, 0));
            Offset = 0;
        }
        else
        {
            var edge = bend.OnEdge!;
            Along = isStart ? -edge.Along : edge.Along;
            Zero = bend.RootStart - (edge.Along * (isStart ? 0 : bend.RootLength));
            Tangent = new(edge.From - (edge.Outward * setback), edge.Along);
            Offset = (isStart ? bend.Spec!.StartOffsetM : bend.Spec!.EndOffsetM) ?? 0;
            IsExplicit = (isStart ? bend.Spec.StartOffsetM : bend.Spec.EndOffsetM) is not null;
        }

        Centre = Tangent.MovedLeft(-Allowance / 2);
    }

    public Panel Panel { get; }

    public bool IsRoot { get; }

    public FlangeSide Side { get; }

    public double Allowance { get; }

    /// <summary>Inward along the edge, from the side of the flange.</summary>
    public Vec2 Along { get; }

    /// <summary>The nominal side on the mould line.</summary>
    public Vec2 Zero { get; }

    /// <summary>Where the bend begins on this flat; the flat lies to its left.</summary>
    public Line2 Tangent { get; }

    /// <summary>Middle of the bend zone, laid flat.</summary>
    public Line2 Centre { get; }

    public double Offset { get; }

    public bool IsExplicit { get; }

    /// <summary>How far a point lies inward of the nominal side.</summary>
    public double U(Vec2 p) => (p - Zero).Dot(Along);

    /// <summary>How far out of the flat a point lies, from the tangent.</summary>
    public double V(Vec2 p) => -Tangent.LeftOf(p);

    /// <summary>The bend that reaches or comes nearest to the end of an edge.</summary>
    public static Bent? AtEnd(Panel panel, int edge) =>
        panel.IsFlange && edge == 0 ? new(panel, true, false)
        : panel.Edges[edge].Flanges.Count == 0 ? null
        : new(panel.Edges[edge].Flanges[^1], false, true);

    /// <summary>The bend that reaches or comes nearest to the beginning of an edge.</summary>
    public static Bent? AtBegin(Panel panel, int edge) =>
        panel.IsFlange && edge == 0 ? new(panel, true, true)
        : panel.Edges[edge].Flanges.Count == 0 ? null
        : new(panel.Edges[edge].Flanges[0], false, false);
}
