using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Lampwright.Files.Packet;

/// <summary>A PDF that is being written, page by page, in millimetres.</summary>
internal sealed class PdfBook : IDisposable
{
    private readonly PdfDocument document = new();
    private readonly List<XGraphics> open = [];
    private readonly Dictionary<(Fonts.Weight Weight, double Size), XFont> fonts = [];

    public PdfBook(string title)
    {
        document.Info.Title = title;
        document.Info.Creator = "Lampwright";

        // The reader's own "fit to page" would spoil everything that is full size.
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
        document.ViewerPreferences.Elements.SetBoolean("/DisplayDocTitle", true);
        document.Options.CompressContentStreams = true;
    }

    public int PageCount => document.PageCount;

    /// <summary>A new page; its ink may be used until the book is saved.</summary>
    public PaperInk AddPage(Paper paper, string bookmark)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(paper.WidthMm);
        page.Height = XUnit.FromMillimeter(paper.HeightMm);
        if (bookmark.Length > 0)
        {
            document.Outlines.Add(PaperInk.Readable(bookmark), page);
        }

        var graphics = XGraphics.FromPdfPage(page, XGraphicsUnit.Millimeter);
        open.Add(graphics);
        return new PaperInk(graphics, fonts);
    }

    public void Save(Stream stream)
    {
        CloseAll();
        document.Save(stream, closeStream: false);
    }

    public void Dispose()
    {
        CloseAll();
        document.Dispose();
    }

    private void CloseAll()
    {
        foreach (var graphics in open)
        {
            graphics.Dispose();
        }

        open.Clear();
    }
}
