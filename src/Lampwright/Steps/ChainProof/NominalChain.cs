namespace Lampwright.Steps.ChainProof;

/// <summary>The currents of one chain at nominal values, by the network of the station.</summary>
internal sealed class NominalChain
{
    private readonly ChainSearchSpec _spec;
    private readonly ChainNetwork _network;
    private readonly double[] _ohms;
    private readonly double[] _heats;
    private readonly ChainBoard _board;

    public NominalChain(ChainSearchSpec spec, IReadOnlyList<PositionParts> parts)
    {
        _spec = spec;
        _board = new(spec.LeadOhm, spec.UnsensedLeadOhm, spec.BleedOhm ?? double.PositiveInfinity, spec.FloorOhm);
        var corners = parts.Select((p, k) => ChainValues.Of(spec, p, k == 0)).ToArray();
        _ohms = [.. corners.Select(c => c.Nominal)];
        _heats = [.. corners.Select(c => c.NominalHeat)];
        static ResistorPart Part(double ohm) => new(ohm, 0, 1, 400, 500);
        _network = new(new(spec.Arrangement, Part(_ohms[0]), [.. _ohms[1..].Select(Part)], spec.ContactOhm));
    }

    /// <summary>The switches of a combination, 1 = closed.</summary>
    public string Switches(int combination) => _network.Switches(_spec.NetworkIndex(combination));

    /// <summary>Current of a combination, resistors warm, in amperes.</summary>
    public double CurrentA(int combination)
    {
        var index = _spec.NetworkIndex(combination);
        Span<double> warm = stackalloc double[_ohms.Length];
        _ohms.CopyTo(warm);
        var amps = _spec.Driver.CurrentA(Total(index, warm));
        for (var pass = 0; pass < 60 && _heats.Any(h => h != 0); pass++)
        {
            for (var k = 0; k < warm.Length; k++)
            {
                var carries = k == 0 || (_network.Closed(index, k - 1) == (_spec.Arrangement == Arrangement.Selector));
                warm[k] = _ohms[k] + (carries ? _heats[k] * amps * amps : 0);
            }

            amps = _spec.Driver.CurrentA(Total(index, warm));
        }

        return amps;
    }

    private double Total(int index, ReadOnlySpan<double> ohms)
    {
        ReadOnlySpan<double> contact = [_spec.ContactOhm];
        var total = _network.TotalOhm(index, ohms, contact, _spec.LeadOhm);
        return _spec.Arrangement == Arrangement.ParallelBranches
            ? total + _board.FloorOhm
            : ohms[0] + _board.Seen(total - ohms[0]);
    }

    /// <summary>Worst relative error at nominal values.</summary>
    public double WorstError(ChainModel model)
    {
        var amps = Enumerable.Range(0, model.Combinations).Select(CurrentA).ToArray();
        return model
            .Wanted.Select(
                (w, t) =>
                    model.Assigned(t) is >= 0 and var only
                        ? Math.Abs((amps[only] / w) - 1)
                        : amps.Min(a => Math.Abs((a / w) - 1))
            )
            .Max();
    }
}
