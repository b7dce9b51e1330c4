namespace Lampwright.Steps.ChainProof;

/// <summary>A good first chain: ladders between the brightest and the dimmest step, bettered place by place.</summary>
internal sealed class ChainStarts
{
    private static readonly int MostRounds = 40;

    private readonly ChainModel _model;
    private readonly ChainError _error;
    private readonly ChainPicks _picks;
    private readonly ChainLimits _limits;

    public ChainStarts(ChainModel model)
    {
        _model = model;
        _error = new(model);
        _limits = new(model);
        _picks = new(model, _limits);
    }

    /// <summary>The best chain found and its error; infinite where none keeps the limits.</summary>
    public (int[] At, double Error) Best()
    {
        var (best, error) = (new int[_model.Positions], double.PositiveInfinity);
        foreach (var at in Ladders())
        {
            var e = ErrorOf(at, double.PositiveInfinity);
            for (var round = 0; round < MostRounds && Bettered(at, ref e); round++) { }

            if (e < error)
            {
                (best, error) = (at, e);
            }
        }

        if (_model.Alike)
        {
            Array.Sort(best, 1, best.Length - 1);
        }

        return (best, error);
    }

    private double ErrorOf(int[] at, double cutOff)
    {
        if (_limits.Broken(at, at) is not null)
        {
            return double.PositiveInfinity;
        }

        var error = _error.Of(at, cutOff);
        return double.IsFinite(error) && _picks.Of(at) is not null ? error : double.PositiveInfinity;
    }

    private bool Bettered(int[] at, ref double error)
    {
        var before = error;
        for (var k = 0; k < at.Length; k++)
        {
            var count = _model.Values(k).Count;
            for (var step = 1; step < count; step *= 2)
            {
                Try(at, k, step, ref error);
                Try(at, k, -step, ref error);
            }
        }

        return error < before;
    }

    private void Try(int[] at, int k, int by, ref double error)
    {
        var was = at[k];
        at[k] = Math.Clamp(was + by, 0, _model.Values(k).Count - 1);
        var e = at[k] == was ? double.PositiveInfinity : ErrorOf(at, error);
        if (e < error)
        {
            error = e;
        }
        else
        {
            at[k] = was;
        }
    }

    // By halves, thirds and equal parts, and the differences of the wanted steps themselves.
    private IEnumerable<int[]> Ladders()
    {
        var driver = _model.Spec.Driver;
        double[] ohms = [.. _model.Wanted.Select(driver.SenseOhm)];
        var n = _model.Positions - 1;
        var span = Math.Max(ohms[^1] - ohms[0], ohms[0] * 0.01);
        if (_model.Selector)
        {
            var steps = Enumerable.Range(0, n).Select(k => ohms[Math.Min(k, ohms.Length - 1)]);
            yield return At(ohms[0] / 2, steps.Select(x => x - (ohms[0] / 2)));
            yield break;
        }

        foreach (var ratio in (double[])[2, 1.5, 1])
        {
            var parts = Enumerable.Range(0, n).Select(k => Math.Pow(ratio, k)).ToArray();
            var sum = Math.Max(parts.Sum(), 1e-12);
            yield return At(ohms[0], parts.Select(x => span * x / sum));
        }

        yield return At(
            ohms[0],
            Enumerable
                .Range(0, n)
                .Select(k => ohms[Math.Min(k + 1, ohms.Length - 1)] - ohms[Math.Min(k, ohms.Length - 1)])
        );
    }

    private int[] At(double fixedOhm, IEnumerable<double> chain)
    {
        // A branch takes the place of a series resistor of the same effect; the fixed one then gives the dimmest step.
        var top = _model.Spec.Driver.SenseOhm(_model.Wanted[^1]);
        var parallel = _model.Parallel;
        double[] ohms =
        [
            parallel
                ? top
                : Math.Max(
                    1e-9,
                    fixedOhm
                        - _model.Spec.LeadOhm
                        - (_model.Selector ? 0 : (_model.Positions - 1) * _model.Spec.ContactOhm * 0.8)
                ),
            .. chain.Select(x => parallel ? fixedOhm * top / Math.Max(x, 1e-12) : x),
        ];
        return [.. ohms.Select((x, k) => Nearest(_model.Values(k).Ohm, x))];
    }

    private static int Nearest(double[] values, double ohm)
    {
        var at = Array.BinarySearch(values, ohm);
        if (at >= 0)
        {
            return at;
        }

        at = ~at;
        return at == 0 ? 0
            : at == values.Length ? at - 1
            : ohm - values[at - 1] < values[at] - ohm ? at - 1
            : at;
    }
}
