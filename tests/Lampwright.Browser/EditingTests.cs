using Microsoft.Playwright;

namespace Lampwright.Browser;

public sealed class EditingTests(BrowserFixture browser)
{
    private const string Edited = "place.ambient_max";

    [Fact]
    public async Task An_edit_changes_the_ledger_and_that_value_in_the_file_and_nothing_else()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        var before = await File.ReadAllLinesAsync(program.File, TestContext.Current.CancellationToken);
        await using var board = await browser.OpenAsync(program.Address, "heat");
        await board.SettledAsync();

        await board.EditAsync(Edited, "36 degC");
        Assert.Equal(before, await File.ReadAllLinesAsync(program.File, TestContext.Current.CancellationToken));
        await board.Page.Keyboard.PressAsync("Control+s");
        await Assertions.Expect(board.Page.Locator("button.save")).ToBeDisabledAsync();

        var after = await File.ReadAllLinesAsync(program.File, TestContext.Current.CancellationToken);
        Assert.Equal(before.Length, after.Length);
        var changed = Assert.Single(Enumerable.Range(0, before.Length), i => before[i] != after[i]);
        Assert.Contains("36 degC", after[changed], StringComparison.Ordinal);
        Assert.Equal(
            before[changed].Split('"')[0] + before[changed].Split('"')[^1],
            after[changed].Split('"')[0] + after[changed].Split('"')[^1]
        );
    }

    [Fact]
    public async Task What_is_done_can_be_undone_and_done_again_by_button_and_by_key()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        await using var board = await browser.OpenAsync(program.Address, "heat");
        await board.SettledAsync();
        var was = await board.Field(Edited).InputValueAsync();
        var first = await board.LedgerAsync();

        var second = await board.EditAsync(Edited, "38 degC");
        await board.Page.Locator("main h1").ClickAsync();
        await board.Page.Locator("button[aria-label=Undo]").ClickAsync();
        Assert.Equal(first, await board.OtherLedgerAsync(second));
        Assert.Equal(was, await board.Field(Edited).InputValueAsync());
        await board.Page.Keyboard.PressAsync("Control+Shift+z");
        Assert.Equal(second, await board.OtherLedgerAsync(first));
        await board.Page.Keyboard.PressAsync("Control+z");
        Assert.Equal(first, await board.OtherLedgerAsync(second));
    }

    [Fact]
    public async Task Typing_in_one_field_is_one_step_of_undo()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        await using var board = await browser.OpenAsync(program.Address, "heat");
        await board.SettledAsync();
        var first = await board.LedgerAsync();

        await board.Field(Edited).FillAsync("");
        await board.Field(Edited).PressSequentiallyAsync("39 degC", new() { Delay = 230 });
        var typed = await board.OtherLedgerAsync(first);
        await board.Page.Locator("main h1").ClickAsync();
        await board.Page.Locator("button[aria-label=Undo]").ClickAsync();
        Assert.Equal(first, await board.OtherLedgerAsync(typed));
        await Assertions.Expect(board.Page.Locator("button[aria-label=Undo]")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task A_decimal_comma_is_refused_with_what_would_be_accepted_and_the_file_stays()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        await using var board = await browser.OpenAsync(program.Address, "heat");
        await board.SettledAsync();

        await board.Field(Edited).FillAsync("31,5 degC");
        await board.Field(Edited).PressAsync("Enter");
        var error = board.Page.Locator($"[id=\"about:{Edited}\"] .error");
        await Assertions.Expect(error).ToContainTextAsync("31.5");
        await Assertions.Expect(board.Page.Locator("button.save")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task Two_tabs_show_the_same_light()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        await using var one = await browser.OpenAsync(program.Address, "heat");
        await using var two = await browser.OpenAsync(program.Address, "steps");
        await two.SettledAsync();
        var before = await two.LedgerAsync();

        var edited = await one.EditAsync(Edited, "37 degC");
        Assert.Equal(edited, await two.OtherLedgerAsync(before));
    }

    [Fact]
    public async Task A_finding_leads_to_the_field_it_speaks_of()
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, "packet");
        await board.SettledAsync();
        await board.Page.Locator("#findings .findings a[href*='field=']").First.ClickAsync();
        await board.Page.WaitForFunctionAsync("() => document.activeElement?.id?.startsWith('given:')");
        var field = new Uri(board.Page.Url).Query.Split("field=")[1];
        Assert.Equal(
            "given:" + Uri.UnescapeDataString(field),
            await board.Page.EvaluateAsync<string>("document.activeElement.id")
        );
    }

    [Fact]
    public async Task A_change_from_outside_is_shown_beside_the_own_text_and_can_be_taken()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync();
        await using var board = await browser.OpenAsync(program.Address, "heat");
        await board.SettledAsync();
        var first = await board.LedgerAsync();
        await board.EditAsync(Edited, "33 degC");

        var text = await File.ReadAllTextAsync(program.File, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(program.File, "# by another hand\n" + text, TestContext.Current.CancellationToken);
        await Assertions.Expect(board.Page.Locator(".outside")).ToContainTextAsync("# by another hand");
        await Assertions.Expect(board.Page.Locator(".outside")).ToContainTextAsync("33 degC");
        await board.Page.GetByText("Take the file's text").ClickAsync();
        await Assertions.Expect(board.Page.Locator(".outside")).ToHaveCountAsync(0);
        await board.ThisLedgerAsync(first);
    }

    [Fact]
    public async Task Names_with_markup_are_shown_as_text()
    {
        browser.Need();
        await using var program = await BoardProgram.StartAsync(text =>
            System.Text.RegularExpressions.Regex.Replace(
                text,
                "(?m)^title\\s*=.*$",
                "title = \"<img src=x onerror=alert(1)><b>light</b>\""
            )
        );
        await using var board = await browser.OpenAsync(program.Address, "steps");
        await Assertions
            .Expect(board.Page.Locator(".title strong"))
            .ToHaveTextAsync("<img src=x onerror=alert(1)><b>light</b>");
        Assert.Equal(0, await board.Page.Locator(".title img, .title b").CountAsync());
    }
}
