using Microsoft.Playwright;

namespace Lampwright.Browser;

/// <summary>One browser for all tests, and one program for those that only look.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private static readonly string Chromium =
        Environment.GetEnvironmentVariable("LAMPWRIGHT_CHROMIUM") ?? "/usr/bin/chromium";

    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private BoardProgram? _shared;

    /// <summary>Why there is no browser; empty when there is one.</summary>
    public string Missing { get; private set; } = "";

    /// <summary>A program that tests only look at.</summary>
    public BoardProgram Shared => _shared ?? throw new InvalidOperationException(Missing);

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Chromium))
        {
            Missing = $"no browser at {Chromium}; install chromium or name one in LAMPWRIGHT_CHROMIUM";
            return;
        }

        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = Chromium,
                Args =
                [
                    "--no-sandbox",
                    "--use-angle=swiftshader",
                    "--enable-unsafe-swiftshader",
                    "--disable-background-networking",
                ],
            }
        );
        _shared = await BoardProgram.StartAsync();
    }

    /// <summary>A page of the board that is live; skips the test when there is no browser.</summary>
    public async Task<BoardPage> OpenAsync(string address, string path, Look? look = null)
    {
        look ??= Look.Wide;
        var context = await (_browser ?? throw new InvalidOperationException(Missing)).NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = look.Width, Height = look.Height },
                ColorScheme = look.IsDark ? ColorScheme.Dark : ColorScheme.Light,
                // Paper that changes its colour must have it at once, or a checker would judge a shade in between.
                ReducedMotion = ReducedMotion.Reduce,
                HasTouch = look.Width < 600,
                AcceptDownloads = true,
            }
        );
        var page = await context.NewPageAsync();
        var board = new BoardPage(page, address);
        await board.GoAsync(path);
        return board;
    }

    /// <summary>Skips the running test when there is no browser.</summary>
    public void Need() => Assert.SkipWhen(Missing.Length > 0, Missing);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        if (_shared is not null)
        {
            await _shared.DisposeAsync();
        }
    }
}
