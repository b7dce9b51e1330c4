using Lampwright.Geometry;

namespace Lampwright.Tests.Files.Drawings;

/// <summary>A block of 60 × 40 × 20 mm, each side a face with an id of its own, turned and moved in the scene.</summary>
internal static class SampleBodies
{
    public static SceneBody Block(Frame place, string id = "block")
    {
        var size = new Vec3(0.060, 0.040, 0.020);
        var faces = new List<SceneFace>();
        foreach (var axis in (int[])[0, 1, 2])
        {
            foreach (var sign in (int[])[-1, 1])
            {
                var n = Unit(axis) * sign;
                var u = Unit((axis + 1) % 3);
                var v = n.Cross(u);
                Vec3 At(double a, double b)
                {
                    var p = n + (u * a) + (v * b);
                    return new((p.X + 1) / 2 * size.X, (p.Y + 1) / 2 * size.Y, (p.Z + 1) / 2 * size.Z);
                }

                faces.Add(
                    new(
                        $"{id}.{"xyz"[axis]}{(sign > 0 ? "+" : "-")}",
                        [At(-1, -1), At(1, -1), At(1, 1), At(-1, 1)],
                        [n, n, n, n],
                        [0, 1, 2, 0, 2, 3]
                    )
                );
            }
        }

        return new(id, id, faces, [new($"{id}.edge", [default, new(size.X, 0, 0)])], place);
    }

    /// <summary>A quarter turn about z and a move: x of the body runs along y of the scene.</summary>
    public static Frame Turned { get; } = new(new(0.1, 0.2, 0.3), new(0, 1, 0), new(-1, 0, 0), new(0, 0, 1));

    private static Vec3 Unit(int axis) => new(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
}
