using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace Lampwright.Files.Packet.Fonts;

/// <summary>Hands the carried typeface to the PDF library, which then asks the machine for no font at all.</summary>
internal sealed class InterResolver : IFontResolver
{
    private static readonly Lock gate = new();

    /// <summary>A font of the packet; size in points.</summary>
    public static XFont Font(Weight weight, double points)
    {
        Install();
        return new XFont("Inter " + weight, points, XFontStyleEx.Regular);
    }

    private static void Install()
    {
        lock (gate)
        {
            GlobalFontSettings.FontResolver ??= new InterResolver();
        }
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        Enum.GetValues<Weight>().Any(w => familyName == "Inter " + w) ? new FontResolverInfo(familyName) : null;

    public byte[]? GetFont(string faceName) =>
        Enum.TryParse<Weight>(faceName["Inter ".Length..], out var weight) ? Typeface.TabularBytes(weight) : null;
}
