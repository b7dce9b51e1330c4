using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Web;

/// <summary>Two real folded parts, put together with a fan, for the pages that show shapes.</summary>
internal static class SampleParts
{
    public static MetalAnswer Metal { get; } = new([Answer(Tray(), "sink_tray"), Answer(Bracket(), "driver_shelf")]);

    public static FitUpAnswer FitUp { get; } =
        new()
        {
            Placements =
            [
                new("part.sink_tray", Frame.World, null),
                new("part.driver_shelf", Frame.World.Moved(new(0.01, 0.015, -0.12)), null),
                new("fan.main", Frame.World.Moved(new(0.013, 0.013, 0.001)), new(0.092, 0.092, 0.025)),
                new("item.<b>inlet</b>", Frame.World.Moved(new(0.04, 0.04, -0.09)), new(0.05, 0.028, 0.032)),
            ],
            Unplaced = ["item.handle"],
            Joints =
            [
                new(
                    "fan",
                    ["fan.main.mount", "sink_tray.fan"],
                    [new(["fan.main.mount[1,1]", "sink_tray.fan[1,1]"], new(0.3, 0.1, 0.6), new(0.4, 0.3, 0.5))],
                    "M4 × 35",
                    new(26.2, 26, 26.5),
                    new(5.5, 5.2, 5.8),
                    new(2, 1.5, 2.5)
                ),
            ],
            TotalMassKg = new(3.4, 3.2, 3.6),
            BalancePointMm = new(new(59, 55, 62), new(59, 56, 61), new(-31, -36, -28)),
            Masses =
            [
                new("part.sink_tray", 1, new(0.31, 0.29, 0.33), true),
                new("fan.main", 1, new(0.11, 0.11, 0.11), true),
                new("item.handle", 2, new(0, 0, 0), false),
            ],
        };

    private static PartAnswer Answer(PartSpec spec, string name)
    {
        var result = SheetPart.Of(spec);
        var (blank, folded) = (result.Blank!, result.Folded!);
        Predicted Near(double value) => new(value, value * 0.998, value * 1.002);
        return new()
        {
            Name = name,
            Path = "part." + name,
            Sheet = "mild",
            Material = "DC01",
            ThicknessMm = 1.2,
            Count = 1,
            BlankWidthMm = Near(blank.WidthM * 1000),
            BlankHeightMm = Near(blank.HeightM * 1000),
            AreaMm2 = Near(blank.AreaM2 * 1e6),
            MassKg = Near(blank.MassKg),
            Blank = blank,
            Folded = folded,
            Solid = new(() => FoldScene.Of(folded)),
        };
    }

    private static SheetSpec Mild => new("mild", 0.0012, 0.0015, BendRule.Din6935) { Material = "DC01" };

    private static PartSpec Tray() =>
        new("sink_tray", Mild, FaceSpec.Rectangle(0.118, 0.118))
        {
            Flanges =
            [
                new("wall_l", "face.left", 0.046),
                new("wall_r", "face.right", 0.046),
                new("wall_t", "face.top", 0.046),
                new("wall_b", "face.bottom", 0.046),
                new("lip_l", "wall_l.far", 0.014),
                new("lip_r", "wall_r.far", 0.014, -Math.PI / 2),
            ],
            Holes =
            [
                new("outlet", "face", default, HoleShape.Round(0.086), HoleAnchor.Centre),
                new("fan", "face", default, HoleShape.Round(0.0043), HoleAnchor.Centre)
                {
                    Pattern = HolePattern.Grid(2, 2, 0.0825, 0.0825),
                },
                new("vents", "wall_t", default, HoleShape.Round(0.004), HoleAnchor.Centre)
                {
                    Pattern = HolePattern.Field(0.006, 0.06, 0.024, true),
                },
            ],
        };

    private static PartSpec Bracket() =>
        new("driver_shelf", Mild, FaceSpec.Rectangle(0.098, 0.07))
        {
            Flanges = [new("left", "face.left", 0.02, Math.PI / 3), new("right", "face.right", 0.03, 2 * Math.PI / 3)],
            Holes = [new("slot", "face", default, HoleShape.Slot(0.02, 0.0043), HoleAnchor.Centre)],
        };
}
