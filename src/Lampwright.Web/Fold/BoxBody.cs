using Lampwright.Geometry;

namespace Lampwright.Web.Fold;

/// <summary>The box that stands for a bought thing.</summary>
internal static class BoxBody
{
    /// <summary>A box from the origin along the positive axes; sizes in metres.</summary>
    public static SceneBody Of(string id, Vec3 size)
    {
        Vec3 Corner(int i) => new((i & 1) * size.X, ((i >> 1) & 1) * size.Y, ((i >> 2) & 1) * size.Z);
        var faces = Sides.Select(s => new SceneFace(
            $"{id}.{s.Name}",
            [.. s.Corners.Select(Corner)],
            [.. s.Corners.Select(_ => s.Normal)],
            [0, 1, 2, 0, 2, 3]
        ));
        var edges = Enumerable
            .Range(0, 8)
            .SelectMany(i => new[] { 1, 2, 4 }.Where(bit => (i & bit) == 0).Select(bit => (i, Other: i | bit)))
            .Select(e => new SceneEdge(id, [Corner(e.i), Corner(e.Other)]));
        return new(id, id, [.. faces], [.. edges], Frame.World);
    }

    private static readonly (string Name, int[] Corners, Vec3 Normal)[] Sides =
    [
        ("back", [0, 2, 3, 1], new(0, 0, -1)),
        ("front", [4, 5, 7, 6], new(0, 0, 1)),
        ("left", [0, 4, 6, 2], new(-1, 0, 0)),
        ("right", [1, 3, 7, 5], new(1, 0, 0)),
        ("bottom", [0, 1, 5, 4], new(0, -1, 0)),
        ("top", [2, 6, 7, 3], new(0, 1, 0)),
    ];
}
