using Lampwright.Geometry;
using Lampwright.Metal;
using Lampwright.Metal.Bending;

namespace Lampwright.Tests.Metal.Bending;

/// <summary>
/// Bends a part stage by stage on a brake and looks whether it hits, by itself: from the tangents, angles and radii drawn on the blank, with turns by
/// Rodrigues' formula, points strewn over the flats, and points counted in polygons. Nothing of the search's frames, plates or cutting is used.
/// </summary>
internal sealed class OwnBench(PartResult result, BrakeMachine machine)
{
    private static readonly double StrewM = 0.0015;
    private readonly Blank blank = result.Blank!;
    private readonly FoldedPart folded = result.Folded!;
    private readonly double t = result.Spec.Sheet.ThicknessM;

    // Drawn once: what a stage asks for at every degree again.
    private readonly Dictionary<string, List<Vec2>> strewn = new(StringComparer.Ordinal);
    private readonly Dictionary<string, BlankBend[]> chains = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (Vec3 At, Vec3 Along, Vec3 Across, double Angle, double Allowance)> axes = new(
        StringComparer.Ordinal
    );

    /// <summary>How deep the part reaches into the machine in a stage at worst, metres, and where.</summary>
    public (double DepthM, string Where) Worst(
        IReadOnlyCollection<string> made,
        string flange,
        ClampedSide side,
        double? rowFrom,
        double rowWidth
    )
    {
        var bend = blank.Bends.Single(b => b.Flange == flange);
        var clamped = side == ClampedSide.Parent ? ParentOf(flange) : flange;
        var nose = machine.NoseRadiusM ?? bend.InsideRadiusM;
        var back = Math.Max(
            machine.NoseBackM ?? (((bend.InsideRadiusM + t) * Math.Tan(Math.Min(bend.AngleRad, 2.6) / 2)) - nose),
            t
        );
        var (worst, where) = (0.0, "");
        for (var degrees = 0; degrees <= bend.AngleRad * 180 / Math.PI; degrees++)
        {
            var angle = degrees * Math.PI / 180;
            foreach (var face in folded.Faces)
            {
                // All that is done to one flat at one angle is rigid: four points tell where the others are.
                Vec3 At(Vec2 p, double z) =>
                    Machine(p, z, face.Face, made, flange, angle, side, bend, clamped, back + nose);
                var zero = At(default, 0);
                var (x, y, z) = (At(new(1, 0), 0) - zero, At(new(0, 1), 0) - zero, At(default, 1) - zero);
                foreach (var depth in (double[])[-0.0001, 0.0001 - t])
                {
                    foreach (var p in Strewn(face))
                    {
                        var at = zero + (x * p.X) + (y * p.Y) + (z * depth);
                        var hit = Depth(at, angle, back, rowFrom, rowWidth, degrees > 0 && face.Face != flange);
                        if (hit > worst)
                        {
                            (worst, where) = (hit, $"{face.Face} at {degrees} deg, {at}");
                        }
                    }
                }
            }
        }

        return (worst, where);
    }

    private string ParentOf(string flange) => result.Spec.Flanges.Single(f => f.Id == flange).OnEdge.Split('.')[0];

    /// <summary>Points over a flat, on the blank.</summary>
    private List<Vec2> Strewn(FoldedFace face)
    {
        if (strewn.TryGetValue(face.Face, out var known))
        {
            return known;
        }

        return strewn[face.Face] = StrewnAnew(face);
    }

    private List<Vec2> StrewnAnew(FoldedFace face)
    {
        var rim = face.Flat.Points(1e-4);
        var (least, most) = face.Flat.Box;
        var points = new List<Vec2>();
        for (var i = 0; i < rim.Count; i++)
        {
            var (a, b) = (rim[i], rim[(i + 1) % rim.Count]);
            var n = (int)Math.Ceiling((b - a).Length / StrewM);
            for (var k = 0; k < n; k++)
            {
                points.Add(a + ((b - a) * (k / (double)n)));
            }
        }

        for (var x = least.X; x < most.X; x += 4 * StrewM)
        {
            for (var y = least.Y; y < most.Y; y += 4 * StrewM)
            {
                if (In(rim, new(x, y)))
                {
                    points.Add(new(x, y));
                }
            }
        }

        // Back on the blank.
        var fold = new Proof.OwnFold(result);
        return points.ConvertAll(p =>
        {
            var q = fold.Unfold(face.Frame.Out(new(p.X, p.Y, 0)), face.Face);
            return new Vec2(q.X, q.Y);
        });
    }

    private Vec3 Machine(
        Vec2 p,
        double z,
        string face,
        IReadOnlyCollection<string> made,
        string active,
        double angle,
        ClampedSide side,
        BlankBend bend,
        string clamped,
        double tangent
    )
    {
        double AngleOf(string flange) =>
            flange == active ? angle
            : made.Contains(flange) ? double.NaN
            : 0;
        var at = new Vec3(p.X, p.Y, z);
        foreach (var b in Chain(face))
        {
            at = Turned(b, at, AngleOf(b.Flange), b.Flange == active && side == ClampedSide.Flange, back: false);
        }

        var held = Chain(clamped);
        for (var i = held.Length - 1; i >= 0; i--)
        {
            var b = held[i];
            at = Turned(b, at, AngleOf(b.Flange), b.Flange == active && side == ClampedSide.Flange, back: true);
        }

        // Now the point is where it stands when the clamped flat lies where the blank has it.
        var (line, _, across, _, _) = Axis(bend);
        var down = bend.Direction == BendDirection.Down;
        var start = side == ClampedSide.Parent ? 0 : bend.AllowanceM;
        var sign = side == ClampedSide.Parent ? 1 : -1;
        var d = at - line;
        var x = ((d.Dot(across) - start) * sign) - tangent;
        var up = down ? -at.Z : at.Z + t;
        var middle = (bend.CentreLine.A + bend.CentreLine.B) / 2;
        var beside = new Vec3(0, 0, down ? -1 : 1).Cross(across * sign);
        var y = (at - new Vec3(middle.X, middle.Y, 0)).Dot(beside);
        return new(x, y, up);
    }

    private double Depth(Vec3 at, double angle, double back, double? rowFrom, double rowWidth, bool withApron)
    {
        var (x, z) = (at.X, at.Z);
        var worst = Inside(machine.Bed, new(x, z));
        worst = Math.Max(worst, Inside(machine.Clamp, new(x + back, z - t)));
        if (rowFrom is { } from && Math.Abs(at.Y) < 10)
        {
            var beside = Math.Min(at.Y - from, from + rowWidth - at.Y);
            worst = Math.Max(worst, Math.Min(beside, Inside(machine.Finger, new(x + back, z - t))));
        }

        if (withApron)
        {
            var (sin, cos) = Math.SinCos(angle);
            worst = Math.Max(worst, Inside(machine.Apron, new((x * cos) + (z * sin), (z * cos) - (x * sin))));
        }

        return worst;
    }

    /// <summary>How far inside a polygon a point lies; 0 outside.</summary>
    private static double Inside(IReadOnlyList<Vec2> polygon, Vec2 p)
    {
        if (!In(polygon, p))
        {
            return 0;
        }

        var least = double.PositiveInfinity;
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            var along = b - a;
            var share = Math.Clamp((p - a).Dot(along) / along.Dot(along), 0, 1);
            least = Math.Min(least, (a + (along * share) - p).Length);
        }

        return least;
    }

    private static bool In(IReadOnlyList<Vec2> polygon, Vec2 p)
    {
        var inside = false;
        for (int i = 0, j = polygon.Count - 1; i < polygon.Count; j = i++)
        {
            var (a, b) = (polygon[i], polygon[j]);
            if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + ((b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y)))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private BlankBend[] Chain(string face)
    {
        if (!chains.TryGetValue(face, out var chain))
        {
            var bends = new List<BlankBend>();
            for (var f = face; f != "face"; f = ParentOf(f))
            {
                bends.Add(blank.Bends.Single(b => b.Flange == f));
            }

            chains[face] = chain = [.. bends];
        }

        return chain;
    }

    private (Vec3 At, Vec3 Along, Vec3 Across, double Angle, double Allowance) Axis(BlankBend bend)
    {
        if (!axes.TryGetValue(bend.Flange, out var axis))
        {
            axes[bend.Flange] = axis = AxisAnew(bend, t);
        }

        return axis;
    }

    private static (Vec3 At, Vec3 Along, Vec3 Across, double Angle, double Allowance) AxisAnew(BlankBend bend, double t)
    {
        var (a, b) = (bend.InnerTangent.A, bend.InnerTangent.B);
        var along = (b - a).Unit;
        var across = new Vec2(along.Y, -along.X);
        if (across.Dot(bend.OuterTangent.A - a) < 0)
        {
            (along, across) = (-along, -across);
        }

        var down = bend.Direction == BendDirection.Down;
        return (
            new(a.X, a.Y, down ? -(bend.InsideRadiusM + t) : bend.InsideRadiusM),
            new(along.X, along.Y, 0),
            new(across.X, across.Y, 0),
            down ? bend.AngleRad : -bend.AngleRad,
            bend.AllowanceM
        );
    }

    /// <summary>Bends by an angle (NaN: all of it); the rest of the allowance stays flat at the flange or at the parent.</summary>
    private Vec3 Turned(BlankBend drawn, Vec3 p, double angle, bool restAtParent, bool back)
    {
        var bend = Axis(drawn);
        var share = double.IsNaN(angle) ? 1 : angle / drawn.AngleRad;
        var axis = restAtParent ? bend.At + (bend.Across * (bend.Allowance * (1 - share))) : bend.At;
        var (sin, cos) = Math.SinCos(bend.Angle * share * (back ? -1 : 1));
        var used = bend.Across * (bend.Allowance * share);
        var r = (back ? p : p - used) - axis;
        var turned = (r * cos) + (bend.Along.Cross(r) * sin) + (bend.Along * (bend.Along.Dot(r) * (1 - cos)));
        return back ? axis + turned + used : axis + turned;
    }
}
