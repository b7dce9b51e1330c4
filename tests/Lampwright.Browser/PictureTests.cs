using Microsoft.Playwright;

namespace Lampwright.Browser;

/// <summary>Makes the pictures of the guide, into the folder that LAMPWRIGHT_PICTURES names (eng/screenshots does) or one that is thrown away.</summary>
public sealed class PictureTests(BrowserFixture browser)
{
    private static readonly string? Kept = Environment.GetEnvironmentVariable("LAMPWRIGHT_PICTURES");

    private static readonly string Folder = Kept ?? Directory.CreateTempSubdirectory("lampwright-pictures").FullName;

    private static readonly Look Phone = new("phone, dark", 390, 844, true);

    [Fact]
    public async Task Pictures_of_the_guide()
    {
        browser.Need();
        Directory.CreateDirectory(Folder);
        var started = DateTime.UtcNow;
        await TakeAsync("steps", "steps", Look.Wide);
        await TakeAsync("heat", "heat", Look.Wide with { Height = 1150 });
        await TakeAsync("metal?part=tray", "metal", Look.Wide with { IsDark = true, Height = 1150 });
        await TakeAsync("metal?part=tray", "metal-unfolding", Look.Wide, 45);
        await TakeAsync("fit-up", "fit-up", Look.Wide);
        await TakeAsync("light#comes", "phone-light", Phone);
        await TakeAsync("steps", "phone-ledger", Phone, openLedger: true);
        string[] names = ["steps", "heat", "metal", "metal-unfolding", "fit-up", "phone-light", "phone-ledger"];
        Assert.All(
            names.Select(n => new FileInfo(Path.Combine(Folder, n + ".png"))),
            f => Assert.True(f.Exists && f.Length > 10_000 && f.LastWriteTimeUtc >= started, f.Name)
        );
        if (Kept is null)
        {
            Directory.Delete(Folder, recursive: true);
        }
    }

    private async Task TakeAsync(string path, string name, Look look, int? fold = null, bool openLedger = false)
    {
        await using var board = await browser.OpenAsync(browser.Shared.Address, path, look);
        await board.SettledAsync();
        await board.Page.EvaluateAsync("document.fonts.ready");
        if (await board.Page.Locator(".fold").CountAsync() > 0)
        {
            await board.Page.WaitForSelectorAsync(".fold[data-drawn=yes]");
        }

        if (fold is { } percent)
        {
            await board.Page.Locator(".slide input").FillAsync($"{percent}");
            await board.Page.EvaluateAsync("document.activeElement.blur()");
        }

        if (path.StartsWith("metal", StringComparison.Ordinal))
        {
            // What is said of the part stands above its picture.
            await board.Page.EvaluateAsync(
                "scrollTo(0, document.querySelector('.fold').closest('section').offsetTop - 90)"
            );
        }

        if (openLedger)
        {
            await board.Page.Locator(".ledger summary").ClickAsync();
        }

        // The 3D view draws with the next frame.
        await board.Page.WaitForTimeoutAsync(300);
        await board.Page.ScreenshotAsync(
            new() { Path = System.IO.Path.Combine(Folder, name + ".png"), Animations = ScreenshotAnimations.Disabled }
        );
    }
}
