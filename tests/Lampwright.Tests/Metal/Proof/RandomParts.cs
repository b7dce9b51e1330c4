using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal.Proof;

/// <summary>Parts of one to twelve bends, made up by a fixed start: any angle either way, returns, offsets, slants, holes everywhere.</summary>
internal static class RandomParts
{
    public static PartSpec Of(int start)
    {
        var random = new Random(start);
        double Between(double a, double b) => a + ((b - a) * random.NextDouble());
        var t = Between(0.0005, 0.002);
        var rule = random.Next(4) switch
        {
            0 => BendRule.Din6935,
            1 => BendRule.WithK(Between(0.3, 0.5)),
            2 => BendRule.Handbook(HandbookMetal.Medium),
            _ => BendRule.FromStrips(new BendStrip(Math.PI / 2, (2.1 * t) + 0.0003)),
        };
        var sheet = new SheetSpec("any", t, Between(0.0004, 0.003), rule);
        var flanges = new List<FlangeSpec>();
        List<string> free = ["face.bottom", "face.right", "face.top", "face.left"];
        var bends = 1 + (start % 12);
        for (var i = 0; i < bends; i++)
        {
            // Far edges more often than others: they make the returns.
            var far = free.Where(e => e.EndsWith(".far", StringComparison.Ordinal)).ToList();
            var from = far.Count > 0 && random.Next(2) == 0 ? far : free;
            var on = from[random.Next(from.Count)];
            free.Remove(on);
            var id = $"f{i}";
            var side = on.EndsWith(".start", StringComparison.Ordinal) || on.EndsWith(".end", StringComparison.Ordinal);
            flanges.Add(
                new(id, on, Between(0.012, side ? 0.02 : 0.06), (random.Next(4) == 0 ? -1 : 1) * Between(0.02, 3.1))
                {
                    StartOffsetM = random.Next(3) == 0 ? Between(0, 0.01) : null,
                    EndOffsetM = random.Next(3) == 0 ? Between(0, 0.01) : null,
                    StartAngleRad = random.Next(4) == 0 ? Between(-0.1, 0.3) : null,
                    InsideRadiusM = random.Next(4) == 0 ? Between(0.0005, 0.004) : null,
                    Side = random.Next(4) == 0 ? DimensionSide.Inside : DimensionSide.Outside,
                }
            );
            free.AddRange([$"{id}.far", $"{id}.start", $"{id}.end"]);
        }

        var holes = flanges
            .Select(f => f.Id)
            .Append("face")
            .Select(
                (on, i) =>
                    new HoleSpec(
                        $"h{i}",
                        on,
                        new(Between(-0.002, 0.002), Between(-0.002, 0.002)),
                        Shape(random),
                        HoleAnchor.Centre
                    )
                    {
                        RotationRad = Between(-2, 2),
                    }
            );
        return new("any", sheet, FaceSpec.Rectangle(Between(0.08, 0.3), Between(0.08, 0.3)))
        {
            Flanges = flanges,
            Relief = new(random.Next(3) == 0 ? CornerRelief.Clear : CornerRelief.Notch),
            Holes = [.. holes],
        };
    }

    private static HoleShape Shape(Random random) =>
        random.Next(4) switch
        {
            0 => HoleShape.Round(0.003),
            1 => HoleShape.Slot(0.005, 0.002),
            2 => HoleShape.Rectangle(0.004, 0.003, 0.0005),
            _ => HoleShape.Of(Angled, 0.0003),
        };

    /// <summary>An angle with a slanted side, clockwise, its zero off its middle.</summary>
    private static Outline Angled { get; } =
        new([
            new(new(-0.001, -0.001)),
            new(new(-0.001, 0.002)),
            new(new(0.0002, 0.002)),
            new(new(0.0004, 0.0003)),
            new(new(0.002, 0.0003)),
            new(new(0.0024, -0.001)),
        ]);
}
