namespace Lampwright.Steps.ChainProof;

/// <summary>Limits with everything at the end that hurts most, for single chains and for boxes.</summary>
/// <remarks>
/// Greatest currents flow with the threshold at its greatest, every resistance at its least and contacts without any; the least one with all the other way
/// round and contacts worn. A box breaks a limit only if all of its chains do: the greatest of the low ends give less current than any
/// chain of it, and heat that raises a resistance is counted with more current than flows, heat that lowers it is not counted.
/// </remarks>
internal sealed class ChainCorner
{
    // Rounding must not turn a chain away that stands on a limit.
    private static readonly double Slack = 1e-9;
    private static readonly int MostPasses = 60;

    private readonly ChainModel _model;
    private readonly double? _most;
    private readonly double? _least;
    private readonly bool _power;
    private readonly double _worn;

    public ChainCorner(ChainModel model)
    {
        var spec = model.Spec;
        _model = model;
        _power = spec.LimitsAtCorner;

        // One contact of a series chain or a selector carries at most what the brightest position gives.
        _most =
            _power && !model.Parallel && spec.SwitchA is { } rated
                ? Math.Min(rated, spec.CornerMostA ?? double.PositiveInfinity)
                : spec.CornerMostA;
        _least = spec.CornerLeastA;
        var contact = ChainValues.ContactMost(spec);
        _worn = spec.Objective == ChainObjective.Nominal ? 0 : Math.Max(0, (spec.ContactWornOhm ?? contact) - contact);
    }

    /// <summary>The limit that every chain of the box breaks, or null.</summary>
    /// <param name="least">Least index of each position.</param>
    /// <param name="most">Greatest index of each position.</param>
    public ClosedBy? Broken(ReadOnlySpan<int> least, ReadOnlySpan<int> most)
    {
        if (_most is null && _least is null && !_power)
        {
            return null;
        }

        var one = least.SequenceEqual(most);
        return _most is { } high && Brightest(most, one, high) > high * (1 + Slack) ? ClosedBy.CornerCurrent
            : _least is { } low && Dimmest(least, one, low) < low * (1 - Slack) ? ClosedBy.CornerLeast
            : _power && Overloaded(least, most, one) ? ClosedBy.CornerPower
            : null;
    }

    /// <summary>Square of the greatest current that a position of one chain carries, A².</summary>
    public double SquareThrough(ReadOnlySpan<int> at, int k)
    {
        var amps = Through(at, at, k, true, Closed(at, _model.Switched.Bare));
        return amps * amps;
    }

    private bool Overloaded(ReadOnlySpan<int> least, ReadOnlySpan<int> most, bool one)
    {
        var closed = Closed(most, one ? _model.Switched.Bare : _model.Switched.BareUp);
        for (var k = 0; k < most.Length; k++)
        {
            var amps = Through(least, most, k, one, closed);
            if (amps * amps > _model.Values(k).BearsAmong(least[k], most[k]) * (1 + Slack))
            {
                return true;
            }
        }

        return false;
    }

    // With all switches closed, the chain and its sensed leads; for a selector the leads alone.
    private double Closed(ReadOnlySpan<int> at, ChainValues.Ends ends)
    {
        var chain = _model.LowLead;
        for (var j = 1; j < at.Length && !_model.Selector && !_model.Parallel; j++)
        {
            chain += ends.Closed[at[j]];
        }

        return chain;
    }

    // Open with all others closed in series, chosen by the selector, alone as a branch: the current is greatest then.
    // Where the threshold was found with the fixed part, far behind that part more flows with both at their greatest than with the part at its least.
    private double Through(ReadOnlySpan<int> least, ReadOnlySpan<int> most, int k, bool one, double closed)
    {
        var amps = Through(least, most, k, one, closed, _model.Fixed, _model.HighV);
        return _model.AimFixed == _model.Fixed
            ? amps
            : Math.Max(amps, Through(least, most, k, one, closed, _model.AimFixed, _model.AimHighV));
    }

    private double Through(
        ReadOnlySpan<int> least,
        ReadOnlySpan<int> most,
        int k,
        bool one,
        double closed,
        ChainValues fixedValues,
        double volts
    )
    {
        var (ends, first) = one ? (_model.Switched.Bare, fixedValues.Low) : (_model.Switched.BareUp, fixedValues.Up);
        if (_model.Parallel)
        {
            return Branch(least, most, k, ends, first, volts);
        }

        var (r0, h0) = (first.Open[most[0]], first.Heat[most[0]]);
        if (!_model.Selector)
        {
            var i = k == 0 ? 0 : most[k];
            var (chain, heat) = k == 0 ? (closed, 0) : (closed - ends.Closed[i] + ends.Open[i], ends.Heat[i]);
            return Amps(volts, r0, h0, chain, heat, k > 0, one);
        }

        var amps = most.Length == 1 ? Amps(volts, r0, h0, closed, 0, false, one) : 0;
        for (var j = 1; j < most.Length; j++)
        {
            if (k == 0 || j == k)
            {
                var i = most[j];
                amps = Math.Max(amps, Amps(volts, r0, h0, closed + ends.Open[i], ends.Heat[i], k > 0, one));
            }
        }

        return amps;
    }

    // I = V/(F + X·(1 + F/R0)) with X the branch, its contact and the leads: a greater R0 leaves the branch more.
    private double Branch(
        ReadOnlySpan<int> least,
        ReadOnlySpan<int> most,
        int k,
        ChainValues.Ends ends,
        ChainValues.Ends first,
        double volts
    )
    {
        var floor = _model.LowBoard.FloorOhm;
        if (k == 0)
        {
            return volts / (floor + first.Open[most[0]]);
        }

        var branch = _model.LowLead - (1 / ends.Closed[most[k]]);
        var beside = least[0] == most[0] ? _model.Fixed.High.Open[least[0]] : _model.Fixed.Down.Open[least[0]];
        return volts / (floor + (branch * (1 + (floor / beside))));
    }

    private double Amps(double volts, double r0, double h0, double chain, double heat, bool shared, bool one)
    {
        var board = _model.LowBoard;
        double At(double square, double fixedHeat, double chainHeat) =>
            Math.Max(
                0,
                (volts / (r0 + (fixedHeat * square) + board.Seen(chain + (chainHeat * square)))) - _model.OffsetA
            );
        var amps = At(0, 0, 0);
        if (h0 == 0 && heat == 0)
        {
            return amps * (shared ? Share(chain) : 1);
        }

        if (!one)
        {
            var (up, upChain) = (Math.Max(0, h0), Math.Max(0, heat));
            var square = amps * amps;
            return At(square, up, upChain) * (shared ? Share(chain + (upChain * square)) : 1);
        }

        for (var pass = 0; pass < MostPasses; pass++)
        {
            var next = At(amps * amps, h0, heat);
            if (Math.Abs(next - amps) <= 1e-14 * amps)
            {
                break;
            }

            amps = next;
        }

        return amps * (shared ? Share(chain + (heat * amps * amps)) : 1);
    }

    // Beside a resistor across the leads the chain carries most with the unsensed lead at its least.
    private double Share(double chain) => _model.HighBoard.Share(chain);

    // Heat at the low end lowers the resistance where the coefficient may have either sign.
    private double Brightest(ReadOnlySpan<int> at, bool one, double edge)
    {
        var (ends, first) = one ? (_model.Switched.Bare, _model.Fixed.Low) : (_model.Switched.BareUp, _model.Fixed.Up);
        var r0 = first.Open[at[0]] + (first.Heat[at[0]] * edge * edge);
        var chain = Closed(at, ends);
        if (_model.Parallel)
        {
            var siemens = 0.0;
            for (var k = 1; k < at.Length; k++)
            {
                siemens -= ends.Closed[at[k]];
            }

            var beside = siemens > 0 ? 1 / ((1 / r0) + (1 / (_model.LowLead + (1 / siemens)))) : r0;
            return (_model.HighV / (_model.LowBoard.FloorOhm + beside)) - _model.OffsetA;
        }

        if (_model.Selector && at.Length > 1)
        {
            var chosen = double.PositiveInfinity;
            foreach (var i in at[1..])
            {
                chosen = Math.Min(chosen, ends.Open[i] + (ends.Heat[i] * edge * edge));
            }

            chain += chosen;
        }

        return (_model.HighV / (r0 + _model.LowBoard.Seen(chain))) - _model.OffsetA;
    }

    // All switches open; no branch; the selector at its greatest resistance, its contact worn.
    private double Dimmest(ReadOnlySpan<int> at, bool one, double edge)
    {
        var (ends, first) = one ? (_model.Switched.High, _model.Fixed.High) : (_model.Switched.Down, _model.Fixed.Down);
        var r0 = first.Open[at[0]] + (first.Heat[at[0]] * edge * edge);
        if (_model.Parallel)
        {
            return (_model.LowV / (_model.HighBoard.FloorOhm + r0)) - _model.OffsetA;
        }

        var (sum, greatest) = (0.0, 0.0);
        for (var k = 1; k < at.Length; k++)
        {
            var ohm = ends.Open[at[k]] + (ends.Heat[at[k]] * edge * edge);
            (sum, greatest) = (sum + ohm, Math.Max(greatest, ohm));
        }

        var chain = _model.HighLead + (_model.Selector && at.Length > 1 ? greatest + _worn : sum);
        return (_model.LowV / (r0 + _model.HighBoard.Seen(chain))) - _model.OffsetA;
    }
}
