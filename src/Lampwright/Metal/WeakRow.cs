namespace Lampwright.Metal;

/// <summary>A row of holes along a bend, held against the moment that bending puts on it. Metres.</summary>
/// <param name="DistanceM">Of the row from the tangent of the bend.</param>
/// <param name="Left">Share of the metal that is left in the row, 0 to 1.</param>
/// <param name="Asked">Share that the bending moment asks for there.</param>
/// <param name="Member">The hole of the row that is named.</param>
/// <remarks>
/// The apron pushes a flange at its far edge, so the moment falls from the bend to that edge in a straight line: at the distance x of a
/// flange of length L it is 1 − x/L of what bends the whole sheet at the tangent (S·T²/4 per width). A row of holes that leaves less of
/// the metal bends before the bend does.
/// <para><b>Validity</b>: rows along the bend, holes evenly spread along it; the flange lies free in front of the clamp. A staggered field is
/// taken row by row (webs that run aslant are not counted as weaker).</para>
/// <para><b>Source</b>: derived (plastic moment of the net section). <b>Accuracy</b>: hardening in the bend shifts the limit by some tenths; in
/// the end the apron presses most of the bow flat again, so it is a note and not a warning.</para>
/// <para><b>Checked by</b>: hand case.</para>
/// </remarks>
internal sealed record WeakRow(double DistanceM, double Left, double Asked, string Member)
{
    /// <summary>Fewer holes are no perforation.</summary>
    private static int Fewest => 3;

    /// <summary>The row of a flange that is weakest against what its bend asks for; null where none is too weak.</summary>
    /// <param name="panel">The flange.</param>
    /// <param name="holes">Its holes.</param>
    /// <param name="bendLengthM">Length of its bend.</param>
    public static WeakRow? Of(Panel panel, IReadOnlyList<PlacedHole> holes, double bendLengthM)
    {
        var (tangent, length) = (panel.Bend!.SetbackM, panel.Height - panel.Bend.SetbackM);
        if (!(length > 0) || !(bendLengthM > 0))
        {
            return null;
        }

        WeakRow? worst = null;
        foreach (var row in holes.GroupBy(h => Math.Round(NearestWide(h), 5)))
        {
            var x = row.Key - tangent;
            if (x < 0 || x >= length || row.Count() < Fewest)
            {
                continue;
            }

            var cut = row.Sum(h => Width(h));
            var found = new WeakRow(x, Math.Max(0, 1 - (cut / bendLengthM)), 1 - (x / length), row.First().Member);
            if (
                found.Left < found.Asked - 1e-9
                && (worst is null || found.Left - found.Asked < worst.Left - worst.Asked)
            )
            {
                worst = found with { Member = row.First().Spec.Id + row.First().Member };
            }
        }

        return worst;
    }

    /// <summary>Where a hole is first as wide as it gets: its middle when it is round, its edge towards the bend when it is square.</summary>
    private static double NearestWide(PlacedHole hole) => hole.DiameterM > 0 ? hole.Centre.Y : hole.Outline.Box.Least.Y;

    private static double Width(PlacedHole hole)
    {
        var (least, most) = hole.Outline.Box;
        return most.X - least.X;
    }
}
