using System.Text;
using System.Text.Json;
using Spectre.Console;

namespace Lampwright.Cli;

/// <summary>Where a verb speaks: answers on one stream, everything else on the other. Both are UTF-8 on every system.</summary>
internal sealed class Terminal : IDisposable
{
    // A pipe has no width: wide enough that no row of a table is broken.
    private static readonly int PipeWidth = 160;
    private readonly StreamWriter _out;

    /// <summary>A place to speak.</summary>
    /// <param name="answer">Stream of the answers.</param>
    /// <param name="error">Stream of sentences about the work itself.</param>
    /// <param name="width">Columns of the terminal; null where the answers go to a file or a pipe.</param>
    /// <param name="showsProgress">Whether somebody looks at the second stream.</param>
    public Terminal(Stream answer, Stream error, int? width = null, bool showsProgress = false)
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        Answer = answer;
        _out = new StreamWriter(answer, utf8) { AutoFlush = true };
        Error = new StreamWriter(error, utf8) { AutoFlush = true };
        ShowsProgress = showsProgress;
        Screen = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Out = new Output(_out, width),
                Ansi = width is null ? AnsiSupport.No : AnsiSupport.Detect,
                ColorSystem = width is null ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
                Interactive = InteractionSupport.No,
            }
        );
        Screen.Profile.Capabilities.Unicode = true;
    }

    /// <summary>The stream of the answers itself, for JSON.</summary>
    public Stream Answer { get; }

    /// <summary>The answers, for people.</summary>
    public IAnsiConsole Screen { get; }

    /// <summary>Sentences about the work itself.</summary>
    public TextWriter Error { get; }

    /// <summary>Whether somebody looks at <see cref="Error"/>.</summary>
    public bool ShowsProgress { get; }

    /// <summary>Writes one JSON document and ends its line.</summary>
    public void Json(Action<Stream> write)
    {
        write(Answer);
        Answer.WriteByte((byte)'\n');
        Answer.Flush();
    }

    /// <summary>Writes a small JSON document: one object, one field after another.</summary>
    public void Json(Action<Utf8JsonWriter> fields) =>
        Json(stream =>
        {
            using var json = new Utf8JsonWriter(stream);
            json.WriteStartObject();
            fields(json);
            json.WriteEndObject();
        });

    /// <summary>Standard output and standard error of this process.</summary>
    public static Terminal OfThisProcess() =>
        new(
            Console.OpenStandardOutput(),
            Console.OpenStandardError(),
            Console.IsOutputRedirected ? null : Math.Clamp(Console.WindowWidth, 40, 400),
            !Console.IsErrorRedirected
        );

    /// <inheritdoc/>
    public void Dispose()
    {
        _out.Dispose();
        Error.Dispose();
    }

    private sealed class Output(TextWriter writer, int? width) : IAnsiConsoleOutput
    {
        public TextWriter Writer => writer;
        public bool IsTerminal => width is not null;
        public int Width => width ?? PipeWidth;
        public int Height => 50;

        public void SetEncoding(Encoding encoding) { }
    }
}
