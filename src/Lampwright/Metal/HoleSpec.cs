using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>What a hole's position is counted from.</summary>
public enum HoleAnchor
{
    /// <summary>The zero of the frame of its face or flange.</summary>
    Datum,

    /// <summary>The centre of the box round the nominal outline of its face or flange.</summary>
    Centre,
}

/// <summary>A hole or a pattern of equal holes in a face or flange.</summary>
/// <param name="Id">Permanent id within the part, for example <c>vents</c>.</param>
/// <param name="On"><c>face</c> or the id of a flange.</param>
/// <param name="At">Position of the hole's or the pattern's centre in that frame, metres, from <paramref name="Anchor"/>.</param>
/// <param name="Shape">Shape of each hole.</param>
/// <param name="Anchor">What the position is counted from.</param>
public sealed record HoleSpec(string Id, string On, Vec2 At, HoleShape Shape, HoleAnchor Anchor = HoleAnchor.Datum)
{
    /// <summary>What x is counted from where it differs from <see cref="Anchor"/>.</summary>
    public HoleAnchor? AnchorX { get; init; }

    /// <summary>What y is counted from where it differs from <see cref="Anchor"/>.</summary>
    public HoleAnchor? AnchorY { get; init; }

    /// <summary>Turn of each hole's shape, radians, counter-clockwise seen on the outside.</summary>
    public double RotationRad { get; init; }

    /// <summary>Turn of the pattern as a whole, radians; turns the members' places and their shapes.</summary>
    public double PatternRotationRad { get; init; }

    /// <summary>The pattern; null for a single hole.</summary>
    public HolePattern? Pattern { get; init; }

    /// <summary>What the hole is for, shown on drawings and in the drill list, for example <c>M4 clearance, fan.main.mount</c>.</summary>
    public string Purpose { get; init; } = "";

    /// <summary>True where what goes in fills it: a screw, or a bought thing other than a fan. Words alone fill nothing.</summary>
    public bool IsFilled { get; init; }

    /// <summary>Thinnest sheet that what goes in holds in, metres; null where unknown.</summary>
    public double? SheetLeastM { get; init; }

    /// <summary>Thickest sheet, metres; null where unknown.</summary>
    public double? SheetMostM { get; init; }

    /// <summary>Distance to live parts behind this opening, metres; null: what the part says.</summary>
    public double? LiveBehindM { get; init; }

    /// <summary>True for a standard opening whose size was not read in a maker's or standard's print.</summary>
    public bool IsFromMemory { get; init; }
}
