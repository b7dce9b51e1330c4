namespace Lampwright.Metal.Bending;

/// <summary>In which order a part is bent on a brake, which side under the clamp, with which fingers; or that no order exists.</summary>
/// <remarks>
/// Whether a stroke can be made hangs only on which strokes are made, not on their order, so that all orders of n strokes are closed by the
/// 2 to the power of n states of the part; states that cannot be reached are not looked at. Of all orders that can be made, one with the fewest changes is taken:
/// turning the sheet over counts like setting other fingers (dynamic programming over states; Held and Karp, Journal of the SIAM 10, 1962).
/// <para><b>Validity</b>: the brake of <see cref="BrakeMachine"/>; flats that stay flat while the apron swings; looked at every 3° of the swing and 0.05 mm
/// inside the skins; holes do not count as free space. <b>Source</b>: derived; fingers between standing flanges: US Navy aviation structural training manual,
/// chapter 13. <b>Checked by</b>: another collision check and all orders one by one, in the tests.</para>
/// </remarks>
public static class BendOrder
{
    private static readonly int MostStrokes = 20;
    private static readonly int MostForFewest = 13;

    /// <summary>The plan of a part.</summary>
    /// <param name="part">The folded part, of sheet: the corners of a tube close a ring and are not bent.</param>
    /// <param name="machine">The brake; its sections must not cross themselves.</param>
    /// <param name="pressed">Flanges that are pressed, not bent.</param>
    /// <param name="swing">Angle to swing to for a bend, radians: with its springback; null swings to the angle itself.</param>
    /// <exception cref="ArgumentException">The part is a tube.</exception>
    public static BendPlan Of(
        FoldedPart part,
        BrakeMachine machine,
        IReadOnlySet<string>? pressed = null,
        Func<FoldedBend, double>? swing = null
    )
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(machine);
        if (part.IsTube)
        {
            throw new ArgumentException($"{part.Name} is a tube; its corners are not bent on a brake.", nameof(part));
        }

        pressed ??= new HashSet<string>(StringComparer.Ordinal);
        var tree = new FoldTree(part);
        var plates = new PartPlates(part);
        var solids = new BrakeSolids(machine);
        var strokes = Strokes.Of(tree, pressed, swing ?? (b => Math.Abs(b.AngleRad)), machine.ClosingRad);
        var orders = 1.0;
        for (var n = 1; n <= strokes.Count; n++)
        {
            orders *= 2 * n;
        }

        BendPlan Plan(BendVerdict verdict) => new(part.Name, verdict, [], [.. pressed], orders, 0, 0, [], [], []);
        if (strokes.Count > MostStrokes || part.Bends.Count > 63)
        {
            return Plan(BendVerdict.TooMany);
        }

        var moves = new List<StrokeChecks>();
        foreach (var stroke in strokes)
        {
            moves.Add(new(tree, plates, solids, stroke, ClampedSide.Parent));
            if (stroke.Bends.Count == 1)
            {
                moves.Add(new(tree, plates, solids, stroke, ClampedSide.Flange));
            }
        }

        OrderSearch Search(bool[] present, FingerRow fingers) => new(tree, solids, fingers, moves, present);
        var whole = new bool[tree.FlatCount];
        Array.Fill(whole, true);
        var search = Search(whole, solids.Fingers);
        var plan = Plan(BendVerdict.Found) with { States = search.States, Looks = search.Looks };
        if (search.IsComplete)
        {
            return plan with { Stages = Staged(search, fewest: strokes.Count <= MostForFewest) };
        }

        var (made, blocked) = search.Furthest();
        return plan with
        {
            Verdict = BendVerdict.None,
            Made = made,
            Blocked = blocked,
            Freeings = Freed(tree, machine, strokes, search, blocked, Search),
        };
    }

    private static List<BendStage> Staged(OrderSearch search, bool fewest)
    {
        var stages = new List<BendStage>();
        foreach (var (move, done) in search.Order(fewest))
        {
            stages.Add(search.Stage(move, done));
        }

        return stages;
    }

    private static List<Freeing> Freed(
        FoldTree tree,
        BrakeMachine machine,
        List<Stroke> strokes,
        OrderSearch search,
        IReadOnlyList<Blocked> blocked,
        Func<bool[], FingerRow, OrderSearch> again
    )
    {
        var whole = new bool[tree.FlatCount];
        Array.Fill(whole, true);
        var own = new FingerRow(machine.FingerWidthsM, machine.FingerGapM);
        var freeings = new List<Freeing>();
        foreach (var stroke in strokes)
        {
            bool[] Of(Func<int, bool> belongs) => [.. Enumerable.Range(0, tree.FlatCount).Select(belongs)];

            // Cut off, the rest must bend, and so must each flange with what hangs on it.
            bool CanSeam() =>
                again(Of(f => !stroke.Children.Any(c => tree.IsUnder(f, c))), own).IsComplete
                && stroke.Children.All(c => again(Of(f => tree.IsUnder(f, c)), own).IsComplete);

            var (from, to) = (0.0, 0.0);
            var width = blocked.FirstOrDefault(b => b.Stroke == stroke)?.FromParent ?? default;
            if (width.Obstacle == Obstacle.FingerWidths && width.ToM >= width.FromM)
            {
                double[] more = [.. machine.FingerWidthsM, (width.FromM + width.ToM) / 2];
                if (again(whole, new(more, machine.FingerGapM)).IsComplete)
                {
                    (from, to) = (width.FromM, width.ToM);
                }
            }

            var freeing = new Freeing(stroke, search.IsReachedWithout(stroke), CanSeam(), from, to);
            if (freeing.ByHand || freeing.BySeam || from > 0)
            {
                freeings.Add(freeing);
            }
        }

        return freeings;
    }
}
