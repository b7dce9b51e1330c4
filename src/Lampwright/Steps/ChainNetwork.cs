namespace Lampwright.Steps;

/// <summary>The sense network: total resistance and current at every combination of its switches, resistors warm.</summary>
/// <remarks>
/// Built once from a <see cref="ChainSpec"/>; <see cref="Operate"/> is the closed form that the draws reuse, without allocation.
/// Series chain: R = R0 + Σ(Rk open; Rk·rc/(Rk + rc) closed) + lead. Parallel branches: R = Rf + 1/(1/R0 + 1/(lead + 1/Σ 1/(Rk + rc))).
/// Selector: R = R0 + Rk + rc + lead. With C the chain, a lead sensed (a) and one not sensed (b), and a resistor B across the leads on the
/// board: R = R0 + (C + a)·B/(B + C + a + b), the sense voltage over the driver's current.
/// <b>Order of the combinations</b>: all closed first, the switches string counting down as a binary number: <c>1111</c>, <c>1110</c>, …
/// <c>0000</c>; a selector has one combination for each position in the order of the chain.
/// <b>Validity</b>: direct current; the floor Rf warms like the fixed resistor; the resistor across the leads stays cold.
/// <b>Source</b>: Ohm and Kirchhoff (derived).
/// <b>Accuracy</b>: two passes for the warm resistors leave less than 1e-5 of the current.
/// <b>Checked by</b>: derived rows, invariant.
/// </remarks>
public sealed class ChainNetwork
{
    private readonly double[] _ohms;
    private readonly double[] _tempco;
    private readonly double[] _riseK;
    private readonly double[] _contact;
    private readonly double _lead20;
    private readonly double _sensed;
    private readonly double _bleed;
    private readonly double _floor;

    /// <summary>The network of a chain.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A resistance is not above zero, or there are too many switches.</exception>
    public ChainNetwork(ChainSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.InRange(spec.Switched.Count, 0, ChainSpec.MostSwitches, "switches");
        Spec = spec;
        ResistorPart[] parts = [spec.Fixed, .. spec.Switched];
        _ohms = [.. parts.Select(p => Guard.Positive(p.Ohm, "resistance"))];
        _tempco = [.. parts.Select(p => Guard.Finite(p.TempcoPerK, "tempco"))];
        _riseK = [.. parts.Select(p => Guard.Finite(p.RisePerWattK, "rise per watt"))];
        _contact = [Guard.InRange(spec.ContactOhm, 0, 1e6, "contact")];
        _lead20 = spec.Lead is { } lead
            ? Guard.InRange(lead.LengthM, 0, 1e6, "lead length")
                * lead.Conductors
                * Tables.CopperWire.OhmPerMetre(lead.AreaMm2, lead.Tinned)
            : 0;
        _sensed = spec.HasTapLead ? 0.5 : 1;
        var parallel = spec.Arrangement == Arrangement.ParallelBranches;
        _bleed = !parallel && spec.BleedOhm is { } bleed ? Guard.Positive(bleed) : double.PositiveInfinity;
        _floor = parallel && spec.FloorOhm is { } floor ? Guard.InRange(floor, 0, 1e9) : 0;
    }

    /// <summary>What it was built from.</summary>
    public ChainSpec Spec { get; }

    /// <summary>How many switches, or positions of a selector.</summary>
    public int SwitchCount => _ohms.Length - 1;

    /// <summary>How many combinations: 2 to the power of the switches, or the positions of a selector.</summary>
    public int CombinationCount =>
        Spec.Arrangement == Arrangement.Selector ? Math.Max(1, SwitchCount) : 1 << SwitchCount;

    /// <summary>The switches of a combination in the order of the chain, 1 = closed.</summary>
    /// <param name="index">Index of the combination.</param>
    public string Switches(int index) =>
        string.Create(
            SwitchCount,
            (this, index),
            (s, a) =>
            {
                for (var k = 0; k < s.Length; k++)
                {
                    s[k] = a.Item1.Closed(a.index, k) ? '1' : '0';
                }
            }
        );

    /// <summary>Whether a switch is closed in a combination.</summary>
    /// <param name="index">Index of the combination.</param>
    /// <param name="k">Index of the switch in the order of the chain.</param>
    public bool Closed(int index, int k) =>
        Spec.Arrangement == Arrangement.Selector ? index == k : ((index >> (SwitchCount - 1 - k)) & 1) == 0;

    /// <summary>Resistance of all leads the current passes, there and back, in ohm; <see cref="SensedLeadShare"/> of it lies in the sense loop.</summary>
    /// <param name="temperatureK">Temperature of the copper in kelvin.</param>
    public double LeadOhm(double temperatureK) => _lead20 * Tables.CopperWire.TemperatureFactor(temperatureK);

    /// <summary>Share of the leads that lies in the sense loop: all of it, or half where the sense input has a lead of its own.</summary>
    public double SensedLeadShare => _sensed;

    /// <summary>Writes the current of every combination, resistors warm, in amperes. No allocation; for the draws.</summary>
    /// <param name="draw">What this draw tells.</param>
    /// <param name="currentsA">At least <see cref="CombinationCount"/> places.</param>
    public void Currents(in ChainDraw draw, Span<double> currentsA) => Operate(draw, currentsA, [], []);

    /// <summary>Writes current, resistance and power at every combination, resistors warm. No allocation; for the draws.</summary>
    /// <param name="draw">What this draw tells.</param>
    /// <param name="currentsA">At least <see cref="CombinationCount"/> places, in amperes.</param>
    /// <param name="totalsOhm">As many places for the total resistance in ohm, or empty.</param>
    /// <param name="wattsW">
    /// <see cref="CombinationCount"/> times (<see cref="SwitchCount"/> + 1) places for the power of each resistor, the fixed one first,
    /// combination after combination, in watts; or empty.
    /// </param>
    public void Operate(in ChainDraw draw, Span<double> currentsA, Span<double> totalsOhm, Span<double> wattsW)
    {
        var parts = _ohms.Length;
        Span<double> warm = stackalloc double[parts];
        Span<double> watts = stackalloc double[parts];
        for (var i = 0; i < CombinationCount; i++)
        {
            var ohm = Solve(i, draw, warm, watts, out _);
            currentsA[i] = draw.Driver.CurrentA(ohm);
            if (!totalsOhm.IsEmpty)
            {
                totalsOhm[i] = ohm;
            }

            if (!wattsW.IsEmpty)
            {
                watts.CopyTo(wattsW.Slice(i * parts, parts));
            }
        }
    }

    /// <summary>Total resistance of one combination with its resistors warm; writes their resistance and power.</summary>
    /// <param name="index">Index of the combination.</param>
    /// <param name="draw">What this draw tells.</param>
    /// <param name="warmOhms">Resistance of each resistor, the fixed one first, in ohm.</param>
    /// <param name="watts">Power of each resistor in watts.</param>
    /// <param name="leadOhm">Resistance of the leads in ohm.</param>
    /// <param name="passes">How many passes; each takes what is left of the warming to a hundredth.</param>
    /// <param name="resume">True when <paramref name="watts"/> holds a solution that was nearly this one.</param>
    internal double Solve(
        int index,
        in ChainDraw draw,
        Span<double> warmOhms,
        Span<double> watts,
        out double leadOhm,
        int passes = 3,
        bool resume = false
    )
    {
        leadOhm = LeadOhm(draw.AirK) * draw.LeadFactor;
        var contacts = draw.ContactOhms.IsEmpty ? _contact : draw.ContactOhms;
        if (!resume)
        {
            watts.Clear();
        }

        var total = 0.0;
        for (var pass = 0; pass < passes; pass++)
        {
            for (var k = 0; k < _ohms.Length; k++)
            {
                var factor = draw.OhmFactors.IsEmpty ? 1 : draw.OhmFactors[k];
                var temperature = draw.AirK + (watts[k] * _riseK[k] * draw.RiseFactor);
                var change = _tempco[k] * draw.TempcoFactor * (temperature - ResistorPart.ReferenceK);

                // The bound keeps absurd inputs from turning a resistance negative; real parts stay within ±3 %.
                warmOhms[k] = _ohms[k] * factor * Math.Clamp(1 + change, 0.5, 2);
            }

            total = TotalOhm(index, warmOhms, contacts, leadOhm);
            Powers(index, total, draw.Driver.CurrentA(total), warmOhms, contacts, leadOhm, watts);
        }

        return total;
    }

    /// <summary>Total resistance of one combination in ohm, for given resistances.</summary>
    /// <param name="index">Index of the combination.</param>
    /// <param name="ohms">Resistance of each resistor, the fixed one first, in ohm.</param>
    /// <param name="contacts">Resistance of each closed contact, or one number for all, in ohm.</param>
    /// <param name="leadOhm">Resistance of the leads in ohm.</param>
    public double TotalOhm(int index, ReadOnlySpan<double> ohms, ReadOnlySpan<double> contacts, double leadOhm)
    {
        if (Spec.Arrangement == Arrangement.ParallelBranches)
        {
            var branches = BranchSiemens(index, ohms, contacts);
            var floor = _floor * ohms[0] / _ohms[0];
            return floor + (branches > 0 ? 1 / ((1 / ohms[0]) + (1 / (leadOhm + (1 / branches)))) : ohms[0]);
        }

        var chain = ChainOhm(index, ohms, contacts);
        var sensed = chain + (leadOhm * _sensed);
        return double.IsInfinity(_bleed) ? ohms[0] + sensed : ohms[0] + (sensed * _bleed / (_bleed + chain + leadOhm));
    }

    /// <summary>Resistance that a meter with the plug out shows between the driver's pads LED − and G, in ohm: all leads are in it.</summary>
    /// <param name="index">Index of the combination.</param>
    /// <param name="ohms">Resistance of each resistor, the fixed one first, in ohm.</param>
    /// <param name="contacts">Resistance of each closed contact, or one number for all, in ohm.</param>
    /// <param name="leadOhm">Resistance of all leads in ohm.</param>
    public double PathOhm(int index, ReadOnlySpan<double> ohms, ReadOnlySpan<double> contacts, double leadOhm)
    {
        if (Spec.Arrangement == Arrangement.ParallelBranches)
        {
            return TotalOhm(index, ohms, contacts, leadOhm);
        }

        var path = ChainOhm(index, ohms, contacts) + leadOhm;
        return ohms[0] + (double.IsInfinity(_bleed) ? path : ByPassed(path, _bleed));
    }

    /// <summary>Resistance between the two ends of the chain on the switch plate, series chain and selector, in ohm.</summary>
    internal double ChainOhm(int index, ReadOnlySpan<double> ohms, ReadOnlySpan<double> contacts)
    {
        if (Spec.Arrangement == Arrangement.Selector)
        {
            return SwitchCount == 0 ? 0 : ohms[index + 1] + Contact(contacts, index);
        }

        var sum = 0.0;
        for (var k = 0; k < SwitchCount; k++)
        {
            sum += Closed(index, k) ? ByPassed(ohms[k + 1], Contact(contacts, k)) : ohms[k + 1];
        }

        return sum;
    }

    private double BranchSiemens(int index, ReadOnlySpan<double> ohms, ReadOnlySpan<double> contacts)
    {
        var sum = 0.0;
        for (var k = 0; k < SwitchCount; k++)
        {
            sum += Closed(index, k) ? 1 / (ohms[k + 1] + Contact(contacts, k)) : 0;
        }

        return sum;
    }

    /// <summary>A resistor with a closed contact across it, in ohm.</summary>
    /// <param name="ohm">Resistance in ohm.</param>
    /// <param name="contactOhm">Contact resistance in ohm; ≥ 0.</param>
    public static double ByPassed(double ohm, double contactOhm) => ohm * contactOhm / (ohm + contactOhm);

    private void Powers(
        int index,
        double total,
        double amps,
        ReadOnlySpan<double> ohms,
        ReadOnlySpan<double> contacts,
        double leadOhm,
        Span<double> watts
    )
    {
        if (Spec.Arrangement == Arrangement.ParallelBranches)
        {
            var across = amps * (total - (_floor * ohms[0] / _ohms[0]));
            watts[0] = across * across / ohms[0];
            var branches = BranchSiemens(index, ohms, contacts);

            // The leads take their share before the branches see the voltage.
            var outside = amps - (across / ohms[0]);
            var node = branches > 0 ? outside / branches : 0;
            for (var k = 0; k < SwitchCount; k++)
            {
                var branch = Closed(index, k) ? node / (ohms[k + 1] + Contact(contacts, k)) : 0;
                watts[k + 1] = branch * branch * ohms[k + 1];
            }

            return;
        }

        watts[0] = amps * amps * ohms[0];
        if (!double.IsInfinity(_bleed))
        {
            amps *= _bleed / (_bleed + ChainOhm(index, ohms, contacts) + leadOhm);
        }

        for (var k = 0; k < SwitchCount; k++)
        {
            var closed = Closed(index, k);
            if (Spec.Arrangement == Arrangement.Selector)
            {
                watts[k + 1] = closed ? amps * amps * ohms[k + 1] : 0;
                continue;
            }

            // A closed contact leaves the resistor its share of the current.
            var own = amps;
            if (closed)
            {
                var contact = Contact(contacts, k);
                own *= contact / (ohms[k + 1] + contact);
            }

            watts[k + 1] = own * own * ohms[k + 1];
        }
    }

    private static double Contact(ReadOnlySpan<double> contacts, int k) =>
        contacts.Length == 1 ? contacts[0] : contacts[k];
}
