using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Lampwright.Browser;

/// <summary>The page heat as a maker meets it: numbers first, the light cut open, curves with their bands, and edits that move them.</summary>
public sealed class HeatTests(BrowserFixture browser)
{
    private const string Cut = ".cutopen figure .at-wide";

    [Fact]
    public async Task What_limits_comes_first_with_what_is_left_and_what_helps_most()
    {
        browser.Need();
        await using var board = await OpenAsync(browser.Shared.Address);
        await Assertions
            .Expect(board.Page.Locator(".comes > section h3").First)
            .ToHaveTextAsync("What limits, and what helps most");
        await Assertions.Expect(board.Page.Locator(".limits .setting .v")).ToContainTextAsync("K");
        await Assertions.Expect(board.Page.Locator(".limits")).ToContainTextAsync("One step that helps most");
        await board.Page.Locator(".limits summary").ClickAsync();
        var helps = board.Page.Locator(".limits details tbody tr");
        Assert.True(await helps.CountAsync() >= 4);
        await Assertions.Expect(helps.First.Locator("a")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_staircase_shows_its_values_and_curves_have_bands()
    {
        browser.Need();
        await using var board = await OpenAsync(browser.Shared.Address);
        var stairs = board.Page.Locator(
            ".at-wide .lw-chart[aria-label^='From junction to room'] .lw-readout[data-value]"
        );
        await Assertions.Expect(stairs).ToHaveCountAsync(4);
        foreach (var step in await stairs.AllAsync())
        {
            var value = await NumberAsync(step, "data-value");
            Assert.True(
                value > 0 && await NumberAsync(step, "data-low") < value && value < await NumberAsync(step, "data-high")
            );
        }

        foreach (var name in new[] { ".fanstop", ".overtime" })
        {
            var banded = board.Page.Locator($"{name} .at-wide .lw-chart .lw-readout[data-low][data-high]");
            Assert.True(await banded.CountAsync() > 20, $"{name} tells its bands");
            Assert.True(
                await board.Page.Locator($"{name} .at-wide .lw-chart path[fill-opacity]").CountAsync() > 0,
                $"{name} draws them"
            );
        }
    }

    [Fact]
    public async Task A_hotter_room_and_a_slower_fan_change_the_numbers_of_the_page()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        await using var board = await OpenAsync(program.Address);
        var hottest = board.Page.Locator(".cutopen figcaption");
        await board.Page.Locator("input[value=hot]").CheckAsync();
        var before = await Settled(hottest);
        var left = await board.Page.Locator(".limits .setting .v").TextContentAsync();
        await board.EditAsync("place.ambient_max", "42 degC");
        await Assertions.Expect(hottest).Not.ToHaveTextAsync(before);
        await Assertions.Expect(board.Page.Locator(".limits .setting .v")).Not.ToHaveTextAsync(left!);

        var stair = board.Page.Locator(".at-wide .lw-chart[aria-label^='From junction to room'] .lw-readout").Last;
        var was = await NumberAsync(stair, "data-value");
        await board.EditAsync("fan.main.run_at", "7 V");
        await Assertions
            .Expect(stair)
            .Not.ToHaveAttributeAsync(
                "data-value",
                was.ToString("R", System.Globalization.CultureInfo.InvariantCulture)
            );
        Assert.True(await NumberAsync(stair, "data-value") > was, "less air, more kelvins from sink to room");
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task The_section_is_coloured_and_follows_scene_and_position()
    {
        browser.Need();
        await using var board = await OpenAsync(browser.Shared.Address);
        var figure = board.Page.Locator(".cutopen figure");
        var normal = await FillsAsync(board);
        Assert.True(normal.Distinct().Count() >= 8, "as many colours as temperatures");
        var text = await board.Page.Locator(Cut).TextContentAsync();

        await board.Page.Locator("input[value='fan stopped, hot']").CheckAsync();
        await Assertions.Expect(figure).ToHaveAttributeAsync("data-scene", "fan stopped, hot");
        var stopped = await board.Page.Locator(Cut).TextContentAsync();
        Assert.NotEqual(text, stopped);
        await Assertions.Expect(board.Page.Locator(".cutopen figcaption")).ToContainTextAsync("Hottest: junction");

        await board.Page.Locator("input[value='fan slowed']").CheckAsync();
        await Assertions.Expect(board.Page.Locator(".cutopen figcaption")).ToContainTextAsync("The fan runs at");

        await board.Page.Locator("input[value=normal]").CheckAsync();
        await board.Page.Locator(".ledger tr[data-switches='0000'] button").ClickAsync();
        await Assertions.Expect(figure).ToHaveAttributeAsync("data-position", "0000");
        await Assertions.Expect(board.Page.Locator(Cut)).Not.ToHaveTextAsync(text!);
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task It_can_be_read_and_used_by_everybody_on_every_paper_and_by_key()
    {
        browser.Need();
        await using var board = await OpenAsync(browser.Shared.Address);
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

        // One stop for the scenes; arrow keys go from one to the next.
        await board.Page.Locator("input[value=normal]").FocusAsync();
        await board.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(board.Page.Locator(".cutopen figure")).ToHaveAttributeAsync("data-scene", "hot");
        await board.Page.Keyboard.PressAsync("Tab");
        await board.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("checkbox", await board.Page.EvaluateAsync<string>("document.activeElement.type"));
    }

    private async Task<BoardPage> OpenAsync(string address)
    {
        var board = await browser.OpenAsync(address, "heat");
        await board.SettledAsync();
        await board.Page.WaitForSelectorAsync(".cutopen figure");
        return board;
    }

    private static async Task<string> Settled(ILocator text) => await text.TextContentAsync() ?? "";

    private static async Task<IReadOnlyList<string>> FillsAsync(BoardPage board) =>
        await board
            .Page.Locator($"{Cut} path[style*=fill]")
            .EvaluateAllAsync<string[]>("all => all.map(p => getComputedStyle(p).fill)");

    private static async Task<double> NumberAsync(ILocator of, string attribute) =>
        double.Parse(await of.GetAttributeAsync(attribute) ?? "", System.Globalization.CultureInfo.InvariantCulture);
}
