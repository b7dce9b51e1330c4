using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>One edge of a panel: a straight line or an arc, with the flanges that stand on it in order along it.</summary>
internal sealed class PanelEdge(Vec2 from, Vec2 to, double bulge, string id)
{
    public Vec2 From { get; } = from;

    public Vec2 To { get; } = to;

    public double Bulge { get; } = bulge;

    public string Id { get; } = id;

    public double Length { get; } = (to - from).Length;

    public Vec2 Along { get; } = (to - from).Unit;

    /// <summary>Out of the metal.</summary>
    public Vec2 Outward => -Along.Left;

    public List<Panel> Flanges { get; } = [];

    /// <summary>The line that the free runs of the edge lie on: inside the nominal one where a relief trims the side of a flange.</summary>
    public Vec2 FreeFrom { get; set; } = from;

    public Vec2 FreeTo { get; set; } = to;

    /// <summary>Where the outline of the blank enters and leaves the edge.</summary>
    public Vec2 Begin { get; set; } = from;

    public Vec2 End { get; set; } = to;

    /// <summary>Wholly used up by a bend beside it.</summary>
    public bool Consumed { get; set; }

    public bool IsStraight => Bulge == 0;

    /// <summary>The point of the free line that lies beside a point.</summary>
    public Vec2 OnFree(Vec2 p)
    {
        var along = (FreeTo - FreeFrom).Unit;
        return FreeFrom + (along * (p - FreeFrom).Dot(along));
    }
}

/// <summary>A flat of the part while it is being computed: the first face or a flange. Coordinates in its own plane.</summary>
internal sealed class Panel
{
    public required string Id { get; init; }

    public FlangeSpec? Spec { get; init; }

    public Panel? Parent { get; init; }

    public PanelEdge? OnEdge { get; init; }

    public BendFigures? Bend { get; init; }

    /// <summary>Angle signed as in the design; 0 for the first face.</summary>
    public double SignedAngle => Spec?.AngleRad ?? 0;

    /// <summary>Outside height of a flange.</summary>
    public double Height { get; set; }

    /// <summary>Nominal length of a flange's root.</summary>
    public double RootLength { get; set; }

    /// <summary>Start of the nominal root in the parent's plane (x = 0), on the mould line.</summary>
    public Vec2 RootStart { get; set; }

    /// <summary>Outline to the mould lines; a flange's edges are root, end, far, start.</summary>
    public required Corner[] Nominal { get; set; }

    /// <summary>Edges as they are walked; a flange's first is its root.</summary>
    public PanelEdge[] Edges { get; set; } = [];

    public int Index { get; init; }

    /// <summary>Ids of edges at which the flat goes over into a round corner that is there already: of a tube.</summary>
    public IReadOnlySet<string> Rounded { get; init; } = new HashSet<string>();

    public bool IsFlange => Parent is not null;

    public FlangeSide Start { get; } = new();

    public FlangeSide End { get; } = new();

    public Frame Frame { get; set; } = Frame.World;

    /// <summary>Frame on the bend's axis in the part: x along the root, z from the axis to the beginning of the bend's outer skin.</summary>
    public Frame AxisFrame { get; set; }

    /// <summary>This panel's plane in its parent's plane, laid flat.</summary>
    public Placement2 InParent { get; set; } = Placement2.Identity;

    /// <summary>This panel's plane in the blank.</summary>
    public Placement2 InBlank { get; set; } = Placement2.Identity;

    public List<Corner> Flat { get; } = [];

    /// <summary>The bend zone in coordinates x along the root, y = v.</summary>
    public List<Corner> Zone { get; } = [];

    /// <summary>A point of the bend zone, in the parent's plane.</summary>
    public Vec2 ZonePoint(double x, double v)
    {
        var edge = OnEdge!;
        return RootStart - (edge.Along * x) + (edge.Outward * (v - Bend!.SetbackM));
    }

    public Vec2 StartPoint(Vec2 uv) => ZonePoint(uv.X, uv.Y);

    public Vec2 EndPoint(Vec2 uv) => ZonePoint(RootLength - uv.X, uv.Y);

    /// <summary>Position along the parent's edge where the flange's end (its lower side) and its start lie.</summary>
    public double EdgeFrom => (EndPoint(default) - OnEdge!.From).Dot(OnEdge.Along);

    public double EdgeTo => (StartPoint(default) - OnEdge!.From).Dot(OnEdge.Along);

    /// <summary>Centre of the box round the nominal outline.</summary>
    public Vec2 Centre
    {
        get
        {
            var (least, most) = new Outline(Nominal).Box;
            return (least + most) / 2;
        }
    }
}
