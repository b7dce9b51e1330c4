namespace Lampwright.Steps.Faults;

/// <summary>Lays out what is soldered: leads, resistors, switches, and what meters show.</summary>
/// <remarks>
/// Currents and drops come from the same solved circuit as the faults. <b>Validity</b>: direct current; the emitter's own leads have no length in
/// the design. <b>Source</b>: Ohm and Kirchhoff; IEC 60228 for the leads. <b>Checked by</b>: invariant, hand cases.
/// </remarks>
public static class ChainBuilds
{
    /// <summary>What is soldered for a chain.</summary>
    /// <param name="spec">Chain, driver, emitter.</param>
    /// <param name="network">The chain's network.</param>
    /// <param name="corners">How far parts may be off.</param>
    public static ChainBuild Of(FaultsSpec spec, ChainNetwork network, CornerSpec corners)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(corners);
        var circuit = new SenseCircuit(spec.Chain, spec.AirK);
        var count = network.CombinationCount;
        var (amps, most) = (new double[count], new double[circuit.Resistors.Count]);
        Span<double> watts = stackalloc double[circuit.Resistors.Count];
        for (var i = 0; i < count; i++)
        {
            var closed = SenseCircuit.Closed(network.Switches(i));
            amps[i] = FaultPoints.At(circuit, spec, default, closed, spec.Chain.ContactOhm, watts, []).DriverA;
            for (var k = 0; k < most.Length; k++)
            {
                most[k] = Math.Max(most[k], watts[k]);
            }
        }

        var brightest = amps.Max();
        return new(
            LeadRows.Of(circuit, brightest),
            [.. circuit.Resistors.Select((r, k) => Row(circuit, r, most[k]))],
            [.. circuit.Contacts.Select((c, k) => Contact(c, k, amps, brightest, spec))],
            [.. Enumerable.Range(0, count).Select(i => Pattern(network, corners, i, amps[i]))],
            Fixed(spec, brightest),
            Taps(spec.Chain),
            BleedOffer.Of(spec, amps.Max(), amps.Min()),
            Floor(spec)
        );
    }

    private static ResistorRow Row(SenseCircuit circuit, SenseResistor part, double watts)
    {
        double? rise = part.AllowedW is null ? null : watts * part.RisePerWattK;
        return new(
            part.Name,
            circuit.Name(part.A),
            circuit.Name(part.B),
            part.Ohm,
            watts,
            part.AllowedW,
            rise,
            part.OnBoard,
            Mounting(part, rise ?? 0)
        );
    }

    // Thirty and eighty kelvin: what paint, tape and plastics bear and what they do not (common practice, no source).
    private static string Mounting(SenseResistor part, double riseK)
    {
        var where = part.OnBoard
            ? "on the driver's board, short legs"
            : "at the switch, both legs held by a lug or a strip";
        return riseK switch
        {
            < 30 => where,
            < 80 => where + "; 5 mm clear of board, plastic and other wires",
            _ => where
                + "; on the metal or clear of everything by 10 mm, no tape, no sleeve; high-melting solder or crimped lugs",
        };
    }

    private static ContactRow Contact(SenseContact contact, int k, double[] amps, double brightest, FaultsSpec spec)
    {
        var chain = spec.Chain;
        var ohm = chain.Switched[k].Ohm;
        var (through, open) = chain.Arrangement switch
        {
            // With its switch open the resistor carries what flows when all others are closed.
            Arrangement.SeriesChain => (brightest, spec.Law.CurrentA(chain.Fixed.Ohm + ohm) * ohm),
            Arrangement.ParallelBranches => (spec.ThresholdV / (ohm + chain.ContactOhm), spec.ThresholdV),
            _ => (amps[k], spec.ThresholdV),
        };
        var dry =
            open < 1
                ? FormattableString.Invariant(
                    $"dry: it opens {open * 1000:0} mV, far too little to burn through a film; gold or both silver poles in parallel, thrown a few times before use"
                )
                : "silver";
        return new(
            contact.Name,
            SenseNode.Name(contact.A),
            SenseNode.Name(contact.B),
            through,
            open,
            chain.ContactMostA,
            dry
        );
    }

    private static PatternRow Pattern(ChainNetwork network, CornerSpec corners, int i, double amps)
    {
        var spec = network.Spec;
        ResistorPart[] parts = [spec.Fixed, .. spec.Switched];
        double At(int sign, double contact)
        {
            var ohms = new double[parts.Length];
            for (var k = 0; k < ohms.Length; k++)
            {
                ohms[k] = parts[k].Ohm * corners.Factor(spec, k, sign);
            }

            var lead = network.LeadOhm(ResistorPart.ReferenceK) * (1 + (sign * corners.LeadShare));
            return network.PathOhm(i, ohms, [contact], lead);
        }

        return new(
            network.Switches(i),
            At(0, spec.ContactOhm),
            At(-1, 0),
            At(+1, Math.Max(spec.ContactOhm, spec.ContactMostOhm ?? 0)),
            amps,
            FixedV(network, i, amps)
        );
    }

    // Parallel branches share the current; everywhere else all of it passes the fixed resistor.
    private static double FixedV(ChainNetwork network, int i, double amps)
    {
        var spec = network.Spec;
        if (spec.Arrangement != Arrangement.ParallelBranches)
        {
            return amps * spec.Fixed.Ohm;
        }

        ResistorPart[] parts = [spec.Fixed, .. spec.Switched];
        var ohms = parts.Select(p => p.Ohm).ToArray();
        var total = network.TotalOhm(i, ohms, [spec.ContactOhm], network.LeadOhm(ResistorPart.ReferenceK));
        return amps * (total - (spec.FloorOhm ?? 0));
    }

    // Where branches share the current, no single figure belongs to an ampere but that of the floor.
    private static List<FixedRow> Fixed(FaultsSpec spec, double brightest)
    {
        var chain = spec.Chain;
        var ohm = chain.Arrangement == Arrangement.ParallelBranches ? chain.FloorOhm ?? 0 : chain.Fixed.Ohm;
        var step = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(brightest, 1e-6) / 2)));
        step *= brightest / step > 12 ? 2 : 1;
        return ohm <= 0
            ? []
            :
            [
                .. Enumerable
                    .Range(1, 24)
                    .Select(k => k * step)
                    .TakeWhile(a => a < brightest * 1.15)
                    .Select(a => new FixedRow(a, a * ohm)),
            ];
    }

    private static string Taps(ChainSpec chain) =>
        chain.Arrangement == Arrangement.ParallelBranches
            ? "The sense input stays where it is, at LED − on the board, and spans floor, fixed resistor and branches. The two leads lie in the branches' path: keep them short."
        : chain.HasTapLead
            ? "The fixed resistor sits between G and M. The lead out goes from M to plate P, the lead back from plate Q to LED −, and a thin lead of its own from the sense input S to plate Q, soldered to the last resistor's leg and not to the lug of the lead. So the lead back falls out of the loop; the lead out stays in."
        : "The sense input stays where it is, at LED − on the board; both leads lie in the loop and count. To take one out: a lead of its own from the sense input to the far end of the chain (steps.taps).";

    private static double? Floor(FaultsSpec spec) =>
        spec.Chain.Arrangement == Arrangement.ParallelBranches ? spec.FloorOhm : null;
}
