using Lampwright.Evaluation.Answers;
using Lampwright.Steps.Faults;
using Lampwright.Web.Chain;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>Single faults: those that judge the light and let most flow, as stated and at worst, and what is taken on the maker's word.</summary>
internal static class FaultLines
{
    private static readonly int most = 5;

    /// <summary>Shows them.</summary>
    public static void Show(IAnsiConsole screen, StepsAnswer steps)
    {
        if (steps.Faults.Count == 0)
        {
            return;
        }

        var rows = new Cells(
            "what happens",
            "at",
            ">flows A",
            ">at worst A",
            "emitter survives",
            "driver",
            "resistors"
        );
        var judged = steps
            .Faults.Where(f => f.Standing is FaultStanding.Counts or FaultStanding.ByConstruction)
            .OrderByDescending(f => f.WorstA ?? double.PositiveInfinity)
            .ToList();
        foreach (var f in judged.Take(most))
        {
            rows.Row(
                Cells.Of(f.What),
                Cells.Of(f.Position),
                Cells.Of(Amps(f.CurrentMostA)),
                Cells.Of(Amps(f.WorstA)),
                Cells.Of(ChainWords.Of(f.Emitter)),
                Cells.Of(ChainWords.Of(f.Driver)),
                Cells.Of(ChainWords.Of(f.Resistors))
            );
        }

        rows.On(
            screen,
            $"When any one thing fails ({steps.Faults.Count} faults; the {Math.Min(most, judged.Count)} with most current)"
        );
        var onWord = steps.Faults.Where(f => f.Standing == FaultStanding.Excluded).Select(f => f.What).ToList();
        if (onWord.Count > 0)
        {
            screen.WriteLine(Words.Plain($"  taken on your word that they cannot happen: {string.Join(", ", onWord)}"));
        }
    }

    private static string Amps(double? amps) => amps is { } known ? Numbers.Fixed(known, 2) : "not known";
}
