using Microsoft.Playwright;

namespace Lampwright.Browser;

/// <summary>The blank on the page: findings where they bite, and what is picked has its field in hand.</summary>
public sealed class BlankTests(BrowserFixture browser)
{
    private static string WithFaults(string text) =>
        text
        + """

            [part.clip]
            sheet = "mild"
            face = { outside = ["90 mm", "60 mm"] }

            [part.clip.flange.wall]
            on = "face.left"
            height = { outside = "30 mm" }
            angle = "90 deg"

            [part.clip.hem.safe]
            on = "face.right"
            width = "8 mm"

            [part.clip.joggle.lap]
            on = "face.top"
            lap = "15 mm"
            offset = "3 mm"

            [part.clip.hole.cable]
            on = "face"
            at = ["8.5 mm", "30 mm"]
            shape = "round 6 mm"

            [part.torn]
            sheet = "mild"
            face = { outside = ["90 mm", "60 mm"] }

            [part.torn.flange.one]
            on = "face.left"
            height = { outside = "30 mm" }

            [part.torn.flange.two]
            on = "face.left"
            height = { outside = "20 mm" }
            """;

    [Fact]
    public async Task A_finding_leads_to_its_mark_and_the_mark_back_to_it()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync(WithFaults);
        await using var board = await browser.OpenAsync(program.Address, "metal?part=clip");
        await board.SettledAsync();
        const string key = "MET008@part.clip.hole.cable";
        var mark = board.Page.Locator($".sketch.blank svg text[data-id='{key}']").First;
        await Assertions.Expect(mark).ToContainTextAsync("MET008");

        await board.Page.EvaluateAsync("k => document.querySelector(`[data-found='${k}']`).click()", key);
        await board.Page.WaitForFunctionAsync("k => document.activeElement?.dataset?.id === k", key);
        await board.Page.Keyboard.PressAsync("Enter");
        await board.Page.WaitForFunctionAsync("k => document.activeElement?.id === 'found:' + k", key);
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task A_link_from_another_page_leads_to_the_mark()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync(WithFaults);
        const string key = "MET008@part.clip.hole.cable";
        await using var board = await browser.OpenAsync(
            program.Address,
            $"metal?part=clip&found={Uri.EscapeDataString(key)}"
        );
        await board.Page.WaitForFunctionAsync("k => document.activeElement?.dataset?.id === k", key);
    }

    [Fact]
    public async Task A_part_without_blank_is_shown_with_its_fault()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync(WithFaults);
        await using var board = await browser.OpenAsync(program.Address, "metal?part=torn");
        await board.SettledAsync();
        await Assertions
            .Expect(board.Page.Locator(".sketch.blank svg text.t-found"))
            .ToHaveTextAsync("MET002 edge taken twice");
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task What_is_picked_has_its_field_in_hand()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync(WithFaults);
        await using var board = await browser.OpenAsync(program.Address, "metal?part=clip");
        await board.Page.WaitForSelectorAsync(".fold[data-drawn=yes]");
        foreach (
            var (id, table) in new[]
            {
                ("clip.face.cable", "hole.cable"),
                ("clip.wall", "flange.wall"),
                ("clip.safe", "hem.safe"),
                ("clip.wall.far", "flange.wall"),
                ("clip.lap", "joggle.lap"),
                ("clip.face.bottom", "face"),
                ("clip.lap_step", "joggle.lap"),
            }
        )
        {
            // As a click in the picture does; which pixel shows what is held elsewhere.
            await board.Page.EvaluateAsync("i => document.querySelector('.fold').choose(i)", id);
            var hand = board.Page.Locator($".inhand [id^='hand:part.clip.{table}.']").First;
            await Assertions.Expect(hand).ToBeVisibleAsync();
            await board.Page.Locator(".inhand .led a").ClickAsync();
            await board.Page.WaitForFunctionAsync(
                "f => document.activeElement?.id?.startsWith(f)",
                $"given:part.clip.{table}."
            );
        }
    }

    [Fact]
    public async Task A_hole_of_the_blank_is_picked_in_the_fold_and_changed_in_hand()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync(WithFaults);
        await using var board = await browser.OpenAsync(program.Address, "metal?part=clip");
        await board.Page.WaitForSelectorAsync(".fold[data-drawn=yes]");
        await board.Page.EvaluateAsync(
            "() => document.querySelector(\".sketch.blank svg circle[data-id='clip.face.cable']\").dispatchEvent(new MouseEvent('click', { bubbles: true }))"
        );
        var shape = board.Page.Locator(".inhand input[id='hand:part.clip.hole.cable.shape']");
        await shape.FillAsync("round 4 mm");
        await shape.PressAsync("Enter");
        await Assertions.Expect(board.Page.Locator(".sketch.blank svg")).ToContainTextAsync("Ø4");
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task The_slider_folds_bend_by_bend()
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, "metal?part=tray");
        await board.Page.WaitForSelectorAsync(".fold[data-drawn=yes]");
        var stages = board.Page.Locator(".stages li");
        await Assertions.Expect(stages).ToHaveCountAsync(4);
        await board.Page.Locator(".slide input").FillAsync("38");
        await Assertions.Expect(stages.Nth(0)).ToContainTextAsync("90° of 90°");
        await Assertions.Expect(stages.Nth(1)).ToContainTextAsync("47° of 90°");
        await Assertions.Expect(stages.Nth(2)).ToContainTextAsync("0° of 90°");
        await stages.Nth(2).Locator("button").ClickAsync();
        await Assertions.Expect(stages.Nth(2)).ToContainTextAsync("90° of 90°");
        await Assertions.Expect(stages.Nth(3)).ToContainTextAsync("0° of 90°");
        Assert.Empty(board.Complaints);
    }
}
