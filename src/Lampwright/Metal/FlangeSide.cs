using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>How the side of a flange meets what lies beside it.</summary>
internal enum SideKind
{
    /// <summary>Flush with a free edge of the parent.</summary>
    Flush,

    /// <summary>A corner shared with a neighbouring bend: a notch.</summary>
    Shared,

    /// <summary>The flange ends short of its edge: a relief notch beside it.</summary>
    Notched,

    /// <summary>As <see cref="Notched"/>, but what is left of the edge is narrower than the notch and is cut away.</summary>
    CutAway,
}

/// <summary>One side (start or end) of a flange. Distances u run inward from the nominal side, v along the bend zone from the parent.</summary>
internal sealed class FlangeSide
{
    public SideKind Kind { get; set; }

    /// <summary>The side of the bend zone from v = 0 to v = allowance: x is u, y is v.</summary>
    public List<Vec2> Zone { get; } = [];

    /// <summary>Index of the first point of <see cref="Zone"/> that lies on the outline of the blank.</summary>
    public int OutlineFrom { get; set; }

    /// <summary>How many points of <see cref="Zone"/> from its beginning lie on the outline; the rest lie inside a corner with a tab.</summary>
    public int? OutlineTo { get; set; }

    /// <summary>Where the parent's flat turns at a shared corner, and the bulge of a relief hole from there on the flat.</summary>
    public double FlatBulge { get; set; }

    /// <summary>Side of a mitre, u at y = 0 and its growth per y, set by the corner below.</summary>
    public (double At, double Slope)? Mitre { get; set; }

    /// <summary>A round hole instead of the corner of the notch.</summary>
    public bool ReliefHole { get; set; }

    /// <summary>Bulge of the arc that leads into the outline here, for relief holes; 0 for a straight notch.</summary>
    public double ReliefBulge { get; set; }

    /// <summary>Bulge of the relief hole's arc between the first two points of <see cref="Zone"/>, as the zone's outline runs; 0 for a straight side.</summary>
    public double ZoneBulge { get; set; }

    /// <summary>Where the side of the flat begins, at the flange's tangent.</summary>
    public double FlatU { get; set; }

    /// <summary>Tangent of the slant of the flat's side; positive narrows towards far.</summary>
    public double Slope { get; set; }

    /// <summary>Where the parent's outline stops before this side or goes on after it, in the parent's plane.</summary>
    public Vec2 ParentPoint { get; set; }

    /// <summary>Depth of a relief notch beyond the bend tangent.</summary>
    public double NotchDepth { get; set; }

    /// <summary>u of the side at the parent's tangent.</summary>
    public double RootU => Zone.Count == 0 ? 0 : Zone[0].X;
}
