namespace Lampwright.Geometry;

/// <summary>A point or a vector in space, in metres, right-handed.</summary>
/// <param name="X">First coordinate.</param>
/// <param name="Y">Second coordinate.</param>
/// <param name="Z">Third coordinate.</param>
public readonly record struct Vec3(double X, double Y, double Z)
{
    /// <summary>Sum.</summary>
    public static Vec3 operator +(Vec3 a, Vec3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vec3 operator -(Vec3 a, Vec3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Opposite vector.</summary>
    public static Vec3 operator -(Vec3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Scaled vector.</summary>
    public static Vec3 operator *(Vec3 a, double s) => new(a.X * s, a.Y * s, a.Z * s);

    /// <summary>Scaled vector.</summary>
    public static Vec3 operator *(double s, Vec3 a) => a * s;

    /// <summary>Scaled vector.</summary>
    public static Vec3 operator /(Vec3 a, double s) => new(a.X / s, a.Y / s, a.Z / s);

    /// <summary>Scalar product.</summary>
    public double Dot(Vec3 b) => (X * b.X) + (Y * b.Y) + (Z * b.Z);

    /// <summary>Vector product.</summary>
    public Vec3 Cross(Vec3 b) => new((Y * b.Z) - (Z * b.Y), (Z * b.X) - (X * b.Z), (X * b.Y) - (Y * b.X));

    /// <summary>Euclidean length.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>Unit vector of the same direction.</summary>
    public Vec3 Unit => this / Length;

    /// <summary>Its own numbers only: the text that a record writes by itself would follow the computed ones without end.</summary>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");
}
