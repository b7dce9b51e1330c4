namespace Lampwright.Steps;

/// <summary>A first search for the resistors of a chain: the worst error against the wanted currents as small as it can.</summary>
/// <remarks>
/// Pattern search for a good first chain, then branch and bound over boxes of candidates, best bound first. Deterministic.
/// Even when it closes every box it is no proof: the resistors are cold, tolerances are left out and nothing checks it
/// independently. Nominal error only. Runs once.
/// <b>Validity</b>: all currents fall when any resistance rises, which holds in all three arrangements.
/// <b>Source</b>: interval branch and bound (general method). <b>Checked by</b>: invariant (brute force on small stocks),
/// exhaustive enumeration of one stated problem.
/// </remarks>
public static class ChainSearch
{
    /// <summary>The best chain the search comes to, null when no chain keeps the limits or nothing is wanted.</summary>
    /// <param name="spec">What is wanted and what may be taken.</param>
    public static ChainSearchResult? Find(ChainSearchSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.InRange(spec.Switches, 0, ChainSpec.MostSwitches);
        Guard.InRange(spec.ContactOhm, 0, 1e6);
        Guard.InRange(spec.LeadOhm, 0, 1e6);
        StockPart[] stock =
        [
            .. spec
                .Stock.Where(p => p.Ohm is > 0 and < 1e9 && p.AllowedW > 0)
                .GroupBy(p => p.Ohm)
                .Select(g => g.MaxBy(p => p.AllowedW)!)
                .OrderBy(p => p.Ohm),
        ];
        StockPart[] fixedStock = spec.FixedOhm is { } f ? [f] : stock;
        if (
            fixedStock.Length == 0
            || (stock.Length == 0 && spec.Switches > 0)
            || !spec.WantedA.Any(a => a is > 0 and < 1e9)
        )
        {
            return null;
        }

        var candidates = new ChainCandidates(spec, stock, fixedStock);
        var best = new int[candidates.Positions];
        var error = PatternSearch(spec, candidates, best);
        var boxes = Close(spec, candidates, best, ref error, out var complete);
        return double.IsFinite(error) ? Result(spec, candidates, best, error, boxes, complete) : null;
    }

    private static ChainSearchResult Result(
        ChainSearchSpec spec,
        ChainCandidates candidates,
        int[] best,
        double error,
        int boxes,
        bool complete
    )
    {
        double[] wanted = [.. spec.WantedA.Where(a => a is > 0 and < 1e9)];
        var nearest = candidates.Nearest(best, wanted);
        var words = complete
            ? "First search: every box of candidates was closed at nominal values; this is not the proof."
            : "First search: the best chain found within its limit; a better one may exist.";
        return new(
            candidates.Part(0, best[0]),
            [.. best.Skip(1).Select(i => candidates.Stock[i])],
            error,
            [
                .. wanted.Select(
                    (w, t) =>
                        new WantedStep(
                            w,
                            Switches(spec, nearest[t].Index),
                            nearest[t].CurrentA,
                            (nearest[t].CurrentA / w) - 1
                        )
                ),
            ],
            boxes,
            complete,
            words
        );
    }

    private static string Switches(ChainSearchSpec spec, int index) =>
        string.Concat(
            Enumerable
                .Range(0, spec.Switches)
                .Select(k =>
                    spec.Arrangement == Arrangement.Selector
                        ? (k == index ? '1' : '0')
                        : (((index >> (spec.Switches - 1 - k)) & 1) == 0 ? '1' : '0')
                )
        );

    // Steps of 1, 2, 4, … places in each position, and two positions against each other, from several starts.
    private static double PatternSearch(ChainSearchSpec spec, ChainCandidates candidates, int[] best)
    {
        var error = double.PositiveInfinity;
        foreach (var start in Starts(spec, candidates))
        {
            var at = start;
            var e = candidates.Error(at);
            while (Improved(spec, candidates, at, ref e)) { }

            if (e < error || double.IsInfinity(error))
            {
                (error, _) = (e, 0);
                at.CopyTo(best, 0);
            }
        }

        SortChain(spec, best);
        return candidates.Error(best);
    }

    private static bool Improved(ChainSearchSpec spec, ChainCandidates candidates, int[] at, ref double error)
    {
        var from = error;
        for (var p = 0; p < at.Length; p++)
        {
            for (var step = 1; step < candidates.CountAt(p); step *= 2)
            {
                Try(candidates, at, p, step, -1, 0, ref error);
                Try(candidates, at, p, -step, -1, 0, ref error);
            }

            for (var q = 0; q < p && spec.Switches <= 6; q++)
            {
                for (var a = -2; a <= 2; a++)
                {
                    for (var b = -2; b <= 2; b++)
                    {
                        Try(candidates, at, p, a, q, b, ref error);
                    }
                }
            }
        }

        return error < from;
    }

    private static void Try(ChainCandidates candidates, int[] at, int p, int by, int q, int andBy, ref double error)
    {
        var (was, other) = (at[p], q >= 0 ? at[q] : 0);
        at[p] = Math.Clamp(was + by, 0, candidates.CountAt(p) - 1);
        if (q >= 0)
        {
            at[q] = Math.Clamp(other + andBy, 0, candidates.CountAt(q) - 1);
        }

        var e = candidates.Error(at, error);
        if (e < error)
        {
            error = e;
            return;
        }

        at[p] = was;
        if (q >= 0)
        {
            at[q] = other;
        }
    }

    // Ladders by halves, thirds and equal parts between the brightest and the dimmest step, and the differences of the steps.
    private static IEnumerable<int[]> Starts(ChainSearchSpec spec, ChainCandidates candidates)
    {
        double[] ohms =
        [
            .. spec.WantedA.Where(a => a is > 0 and < 1e9).OrderDescending().Select(a => spec.Driver.SenseOhm(a)),
        ];
        var n = spec.Switches;
        var span = Math.Max(ohms[^1] - ohms[0], ohms[0] * 0.01);
        foreach (var ratio in (double[])[2, 1.5, 3, 1])
        {
            var parts = Enumerable.Range(0, n).Select(k => Math.Pow(ratio, k)).ToArray();
            var sum = Math.Max(parts.Sum(), 1e-12);
            yield return Indices(candidates, ohms[0], [.. parts.Select(x => Scaled(spec, span * x / sum, ohms[0]))]);
        }

        var steps = Enumerable
            .Range(0, n)
            .Select(k => ohms[Math.Min(k + 1, ohms.Length - 1)] - ohms[Math.Min(k, ohms.Length - 1)]);
        yield return Indices(candidates, ohms[0], [.. steps.Select(x => Scaled(spec, Math.Max(x, 0), ohms[0]))]);
    }

    // A branch that takes the place of a series resistor of the same effect.
    private static double Scaled(ChainSearchSpec spec, double series, double top) =>
        spec.Arrangement == Arrangement.ParallelBranches ? top * top / Math.Max(series, 1e-12) : series;

    private static int[] Indices(ChainCandidates candidates, double fixedOhm, double[] chain)
    {
        int[] at = [Nearest(candidates.FixedStock, fixedOhm), .. chain.Select(r => Nearest(candidates.Stock, r))];
        return at;
    }

    private static int Nearest(StockPart[] stock, double ohm)
    {
        var best = 0;
        for (var i = 1; i < stock.Length; i++)
        {
            if (Math.Abs(stock[i].Ohm - ohm) < Math.Abs(stock[best].Ohm - ohm))
            {
                best = i;
            }
        }

        return best;
    }

    private static void SortChain(ChainSearchSpec spec, int[] at)
    {
        if (spec.Arrangement != Arrangement.Selector)
        {
            Array.Sort(at, 1, at.Length - 1);
        }
    }

    private static int Close(
        ChainSearchSpec spec,
        ChainCandidates candidates,
        int[] best,
        ref double error,
        out bool complete
    )
    {
        var p = candidates.Positions;
        var queue = new PriorityQueue<int[], (double Bound, int Order)>();
        var root = new int[2 * p];
        for (var k = 0; k < p; k++)
        {
            root[p + k] = candidates.CountAt(k) - 1;
        }

        var order = 0;
        var boxes = 0;
        queue.Enqueue(root, (candidates.Bound(root.AsSpan(0, p), root.AsSpan(p), double.PositiveInfinity), order++));
        Span<int> middle = stackalloc int[p];
        while (queue.TryDequeue(out var box, out var key) && key.Bound < error - 1e-12)
        {
            if (boxes >= spec.MostBoxes)
            {
                complete = false;
                return boxes;
            }

            boxes++;
            var widest = Widest(candidates, box, p);
            if (widest < 0)
            {
                Take(candidates, box.AsSpan(0, p), best, ref error);
                continue;
            }

            var cut = (box[widest] + box[p + widest]) / 2;
            for (var side = 0; side < 2; side++)
            {
                var part = (int[])box.Clone();
                part[side == 0 ? p + widest : widest] = side == 0 ? cut : cut + 1;
                if (spec.Arrangement != Arrangement.Selector && !Ordered(part, p))
                {
                    continue;
                }

                var bound = candidates.Bound(part.AsSpan(0, p), part.AsSpan(p), error - 1e-12);
                if (bound < error - 1e-12)
                {
                    for (var k = 0; k < p; k++)
                    {
                        middle[k] = (part[k] + part[p + k]) / 2;
                    }

                    Take(candidates, middle, best, ref error);
                    queue.Enqueue(part, (bound, order++));
                }
            }
        }

        complete = true;
        return boxes;
    }

    private static void Take(ChainCandidates candidates, ReadOnlySpan<int> at, int[] best, ref double error)
    {
        var e = candidates.Error(at, error);
        if (e < error)
        {
            error = e;
            at.CopyTo(best);
        }
    }

    private static int Widest(ChainCandidates candidates, int[] box, int p)
    {
        var widest = -1;
        var most = 0.0;
        for (var k = 0; k < p; k++)
        {
            if (box[p + k] > box[k])
            {
                var width = candidates.Part(k, box[p + k]).Ohm - candidates.Part(k, box[k]).Ohm;
                if (width > most)
                {
                    (most, widest) = (width, k);
                }
            }
        }

        return widest;
    }

    // The switched positions are alike, so only ascending chains are looked at; false when the box holds none.
    private static bool Ordered(int[] box, int p)
    {
        for (var k = 2; k < p; k++)
        {
            box[k] = Math.Max(box[k], box[k - 1]);
        }

        for (var k = p - 2; k >= 1; k--)
        {
            box[p + k] = Math.Min(box[p + k], box[p + k + 1]);
        }

        for (var k = 1; k < p; k++)
        {
            if (box[k] > box[p + k])
            {
                return false;
            }
        }

        return true;
    }
}
