using Lampwright.Evaluation.Answers;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Files.Fixtures;

/// <summary>The best chain of a small made-up stock, searched for and proven, with runners-up and a chain that is used.</summary>
internal static class SampleBestChain
{
    public static ChainSearchSpec Spec { get; } =
        new(
            Arrangement.SeriesChain,
            [1.5, 1.0, 0.6],
            2,
            [.. new[] { 0.1, 0.15, 0.22, 0.33 }.Select(r => new StockPart(r, 3, 0.01, 1e-4, 30))],
            new DriverModel(0.2, 0.195, 0, 0.88),
            0.01,
            0.01,
            2
        )
        {
            Fixed = new StockPart(0.12, 3, 0.01, 1e-4, 30),
        };

    public static ChainAnswer Answer { get; } = Of(Spec);

    public static ChainAnswer Of(ChainSearchSpec spec)
    {
        var best = ChainSearch.Find(spec);
        var (does, _) = ChainCheck.Of(
            spec,
            [.. new[] { 0.12, 0.1, 0.15 }.Select(r => new PositionParts(Joint.Single, new(r, 3, 0.01, 1e-4, 30)))]
        );
        return new()
        {
            Asked = spec,
            Wanted = ["1.5 A", "1 A", "0.6 A"],
            Best = best,
            Better = new(null, 0.6, 2, 0.21, 0.4, 0.01, "0.21 ohm in place of 0.22 ohm (r2) would help."),
            Offers =
            [
                .. ChainTradeOff
                    .Of(spec with { Joined = true })
                    .Select(c => new ChainOffer(c, 12, "a made-up offer", false)),
            ],
            Used = new(does, "", true),
        };
    }
}
