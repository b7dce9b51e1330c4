namespace Lampwright.Steps.ChainProof;

/// <summary>How often values can be had from a drawer that is short of parts.</summary>
/// <remarks>Positions whose value is decided are tried with every way to make them, whatever the power: what cannot be made together at all closes a box early.</remarks>
internal sealed class ChainCounts
{
    private readonly ChainModel _model;
    private readonly int[] _stock;
    private readonly int[] _left;
    private readonly int[] _decided;
    private readonly (int A, int B)[][] _fixed;
    private readonly (int A, int B)[][] _switched;
    private readonly int[] _caps;

    public ChainCounts(ChainModel model)
    {
        _model = model;
        Matter = model
            .Fixed.Parts.Concat(model.Switched.Parts)
            .Any(v => v.Any(w => w.First.Count is not null || w.Second?.Count is not null));
        if (!Matter)
        {
            (_stock, _left, _decided, _fixed, _switched, _caps) = ([], [], [], [], [], []);
            return;
        }

        var ids = new Dictionary<StockPart, int>();
        var stock = new List<int>();
        int Id(StockPart? part)
        {
            if (part?.Count is not { } count)
            {
                return -1;
            }

            if (!ids.TryGetValue(part, out var id))
            {
                ids[part] = id = stock.Count;
                stock.Add(count);
            }

            return id;
        }

        (int A, int B)[][] Ways(ChainValues values) =>
            [.. values.Parts.Select(v => v.Select(w => (Id(w.First), Id(w.Second))).ToArray())];
        (_fixed, _switched) = (Ways(model.Fixed), Ways(model.Switched));
        _stock = [.. stock];
        _left = new int[_stock.Length];
        _decided = new int[model.Positions];
        _caps = [.. _switched.Select(Cap)];
    }

    /// <summary>Whether anything is counted.</summary>
    public bool Matter { get; }

    /// <summary>More switched positions than this cannot have a value at once.</summary>
    /// <param name="value">Index of the value.</param>
    public int Most(int value) => _caps[value];

    /// <summary>Whether the decided positions of a box ask for more parts of a kind than there are.</summary>
    /// <param name="least">Least index of each position.</param>
    /// <param name="most">Greatest index of each position.</param>
    public bool Short(ReadOnlySpan<int> least, ReadOnlySpan<int> most)
    {
        var n = 0;
        for (var k = 0; k < least.Length; k++)
        {
            if (least[k] == most[k] && !Array.Exists(Ways(k, least[k]), w => w is { A: < 0, B: < 0 }))
            {
                _decided[n++] = k;
            }
        }

        if (n == 0)
        {
            return false;
        }

        _stock.CopyTo(_left, 0);
        return !Made(least, n - 1);
    }

    private (int A, int B)[] Ways(int position, int value) => position == 0 ? _fixed[value] : _switched[value];

    private bool Made(ReadOnlySpan<int> at, int i)
    {
        if (i < 0)
        {
            return true;
        }

        foreach (var (a, b) in Ways(_decided[i], at[_decided[i]]))
        {
            Take(a, 1);
            Take(b, 1);
            var made = (a < 0 || _left[a] >= 0) && (b < 0 || _left[b] >= 0) && Made(at, i - 1);
            Take(a, -1);
            Take(b, -1);
            if (made)
            {
                return true;
            }
        }

        return false;
    }

    private void Take(int kind, int count)
    {
        if (kind >= 0)
        {
            _left[kind] -= count;
        }
    }

    // Each way by itself as often as it can be made, added up: never too few.
    private int Cap((int A, int B)[] ways)
    {
        var sum = 0L;
        foreach (var (a, b) in ways)
        {
            sum +=
                a < 0 && b < 0 ? _model.Positions
                : a == b ? _stock[a] / 2
                : Math.Min(a < 0 ? int.MaxValue : _stock[a], b < 0 ? int.MaxValue : _stock[b]);
        }

        return (int)Math.Min(sum, _model.Positions);
    }
}
