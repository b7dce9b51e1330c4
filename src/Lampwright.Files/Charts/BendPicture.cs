using System.Globalization;
using System.Net;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Geometry;
using Lampwright.Metal.Bending;

namespace Lampwright.Files.Charts;

/// <summary>Draws the brake and the part in it, cut across the middle of a bend when it is made.</summary>
/// <remarks>
/// The view is from the end of the brake, the maker to the right. What is cut of the machine is hatched by its tint, the sheet is drawn solid;
/// walls that stand beyond the cut are thin lines. The picture keeps one scale for all stages of a part, so that one steps through them as
/// through one view.
/// </remarks>
public static class BendPicture
{
    private static readonly double Margin = 0.006;

    /// <summary>The picture as SVG for the page.</summary>
    /// <param name="part">The part.</param>
    /// <param name="stage">Which stage, from 0.</param>
    /// <param name="width">Width in units of the view box.</param>
    /// <param name="height">Height in the same unit.</param>
    /// <param name="size">Height of the text's em in the same unit.</param>
    /// <param name="share">How far the bend is made, 0 to 1.</param>
    public static string Svg(
        PartBending part,
        int stage,
        double width = 560,
        double height = 400,
        double size = 13,
        double share = 1
    )
    {
        ArgumentNullException.ThrowIfNull(part);
        var ink = new SvgInk();
        Draw(part, stage, ink, 0, 0, width, height, size, share);
        var now = part.Plan.Stages[stage];
        return string.Create(
            CultureInfo.InvariantCulture,
            $"""
            <svg class="lw-bend" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" role="img" aria-label="{WebUtility.HtmlEncode(
                $"Section of the brake: {now.Stroke.Name} is bent, {now.Clamped} under the clamp"
            )}" font-family="Inter, system-ui, sans-serif" font-variant-numeric="tabular-nums" preserveAspectRatio="xMidYMid meet">{ink.Body}</svg>
            """
        );
    }

    /// <summary>Draws it.</summary>
    /// <param name="part">The part.</param>
    /// <param name="stage">Which stage, from 0.</param>
    /// <param name="ink">What it is drawn with; it clips nothing, so the machine is cut off at the frame here.</param>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    /// <param name="size">Height of the text's em.</param>
    /// <param name="share">How far the bend is made, 0 to 1.</param>
    public static void Draw(
        PartBending part,
        int stage,
        IInk ink,
        double x,
        double y,
        double width,
        double height,
        double size,
        double share = 1
    )
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(ink);
        var section = part.Section(stage, share);
        var (least, most) = Window(part);
        var scale = Math.Min(width / (most.X - least.X), height / (most.Y - least.Y));
        var middle = (least + most) / 2;
        (least, most) = (
            middle - (new Vec2(width, height) / (2 * scale)),
            middle + (new Vec2(width, height) / (2 * scale))
        );
        (double X, double Y) Place(Vec2 p) => (x + ((p.X - least.X) * scale), y + height - ((p.Y - least.Y) * scale));
        var thin = 0.07 * size;
        void Solid(IReadOnlyList<Vec2> outline, Tint? fill, Stroke? line, double opacity = 1)
        {
            var seen = Clip(outline, least, most);
            if (seen.Count > 2)
            {
                ink.Path([.. seen.Select(Place)], true, line, fill, opacity);
            }
        }

        var machine = new Stroke(Palette.Soft, thin);
        Solid(section.Bed, Palette.Rule, machine, 0.55);
        Solid(section.Apron, Palette.Rule, machine, 0.55);
        Solid(section.Clamp, Palette.Rule, machine, 0.3);
        Solid(section.Finger, Palette.Rule, machine, 0.8);
        foreach (var beyond in section.Beyond)
        {
            Solid(beyond.Outline, Palette.Flow, new(Palette.Flow, thin), 0.07);
        }

        // A thin sheet is drawn no thinner than is seen from arm's length.
        var skin = new Stroke(Palette.Ink, Math.Max(0.11 * size, 0.01));
        foreach (var piece in section.Cut)
        {
            Solid(piece.Outline, Palette.Ink, skin);
        }

        var (ax, ay) = Place(default);
        ink.Circle(ax, ay, 0.22 * size, new(Palette.Stop, thin * 1.4));
        Name(ink, "finger", section.Finger, least, most, size, Place);
        Name(ink, "clamp", section.Clamp, least, most, size, Place);
        Name(ink, "bed", section.Bed, least, most, size, Place);
        Name(ink, "apron", section.Apron, least, most, size, Place);
        Named(part, stage, section, ink, size, Place, least, most);
    }

    /// <summary>The flange that is bent now, by its name at its end.</summary>
    private static void Named(
        PartBending part,
        int stage,
        StageSection section,
        IInk ink,
        double size,
        Func<Vec2, (double X, double Y)> place,
        Vec2 least,
        Vec2 most
    )
    {
        var now = part.Plan.Stages[stage];
        var swung =
            now.Side == ClampedSide.Parent
                ? part.Folded.Faces[now.Stroke.Children[0]].Face
                : part.Folded.Faces[now.Stroke.Parent].Face;
        var far = section
            .Cut.Where(c => c.Flat == swung)
            .SelectMany(c => c.Outline)
            .OrderByDescending(p => p.Length)
            .Select(p => (Vec2?)p)
            .FirstOrDefault();
        if (far is { } end)
        {
            var width = Typeface.WidthOf(swung, size, Weight.SemiBold);
            var (right, left, low) = (place(most).X, place(least).X, place(least).Y);
            var (px, py) = place(end);
            var at = px + (0.6 * size) + width > right ? px - (0.6 * size) - width : px + (0.6 * size);
            ink.Text(
                swung,
                Math.Max(at, left),
                Math.Clamp(py + (0.3 * size), place(most).Y + size, low - (0.3 * size)),
                new(size, Palette.Flow, Weight: Weight.SemiBold)
            );
        }
    }

    /// <summary>The name of a part of the machine in the middle of what is seen of it, where that is wide enough.</summary>
    private static void Name(
        IInk ink,
        string name,
        IReadOnlyList<Vec2> outline,
        Vec2 least,
        Vec2 most,
        double size,
        Func<Vec2, (double X, double Y)> place
    )
    {
        var seen = Clip(outline, least, most);
        if (seen.Count < 3)
        {
            return;
        }

        var polygon = new Outline([.. seen.Select(p => new Corner(p))]);
        var small = 0.85 * size;
        var (low, high) = polygon.Box;
        var (wide, tall) = (place(high).X - place(low).X, place(low).Y - place(high).Y);
        if (wide > Typeface.WidthOf(name, small) + (0.3 * size) && tall > 1.5 * size)
        {
            var (x, y) = place(polygon.Centroid);
            ink.Text(name, x, y + (0.3 * size), new(small, Palette.Soft, Anchor.Middle));
        }
    }

    /// <summary>The field that holds the sheet in every stage, with enough of the machine round the nose.</summary>
    private static (Vec2 Least, Vec2 Most) Window(PartBending part)
    {
        var machine = part.Machine;
        var height = machine.Finger.Max(p => p.Y);
        var apron = machine.Apron.Max(p => p.X);
        var (x0, y0, x1, y1) = (-0.8 * height, -0.5 * apron, 0.9 * apron, 1.25 * height);
        for (var s = 0; s < part.Plan.Stages.Count; s++)
        {
            foreach (var p in part.Section(s).Cut.SelectMany(c => c.Outline))
            {
                (x0, y0) = (Math.Min(x0, p.X), Math.Min(y0, p.Y));
                (x1, y1) = (Math.Max(x1, p.X), Math.Max(y1, p.Y));
            }
        }

        return (new(x0 - Margin, y0 - Margin), new(x1 + Margin, y1 + Margin));
    }

    /// <summary>A polygon cut off at a box (Sutherland and Hodgman, Communications of the ACM 17, 1974).</summary>
    private static List<Vec2> Clip(IReadOnlyList<Vec2> polygon, Vec2 least, Vec2 most)
    {
        List<Vec2> points = [.. polygon];
        foreach (
            var off in (Func<Vec2, double>[])
                [p => p.X - least.X, p => most.X - p.X, p => p.Y - least.Y, p => most.Y - p.Y]
        )
        {
            var kept = new List<Vec2>();
            for (var i = 0; i < points.Count; i++)
            {
                var (p, q) = (points[i], points[(i + 1) % points.Count]);
                var (d, e) = (off(p), off(q));
                if (d >= 0)
                {
                    kept.Add(p);
                }

                if (d >= 0 != e >= 0)
                {
                    kept.Add(p + ((q - p) * (d / (d - e))));
                }
            }

            points = kept;
        }

        return points;
    }
}
