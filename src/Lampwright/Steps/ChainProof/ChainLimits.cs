namespace Lampwright.Steps.ChainProof;

/// <summary>Currents and powers that no chain may exceed, for single chains and for boxes.</summary>
internal sealed class ChainLimits
{
    // Rounding must not turn a chain away that stands on a limit.
    private static readonly double Slack = 1e-9;

    private readonly ChainModel _model;
    private readonly DriverModel _driver;
    private readonly double _contact;
    private readonly ChainBoard _board;
    private readonly double _leastTotal;
    private readonly double _mostTotal;
    private readonly ChainCorner _corner;

    public ChainLimits(ChainModel model)
    {
        _model = model;
        _corner = new(model);
        _driver = model.Spec.Driver;
        (_contact, _board) = (model.Spec.ContactOhm, model.Board);
        _leastTotal = _driver.ThresholdV / ((model.MostA * (1 + Slack)) + _driver.OffsetA);
        _mostTotal =
            model.Spec.LeastA is { } least && (least * (1 - Slack)) + _driver.OffsetA > 0
                ? _driver.ThresholdV / ((least * (1 - Slack)) + _driver.OffsetA)
                : double.PositiveInfinity;
    }

    /// <summary>The limit that every chain of the box breaks, or null.</summary>
    /// <param name="least">Least index of each position.</param>
    /// <param name="most">Greatest index of each position.</param>
    public ClosedBy? Broken(ReadOnlySpan<int> least, ReadOnlySpan<int> most)
    {
        if (Total(most, brightest: true) < _leastTotal)
        {
            return ClosedBy.MostCurrent;
        }

        if (double.IsFinite(_mostTotal) && Total(least, brightest: false) > _mostTotal)
        {
            return ClosedBy.LeastCurrent;
        }

        if (_corner.Broken(least, most) is { } corner)
        {
            return corner;
        }

        if (_model.Spec.LimitsAtCorner)
        {
            return null;
        }

        var others = Others(most);
        for (var k = 0; k < least.Length; k++)
        {
            var amps = Through(least, most, k, others);
            if (amps * amps > _model.Values(k).BearsAmong(least[k], most[k]) * (1 + Slack))
            {
                return ClosedBy.Power;
            }
        }

        return null;
    }

    /// <summary>The first fixed value that can keep the greatest current beside the greatest values of the others.</summary>
    public int LeastFixed(ReadOnlySpan<int> most)
    {
        // Where the heat of the fixed values differs, the total does not rise by their ohms alone.
        if (_model.Parallel || _model.Selector || _model.Fixed.Heat[most[0]] != 0)
        {
            return 0;
        }

        var ohms = _model.Fixed.Ohm;
        var needed = (_leastTotal - (Total(most, brightest: true) - ohms[most[0]])) * (1 - 1e-13);
        var (a, z) = (0, most[0]);
        while (a < z)
        {
            var m = (a + z) >> 1;
            (a, z) = ohms[m] < needed ? (m + 1, z) : (a, m);
        }

        return a;
    }

    /// <summary>Power that a position of one chain carries in its worst combination, watts.</summary>
    /// <remarks>Open with all others closed in series, chosen by the selector, alone as a branch: the current is greatest then.</remarks>
    public double Power(ReadOnlySpan<int> at, int k)
    {
        var amps = Through(at, at, k, Others(at));
        return amps * amps * _model.Values(k).Part[at[k]];
    }

    /// <summary>Square of the current that a position of one chain must bear: in the worst corner where limits hold there, A².</summary>
    public double Square(ReadOnlySpan<int> at, int k)
    {
        if (_model.Spec.LimitsAtCorner)
        {
            return _corner.SquareThrough(at, k);
        }

        var amps = Through(at, at, k, Others(at));
        return amps * amps;
    }

    // For a box: a current that no chain of it stays under.
    private double Through(ReadOnlySpan<int> least, ReadOnlySpan<int> most, int k, double others)
    {
        var values = _model.Values(k);
        var (low, high) = (values.Part[least[k]], values.Part[most[k]]);
        if (_model.Parallel)
        {
            return Branch(least, k, low, high);
        }

        var chain =
            _model.Selector ? others + (_model.Positions == 1 ? 0 : (k > 0 ? high : Least(most)) + _contact)
            : k == 0 ? others
            : others - values.ByPassed[most[k]] + high;
        var amps = _driver.CurrentA(_model.Fixed.Part[most[0]] + _board.Seen(chain));
        return amps * (k == 0 ? 1 : _board.Share(chain));
    }

    // Alone on the leads it sees what the floor leaves of the threshold.
    private double Branch(ReadOnlySpan<int> least, int k, double low, double high)
    {
        var first = _model.Fixed.Part[least[0]];
        if (k == 0)
        {
            return _driver.ThresholdV / (high + _board.FloorOhm);
        }

        var beside = ChainNetwork.ByPassed(first, low + _contact + _board.SensedOhm);
        var volts = _driver.ThresholdV * beside / (beside + _board.FloorOhm);
        return volts / (high + _contact + _board.SensedOhm);
    }

    // The chain with every switch closed and its sensed leads, at stated values; for a selector the leads alone.
    private double Others(ReadOnlySpan<int> at)
    {
        var total = _board.SensedOhm;
        for (var j = 1; j < at.Length && !_model.Selector && !_model.Parallel; j++)
        {
            total += _model.Switched.ByPassed[at[j]];
        }

        return total;
    }

    // The selector's brightest position is that of the least resistance.
    private double Least(ReadOnlySpan<int> at)
    {
        var least = double.PositiveInfinity;
        for (var j = 1; j < at.Length; j++)
        {
            least = Math.Min(least, _model.Switched.Part[at[j]]);
        }

        return least;
    }

    private double Total(ReadOnlySpan<int> at, bool brightest)
    {
        var r0 = _model.Fixed.Ohm[at[0]];
        if (_model.Parallel)
        {
            var siemens = 0.0;
            for (var k = 1; brightest && k < at.Length; k++)
            {
                siemens += 1 / (_model.Switched.Ohm[at[k]] + _contact);
            }

            return _board.FloorOhm + (siemens > 0 ? 1 / ((1 / r0) + (1 / (_board.SensedOhm + (1 / siemens)))) : r0);
        }

        var edge = brightest ? _model.MostA : _model.Spec.LeastA ?? 0;
        var (chain, heat) = (_board.SensedOhm, 0.0);
        if (_model.Selector)
        {
            if (at.Length > 1)
            {
                // Nominal resistances ascend with the index, so the extreme position has the extreme index.
                var index = at[1];
                foreach (var i in at[1..])
                {
                    index = brightest ? Math.Min(index, i) : Math.Max(index, i);
                }

                chain += _model.Switched.Ohm[index] + _contact;
                heat += _model.Switched.Heat[index];
            }
        }
        else
        {
            for (var k = 1; k < at.Length; k++)
            {
                chain += brightest ? _model.Switched.ByPassedWarm[at[k]] : _model.Switched.Ohm[at[k]];
                heat += brightest ? 0 : _model.Switched.Heat[at[k]];
            }
        }

        if (edge < 1e9)
        {
            chain += heat * edge * edge;
            r0 += _model.Fixed.Heat[at[0]] * edge * edge;
        }

        return r0 + _board.Seen(chain);
    }
}
