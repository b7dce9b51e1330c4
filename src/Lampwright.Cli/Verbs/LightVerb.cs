using Lampwright.Cli.Show;
using Lampwright.Evaluation;
using Lampwright.Files.Json;
using Lampwright.Files.Opening;
using Spectre.Console.Cli;

namespace Lampwright.Cli.Verbs;

/// <summary>Evaluates a light and shows one station of it, or all.</summary>
internal sealed class LightVerb : Command<LightSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, LightSettings settings, CancellationToken cancellationToken)
    {
        var (terminal, station) = (VerbTask)context.Data!;
        OpenedLight opened;
        LightEvaluation light;
        using (new Wait(terminal, "Evaluating " + Path.GetFileName(settings.File)))
        {
            opened = OpenedLight.At(settings.File);
            var prepared = opened.Prepare();
            light = settings.Evaluate(prepared, cancellationToken);
            if (station == Station.All && settings.Json)
            {
                light = light.WithChain(prepared.Chain(stop: cancellationToken));
            }
        }

        Show(terminal, station, settings, opened, light);
        return Ending(opened, light);
    }

    /// <summary>Tells what is known, as tables or as JSON.</summary>
    public static void Show(
        Terminal terminal,
        Station station,
        LightSettings settings,
        OpenedLight opened,
        LightEvaluation light
    )
    {
        if (!settings.Json)
        {
            LightSheet.Show(terminal.Screen, opened, light, station);
            return;
        }

        terminal.Json(
            (Stream answer) =>
            {
                if (station == Station.All)
                {
                    EvaluationJson.Write(light, opened.Problems, answer, opened.Place);
                }
                else
                {
                    EvaluationJson.WriteStation(station.Field, light, opened.Problems, answer, opened.Place);
                }
            }
        );
    }

    /// <summary>What a verb that has evaluated ends with.</summary>
    public static int Ending(OpenedLight opened, LightEvaluation light) =>
        opened.Problems.Count > 0 ? ExitCode.Problems
        : light.HasStop ? ExitCode.Stop
        : ExitCode.Evaluated;
}
