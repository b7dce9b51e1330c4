using System.Runtime.Intrinsics;

namespace Lampwright.Steps.ChainProof;

/// <summary>Looks at one box of chains: closes it, cuts off what cannot be better, or says where to halve it.</summary>
/// <remarks>
/// Every current falls when any resistance rises, so the least values of a box bound all its resistances from below and its greatest from
/// above. A wanted current that no combination can reach closes the box. Where few combinations can, each position that has its full
/// say in all of them must make up for what the others leave: values too small or too great for every one of them are cut off.
/// </remarks>
internal sealed partial class ChainBoxes
{
    // With more combinations than this still able to meet a wanted current, cutting costs more than it gains.
    private static readonly int MostLive = 4;

    private readonly ChainModel _model;
    private readonly ChainSums _up;
    private readonly ChainSums _down;
    private readonly ChainLimits _limits;
    private readonly ChainCounts _counts;
    private readonly ChainAxis _fixedUp;
    private readonly ChainAxis _fixedDown;
    private readonly ChainAxis _switchedUp;
    private readonly ChainAxis _switchedDown;
    private readonly int[] _order;
    private readonly int[] _live = new int[MostLive];

    public ChainBoxes(ChainModel model, ChainWindows windows)
    {
        _model = model;
        Windows = windows;
        (_up, _down) = (new(model), new(model));
        _limits = new(model);
        _counts = new(model);
        ChainAxis Of(ChainValues.Ends ends, bool isFixed) =>
            new(!isFixed && model.Parallel ? ends.Closed : ends.Open, ends.Heat);
        (_fixedUp, _fixedDown) = (Of(model.AimFixed.Up, true), Of(model.AimFixed.Down, true));
        (_switchedUp, _switchedDown) = (Of(model.Switched.Up, false), Of(model.Switched.Down, false));
        _order = [.. Enumerable.Range(0, model.Wanted.Length)];
        Limits = _limits;
    }

    private enum Sides
    {
        Both,
        Below,
        Above,
    }

    public ChainWindows Windows { get; }

    public ChainLimits Limits { get; }

    /// <summary>Takes the proof's lines, null where none is kept.</summary>
    public List<ProofLine>? Lines { get; set; }

    /// <summary>Forgets which wanted current closed the last boxes: that order must not hang on what was looked at before.</summary>
    public void Forget()
    {
        for (var t = 0; t < _order.Length; t++)
        {
            _order[t] = t;
        }
    }

    /// <summary>Cuts the box down; false when nothing is left of it.</summary>
    public bool Keep(Span<int> least, Span<int> most)
    {
        while (true)
        {
            if (_model.Alike && !Ascend(least, most))
            {
                return false;
            }

            if (_counts.Matter && !Counted(least, most))
            {
                return false;
            }

            if (_limits.Broken(least, most) is { } limit)
            {
                Lines?.Add(new(CaseStep.Closed, 0, 0, limit, 0));
                return false;
            }

            _up.Take(most, _model.AimFixed.Up, _model.Switched.Up, _model.LowBoard);
            _down.Take(least, _model.AimFixed.Down, _model.Switched.Down, _model.HighBoard);
            var cut = false;
            if (!Edges(least, most, ref cut))
            {
                return false;
            }

            for (var i = 0; i < _order.Length; i++)
            {
                var t = _order[i];
                var live = Live(t);
                if (live == 0)
                {
                    Lines?.Add(new(CaseStep.Closed, 0, 0, ClosedBy.Target, t));
                    if (i > 0)
                    {
                        // What closed this box will often close the next one.
                        (_order[i], _order[i - 1]) = (_order[i - 1], t);
                    }

                    return false;
                }

                if (live <= MostLive && !Cut(t, live, Sides.Both, least, most, ref cut))
                {
                    return false;
                }
            }

            if (!cut)
            {
                return true;
            }
        }
    }

    /// <summary>The position to halve, −1 when every position has one value left.</summary>
    public int Widest(ReadOnlySpan<int> least, ReadOnlySpan<int> most)
    {
        var (widest, width) = (-1, -1.0);
        for (var k = 0; k < least.Length; k++)
        {
            var values = _model.Values(k).Width;
            var w = values[most[k]] - values[least[k]];
            if (most[k] > least[k] && w >= width)
            {
                (widest, width) = (k, w);
            }
        }

        return widest;
    }

    // How many combinations can still meet a wanted current; the first few are noted. Stops counting above those.
    private int Live(int t)
    {
        if (_model.Assigned(t) is >= 0 and var only)
        {
            _live[0] = only;
            return Reaches(only, t) ? 1 : 0;
        }

        var (least, most) = (Vector256.Create(Windows.Least[t]), Vector256.Create(Windows.Most[t]));
        ref var up = ref _up.Ohm[0];
        ref var down = ref _down.Ohm[0];
        var warm = _model.HasHeat;
        var count = 0;
        for (nuint i = 0; i < (nuint)_up.Length; i += 4)
        {
            var high = warm ? _up.Warm(i, Windows.LeastHeat[t]) : Vector256.LoadUnsafe(ref up, i);
            var low = warm ? _down.Warm(i, Windows.MostHeat[t]) : Vector256.LoadUnsafe(ref down, i);
            var hit = Vector256.GreaterThanOrEqual(high, least) & Vector256.LessThanOrEqual(low, most);
            var bits = hit.ExtractMostSignificantBits();
            while (bits != 0)
            {
                var c = (int)i + System.Numerics.BitOperations.TrailingZeroCount(bits);
                bits &= bits - 1;
                if (c >= _model.Combinations)
                {
                    break;
                }

                if (count == MostLive)
                {
                    return MostLive + 1;
                }

                _live[count++] = c;
            }
        }

        return count;
    }

    private bool Reaches(int c, int t)
    {
        var (high, low) = (_up.Warm(c, Windows.LeastHeat[t]), _down.Warm(c, Windows.MostHeat[t]));
        return high >= Windows.Least[t] && low <= Windows.Most[t];
    }

    // Nothing is brighter than all closed and nothing dimmer than all open: with them the brightest and the dimmest wanted current must
    // be within reach, and all closed must keep the greatest current, whichever combinations meet them in the end.
    private bool Edges(Span<int> least, Span<int> most, ref bool cut)
    {
        if (_model.Selector)
        {
            return true;
        }

        var low = least[0] == most[0] ? 0 : _limits.LeastFixed(most);
        if (low > least[0])
        {
            // That the greatest one keeps the limit is known already.
            least[0] = Math.Min(low, most[0]);
            Lines?.Add(new(CaseStep.CutBelow, 0, least[0] - 1, ClosedBy.MostCurrent, 0));
            cut = true;
        }

        if (!_model.Alike)
        {
            return true;
        }

        _live[0] = 0;
        if (!Cut(0, 1, Sides.Above, least, most, ref cut))
        {
            return false;
        }

        _live[0] = _model.Combinations - 1;
        return Cut(_model.Wanted.Length - 1, 1, Sides.Below, least, most, ref cut);
    }

    // What the others leave of a window for one position is its own share of the sum less the room that the sum has to spare; among several
    // combinations the one with most room decides. A position that does not have its say in all of them is let be.
    private bool Cut(int t, int live, Sides sides, Span<int> least, Span<int> most, ref bool cut)
    {
        var (heatUp, heatDown) = _model.HasHeat ? (Windows.LeastHeat[t], Windows.MostHeat[t]) : (0, 0);
        var apart = _model.Parallel || _model.Shunted;
        var (from, to) =
            _model.Parallel ? Branches(t)
            : apart ? Shunted(t, heatUp, heatDown)
            : (Windows.Least[t], Windows.Most[t]);
        var (roomUp, roomDown) = (double.NegativeInfinity, double.NegativeInfinity);
        var active = -1;
        for (var i = 0; i < live; i++)
        {
            var c = _live[i];
            var (up, down) = (_up.Sum[c] - from, to - _down.Sum[c]);
            if (heatUp != 0)
            {
                up += _up.Heat[c] * heatUp;
                down -= _down.Heat[c] * heatDown;
            }

            roomUp = Math.Max(roomUp, up);
            roomDown = Math.Max(roomDown, down);
            active &= _model.ActiveBits[c];
        }

        if (apart)
        {
            active &= ~1;
            if (!CutFixed(t, live, sides, heatUp, heatDown, least, most, ref cut))
            {
                return false;
            }
        }

        // A sum and its parts round differently: what lies on the edge stays.
        roomUp = sides == Sides.Above ? double.PositiveInfinity : roomUp + (1e-13 * Math.Abs(from));
        roomDown = sides == Sides.Below ? double.PositiveInfinity : roomDown + (1e-13 * Math.Abs(to));
        for (; active != 0; active &= active - 1)
        {
            var k = System.Numerics.BitOperations.TrailingZeroCount(active);
            if (k >= least.Length)
            {
                break;
            }

            var (up, down) = k == 0 ? (_fixedUp, _fixedDown) : (_switchedUp, _switchedDown);
            var (top, bottom) = (_up.Of(k), _down.Of(k));
            if (heatUp != 0)
            {
                top += _up.HeatOf(k) * heatUp;
                bottom += _down.HeatOf(k) * heatDown;
            }

            if (
                least[k] != most[k]
                && !(Narrow(t, k, up, down, top - roomUp, bottom + roomDown, heatUp, heatDown, least, most, ref cut))
            )
            {
                return false;
            }
        }

        return true;
    }

    private bool Narrow(
        int t,
        int k,
        in ChainAxis up,
        in ChainAxis down,
        double from,
        double to,
        double heatUp,
        double heatDown,
        Span<int> least,
        Span<int> most,
        ref bool cut
    )
    {
        if (up.At(least[k], heatUp) < from)
        {
            var low = up.FirstFrom(least[k] + 1, most[k], from, heatUp);
            if (low > most[k])
            {
                Lines?.Add(new(CaseStep.Closed, 0, 0, ClosedBy.Target, t));
                return false;
            }

            least[k] = low;
            Lines?.Add(new(CaseStep.CutBelow, k, low - 1, ClosedBy.Target, t));
            cut = true;
        }

        if (down.At(most[k], heatDown) > to)
        {
            var high = down.LastTo(least[k], most[k] - 1, to, heatDown);
            if (high < least[k])
            {
                Lines?.Add(new(CaseStep.Closed, 0, 0, ClosedBy.Target, t));
                return false;
            }

            most[k] = high;
            Lines?.Add(new(CaseStep.CutAbove, k, high + 1, ClosedBy.Target, t));
            cut = true;
        }

        return true;
    }
}
