using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class FoldSceneTests
{
    [Fact]
    public void Body_of_a_tray_encloses_its_volume()
    {
        var spec = Parts.Tray() with
        {
            Holes =
            [
                new("vents", "wall_l", default, HoleShape.Round(0.004), HoleAnchor.Centre)
                {
                    Pattern = HolePattern.Field(0.006, 0.05, 0.018, staggered: true),
                },
            ],
        };
        var part = SheetPart.Of(spec).Folded!;
        var body = FoldScene.Of(part);

        // Divergence theorem over the triangles; a bend stretches, so that its volume is the ring's, not the blank's.
        var volume = body.Faces.Sum(Sixfold) / 6;
        var bends = part.Bends.Sum(b =>
        {
            var (r, t) = (b.InsideRadiusM, part.ThicknessM);
            return b.Zone.Area / b.AllowanceM * Math.Abs(b.AngleRad) * (((r + t) * (r + t)) - (r * r)) / 2;
        });
        var flats = part.Faces.Sum(f => f.Flat.Area) * part.ThicknessM;
        var holes = part.Holes.Sum(h => h.Outline.Area) * part.ThicknessM;
        Assert.Equal(flats + bends - holes, volume, 2e-3 * volume);
        Assert.All(body.Faces.SelectMany(f => f.Normals), n => Assert.Equal(1, n.Length, 1e-9));
    }

    [Fact]
    public void Sheet_with_very_many_holes_is_still_drawn_at_once()
    {
        var spec = new PartSpec("p", Parts.Mild, FaceSpec.Rectangle(1, 1))
        {
            Holes =
            [
                new("h", "face", default, HoleShape.Round(0.004), HoleAnchor.Centre)
                {
                    Pattern = HolePattern.Grid(100, 100, 0.008, 0.008),
                },
            ],
        };
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var body = FoldScene.Of(SheetPart.Of(spec).Folded!);
        Assert.True(clock.ElapsedMilliseconds < 5000, $"{clock.ElapsedMilliseconds} ms");
        Assert.Equal(2, body.Faces[0].Triangles.Count / 3);
        Assert.Contains(body.Edges, e => e.Id == "p.face.h[100,100]");
    }

    private static double Sixfold(SceneFace face)
    {
        var sum = 0.0;
        for (var i = 0; i < face.Triangles.Count; i += 3)
        {
            var (a, b, c) = (
                face.Points[face.Triangles[i]],
                face.Points[face.Triangles[i + 1]],
                face.Points[face.Triangles[i + 2]]
            );
            sum += a.Dot(b.Cross(c));
        }

        return sum;
    }
}
