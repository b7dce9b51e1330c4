using Lampwright.Files.Packet;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Charts;

/// <summary>Lays a chart out and draws it.</summary>
/// <remarks>
/// Own layout, because paper and browser need the same picture with the carried typeface, tabular figures, bands and readouts. The
/// caption of the second axis stands level above it, so that nobody has to turn his head.
/// </remarks>
public static class ChartDrawing
{
    private const int MostLines = 3;

    /// <summary>Draws a chart into a box.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="ink">What it is drawn on.</param>
    /// <param name="x">Left of the box.</param>
    /// <param name="y">Top of the box.</param>
    /// <param name="width">Width of the box.</param>
    /// <param name="height">Height of the box.</param>
    /// <param name="size">Height of the text's em; everything else is in proportion.</param>
    public static void Draw(Chart chart, IInk ink, double x, double y, double width, double height, double size)
    {
        var top = y;
        if (chart.Title.Length > 0)
        {
            top += size * 1.3;
            ink.Text(chart.Title, x, top, new(size * 1.2, Palette.Ink, Weight: Weight.SemiBold));
        }

        if (chart.Says.Length > 0)
        {
            top += size * 1.45;
            ink.Text(chart.Says, x, top, new(size * 0.95, Palette.Soft));
        }

        top += size * 0.9;
        top = Legend(chart, ink, x, top, width, size);
        var frame = Frame.Of(chart, x, top + (size * 1.6), width, y + height, size);
        Grid(chart, ink, frame, x, size);
        ChartLayers.Draw(chart, ink, frame, size);
    }

    private static double Legend(Chart chart, IInk ink, double x, double top, double width, double size)
    {
        var named = chart.Layers.Where(l => l.Name.Length > 0 && l is LineLayer or DotLayer).ToList();
        if (named.Count < 2)
        {
            return top;
        }

        var (at, line) = (x, top + (size * 0.8));
        foreach (var layer in named)
        {
            var length = Typeface.WidthOf(layer.Name, size) + (size * 3.4);
            if (at > x && at + length > x + width)
            {
                (at, line) = (x, line + (size * 1.5));
            }

            var middle = line - (size * 0.35);
            if (layer is DotLayer)
            {
                ink.Line(
                    at + (size * 0.9),
                    middle - (size * 0.55),
                    at + (size * 0.9),
                    middle + (size * 0.55),
                    new(layer.Tint, size * 0.28)
                );
                ink.Circle(at + (size * 0.9), middle, size * 0.3, new(Palette.Paper, size * 0.08), layer.Tint);
            }
            else
            {
                ink.Line(at, middle, at + (size * 1.8), middle, ChartLayers.StrokeOf((LineLayer)layer, size));
            }

            ink.Text(layer.Name, at + (size * 2.2), line, new(size, Palette.Ink));
            at += length;
        }

        return line + (size * 0.4);
    }

    private static void Grid(Chart chart, IInk ink, Frame frame, double left, double size)
    {
        var thin = new Stroke(Palette.Rule, size * 0.05);
        ink.Text(chart.Y.Caption, left, frame.Top - (size * 0.8), new(size * 0.95, Palette.Soft));
        foreach (var tick in frame.Y.Ticks)
        {
            var at = frame.Y.At(tick);
            if (!chart.IsToScale)
            {
                ink.Line(frame.Left, at, frame.Right, at, thin);
            }

            ink.Text(
                frame.Y.Text(tick),
                frame.Left - (size * 0.5),
                at + (size * 0.36),
                new(size, Palette.Soft, Anchor.End)
            );
        }

        if (!chart.IsToScale && frame.Y.Least < 0 && frame.Y.Most > 0)
        {
            ink.Line(frame.Left, frame.Y.At(0), frame.Right, frame.Y.At(0), new(Palette.Ink, size * 0.07));
        }

        ink.Line(frame.Left, frame.Bottom, frame.Right, frame.Bottom, new(Palette.Ink, size * 0.09));
        var places = chart.X.Places;
        foreach (var tick in frame.X.Ticks)
        {
            var at = frame.X.At(tick);
            var text = places.Count > 0 ? places[(int)tick] : frame.X.Text(tick);
            ink.Line(at, frame.Bottom, at, frame.Bottom + (size * 0.35), new(Palette.Ink, size * 0.07));
            if (frame.PlacesStand)
            {
                ink.Text(
                    text,
                    at + (size * 0.36),
                    frame.Bottom + (size * 0.7),
                    new(size * 0.95, Palette.Ink, Anchor.End, TurnDeg: 90)
                );
            }
            else
            {
                var room = places.Count > 0 ? (frame.Right - frame.Left) / places.Count : double.PositiveInfinity;
                var line = frame.Bottom + (size * 1.5);
                foreach (var words in places.Count > 0 ? Texts.Lines(text, room, size) : [text])
                {
                    ink.Text(words, at, line, new(size, Palette.Ink, Anchor.Middle));
                    line += size * 1.2;
                }
            }
        }

        ink.Text(chart.X.Caption, frame.Right, frame.CaptionLine, new(size * 0.95, Palette.Soft, Anchor.End));
    }

    /// <summary>Where the axes of a chart lie.</summary>
    internal sealed record Frame(
        double Left,
        double Right,
        double Top,
        double Bottom,
        double CaptionLine,
        bool PlacesStand,
        Scale X,
        Scale Y
    )
    {
        public static Frame Of(Chart chart, double x, double top, double width, double end, double size)
        {
            var right = x + width - (size * 0.6);
            var places = chart.X.Places;
            var rough = Math.Max(size, right - x - (size * 4));
            var lines = places.Count == 0 ? 1 : LinesOfPlaces(places, rough / places.Count * 0.92, size);
            var stand = lines > MostLines;
            var widest = places.Select(p => Typeface.WidthOf(p, size)).DefaultIfEmpty(0).Max();
            var caption = end - (size * 0.3);
            var bottom =
                caption
                - (chart.X.Caption.Length > 0 ? size * 1.4 : 0)
                - (stand ? widest + size : size * (0.5 + (1.2 * lines)));
            var (xs, ys) = Numbers(chart);
            var scaleY = Scale.Of(chart.Y, ys, bottom, top, (int)Math.Clamp((bottom - top) / (size * 3.2), 2, 8));
            var left =
                x
                + scaleY.Ticks.Select(t => Typeface.WidthOf(scaleY.Text(t), size)).DefaultIfEmpty(0).Max()
                + (size * 0.6);
            var scaleX = Scale.Of(chart.X, xs, left, right, (int)Math.Clamp((right - left) / (size * 6), 2, 12));
            var frame = new Frame(left, right, top, bottom, caption, stand, scaleX, scaleY);
            return chart.IsToScale ? frame.ToScale() : frame;
        }

        /// <summary>Lines that the names of the places need when they are broken at spaces.</summary>
        private static int LinesOfPlaces(IReadOnlyList<string> places, double width, double size) =>
            places.Any(p => p.Split(' ').Any(word => Typeface.WidthOf(word, size) > width))
                ? MostLines + 1
                : places.Max(p => Texts.Lines(p, width, size).Count);

        private Frame ToScale()
        {
            var unit = Math.Min((Right - Left) / (X.Most - X.Least), (Bottom - Top) / (Y.Most - Y.Least));
            var (right, top) = (Left + (unit * (X.Most - X.Least)), Bottom - (unit * (Y.Most - Y.Least)));
            return this with { Right = right, Top = top, X = X with { To = right }, Y = Y with { To = top } };
        }

        private static (List<double> X, List<double> Y) Numbers(Chart chart)
        {
            var (xs, ys) = (new List<double>(), new List<double>());
            foreach (var layer in chart.Layers)
            {
                switch (layer)
                {
                    case LineLayer line:
                        xs.AddRange(line.Points.Select(p => p.X));
                        ys.AddRange(line.Points.Select(p => p.Y));
                        break;
                    case DotLayer dots:
                        xs.AddRange(dots.Points.Select(p => p.X));
                        ys.AddRange(dots.Points.SelectMany(p => new[] { p.Y.Low, p.Y.Value, p.Y.High }));
                        break;
                    case BarLayer bars:
                        ys.AddRange(bars.Bars.SelectMany(b => new[] { b.From, b.To }));
                        break;
                    case LevelLayer level:
                        ys.Add(level.Level);
                        break;
                    case MarkLayer mark:
                        xs.Add(mark.X);
                        ys.AddRange([mark.Y.Low, mark.Y.High]);
                        break;
                }
            }

            return (xs, ys);
        }
    }
}
