using System.Globalization;
using Lampwright.Cli.Serve;
using Lampwright.Cli.Verbs;
using Spectre.Console.Cli;

namespace Lampwright.Cli;

/// <summary>The verbs of the program: one for each station, and those that begin, evaluate, print and show a light.</summary>
internal static class CommandLine
{
    /// <summary>Does what the words say.</summary>
    /// <param name="words">Verb and what follows it.</param>
    /// <param name="terminal">Where it speaks.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>A number for scripts, see docs/command-line.md.</returns>
    public static async Task<int> RunAsync(string[] words, Terminal terminal, CancellationToken cancellation)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        try
        {
            var app = new CommandApp();
            app.Configure(c => Configure(c, terminal));
            return await app.RunAsync(words, cancellation);
        }
        catch (Exception e)
        {
            return Faults.Tell(e, terminal);
        }
    }

    private static void Configure(IConfigurator config, Terminal terminal)
    {
        config.SetApplicationName("lampwright");
        config.SetApplicationVersion(typeof(CommandLine).Assembly.GetName().Version?.ToString(3) ?? "");
        config.SetApplicationCulture(CultureInfo.InvariantCulture);
        config.ConfigureConsole(terminal.Screen);
        config.PropagateExceptions();
        config.UseStrictParsing();

        config
            .AddCommand<NewVerb>("new")
            .WithDescription("Begin a light: writes a small design file, complete and commented, to change at will")
            .WithData(terminal);
        config
            .AddCommand<LightVerb>("evaluate")
            .WithDescription("Everything known about a light, at a glance, with all findings")
            .WithData(new VerbTask(terminal, Station.All));
        config
            .AddCommand<StepsVerb>(Station.Steps.Verb)
            .WithDescription(Station.Steps.Question)
            .WithData(new VerbTask(terminal, Station.Steps));
        foreach (var station in Station.Each.Where(s => s != Station.Steps))
        {
            config
                .AddCommand<LightVerb>(station.Verb)
                .WithDescription(station.Question)
                .WithData(new VerbTask(terminal, station));
        }

        config
            .AddCommand<PacketVerb>("packet")
            .WithDescription(
                "Print the papers for the shop: cover and cautions, cut list, templates, drill list, wiring"
            )
            .WithData(terminal);
        config
            .AddCommand<ServeVerb>("serve")
            .WithDescription("Open the board in the browser: the light live, every station on its page")
            .WithData(terminal);
    }
}
