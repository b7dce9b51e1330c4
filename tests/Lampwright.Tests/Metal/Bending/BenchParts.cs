using Lampwright.Metal;

namespace Lampwright.Tests.Metal.Bending;

/// <summary>Parts as one bends them by hand, made up by a fixed start.</summary>
internal static class BenchParts
{
    public static PartSpec Of(int start, int most)
    {
        var random = new Random(start);
        double Between(double a, double b) => a + ((b - a) * random.NextDouble());
        var flanges = new List<FlangeSpec>();
        List<string> free = ["face.bottom", "face.right", "face.top", "face.left"];
        var bends = 1 + (start % most);
        for (var i = 0; i < bends; i++)
        {
            var on = free[random.Next(free.Count)];
            free.Remove(on);
            var id = $"f{i}";
            var angle = random.Next(3) switch
            {
                0 => Between(0.5, 2.2),
                _ => Math.PI / 2,
            };
            flanges.Add(new(id, on, Between(0.012, 0.05), (random.Next(4) == 0 ? -1 : 1) * angle));
            free.Add($"{id}.far");
        }

        return new("any", Parts.Mild, FaceSpec.Rectangle(Between(0.05, 0.25), Between(0.05, 0.25)))
        {
            Flanges = flanges,
        };
    }
}
