using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>A folded part as a tree whose bends can each be open, part of the way, or closed.</summary>
/// <remarks>
/// A bend opens by unrolling: at the angle θ of α the share θ/α of its allowance lies round the axis, the rest is flat, so that the neutral
/// fibre keeps its length and both ends are exact. The flat rest lies on the side that is swung.
/// <b>Source</b>: derived. <b>Checked by</b>: invariants (closed is the fold, open is the blank).
/// </remarks>
internal sealed class FoldTree
{
    private readonly int[] parentBend;
    private readonly int[] parentFlat;
    private readonly int[] carried;

    public FoldTree(FoldedPart part)
    {
        Part = part;
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < part.Faces.Count; i++)
        {
            index[part.Faces[i].Face] = i;
        }

        parentBend = new int[part.Faces.Count];
        parentFlat = new int[part.Faces.Count];
        Array.Fill(parentBend, -1);
        Array.Fill(parentFlat, -1);
        carried = new int[part.Bends.Count];
        for (var b = 0; b < part.Bends.Count; b++)
        {
            var child = index[part.Bends[b].Flange];
            carried[b] = child;
            parentBend[child] = b;
            parentFlat[child] = index[part.Bends[b].Parent];
        }
    }

    public FoldedPart Part { get; }

    public int FlatCount => Part.Faces.Count;

    /// <summary>Bend that carries a flat, -1 for the first face.</summary>
    public int BendOf(int flat) => parentBend[flat];

    /// <summary>Flat that a bend carries.</summary>
    public int CarriedBy(int bend) => carried[bend];

    /// <summary>Flat that a flat starts from, -1 for the first face.</summary>
    public int ParentOf(int flat) => parentFlat[flat];

    /// <summary>True when a flat is another or hangs on it.</summary>
    public bool IsUnder(int flat, int root)
    {
        for (var f = flat; f >= 0; f = parentFlat[f])
        {
            if (f == root)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Bends on the way from one flat to another, as bits.</summary>
    public ulong Path(int from, int to)
    {
        var bits = 0UL;
        for (var f = from; parentFlat[f] >= 0; f = parentFlat[f])
        {
            bits ^= 1UL << parentBend[f];
        }

        for (var f = to; parentFlat[f] >= 0; f = parentFlat[f])
        {
            bits ^= 1UL << parentBend[f];
        }

        return bits;
    }

    /// <summary>Where a flat stands, seen from another: carries points of the folded part to where they are with these bends made.</summary>
    /// <param name="flat">The flat that is looked at.</param>
    /// <param name="from">The flat that keeps still.</param>
    /// <param name="done">Bends that are made, as bits.</param>
    /// <param name="active">A bend that is under way, or -1.</param>
    /// <param name="share">How far it is, 0 to 1 or a little above.</param>
    /// <param name="restAtParent">True when the flat rest of that bend lies at its parent.</param>
    public Frame Seen(int flat, int from, ulong done, int active, double share, bool restAtParent)
    {
        Frame Up(int f)
        {
            var pose = Frame.World;
            for (; parentFlat[f] >= 0; f = parentFlat[f])
            {
                var bend = parentBend[f];
                var part =
                    bend == active ? share
                    : (done >> bend & 1) == 1 ? 1
                    : 0;
                pose = part == 1 ? pose : Opened(Part.Bends[bend], part, bend == active && restAtParent).Then(pose);
            }

            return pose;
        }

        return Up(from).Inverse.Then(Up(flat));
    }

    /// <summary>What carries the flange of a bend from closed to a share of its angle.</summary>
    private static Frame Opened(FoldedBend bend, double share, bool restAtParent)
    {
        var rest = bend.AllowanceM * (1 - share);
        var back = Turned(-bend.AngleRad);
        var turn = Turned(bend.AngleRad * share);
        var move = Frame.World with { Origin = new(0, rest, 0) };
        var local = restAtParent ? move.Then(turn).Then(back) : turn.Then(move).Then(back);
        return bend.Axis.Then(local).Then(bend.Axis.Inverse);
    }

    /// <summary>A turn about x that carries z towards y.</summary>
    internal static Frame Turned(double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new(default, new(1, 0, 0), new(0, cos, -sin), new(0, sin, cos));
    }
}
