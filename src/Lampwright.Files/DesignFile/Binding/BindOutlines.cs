using System.Globalization;
using Lampwright.Design;
using Lampwright.Geometry;
using Lampwright.Metal;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Outlines by their corners: of faces and of cut-outs.</summary>
internal static class BindOutlines
{
    /// <summary>The corners under <c>outline</c>; null where there are none or too few, which is told.</summary>
    public static IReadOnlyList<Spot>? Corners(TableReader r)
    {
        var outline = r.Spots("outline");
        if (!r.Has("outline"))
        {
            return null;
        }

        if (outline.Count >= 3 && outline.All(s => s.X is not null && s.Y is not null))
        {
            return outline;
        }

        r.Context.Wrong(
            r.Node("outline")!,
            r.Path + ".outline",
            "is no outline",
            "three corners or more, each [x, y] in lengths"
        );
        return null;
    }

    /// <summary>The box round an outline, which stands for it where only its size counts.</summary>
    public static Size Box(IReadOnlyList<Spot> outline, string path)
    {
        Value Reach(Func<Spot, Value> of) =>
            new(outline.Max(s => of(s).Nominal) - outline.Min(s => of(s).Nominal), 0, Origin.Computed, path);
        return new Size(Reach(s => s.X!), Reach(s => s.Y!));
    }

    /// <summary>A cut-out by its own outline; null where none is written or it is wrong, which is told.</summary>
    public static Design.HoleShape? Cut(TableReader hole)
    {
        var corners = Corners(hole);
        var round = hole.Optional("round");
        if (hole.Has("round") && !hole.Has("outline"))
        {
            hole.Context.Wrong(
                hole.Node("round")!,
                hole.Path + ".round",
                "stands without outline",
                "outline beside it; a rectangle says its radius as \"rectangle 20 mm x 10 mm r 2 mm\""
            );
        }

        if (hole.Has("outline") && hole.Has("shape"))
        {
            hole.Context.Wrong(
                hole.Node("outline")!,
                hole.Path + ".outline",
                "stands beside shape",
                "one of outline and shape"
            );
            return null;
        }

        if (corners is null)
        {
            return null;
        }

        if (round is not null && LargestRound(corners) is var (most, edge) && round.Nominal > most + 1e-9)
        {
            hole.Context.Wrong(
                hole.Node("round")!,
                hole.Path + ".round",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"leaves nothing of the edge from corner {edge + 1} to {((edge + 1) % corners.Count) + 1}"
                ),
                string.Create(CultureInfo.InvariantCulture, $"at most {Math.Floor(most * 1e5) / 100:0.##} mm")
            );
            return null;
        }

        var box = Box(corners, hole.Path + ".outline");
        return new Design.HoleShape(HoleKind.Outline, box.Width, box.Height, round) { Outline = corners };
    }

    private static (double MostM, int Edge) LargestRound(IReadOnlyList<Spot> corners) =>
        FaceCornerCut.LargestRound(new([.. corners.Select(c => new Corner(new(c.X!.Nominal, c.Y!.Nominal)))]));
}
