using Lampwright.Geometry;

namespace Lampwright.FitUp;

/// <summary>One side of a pattern: the plane that touches a neighbour, with the holes in it, in the body's frame.</summary>
/// <param name="U">Direction that turns are counted from, in the plane.</param>
/// <param name="V">Across it, so that U, V and D are right-handed.</param>
/// <param name="D">Unit vector out of the side.</param>
/// <param name="Height">Height of the plane along D over the body's origin, metres.</param>
/// <param name="Holes">Holes in U and V, metres.</param>
internal sealed record Contact(Vec3 U, Vec3 V, Vec3 D, double Height, Vec2[] Holes)
{
    /// <summary>The near or the far side of a pattern.</summary>
    public static Contact Of(PatternSpec pattern, bool far)
    {
        Guard.Positive(pattern.Outward.Length);
        var outward = pattern.Outward.Unit;
        var along = pattern.Along - (outward * pattern.Along.Dot(outward));
        if (!(along.Length > 1e-9))
        {
            // No direction told: the axis of the body that is furthest from the normal.
            var axis =
                Math.Abs(outward.X) <= Math.Abs(outward.Y) && Math.Abs(outward.X) <= Math.Abs(outward.Z)
                    ? new Vec3(1, 0, 0)
                    : new Vec3(
                        0,
                        Math.Abs(outward.Y) <= Math.Abs(outward.Z) ? 1 : 0,
                        Math.Abs(outward.Y) <= Math.Abs(outward.Z) ? 0 : 1
                    );
            along = axis - (outward * axis.Dot(outward));
        }

        var u = along.Unit;
        var d = far ? -outward : outward;
        var v = d.Cross(u);
        var (near, holes) = (0.0, new Vec2[pattern.Holes.Count]);
        for (var i = 0; i < holes.Length; i++)
        {
            var centre = pattern.Holes[i].Centre;
            near += centre.Dot(outward) / holes.Length;
            holes[i] = new(centre.Dot(u), centre.Dot(v));
        }

        return new(u, v, d, far ? pattern.ThicknessM - near : near, holes);
    }

    /// <summary>Frame of the body whose side <paramref name="other"/> lies on this side, in the frame of this body.</summary>
    public (Frame Frame, PlaneFit Fit) Carry(Contact other, double? turnRad)
    {
        // The other side is seen through its body, so its V runs the other way.
        var fit = PlaneFit.Of(Holes, Array.ConvertAll(other.Holes, h => new Vec2(h.X, -h.Y)), turnRad);
        var (s, c) = Math.SinCos(fit.TurnRad);
        var x = (U * c) + (V * s);
        var y = (V * c) - (U * s);
        Vec3 Turned(Vec3 e) => (x * e.Dot(other.U)) - (y * e.Dot(other.V)) - (D * e.Dot(other.D));
        var origin = (U * fit.Shift.X) + (V * fit.Shift.Y) + (D * (Height + other.Height));
        return (new(origin, Turned(new(1, 0, 0)), Turned(new(0, 1, 0)), Turned(new(0, 0, 1))), fit);
    }
}
