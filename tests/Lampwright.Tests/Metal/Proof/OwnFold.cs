using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal.Proof;

/// <summary>
/// Folds a blank by itself: from the tangents, angles and radii that are drawn on the blank, with turns by Rodrigues' formula about the axis of each bend.
/// Nothing of the station's frames is used.
/// </summary>
internal sealed class OwnFold(PartResult result)
{
    private readonly Blank _blank = result.Blank!;
    private readonly double _t = result.Spec.Sheet.ThicknessM;

    /// <summary>A point of the outer skin of a flat, from the blank into the part.</summary>
    public Vec3 Fold(Vec2 p, string face)
    {
        var at = new Vec3(p.X, p.Y, 0);

        // The innermost turn first: a flange is bent against its parent while that still lies flat, then both about the next.
        foreach (var bend in Chain(face))
        {
            at = Turn(Axis(bend), at, flatten: false);
        }

        var shift = result.BlankShift;
        return at - new Vec3(shift.X, shift.Y, 0);
    }

    /// <summary>The other way: a point of the part's outer skin back onto the blank; the third coordinate must come out 0.</summary>
    public Vec3 Unfold(Vec3 p, string face)
    {
        var shift = result.BlankShift;
        var at = p + new Vec3(shift.X, shift.Y, 0);
        foreach (var bend in Chain(face).Reverse())
        {
            at = Turn(Axis(bend), at, flatten: true);
        }

        return at;
    }

    /// <summary>Bends between a face and the first, the nearest to the face first.</summary>
    private IEnumerable<BlankBend> Chain(string face)
    {
        while (face != "face")
        {
            yield return _blank.Bends.Single(b => b.Flange == face);
            face = result.Spec.Flanges.Single(f => f.Id == face).OnEdge.Split('.')[0];
        }
    }

    private (Vec3 At, Vec3 Along, Vec3 Across, double Angle, double Allowance) Axis(BlankBend bend)
    {
        var (a, b) = (bend.InnerTangent.A, bend.InnerTangent.B);
        var along = b - a;
        along *= 1 / Math.Sqrt((along.X * along.X) + (along.Y * along.Y));
        var across = new Vec2(along.Y, -along.X);
        if (across.Dot(bend.OuterTangent.A - a) < 0)
        {
            (along, across) = (-along, -across);
        }

        // The axis lies below the outer skin by R + T when the flange turns down, above it by R when it turns up.
        var down = bend.Direction == BendDirection.Down;
        var z = down ? -(bend.InsideRadiusM + _t) : bend.InsideRadiusM;
        return (
            new(a.X, a.Y, z),
            new(along.X, along.Y, 0),
            new(across.X, across.Y, 0),
            down ? bend.AngleRad : -bend.AngleRad,
            bend.AllowanceM
        );
    }

    /// <summary>The zone is drawn in to nothing and the flat turned about the axis; or turned back and let out again.</summary>
    private static Vec3 Turn(
        (Vec3 At, Vec3 Along, Vec3 Across, double Angle, double Allowance) bend,
        Vec3 p,
        bool flatten
    )
    {
        var (sin, cos) = Math.SinCos(flatten ? -bend.Angle : bend.Angle);
        var r = (flatten ? p : p - (bend.Across * bend.Allowance)) - bend.At;

        // Rodrigues: across turns towards -z when the angle is positive, so the turn is about `along` with across × -z = along.
        var turned = (r * cos) + (bend.Along.Cross(r) * sin) + (bend.Along * (bend.Along.Dot(r) * (1 - cos)));
        var at = bend.At + turned;
        return flatten ? at + (bend.Across * bend.Allowance) : at;
    }
}
