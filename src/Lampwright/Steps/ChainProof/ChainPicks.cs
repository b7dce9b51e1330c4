namespace Lampwright.Steps.ChainProof;

/// <summary>Picks the parts of each position of one chain: fewest first, each within its power, none more often than there are.</summary>
internal sealed class ChainPicks
{
    private readonly ChainModel _model;
    private readonly ChainLimits _limits;
    private readonly bool _counted;

    public ChainPicks(ChainModel model, ChainLimits limits)
    {
        _model = model;
        _limits = limits;
        _counted = model
            .Fixed.Parts.Concat(model.Switched.Parts)
            .Any(v => v.Any(p => Counted(p.First) || Counted(p.Second)));
    }

    /// <summary>The parts of each position, null where the stock has not enough of a kind or a limit is broken.</summary>
    /// <param name="at">Index of the value of each position.</param>
    public PositionParts[]? Of(ReadOnlySpan<int> at)
    {
        if (_limits.Broken(at, at) is not null)
        {
            return null;
        }

        var picked = new PositionParts[at.Length];
        var able = new List<PositionParts>[at.Length];
        for (var k = 0; k < at.Length; k++)
        {
            var square = _limits.Square(at, k) * (1 - 1e-9);
            able[k] = [.. _model.Values(k).Parts[at[k]].Where(w => PartBears.Of(_model.Spec, w) >= square)];
            if (able[k].Count == 0)
            {
                return null;
            }

            picked[k] = able[k][0];
        }

        return !_counted || Pick(able, picked, 0, []) ? picked : null;
    }

    private static bool Pick(List<PositionParts>[] able, PositionParts[] picked, int k, Dictionary<StockPart, int> used)
    {
        if (k == able.Length)
        {
            return true;
        }

        foreach (var way in able[k])
        {
            if (Take(used, way.First))
            {
                if (way.Second is null || Take(used, way.Second))
                {
                    picked[k] = way;
                    if (Pick(able, picked, k + 1, used))
                    {
                        return true;
                    }

                    if (way.Second is not null)
                    {
                        used[way.Second]--;
                    }
                }

                used[way.First]--;
            }
        }

        return false;
    }

    private static bool Take(Dictionary<StockPart, int> used, StockPart part)
    {
        var taken = used.GetValueOrDefault(part) + 1;
        if (part.Count is { } most && taken > most)
        {
            return false;
        }

        used[part] = taken;
        return true;
    }

    private static bool Counted(StockPart? part) => part?.Count is not null;
}
