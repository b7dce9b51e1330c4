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

    /// <summary>Findings of a station, worst first; those of the others are counted.</summary>
    public static void Show(IAnsiConsole screen, OpenedLight opened, LightEvaluation light, Station station)
    {
        var here = light
            .Findings.Where(f => f.Code.StartsWith(station.Code, StringComparison.Ordinal))
            .OrderByDescending(f => f.Severity)
            .ToList();
        if (here.Count > 0)
        {
            Head(screen, "Findings");
        }

        foreach (var finding in here.Take(MostFindings))
        {
            var at = opened.Loaded.Positions.Find(finding.Path);
            var line = new Paragraph();
            line.Append(Word(finding.Severity).PadRight(5), Tone(finding.Severity));
            line.Append($"{finding.Code}  ");
            line.Append($"{Words.Plain(at.File)}:{at.Line}  {Words.Plain(finding.Path)}\n", new Style(Color.Grey));
            var scene = finding.Scene.Length > 0 ? $" (scene {finding.Scene})" : "";
            screen.Write(line);
            screen.Write(new Padder(new Text(Words.Plain(finding.Message) + scene), new Padding(6, 0, 0, 0)));
            if (finding.Severity != Severity.Note)
            {
                screen.Write(
                    new Padder(
                        new Text(Words.Plain(finding.Rule.Remedy), new Style(Color.Grey)),
                        new Padding(6, 0, 0, 0)
                    )
                );
            }
        }

        if (here.Count > MostFindings)
        {
            screen.WriteLine($"… and {here.Count - MostFindings} more; --json has all.");
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
