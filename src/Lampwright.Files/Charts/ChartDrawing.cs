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
        var names = MomentNames.HeightIn(chart, size);
        var frame = Frame.Of(chart, x, top + (size * 1.6) + names, width, y + height, size);
        Grid(chart, ink, frame, x, frame.Top - (size * 0.8) - names, size);
        SecondAxis(chart, ink, frame, x + width, frame.Top - (size * 0.8) - names, size);
        ChartLayers.Draw(chart, ink, frame, size);
    }

    private static double Legend(Chart chart, IInk ink, double x, double top, double width, double size)
    {
        var named = chart
            .Layers.Where(l => l.Name.Length > 0 && l is LineLayer or CourseLayer or DotLayer or AreaLayer or PinLayer)
            .ToList();
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
            else if (layer is PinLayer pins)
            {
                PinLayers.Sign(pins, ink, at + (size * 0.9), middle, size);
            }
            else if (layer is AreaLayer area)
            {
                TraceLayers.Sign(area, ink, at, middle, size);
            }
            else
            {
                var curve = layer is CourseLayer course ? CourseLayers.LineOf(course) : (LineLayer)layer;
                ink.Line(at, middle, at + (size * 1.8), middle, ChartLayers.StrokeOf(curve, size));
            }

            ink.Text(layer.Name, at + (size * 2.2), line, new(size, Palette.Ink));
            at += length;
        }

        return line + (size * 0.4);
    }

    private static void Grid(Chart chart, IInk ink, Frame frame, double left, double captionLine, double size)
    {
        var thin = new Stroke(Palette.Rule, size * 0.05);
        ink.Text(chart.Y.Caption, left, captionLine, new(size * 0.95, Palette.Soft));
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

    /// <summary>The axis at the right: its numbers and its caption; the grid belongs to the axis at the left.</summary>
    private static void SecondAxis(Chart chart, IInk ink, Frame frame, double right, double captionLine, double size)
    {
        if (chart.Second is not { } axis || frame.Second is not { } scale)
        {
            return;
        }

        ink.Text(axis.Caption, right, captionLine, new(size * 0.95, Palette.Soft, Anchor.End));
        foreach (var tick in scale.Ticks)
        {
            var at = scale.At(tick);
            ink.Line(frame.Right, at, frame.Right + (size * 0.35), at, new(Palette.Ink, size * 0.07));
            ink.Text(scale.Text(tick), right, at + (size * 0.36), new(size, Palette.Soft, Anchor.End));
        }
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
        Scale Y,
        Scale? Second
    )
    {
        /// <summary>The upward scale that a layer is read on.</summary>
        public Scale Up(ChartLayer layer) => layer.OnSecond && Second is { } second ? second : Y;

        public static Frame Of(Chart chart, double x, double top, double width, double end, double size)
        {
            var places = chart.X.Places;
            var rough = Math.Max(size, width - (size * 4.6));
            var lines = places.Count == 0 ? 1 : LinesOfPlaces(places, rough / places.Count * 0.92, size);
            var stand = lines > MostLines;
            var widest = places.Select(p => Typeface.WidthOf(p, size)).DefaultIfEmpty(0).Max();
            var caption = end - (size * 0.3);
            var bottom =
                caption
                - (chart.X.Caption.Length > 0 ? size * 1.4 : 0)
                - (stand ? widest + size : size * (0.5 + (1.2 * lines)));
            var ticks = (int)Math.Clamp((bottom - top) / (size * 3.2), 2, 8);
            var (xs, ys, seconds) = ChartNumbers.Of(chart);
            var scaleY = Scale.Of(chart.Y, ys, bottom, top, ticks);
            var second = chart.Second is { } axis ? Scale.Of(axis, seconds, bottom, top, ticks) : null;
            var left = x + WidestTick(scaleY, size) + (size * 0.6);
            var right =
                x + width - (size * (places.Count > 0 ? 0.6 : 1.2)) - (second is null ? 0 : WidestTick(second, size));
            var scaleX = Scale.Of(chart.X, xs, left, right, (int)Math.Clamp((right - left) / (size * 6), 2, 12));
            var frame = new Frame(left, right, top, bottom, caption, stand, scaleX, scaleY, second);
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

        private static double WidestTick(Scale scale, double size) =>
            scale.Ticks.Select(t => Typeface.WidthOf(scale.Text(t), size)).DefaultIfEmpty(0).Max();
    }
}
