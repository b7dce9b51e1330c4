using System.Net;
using Lampwright.Web;
using Lampwright.Web.Desk;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Lampwright.Cli.Serve;

/// <summary>Serves the board on the loopback address until it is told to end.</summary>
public static class BoardHost
{
    /// <summary>Serves a desk and says its address once it listens.</summary>
    /// <param name="desk">What lies between the pages and the design file.</param>
    /// <param name="port">Port, 0 for any free one.</param>
    /// <param name="listening">Told the address once the board can be opened.</param>
    /// <param name="cancellation">Ends the board.</param>
    public static async Task ServeAsync(
        IBoardDesk desk,
        int port,
        Action<string> listening,
        CancellationToken cancellation
    )
    {
        await using var app = Build(desk, port);
        await app.StartAsync(cancellation);
        listening(Address(app));
        await app.WaitForShutdownAsync(cancellation);
    }

    private static WebApplication Build(IBoardDesk desk, int port)
    {
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions
            {
                ApplicationName = typeof(BoardHost).Assembly.GetName().Name,
                ContentRootPath = AppContext.BaseDirectory,
                // Settings in the environment or beside the program do not change what the board lets in.
                EnvironmentName = "Production",
                Args = [],
            }
        );
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, port));
        builder.Logging.ClearProviders();
        builder.Services.AddSingleton(desk);
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddAntiforgery(o => o.Cookie.SameSite = SameSiteMode.Strict);
        builder
            .Services.AddRazorComponents()
            .AddInteractiveServerComponents(o => o.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(10));

        var app = builder.Build();
        app.Use(next => context => LoopbackGuard.InvokeAsync(context, next));
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapRazorComponents<App>()
            .AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = "'none'");
        BoardFiles.Map(app);
        return app;
    }

    private static string Address(WebApplication app)
    {
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>();
        return addresses?.Addresses.FirstOrDefault() ?? "";
    }
}
