using System.ComponentModel;
using System.Reflection;
using System.Text.Json;
using Lampwright.Cli.Show;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Lampwright.Cli.Verbs;

/// <summary>Begins a light.</summary>
internal sealed class NewVerb : Command<NewVerb.Settings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var terminal = (Terminal)context.Data!;
        var path = settings.Name.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)
            ? settings.Name
            : settings.Name + ".toml";
        if (Path.GetFileName(path) is ".toml" || settings.Name.Any(char.IsControl))
        {
            return Refuse(terminal, "A light needs a name that a file can have.");
        }

        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder && !Directory.Exists(folder))
        {
            return Refuse(terminal, $"There is no folder {folder}.");
        }

        try
        {
            // CreateNew: what is there already is never written over, also when another program is faster.
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(file);
            writer.Write(Text(Title(path)));
        }
        catch (IOException) when (Path.Exists(path))
        {
            return Refuse(terminal, $"{path} is there already and stays as it is; take another name.");
        }

        if (settings.Json)
        {
            terminal.Json(
                (Utf8JsonWriter json) =>
                {
                    json.WriteStartArray("written");
                    json.WriteStringValue(path);
                    json.WriteEndArray();
                }
            );
        }
        else
        {
            terminal.Screen.WriteLine($"Wrote {Words.Plain(path)}. Next: lampwright evaluate {Words.Plain(path)}");
        }

        return ExitCode.Evaluated;
    }

    /// <summary>The starting design under a title.</summary>
    public static string Text(string title)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("first-light.toml")!;
        using var reader = new StreamReader(stream);
        var quoted = title
            .Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace("\"", "\\\"", StringComparison.Ordinal);
        return reader.ReadToEnd().Replace("A first light", quoted, StringComparison.Ordinal);
    }

    private static string Title(string path)
    {
        var words = Path.GetFileNameWithoutExtension(path).Replace('-', ' ').Replace('_', ' ').Trim();
        return words.Length == 0 ? "A first light" : char.ToUpperInvariant(words[0]) + words[1..];
    }

    private static int Refuse(Terminal terminal, string sentence)
    {
        terminal.Error.WriteLine(Words.Plain(sentence));
        return ExitCode.Problems;
    }

    /// <summary>What it is told.</summary>
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<NAME>")]
        [Description("Name of the light, or the path of the file to write")]
        public string Name { get; init; } = "";

        [CommandOption("--json")]
        [Description("Say in JSON what was written")]
        public bool Json { get; init; }
    }
}
