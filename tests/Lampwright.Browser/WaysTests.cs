using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Lampwright.Browser;

/// <summary>The ways of dimming and the reading of the driver's board, as a maker meets them.</summary>
public sealed class WaysTests(BrowserFixture browser)
{
    private const string Isolated = "[id=\"asked:driver.main.isolated\"]";

    [Fact]
    public async Task Every_way_has_a_card_and_the_chosen_one_comes_first()
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, "steps");
        await board.SettledAsync();
        var cards = board.Page.Locator("article.way");
        await Assertions.Expect(cards).ToHaveCountAsync(13);
        await Assertions.Expect(cards.First).ToHaveAttributeAsync("data-way", "SteppedChain");
        await Assertions.Expect(cards.First).ToContainTextAsync("chosen in the file");
        await Assertions.Expect(cards.First.Locator(".verdict")).ToContainTextAsync("works");
    }

    [Fact]
    public async Task An_opened_card_shows_where_lines_meet_and_light_over_time_and_can_be_used_by_everybody()
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, "steps");
        await board.SettledAsync();
        var card = board.Page.Locator("article[data-way=ConverterBehind]");
        Assert.Equal(0, await card.Locator(".lw-chart").CountAsync());
        await card.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(card.GetByRole(AriaRole.Button)).ToHaveAttributeAsync("aria-expanded", "true");
        var pictures = card.Locator(".lw-chart:visible");
        await Assertions.Expect(pictures.First).ToBeVisibleAsync();
        Assert.True(await pictures.CountAsync() >= 2, "operating point and time");
        Assert.Contains("Voltage, V", await pictures.First.TextContentAsync() ?? "", StringComparison.Ordinal);
        Assert.Contains("Light, % of set", await pictures.Nth(1).TextContentAsync() ?? "", StringComparison.Ordinal);

        foreach (var look in Look.All)
        {
            await board.LookAsync(look);
            var result = await board.Page.RunAxe();
            Assert.True(
                result.Violations.Length == 0,
                $"{look.Name}: {string.Join('\n', result.Violations.Select(v => $"{v.Id}: {v.Nodes[0].Html}"))}"
            );
            var sideways = await board.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth");
            Assert.True(sideways <= 0, $"{look.Name}: the page scrolls sideways by {sideways} px");
        }

        await card.GetByRole(AriaRole.Button).First.ClickAsync();
        await Assertions.Expect(card.Locator(".lw-chart")).ToHaveCountAsync(0);
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task Not_knowing_whether_the_output_is_isolated_puts_a_stop_on_the_board_and_on_the_cards()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        await using var board = await browser.OpenAsync(program.Address, "steps");
        await board.SettledAsync();
        var chosen = board.Page.Locator("article[data-way=SteppedChain]");
        Assert.Equal(0, await chosen.Locator(".standing").CountAsync());
        await Assertions.Expect(board.Page.Locator(Isolated)).ToHaveValueAsync("yes");

        await board.Page.Locator(Isolated).SelectOptionAsync("unknown");
        await Assertions.Expect(chosen.Locator(".standing")).ToContainTextAsync("STP002");
        await Assertions.Expect(chosen.Locator(".verdict")).ToContainTextAsync("stop");
        await Assertions.Expect(board.Page.Locator(".boardreading .findings .stop").First).ToContainTextAsync("STP002");
        await Assertions.Expect(board.Page.Locator(".boardreading")).ToContainTextAsync("licensed");
        await Assertions.Expect(board.Field("driver.main.isolated")).ToHaveValueAsync("unknown");

        await board.Page.Locator(Isolated).SelectOptionAsync("yes");
        await Assertions.Expect(chosen.Locator(".standing")).ToHaveCountAsync(0);
        Assert.Empty(board.Complaints);
    }
}
