namespace Lampwright.Steps;

/// <summary>Evaluates candidate chains for the search: currents of all combinations for single values and for whole boxes.</summary>
/// <remarks>Resistances are cold: self-heating moves a current by less than the parts' tolerance. Every current falls when any resistance rises.</remarks>
internal sealed class ChainCandidates
{
    private readonly ChainSearchSpec _spec;
    private readonly int _count;
    private readonly double[] _wanted;
    private readonly double[] _low;
    private readonly double[] _high;

    public ChainCandidates(ChainSearchSpec spec, StockPart[] stock, StockPart[] fixedStock)
    {
        _spec = spec;
        Stock = stock;
        FixedStock = fixedStock;
        _count = spec.Arrangement == Arrangement.Selector ? Math.Max(1, spec.Switches) : 1 << spec.Switches;
        _wanted = [.. spec.WantedA.Where(a => a is > 0 and < 1e9)];
        _low = new double[_count];
        _high = new double[_count];
    }

    public StockPart[] Stock { get; }

    public StockPart[] FixedStock { get; }

    public int Positions => _spec.Switches + 1;

    /// <summary>The part at an index of a position; position 0 is the fixed resistor.</summary>
    public StockPart Part(int position, int index) => position == 0 ? FixedStock[index] : Stock[index];

    public int CountAt(int position) => position == 0 ? FixedStock.Length : Stock.Length;

    /// <summary>Worst relative error of one chain; infinite when it breaks a limit or comes to the cut-off.</summary>
    public double Error(ReadOnlySpan<int> at, double cutOff = double.PositiveInfinity)
    {
        Currents(at, _low);
        return Highest(_low) > _spec.MostA * (1 + 1e-9) || Overloaded(at)
            ? double.PositiveInfinity
            : Worst(_low, _low, cutOff);
    }

    /// <summary>A worst error that no chain of the box can better; infinite when none keeps the limits or betters the cut-off.</summary>
    public double Bound(ReadOnlySpan<int> least, ReadOnlySpan<int> most, double cutOff)
    {
        Currents(least, _high);
        Currents(most, _low);
        return Highest(_low) > _spec.MostA * (1 + 1e-9) || Overloaded(least, most)
            ? double.PositiveInfinity
            : Worst(_low, _high, cutOff);
    }

    /// <summary>The combination nearest to each wanted current.</summary>
    public (int Index, double CurrentA)[] Nearest(ReadOnlySpan<int> at, IReadOnlyList<double> wanted)
    {
        Currents(at, _low);
        var nearest = new (int, double)[wanted.Count];
        for (var t = 0; t < wanted.Count; t++)
        {
            var best = 0;
            for (var i = 1; i < _count; i++)
            {
                if (Math.Abs(_low[i] - wanted[t]) < Math.Abs(_low[best] - wanted[t]))
                {
                    best = i;
                }
            }

            nearest[t] = (best, _low[best]);
        }

        return nearest;
    }

    // Gives up with infinity as soon as the cut-off is reached: the exact figure of a chain that loses is of no use.
    private double Worst(double[] low, double[] high, double cutOff)
    {
        var worst = 0.0;
        foreach (var wanted in _wanted)
        {
            var best = double.PositiveInfinity;
            for (var i = 0; i < low.Length && best > 0; i++)
            {
                var above = low[i] - wanted;
                var below = wanted - high[i];
                var off = above > below ? above : below;
                best = off < best ? off : best;
            }

            var error = best / wanted;
            if (error >= cutOff)
            {
                return double.PositiveInfinity;
            }

            worst = error > worst ? error : worst;
        }

        return worst;
    }

    // All closed comes first and is the brightest, except for a selector, whose positions have no order.
    private double Highest(double[] currents) =>
        _spec.Arrangement == Arrangement.Selector ? currents.Max() : currents[0];

    // Index i in the order of ChainNetwork: bit clear = closed, the first switch is the highest bit.
    private void Currents(ReadOnlySpan<int> at, double[] currents)
    {
        var n = _spec.Switches;
        var r0 = FixedStock[at[0]].Ohm;
        var (contact, lead) = (_spec.ContactOhm, _spec.LeadOhm);
        switch (_spec.Arrangement)
        {
            case Arrangement.Selector:
                for (var k = 0; k < currents.Length; k++)
                {
                    var chosen = n == 0 ? 0 : Stock[at[k + 1]].Ohm + contact;
                    currents[k] = _spec.Driver.CurrentA(r0 + chosen + lead);
                }

                return;
            case Arrangement.SeriesChain:
                currents[0] = r0 + lead;
                for (var k = 1; k <= n; k++)
                {
                    currents[0] += ChainNetwork.ByPassed(Stock[at[k]].Ohm, contact);
                }

                break;
            default:
                currents[0] = 0;
                for (var k = 1; k <= n; k++)
                {
                    currents[0] += 1 / (Stock[at[k]].Ohm + contact);
                }

                break;
        }

        // Each further combination differs from one before it by one switch.
        for (var bit = 0; bit < n; bit++)
        {
            var ohm = Stock[at[n - bit]].Ohm;
            var change =
                _spec.Arrangement == Arrangement.SeriesChain
                    ? ohm - ChainNetwork.ByPassed(ohm, contact)
                    : -1 / (ohm + contact);
            var half = 1 << bit;
            for (var i = 0; i < half; i++)
            {
                currents[half + i] = currents[i] + change;
            }
        }

        for (var i = 0; i < currents.Length; i++)
        {
            var total = currents[i];
            if (_spec.Arrangement == Arrangement.ParallelBranches)
            {
                // What is left of a sum of conductances after all were taken away again is rounding, not a branch.
                var siemens = i == currents.Length - 1 ? 0 : total;
                total = siemens > 1e-12 ? 1 / ((1 / r0) + (1 / (lead + (1 / siemens)))) : r0;
            }

            currents[i] = _spec.Driver.CurrentA(total);
        }
    }

    private bool Overloaded(ReadOnlySpan<int> at) => Overloaded(at, at);

    // Whether some part is over its rating in every chain of the box: least resistance at the least current it can carry.
    private bool Overloaded(ReadOnlySpan<int> least, ReadOnlySpan<int> most)
    {
        var n = _spec.Switches;
        var (contact, lead) = (_spec.ContactOhm, _spec.LeadOhm);
        var r0 = FixedStock[most[0]].Ohm;
        var closed = r0 + lead;
        if (_spec.Arrangement == Arrangement.SeriesChain)
        {
            for (var k = 1; k <= n; k++)
            {
                closed += ChainNetwork.ByPassed(Stock[most[k]].Ohm, contact);
            }
        }
        else if (_spec.Arrangement == Arrangement.Selector && n > 0)
        {
            closed += Stock[most[1]].Ohm + contact;
        }
        else if (_spec.Arrangement == Arrangement.ParallelBranches)
        {
            closed = r0;
        }

        var amps = _spec.Driver.CurrentA(closed);
        if (amps * amps * FixedStock[least[0]].Ohm > Allowed(FixedStock, least[0], most[0]))
        {
            return true;
        }

        for (var k = 1; k <= n; k++)
        {
            var ohm = Stock[most[k]].Ohm;
            double through;
            if (_spec.Arrangement == Arrangement.ParallelBranches)
            {
                // Alone on the leads it sees the whole threshold.
                through = _spec.Driver.ThresholdV / (ohm + contact + lead);
            }
            else
            {
                var total =
                    _spec.Arrangement == Arrangement.SeriesChain
                        ? closed - ChainNetwork.ByPassed(ohm, contact) + ohm
                        : r0 + lead + ohm + contact;
                through = _spec.Driver.CurrentA(total);
            }

            if (through * through * Stock[least[k]].Ohm > Allowed(Stock, least[k], most[k]))
            {
                return true;
            }
        }

        return false;
    }

    private static double Allowed(StockPart[] stock, int from, int to)
    {
        var most = 0.0;
        for (var i = from; i <= to; i++)
        {
            most = Math.Max(most, stock[i].AllowedW);
        }

        return most * (1 + 1e-12);
    }
}
