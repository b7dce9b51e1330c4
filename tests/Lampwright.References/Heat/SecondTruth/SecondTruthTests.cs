using System.Globalization;
using Lampwright.References.Heat.Truth;

namespace Lampwright.References.Heat.SecondTruth;

/// <summary>The bands of the station heat against lights of a second model, which was finished before it was first compared.</summary>
public class SecondTruthTests
{
    private static readonly int Count = 4000;
    private static readonly int Draws = 128;

    // What was measured, and stands so in docs/heat.md: not the 88 to 92 % that are wanted. A change of the station that moves these is to be seen,
    // looked into and written there.
    private static readonly Dictionary<string, (double Base, double Junction)> Recorded = new()
    {
        ["fins in a housing, fan stopped"] = (0.794, 0.705),
        ["fins, fan at their ends"] = (0.648, 0.667),
        ["fins, fan at their tips"] = (0.700, 0.510),
        ["fins, fan, 2000 to 4000 m"] = (0.716, 0.736),
        ["fins, still air"] = (0.922, 0.858),
        ["level fins, still air"] = (0.011, 0.023),
        ["plain plate, still air"] = (0.780, 0.783),
        ["tower, fan"] = (0.889, 0.889),
        ["tower, still air"] = (1.000, 0.980),
        ["all"] = (0.738, 0.700),
    };

    [Fact]
    public void Bands_hold_the_truth_of_a_model_made_without_sight_of_them_as_often_as_the_page_says()
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
        foreach (var (name, held) in Recorded)
        {
            Seen[] group = [.. seen.Where(s => name == "all" || s.Group == name)];
            Near(held.Base, group.Average(s => s.Base.In), group.Length, name + " base\n" + report);
            Near(held.Junction, group.Average(s => s.Junction.In), group.Length, name + " junction\n" + report);
        }
    }

    // Within three deviations of the count, and a point for what a group that always holds does not scatter.
    private static void Near(double recorded, double found, int count, string said) =>
        Assert.True(
            Math.Abs(found - recorded) < 3 * Math.Sqrt(recorded * (1 - recorded) / count) + 0.01,
            $"{found:P1} where {recorded:P1} is written in docs/heat.md: {said}"
        );

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
