using System.Runtime.InteropServices;
using Lampwright.Geometry;

namespace Lampwright.Files.Drawings;

/// <summary>A convex place on paper that is taken, such as the box of a text turned with it; y up.</summary>
/// <param name="Corners">Its corners in order.</param>
internal readonly record struct TextBox(Vec2[] Corners)
{
    public static TextBox Of(string text, Vec2 at, double size, TextAnchor anchor, double angle)
    {
        var width = TextWidth.Of(text, size);
        var from = anchor switch
        {
            TextAnchor.Middle => -width / 2,
            TextAnchor.End => -width,
            _ => 0,
        };
        Vec2 At(double x, double y) => at + new Vec2(x, y).Turned(angle);
        var (down, up) = (-0.22 * size, 0.78 * size);
        return new([At(from, down), At(from + width, down), At(from + width, up), At(from, up)]);
    }

    public static TextBox Of(Vec2 least, Vec2 most) => new([least, new(most.X, least.Y), most, new(least.X, most.Y)]);

    /// <summary>A regular figure of twelve corners round a circle.</summary>
    public static TextBox Round(Vec2 centre, double radius) =>
        new([.. Enumerable.Range(0, 12).Select(i => centre + new Vec2(radius * 1.035, 0).Turned(i * Math.PI / 6))]);
}

/// <summary>Knows which places are taken, and how badly a new label would lie there.</summary>
internal sealed class Crowd
{
    private readonly List<(TextBox Box, Vec2 Centre, double Radius)> boxes = [];
    private readonly List<(Vec2[] Ends, Vec2 Centre, double Radius, double Weight)> lines = [];

    public void Take(TextBox box)
    {
        var (centre, radius) = Round(box.Corners);
        boxes.Add((box, centre, radius));
    }

    public void Take(Vec2 a, Vec2 b, double weight) => lines.Add(([a, b], (a + b) / 2, (b - a).Length / 2, weight));

    /// <summary>0 for a free place; more the more it lies on.</summary>
    public double Cost(TextBox box)
    {
        var cost = 0.0;
        var (middle, radius) = Round(box.Corners);
        foreach (ref readonly var taken in CollectionsMarshal.AsSpan(boxes))
        {
            if (Near(middle, radius, taken.Centre, taken.Radius))
            {
                cost += Overlap(box.Corners, taken.Box.Corners) ? 10 : 0;
            }
        }

        foreach (ref readonly var line in CollectionsMarshal.AsSpan(lines))
        {
            if (Near(middle, radius, line.Centre, line.Radius))
            {
                cost += Overlap(box.Corners, line.Ends) ? line.Weight : 0;
            }
        }

        return cost;
    }

    private static bool Near(Vec2 a, double radius, Vec2 b, double reach)
    {
        var (x, y, sum) = (b.X - a.X, b.Y - a.Y, radius + reach);
        return (x * x) + (y * y) < sum * sum;
    }

    /// <summary>A circle round a place, to pass over the many that are far off.</summary>
    private static (Vec2 Centre, double Radius) Round(Vec2[] corners)
    {
        var centre = (corners[0] + corners[corners.Length / 2]) / 2;
        var radius = 0.0;
        foreach (var c in corners)
        {
            radius = Math.Max(radius, (c - centre).Length);
        }

        return (centre, radius);
    }

    /// <summary>Whether two convex shapes overlap (separating axes).</summary>
    private static bool Overlap(Vec2[] a, Vec2[] b) => !Parted(a, b) && !Parted(b, a);

    private static bool Parted(Vec2[] a, Vec2[] b)
    {
        for (var i = 0; i < a.Length; i++)
        {
            var edge = a[(i + 1) % a.Length] - a[i];
            if (edge.Length < 1e-12)
            {
                continue;
            }

            var axis = edge.Left;
            var (a0, a1) = Range(a, axis);
            var (b0, b1) = Range(b, axis);
            if (a1 <= b0 || b1 <= a0)
            {
                return true;
            }
        }

        return false;
    }

    private static (double Least, double Most) Range(Vec2[] points, Vec2 axis)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var p in points)
        {
            var d = p.Dot(axis);
            least = Math.Min(least, d);
            most = Math.Max(most, d);
        }

        return (least, most);
    }
}
