using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

/// <summary>A finding says where on the blank it bites, and the place is where the numbers of its message are measured.</summary>
public sealed class FindingPlaceTests
{
    private static PartSpec Angle(params HoleSpec[] holes) =>
        new("p", Parts.Mild, FaceSpec.Rectangle(0.1, 0.08)) { Flanges = [new("a", "face.left", 0.03)], Holes = holes };

    private static HoleSpec Round(string id, double x, double y, double d = 6) =>
        new(id, "face", new(x / 1000, y / 1000), HoleShape.Round(d / 1000));

    private static FindingPlace Place(PartResult part, Rule rule) =>
        part.Findings.First(f => f.Rule == rule).Place
        ?? throw new InvalidOperationException($"{rule.Code} has no place.");

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_place_of_a_hole_near_a_bend_is_the_metal_between_them(bool mirrored)
    {
        var part = SheetPart.Of(Angle(Round("h", 8, 40)) with { Mirrored = mirrored });
        var place = Place(part, MetalRules.HoleNearBend);
        var (hole, bend) = (part.Blank!.Holes[0], part.Blank.Bends[0]);

        // 8 mm from the mould line less setback of 3 mm and radius of 3 mm.
        Assert.Equal(0.002, (place.B - place.A).Length, 1e-9);
        Assert.Equal(0.003, (place.A - hole.Centre).Length, 1e-9);
        Assert.Equal(0, Math.Abs(place.B.X - bend.InnerTangent.A.X), 1e-9);
        Assert.Equal("face", place.Flat);
    }

    [Fact]
    public void The_place_of_a_hole_in_a_bend_is_its_centre()
    {
        var part = SheetPart.Of(Angle(Round("h", 4, 40)));
        var place = Place(part, MetalRules.HoleInBend);
        Assert.True(place.IsPoint);
        Assert.Equal(0, (place.A - part.Blank!.Holes[0].Centre).Length, 1e-12);
    }

    [Fact]
    public void The_place_of_a_thin_web_is_the_web()
    {
        var part = SheetPart.Of(Angle(Round("h", 40, 40), Round("i", 47, 40)));
        var place = Place(part, MetalRules.ThinWeb);
        Assert.Equal(0.001, (place.B - place.A).Length, 1e-9);
        Assert.Equal(0.5, (place.Middle - part.Blank!.Holes[0].Centre).Length / 0.007, 1e-6);
    }

    [Fact]
    public void The_place_of_a_bend_is_its_middle_line()
    {
        var part = SheetPart.Of(Angle() with { Brake = new() { NoseRadiusM = 0.002 } });
        var place = Place(part, MetalRules.NoseMakesAnotherRadius);
        var line = part.Blank!.Bends[0].CentreLine;
        Assert.Equal(0, Math.Min((place.A - line.A).Length, (place.A - line.B).Length), 1e-12);
        Assert.Equal(line.LengthM, (place.B - place.A).Length, 1e-12);
    }

    [Fact]
    public void A_part_without_blank_is_drawn_with_the_edge_that_two_flanges_claim()
    {
        var part = SheetPart.Of(
            Angle() with
            {
                Flanges =
                [
                    new("a", "face.top", 0.03) { EndOffsetM = 0.03 },
                    new("b", "face.top", 0.02) { StartOffsetM = 0.05 },
                ],
            }
        );
        Assert.Null(part.Blank);
        var place = Place(part, MetalRules.EdgeUsedUp);
        Assert.Equal(0.02, (place.B - place.A).Length, 1e-9);
        Assert.Equal(["face", "a", "b"], part.Sketch!.Outlines.Select(o => o.Id));

        // The claimed piece lies on the upper edge of the face, in the frame of the sketch.
        var (_, most) = part.Sketch.Outlines[0].Outline.Box;
        Assert.Equal(most.Y, place.A.Y, 1e-9);
        Assert.Equal(most.Y, place.B.Y, 1e-9);
    }

    [Fact]
    public void An_outline_that_crosses_itself_is_drawn_with_the_crossing()
    {
        // The lines from (0, 0) to (60, 60) and from (60, 0) to (0, 60) cross in the middle.
        var bow = new Outline([
            new(new(0, 0)),
            new(new(0.06, 0.06)),
            new(new(0.06, 0)),
            new(new(0, 0.06)),
            new(new(-0.02, 0.03)),
        ]);
        var part = SheetPart.Of(new PartSpec("p", Parts.Mild, new(bow)));
        Assert.Null(part.Blank);
        var place = Place(part, MetalRules.OutlineCrosses);
        Assert.NotNull(part.Sketch);
        Assert.Equal(0.05, place.A.X, 1e-6);
        Assert.Equal(0.03, place.A.Y, 1e-6);
    }

    [Fact]
    public void Flanges_that_collide_are_marked_where_they_meet()
    {
        var part = SheetPart.Of(
            new("p", Parts.Mild, FaceSpec.Rectangle(0.1, 0.05))
            {
                Flanges = [new("a", "face.top", 0.06, 2 * Math.PI / 3), new("b", "face.bottom", 0.06, 2 * Math.PI / 3)],
            }
        );
        var place = Place(part, MetalRules.FoldCollides);

        // Both lean inwards by 30°: they meet above the middle of the 50 mm between their roots, 25 mm / sin 30° = 50 mm up, 10 mm below the far edge.
        Assert.Equal("b", place.Flat);
        Assert.InRange(place.A.Y, 0.007, 0.013);
    }

    [Fact]
    public void Absurd_numbers_have_no_place_and_no_picture()
    {
        var part = SheetPart.Of(new("p", Parts.Mild, FaceSpec.Rectangle(0.1, -0.05)));
        Assert.Null(part.Sketch);
        Assert.All(part.Findings, f => Assert.Null(f.Place));
    }

    [Fact]
    public void An_opening_is_held_against_its_own_distance_to_live_parts()
    {
        var through = Round("h", 50, 40, 12) with { Purpose = "cable", IsFilled = true };
        Assert.DoesNotContain(
            SheetPart.Of(Angle(through) with { LiveBehindM = 0.01 }).Findings,
            f => f.Rule == MetalRules.FingerReachesLive
        );
        Assert.Contains(
            SheetPart.Of(Angle(through with { LiveBehindM = 0.079 })).Findings,
            f => f.Rule == MetalRules.FingerReachesLive
        );
        Assert.DoesNotContain(
            SheetPart
                .Of(Angle(Round("h", 50, 40, 12) with { LiveBehindM = 0.081 }) with { LiveBehindM = 0.01 })
                .Findings,
            f => f.Rule == MetalRules.FingerReachesLive
        );
    }
}
