namespace Lampwright.FitUp;

/// <summary>What is fastened to what.</summary>
/// <param name="Name">Name of the joint.</param>
/// <param name="Stack">Ids of the patterns in order, from the screw's head on.</param>
/// <param name="Sides">
/// The side of each that touches its neighbour: of the first the one towards the second, of every other the one towards the one before it;
/// the next in the stack touches the opposite side.
/// </param>
/// <param name="TurnRad">
/// Turn of the second pattern's <see cref="PatternSpec.Along"/> against that of the first, radians, counter-clockwise seen on the
/// touching side of the first from outside. Null takes the fit nearest to zero, as do the patterns behind the second.
/// </param>
/// <param name="Screw">The screw; null when glued, welded or clipped.</param>
/// <param name="Marking">How the holes were marked.</param>
public sealed record JointSpec(
    string Name,
    IReadOnlyList<string> Stack,
    IReadOnlyList<string> Sides,
    double? TurnRad,
    ScrewSpec? Screw,
    HoleMarking Marking
)
{
    /// <summary>Path in the design file that findings lead to.</summary>
    public string Path { get; init; } = "joint." + Name;
}

/// <summary>A screw and what goes with it.</summary>
/// <param name="Size">Thread, for example <c>M4</c>.</param>
/// <param name="LengthM">Length under the head, metres.</param>
/// <param name="HasNut">True with a nut.</param>
/// <param name="Washers">Count of washers.</param>
public sealed record ScrewSpec(string Size, double LengthM, bool HasNut, int Washers);

/// <summary>How holes were marked, which decides how far they may miss.</summary>
public enum HoleMarking
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
