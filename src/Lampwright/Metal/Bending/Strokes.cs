namespace Lampwright.Metal.Bending;

/// <summary>The strokes of a part.</summary>
internal static class Strokes
{
    private static readonly double AlikeRad = 1e-6;
    private static readonly double AlikeM = 1e-6;

    /// <summary>Bends of one flat that lie on one line and turn alike are one stroke; those that are pressed are none.</summary>
    /// <param name="tree">The part.</param>
    /// <param name="pressed">Flanges that no brake bends.</param>
    /// <param name="swing">Angle to swing to for a wanted angle and an inside radius, radians.</param>
    /// <param name="closingRad">A bend past this much is closed as far as the brake goes and pressed the rest.</param>
    public static List<Stroke> Of(
        FoldTree tree,
        IReadOnlySet<string> pressed,
        Func<FoldedBend, double> swing,
        double closingRad
    )
    {
        var strokes = new List<Stroke>();
        var taken = new HashSet<int>();
        for (var b = 0; b < tree.Part.Bends.Count; b++)
        {
            var bend = tree.Part.Bends[b];
            if (pressed.Contains(bend.Flange) || !taken.Add(b))
            {
                continue;
            }

            var group = new List<int> { b };
            for (var c = b + 1; c < tree.Part.Bends.Count; c++)
            {
                if (!pressed.Contains(tree.Part.Bends[c].Flange) && Alike(bend, tree.Part.Bends[c]) && taken.Add(c))
                {
                    group.Add(c);
                }
            }

            var angle = Math.Abs(bend.AngleRad);
            var isHem = angle > Math.PI - 1e-3;
            strokes.Add(
                new(
                    string.Join(", ", group.Select(g => tree.Part.Bends[g].Flange)),
                    group,
                    tree.ParentOf(tree.CarriedBy(b)),
                    [.. group.Select(tree.CarriedBy)],
                    angle,
                    isHem ? closingRad : Math.Max(angle, swing(bend))
                )
            );
        }

        return strokes;
    }

    private static bool Alike(FoldedBend a, FoldedBend b)
    {
        if (
            !string.Equals(a.Parent, b.Parent, StringComparison.Ordinal)
            || Math.Abs(a.AngleRad - b.AngleRad) > AlikeRad
            || Math.Abs(a.InsideRadiusM - b.InsideRadiusM) > AlikeM
        )
        {
            return false;
        }

        var off = a.Axis.In(b.Axis.Origin);
        return Math.Abs(off.Y) < AlikeM && Math.Abs(off.Z) < AlikeM && a.Axis.X.Dot(b.Axis.X) > 1 - 1e-9;
    }
}
