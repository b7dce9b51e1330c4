using Lampwright.Evaluation.Answers;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Geometry;

namespace Lampwright.Files.Charts;

/// <summary>What a section shows.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Scene">The temperatures.</param>
/// <param name="Scale">Their colours.</param>
/// <param name="Unit">Unit of temperatures.</param>
public sealed record SectionPicture(SectionCut Cut, BoxScene Scene, HeatScale Scale, TemperatureUnit Unit);

/// <summary>Draws a light cut open, each thing filled by its temperature, the temperatures beside it, with a scale of colours and one of length.</summary>
public static class SectionDrawing
{
    private static readonly double Line = 1.45;
    private static readonly double ScaleHeight = 3.6;

    /// <summary>Draws a section.</summary>
    /// <param name="picture">What it shows.</param>
    /// <param name="ink">What it is drawn with.</param>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    /// <param name="size">Height of the text's em.</param>
    /// <param name="isKeyed">Whether names stand in a list below, so that a narrow picture keeps room for the light.</param>
    public static void Draw(
        SectionPicture picture,
        IInk ink,
        double x,
        double y,
        double width,
        double height,
        double size,
        bool isKeyed = false
    )
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(ink);
        var labels = SectionLabel.Of(picture.Cut, picture.Scene, picture.Unit);
        var key = isKeyed ? KeyHeight(labels.Count, size) : 0;
        var bottom = y + height - key;
        Scale(picture, ink, x, bottom - (ScaleHeight * size), width, size);
        var room = bottom - y - ((ScaleHeight + 1.8) * size);

        var (least, most) = Reach(picture.Cut);
        var (left, right) = Sides(picture.Cut, labels);
        var (columnL, columnR) = (Column(left, size, isKeyed), Column(right, size, isKeyed));
        var (fieldX, fieldW) = (x + columnL, width - columnL - columnR);
        var scale = Math.Min(fieldW / Math.Max(most.X - least.X, 1), room / Math.Max(most.Y - least.Y, 1));
        var origin = new Vec2(
            fieldX + ((fieldW - (scale * (most.X - least.X))) / 2) - (scale * least.X),
            y + ((room - (scale * (most.Y - least.Y))) / 2) + (scale * most.Y)
        );
        (double X, double Y) Place(Vec2 p) => (origin.X + (scale * p.X), origin.Y - (scale * p.Y));

        Pieces(picture, ink, size, Place);
        Beam(picture.Cut, ink, size, Place, scale);
        Labels(left, ink, x + columnL - (2.2 * size), y, room, size, isKeyed, true, Place);
        Labels(right, ink, x + width - columnR + (2.2 * size), y, room, size, isKeyed, false, Place);
        Ruler(ink, x, y + room + (0.8 * size), size, scale);
        if (isKeyed)
        {
            Key(labels, ink, x, bottom, width, size);
        }
    }

    /// <summary>Height that a section of a width fills, without its list of names, at most a given one.</summary>
    /// <param name="picture">What it shows.</param>
    /// <param name="width">Width.</param>
    /// <param name="most">Most height.</param>
    /// <param name="size">Height of the text's em.</param>
    /// <param name="isKeyed">Whether names stand in a list below.</param>
    public static double HeightFor(SectionPicture picture, double width, double most, double size, bool isKeyed)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var labels = SectionLabel.Of(picture.Cut, picture.Scene, picture.Unit);
        var (left, right) = Sides(picture.Cut, labels);
        var (low, high) = Reach(picture.Cut);
        var field = width - Column(left, size, isKeyed) - Column(right, size, isKeyed);
        var light = field * (high.Y - low.Y) / Math.Max(high.X - low.X, 1);
        var rows = (Math.Max(left.Count, right.Count) + 0.5) * Line * size;
        return Math.Min(most, Math.Max(light, rows) + ((ScaleHeight + 1.8) * size));
    }

    private static (List<SectionLabel> Left, List<SectionLabel> Right) Sides(
        SectionCut cut,
        IReadOnlyList<SectionLabel> labels
    )
    {
        var (least, most) = Reach(cut);
        var middle = (least.X + most.X) / 2;
        return ([.. labels.Where(l => l.At.X < middle)], [.. labels.Where(l => l.At.X >= middle)]);
    }

    private static double Column(List<SectionLabel> side, double size, bool isKeyed) =>
        side.Count == 0 ? 0 : side.Max(l => Width(l, size, isKeyed)) + (2.2 * size);

    /// <summary>Height of the list of names, in the unit of <paramref name="size"/>.</summary>
    /// <param name="count">How many names.</param>
    /// <param name="size">Height of the text's em.</param>
    public static double KeyHeight(int count, double size) => ((count * Line) + 0.9) * size;

    private static void Pieces(SectionPicture picture, IInk ink, double size, Func<Vec2, (double X, double Y)> place)
    {
        var nodes = picture.Scene.Nodes.ToDictionary(n => n.Name, StringComparer.Ordinal);
        var thin = 0.05 * size;
        foreach (var piece in picture.Cut.Pieces)
        {
            var node = piece.Node is { } name ? nodes.GetValueOrDefault(name) : null;
            var isOver = node is { LimitC: { } limit } && node.TemperatureC.Value > limit;
            var fill =
                node is not null ? picture.Scale.At(node.TemperatureC.Value)
                : piece.Kind is SectionKind.LightWay or SectionKind.Body ? Palette.Paper
                : null;
            double[] dashes = piece.IsBeside ? [0.45 * size, 0.3 * size] : [];
            var line =
                piece.Kind is SectionKind.Air or SectionKind.LightWay ? null
                : isOver ? new Stroke(Palette.Stop, 3 * thin, dashes)
                : new Stroke(Palette.Ink, thin, dashes);
            foreach (var outline in piece.Outlines)
            {
                List<(double X, double Y)> points = [.. outline.Select(place)];

                // Sheet is thinner than a line at most sizes: it is drawn a little fatter, in its own colour, with ink round it.
                if (piece.Kind == SectionKind.Sheet)
                {
                    ink.Path(points, true, new((isOver ? Palette.Stop : Palette.Ink), 0.36 * size, dashes));
                    ink.Path(
                        points,
                        true,
                        fill is null ? new(Palette.Paper, 0.24 * size) : new(fill, 0.24 * size),
                        fill
                    );
                    continue;
                }

                ink.Path(points, true, line, fill);
            }
        }
    }

    private static void Beam(
        SectionCut cut,
        IInk ink,
        double size,
        Func<Vec2, (double X, double Y)> place,
        double scale
    )
    {
        if (cut.Beam.Length < 0.9)
        {
            return;
        }

        var unit = cut.Beam.Unit;
        var far = cut.Pieces.SelectMany(p => p.Outlines).SelectMany(o => o).Max(p => (p - cut.Emitter).Dot(unit));
        var to = Math.Max(far * 0.6, 3 * size / scale);
        var (x0, y0) = place(cut.Emitter + (unit * Math.Min(4, to / 3)));
        var (x1, y1) = place(cut.Emitter + (unit * to));
        var stroke = new Stroke(Palette.Light, 0.11 * size);
        ink.Line(x0, y0, x1, y1, stroke);
        var back = new Vec2(-unit.X, unit.Y);
        foreach (var turn in new[] { 0.45, -0.45 })
        {
            var tip = back.Turned(turn) * (0.8 * size);
            ink.Line(x1, y1, x1 + tip.X, y1 + tip.Y, stroke);
        }
    }

    private static void Labels(
        List<SectionLabel> labels,
        IInk ink,
        double x,
        double top,
        double room,
        double size,
        bool isKeyed,
        bool isLeft,
        Func<Vec2, (double X, double Y)> place
    )
    {
        var rows = Spread(
            [.. labels.Select(l => place(l.At).Y)],
            top + (0.7 * size),
            top + room - (0.3 * size),
            Line * size
        );
        for (var i = 0; i < labels.Count; i++)
        {
            var (label, y) = (labels[i], rows[i]);
            var (ax, ay) = place(label.At);
            var side = isLeft ? 1 : -1;
            (double X, double Y)[] leader = [(x + (side * 0.4 * size), y), (x + (side * 1.5 * size), y), (ax, ay)];
            ink.Path(leader, false, new(Palette.Paper, 0.16 * size));
            ink.Path(leader, false, new(Palette.Ink, 0.06 * size));
            ink.Circle(ax, ay, 0.24 * size, new(Palette.Paper, 0.08 * size), Palette.Ink);
            var hot = label.Over.Length > 0;
            var number = isKeyed ? $"{label.Number} " : "";
            var name = isKeyed ? "" : label.Name;
            var bold = new TextStyle(
                size,
                hot ? Palette.Stop : Palette.Ink,
                isLeft ? Anchor.End : Anchor.Start,
                Weight.SemiBold
            );
            var plain = bold with { Weight = Weight.Regular, Tint = hot ? Palette.Stop : Palette.Soft };
            var text =
                hot && !isKeyed ? $"{label.Text} {label.Over}"
                : hot ? $"{label.Text} !"
                : label.Text;
            var (first, second) =
                isKeyed ? (number, text)
                : isLeft ? (name + " ", text)
                : (text + " ", name);
            var (styleA, styleB) = isKeyed || isLeft ? (plain, bold) : (bold, plain);
            if (isLeft)
            {
                ink.Text(second, x, y + (0.35 * size), styleB);
                ink.Text(
                    first.TrimEnd(),
                    x - Typeface.WidthOf(second, size, styleB.Weight) - (second.Length > 0 ? 0.35 * size : 0),
                    y + (0.35 * size),
                    styleA
                );
            }
            else
            {
                ink.Text(first.TrimEnd(), x, y + (0.35 * size), styleA);
                var gap =
                    first.Trim().Length > 0
                        ? Typeface.WidthOf(first.TrimEnd(), size, styleA.Weight) + (0.35 * size)
                        : 0;
                ink.Text(second, x + gap, y + (0.35 * size), styleB);
            }
        }
    }

    private static double Width(SectionLabel label, double size, bool isKeyed) =>
        isKeyed
            ? Typeface.WidthOf($"{label.Number} {label.Text} !", size, Weight.SemiBold)
            : Typeface.WidthOf($"{label.Name} {label.Text} {label.Over}", size, Weight.SemiBold);

    /// <summary>Rows as near as may be to where they are wanted, in order, each a line apart and within the room.</summary>
    private static List<double> Spread(List<double> wanted, double top, double bottom, double line)
    {
        var step = wanted.Count > 1 ? Math.Min(line, (bottom - top) / (wanted.Count - 1)) : line;
        var rows = new List<double>(wanted);
        for (var i = 0; i < rows.Count; i++)
        {
            rows[i] = Math.Max(rows[i], i == 0 ? top : rows[i - 1] + step);
        }

        for (var i = rows.Count - 1; i >= 0; i--)
        {
            rows[i] = Math.Min(rows[i], i == rows.Count - 1 ? bottom : rows[i + 1] - step);
        }

        return rows;
    }

    private static void Key(
        IReadOnlyList<SectionLabel> labels,
        IInk ink,
        double x,
        double top,
        double width,
        double size
    )
    {
        for (var i = 0; i < labels.Count; i++)
        {
            var (label, y) = (labels[i], top + ((i + 1) * Line * size));
            var tint = label.Over.Length > 0 ? Palette.Stop : Palette.Ink;
            ink.Text($"{label.Number}", x + (1.6 * size), y, new(size, Palette.Soft, Anchor.End));
            ink.Text(label.Name, x + (2.3 * size), y, new(size, Palette.Ink));
            ink.Text($"{label.Text} {label.Over}".Trim(), x + width, y, new(size, tint, Anchor.End, Weight.SemiBold));
        }
    }

    private static void Scale(SectionPicture picture, IInk ink, double x, double top, double width, double size)
    {
        var (scale, unit) = (picture.Scale, picture.Unit);
        var most = Math.Min(width, 34 * size);
        var from = x + ((width - most) / 2) + (2 * size);
        var long_ = most - (4 * size);
        const int Cells = 64;
        for (var i = 0; i < Cells; i++)
        {
            var (a, b) = (from + (long_ * i / Cells), from + (long_ * (i + 1.05) / Cells));
            var fill = new Tint("none", HeatScale.Colour((i + 0.5) / Cells));
            ink.Path([(a, top), (b, top), (b, top + size), (a, top + size)], true, null, fill);
        }

        var (low, high) = (unit.From(scale.LowC), unit.From(scale.HighC));
        var tick =
            high - low > 260 ? 50.0
            : high - low > 90 ? 20.0
            : 10.0;
        for (var t = Math.Ceiling(low / tick) * tick; t <= high + 1e-6; t += tick)
        {
            var at = from + (long_ * (t - low) / (high - low));
            ink.Line(at, top + size, at, top + (1.35 * size), new(Palette.Ink, 0.06 * size));
            ink.Text(ChartText.Fixed(t, 0), at, top + (2.35 * size), new(0.92 * size, Palette.Ink, Anchor.Middle));
        }

        ink.Text(unit.Sign, from + long_ + (0.9 * size), top + (0.85 * size), new(0.92 * size, Palette.Ink));
        ink.Text(
            $"air of the room {ChartText.Fixed(unit.From(picture.Scene.AmbientC), 0)} {unit.Sign}",
            x + (width / 2),
            top + (3.5 * size),
            new(0.88 * size, Palette.Soft, Anchor.Middle)
        );
    }

    private static void Ruler(IInk ink, double x, double y, double size, double scale)
    {
        var mm = new[] { 200.0, 100, 50, 20, 10, 5 }.First(m => m * scale < 9 * size || m <= 5);
        var stroke = new Stroke(Palette.Soft, 0.07 * size);
        var (from, to) = (x + (0.2 * size), x + (0.2 * size) + (mm * scale));
        ink.Line(from, y, to, y, stroke);
        ink.Line(from, y - (0.25 * size), from, y + (0.25 * size), stroke);
        ink.Line(to, y - (0.25 * size), to, y + (0.25 * size), stroke);
        ink.Text($"{ChartText.Fixed(mm, 0)} mm", to + (0.4 * size), y + (0.3 * size), new(0.88 * size, Palette.Soft));
    }

    private static (Vec2 Least, Vec2 Most) Reach(SectionCut cut)
    {
        var points = cut.Pieces.SelectMany(p => p.Outlines).SelectMany(o => o).DefaultIfEmpty().ToList();
        return (
            new(points.Min(p => p.X) - 1, points.Min(p => p.Y) - 1),
            new(points.Max(p => p.X) + 1, points.Max(p => p.Y) + 1)
        );
    }
}
