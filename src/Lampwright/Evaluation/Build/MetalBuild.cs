using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Draws;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out the answer of the station metal.</summary>
internal static class MetalBuild
{
    public static MetalAnswer Of(
        MetalRows rows,
        IReadOnlyList<BlankSketch> sketches,
        Lazy<BendingAnswer> bending,
        Bands bands
    ) =>
        new([
            .. rows.Parts.Select(
                (part, i) =>
                    new PartAnswer
                    {
                        Name = part.Name,
                        Path = part.Path,
                        Sheet = part.Sheet.Name,
                        Material = part.Sheet.Material,
                        ThicknessMm = part.Blank.ThicknessM * 1000,
                        Count = part.Count,
                        BlankWidthMm = bands.At(rows.Place(i)),
                        BlankHeightMm = bands.At(rows.Place(i) + 1),
                        AreaMm2 = bands.At(rows.Place(i) + 2),
                        MassKg = bands.At(rows.Place(i) + 3),
                        Blank = part.Blank,
                        Folded = part.Folded,
                        Solid = new Lazy<SceneBody>(() => FoldScene.Of(part.Folded)),
                    }
            ),
        ])
        {
            Sketches = sketches,
            Bending = bending,
        };
}
