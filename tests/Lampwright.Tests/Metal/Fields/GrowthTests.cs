using System.Diagnostics;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal.Fields;

public sealed class GrowthTests
{
    /// <summary>The best of several runs each, so that a busy machine says nothing; trying all pairs would make it four hundred times as much.</summary>
    [Fact]
    public void Cost_of_a_perforated_field_grows_in_proportion_to_its_holes()
    {
        var (few, many) = (Best(1000, 12), Best(20_000, 5));
        Assert.True(many < 60 * few, $"1000 holes {few} ms, 20 000 holes {many} ms");
    }

    private static double Best(int holes, int runs)
    {
        var side = 0.006 * Math.Sqrt(holes * Math.Sqrt(3) / 2);
        var part = new PartSpec("p", Parts.Mild, FaceSpec.Rectangle(side + 0.02, side + 0.02))
        {
            Holes =
            [
                new("f", "face", default, HoleShape.Round(0.004), HoleAnchor.Centre)
                {
                    Pattern = HolePattern.Field(0.006, side, side, staggered: true),
                },
            ],
        };
        var best = double.PositiveInfinity;
        for (var i = 0; i < runs; i++)
        {
            var start = Stopwatch.GetTimestamp();
            var result = SheetPart.Of(part);
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            Assert.True(result.Blank!.Holes.Count > holes * 9 / 10);
            Assert.Empty(result.Findings.Where(f => f.Code is "MET010" or "MET013" or "MET014"));
        }

        return best;
    }
}
