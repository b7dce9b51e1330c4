namespace Lampwright.Steps.ChainProof;

/// <summary>Error and power of one chain of given parts, whether or not the stock has them.</summary>
public static class ChainCheck
{
    /// <summary>Worst error of the objective; infinite where a limit is broken.</summary>
    /// <param name="spec">What is wanted; its stock does not matter.</param>
    /// <param name="parts">The fixed position first; as many as switches and one.</param>
    public static double Error(ChainSearchSpec spec, IReadOnlyList<PositionParts> parts)
    {
        var (model, at) = Ready(spec, parts);
        return new ChainLimits(model).Broken(at, at) is null ? new ChainError(model).Of(at) : double.PositiveInfinity;
    }

    /// <summary>Errors and load of one chain as a search tells them; nothing is proven of it.</summary>
    /// <param name="spec">What is wanted; its stock does not matter.</param>
    /// <param name="parts">The fixed position first; as many as switches and one.</param>
    /// <returns>What it does, and the limit it breaks; null where it keeps them all.</returns>
    public static (ChainSearchResult Does, ClosedBy? Breaks) Of(
        ChainSearchSpec spec,
        IReadOnlyList<PositionParts> parts
    )
    {
        var (model, at) = Ready(spec, parts);
        var does = ChainSearchResult.Judged(model, new(0, 0, false), [.. parts], at, false, 0, 0, null);
        return (does, new ChainLimits(model).Broken(at, at));
    }

    /// <summary>Power that a position carries in its worst combination, in watts.</summary>
    /// <param name="spec">What is wanted; its stock does not matter.</param>
    /// <param name="parts">The fixed position first.</param>
    /// <param name="position">Which position, 0 is the fixed one.</param>
    public static double PowerW(ChainSearchSpec spec, IReadOnlyList<PositionParts> parts, int position)
    {
        var (model, at) = Ready(spec, parts);
        return new ChainLimits(model).Power(at, position);
    }

    internal static double Brightest(ChainSearchSpec spec, IReadOnlyList<PositionParts> parts)
    {
        var nominal = new NominalChain(spec, parts);
        return spec.Driver.SenseOhm(Enumerable.Range(0, spec.CombinationCount).Max(nominal.CurrentA));
    }

    private static (ChainModel Model, int[] At) Ready(ChainSearchSpec spec, IReadOnlyList<PositionParts> parts)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(parts);
        Guard.InRange(parts.Count, spec.Switches + 1, spec.Switches + 1);
        var model = new ChainModel(
            spec,
            [
                [parts[0]],
            ],
            [.. parts.Skip(1).Select(p => new[] { p }).OrderBy(p => p[0].Ohm)]
        );
        var order = parts.Skip(1).Select((p, k) => (p.Ohm, k)).OrderBy(p => p.Ohm).Select(p => p.k).ToList();
        var at = new int[parts.Count];
        for (var i = 0; i < order.Count; i++)
        {
            at[order[i] + 1] = i;
        }

        return (model, at);
    }
}
