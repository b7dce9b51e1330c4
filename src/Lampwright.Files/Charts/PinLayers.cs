using Lampwright.Files.Packet;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Charts;

/// <summary>Draws points that matter, filled or as open rings, with their words where there is room.</summary>
internal static class PinLayers
{
    public static void Draw(PinLayer layer, IInk ink, ChartDrawing.Frame frame, LabelRoom room, double size)
    {
        var up = frame.Up(layer);
        foreach (var pin in layer.Pins.Where(p => frame.X.Holds(p.X) && up.Holds(p.Y)))
        {
            var (x, y) = (frame.X.At(pin.X), up.At(pin.Y));
            room.Take(x - (size * 0.5), y - (size * 0.5), x + (size * 0.5), y + (size * 0.5));
            Words(pin, ink, room, x, y, Math.Max(size * 8, (frame.Right - frame.Left) * 0.42), size);
            Sign(layer, ink, x, y, size);
            ink.Readout(
                x - size,
                y - size,
                2 * size,
                2 * size,
                new(layer.Name, pin.Words, pin.Numbers, pin.Y, null, null)
            );
        }
    }

    /// <summary>A filled dot or an open ring.</summary>
    public static void Sign(PinLayer layer, IInk ink, double x, double y, double size)
    {
        if (layer.IsOpen)
        {
            ink.Circle(x, y, size * 0.42, new(layer.Tint, size * 0.2), Palette.Paper);
        }
        else
        {
            ink.Circle(x, y, size * 0.5, new(Palette.Paper, size * 0.1), layer.Tint);
        }
    }

    private static void Words(Pin pin, IInk ink, LabelRoom room, double x, double y, double most, double size)
    {
        var lines = new List<(string Text, TextStyle Style)>();
        foreach (var line in Texts.Lines(pin.Words, most, size, Weight.Medium))
        {
            lines.Add((line, new(size, Palette.Ink, Weight: Weight.Medium)));
        }

        lines.Add((pin.Numbers, new(size * 0.95, Palette.Soft)));
        var width = lines.Max(l => Typeface.WidthOf(l.Text, l.Style.Size, l.Style.Weight)) + (size * 0.5);
        var height = (lines.Count * size * 1.25) + (size * 0.2);
        var (left, top) = room.Beside(x, y, width, height, size * 0.7);
        ink.Path(
            [(left, top), (left + width, top), (left + width, top + height), (left, top + height)],
            true,
            null,
            Palette.Paper,
            0.85
        );
        for (var i = 0; i < lines.Count; i++)
        {
            ink.Text(lines[i].Text, left + (size * 0.25), top + (size * (1 + (1.25 * i))), lines[i].Style);
        }
    }
}
