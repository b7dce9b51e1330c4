namespace Lampwright.Metal.Bending;

/// <summary>How a search for an order ended.</summary>
public enum BendVerdict
{
    /// <summary>An order was found.</summary>
    Found,

    /// <summary>All orders were closed: none can be made on this brake.</summary>
    None,

    /// <summary>More bends than are searched through: nothing is claimed.</summary>
    TooMany,
}

/// <summary>One bend of the plan.</summary>
/// <param name="Stroke">What is bent.</param>
/// <param name="Side">What lies under the clamp.</param>
/// <param name="Clamped">Name of the flat under the clamp.</param>
/// <param name="InsideUp">True when the inside of the part is up as the sheet lies on the bed.</param>
/// <param name="FingersM">Widths of the fingers to set side by side, metres; the sum lies between the next two.</param>
/// <param name="LeastM">Least width of the row, metres.</param>
/// <param name="MostM">Most width, metres: what stands beside it.</param>
/// <param name="LengthM">Length of the bend along the brake, metres.</param>
/// <param name="RowFromM">Where the row begins, metres from the beginning of the bend; below 0 where it stands over.</param>
/// <param name="NoseBackM">How far the nose stands behind the apron's axis, metres.</param>
/// <param name="OutSideways">True when a wall behind the clamp is higher than the clamp lifts: the part is slid out along the brake, or the fingers are loosened.</param>
public sealed record BendStage(
    Stroke Stroke,
    ClampedSide Side,
    string Clamped,
    bool InsideUp,
    IReadOnlyList<double> FingersM,
    double LeastM,
    double MostM,
    double LengthM,
    double RowFromM,
    double NoseBackM,
    bool OutSideways
);

/// <summary>A bend that could not be made in the last state that was reached, and why.</summary>
/// <param name="Stroke">The bend.</param>
/// <param name="FromParent">Why not with its parent under the clamp.</param>
/// <param name="FromFlange">Why not with the flange under the clamp; null where that was not tried.</param>
public sealed record Blocked(Stroke Stroke, Hindrance FromParent, Hindrance? FromFlange);

/// <summary>What would free a part that has no order.</summary>
/// <param name="Stroke">The bend that is changed.</param>
/// <param name="ByHand">An order exists that leaves this bend to the end, to be made by hand over a bar.</param>
/// <param name="BySeam">An order exists when the flange is a part of its own, joined by a seam, and one for that part.</param>
/// <param name="FingerFromM">An order exists with one more finger at least this wide; 0 where it would not help.</param>
/// <param name="FingerToM">And at most this wide.</param>
public sealed record Freeing(Stroke Stroke, bool ByHand, bool BySeam, double FingerFromM, double FingerToM);

/// <summary>Order of the bends of a part on a brake, or the proof that there is none.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Verdict">How the search ended.</param>
/// <param name="Stages">The order; empty where there is none.</param>
/// <param name="Pressed">Flanges that are pressed between bars afterwards, not bent on the brake.</param>
/// <param name="Orders">Orders and sides that the verdict speaks of: n! times 2 to the n, in a double.</param>
/// <param name="States">States of the part that were reached.</param>
/// <param name="Looks">Flats that were looked at.</param>
/// <param name="Made">Bends that were made in the furthest state where nothing went on; empty with an order.</param>
/// <param name="Blocked">The bends that stuck there.</param>
/// <param name="Freeings">What would free it, each tried.</param>
public sealed record BendPlan(
    string Part,
    BendVerdict Verdict,
    IReadOnlyList<BendStage> Stages,
    IReadOnlyList<string> Pressed,
    double Orders,
    int States,
    int Looks,
    IReadOnlyList<string> Made,
    IReadOnlyList<Blocked> Blocked,
    IReadOnlyList<Freeing> Freeings
);
