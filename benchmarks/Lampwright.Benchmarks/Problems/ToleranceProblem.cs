using Lampwright.Benchmarks.Peers;
using Lampwright.Steps;

namespace Lampwright.Benchmarks.Problems;

/// <summary><c>tolerance</c>: percentiles of the current of every combination, beside numpy.</summary>
internal sealed class ToleranceProblem : Problem
{
    public override string Name => "tolerance";

    public override Prepared Load(string file)
    {
        var problem = ToleranceFile.Read(file);
        return new(() => new ChainTolerance(problem).Percentiles(), found => Answer(problem, (double[][])found))
        {
            PeerMs = Python.Has("numpy") ? () => Python.Run("tolerance.py", file).GetProperty("ms").GetDouble() : null,
        };
    }

    // The middle of each distribution beside the network of the station at middle values: they cannot lie far apart.
    private static object Answer(ToleranceFile p, double[][] found)
    {
        static ResistorPart Part(double ohm) => new(ohm, 0, 1, 400, 500);
        var network = new ChainNetwork(
            new(Arrangement.SeriesChain, Part(p.Ohms[0]), [.. p.Ohms.Skip(1).Select(Part)], p.ContactMedianOhm)
        );
        double[] contact = [p.ContactMedianOhm];
        return new
        {
            Percentiles = Enumerable
                .Range(0, p.Combinations)
                .ToDictionary(network.Switches, c => found[c], StringComparer.Ordinal),
            Shares = p.Percentiles,
            NominalA = Enumerable
                .Range(0, p.Combinations)
                .ToDictionary(
                    network.Switches,
                    c => p.Volts / network.TotalOhm(c, p.Ohms, contact, p.LeadOhm),
                    StringComparer.Ordinal
                ),
        };
    }
}
