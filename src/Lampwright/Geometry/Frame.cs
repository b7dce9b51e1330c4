namespace Lampwright.Geometry;

/// <summary>A right-handed frame: an origin and three unit axes, all given in the frame it stands in.</summary>
/// <param name="Origin">Where the frame's zero lies, in metres.</param>
/// <param name="X">Unit vector of its x axis.</param>
/// <param name="Y">Unit vector of its y axis.</param>
/// <param name="Z">Unit vector of its z axis.</param>
public readonly record struct Frame(Vec3 Origin, Vec3 X, Vec3 Y, Vec3 Z)
{
    /// <summary>The frame that changes nothing.</summary>
    public static Frame World { get; } = new(default, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>A point of this frame, seen in the outer one.</summary>
    public Vec3 Out(Vec3 p) => Origin + Direction(p);

    /// <summary>A direction of this frame, seen in the outer one.</summary>
    public Vec3 Direction(Vec3 v) => (X * v.X) + (Y * v.Y) + (Z * v.Z);

    /// <summary>A point of the outer frame, seen in this one.</summary>
    public Vec3 In(Vec3 p)
    {
        var d = p - Origin;
        return new(d.Dot(X), d.Dot(Y), d.Dot(Z));
    }

    /// <summary>A frame given in this one, seen in the outer one.</summary>
    public Frame Then(Frame inner) =>
        new(Out(inner.Origin), Direction(inner.X), Direction(inner.Y), Direction(inner.Z));

    /// <summary>The frame in which the outer frame is given when seen from this one.</summary>
    public Frame Inverse =>
        new(
            new(-Origin.Dot(X), -Origin.Dot(Y), -Origin.Dot(Z)),
            new(X.X, Y.X, Z.X),
            new(X.Y, Y.Y, Z.Y),
            new(X.Z, Y.Z, Z.Z)
        );

    /// <summary>The frame moved along its outer axes.</summary>
    public Frame Moved(Vec3 by) => this with { Origin = Origin + by };

    /// <summary>Its own numbers only: the text that a record writes by itself would follow the computed ones without end.</summary>
    public override string ToString() => FormattableString.Invariant($"{Origin} x {X} y {Y} z {Z}");
}
