using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>Whether one stroke can be made from one side as the part stands: clamped, swung through, with fingers that fit.</summary>
/// <remarks>
/// What a flat does hangs only on the bends between it and the clamp. Each flat is therefore looked at once for each state of these, and the
/// states of the whole part, up to 2 to the power of its bends, are put together from them.
/// </remarks>
internal sealed class StrokeChecks
{
    private static readonly double StepRad = Math.PI / 60;
    private static readonly double SelfStepRad = Math.PI / 30;
    private static readonly double ClearM = 2e-4;

    private readonly FoldTree tree;
    private readonly PartPlates plates;
    private readonly BrakeSolids solids;
    private readonly Frame machine;
    private readonly double noseBack;
    private readonly bool[] moving;
    private readonly int clamped;
    private readonly ulong[] paths;
    private readonly Dictionary<ulong, Piece>[] pieces;
    private readonly Dictionary<(int Flat, int Other, ulong State), Hindrance> pairs = [];
    private readonly double thickness;

    public StrokeChecks(FoldTree tree, PartPlates plates, BrakeSolids solids, Stroke stroke, ClampedSide side)
    {
        (this.tree, this.plates, this.solids) = (tree, plates, solids);
        (Stroke, Side) = (stroke, side);
        thickness = tree.Part.ThicknessM;
        var seat = BrakeSeat.Of(tree.Part, stroke, side, solids.Machine);
        (machine, noseBack) = (seat.Machine, seat.NoseBackM);
        (From, To) = (seat.FromM, seat.ToM);
        clamped = side == ClampedSide.Parent ? stroke.Parent : stroke.Children[0];
        moving = new bool[tree.FlatCount];
        paths = new ulong[tree.FlatCount + tree.Part.Bends.Count];
        pieces = new Dictionary<ulong, Piece>[paths.Length];
        for (var i = 0; i < paths.Length; i++)
        {
            var flat = FlatOf(i);
            if (i < moving.Length)
            {
                moving[i] = stroke.Children.Any(c => tree.IsUnder(i, c)) == (side == ClampedSide.Parent);
            }

            paths[i] = tree.Path(clamped, flat) | (i < moving.Length ? 0 : 1UL << (i - moving.Length));
            pieces[i] = [];
        }
    }

    public Stroke Stroke { get; }

    public ClampedSide Side { get; }

    /// <summary>Ends of the bend along the brake, metres from the middle of its first bend.</summary>
    public double From { get; }

    /// <summary>The other end.</summary>
    public double To { get; }

    /// <summary>How many flats were looked at.</summary>
    public int Looks { get; private set; }

    /// <summary>What hinders the stroke with these bends made; none, and the room for fingers, where nothing does.</summary>
    /// <param name="done">Bends that are made, as bits.</param>
    /// <param name="present">Flats that belong to the part.</param>
    /// <param name="fingers">The set of fingers.</param>
    /// <param name="room">Room for the fingers.</param>
    public Hindrance At(ulong done, bool[] present, FingerRow fingers, out FingerRoom room)
    {
        var brake = solids.Machine;
        room = default;
        if (Stroke.SwingRad > brake.ClosingRad + 1e-9)
        {
            return new(Obstacle.Closing, AngleRad: Stroke.SwingRad);
        }

        if (To - From > brake.LengthM + 1e-9)
        {
            return new(Obstacle.Length);
        }

        var (hold, middle) = (double.NegativeInfinity, (From + To) / 2);
        var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
        var (lowBy, highBy) = (-1, -1);
        for (var i = 0; i < paths.Length; i++)
        {
            if (!present[FlatOf(i)] || i >= moving.Length && !present[tree.CarriedBy(i - moving.Length)])
            {
                continue;
            }

            var piece = Look(i, done);
            if (piece.Hindrance.Obstacle != Obstacle.None)
            {
                return piece.Hindrance;
            }

            hold = Math.Max(hold, piece.HoldM);
            foreach (var (from, to) in piece.Fingers)
            {
                if (from > middle)
                {
                    (high, highBy) = from < high ? (from, i) : (high, highBy);
                }
                else if (to < middle)
                {
                    (low, lowBy) = to > low ? (to, i) : (low, lowBy);
                }
                else
                {
                    return new(Obstacle.Fingers, NameOf(i), AngleRad: piece.FingersAtRad);
                }
            }
        }

        if (hold < brake.LeastHoldM - 1e-9)
        {
            return new(Obstacle.Hold, tree.Part.Faces[clamped].Face, FromM: hold);
        }

        if (Crossing(done, present) is { Obstacle: not Obstacle.None } cross)
        {
            return cross;
        }

        (low, high) = (low + ClearM, high - ClearM);
        var gap = Math.Min(brake.EndGapM, (To - From) / 4);
        if (low > From + gap || high < To - gap)
        {
            return new(
                Obstacle.Fingers,
                NameOf(low > From + gap ? lowBy : highBy),
                FromM: To - From - (2 * gap),
                ToM: high - low
            );
        }

        room = new(To - From - (2 * gap), Math.Min(high - low, brake.LengthM), low, high);
        return fingers.Between(room.LeastM, room.MostM) is null
            ? new(
                Obstacle.FingerWidths,
                lowBy >= 0 || highBy >= 0 ? NameOf(Math.Max(lowBy, highBy)) : "",
                FromM: room.LeastM,
                ToM: room.MostM
            )
            : default;
    }

    /// <summary>Highest point behind the nose and between the ends of the bend over the bed, metres; 0 where only sheet lies there.</summary>
    /// <param name="done">Bends that are made, as bits.</param>
    public double HighestBehindM(ulong done)
    {
        var most = 0.0;
        for (var f = 0; f < moving.Length; f++)
        {
            if (moving[f])
            {
                continue;
            }

            var pose = machine.Inverse.Then(Seen(f, done & paths[f], 0));
            var points = Array.ConvertAll(plates.Middle(f), pose.Out);
            if (points.Min(p => p.Y) < To && points.Max(p => p.Y) > From && points.Min(p => p.X) < -noseBack)
            {
                most = Math.Max(most, points.Max(p => p.Z));
            }
        }

        return most;
    }

    private int FlatOf(int piece) =>
        piece < tree.FlatCount ? piece : tree.ParentOf(tree.CarriedBy(piece - tree.FlatCount));

    private string NameOf(int piece) => tree.Part.Faces[piece < tree.FlatCount ? piece : FlatOf(piece)].Face;

    private Piece Look(int index, ulong done)
    {
        var state = done & paths[index];
        if (pieces[index].TryGetValue(state, out var known))
        {
            return known;
        }

        Looks++;
        var piece = Looked(index, state);
        pieces[index].Add(state, piece);
        return piece;
    }

    private Piece Looked(int index, ulong state)
    {
        var flat = FlatOf(index);
        var bend = index - moving.Length;
        if (bend >= 0 && Stroke.Bends.Contains(bend))
        {
            return new(default, [], 0, double.NegativeInfinity);
        }

        var skins = bend < 0 ? plates.Flat(flat) : plates.Bend(bend, (state >> bend & 1) == 1);
        var fingers = new List<(double, double)>();
        var (hold, fingersAt) = (double.NegativeInfinity, 0.0);
        var steps = Math.Max(1, (int)Math.Ceiling(Stroke.SwingRad / StepRad));
        Span<Vec3> placed = stackalloc Vec3[skins.Max(s => s.Length)];
        for (var step = 0; step <= steps; step++)
        {
            var angle = Stroke.SwingRad * step / steps;
            var pose = machine.Inverse.Then(Seen(flat, state, angle));
            foreach (var skin in skins)
            {
                var plate = Put(skin, pose, placed);
                var hit = solids.Hit(plate, noseBack, thickness, angle, angle <= Stroke.AngleRad + 1e-9);
                if (hit != Obstacle.None)
                {
                    return new(new(hit, NameOf(index), AngleRad: angle), [], 0, 0);
                }

                if (solids.HitsFingers(plate, noseBack, thickness, out var from, out var to))
                {
                    fingers.Add((from, to));
                    fingersAt = angle;
                }

                if (bend < 0 && !moving[flat])
                {
                    hold = Math.Max(hold, Held(plate));
                }
            }

            // What is clamped moves no more; the apron is all that still moves beside it.
            if (!moving[flat] && step == 0)
            {
                var swing = FixedAgainstApron(skins, pose, placed, steps);
                if (swing >= 0)
                {
                    return new(new(Obstacle.Apron, NameOf(index), AngleRad: swing), [], 0, 0);
                }

                break;
            }
        }

        return new(default, Merged(fingers), fingersAt, hold);
    }

    private Frame Seen(int flat, ulong state, double angle)
    {
        var active = -1;
        for (var k = 0; k < Stroke.Children.Count && active < 0; k++)
        {
            // The way between the clamp and this flat leads over one bend of the stroke at most.
            active = (paths[flat] >> Stroke.Bends[k] & 1) == 1 ? Stroke.Bends[k] : -1;
        }

        return tree.Seen(flat, clamped, state, active, angle / Stroke.AngleRad, Side == ClampedSide.Flange);
    }

    private double FixedAgainstApron(Vec3[][] skins, Frame pose, Span<Vec3> placed, int steps)
    {
        for (var step = 1; step <= steps; step++)
        {
            var angle = Stroke.SwingRad * step / steps;
            foreach (var skin in skins)
            {
                if (solids.HitsApron(Put(skin, pose, placed), angle))
                {
                    return angle;
                }
            }
        }

        return -1;
    }

    private double Held(ReadOnlySpan<Vec3> plate)
    {
        var least = 0.0;
        foreach (var p in plate)
        {
            if (p.Z < -1e-6 || p.Z > thickness + 1e-6)
            {
                return double.NegativeInfinity;
            }

            least = Math.Min(least, p.X);
        }

        return -least - noseBack;
    }

    private Hindrance Crossing(ulong done, bool[] present)
    {
        for (var a = 0; a < moving.Length; a++)
        {
            if (!moving[a] || !present[a])
            {
                continue;
            }

            for (var b = 0; b < moving.Length; b++)
            {
                if (moving[b] || !present[b] || tree.ParentOf(a) == b || tree.ParentOf(b) == a)
                {
                    continue;
                }

                var key = (a, b, done & (paths[a] | paths[b]));
                if (!pairs.TryGetValue(key, out var hit))
                {
                    hit = Crossed(a, b, key.Item3);
                    pairs.Add(key, hit);
                }

                if (hit.Obstacle != Obstacle.None)
                {
                    return hit;
                }
            }
        }

        return default;
    }

    private Hindrance Crossed(int a, int b, ulong state)
    {
        Looks++;
        Span<Vec3> still = stackalloc Vec3[plates.Middle(b).Length];
        Span<Vec3> swung = stackalloc Vec3[plates.Middle(a).Length];
        var other = Put(plates.Middle(b), machine.Inverse.Then(Seen(b, state, 0)), still);
        var steps = Math.Max(1, (int)Math.Ceiling(Stroke.SwingRad / SelfStepRad));
        for (var step = 0; step <= steps; step++)
        {
            var angle = Stroke.SwingRad * step / steps;
            var plate = Put(plates.Middle(a), machine.Inverse.Then(Seen(a, state, angle)), swung);
            if (PlateCrossing.Cross(plate, other))
            {
                return new(Obstacle.Part, tree.Part.Faces[a].Face, tree.Part.Faces[b].Face, angle);
            }
        }

        return default;
    }

    private static ReadOnlySpan<Vec3> Put(Vec3[] skin, in Frame pose, Span<Vec3> placed)
    {
        for (var i = 0; i < skin.Length; i++)
        {
            placed[i] = pose.Out(skin[i]);
        }

        return placed[..skin.Length];
    }

    private static List<(double From, double To)> Merged(List<(double From, double To)> spans)
    {
        spans.Sort();
        var merged = new List<(double From, double To)>();
        foreach (var (from, to) in spans)
        {
            if (merged.Count > 0 && from <= merged[^1].To)
            {
                merged[^1] = (merged[^1].From, Math.Max(merged[^1].To, to));
                continue;
            }

            merged.Add((from, to));
        }

        return merged;
    }

    /// <summary>Room for a row of fingers along the brake, metres.</summary>
    /// <param name="LeastM">Least width that the row spans with its gaps.</param>
    /// <param name="MostM">Most width of its fingers side by side.</param>
    /// <param name="LeftM">Where the room begins, from the middle of the stroke's first bend.</param>
    /// <param name="RightM">Where it ends.</param>
    public readonly record struct FingerRoom(double LeastM, double MostM, double LeftM, double RightM);

    private sealed record Piece(
        Hindrance Hindrance,
        List<(double From, double To)> Fingers,
        double FingersAtRad,
        double HoldM
    );
}
