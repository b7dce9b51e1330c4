namespace Lampwright.Steps.ChainProof;

/// <summary>From what may be taken to the values a position can have.</summary>
internal static class ChainStock
{
    // Values closer than this are one: 0.02 + 0.02 and 0.04 differ by rounding alone.
    private static readonly double Same = 1e-12;

    /// <summary>What of a stock can be used, and how much cannot.</summary>
    public static (StockPart[] Usable, int Unusable, int Beyond) Sorted(ChainSearchSpec spec)
    {
        var usable = spec.Stock.Where(p => p.Usable).ToArray();
        var taken = usable.Length > ChainSearchSpec.MostStock ? usable[..ChainSearchSpec.MostStock] : usable;
        return (taken, spec.Stock.Count - usable.Length, usable.Length - taken.Length);
    }

    /// <summary>Whether positions are made of two parts too.</summary>
    public static bool Joins(ChainSearchSpec spec, StockPart[] usable) =>
        spec.Joined
        && usable.Select(p => p.Ohm).Distinct().Take(ChainSearchSpec.MostJoinedStock + 1).Count()
            <= ChainSearchSpec.MostJoinedStock;

    /// <summary>The values of a switched position, or of the fixed one, ascending; each with the ways to make it, fewest parts first.</summary>
    public static List<PositionParts[]> Values(ChainSearchSpec spec, StockPart[] usable, bool isFixed)
    {
        if (isFixed && spec.Fixed is { } stays)
        {
            return stays.Usable
                ?
                [
                    [new(Joint.Single, stays)],
                ]
                : [];
        }

        // Alike parts are one kind, with their counts added up: pairs are made of kinds.
        StockPart[] kinds =
        [
            .. usable
                .GroupBy(p => p with { Count = null })
                .Select(g => g.Key with { Count = g.Any(p => p.Count is null) ? null : Total(g) }),
        ];
        if (kinds.All(k => k.Count is null))
        {
            kinds = [.. Undominated(kinds)];
        }

        var all = new List<PositionParts>(kinds.Select(p => new PositionParts(Joint.Single, p)));
        if (Joins(spec, usable))
        {
            for (var i = 0; i < kinds.Length; i++)
            {
                for (var j = 0; j <= i; j++)
                {
                    if (i != j || kinds[i].Count is not 1)
                    {
                        all.Add(new(Joint.Series, kinds[i], kinds[j]));
                        all.Add(new(Joint.Parallel, kinds[i], kinds[j]));
                    }
                }
            }
        }

        var ordered = all.Where(p => Allowed(spec, p, isFixed))
            .Select(p => (Parts: p, Ends: ChainValues.Of(spec, p, isFixed)))
            .OrderBy(p => p.Ends.Nominal)
            .ThenBy(p => p.Parts.Count)
            .ThenBy(p => p.Parts.Price)
            .ThenByDescending(p => p.Parts.AllowedW);
        var values = new List<(List<PositionParts> Ways, Corners Ends)>();
        foreach (var (parts, ends) in ordered)
        {
            var at = values.Count - 1;
            while (at >= 0 && Near(values[at].Ends.Nominal, ends.Nominal) && !Alike(values[at].Ends, ends))
            {
                at--;
            }

            if (at >= 0 && Near(values[at].Ends.Nominal, ends.Nominal))
            {
                values[at].Ways.Add(parts);
            }
            else
            {
                values.Add(([parts], ends));
            }
        }

        return [.. values.Select(v => v.Ways.OrderBy(w => w.Count).ThenBy(w => w.Price).ToArray())];
    }

    private static int Total(IEnumerable<StockPart> alike) =>
        (int)Math.Min(1_000_000, alike.Sum(p => (long)p.Count!.Value));

    // Where nothing is counted, a part that another of its value betters in everything is of no use.
    private static IEnumerable<StockPart> Undominated(StockPart[] kinds) =>
        kinds
            .GroupBy(k => (k.Ohm, k.Tolerance, k.TempcoPerK, k.RisePerWattK, k.Price))
            .Select(g => g.MaxBy(k => k.AllowedW)!);

    private static bool Allowed(ChainSearchSpec spec, PositionParts parts, bool isFixed)
    {
        var ohm = parts.Ohm;
        return ohm >= (isFixed ? spec.LeastOhm : Math.Max(spec.LeastOhm, spec.LeastSwitchedOhm)) * (1 - Same)
            && ohm <= spec.MostOhm * (1 + Same)
            && (
                isFixed
                || spec.Arrangement != Arrangement.ParallelBranches
                || spec.SwitchA is not { } most
                || Branch(spec, parts) <= most * (1 + 1e-9)
            );
    }

    private static double Branch(ChainSearchSpec spec, PositionParts parts) =>
        spec.LimitsAtCorner
            ? spec.Driver.ThresholdV
                * (1 + spec.ThresholdTolerance)
                / (ChainValues.Of(spec, parts, false).Low + ChainValues.ContactBare(spec))
            : spec.Driver.ThresholdV / (parts.Ohm + spec.ContactOhm);

    private static bool Near(double a, double b) => Math.Abs(a - b) <= Same * Math.Abs(a);

    private static bool Alike(Corners a, Corners b) =>
        Near(a.Low, b.Low)
        && Near(a.High, b.High)
        && Math.Abs(a.LowHeat - b.LowHeat) + Math.Abs(a.HighHeat - b.HighHeat) + Math.Abs(a.NominalHeat - b.NominalHeat)
            <= 1e-12 * a.Nominal;
}
