using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>Where the clamped flat of a stroke lies in the brake.</summary>
/// <param name="Machine">Frame of the machine seen from the clamped flat of the folded part: x out, y along, z up; zero on the apron's axis.</param>
/// <param name="NoseBackM">How far the foremost edge of the nose stands behind the apron's axis, metres.</param>
/// <param name="FromM">Where the stroke begins along the brake, metres from the middle of its first bend.</param>
/// <param name="ToM">Where it ends.</param>
internal readonly record struct BrakeSeat(Frame Machine, double NoseBackM, double FromM, double ToM)
{
    // A hem's setback has no end; its clamp stands as for the steepest bend that has one.
    private static readonly double SteepestRad = Math.PI * 5 / 6;

    public static BrakeSeat Of(FoldedPart part, Stroke stroke, ClampedSide side, BrakeMachine machine)
    {
        var bend = part.Bends[stroke.Bends[0]];
        var t = part.ThicknessM;
        var nose = machine.NoseRadiusM ?? bend.InsideRadiusM;
        var back = Math.Max(
            machine.NoseBackM
                ?? (((bend.InsideRadiusM + t) * Math.Tan(Math.Min(stroke.AngleRad, SteepestRad) / 2)) - nose),
            t
        );

        // The clamped flat ends where the round of the nose begins.
        var tangent = back + nose;
        var sign = Math.Sign(bend.AngleRad);
        var middle = (bend.Zone.Corners.Min(c => c.Point.X) + bend.Zone.Corners.Max(c => c.Point.X)) / 2;
        var up = new Vec3(0, 0, -sign);
        var isParent = side == ClampedSide.Parent;
        var forward = new Vec3(0, isParent ? 1 : -1, 0);
        var local = new Frame(
            new(middle, isParent ? tangent : -tangent, sign * (bend.InsideRadiusM + t)),
            forward,
            up.Cross(forward),
            up
        );
        var axis = isParent ? bend.Axis : bend.Axis.Then(FoldTree.Turned(bend.AngleRad));
        var frame = axis.Then(local);
        var (from, to) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var b in stroke.Bends)
        {
            foreach (var corner in part.Bends[b].Zone.Corners)
            {
                var along = frame.In(part.Bends[b].Axis.Out(new(corner.Point.X, 0, 0))).Y;
                (from, to) = (Math.Min(from, along), Math.Max(to, along));
            }
        }

        return new(frame, back, from, to);
    }
}
