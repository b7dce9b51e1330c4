using System.Text.Json;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.References.Electrical;

/// <summary>Stated problems whose optimum is known from exhaustive enumeration, or from a search by another method.</summary>
/// <remarks>Origin of the files: own problem statements. Their answers come from methods independent of this program.</remarks>
public class ChainProblemRows
{
    // chain-single: exhaustive enumeration of 252,258,627 feasible combinations; tolerance 2e-9. chain-composite: 2e-9.
    // chain-cumulative: printed to nine decimals.
    [Theory]
    [InlineData("chain-single", 0.009776276, 2e-9, "0.036 0.016 0.024 0.033 0.056 0.082")]
    [InlineData(
        "chain-composite",
        0.000503936,
        2e-9,
        "0.062|0.082 0.022|0.075 0.01+0.01 0.047|0.27 0.1|0.33 0.082|1.3"
    )]
    [InlineData("chain-cumulative", 0.015271003, 2e-9, null)]
    public void Best_chain_is_found_and_proven(string name, double error, double tolerance, string? parts)
    {
        var got = ChainSearch.Find(Read(name));
        Assert.True(got.Proven);
        Assert.True(Math.Abs(got.WorstError - error) <= tolerance, $"{got.WorstError}, expected {error}");
        Assert.InRange(got.Bound, got.WorstError * (1 - 2e-9), got.WorstError);
        if (parts is not null)
        {
            double[] expected = [.. parts.Split(' ').Select(Ohm)];
            Assert.Equal(expected.Select(r => Math.Round(r, 12)), got.Ohms.Select(r => Math.Round(r, 12)));
        }
    }

    // The published answers on the same stock for |R/Rt − 1| differ: 0.009703945 for chain-single. The current is what counts.
    [Fact]
    public void Error_is_that_of_the_current_not_of_the_resistance()
    {
        var got = ChainSearch.Find(Read("chain-single"));
        Assert.True(got.WorstError > 0.009703945 + 1e-6);
    }

    private static double Ohm(string words)
    {
        var at = words.IndexOfAny(['+', '|']);
        if (at < 0)
        {
            return double.Parse(words, System.Globalization.CultureInfo.InvariantCulture);
        }

        var (a, b) = (Ohm(words[..at]), Ohm(words[(at + 1)..]));
        return words[at] == '+' ? a + b : a * b / (a + b);
    }

    private static ChainSearchSpec Read(string name)
    {
        using var text = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Electrical", "ChainProblems", name + ".json"))
        );
        var root = text.RootElement;
        double Of(string key) => root.GetProperty(key).GetDouble();
        bool Says(string key) => root.TryGetProperty(key, out var value) && value.GetBoolean();
        var count = root.GetProperty("n_targets").GetInt32();
        return new(
            Arrangement.SeriesChain,
            [.. Enumerable.Range(0, count).Select(k => Of("i_max") * Math.Pow(2, -Of("stops") * k / (count - 1)))],
            root.GetProperty("n_switched").GetInt32(),
            [
                .. root.GetProperty("stock")
                    .EnumerateArray()
                    .Select(p => new StockPart(
                        p.GetProperty("ohm").GetDouble(),
                        p.GetProperty("watt").GetDouble() * Of("derate")
                    )),
            ],
            new(Of("v_sense"), 0.06, 0, 1),
            Of("contact_ohm"),
            Of("lead_ohm"),
            Of("i_max")
        )
        {
            Objective = ChainObjective.Nominal,
            Joined = Says("composites"),
            OneAfterAnother = Says("cumulative"),
            LeastOhm = root.TryGetProperty("min_ohm", out var least) ? least.GetDouble() : 1e-9,
            MostOhm = root.TryGetProperty("max_ohm", out var most) ? most.GetDouble() : 1e9,
        };
    }
}
