namespace Lampwright.Geometry;

/// <summary>A point or a vector in a plane, in metres unless the place that uses it says otherwise.</summary>
/// <param name="X">First coordinate.</param>
/// <param name="Y">Second coordinate.</param>
public readonly record struct Vec2(double X, double Y)
{
    /// <summary>Sum.</summary>
    public static Vec2 operator +(Vec2 a, Vec2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    public static Vec2 operator -(Vec2 a, Vec2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Opposite vector.</summary>
    public static Vec2 operator -(Vec2 a) => new(-a.X, -a.Y);

    /// <summary>Scaled vector.</summary>
    public static Vec2 operator *(Vec2 a, double s) => new(a.X * s, a.Y * s);

    /// <summary>Scaled vector.</summary>
    public static Vec2 operator *(double s, Vec2 a) => a * s;

    /// <summary>Scaled vector.</summary>
    public static Vec2 operator /(Vec2 a, double s) => new(a.X / s, a.Y / s);

    /// <summary>Scalar product.</summary>
    public double Dot(Vec2 b) => (X * b.X) + (Y * b.Y);

    /// <summary>Third component of the vector product; positive when <paramref name="b"/> lies to the left.</summary>
    public double Cross(Vec2 b) => (X * b.Y) - (Y * b.X);

    /// <summary>Euclidean length.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Unit vector of the same direction.</summary>
    public Vec2 Unit => this / Length;

    /// <summary>The vector turned a quarter turn to the left.</summary>
    public Vec2 Left => new(-Y, X);

    /// <summary>The vector turned by an angle in radians, counter-clockwise.</summary>
    public Vec2 Turned(double angle)
    {
        var (s, c) = Math.SinCos(angle);
        return new((c * X) - (s * Y), (s * X) + (c * Y));
    }

    /// <summary>Its own numbers only: the text that a record writes by itself would follow the computed ones without end.</summary>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");
}
