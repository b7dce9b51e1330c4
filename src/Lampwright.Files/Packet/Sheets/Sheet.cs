namespace Lampwright.Files.Packet.Sheets;

/// <summary>One sheet of the packet inside its frame, millimetres from the upper left corner of the paper.</summary>
/// <param name="Ink">What it is drawn with.</param>
/// <param name="Left">Left of the field that may be filled.</param>
/// <param name="Top">Top of it.</param>
/// <param name="Right">Right of it.</param>
/// <param name="Bottom">Bottom of it, above the title block.</param>
internal sealed record Sheet(PaperInk Ink, double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;
}
