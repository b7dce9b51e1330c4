using System.Runtime.Intrinsics;

namespace Lampwright.Steps.ChainProof;

/// <summary>What one end of a box of chains gives in every combination: cold resistance and heat.</summary>
internal sealed class ChainSums
{
    private readonly ChainModel _model;
    private readonly double[] _open;
    private readonly double[] _closed;
    private readonly double[] _heat;
    private ChainBoard _board;

    public ChainSums(ChainModel model)
    {
        _model = model;
        Length = Math.Max(4, (model.Combinations + 3) & ~3);
        Sum = new double[Length];
        Ohm = model.Parallel || model.Shunted ? new double[Length] : Sum;
        Heat = model.HasHeat ? new double[Length] : [];
        _open = new double[model.Positions];
        _closed = new double[model.Positions];
        _heat = new double[model.Positions];
    }

    /// <summary>Count of places, a multiple of four; those beyond the combinations repeat the last one.</summary>
    public int Length { get; }

    /// <summary>Sum of what the positions add: ohm, or minus siemens of the branches.</summary>
    public double[] Sum { get; }

    /// <summary>Cold resistance of each combination.</summary>
    public double[] Ohm { get; }

    /// <summary>Heat of each combination, ohm/A²; empty where nothing warms.</summary>
    public double[] Heat { get; }

    /// <summary>What a position adds where it is active.</summary>
    public double Of(int position) => _model.Parallel && position > 0 ? _closed[position] : _open[position];

    public double HeatOf(int position) => _heat[position];

    /// <summary>Takes the values at these indices.</summary>
    /// <param name="at">Index of the value of each position.</param>
    /// <param name="fixedEnds">Ends of the fixed values.</param>
    /// <param name="ends">Ends of the switched ones.</param>
    /// <param name="board">Leads and resistors on the board.</param>
    public void Take(ReadOnlySpan<int> at, ChainValues.Ends fixedEnds, ChainValues.Ends ends, in ChainBoard board)
    {
        _board = board;
        var n = at.Length - 1;
        _open[0] = fixedEnds.Open[at[0]];
        for (var k = 1; k <= n; k++)
        {
            _open[k] = ends.Open[at[k]];
            _closed[k] = ends.Closed[at[k]];
        }

        var start =
            _model.Parallel ? 0
            : _model.Shunted ? board.SensedOhm
            : board.SensedOhm + _open[0];
        if (n >= 2 && Length == 1 << n && _model.Combinations == Length)
        {
            Doubling(Sum, start, _open, _closed, n);
        }
        else
        {
            OneByOne(Sum, start, _open, _closed);
        }

        if (_model.HasHeat)
        {
            TakeHeat(at, fixedEnds, ends);
        }

        if (_model.Parallel)
        {
            Beside();
        }
        else if (_model.Shunted)
        {
            for (nuint i = 0; i < (nuint)Length; i += 4)
            {
                Warm(i, 0).StoreUnsafe(ref Ohm[0], i);
            }
        }
    }

    /// <summary>Resistance of four combinations from a place on, the resistors warmed by a current.</summary>
    /// <param name="i">First place.</param>
    /// <param name="heat">Square of the current, A².</param>
    public Vector256<double> Warm(nuint i, double heat)
    {
        if (!_model.Shunted)
        {
            var ohm = Vector256.LoadUnsafe(ref Ohm[0], i);
            return heat == 0 || !_model.HasHeat
                ? ohm
                : ohm + (Vector256.LoadUnsafe(ref Heat[0], i) * Vector256.Create(heat));
        }

        var chain = Vector256.LoadUnsafe(ref Sum[0], i);
        var first = _open[0];
        if (heat != 0 && _model.HasHeat)
        {
            chain += Vector256.LoadUnsafe(ref Heat[0], i) * Vector256.Create(heat);
            first += _heat[0] * heat;
        }

        var bleed = Vector256.Create(_board.BleedOhm);
        return Vector256.Create(first) + (chain * bleed / (bleed + chain + Vector256.Create(_board.UnsensedOhm)));
    }

    /// <summary>Resistance of one combination, its resistors warmed by a current.</summary>
    /// <param name="c">Which combination.</param>
    /// <param name="heat">Square of the current, A².</param>
    public double Warm(int c, double heat) =>
        !_model.HasHeat ? Ohm[c]
        : _model.Shunted ? _open[0] + (_heat[0] * heat) + _board.Seen(Sum[c] + (Heat[c] * heat))
        : Ohm[c] + (Heat[c] * heat);

    private void TakeHeat(ReadOnlySpan<int> at, ChainValues.Ends fixedEnds, ChainValues.Ends ends)
    {
        var n = at.Length - 1;
        _heat[0] = fixedEnds.Heat[at[0]];
        for (var k = 1; k <= n; k++)
        {
            _heat[k] = ends.Heat[at[k]];
        }

        // What is by-passed stays as cool as the air. Beside a resistor across the leads the fixed one is not part of the sum.
        var first = _model.Shunted ? 0 : _heat[0];
        Span<double> none = stackalloc double[at.Length];
        none.Clear();
        if (n >= 2 && Length == 1 << n && _model.Combinations == Length)
        {
            Doubling(Heat, first, _heat, none, n);
        }
        else
        {
            OneByOne(Heat, first, _heat, none);
        }
    }

    // Places count down from all closed; the last switch is the lowest bit: each further switch doubles what is there.
    private static void Doubling(
        double[] sums,
        double start,
        ReadOnlySpan<double> open,
        ReadOnlySpan<double> closed,
        int n
    )
    {
        ref var s = ref sums[0];
        var (c, o) = (start + closed[n], start + open[n]);
        Vector256.Create(c + closed[n - 1], o + closed[n - 1], c + open[n - 1], o + open[n - 1]).StoreUnsafe(ref s);
        for (var bit = 2; bit < n; bit++)
        {
            var half = (nuint)1 << bit;
            var (vc, vo) = (Vector256.Create(closed[n - bit]), Vector256.Create(open[n - bit]));
            for (nuint i = 0; i < half; i += 4)
            {
                var v = Vector256.LoadUnsafe(ref s, i);
                (v + vo).StoreUnsafe(ref s, i + half);
                (v + vc).StoreUnsafe(ref s, i);
            }
        }
    }

    private void OneByOne(double[] sums, double start, ReadOnlySpan<double> open, ReadOnlySpan<double> closed)
    {
        for (var c = 0; c < sums.Length; c++)
        {
            var active = _model.Active[Math.Min(c, _model.Combinations - 1)];
            var sum = start;
            for (var k = 1; k < active.Length; k++)
            {
                sum += active[k] != _model.Parallel ? open[k] : closed[k];
            }

            sums[c] = sum;
        }
    }

    private void Beside()
    {
        var (vr, vl, one) = (Vector256.Create(1 / _open[0]), Vector256.Create(_board.SensedOhm), Vector256<double>.One);
        var floor = Vector256.Create(_board.FloorOhm);
        for (nuint i = 0; i < (nuint)Length; i += 4)
        {
            // No branch at all gives 1/0: infinite, and 1/∞ is the nothing it adds.
            var branches = one / (Vector256<double>.Zero - Vector256.LoadUnsafe(ref Sum[0], i));
            (floor + (one / (vr + (one / (vl + Vector256.Abs(branches)))))).StoreUnsafe(ref Ohm[0], i);
        }
    }
}
