using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>The mirror image of a part: geometry swaps sides, ids stay with the metal they name.</summary>
/// <remarks>Frames stay right-handed: each face's datum moves to the other end of its x, and x runs the other way in the metal.</remarks>
public static class PartMirror
{
    /// <summary>The mirror image of a blank, x reversed in its own box.</summary>
    public static Blank Of(Blank blank)
    {
        var w = blank.WidthM;
        Vec2 Map(Vec2 p) => new(w - p.X, p.Y);
        Segment Turn(Segment s) => new(Map(s.B), Map(s.A));
        return blank with
        {
            Outline = blank.Outline.MirroredX(w),
            Holes = [.. blank.Holes.Select(h => h with { Outline = h.Outline.MirroredX(w), Centre = Map(h.Centre) })],
            Marks =
            [
                .. blank.Marks.Select(m =>
                    m with
                    {
                        Strokes = [.. m.Strokes.Select(s => (IReadOnlyList<Vec2>)[.. s.Select(Map)])],
                    }
                ),
            ],
            Bends =
            [
                .. blank.Bends.Select(b =>
                    b with
                    {
                        CentreLine = Turn(b.CentreLine),
                        InnerTangent = Turn(b.InnerTangent),
                        OuterTangent = Turn(b.OuterTangent),
                        Set = b.Set is { } set ? set with { Line = Turn(set.Line) } : null,
                    }
                ),
            ],
        };
    }

    /// <summary>The mirror image of a fold about the middle of its first face's box.</summary>
    public static FoldedPart Of(FoldedPart part)
    {
        var (first, last) = part.Faces[0].Nominal.Box;
        var sum = first.X + last.X;
        Vec3 Map(Vec3 p) => new(sum - p.X, p.Y, p.Z);
        static Vec3 Way(Vec3 v) => new(-v.X, v.Y, v.Z);
        var sums = part.Faces.ToDictionary(
            f => f.Face,
            f =>
            {
                var (a, b) = f.Nominal.Box;
                return a.X + b.X;
            },
            StringComparer.Ordinal
        );
        Frame Turn(Frame f, double own) => new(Map(f.Out(new(own, 0, 0))), -Way(f.X), Way(f.Y), Way(f.Z));
        return part with
        {
            Faces =
            [
                .. part.Faces.Select(f =>
                    f with
                    {
                        Frame = Turn(f.Frame, sums[f.Face]),
                        Nominal = f.Nominal.MirroredX(sums[f.Face]),
                        Flat = f.Flat.MirroredX(sums[f.Face]),
                    }
                ),
            ],
            Bends =
            [
                .. part.Bends.Select(b =>
                    b with
                    {
                        Axis = Turn(b.Axis, sums[b.Flange]),
                        Zone = b.Zone.MirroredX(sums[b.Flange]),
                    }
                ),
            ],
            Holes =
            [
                .. part.Holes.Select(h =>
                    h with
                    {
                        Centre = Map(h.Centre),
                        Axis = Way(h.Axis),
                        Outline = h.Outline.MirroredX(sums[h.Face]),
                        CentreOnFace = new(sums[h.Face] - h.CentreOnFace.X, h.CentreOnFace.Y),
                    }
                ),
            ],
            Edges =
            [
                .. part.Edges.Select(e => new FoldedEdge(e.Id, Map(e.B), Map(e.A), Way(e.Outward), Way(e.Normal))),
            ],
            CentreOfMass = Map(part.CentreOfMass),
            BoxLeast = new(sum - part.BoxMost.X, part.BoxLeast.Y, part.BoxLeast.Z),
            BoxMost = new(sum - part.BoxLeast.X, part.BoxMost.Y, part.BoxMost.Z),
        };
    }
}
