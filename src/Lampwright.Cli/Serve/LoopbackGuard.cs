namespace Lampwright.Cli.Serve;

/// <summary>Lets in only requests that this machine's own browser makes to the board itself.</summary>
/// <remarks>
/// Binding to the loopback address keeps other machines out, but not pages of other sites that run in the same browser: a name
/// that resolves to 127.0.0.1 shows in the Host header, a foreign page's socket or form in the Origin header. Both are held
/// against the address the board was opened at, for every request, the socket's included.
/// </remarks>
internal static class LoopbackGuard
{
    /// <summary>Refuses foreign hosts and origins in one plain sentence and gives the answers of the rest their headers.</summary>
    public static async Task InvokeAsync(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        if (!IsOwnHost(request.Host))
        {
            await RefuseAsync(context, "The board answers only to localhost and 127.0.0.1.");
            return;
        }

        foreach (var origin in request.Headers.Origin)
        {
            if (!IsOwnOrigin(origin, request.Host))
            {
                await RefuseAsync(context, "The board answers only to its own pages.");
                return;
            }
        }

        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        await next(context);
    }

    // Attributes of style come from drawings that are put in as they are printed; style elements and scripts must be files of the board.
    private static readonly string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; style-src-attr 'unsafe-inline'; img-src 'self' data:; "
        + "font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'";

    private static bool IsOwnHost(HostString host) =>
        string.Equals(host.Host, "localhost", StringComparison.OrdinalIgnoreCase)
        || string.Equals(host.Host, "127.0.0.1", StringComparison.Ordinal);

    private static bool IsOwnOrigin(string? origin, HostString host) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var uri)
        && string.Equals(uri.Scheme, Uri.UriSchemeHttp, StringComparison.Ordinal)
        && string.Equals(uri.Host, host.Host, StringComparison.OrdinalIgnoreCase)
        && uri.Port == (host.Port ?? 80);

    private static Task RefuseAsync(HttpContext context, string sentence)
    {
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(sentence, context.RequestAborted);
    }
}
