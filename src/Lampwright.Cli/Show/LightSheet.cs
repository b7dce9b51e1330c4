using Lampwright.Cli.Verbs;
using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>A light, or one station of it, as a sheet for the terminal: the answer first, then what the foreman says.</summary>
internal static class LightSheet
{
    /// <summary>Shows it.</summary>
    public static void Show(IAnsiConsole screen, OpenedLight opened, LightEvaluation light, Station station)
    {
        // A file of which nothing could be read has problems and no light.
        if (opened.Loaded.Text.Root.Entries.Count == 0 && opened.Problems.Count > 0)
        {
            screen.WriteLine("Nothing could be evaluated.");
            Foreman.Show(screen, opened.Problems);
            return;
        }

        screen.Write(
            new Text(
                Words.Plain(light.Title.Length > 0 ? light.Title : opened.Loaded.Text.FileName) + "\n",
                new Style(decoration: Decoration.Bold)
            )
        );
        screen.WriteLine(Verdict(opened, light));
        var answered = station.Verb switch
        {
            "steps" => StepsTables.Show(screen, light),
            "heat" => HeatTables.Show(screen, light),
            "light" => LightTables.Show(screen, light),
            "metal" => MetalTables.Show(screen, light),
            "fit-up" => FitUpTables.Show(screen, light),
            "balance" => BalanceTables.Show(screen, light),
            "readings" => ReadingsTables.Show(screen, light),
            _ => Ledger.Show(screen, light),
        };
        if (!answered)
        {
            screen.WriteLine();
            screen.WriteLine(
                station == Station.All
                    ? "The file does not say enough yet for any station to answer."
                    : $"There is no answer of the station {station.Verb}; the problems and findings say why."
            );
        }

        if (light.Draws > 0 && answered)
        {
            screen.WriteLine();
            screen.Write(
                new Text(
                    $"Bands run from the 5th to the 95th percentile of {light.Draws} draws.\n",
                    new Style(Color.Grey)
                )
            );
        }

        Foreman.Show(screen, opened, light, station);
        Foreman.Show(screen, opened.Problems);
    }

    private static string Verdict(OpenedLight opened, LightEvaluation light)
    {
        int Of(Severity severity) => light.Findings.Count(f => f.Severity == severity);
        var stops = Of(Severity.Stop);
        var verdict = stops > 0 ? $"Do not build or power it: {Words.Count(stops, "stop")}" : "No stop";
        var problems =
            opened.Problems.Count > 0
                ? $". {Words.Count(opened.Problems.Count, "problem")} of the file, so this is only what could be evaluated"
                : "";
        return $"{verdict}, {Words.Count(Of(Severity.Warn), "warning")}, {Words.Count(Of(Severity.Note), "note")}{problems}.";
    }
}
