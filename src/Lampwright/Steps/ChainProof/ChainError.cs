namespace Lampwright.Steps.ChainProof;

/// <summary>The error of one chain, and the least error that a box can hold.</summary>
internal sealed class ChainError
{
    private readonly ChainModel _model;
    private readonly ChainSums _low;
    private readonly ChainSums _high;

    public ChainError(ChainModel model)
    {
        _model = model;
        (_low, _high) = (new(model), new(model));
    }

    /// <summary>Worst error of one chain; infinite as soon as it comes to the cut-off.</summary>
    public double Of(ReadOnlySpan<int> at, double cutOff = double.PositiveInfinity)
    {
        _low.Take(at, _model.AimFixed.Low, _model.Switched.Low, _model.LowBoard);
        _high.Take(at, _model.AimFixed.High, _model.Switched.High, _model.HighBoard);
        return Worst(_low, _high, cutOff);
    }

    /// <summary>An error that no chain of a box betters.</summary>
    public double Least(ReadOnlySpan<int> least, ReadOnlySpan<int> most)
    {
        _low.Take(most, _model.AimFixed.Up, _model.Switched.Up, _model.LowBoard);
        _high.Take(least, _model.AimFixed.Down, _model.Switched.Down, _model.HighBoard);
        return Worst(_low, _high, double.PositiveInfinity);
    }

    /// <summary>Each wanted current's best combination with its least and greatest current, for one chain.</summary>
    public (int Combination, double LowA, double HighA)[] Steps(ReadOnlySpan<int> at)
    {
        _low.Take(at, _model.AimFixed.Low, _model.Switched.Low, _model.LowBoard);
        _high.Take(at, _model.AimFixed.High, _model.Switched.High, _model.HighBoard);
        var steps = new (int, double, double)[_model.Wanted.Length];
        for (var t = 0; t < steps.Length; t++)
        {
            var error = Nearest(_low, _high, t, out var c);
            var (high, low) = (Current(_low, c, _model.AimHighV), Current(_high, c, _model.AimLowV));
            steps[t] = double.IsFinite(error) ? (c, low, high) : (0, low, high);
        }

        return steps;
    }

    private double Worst(ChainSums low, ChainSums high, double cutOff)
    {
        var worst = -1.0;
        for (var t = 0; t < _model.Wanted.Length; t++)
        {
            var error = Nearest(low, high, t, out _);
            if (error >= cutOff)
            {
                return double.PositiveInfinity;
            }

            worst = Math.Max(worst, error);
        }

        return worst;
    }

    private double Nearest(ChainSums low, ChainSums high, int t, out int combination)
    {
        var wanted = _model.Wanted[t];
        var (from, to) = _model.Assigned(t) is >= 0 and var only ? (only, only + 1) : (0, _model.Combinations);
        var best = double.PositiveInfinity;
        combination = from;
        for (var c = from; c < to; c++)
        {
            var above = (Current(low, c, _model.AimHighV) / wanted) - 1;
            var below = 1 - (Current(high, c, _model.AimLowV) / wanted);
            var error = Math.Max(0, Math.Max(above, below));
            if (error < best)
            {
                (best, combination) = (error, c);
            }
        }

        return best;
    }

    // R = cold + heat·I² with I = V/R − Ioff: a fixed point of slope 2·heat·V²/R³, a few hundredths for real parts.
    private double Current(ChainSums sums, int c, double volts)
    {
        var cold = sums.Ohm[c];
        var amps = Math.Max(0, (volts / cold) - _model.OffsetA);
        if (!_model.HasHeat)
        {
            return amps;
        }

        for (var pass = 0; pass < 60; pass++)
        {
            var next = Math.Max(0, (volts / Math.Max(sums.Warm(c, amps * amps), cold / 2)) - _model.OffsetA);
            if (Math.Abs(next - amps) <= 1e-15 * amps)
            {
                return next;
            }

            amps = next;
        }

        return amps;
    }
}
