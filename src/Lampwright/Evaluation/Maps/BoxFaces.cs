using Lampwright.Geometry;

namespace Lampwright.Evaluation.Maps;

/// <summary>The six faces of the box that stands for a bought thing: where a place on a face lies in the box's frame.</summary>
/// <param name="Name">Name of the face.</param>
/// <param name="Opposite">Name of the face opposite.</param>
/// <param name="Outward">Unit vector out of it.</param>
/// <param name="Along">Direction a turn is counted from: the face's first coordinate.</param>
/// <param name="Across">The face's second coordinate.</param>
internal sealed record BoxFace(string Name, string Opposite, Vec3 Outward, Vec3 Along, Vec3 Across)
{
    private static readonly Vec3 X = new(1, 0, 0);
    private static readonly Vec3 Y = new(0, 1, 0);
    private static readonly Vec3 Z = new(0, 0, 1);

    private static readonly BoxFace[] All =
    [
        new("back", "front", -Z, X, Y),
        new("front", "back", Z, X, Y),
        new("left", "right", -X, Y, Z),
        new("right", "left", X, Y, Z),
        new("bottom", "top", -Y, X, Z),
        new("top", "bottom", Y, X, Z),
    ];

    /// <summary>A face by its name; the back for any other word.</summary>
    public static BoxFace Named(string name) => Array.Find(All, f => f.Name == name) ?? All[0];

    /// <summary>A place on the face in the box's frame, from the face's corner at the box's zero.</summary>
    public Vec3 At(Vec2 on, Vec3 box)
    {
        var origin =
            Outward.X + Outward.Y + Outward.Z > 0
                ? new Vec3(Outward.X * box.X, Outward.Y * box.Y, Outward.Z * box.Z)
                : default;
        return origin + (Along * on.X) + (Across * on.Y);
    }

    /// <summary>Middle of the face in its own two coordinates.</summary>
    public Vec2 Middle(Vec3 box) => new(Along.Dot(box) / 2, Across.Dot(box) / 2);

    /// <summary>Depth of the box behind the face.</summary>
    public double Depth(Vec3 box) => Math.Abs(Outward.Dot(box));
}
