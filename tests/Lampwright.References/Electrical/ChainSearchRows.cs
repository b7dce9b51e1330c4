using Lampwright.Steps;
using Lampwright.Tables;

namespace Lampwright.References.Electrical;

/// <summary>One stated problem whose optimum is known from exhaustive enumeration of 252,258,627 feasible combinations.</summary>
public class ChainSearchRows
{
    // Threshold 0.3 V, 5 A, eight steps over two stops, five switches, contacts 5 mohm, leads 3 mohm, E24 from 10 mohm to 2.2 ohm,
    // 2 W up to 0.1 ohm and 1 W above, half of it allowed; solver: exhaustive enumeration; tolerance 2e-9.
    [Theory]
    [InlineData(0.009776276, new[] { 0.036, 0.016, 0.024, 0.033, 0.056, 0.082 })]
    public void Search_finds_the_enumerated_optimum(double error, double[] ohms)
    {
        double[] wanted = [.. Enumerable.Range(0, 8).Select(k => 5 * Math.Pow(2, -2.0 * k / 7))];
        StockPart[] stock = [.. ESeries.Between("E24", 0.01, 2.2).Select(r => new StockPart(r, r <= 0.1 ? 1 : 0.5))];
        var got = ChainSearch.Find(
            new(Arrangement.SeriesChain, wanted, 5, stock, new(0.3, 0.06, 0, 0.9), 0.005, 0.003, 5)
        )!;
        Assert.True(Math.Abs(got.WorstError - error) <= 2e-9, $"{got.WorstError}, expected {error}");
        double[] found = [got.Fixed.Ohm, .. got.Chain.Select(p => p.Ohm)];
        Assert.Equal(ohms, found);
        Assert.True(got.Complete);
    }
}
