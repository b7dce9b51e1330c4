using Lampwright.Cli.Verbs;
using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>Findings and problems, each with its place as an editor understands it.</summary>
internal static class Foreman
{
    private static readonly int MostProblems = 100;
    private static readonly int MostFindings = 200;

    /// <summary>Findings of one rule that are shown in full; a fourth and all further are named by their places.</summary>
    private static readonly int MostAlike = 3;
    private static readonly int MostLines = 12;

    /// <summary>Findings of a station, worst first; those of the others are counted.</summary>
    public static void Show(IAnsiConsole screen, OpenedLight opened, LightEvaluation light, Station station)
    {
        var here = light
            .Findings.Where(f => f.Code.StartsWith(station.Code, StringComparison.Ordinal))
            .OrderByDescending(f => f.Severity)
            .ToList();
        var alike = here.GroupBy(f => (f.Severity, f.Code)).ToList();
        if (here.Count > 0)
        {
            Head(screen, "Findings");
        }

        var shown = 0;
        foreach (var rule in alike.TakeWhile(_ => shown < MostFindings))
        {
            // One more than the most is shown as well: its line would take as much room.
            var whole = rule.Count() <= MostAlike + 1 ? [.. rule] : rule.Take(MostAlike).ToList();
            Show(screen, opened, whole);
            shown += rule.Count();
            if (rule.Count() > whole.Count)
            {
                Rest(screen, opened, rule.Skip(whole.Count).ToList());
            }
        }

        if (here.Count > shown)
        {
            screen.WriteLine($"… and {here.Count - shown} more; --json has all.");
        }

        var elsewhere = light.Findings.Where(f => !here.Contains(f)).ToList();
        if (elsewhere.Count > 0)
        {
            var stops = elsewhere.Count(f => f.Severity == Severity.Stop);
            screen.WriteLine();
            screen.WriteLine(
                $"Other stations: {Words.Count(elsewhere.Count, "finding")}"
                    + (stops > 0 ? $", {Words.Count(stops, "stop")} among them" : "")
                    + ". See: lampwright evaluate."
            );
        }
    }

    private static void Rest(IAnsiConsole screen, OpenedLight opened, List<Finding> rest)
    {
        var places = rest.Select(f => opened.Loaded.Positions.Find(f.Path))
            .GroupBy(at => at.File)
            .Select(file =>
                $"{Words.Plain(file.Key)}:{string.Join(", ", file.Select(at => at.Line).Distinct().Order().Take(MostLines))}"
                + (file.Select(at => at.Line).Distinct().Count() > MostLines ? ", …" : "")
            );
        screen.Write(
            new Padder(
                new Text(
                    $"{rest.Count} more of {rest[0].Code} ({rest[0].Rule.Title}) at {string.Join("; ", places)}. --json has all.",
                    new Style(Color.Grey)
                ),
                new Padding(6, 0, 0, 0)
            )
        );
    }

    private static void Show(IAnsiConsole screen, OpenedLight opened, IReadOnlyList<Finding> alike)
    {
        foreach (var finding in alike)
        {
            var at = opened.Loaded.Positions.Find(finding.Path);
            var line = new Paragraph();
            line.Append(Word(finding.Severity).PadRight(5), Tone(finding.Severity));
            line.Append($"{finding.Code}  ");
            line.Append($"{Words.Plain(at.File)}:{at.Line}  {Words.Plain(finding.Path)}\n", new Style(Color.Grey));
            var scene = finding.Scene.Length > 0 ? $" (scene {finding.Scene})" : "";
            screen.Write(line);
            screen.Write(new Padder(new Text(Words.Plain(finding.Message) + scene), new Padding(6, 0, 0, 0)));
            if (finding.Severity != Severity.Note && ReferenceEquals(finding, alike[^1]))
            {
                screen.Write(
                    new Padder(
                        new Text(Words.Plain(finding.Rule.Remedy), new Style(Color.Grey)),
                        new Padding(6, 0, 0, 0)
                    )
                );
            }
        }
    }

    /// <summary>Problems of the files, in their order.</summary>
    public static void Show(IAnsiConsole screen, IReadOnlyList<FileProblem> problems)
    {
        if (problems.Count == 0)
        {
            return;
        }

        Head(screen, "Problems of the file");
        foreach (var problem in problems.Take(MostProblems))
        {
            var line = new Paragraph();
            line.Append($"{Words.Plain(problem.File)}:{problem.Line}:{problem.Column}", new Style(Color.Yellow));
            line.Append($"  {Words.Plain(problem.Path)}\n", new Style(Color.Grey));
            screen.Write(line);
            screen.Write(new Padder(new Text(Words.Plain(problem.Message)), new Padding(6, 0, 0, 0)));
            if (!problem.Message.Contains(problem.Accepted, StringComparison.Ordinal))
            {
                screen.Write(
                    new Padder(
                        new Text(
                            Words.Plain($"Found {Short(problem.Found)}. Accepted: {problem.Accepted}."),
                            new Style(Color.Grey)
                        ),
                        new Padding(6, 0, 0, 0)
                    )
                );
            }
        }

        if (problems.Count > MostProblems)
        {
            screen.WriteLine($"… and {problems.Count - MostProblems} more; --json has all.");
        }
    }

    private static string Short(string text) => text.Length <= 60 ? text : text[..57] + "…";

    private static void Head(IAnsiConsole screen, string title)
    {
        screen.WriteLine();
        screen.Write(new Text(title + "\n", new Style(decoration: Decoration.Bold)));
    }

    private static string Word(Severity severity) =>
        severity switch
        {
            Severity.Stop => "stop",
            Severity.Warn => "warn",
            _ => "note",
        };

    private static Style Tone(Severity severity) =>
        severity switch
        {
            Severity.Stop => new(Color.Red, decoration: Decoration.Bold),
            Severity.Warn => new(Color.Yellow),
            _ => new(Color.Grey),
        };
}
