using Lampwright.Benchmarks.Peers;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Benchmarks.Problems;

/// <summary><c>chain</c>: the best chain of a stock, proven.</summary>
internal sealed class ChainProblem : Problem
{
    public override string Name => "chain";

    public override Prepared Load(string file)
    {
        var spec = ChainFile.Read(file);
        var peer = ChainSolver.Takes(spec) ? new ChainSolver(spec) : null;
        return new(() => Find(spec), found => Answer(spec, (ChainSearchResult)found, peer))
        {
            PeerMs = peer is null ? null : peer.Ms,
        };
    }

    private static ChainSearchResult Find(ChainSearchSpec spec)
    {
        try
        {
            return ChainSearch.Find(spec);
        }
        catch (ArgumentOutOfRangeException e)
        {
            throw new BadProblemException(e.Message);
        }
    }

    private static object Answer(ChainSearchSpec spec, ChainSearchResult found, ChainSolver? peer) =>
        new
        {
            Err = found.WorstError,
            Parts = found.Parts.Select(p => p.Words).ToArray(),
            Ohms = found.Ohms,
            found.Proven,
            found.Bound,
            Cases = found.CasesClosed,
            NominalErr = found.NominalError,
            Objective = spec.Objective == ChainObjective.Nominal ? "nominal" : "worst corner",
            Steps = found
                .Steps.Select(s => new
                {
                    s.WantedA,
                    s.Switches,
                    s.CurrentA,
                })
                .ToArray(),
            Missing = found.Missing?.Words,
            Peer = peer?.Status,
            PeerErrOhm = peer?.Error,
        };
}
