using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>Machine and part cut across the middle of a bend. Metres: x from the apron's axis towards the maker, y up from the bed.</summary>
/// <param name="Bed">The bed.</param>
/// <param name="Apron">The apron, turned.</param>
/// <param name="Finger">The finger on the sheet.</param>
/// <param name="Clamp">The clamp's beam over it.</param>
/// <param name="Cut">What is cut of the part: flats and bends.</param>
/// <param name="Beyond">Outlines of flats that stand beyond the cut.</param>
public sealed record StageSection(
    IReadOnlyList<Vec2> Bed,
    IReadOnlyList<Vec2> Apron,
    IReadOnlyList<Vec2> Finger,
    IReadOnlyList<Vec2> Clamp,
    IReadOnlyList<SectionPiece> Cut,
    IReadOnlyList<SectionPiece> Beyond
)
{
    private static readonly int Chords = 8;
    private static readonly double SagM = 1e-4;

    /// <summary>The section at a moment of a stage.</summary>
    /// <param name="part">The part.</param>
    /// <param name="machine">The brake.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="stage">Which stage, from 0.</param>
    /// <param name="share">How far the bend is made, 0 to 1.</param>
    public static StageSection Of(FoldedPart part, BrakeMachine machine, BendPlan plan, int stage, double share = 1)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(plan);
        Guard.InRange(share, 0, 1);
        var (now, done) = (plan.Stages[stage], 0UL);
        foreach (var bend in plan.Stages.Take(stage).SelectMany(s => s.Stroke.Bends))
        {
            done |= 1UL << bend;
        }

        var looked = new Looked(part, machine, now, done, share);
        var (cut, beyond) = looked.Pieces();
        var angle = share * Math.Min(now.Stroke.AngleRad, machine.ClosingRad);
        var on = new Vec2(-now.NoseBackM, part.ThicknessM);
        return new(
            machine.Bed,
            [.. machine.Apron.Select(p => p.Turned(angle))],
            [.. machine.Finger.Select(p => p + on)],
            [.. machine.Clamp.Select(p => p + on)],
            cut,
            beyond
        );
    }

    /// <summary>The part as it lies in the brake at that moment, flat by flat and bend by bend.</summary>
    private sealed class Looked
    {
        private readonly FoldedPart part;
        private readonly FoldTree tree;
        private readonly BendStage stage;
        private readonly ulong done;
        private readonly double share;
        private readonly int clamped;
        private readonly Frame seat;

        public Looked(FoldedPart part, BrakeMachine machine, BendStage stage, ulong done, double share)
        {
            (this.part, this.stage, this.done, this.share) = (part, stage, done, share);
            tree = new(part);
            clamped = stage.Side == ClampedSide.Parent ? stage.Stroke.Parent : stage.Stroke.Children[0];
            seat = BrakeSeat.Of(part, stage.Stroke, stage.Side, machine).Machine.Inverse;
        }

        public (List<SectionPiece> Cut, List<SectionPiece> Beyond) Pieces()
        {
            var (cut, beyond) = (new List<SectionPiece>(), new List<SectionPiece>());
            for (var f = 0; f < part.Faces.Count; f++)
            {
                var face = part.Faces[f];
                var pose = Pose(f).Then(face.Frame);
                var rim = face.Flat.Points(SagM);
                Vec3[] At(double z) => [.. rim.Select(p => pose.Out(new(p.X, p.Y, z)))];
                var (outer, inner) = (Crossed(At(0)), Crossed(At(-part.ThicknessM)));
                for (var i = 0; i < Math.Min(outer.Count, inner.Count); i++)
                {
                    cut.Add(new(face.Face, Sheet(outer[i], inner[i])));
                }

                var middle = At(-part.ThicknessM / 2);
                if (middle.Max(p => p.Y) > 0 && Spread(middle) > part.ThicknessM)
                {
                    beyond.Add(new(face.Face, [.. middle.Select(p => new Vec2(p.X, p.Z))]));
                }
            }

            for (var b = 0; b < part.Bends.Count; b++)
            {
                cut.AddRange(Bend(b));
            }

            return (cut, beyond);
        }

        /// <summary>Where a flat stands; what the bend under way carries is turned with it.</summary>
        private Frame Pose(int flat)
        {
            var path = tree.Path(clamped, flat);
            var active = stage.Stroke.Bends.FirstOrDefault(b => (path >> b & 1) == 1, -1);
            return seat.Then(tree.Seen(flat, clamped, done, active, share, stage.Side == ClampedSide.Flange));
        }

        private IEnumerable<SectionPiece> Bend(int index)
        {
            var bend = part.Bends[index];
            var made =
                stage.Stroke.Bends.Contains(index) ? share
                : (done >> index & 1) == 1 ? 1
                : 0;
            var restFirst = stage.Side == ClampedSide.Flange && stage.Stroke.Bends.Contains(index);
            var pose = Pose(tree.ParentOf(tree.CarriedBy(index))).Then(bend.Axis);
            var (from, to) = (bend.Zone.Corners.Min(c => c.Point.X), bend.Zone.Corners.Max(c => c.Point.X));
            var sign = Math.Sign(bend.AngleRad);
            var (inside, outside) = (sign * bend.InsideRadiusM, sign * (bend.InsideRadiusM + part.ThicknessM));
            for (var k = 0; k < Chords; k++)
            {
                var (u0, u1) = (k / (double)Chords, (k + 1) / (double)Chords);
                Vec3[] Strip(double r)
                {
                    var (p, q) = (Along(bend, made, restFirst, u0, r), Along(bend, made, restFirst, u1, r));
                    return
                    [
                        pose.Out(p with { X = from }),
                        pose.Out(p with { X = to }),
                        pose.Out(q with { X = to }),
                        pose.Out(q with { X = from }),
                    ];
                }

                var (a, b) = (Crossed(Strip(outside)), Crossed(Strip(inside)));
                if (a.Count == 1 && b.Count == 1)
                {
                    yield return new(bend.Flange, Sheet(a[0], b[0]));
                }
            }
        }

        /// <summary>A place on a bend that is partly made, frame of its axis: round as far as it is made, the rest flat.</summary>
        private static Vec3 Along(FoldedBend bend, double made, bool restFirst, double u, double r)
        {
            var rest = (1 - made) * bend.AllowanceM;
            var round = restFirst ? Math.Max(u - (1 - made), 0) : Math.Min(u, made);
            var flat = restFirst ? Math.Min(u * bend.AllowanceM, rest) : Math.Max(u - made, 0) * bend.AllowanceM;
            var (sin, cos) = Math.SinCos(bend.AngleRad * round);
            return restFirst
                ? new(0, flat + (r * sin), r * cos)
                : new(0, (r * sin) + (flat * cos), (r * cos) - (flat * sin));
        }

        private static double Spread(Vec3[] points) =>
            Math.Max(points.Max(p => p.X) - points.Min(p => p.X), points.Max(p => p.Z) - points.Min(p => p.Z));

        /// <summary>A strip of sheet between its skins, both run the same way.</summary>
        private static Vec2[] Sheet((Vec2 A, Vec2 B) outer, (Vec2 A, Vec2 B) inner)
        {
            var same = (outer.A - inner.A).Length + (outer.B - inner.B).Length;
            var other = (outer.A - inner.B).Length + (outer.B - inner.A).Length;
            return same <= other ? [outer.A, outer.B, inner.B, inner.A] : [outer.A, outer.B, inner.A, inner.B];
        }

        /// <summary>Where a plate is cut by the plane across the brake, in order of x, then of height.</summary>
        private static List<(Vec2 A, Vec2 B)> Crossed(Vec3[] plate)
        {
            var at = new List<Vec2>();
            for (var i = 0; i < plate.Length; i++)
            {
                var (p, q) = (plate[i], plate[(i + 1) % plate.Length]);
                if (p.Y < 0 != q.Y < 0)
                {
                    var c = p + ((q - p) * (p.Y / (p.Y - q.Y)));
                    at.Add(new(c.X, c.Z));
                }
            }

            var along = at.Count > 1 ? at.MaxBy(p => (p - at[0]).Length) - at[0] : default;
            var sorted = at.OrderBy(p => p.Dot(along)).ToList();
            return [.. Enumerable.Range(0, sorted.Count / 2).Select(i => (sorted[2 * i], sorted[(2 * i) + 1]))];
        }
    }
}

/// <summary>A piece of a section.</summary>
/// <param name="Flat"><c>face</c>, or the flange that it is of or carries.</param>
/// <param name="Outline">Its outline, metres.</param>
public sealed record SectionPiece(string Flat, IReadOnlyList<Vec2> Outline);
