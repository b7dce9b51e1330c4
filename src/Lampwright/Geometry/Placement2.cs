namespace Lampwright.Geometry;

/// <summary>A move and turn in the plane that keeps lengths and handedness: origin and direction of x.</summary>
/// <param name="Origin">Where its zero lies in the outer plane, metres.</param>
/// <param name="X">Unit vector of its x in the outer plane; y is x turned a quarter to the left.</param>
public readonly record struct Placement2(Vec2 Origin, Vec2 X)
{
    /// <summary>The placement that changes nothing.</summary>
    public static Placement2 Identity { get; } = new(default, new(1, 0));

    /// <summary>A point of this plane, seen in the outer one.</summary>
    public Vec2 Out(Vec2 p) => Origin + Direction(p);

    /// <summary>A direction of this plane, seen in the outer one.</summary>
    public Vec2 Direction(Vec2 v) => (X * v.X) + (X.Left * v.Y);

    /// <summary>A point of the outer plane, seen in this one.</summary>
    public Vec2 In(Vec2 p)
    {
        var d = p - Origin;
        return new(d.Dot(X), d.Dot(X.Left));
    }

    /// <summary>A placement given in this one, seen in the outer one.</summary>
    public Placement2 Then(Placement2 inner) => new(Out(inner.Origin), Direction(inner.X));

    /// <summary>An outline of this plane, seen in the outer one.</summary>
    public Outline Out(Outline outline)
    {
        var corners = new Corner[outline.Corners.Count];
        for (var i = 0; i < corners.Length; i++)
        {
            var corner = outline.Corners[i];
            corners[i] = corner with { Point = Out(corner.Point) };
        }

        return new(corners);
    }
}
