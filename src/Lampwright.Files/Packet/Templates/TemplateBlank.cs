using System.Globalization;
using Lampwright.Files.Charts;
using Lampwright.Files.Drawings;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Packet.Templates;

/// <summary>The piece of a blank that one sheet shows, at full size: cuts, bends, punch crosses and the words a scriber needs.</summary>
internal sealed class TemplateBlank
{
    private static readonly Stroke cut = new(Palette.Ink, 0.3);
    private static readonly Stroke bend = new(Palette.Flow, 0.18);
    private static readonly Stroke punch = new(Palette.Ink, 0.13);
    private readonly Blank blank;
    private readonly IReadOnlyList<HoleGroup> groups;

    public TemplateBlank(Blank blank)
    {
        this.blank = blank;
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

                foreach (var group in groups)
                {
                    Holes(ink, group, Place, least, most);
                }

                ink.Outline(blank.Outline, Place, cut);
            }
        );
    }

    private static void Bend(PaperInk ink, BlankBend b, Func<Vec2, Vec2> place, Vec2 least, Vec2 most)
    {
        var (a, e) = (place(b.CentreLine.A), place(b.CentreLine.B));
        ink.Line(a.X, a.Y, e.X, e.Y, bend);
        if (Inside(b.CentreLine, least, most) is not { } seen)
        {
            return;
        }

        var text = string.Create(
            CultureInfo.InvariantCulture,
            $"{b.Flange}: {b.AngleRad * 180 / Math.PI:0.#}° {(b.Direction == BendDirection.Down ? "down ↓" : "up ↑")}  R{b.InsideRadiusM * 1000:0.##}"
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

            var arm = Math.Clamp(Math.Min(high.X - low.X, high.Y - low.Y) * 500 * 0.7, 0.8, 4);
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
