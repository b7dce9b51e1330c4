using Lampwright.Evaluation.Answers;
using Lampwright.Files.Drawings;
using Lampwright.Quantities;
using Lampwright.Web.Desk;

namespace Lampwright.Tests.Web;

/// <summary>A desk without a file: a few values, undo, and answers that follow one of them.</summary>
internal sealed class FakeDesk : IBoardDesk
{
    private readonly List<Dictionary<string, string>> _past = [];
    private Dictionary<string, string> _now;
    private string _saved;
    private long _version;

    public FakeDesk(Dictionary<string, string>? values = null)
    {
        _now =
            values
            ?? new(StringComparer.Ordinal)
            {
                ["steps.switches"] = "4",
                ["steps.arrangement"] = "series chain",
                ["emitter.main.points[0].current"] = "0.45 A",
                ["emitter.main.points[0].voltage"] = "33.6 V",
                ["emitter.main.points[0].flux"] = "2300 lm",
                ["emitter.main.points[1].current"] = "0.90 A",
                ["emitter.main.points[1].voltage"] = "34.9 V",
                ["emitter.main.points[1].flux"] = "4350 lm",
                ["emitter.main.junction_max"] = "120 degC",
                ["driver.main.current.rated"] = "1.75 A",
                ["driver.main.efficiency"] = "",
                ["driver.main.isolated"] = "yes",
                ["driver.main.sense.side"] = "secondary",
                ["driver.main.sense.carries"] = "smooth",
                ["place.ambient"] = "22 degC ± 3 K",
                ["place.ambient_max"] = "32 degC",
                ["sink.main.base.across"] = "{92 mm}",
                ["tilt.main.torque"] = "1.5 N*m ± 0.5 N*m",
                ["subject.distance"] = "0.8 m",
                ["item.<b>inlet</b>.mass"] = "24 g",
                ["part.sink_tray.sheet"] = "mild",
                ["part.sink_tray.flange.wall_l.height"] = "46 mm",
                ["part.sink_tray.flange.wall_l.angle"] = "90 deg",
            };
        _saved = Text;
        State = Next();
    }

    public BoardState State { get; private set; }

    public event Action? Changed;

    private string Text => string.Join('\n', _now.Select(v => $"{v.Key} = \"{v.Value}\""));

    public Task<string> SetAsync(string path, string text, string session)
    {
        if (text.Contains(',', StringComparison.Ordinal))
        {
            return Task.FromResult("A decimal comma: write 1.2 mm.");
        }

        _past.Add(new(_now, StringComparer.Ordinal));
        _now[path] = text;
        Publish();
        return Task.FromResult("");
    }

    public Task<string> TakeOverAsync(string path, string text) => SetAsync(path, text, "");

    /// <summary>What was taken over, in order.</summary>
    public List<ChainOffer> Taken { get; } = [];

    public Task<string> TakeChainAsync(ChainOffer chain)
    {
        Taken.Add(chain);
        return Task.FromResult("");
    }

    public Task ProveAsync()
    {
        Show(s => s with { Proving = new(1_200, 0.25, 0.05, 0.03) });
        return Task.CompletedTask;
    }

    public void StopProving() => Show(s => s with { Proving = null });

    public Task UndoAsync()
    {
        _now = _past[^1];
        _past.RemoveAt(_past.Count - 1);
        Publish();
        return Task.CompletedTask;
    }

    public Task RedoAsync() => Task.CompletedTask;

    public Task SaveAsync()
    {
        _saved = Text;
        Publish();
        return Task.CompletedTask;
    }

    public Task TakeOutsideAsync() => Task.CompletedTask;

    public Task KeepOwnAsync() => Task.CompletedTask;

    public Task<byte[]> PacketAsync(CancellationToken cancellation) =>
        throw new InvalidOperationException("No packet here.");

    public string BlankDrawing(string part) =>
        State.Light?.Metal?.Parts.FirstOrDefault(p => p.Name == part) is { } answer
            ? SvgDrawing.Element(Lampwright.Files.Drawings.BlankDrawing.Fitting(answer.Blank, 250, 180))
            : "";

    /// <summary>Shows a state that was changed by hand.</summary>
    public void Show(Func<BoardState, BoardState> change)
    {
        State = change(State);
        Changed?.Invoke();
    }

    private void Publish()
    {
        State = Next();
        Changed?.Invoke();
    }

    private BoardState Next()
    {
        var ambient = double.TryParse(
            _now["place.ambient"].Split(' ')[0],
            System.Globalization.CultureInfo.InvariantCulture,
            out var c
        )
            ? c
            : 22;
        return new()
        {
            Version = ++_version,
            FileName = "herbarium.toml",
            Text = Text,
            IsUnsaved = Text != _saved,
            CanUndo = _past.Count > 0,
            Light = SampleLight.Of(ambient),
            Given =
            [
                .. _now.GroupBy(v => Table(v.Key), StringComparer.Ordinal)
                    .Select(g => new GivenTable(
                        g.Key,
                        [
                            .. g.Select(v => new GivenField(
                                v.Key,
                                v.Key[(g.Key.Length + 1)..].Replace('_', ' ').Replace('.', ' '),
                                v.Value,
                                v.Value.Length == 0 ? Origin.Default : Origin.Given
                            )
                            {
                                Default = v.Value.Length == 0 ? "0.88" : "",
                                DefaultSource = v.Value.Length == 0 ? "common practice" : "",
                                Help = "What this is, in a sentence of help from the one list of keys.",
                                Accepts = "a temperature, such as 22 degC",
                                Choices = Choices(v.Key),
                            }),
                        ]
                    )),
            ],
        };
    }

    private static IReadOnlyList<string> Choices(string path) =>
        path switch
        {
            "steps.arrangement" => ["series chain", "parallel branches", "selector"],
            "driver.main.isolated" => ["yes", "no", "unknown"],
            "driver.main.sense.side" => ["primary", "secondary", "unknown"],
            "driver.main.sense.carries" => ["smooth", "pulsed", "unknown"],
            _ => [],
        };

    private static string Table(string path)
    {
        var words = path.Split('.');
        return words[0] is "steps" or "place" or "subject" ? words[0]
            : words.Length > 4 ? string.Join('.', words[..4])
            : string.Join('.', words[..2]);
    }
}
