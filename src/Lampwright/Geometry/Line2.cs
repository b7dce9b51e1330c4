namespace Lampwright.Geometry;

/// <summary>An endless line in the plane.</summary>
/// <param name="Point">A point on it.</param>
/// <param name="Direction">Unit vector along it.</param>
public readonly record struct Line2(Vec2 Point, Vec2 Direction)
{
    /// <summary>How far a point lies to the left of the line, metres.</summary>
    public double LeftOf(Vec2 p) => Direction.Cross(p - Point);

    /// <summary>Where two lines cross; null where they run parallel within 1e-9 rad.</summary>
    public Vec2? Crossing(Line2 other)
    {
        var cross = Direction.Cross(other.Direction);
        return Math.Abs(cross) < 1e-9
            ? null
            : Point + (Direction * ((other.Point - Point).Cross(other.Direction) / cross));
    }

    /// <summary>The line moved to its left.</summary>
    public Line2 MovedLeft(double by) => this with { Point = Point + (Direction.Left * by) };
}
