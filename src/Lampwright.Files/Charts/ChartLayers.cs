using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Charts;

/// <summary>Draws the layers of a chart into its axes.</summary>
internal static class ChartLayers
{
    public static void Draw(Chart chart, IInk ink, ChartDrawing.Frame frame, double size)
    {
        var dotLayers = Math.Max(1, chart.Layers.Count(l => l is DotLayer));
        var labels = new LabelRoom(frame.Left, frame.Top, frame.Right, frame.Bottom);
        if (chart.Layers.Any(l => l is PinLayer))
        {
            foreach (var line in chart.Layers.OfType<LineLayer>())
            {
                foreach (var piece in ClippedLine.Pieces(line.Points, frame.X, frame.Up(line)))
                {
                    labels.TakeLine(piece, size * 0.5);
                }
            }
        }

        foreach (var layer in chart.Layers)
        {
            switch (layer)
            {
                case LineLayer line:
                    Line(chart, line, ink, frame, size);
                    break;
                case CourseLayer course:
                    CourseLayers.Draw(chart, course, ink, frame, size);
                    break;
                case DotLayer dots:
                    Dots(chart, dots, ink, frame, size, dotLayers);
                    break;
                case BarLayer bars:
                    Bars(chart, bars, ink, frame, size);
                    break;
                case CellsLayer cells:
                    Cells(cells, ink, frame, size);
                    break;
                case LevelLayer level:
                    Level(level, ink, frame, size);
                    break;
                case MarkLayer mark:
                    Mark(chart, mark, ink, frame, size);
                    break;
                case AreaLayer area:
                    TraceLayers.Area(area, ink, frame, size);
                    break;
                case MomentLayer moments:
                    TraceLayers.Moments(moments, ink, frame, size);
                    break;
                case TellLayer tells:
                    TraceLayers.Tells(tells, ink, frame);
                    break;
                case PinLayer pins:
                    PinLayers.Draw(pins, ink, frame, labels, size);
                    break;
            }
        }
    }

    public static Stroke StrokeOf(LineLayer layer, double size) =>
        new(layer.Tint, size * 0.16 * layer.Boldness, layer.Dashed ? [size * 0.7, size * 0.4] : []);

    private static void Line(Chart chart, LineLayer layer, IInk ink, ChartDrawing.Frame frame, double size)
    {
        var up = frame.Up(layer);
        var unit = layer.OnSecond ? chart.Second?.Unit ?? "" : chart.Y.Unit;
        var stroke = StrokeOf(layer, size);
        foreach (var piece in ClippedLine.Pieces(layer.Points, frame.X, up))
        {
            ink.Path(piece, false, stroke);
        }

        var half = size * 0.6;
        var every = Math.Max(1, (int)Math.Ceiling(layer.Points.Count / (double)Math.Max(1, layer.MostReadouts)));
        for (var i = every / 2; i < layer.Points.Count && layer.MostReadouts > 0; i += every)
        {
            var (x, y) = layer.Points[i];
            if (!frame.X.Holds(x) || !up.Holds(y))
            {
                continue;
            }

            ink.Readout(
                frame.X.At(x) - half,
                up.At(y) - half,
                2 * half,
                2 * half,
                new(
                    layer.Name,
                    $"{ChartText.Number(x)} {chart.X.Unit}".TrimEnd(),
                    $"{ChartText.Number(y)} {unit}".TrimEnd(),
                    y,
                    null,
                    null
                )
            );
        }
    }

    private static void Dots(Chart chart, DotLayer layer, IInk ink, ChartDrawing.Frame frame, double size, int layers)
    {
        var spacing = Math.Abs(frame.X.At(1) - frame.X.At(0));
        double Place(double x) => frame.X.At(x) + (layer.Shift * spacing);
        if (layer.Joined && layer.Points.Count > 1)
        {
            ink.Path(
                [.. layer.Points.Select(p => (Place(p.X), frame.Y.At(p.Y.Value)))],
                false,
                new(layer.Tint, size * 0.06)
            );
        }

        foreach (var (x, y) in layer.Points)
        {
            var (at, low, mid, high) = (Place(x), frame.Y.At(y.Low), frame.Y.At(y.Value), frame.Y.At(y.High));
            if (low - high > size * 0.2)
            {
                var half = size * 0.14;
                ink.Path(
                    [(at - half, low), (at + half, low), (at + half, high), (at - half, high)],
                    true,
                    null,
                    layer.Tint,
                    0.32
                );
            }

            ink.Circle(at, mid, size * 0.3, new(Palette.Paper, size * 0.08), layer.Tint);
            var width = Math.Max(size, spacing * 0.9 / layers);
            ink.Readout(
                at - (width / 2),
                high - (size * 0.6),
                width,
                low - high + (size * 1.2),
                new(layer.Name, PlaceText(chart, x), ChartText.WithBand(y, chart.Y.Unit), y.Value, y.Low, y.High)
            );
        }
    }

    private static void Bars(Chart chart, BarLayer layer, IInk ink, ChartDrawing.Frame frame, double size)
    {
        var half = Math.Min(size * 1.6, Math.Abs(frame.X.At(1) - frame.X.At(0)) * 0.3);
        for (var i = 0; i < layer.Bars.Count; i++)
        {
            var bar = layer.Bars[i];
            var (at, a, b) = (frame.X.At(bar.X), frame.Y.At(bar.From), frame.Y.At(bar.To));
            var (top, bottom) = (Math.Min(a, b), Math.Max(a, b));
            if (bottom - top < size * 0.12)
            {
                bottom = top + (size * 0.12);
            }

            ink.Path(
                [(at - half, bottom), (at + half, bottom), (at + half, top), (at - half, top)],
                true,
                null,
                layer.Tint
            );
            if (i + 1 < layer.Bars.Count)
            {
                ink.Line(at + half, b, frame.X.At(layer.Bars[i + 1].X) - half, b, new(Palette.Soft, size * 0.06));
            }

            // Beside the bar where there is paper, above it where the next stands in the way.
            ink.Text(bar.Text, at, top - (size * 0.4), new(size, Palette.Ink, Anchor.Middle, Weight.Medium));
            ink.Readout(
                at - half,
                top,
                2 * half,
                bottom - top,
                new(
                    layer.Name,
                    PlaceText(chart, bar.X),
                    ChartText.WithBand(bar.Size, "K"),
                    bar.Size.Value,
                    bar.Size.Low,
                    bar.Size.High
                )
            );
        }
    }

    private static void Cells(CellsLayer layer, IInk ink, ChartDrawing.Frame frame, double size)
    {
        var rows = layer.Rows;
        var (least, most) = (rows.Min(r => r.Min()), rows.Max(r => r.Max()));
        var (width, height) = (frame.Right - frame.Left, frame.Bottom - frame.Top);
        for (var r = 0; r < rows.Count; r++)
        {
            for (var c = 0; c < rows[r].Count; c++)
            {
                var (w, h) = (width / rows[r].Count, height / rows.Count);
                var (x, y) = (frame.Left + (c * w), frame.Bottom - ((r + 1) * h));
                var share = rows[r][c];
                var tone = most > least ? (share - least) / (most - least) : 1;
                ink.Path([(x, y), (x + w, y), (x + w, y + h), (x, y + h)], true, null, layer.Tint, 0.06 + (0.6 * tone));
                var text = ChartText.Fixed(share * 100, 0);
                if (w > Typeface.WidthOf(text, size * 0.9) * 1.1 && h > size * 1.2)
                {
                    ink.Text(
                        text,
                        x + (w / 2),
                        y + (h / 2) + (size * 0.34),
                        new(size * 0.9, Palette.Ink, Anchor.Middle)
                    );
                }

                ink.Readout(x, y, w, h, new(layer.Name, "", $"{text} %", share, null, null));
            }
        }
    }

    private static void Level(LevelLayer layer, IInk ink, ChartDrawing.Frame frame, double size)
    {
        var at = frame.Y.At(layer.Level);
        ink.Line(frame.Left, at, frame.Right, at, new(layer.Tint, size * 0.11, [size * 0.9, size * 0.35]));
        if (layer.Name.Length == 0)
        {
            return;
        }

        // Paper behind the words, so that no line of the grid runs through them.
        var below = at - (size * 1.4) < frame.Top;
        var (foot, width) = (
            below ? at + (size * 1.15) : at - (size * 0.4),
            Typeface.WidthOf(layer.Name, size * 0.95, Weight.Medium)
        );
        ink.Path(
            [
                (frame.Right - width - (size * 0.3), foot - (size * 0.8)),
                (frame.Right, foot - (size * 0.8)),
                (frame.Right, foot + (size * 0.22)),
                (frame.Right - width - (size * 0.3), foot + (size * 0.22)),
            ],
            true,
            null,
            Palette.Paper
        );
        ink.Text(layer.Name, frame.Right, foot, new(size * 0.95, layer.Tint, Anchor.End, Weight.Medium));
    }

    private static void Mark(Chart chart, MarkLayer layer, IInk ink, ChartDrawing.Frame frame, double size)
    {
        var (x, y) = (frame.X.At(layer.X), frame.Y.At(layer.Y.Value));
        var thin = new Stroke(layer.Tint, size * 0.1);
        ink.Line(x, frame.Y.At(layer.Y.Low), x, frame.Y.At(layer.Y.High), thin);
        if (layer.XBand is { } band)
        {
            ink.Line(frame.X.At(band.Low), y, frame.X.At(band.High), y, thin);
        }

        ink.Circle(x, y, size * 0.42, new(Palette.Paper, size * 0.1), layer.Tint);
        var right = x < (frame.Left + frame.Right) / 2;
        ink.Text(
            layer.Name,
            x + (right ? size * 0.8 : -size * 0.8),
            y - (size * 0.6),
            new(size, Palette.Ink, right ? Anchor.Start : Anchor.End, Weight.Medium)
        );
        ink.Readout(
            x - size,
            y - size,
            2 * size,
            2 * size,
            new(
                layer.Name,
                $"{ChartText.Number(layer.X)} {chart.X.Unit}".TrimEnd(),
                ChartText.WithBand(layer.Y, chart.Y.Unit),
                layer.Y.Value,
                layer.Y.Low,
                layer.Y.High
            )
        );
    }

    private static string PlaceText(Chart chart, double x) =>
        chart.X.Places.Count > 0 && x >= 0 && x < chart.X.Places.Count ? chart.X.Places[(int)x] : ChartText.Number(x);
}
