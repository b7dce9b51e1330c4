using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Lampwright.Browser;

/// <summary>The best chain as a maker meets it: live, to be clicked in, taken over and taken back.</summary>
public sealed partial class ChainTests(BrowserFixture browser)
{
    [Fact]
    public async Task Changing_a_target_changes_chain_errors_and_label()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        await using var board = await browser.OpenAsync(program.Address, "steps");
        var values = board.Page.Locator(".bestchain .chainvalues");
        await ReadyAsync(board);
        var (chain, error, label) = (
            await values.TextContentAsync(),
            await board.Page.Locator(".bestchain .proof").TextContentAsync(),
            await board.Page.Locator(".plate tbody").TextContentAsync()
        );

        await board.Field("steps.targets.every").FillAsync("0.8");
        await board.Field("steps.targets.every").PressAsync("Enter");
        await Assertions.Expect(values).Not.ToHaveTextAsync(chain!);
        await Assertions.Expect(board.Page.Locator(".bestchain .proof")).Not.ToHaveTextAsync(error!);
        await Assertions.Expect(board.Page.Locator(".plate tbody")).Not.ToHaveTextAsync(label!);
        await Assertions
            .Expect(board.Page.Locator(".bestchain .lw-chart:visible").First)
            .ToContainTextAsync("−0.8 stops");
        await ReadyAsync(board);
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task A_point_of_the_trade_off_is_taken_into_the_file_and_undo_brings_the_old_one_back()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        var before = await File.ReadAllTextAsync(program.File, TestContext.Current.CancellationToken);
        await using var board = await browser.OpenAsync(program.Address, "steps");
        await ReadyAsync(board);
        var point = board.Page.Locator(".tradeoff .point:visible[aria-label^='B:']");
        await point.ClickAsync();
        await Assertions.Expect(point).ToHaveAttributeAsync("aria-pressed", "true");
        var offer = board.Page.Locator(".offers li.picked");
        await offer.Locator(".take").PressAsync("Enter");
        await Assertions.Expect(board.Page.Locator(".offers .tag")).ToHaveTextAsync("is used");
        await board.Page.Locator("button.save").ClickAsync();
        await Assertions.Expect(board.Page.Locator("button.save")).ToBeDisabledAsync();

        var after = await File.ReadAllTextAsync(program.File, TestContext.Current.CancellationToken);
        Assert.NotEqual(Chosen().Match(before).Value, Chosen().Match(after).Value);
        Assert.Equal(before.Split('\n').Length, after.Split('\n').Length);

        await board.Page.Locator("button[aria-label=Undo]").ClickAsync();
        await Assertions.Expect(board.Page.Locator("button.save")).ToBeEnabledAsync();
        await board.Page.Locator("button.save").ClickAsync();
        await Assertions.Expect(board.Page.Locator("button.save")).ToBeDisabledAsync();
        Assert.Equal(before, await File.ReadAllTextAsync(program.File, TestContext.Current.CancellationToken));
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task A_long_search_for_runners_up_tells_how_far_it_is_and_can_be_stopped()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync(text =>
            Chosen()
                .Replace(text, "")
                .Replace("stock       = \"E24\"", "stock       = \"E12\"", StringComparison.Ordinal)
                .Replace("switches    = 4", "switches    = 8", StringComparison.Ordinal)
                .Replace("count = 5 }", "count = 10 }", StringComparison.Ordinal)
                .Replace("every = 0.5", "every = 0.25", StringComparison.Ordinal)
        );
        await using var board = await browser.OpenAsync(program.Address, "steps");
        await ReadyAsync(board);
        var proving = board.Page.Locator(".bestchain .proving");
        await proving.Locator("button").ClickAsync();
        await Assertions.Expect(proving).ToContainTextAsync(RunnerUp(), new() { Timeout = 60_000 });
        await Assertions
            .Expect(board.Page.Locator(".bestchain [role=status]"))
            .ToContainTextAsync("Searching for the runners-up.");
        await proving.GetByText("stop with the best so far").ClickAsync();
        await Assertions.Expect(proving.Locator("progress")).ToHaveCountAsync(0);
        await Assertions
            .Expect(board.Page.Locator(".bestchain [role=status]"))
            .ToContainTextAsync("The search has ended");
        Assert.True(await board.Page.Locator(".offers li").CountAsync() > 0);
        await ReadyAsync(board);
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task Everybody_can_use_it_on_any_screen()
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, "steps");
        await ReadyAsync(board);
        await board.Page.EvaluateAsync(
            "document.querySelectorAll('.faults details, .build details').forEach(d => d.open = true)"
        );
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

        Assert.Empty(board.Complaints);
    }

    private static async Task ReadyAsync(BoardPage board)
    {
        await board.SettledAsync();

        // Ten steps of a composite stock take their time on a busy machine.
        await Assertions
            .Expect(board.Page.Locator(".bestchain[aria-busy=false]"))
            .ToHaveCountAsync(1, new() { Timeout = 60_000 });
    }

    [GeneratedRegex("runner-up [0-9]+ of [0-9]+: .* cases, best .* %, at most .* % better")]
    private static partial Regex RunnerUp();

    [GeneratedRegex("(?m)^chosen.*$")]
    private static partial Regex Chosen();
}
