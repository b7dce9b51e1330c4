using System.Globalization;
using Lampwright.References.Heat.Truth;

namespace Lampwright.References.Heat.SecondTruth;

/// <summary>The bands of the station heat against lights of a second model, which was finished before it was first compared.</summary>
public class SecondTruthTests
{
    private static readonly int Count = 4000;
    private static readonly int Draws = 256;

    [Fact]
    public void Bands_hold_the_truth_of_a_model_made_without_sight_of_them()
    {
        var chance = new Random(20261126);
        int[] seeds = [.. Enumerable.Range(0, Count).Select(_ => chance.Next())];
        var seen = new Seen[Count];
        Parallel.For(
            0,
            Count,
            new ParallelOptions { MaxDegreeOfParallelism = 2 },
            i => seen[i] = See(Lights.Of(new(seeds[i])))
        );
        var report = new System.Text.StringBuilder();
        foreach (var group in seen.GroupBy(s => s.Group).OrderBy(g => g.Key))
        {
            Add(report, group.Key, [.. group]);
        }

        Add(report, "all", seen);
        TestContext.Current.TestOutputHelper!.WriteLine(report.ToString());
        Assert.InRange(seen.Average(s => s.Base.In), 0.88, 0.92);
        Assert.InRange(seen.Average(s => s.Junction.In), 0.88, 0.92);
    }

    private static void Add(System.Text.StringBuilder report, string name, IReadOnlyList<Seen> seen) =>
        report.AppendLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {name} | {seen.Count} | {Words(seen, s => s.Base)} | {Words(seen, s => s.Junction)} |"
            )
        );

    private static string Words(IReadOnlyList<Seen> seen, Func<Seen, Held> of)
    {
        var ratios = seen.Select(s => of(s).Ratio).Order().ToArray();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{seen.Average(s => of(s).In):P1} | {seen.Average(s => of(s).Below):P1} | {seen.Average(s => of(s).Above):P1} | {ratios[ratios.Length / 20]:F2} {ratios[ratios.Length / 2]:F2} {ratios[ratios.Length * 19 / 20]:F2}"
        );
    }

    private static Seen See(MadeLight2 made)
    {
        var (ours, junction) = TrueBands.Of(made.Posed, made.HeatW, Draws);
        return new(made.Group, Held.Of(made.BaseK, ours), Held.Of(made.JunctionK, junction));
    }

    private sealed record Seen(string Group, Held Base, Held Junction);

    private sealed record Held(double In, double Below, double Above, double Ratio)
    {
        public static Held Of(double truth, (double Value, double Low, double High) ours) =>
            new(
                truth >= ours.Low && truth <= ours.High ? 1 : 0,
                truth < ours.Low ? 1 : 0,
                truth > ours.High ? 1 : 0,
                truth / ours.Value
            );
    }
}
