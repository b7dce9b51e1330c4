using Microsoft.Playwright;

namespace Lampwright.Browser;

public sealed class FoldTests(BrowserFixture browser)
{
    // Count of different colours and a sum of the picture, read from the canvas itself.
    private const string Picture = """
        c => {
          const copy = document.createElement('canvas'); copy.width = c.width; copy.height = c.height;
          const d = copy.getContext('2d'); d.drawImage(c, 0, 0);
          const p = d.getImageData(0, 0, c.width, c.height).data, seen = new Set(); let sum = 0;
          for (let i = 0; i < p.length; i += 4) { if (p[i + 3] > 0) { seen.add(p[i] << 16 | p[i + 1] << 8 | p[i + 2]); sum = (sum * 31 + p[i] + i) % 1000000007; } }
          return [seen.size, sum];
        }
        """;

    [Fact]
    public async Task A_part_is_drawn_turned_folded_flat_and_picked()
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, "metal");
        await board.Page.WaitForSelectorAsync(".fold[data-drawn=yes]");
        var canvas = board.Page.Locator(".fold canvas");
        var folded = await canvas.EvaluateAsync<long[]>(Picture);
        Assert.True(folded[0] > 8, $"The picture has {folded[0]} colours: it is blank.");

        await board.Page.Locator(".slide input").FillAsync("0");
        var flat = await OtherAsync(canvas, folded[1]);
        await canvas.FocusAsync();
        await board.Page.Keyboard.PressAsync("ArrowLeft");
        var turned = await OtherAsync(canvas, flat[1]);
        await board.Page.GetByRole(AriaRole.Button, new() { Name = "parallel" }).ClickAsync();
        await OtherAsync(canvas, turned[1]);

        await board.Page.GetByRole(AriaRole.Button, new() { Name = "top", Exact = true }).ClickAsync();
        var box = (await canvas.BoundingBoxAsync())!;
        for (var i = 1; i < 12 && (await board.Page.Locator(".picked").TextContentAsync())!.Length == 0; i++)
        {
            await board.Page.Mouse.ClickAsync(box.X + (box.Width * (0.5f + (0.02f * i))), box.Y + (box.Height * 0.55f));
        }

        await Assertions.Expect(board.Page.Locator(".led a")).ToBeVisibleAsync();
        await board.Page.Locator(".led a").ClickAsync();
        await board.Page.WaitForFunctionAsync("() => document.activeElement?.id?.startsWith('given:part.')");
        Assert.Empty(board.Complaints);
    }

    [Fact]
    public async Task The_whole_light_is_drawn()
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, "fit-up");
        await board.Page.WaitForSelectorAsync(".fold[data-drawn=yes]");
        var picture = await board.Page.Locator(".fold canvas").EvaluateAsync<long[]>(Picture);
        Assert.True(picture[0] > 8, $"The picture has {picture[0]} colours: it is blank.");
    }

    private static async Task<long[]> OtherAsync(ILocator canvas, long before)
    {
        for (var i = 0; i < 100; i++)
        {
            var now = await canvas.EvaluateAsync<long[]>(Picture);
            if (now[1] != before && now[0] > 1)
            {
                return now;
            }

            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        throw new TimeoutException("The picture did not change.");
    }
}
