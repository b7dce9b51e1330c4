using Microsoft.Playwright;

namespace Lampwright.Browser;

/// <summary>A page of the board, with what the browser complained of and what it fetched.</summary>
public sealed class BoardPage : IAsyncDisposable
{
    private readonly string _address;

    internal BoardPage(IPage page, string address)
    {
        (Page, _address) = (page, address);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                Complaints.Add($"{message.Type}: {message.Text}");
            }
        };
        page.PageError += (_, error) => Complaints.Add(error);
        page.Request += (_, request) => Fetched.Add(request.Url);
    }

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>Errors and warnings of its console.</summary>
    public List<string> Complaints { get; } = [];

    /// <summary>Every address it asked for.</summary>
    public List<string> Fetched { get; } = [];

    /// <summary>Cells of the ledger, row by row, as text.</summary>
    public async Task<string> LedgerAsync() =>
        string.Join(
            '\n',
            await Page.Locator(".ledger tbody tr")
                .EvaluateAllAsync<string[]>(
                    "rows => rows.map(r => r.dataset.switches + ' ' + r.textContent.replace(/\\s+/g, ' '))"
                )
        );

    /// <summary>The input of a path.</summary>
    public ILocator Field(string path) => Page.Locator($"[id=\"given:{path}\"]");

    /// <summary>Goes to a page of the board and waits until it is live.</summary>
    public async Task GoAsync(string path)
    {
        await Page.GotoAsync($"{_address}/{path}");
        await Page.WaitForSelectorAsync("body[data-live=yes]");
    }

    /// <summary>Looks at the page in another size and on other paper.</summary>
    public async Task LookAsync(Look look)
    {
        await Page.SetViewportSizeAsync(look.Width, look.Height);
        await Page.EmulateMediaAsync(new() { ColorScheme = look.IsDark ? ColorScheme.Dark : ColorScheme.Light });
        await SettledAsync();
    }

    /// <summary>Types a value into a field and waits until the ledger differs.</summary>
    public async Task<string> EditAsync(string path, string text)
    {
        var before = await LedgerAsync();
        await Field(path).FillAsync(text);
        await Field(path).PressAsync("Enter");
        return await OtherLedgerAsync(before);
    }

    /// <summary>Waits until bands are there.</summary>
    public Task SettledAsync() =>
        Page.WaitForFunctionAsync("() => document.querySelector('.ledger .key')?.textContent.includes('draws')");

    /// <summary>Waits until the ledger, bands and all, is another than the given.</summary>
    public Task<string> OtherLedgerAsync(string before) =>
        LedgerAsync(now => now != before, $"The ledger did not change from:\n{before}");

    /// <summary>Waits until the ledger, bands and all, is the given.</summary>
    public Task<string> ThisLedgerAsync(string expected) =>
        LedgerAsync(now => now == expected, $"The ledger did not become:\n{expected}");

    private async Task<string> LedgerAsync(Func<string, bool> isIt, string otherwise)
    {
        var patience = DateTime.UtcNow.AddSeconds(10);
        while (DateTime.UtcNow < patience)
        {
            await SettledAsync();
            var now = await LedgerAsync();
            if (isIt(now) && !now.Contains('…', StringComparison.Ordinal))
            {
                return now;
            }

            await Task.Delay(20, TestContext.Current.CancellationToken);
        }

        throw new TimeoutException(otherwise);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await Page.Context.CloseAsync();
}
