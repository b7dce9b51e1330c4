namespace Lampwright.Metal;

/// <summary>Two edges that meet when the part is folded and are welded or left open.</summary>
/// <param name="Id">Permanent id within the part.</param>
/// <param name="EdgeA">First edge, for example <c>wall_l.start</c>.</param>
/// <param name="EdgeB">Second edge.</param>
/// <param name="Kind">Kind of seam in words of the trade, for example <c>outside corner</c>.</param>
/// <param name="GapM">Wanted gap, metres.</param>
public sealed record SeamSpec(string Id, string EdgeA, string EdgeB, string Kind = "outside corner", double GapM = 0);

/// <summary>What is cut away where two bends meet or a flange ends beside an edge that stays flat.</summary>
public enum CornerRelief
{
    /// <summary>Square notch to where the bend centre lines cross (the default).</summary>
    Notch,

    /// <summary>The notch, and the flanges shortened so that one thickness of the neighbour clears.</summary>
    Clear,

    /// <summary>The notch with a round hole where the inside bend tangents cross.</summary>
    Hole,

    /// <summary>As the notch; beside a flange that ends short of its edge only a saw cut.</summary>
    Slit,

    /// <summary>The flange given first runs over the edge of its neighbour, which stays back by the thickness and the gap.</summary>
    Overlap,
}

/// <summary>Corner reliefs of a part. Metres; null takes the default of the rules.</summary>
/// <param name="Kind">What is cut at a corner of two bends.</param>
public sealed record ReliefSpec(CornerRelief Kind = CornerRelief.Notch)
{
    /// <summary>Diameter of the relief hole; null: the bend radius or 1/8 in, 3/16 in from 0.072 in thickness, whichever is more.</summary>
    public double? HoleDiameterM { get; init; }

    /// <summary>Width of the notch beside a flange that ends short of its edge; null: the thickness, not under 1.5 mm, for a slit 1 mm.</summary>
    public double? NotchWidthM { get; init; }

    /// <summary>Depth of that notch beyond the bend tangent; null: inside radius and thickness together.</summary>
    public double? NotchDepthM { get; init; }

    /// <summary>Gap left by <see cref="CornerRelief.Clear"/>, <see cref="CornerRelief.Overlap"/> and mitres of lips, metres.</summary>
    public double GapM { get; init; } = 0.0002;
}

/// <summary>What the brake can do; null fields are not checked.</summary>
public sealed record BrakeSpec
{
    /// <summary>Longest bend, metres.</summary>
    public double? LengthM { get; init; }

    /// <summary>Shortest flange that clamp and apron take, outside, metres.</summary>
    public double? LeastFlangeM { get; init; }

    /// <summary>Largest angle turned from flat, radians.</summary>
    public double? ClosingAngleRad { get; init; }

    /// <summary>Thickest mild steel (Rm 340 MPa) it bends over its full length, metres.</summary>
    public double? MildThicknessM { get; init; }

    /// <summary>Radius of the nose of its clamp, metres; null: the inside radius of each bend.</summary>
    public double? NoseRadiusM { get; init; }

    /// <summary>How far the foremost edge of the nose stands behind the apron's axis, metres; null: set for each bend.</summary>
    public double? NoseBackM { get; init; }
}

/// <summary>A folded part: what the metal station is told. Metres, radians, kilograms.</summary>
/// <param name="Name">Permanent name of the part, for example <c>sink_tray</c>; all its ids begin with it.</param>
/// <param name="Sheet">The sheet it is cut from.</param>
/// <param name="Face">Its first face, called <c>face</c>.</param>
public sealed record PartSpec(string Name, SheetSpec Sheet, FaceSpec Face)
{
    /// <summary>Flanges in any order; each names the edge it stands on.</summary>
    public IReadOnlyList<FlangeSpec> Flanges { get; init; } = [];

    /// <summary>Joggles: each becomes two flanges.</summary>
    public IReadOnlyList<JoggleSpec> Joggles { get; init; } = [];

    /// <summary>Holes.</summary>
    public IReadOnlyList<HoleSpec> Holes { get; init; } = [];

    /// <summary>A tube instead of a folded sheet: <see cref="Sheet"/> then says its wall, material and inside corner radius; null for a sheet.</summary>
    public TubeSpec? Tube { get; init; }

    /// <summary>Seams.</summary>
    public IReadOnlyList<SeamSpec> Seams { get; init; } = [];

    /// <summary>Corner reliefs.</summary>
    public ReliefSpec Relief { get; init; } = new();

    /// <summary>The brake.</summary>
    public BrakeSpec Brake { get; init; } = new();

    /// <summary>Rules of thumb that the checks use.</summary>
    public MetalLimits Limits { get; init; } = new();

    /// <summary>Rolling direction of the sheet along x of the face (true), along its y (false), or not known (null).</summary>
    public bool? GrainAlongX { get; init; }

    /// <summary>Least distance from the openings to live parts behind them, metres; null where none are.</summary>
    public double? LiveBehindM { get; init; }

    /// <summary>Edges where hands go: <c>wall_l.far</c>, <c>face.top</c>.</summary>
    public IReadOnlyList<string> HandEdges { get; init; } = [];

    /// <summary>Factors of the named method errors, nominally 1.</summary>
    public MetalFactors Factors { get; init; } = MetalFactors.Nominal;

    /// <summary>True when the part is the mirror image (x reversed) of the one its numbers describe; ids stay.</summary>
    public bool Mirrored { get; init; }
}
