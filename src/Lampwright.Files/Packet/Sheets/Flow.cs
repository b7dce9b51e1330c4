using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>Fills sheets from top to bottom and takes a new one when the last is full.</summary>
internal sealed class Flow(PacketBook book, SheetTitle title)
{
    private Sheet sheet = book.Add(title);

    public PaperInk Ink => sheet.Ink;

    public double Left => sheet.Left;

    public double Width => sheet.Width;

    public double Y { get; private set; } = double.NaN;

    public double Room => sheet.Bottom - Y;

    /// <summary>Begins at the top of the first sheet.</summary>
    public Flow Begun()
    {
        Y = sheet.Top;
        return this;
    }

    /// <summary>Takes a new sheet when less than so much is left; true when it did.</summary>
    public bool Need(double height)
    {
        if (Y + height <= sheet.Bottom + 1e-6 || Y <= sheet.Top + 1e-6)
        {
            return false;
        }

        sheet = book.Add(title, isBookmark: false);
        Y = sheet.Top;
        return true;
    }

    public void Skip(double height) => Y += height;

    /// <summary>The large head of a sheet.</summary>
    public void Title(string text, string beside = "")
    {
        Skip(6.5);
        var shown = Texts.Fitting(PaperInk.Readable(text), Width, 6.5, Weight.SemiBold);
        Ink.Text(shown, Left, Y, new(6.5, Palette.Ink, Weight: Weight.SemiBold));
        if (beside.Length > 0)
        {
            var from = Left + Typeface.WidthOf(shown, 6.5, Weight.SemiBold) + 4;
            Ink.Text(
                Texts.Fitting(PaperInk.Readable(beside), Left + Width - from, 3.2),
                from,
                Y,
                new(3.2, Palette.Soft)
            );
        }

        Skip(5);
    }

    /// <summary>A head within a sheet.</summary>
    public void Head(string text, string beside = "")
    {
        Need(31);
        Skip(5.5);
        var shown = Texts.Fitting(PaperInk.Readable(text), Width, 4.2, Weight.SemiBold);
        Ink.Text(shown, Left, Y, new(4.2, Palette.Ink, Weight: Weight.SemiBold));
        if (beside.Length > 0)
        {
            var from = Left + Typeface.WidthOf(shown, 4.2, Weight.SemiBold) + 3;
            Ink.Text(
                Texts.Fitting(PaperInk.Readable(beside), Left + Width - from, 2.8),
                from,
                Y,
                new(2.8, Palette.Soft)
            );
        }

        Skip(2.5);
    }

    /// <summary>A paragraph.</summary>
    public void Paragraph(
        string text,
        double size = 3,
        Tint? tint = null,
        Weight weight = Weight.Regular,
        double indent = 0
    )
    {
        foreach (var line in Texts.Lines(PaperInk.Readable(text), Width - indent, size, weight))
        {
            Need(size * 1.45);
            Skip(size * 1.1);
            Ink.Text(line, Left + indent, Y, new(size, tint ?? Palette.Ink, Weight: weight));
            Skip(size * 0.35);
        }
    }
}
