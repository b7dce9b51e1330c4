using System.IO.Compression;
using System.Net;

namespace Lampwright.Browser;

public sealed class GuardTests(BrowserFixture browser)
{
    [Theory]
    [InlineData("steps", "evil.example", null, HttpStatusCode.Forbidden)]
    [InlineData("steps", null, "http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("_blazor/negotiate", null, "http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("_blazor", "evil.example", "http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("steps", null, "http://127.0.0.1:1", HttpStatusCode.Forbidden)]
    [InlineData("steps", null, "null", HttpStatusCode.Forbidden)]
    [InlineData("steps", null, null, HttpStatusCode.OK)]
    public async Task Only_this_machines_own_pages_are_answered(
        string path,
        string? host,
        string? origin,
        HttpStatusCode expected
    )
    {
        browser.Need();
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, $"{browser.Shared.Address}/{path}");
        request.Headers.Host = host;
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin);
        }

        using var answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(expected, answer.StatusCode);
    }

    [Fact]
    public void The_board_listens_on_the_loopback_address_alone()
    {
        browser.Need();
        var port = new Uri(browser.Shared.Address).Port;
        var listeners = System
            .Net.NetworkInformation.IPGlobalProperties.GetIPGlobalProperties()
            .GetActiveTcpListeners()
            .Where(l => l.Port == port);
        Assert.All(listeners, l => Assert.True(IPAddress.IsLoopback(l.Address), l.ToString()));
    }

    [Fact]
    public async Task The_packet_comes_as_a_zip_with_its_papers()
    {
        browser.Need();
        await using var board = await browser.OpenAsync(browser.Shared.Address, "packet");
        var download = await board.Page.RunAndWaitForDownloadAsync(() => board.Page.Locator("a.download").ClickAsync());
        await using var archive = await ZipFile.OpenReadAsync(
            await download.PathAsync(),
            TestContext.Current.CancellationToken
        );
        var names = archive.Entries.Select(e => e.FullName).ToList();
        Assert.Contains("packet.pdf", names);
        Assert.Contains("templates.pdf", names);
        Assert.Contains("evaluation.json", names);
        Assert.Contains(names, n => n.EndsWith(".dxf", StringComparison.Ordinal));
    }
}
