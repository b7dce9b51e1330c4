using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>A flat or hole of a part that has no blank, laid flat by its nominal dimensions.</summary>
/// <param name="Id"><c>face</c>, the id of a flange or of a hole.</param>
/// <param name="Outline">Its outline, metres, as far as it could be made.</param>
/// <param name="IsHole">True for a hole.</param>
public sealed record SketchOutline(string Id, Outline Outline, bool IsHole);

/// <summary>
/// What can be drawn of a part that has no blank, so that the place of the fault is seen: flats to their mould lines, each where it would lie, nothing
/// trimmed. It is no blank and nothing is cut by it.
/// </summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Outlines">Flats, parents before children, then holes. Zero at the lower left corner of all of them.</param>
/// <param name="WidthM">Width of all, metres.</param>
/// <param name="HeightM">Height of all, metres.</param>
public sealed record BlankSketch(string Part, IReadOnlyList<SketchOutline> Outlines, double WidthM, double HeightM)
{
    /// <summary>More holes than this are left out of a sketch.</summary>
    private static int MostHoles => 500;

    /// <summary>The sketch and what the plane of the first face is shifted by; null where nothing can be drawn.</summary>
    internal static (BlankSketch Sketch, Vec2 Shift)? Of(PartSpec spec)
    {
        var panels = new List<Panel>();
        PanelTree.Build(spec, [], panels);
        if (panels.Count == 0)
        {
            return null;
        }

        var holes = HolePlaces.Of(
            spec with
            {
                Limits = spec.Limits with { MostHoles = Math.Min(spec.Limits.MostHoles, MostHoles) },
            },
            panels,
            []
        );
        List<SketchOutline> made =
        [
            .. panels.Select(p => new SketchOutline(p.Id, p.InBlank.Out(new Outline(p.Nominal)), false)),
            .. holes.Select(h => new SketchOutline(h.Spec.Id + h.Member, h.Panel.InBlank.Out(h.Outline), true)),
        ];
        var (x0, y0, x1, y1) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var (least, most) in made.Select(o => o.Outline.Box))
        {
            (x0, y0) = (Math.Min(x0, least.X), Math.Min(y0, least.Y));
            (x1, y1) = (Math.Max(x1, most.X), Math.Max(y1, most.Y));
        }

        if (!double.IsFinite(x0 + y0 + x1 + y1) || !(x1 > x0) || !(y1 > y0))
        {
            return null;
        }

        var shift = new Vec2(-x0, -y0);
        var place = new Placement2(shift, new(1, 0));
        return (
            new(spec.Name, [.. made.Select(o => o with { Outline = place.Out(o.Outline) })], x1 - x0, y1 - y0),
            shift
        );
    }

    /// <summary>Its mirror image.</summary>
    internal BlankSketch Mirrored =>
        this with
        {
            Outlines = [.. Outlines.Select(o => o with { Outline = o.Outline.MirroredX(WidthM) })],
        };
}
