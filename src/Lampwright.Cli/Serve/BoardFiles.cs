using Lampwright.Web.Desk;
using Lampwright.Web.Fold;

namespace Lampwright.Cli.Serve;

/// <summary>What the pages fetch beside themselves: scenes for the 3D view and the packet.</summary>
internal static class BoardFiles
{
    /// <summary>Adds their addresses.</summary>
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(
            "/board/part/{name}",
            (string name, IBoardDesk desk) => Scene(FoldScene.OfPart(desk.State.Light, name))
        );
        routes.MapGet("/board/assembly", (IBoardDesk desk) => Scene(FoldScene.OfAssembly(desk.State.Light)));
        routes.MapGet("/board/packet.zip", PacketAsync);
        routes.MapGet("/board/font/{name}.ttf", Font);
    }

    private static IResult Scene(byte[]? json) =>
        json is null ? Results.NotFound() : Results.Bytes(json, "application/json");

    // The packet's own typeface, so that screen and paper read alike on a machine without fonts.
    private static IResult Font(string name, HttpContext context)
    {
        var font = typeof(Lampwright.Files.Charts.ChartSvg).Assembly.GetManifestResourceStream($"fonts/{name}.ttf");
        context.Response.Headers.CacheControl = "max-age=86400";
        return font is null ? Results.NotFound() : Results.Stream(font, "font/ttf");
    }

    private static async Task<IResult> PacketAsync(IBoardDesk desk, CancellationToken cancellation)
    {
        try
        {
            // Made whole before it is sent, so that a packet that cannot be made is a sentence and no half file.
            var zip = await desk.PacketAsync(cancellation);
            return Results.Bytes(
                zip,
                "application/zip",
                $"{Path.GetFileNameWithoutExtension(desk.State.FileName)}-packet.zip"
            );
        }
        catch (InvalidOperationException e)
        {
            return Results.Text(e.Message, "text/plain", statusCode: StatusCodes.Status409Conflict);
        }
    }
}
