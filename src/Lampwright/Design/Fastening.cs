using Lampwright.Quantities;

namespace Lampwright.Design;

/// <summary>A bought thing.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Item(string Name)
{
    /// <summary>Outer sizes.</summary>
    public Box? Box { get; init; }

    /// <summary>Mass, kg.</summary>
    public Value? Mass { get; init; }

    /// <summary>Name of a standard cut-out it needs, or empty.</summary>
    public string Cutout { get; init; } = "";

    /// <summary>Hole patterns.</summary>
    public IReadOnlyList<HolePattern> Holes { get; init; } = [];

    /// <summary>What the maker notes beside it.</summary>
    public string Note { get; init; } = "";
}

/// <summary>What is fastened to what.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Joint(string Name)
{
    /// <summary>Hole patterns in the order of the stack, from the screw's head on.</summary>
    public IReadOnlyList<string> Stack { get; init; } = [];

    /// <summary>Which side of each touches its neighbour: <c>outside</c>, <c>inside</c>, <c>back</c>, <c>front</c> …</summary>
    public IReadOnlyList<string> Sides { get; init; } = [];

    /// <summary>Turn of the second on the first about the pattern's axis, rad.</summary>
    public Value? Turn { get; init; }

    /// <summary>The screw; null when glued, welded or clipped.</summary>
    public Screw? Screw { get; init; }

    /// <summary>How the holes were marked, which decides how far they may miss.</summary>
    public Marking Marked { get; init; } = Marking.ByTemplate;
}

/// <summary>A screw and what goes with it.</summary>
/// <param name="Size">Thread, for example <c>M4</c>.</param>
/// <param name="Length">Length under the head, m.</param>
/// <param name="Nut">True with a nut.</param>
/// <param name="Washers">Count of washers.</param>
public sealed record Screw(string Size, Value Length, bool Nut, int Washers);

/// <summary>How holes were marked.</summary>
public enum Marking
{
    /// <summary>Punched through the printed template.</summary>
    ByTemplate,

    /// <summary>Measured and scribed by hand.</summary>
    ByHand,

    /// <summary>Punched through the mating part.</summary>
    CentrePunched,

    /// <summary>Both parts clamped and drilled in one.</summary>
    DrilledTogether,
}

/// <summary>From which part the others are placed.</summary>
/// <param name="Fixed">Name of the part or item that stands still.</param>
/// <param name="Gravity">Direction of gravity in the frame of that part, for example <c>-y</c>.</param>
public sealed record Assembly(string Fixed, string Gravity);

/// <summary>A tilt joint held by friction.</summary>
/// <param name="Name">Name of the table.</param>
public sealed record Tilt(string Name)
{
    /// <summary>The two patterns on the axis: what holds and what tilts.</summary>
    public IReadOnlyList<string> Between { get; init; } = [];

    /// <summary>Count of screws on the axis.</summary>
    public int Screws { get; init; } = 2;

    /// <summary>Thread and kind of the screw, for example <c>M6 wing</c>.</summary>
    public string Screw { get; init; } = "M6 wing";

    /// <summary>Torque that the hand gives each, N·m.</summary>
    public Value Torque { get; init; } = new(1.5, 0.5, Origin.Default, "torque");

    /// <summary>Rubbing faces per screw.</summary>
    public int Faces { get; init; } = 2;

    /// <summary>Inner and outer diameter of the rubbing faces (width is inner, height is outer), m.</summary>
    public Size? Washer { get; init; }

    /// <summary>Coefficient of friction of the faces.</summary>
    public Value Friction { get; init; } = new(0.135, 0.03, Origin.Default, "friction");
}

/// <summary>An arm that carries the light at its end.</summary>
/// <param name="Name">Name of the table.</param>
/// <param name="Length">Free length, m.</param>
/// <param name="Width">Outer width of the section, m.</param>
/// <param name="Height">Outer height of the section in the plane of bending, m.</param>
/// <param name="Wall">Wall thickness, m; null for a solid bar.</param>
/// <param name="Material">Material.</param>
public sealed record Arm(string Name, Value Length, Value Width, Value Height, Value? Wall, string Material);

/// <summary>A stand.</summary>
/// <param name="Name">Name of the table.</param>
/// <param name="Height">Height of the light's tilt axis above the floor or table, m.</param>
/// <param name="Foot">Distance from the column's foot to the nearest tipping edge, m.</param>
/// <param name="Mass">Mass of the stand itself, kg.</param>
/// <param name="Offset">Horizontal distance of the light's axis from the column, m.</param>
public sealed record Stand(string Name, Value Height, Value Foot, Value Mass, Value Offset);

/// <summary>A rule of thumb that the maker overrides.</summary>
/// <param name="Name">Name of the rule's value, for example <c>hole_to_bend</c>.</param>
/// <param name="Value">The value, in the rule's unit.</param>
/// <param name="Because">The maker's reason.</param>
public sealed record RuleOverride(string Name, Value Value, string Because)
{
    /// <summary>
    /// The expression, where it hangs on the <c>thickness</c> and <c>radius</c> of the sheet at hand; <see cref="Value"/> is then that of
    /// the first sheet.
    /// </summary>
    public Formula? Formula { get; init; }
}

/// <summary>Where the readings stand.</summary>
/// <param name="File">File name beside the design file.</param>
/// <param name="Meter">Kind of the light meter, for example <c>phone</c>.</param>
/// <param name="Factor">What its readings are multiplied by.</param>
public sealed record ReadingsSource(string File, string Meter, Value Factor);
