using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal.Proof;

/// <summary>Fold and unfold are inverse, on twelve thousand random parts of one to twelve bends.</summary>
public sealed class FoldInverseTests
{
    private const double Nanometre = 1e-9;

    private static readonly Lazy<List<PartResult>> Results = new(() =>
        [.. Enumerable.Range(0, 12_000).AsParallel().AsOrdered().Select(i => SheetPart.Of(RandomParts.Of(i)))]
    );

    private static IEnumerable<PartResult> Made => Results.Value.Where(r => r.Blank is not null);

    [Fact]
    public void Most_parts_can_be_made_with_any_number_of_bends_and_the_others_say_why()
    {
        Assert.All(
            Results.Value.Where(r => r.Blank is null),
            r => Assert.Contains(r.Findings, f => f.Severity == Severity.Stop)
        );
        var counts = Made.GroupBy(r => r.Blank!.Bends.Count).ToDictionary(g => g.Key, g => g.Count());
        Assert.All(
            Enumerable.Range(1, 12),
            n => Assert.True(counts.GetValueOrDefault(n) > 30, $"{n} bends: {string.Join(" ", counts)}")
        );
        Assert.True(Made.Count() > 2000, $"{Made.Count()} parts");
    }

    [Fact]
    public void Every_hole_lies_in_the_fold_where_its_place_on_the_blank_is_carried_to() =>
        Holds(
            (r, fold) =>
                r.Blank!.Holes.Zip(r.Folded!.Holes)
                    .Max(h =>
                    {
                        var frame = r.Folded.Faces.Single(f => f.Face == h.Second.Face).Frame;
                        var rim = h
                            .First.Outline.Corners.Zip(h.Second.Outline.Corners)
                            .Max(c =>
                                (
                                    fold.Fold(c.First.Point, h.First.On)
                                    - frame.Out(new(c.Second.Point.X, c.Second.Point.Y, 0))
                                ).Length
                            );
                        return Math.Max(rim, (fold.Fold(h.First.Centre, h.First.On) - h.Second.Centre).Length);
                    })
        );

    [Fact]
    public void Every_hole_of_the_fold_unfolds_to_its_place_on_the_blank() =>
        Holds(
            (r, fold) =>
                r.Folded!.Holes.Zip(r.Blank!.Holes)
                    .Max(h =>
                        (
                            fold.Unfold(h.First.Centre, h.First.Face)
                            - new Vec3(h.Second.Centre.X, h.Second.Centre.Y, 0)
                        ).Length
                    )
        );

    [Fact]
    public void What_is_unfolded_folds_to_where_it_was() =>
        Holds(
            (r, fold) =>
                r.Folded!.Faces.Max(f =>
                    f.Flat.Corners.Max(c =>
                    {
                        var there = f.Frame.Out(new(c.Point.X, c.Point.Y, 0));
                        var flat = fold.Unfold(there, f.Face);
                        return Math.Max(Math.Abs(flat.Z), (fold.Fold(new(flat.X, flat.Y), f.Face) - there).Length);
                    })
                )
        );

    /// <summary>Flats keep their area through the fold; with the bend zones they are the blank's, in square metres.</summary>
    [Fact]
    public void Area_outside_the_bends_is_kept() =>
        Holds(
            (r, fold) =>
            {
                var onBlank = 0.0;
                foreach (var face in r.Folded!.Faces)
                {
                    var folded = face.Flat.Corners.Select(c => face.Frame.Out(new(c.Point.X, c.Point.Y, 0))).ToList();
                    var flat = folded.Select(p => fold.Unfold(p, face.Face)).ToList();
                    var (there, here) = (Newell(folded, face.Frame.Z), Newell(flat, new(0, 0, 1)));
                    onBlank += here;
                    if (Math.Abs(there - here) > 1e-12)
                    {
                        return 1;
                    }
                }

                var bends = r.Folded.Bends.Sum(b => b.Zone.SignedArea);
                return Math.Abs(onBlank + bends - r.Blank!.Outline.SignedArea);
            }
        );

    [Fact]
    public void No_flat_is_turned_inside_out_without_a_finding()
    {
        foreach (var result in Made.Where(r => r.Findings.All(f => f.Severity != Severity.Stop)))
        {
            Assert.All(
                result.Folded!.Faces,
                f =>
                    Assert.True(
                        f.Flat.SignedArea > 0,
                        $"{f.Face} of {string.Join("; ", result.Spec.Flanges)} {result.Spec.Sheet}"
                    )
            );
        }
    }

    [Fact]
    public void No_outline_crosses_itself_without_a_finding()
    {
        var crossed = 0;
        foreach (var result in Made)
        {
            if (Crosses(result.Blank!.Outline.Points(1e-5)))
            {
                crossed++;
                Assert.Contains(result.Findings, f => f.Severity == Severity.Stop);
            }
        }

        Assert.True(crossed > 5, $"only {crossed} outlines cross: the law was not put to the proof");
    }

    private static void Holds(Func<PartResult, OwnFold, double> off)
    {
        foreach (var result in Made)
        {
            var by = off(result, new(result));
            Assert.True(
                by < Nanometre,
                $"off by {by}: {string.Join("; ", result.Spec.Flanges)} {result.Spec.Sheet} {result.Spec.Face}"
            );
        }
    }

    /// <summary>Area of a flat rim, positive counter-clockwise as seen against its normal.</summary>
    private static double Newell(List<Vec3> rim, Vec3 normal)
    {
        var sum = default(Vec3);
        for (var i = 1; i + 1 < rim.Count; i++)
        {
            sum += (rim[i] - rim[0]).Cross(rim[i + 1] - rim[0]);
        }

        return sum.Dot(normal) / 2;
    }

    /// <summary>Every pair of edges, by signed areas alone: an end on each side, a micrometre clear of the other edge's line.</summary>
    private static bool Crosses(IReadOnlyList<Vec2> rim)
    {
        for (var i = 0; i < rim.Count; i++)
        {
            for (var j = i + 2; j < rim.Count; j++)
            {
                var (a, b, c, d) = (rim[i], rim[(i + 1) % rim.Count], rim[j], rim[(j + 1) % rim.Count]);
                double Off(Vec2 p, Vec2 q, Vec2 x) => (q - p).Cross(x - p) / (q - p).Length;
                var apart = Math.Min(
                    Math.Min(Math.Abs(Off(a, b, c)), Math.Abs(Off(a, b, d))),
                    Math.Min(Math.Abs(Off(c, d, a)), Math.Abs(Off(c, d, b)))
                );
                if (apart > 1e-6 && Off(a, b, c) * Off(a, b, d) < 0 && Off(c, d, a) * Off(c, d, b) < 0)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
