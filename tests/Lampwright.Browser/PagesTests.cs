using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Lampwright.Browser;

public sealed class PagesTests(BrowserFixture browser)
{
    public static TheoryData<string> Words =>
        ["steps", "heat", "light", "metal", "fit-up", "balance", "readings", "packet"];

    [Theory]
    [MemberData(nameof(Words))]
    public async Task A_page_opens_with_its_answers_and_the_ledger_and_fetches_nothing_from_elsewhere(string word)
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, word);
        await board.SettledAsync();

        Assert.Equal(word, await board.Page.Locator("h1").TextContentAsync());
        Assert.Equal(1, await board.Page.Locator("main").CountAsync());
        Assert.Equal(16, await board.Page.Locator(".ledger tbody tr").CountAsync());
        Assert.True(
            await HeadsStandOverColumnsAsync(board.Page),
            $"{word}: the ledger's heads stand beside its columns"
        );
        Assert.True(await board.Page.Locator(".comes section").CountAsync() > 0, $"{word} shows no answer");
        Assert.Empty(board.Complaints);
        Assert.All(board.Fetched, url => Assert.StartsWith(browser.Shared.Address, url.Replace("ws://", "http://")));
    }

    // The style of one page must not reach into the ledger that stands beside all of them.
    private static Task<bool> HeadsStandOverColumnsAsync(IPage page) =>
        page.EvaluateAsync<bool>(
            """
            (() => {
              const [heads, row] = ['thead tr', 'tbody tr'].map(s => [...document.querySelector('.ledger ' + s).children]);
              return heads.length === row.length && heads.every((h, i) => {
                const [a, b] = [h.getBoundingClientRect(), row[i].getBoundingClientRect()];
                return Math.abs(a.left - b.left) < 1 && Math.abs(a.right - b.right) < 1;
              });
            })()
            """
        );

    [Theory]
    [MemberData(nameof(Words))]
    public async Task A_page_can_be_used_by_everybody_light_and_dark_wide_and_on_a_phone(string word)
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, word);
        foreach (var look in Look.All)
        {
            await board.LookAsync(look);
            var result = await board.Page.RunAxe();
            Assert.True(result.Violations.Length == 0, $"{word}, {look.Name}:\n{Told(result.Violations)}");
            var sideways = await board.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth");
            Assert.True(sideways <= 0, $"{word}, {look.Name}: the page scrolls sideways by {sideways} px");
        }
    }

    [Theory]
    [InlineData("steps")]
    [InlineData("heat")]
    [InlineData("balance")]
    public async Task A_chart_says_its_values_under_keys_and_pointer(string word)
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, word);
        await board.SettledAsync();
        var plot = board.Page.Locator(".plot").First;
        var say = plot.Locator(".say");
        await plot.FocusAsync();
        await board.Page.Keyboard.PressAsync("ArrowRight");
        var first = await say.TextContentAsync();
        await board.Page.Keyboard.PressAsync("ArrowRight");
        var second = await say.TextContentAsync();
        Assert.NotEqual("", first);
        Assert.NotEqual(first, second);
        await plot.HoverAsync();
        Assert.Matches("[0-9]", await say.TextContentAsync() ?? "");
    }

    private static string Told(IEnumerable<AxeResultItem> violations) =>
        string.Join(
            '\n',
            violations.Select(v => $"{v.Id}: {v.Help}\n  {string.Join("\n  ", v.Nodes.Take(4).Select(n => n.Html))}")
        );
}
