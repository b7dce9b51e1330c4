using System.Globalization;
using Lampwright.Heat.Grid;
using Xunit;

namespace Lampwright.References.Heat.Truth;

/// <summary>The bands of the station heat against 4,000 lights that another model made.</summary>
public class HonestBandTests
{
    private static readonly int Lights = 4000;
    private static readonly int Draws = 256;

    [Fact]
    public void Bands_hold_the_truth_of_lights_that_another_model_made()
    {
        var chance = new Random(20261125);
        var made = Enumerable.Range(0, Lights).Select(_ => Populations.Draw(chance)).ToArray();
        var seen = new Seen[Lights];
        Parallel.For(0, Lights, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => seen[i] = See(made[i]));

        var report = new System.Text.StringBuilder();
        foreach (
            var group in seen.GroupBy(s => s.Group)
                .Concat(seen.GroupBy(s => s.Hot ? "hot" : "cool"))
                .OrderBy(g => g.Key)
        )
        {
            Add(report, group.Key, [.. group]);
        }

        Add(report, "all", seen);
        TestContext.Current.TestOutputHelper!.WriteLine(report.ToString());
        // No group may hide behind another: fan or none, thin base or thick, hot or not.
        foreach (
            var group in seen.GroupBy(s => s.Group)
                .Concat(seen.GroupBy(s => s.Hot ? "hot" : "cool"))
                .Where(g => g.Count() > 150)
        )
        {
            Assert.True(group.Average(s => s.Base.In) is > 0.84 and < 0.98, group.Key + " base\n" + report);
            Assert.True(group.Average(s => s.Junction.In) is > 0.84 and < 0.98, group.Key + " junction\n" + report);
        }

        Assert.InRange(seen.Average(s => s.Base.In), 0.88, 0.92);
        Assert.InRange(seen.Average(s => s.Junction.In), 0.88, 0.92);
    }

    /// <summary>The true lights' network is coarse; it must still be far nearer to the grid than the bands are wide.</summary>
    [Theory]
    [InlineData(0.003, 21, 0.001, 0.05, 0.05)]
    [InlineData(0.008, 21, 0.002, 0.05, 0.05)]
    [InlineData(0.003, 17, 0.0015, 0.03, 0.06)]
    public void The_network_of_the_true_lights_agrees_with_the_grid_within_4_percent(
        double baseM,
        int fins,
        double finM,
        double atX,
        double atY
    )
    {
        var light = Populations.Draw(new Random(1)).Light with
        {
            AcrossM = 0.1,
            AlongM = 0.1,
            BaseM = baseM,
            ConductivityWPerMK = 200,
            Fins = fins,
            FinHeightM = 0.03,
            FinM = finM,
            Source = (atX, atY, 0.02, 0.02),
        };
        var grid = GridSolver
            .Solve(
                new()
                {
                    AcrossM = 0.1,
                    AlongM = 0.1,
                    BaseThicknessM = baseM,
                    ConductivityWPerMK = 200,
                    Fins = GridSpec.EvenFins(0.1, finM, (0.1 - finM) / (fins - 1)),
                    FinHeightM = 0.03,
                    Films = new() { BelowWPerM2K = 40, FinSidesWPerM2K = 40 },
                    Sources = [new(atX, atY, 0.02, 0.02, 1)],
                    CellM = 0.001,
                }
            )
            .Solution;
        Assert.NotNull(grid);
        Assert.InRange(TrueBase.RisesKPerW(light, 40, _ => 1).UnderK / grid.Sources[0].MeanK, 0.96, 1.04);
    }

    private static void Add(System.Text.StringBuilder report, string name, IReadOnlyList<Seen> seen)
    {
        report.AppendLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{name, -22} {seen.Count, 5}  base {Words(seen, s => s.Base)}   junction {Words(seen, s => s.Junction)}"
            )
        );
        static string Words(IReadOnlyList<Seen> seen, Func<Seen, Held> of)
        {
            var ratios = seen.Select(s => of(s).Ratio).Order().ToArray();
            return string.Create(
                CultureInfo.InvariantCulture,
                $"in {seen.Average(s => of(s).In):P1} below {seen.Average(s => of(s).Below):P1} above {seen.Average(s => of(s).Above):P1} truth/ours {ratios[ratios.Length / 20]:F3} {ratios[ratios.Length / 2]:F3} {ratios[ratios.Length * 19 / 20]:F3} band ±{seen.Average(s => of(s).Half):P1}"
            );
        }
    }

    private static Seen See(MadeLight made)
    {
        var heatW = TruePhysics.HeatW(made.Light, made.RiseK);
        var junctionK = TruePhysics.JunctionRiseK(made.Light, made.RiseK, heatW);
        var (ours, junction) = TrueBands.Of(made.Posed, heatW, Draws);
        return new(made.Group, made.Hot, Held.Of(made.RiseK, ours), Held.Of(junctionK, junction));
    }

    private sealed record Seen(string Group, bool Hot, Held Base, Held Junction);

    private sealed record Held(double In, double Below, double Above, double Ratio, double Half)
    {
        public static Held Of(double truth, (double Value, double Low, double High) ours) =>
            new(
                truth >= ours.Low && truth <= ours.High ? 1 : 0,
                truth < ours.Low ? 1 : 0,
                truth > ours.High ? 1 : 0,
                truth / ours.Value,
                (ours.High - ours.Low) / 2 / ours.Value
            );
    }
}
