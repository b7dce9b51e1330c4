using System.Globalization;
using Lampwright.Files.Charts;
using Lampwright.Files.Drawings;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Packet.Templates;

/// <summary>The piece of a blank that one sheet shows, at full size: cuts, bends, punch crosses and the words a scriber needs.</summary>
internal sealed class TemplateBlank
{
    private static readonly Stroke cut = new(Palette.Ink, 0.3);
    private static readonly Stroke bend = new(Palette.Flow, 0.18);
    private static readonly Stroke tangent = new(Palette.Flow, 0.13);
    private static readonly Stroke set = new(Palette.Hold, 0.18, [5, 1.5]);
    private static readonly Stroke punch = new(Palette.Ink, 0.15);
    private readonly Blank blank;
    private readonly TemplateFace face;
    private readonly IReadOnlyList<HoleGroup> groups;

    private readonly IReadOnlyList<Finding> findings;

    public TemplateBlank(Blank blank, IReadOnlyList<Finding> findings, TemplateFace face = TemplateFace.Outside)
    {
        this.face = face;
        this.findings = FindingMarks.Of(findings, blank.Part);
        this.blank = blank = face == TemplateFace.Inside ? PartMirror.Of(blank) : blank;
        groups = HoleGroup.Of(blank);
    }

    public void Draw(PaperInk ink, TileGrid grid, int row, int column)
    {
        Vec2 Place(Vec2 p) => grid.OnSheet(row, column, p * 1000);
        var least = grid.Corner(row, column) / 1000;
        var most = least + (new Vec2(grid.WindowWidth, grid.WindowHeight) / 1000);
        ink.Clipped(
            TileGrid.WindowLeft,
            TileGrid.WindowTop,
            grid.WindowWidth,
            grid.WindowHeight,
            () =>
            {
                foreach (var b in blank.Bends)
                {
                    Bend(ink, b, Place, least, most);
                }

                foreach (var mark in blank.Marks)
                {
                    Mark(ink, mark, Place);
                }

                foreach (var side in blank.Wrap?.Sides ?? [])
                {
                    var at = Place(SideName(side));
                    ink.Text(side.Side, at.X, at.Y, new(3.2, Palette.Flow, Weight: Weight.Medium));
                }

                foreach (var group in groups)
                {
                    Holes(ink, group, Place, least, most);
                }

                ink.Outline(blank.Outline, Place, cut);
                TemplateMarks.Draw(
                    ink,
                    findings,
                    p => Place(face == TemplateFace.Inside ? new(blank.WidthM - p.X, p.Y) : p)
                );
            }
        );
    }

    /// <summary>Where the name of a side stands: inside its start, above its lower line.</summary>
    private static Vec2 SideName(WrapSide side) =>
        new(Math.Max(side.Start.A.X, side.Start.B.X) + 0.004, side.ZeroM + side.CornerM + 0.0015);

    private static void Mark(PaperInk ink, BlankMark mark, Func<Vec2, Vec2> place)
    {
        var stroke = mark.Kind == BlankMarkKind.Letters ? punch : bend;
        foreach (var points in mark.Strokes)
        {
            for (var i = 1; i < points.Count; i++)
            {
                var (a, b) = (place(points[i - 1]), place(points[i]));
                ink.Line(a.X, a.Y, b.X, b.Y, stroke);
            }
        }
    }

    private void Bend(PaperInk ink, BlankBend b, Func<Vec2, Vec2> place, Vec2 least, Vec2 most)
    {
        var (a, e) = (place(b.CentreLine.A), place(b.CentreLine.B));
        ink.Line(a.X, a.Y, e.X, e.Y, bend);
        Tangent(ink, b.InnerTangent, place);
        Tangent(ink, b.OuterTangent, place);
        if (b.Set is { } line && line.OnInside == (face == TemplateFace.Inside))
        {
            Set(ink, b, line, place);
        }

        if (Inside(b.CentreLine, least, most) is not { } seen)
        {
            return;
        }

        var text = string.Create(
            CultureInfo.InvariantCulture,
            $"{b.Flange}: {b.AngleRad * 180 / Math.PI:0.#}° {((b.Direction == BendDirection.Down) == (face == TemplateFace.Outside) ? "down ↓" : "up ↑")}  R{b.InsideRadiusM * 1000:0.##}"
        );
        const double size = 2.8;
        var middle = place((seen.A + seen.B) / 2);
        var along = (place(seen.B) - place(seen.A)).Unit;
        if (along.X < -1e-9 || (Math.Abs(along.X) <= 1e-9 && along.Y > 0))
        {
            along = -along;
        }

        // Read from the bottom or from the right, standing on its line.
        var foot = middle + (new Vec2(along.Y, -along.X) * 0.8);
        var turn = -Math.Atan2(along.Y, along.X) * 180 / Math.PI;
        ink.Text(text, foot.X, foot.Y, new(size, Palette.Flow, Anchor.Middle, Weight.Medium, turn));
        if (b.Set is not { } nose)
        {
            return;
        }

        var below = middle - (new Vec2(along.Y, -along.X) * (size + 0.6));
        var words = nose.OnInside == (face == TemplateFace.Inside) ? Words(nose, b) : "set line: on the other face";
        ink.Text(words, below.X, below.Y, new(2.2, Palette.Hold, Anchor.Middle, Weight.Regular, turn));
    }

    private static string Words(SetLine line, BlankBend b)
    {
        var beyond = (line.NoseRadiusM - (b.AllowanceM / 2)) * 1000;
        var side = beyond >= 0 ? "beyond the middle" : "short of the middle";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"set line {Math.Abs(beyond):0.0} mm {side}, seen from the clamp"
        );
    }

    /// <summary>The ends of a tangent as short strokes: the zone is seen without a third line across the part.</summary>
    private static void Tangent(PaperInk ink, Segment line, Func<Vec2, Vec2> place)
    {
        var (a, b) = (place(line.A), place(line.B));
        var along = (b - a).Unit * Math.Min(6, (b - a).Length / 3);
        ink.Line(a.X, a.Y, a.X + along.X, a.Y + along.Y, tangent);
        ink.Line(b.X, b.Y, b.X - along.X, b.Y - along.Y, tangent);
    }

    /// <summary>The set line, with a triangle at either end that points to the side that lies under the clamp.</summary>
    private static void Set(PaperInk ink, BlankBend b, SetLine line, Func<Vec2, Vec2> place)
    {
        var (p, q) = (place(line.Line.A), place(line.Line.B));
        ink.Line(p.X, p.Y, q.X, q.Y, set);
        var along = (q - p).Unit;
        var toClamp = place(b.InnerTangent.A) - place(b.OuterTangent.A);
        var under = along.Left.Dot(toClamp) >= 0 ? along.Left : -along.Left;
        var inset = Math.Min(9, (q - p).Length / 4);
        foreach (var foot in (Vec2[])[p + (along * inset), q - (along * inset)])
        {
            var (l, r, tip) = (foot - (along * 1.3), foot + (along * 1.3), foot + (under * 2.4));
            ink.Path([(l.X, l.Y), (r.X, r.Y), (tip.X, tip.Y)], true, null, Palette.Hold);
        }
    }

    private static void Holes(PaperInk ink, HoleGroup group, Func<Vec2, Vec2> place, Vec2 least, Vec2 most)
    {
        var named = false;
        foreach (var hole in group.Holes)
        {
            var (low, high) = hole.Outline.Box;
            if (high.X < least.X || low.X > most.X || high.Y < least.Y || low.Y > most.Y)
            {
                continue;
            }

            var centre = place(hole.Centre);
            if (hole.DiameterM > 0)
            {
                ink.Circle(centre.X, centre.Y, hole.DiameterM * 500, cut);
            }
            else
            {
                ink.Outline(hole.Outline, place, cut);
            }

            // Over the rim of a single hole, so that the eye finds the punch; within it in a field, where crosses would run together.
            var half = Math.Min(high.X - low.X, high.Y - low.Y) * 500;
            var arm = group.IsField ? Math.Clamp(half * 0.7, 0.8, 4) : Math.Clamp(half + 1.5, 3, 6);
            ink.Line(centre.X - arm, centre.Y, centre.X + arm, centre.Y, punch);
            ink.Line(centre.X, centre.Y - arm, centre.X, centre.Y + arm, punch);
            if (!group.IsField || !named)
            {
                Name(ink, group, place(new(high.X, high.Y)), place(new(low.X, low.Y)), place(least).Y);
                named = true;
            }
        }
    }

    /// <summary>Size (and, in a field, the count) beside the hole, inside of it where it is large.</summary>
    private static void Name(PaperInk ink, HoleGroup group, Vec2 upperRight, Vec2 lowerLeft, double foot)
    {
        var text = group.IsField
            ? string.Create(CultureInfo.InvariantCulture, $"{group.Holes.Count} × {group.Size}")
            : group.Size;
        const double size = 2.4;
        var style = new TextStyle(size, Palette.Ink);
        var (width, height) = (upperRight.X - lowerLeft.X, lowerLeft.Y - upperRight.Y);
        if (width > Typeface.WidthOf(text, size) + 6 && height > 14)
        {
            var (x, y) = ((upperRight.X + lowerLeft.X) / 2, (upperRight.Y + lowerLeft.Y) / 2);

            // A large opening is named on the sheet that has its middle, not cut in two on all of them.
            if (y + 8 < foot)
            {
                ink.Text(text, x, y + 7, style with { Anchor = Anchor.Middle });
            }

            return;
        }

        ink.Text(text, upperRight.X + 0.4 - (width * 0.12), upperRight.Y - 0.5 + (height * 0.1), style);
    }

    /// <summary>The piece of a line that lies in a box; null when none does.</summary>
    internal static Segment? Inside(Segment line, Vec2 least, Vec2 most)
    {
        var d = line.B - line.A;
        var (from, to) = (0.0, 1.0);
        foreach (
            var (start, step, low, high) in new[] { (line.A.X, d.X, least.X, most.X), (line.A.Y, d.Y, least.Y, most.Y) }
        )
        {
            if (Math.Abs(step) < 1e-12)
            {
                if (start < low || start > high)
                {
                    return null;
                }

                continue;
            }

            var (t0, t1) = ((low - start) / step, (high - start) / step);
            from = Math.Max(from, Math.Min(t0, t1));
            to = Math.Min(to, Math.Max(t0, t1));
        }

        return to - from > 1e-6 ? new(line.A + (d * from), line.A + (d * to)) : null;
    }
}
