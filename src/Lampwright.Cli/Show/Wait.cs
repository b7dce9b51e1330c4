using System.Diagnostics;

namespace Lampwright.Cli.Show;

/// <summary>A line that says that work goes on, only where somebody looks and only when it takes longer than a blink.</summary>
internal sealed class Wait : IDisposable
{
    private static readonly TimeSpan Blink = TimeSpan.FromMilliseconds(700);
    private readonly Terminal _terminal;
    private readonly Timer? _timer;
    private readonly Stopwatch _since = Stopwatch.StartNew();
    private readonly Lock _gate = new();
    private string _what;
    private int _shown;
    private bool _ended;

    /// <summary>Begins to wait.</summary>
    public Wait(Terminal terminal, string what)
    {
        _terminal = terminal;
        _what = Words.Plain(what);
        _timer = terminal.ShowsProgress ? new Timer(_ => Tick(), null, Blink, TimeSpan.FromMilliseconds(250)) : null;
    }

    /// <summary>Says how far it is.</summary>
    public void At(string what) => _what = Words.Plain(what);

    /// <inheritdoc/>
    public void Dispose()
    {
        _timer?.Dispose();
        lock (_gate)
        {
            _ended = true;
            if (_shown > 0)
            {
                _terminal.Error.Write("\r" + new string(' ', _shown) + "\r");
            }
        }
    }

    private void Tick()
    {
        lock (_gate)
        {
            if (_ended)
            {
                return;
            }

            var line = $"{_what} … {_since.Elapsed.TotalSeconds:F0} s";
            _terminal.Error.Write("\r" + line.PadRight(_shown));
            _shown = Math.Max(_shown, line.Length);
        }
    }
}
