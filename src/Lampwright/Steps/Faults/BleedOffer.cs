namespace Lampwright.Steps.Faults;

/// <summary>The resistor across the leads on the board: what it does where there is one, and one that would do where there is none.</summary>
/// <remarks>
/// A loose lead leaves fixed resistor and bleed alone in the loop: R = R0 + B. For the dimmest position, R = R0 + C·B/(B + C) with the chain C,
/// to stay where it was the bleed must be far above C; for a loose lead to fall there, B must come down to C. Offered is about three times
/// the chain: a loose lead then gives a little less than the dimmest step, and the dimmest step moves up by a quarter of the chain's share; less where the driver would not hold so small a current.
/// <b>Source</b>: Ohm and Kirchhoff; the factor of three: common practice, no source. <b>Checked by</b>: invariant.
/// </remarks>
public static class BleedOffer
{
    private static readonly double OverChain = 3;

    /// <summary>The bleed of a chain, given or offered; null for parallel branches and chains without resistors.</summary>
    /// <param name="spec">Chain, driver, emitter.</param>
    /// <param name="brightestA">Greatest current of all positions as designed, in amperes.</param>
    /// <param name="dimmestA">Least current of all positions as designed, in amperes.</param>
    public static BleedRow? Of(FaultsSpec spec, double brightestA, double dimmestA)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var chain = spec.Chain;
        if (chain.Arrangement == Arrangement.ParallelBranches || chain.Switched.Count == 0)
        {
            return null;
        }

        var sum =
            chain.Arrangement == Arrangement.Selector ? chain.Switched.Max(r => r.Ohm) : chain.Switched.Sum(r => r.Ohm);
        var given = chain.BleedOhm is not null;

        // Not so great that a loose lead asks for less than the driver holds.
        var held = spec.Driver.LeastA is > 0 and var a
            ? spec.Law.SenseOhm(a) - chain.Fixed.Ohm
            : double.PositiveInfinity;
        var ohm = chain.BleedOhm ?? Round(OverChain * sum, held > sum / 3 ? held : double.PositiveInfinity);
        var with = spec with { Chain = chain with { BleedOhm = ohm } };
        var without = spec with { Chain = chain with { BleedOhm = null } };
        var (bright, dim) = Ends(with);
        var (bare, bareDim) = given ? Ends(without) : (brightestA, dimmestA);
        var circuit = new SenseCircuit(with.Chain, spec.AirK);
        var loose = 0.0;
        for (var lead = 2; lead < circuit.Leads.Count; lead++)
        {
            var closed = chain.Arrangement == Arrangement.Selector ? 1 : (1 << chain.Switched.Count) - 1;
            var point = FaultPoints.At(
                circuit,
                with,
                new(FaultKind.LeadBroken, lead),
                closed,
                chain.ContactOhm,
                [],
                []
            );
            var same =
                Math.Abs((point.EmitterMostA / Math.Max(bright, 1e-9)) - 1) < 0.1 && circuit.Leads[lead].Name == "tap";
            loose = same ? loose : Math.Max(loose, point.EmitterMostA);
        }

        var good = loose <= dim * 1.25 && loose >= dim * 0.1;
        var moved = FormattableString.Invariant(
            $"It moves the brightest position by {((bright / bare) - 1) * 100:+0.0;-0.0;0.0} % and the dimmest by {((dim / bareDim) - 1) * 100:+0;-0;0} %."
        );
        var words =
            double.IsInfinity(loose) ? "A loose lead still leaves nothing that holds the current. "
            : good
                ? FormattableString.Invariant(
                    $"A loose lead falls to {loose:0.00} A, beside {dim:0.00} A at the dimmest position. "
                )
            : FormattableString.Invariant(
                $"A loose lead gives {loose:0.00} A, not the dimmest position's {dim:0.00} A. "
            );
        return new(
            given,
            ohm,
            double.IsInfinity(loose) ? null : loose,
            dim,
            (bright / bare) - 1,
            (dim / bareDim) - 1,
            words + (loose < spec.Driver.LeastA ? Lacks(spec.Driver.LeastA.Value) : "") + moved
        );
    }

    private static (double Most, double Least) Ends(FaultsSpec spec)
    {
        var circuit = new SenseCircuit(spec.Chain, spec.AirK);
        var n = circuit.Contacts.Count;
        var (most, least) = (0.0, double.PositiveInfinity);
        for (var k = 0; k < (spec.Chain.Arrangement == Arrangement.Selector ? n : 2); k++)
        {
            var closed = spec.Chain.Arrangement == Arrangement.Selector ? 1 << k : k * ((1 << n) - 1);
            var amps = FaultPoints.At(circuit, spec, default, closed, spec.Chain.ContactOhm, [], []).EmitterA;
            (most, least) = (Math.Max(most, amps), Math.Min(least, amps));
        }

        return (most, least);
    }

    private static string Lacks(double leastA) =>
        FormattableString.Invariant(
            $"The driver holds no less than {leastA:0.00} A: with this part a loose lead asks for less. "
        );

    // A value that every drawer has, not above the most.
    private static double Round(double ohm, double most)
    {
        var near = Math.Min(ohm, most);
        var values = Tables.ESeries.Between("E12", near / 1.3, Math.Min(near * 1.3, most));
        return values.Count > 0 ? values.MinBy(r => Math.Abs(Math.Log(r / near))) : near;
    }
}
