using System.ComponentModel;
using System.Text.Json;
using Lampwright.Cli.Show;
using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Files.Packet;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Lampwright.Cli.Verbs;

/// <summary>Writes the papers for the shop.</summary>
internal sealed class PacketVerb : Command<PacketVerb.Settings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var terminal = (Terminal)context.Data!;
        OpenedLight opened;
        LightEvaluation light;
        IReadOnlyList<string> written;
        using (var wait = new Wait(terminal, "Evaluating"))
        {
            opened = OpenedLight.At(settings.File);
            var prepared = opened.Prepare();
            light = settings.Evaluate(prepared, cancellationToken).WithChain(prepared.Chain(stop: cancellationToken));
            written = PacketWriter.Write(
                opened.Loaded.Design,
                light,
                opened.Problems,
                settings.Out,
                opened.Place,
                new Told(p => wait.At($"Packet, {p.Done} of {p.Total}: {p.Name}")),
                cancellationToken
            );
        }

        if (settings.Json)
        {
            WriteJson(terminal, settings.Out, written);
        }
        else
        {
            terminal.Screen.WriteLine(
                $"Wrote {Words.Count(written.Count, "file")} to {Words.Plain(settings.Out)}. Begin with {Words.Plain(Path.Combine(settings.Out, "packet.pdf"))}."
            );
        }

        if (light.HasStop)
        {
            terminal.Error.WriteLine(
                "A finding says stop: do not build or power it before that is settled. See the cover."
            );
        }

        if (opened.Problems.Count > 0)
        {
            terminal.Error.WriteLine(
                $"The file has {Words.Count(opened.Problems.Count, "problem")}; the packet holds only what could be evaluated. "
                    + "See: lampwright evaluate."
            );
        }

        return LightVerb.Ending(opened, light);
    }

    private static void WriteJson(Terminal terminal, string folder, IReadOnlyList<string> written) =>
        terminal.Json(
            (Utf8JsonWriter json) =>
            {
                json.WriteString("folder", folder);
                json.WriteStartArray("written");
                foreach (var name in written)
                {
                    json.WriteStringValue(name);
                }

                json.WriteEndArray();
            }
        );

    // The progress of the base library hands over to other threads; here the order counts.
    private sealed class Told(Action<PacketProgress> tell) : IProgress<PacketProgress>
    {
        public void Report(PacketProgress value) => tell(value);
    }

    /// <summary>What it is told.</summary>
    internal sealed class Settings : LightSettings
    {
        [CommandOption("-o|--out <DIR>", isRequired: true)]
        [Description("Folder for the papers; made where it is missing")]
        public string Out { get; init; } = "";
    }
}
