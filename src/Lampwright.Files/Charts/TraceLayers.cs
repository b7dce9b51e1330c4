using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Charts;

/// <summary>Draws what belongs to a course over time: filled areas, moments, and stretches that tell their numbers.</summary>
internal static class TraceLayers
{
    private const double Tone = 0.5;

    public static void Area(AreaLayer layer, IInk ink, ChartDrawing.Frame frame, double size)
    {
        var up = frame.Up(layer);
        foreach (var piece in ClippedLine.Pieces(layer.Points, frame.X, up))
        {
            var foot = up.At(Math.Max(0, up.Least));
            ink.Path([(piece[0].X, foot), .. piece, (piece[^1].X, foot)], true, null, layer.Tint, Tone);
            ink.Path(piece, false, new(layer.Tint, size * 0.12));
        }
    }

    /// <summary>The area's sign beside its name.</summary>
    public static void Sign(AreaLayer layer, IInk ink, double left, double middle, double size)
    {
        var (right, top, foot) = (left + (size * 1.8), middle - (size * 0.4), middle + (size * 0.4));
        ink.Path([(left, foot), (left, top), (right, top), (right, foot)], true, null, layer.Tint, Tone);
        ink.Line(left, top, right, top, new(layer.Tint, size * 0.12));
    }

    public static void Moments(MomentLayer layer, IInk ink, ChartDrawing.Frame frame, double size)
    {
        var rows = new double[MomentNames.Rows(layer)];
        Array.Fill(rows, double.NegativeInfinity);
        var leaders = new List<double>();
        foreach (var moment in layer.Moments.Where(m => frame.X.Holds(m.X)))
        {
            var at = frame.X.At(moment.X);
            ink.Line(at, frame.Top, at, frame.Top + (size * 0.6), new(layer.Tint, size * 0.1));
            var width = Typeface.WidthOf(moment.Words, size * 0.9, Weight.Medium);
            var left = Math.Max(frame.Left, Math.Min(at + (size * 0.3), frame.Right - width));
            // The highest row from which the line down to the chart runs through no name.
            var row = 1 + Array.FindLastIndex(rows, end => end >= Math.Min(left, at) - (size * 0.5));
            if (width > 0 && row < rows.Length && !leaders.Exists(x => x > left && x < left + width))
            {
                var foot = frame.Top - (size * 0.35) - ((rows.Length - 1 - row) * MomentNames.Line * size);
                ink.Line(
                    at,
                    left < at ? foot + (size * 0.2) : foot - (size * 0.75),
                    at,
                    frame.Bottom,
                    new(layer.Tint, size * 0.06, [size * 0.3, size * 0.3])
                );
                ink.Text(moment.Words, left, foot, new(size * 0.9, layer.Tint, Weight: Weight.Medium));
                rows[row] = left + width;
                leaders.Add(at);
            }
        }
    }

    public static void Tells(TellLayer layer, IInk ink, ChartDrawing.Frame frame)
    {
        foreach (var tell in layer.Tells)
        {
            var (left, right) = (frame.X.At(tell.From), frame.X.At(tell.To));
            ink.Readout(
                left,
                frame.Top,
                right - left,
                frame.Bottom - frame.Top,
                new(layer.Name, tell.At, tell.Text, tell.High, tell.Low, tell.High)
            );
        }
    }
}

/// <summary>The room above a chart for the names of its moments.</summary>
internal static class MomentNames
{
    /// <summary>Height of a row of names in ems.</summary>
    public static double Line => 1.25;

    /// <summary>Rows that the names of a layer are given.</summary>
    public static int Rows(MomentLayer layer) => Math.Min(3, layer.Moments.Count(m => m.Words.Length > 0));

    /// <summary>Height that the names of a chart need.</summary>
    public static double HeightIn(Chart chart, double size) =>
        chart.Layers.OfType<MomentLayer>().Select(Rows).DefaultIfEmpty(0).Max() * Line * size;
}
