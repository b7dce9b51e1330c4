using System.Diagnostics;
using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal.Fields;

/// <summary>What is said about outlines that cross themselves, holes across bends, and holes by the million; and just inside.</summary>
public sealed class HoleRuleTests
{
    private static PartSpec Plate(Outline face, params HoleSpec[] holes) =>
        new("p", Parts.Mild, new(face)) { Holes = holes };

    private static Outline Ring(params (double X, double Y)[] mm) =>
        new([.. mm.Select(p => new Corner(new(p.X / 1000, p.Y / 1000)))]);

    private static readonly Outline Square = Ring((0, 0), (100, 0), (100, 100), (0, 100));

    private static PartSpec Wall(double heightMm, params HoleSpec[] holes) =>
        new("p", Parts.Mild, FaceSpec.Rectangle(0.1, 0.08))
        {
            Flanges = [new("w", "face.left", heightMm / 1000)],
            Holes = holes,
        };

    [Fact]
    public void A_face_whose_outline_crosses_itself_is_refused_with_the_place()
    {
        var result = SheetPart.Of(Plate(Ring((0, 0), (100, 0), (0, 100), (100, 80), (60, 120))));
        var finding = Assert.Single(result.Findings, f => f.Rule == MetalRules.OutlineCrosses);
        Assert.Null(result.Blank);
        Assert.Equal("part.p.face", finding.Path);
        Assert.Matches(@" at -?\d+(\.\d+)? mm, -?\d+(\.\d+)? mm", finding.Message);
        Assert.DoesNotContain(SheetPart.Of(Plate(Square)).Findings, f => f.Rule == MetalRules.OutlineCrosses);
    }

    [Fact]
    public void The_place_of_a_crossing_is_where_the_edges_cross()
    {
        // Edges (0,0)-(100,100) and (100,0)-(0,60): y = x and y = 60 - 0.6 x meet at 37.5.
        var result = SheetPart.Of(Plate(Ring((0, 0), (100, 100), (100, 0), (0, 60))));
        Assert.Contains(
            "37.5 mm, 37.5 mm",
            result.Findings.Single(f => f.Rule == MetalRules.OutlineCrosses).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_hole_whose_own_outline_crosses_itself_is_refused()
    {
        HoleSpec Hole(params (double X, double Y)[] mm) => new("h", "face", new(0.05, 0.05), HoleShape.Of(Ring(mm)));
        var crossed = SheetPart.Of(Plate(Square, Hole((-10, -10), (10, 12), (10, -10), (-10, 8)))).Findings;
        Assert.Contains(crossed, f => f.Rule == MetalRules.OutlineCrosses && f.Path == "part.p.hole.h.outline");
        var sound = SheetPart.Of(Plate(Square, Hole((-10, -10), (10, -10), (10, 12), (-10, 8)))).Findings;
        Assert.DoesNotContain(sound, f => f.Rule == MetalRules.OutlineCrosses);
    }

    [Theory]
    [InlineData(-0.5)] // in the middle of the bend zone
    [InlineData(1.5)] // its centre just in the flat
    public void A_hole_across_a_bend_is_told_with_its_place(double xMm)
    {
        var result = SheetPart.Of(
            Wall(30, new HoleSpec("h", "face", new((xMm + 2) / 1000, 0.04), HoleShape.Round(0.006)))
        );
        var finding = Assert.Single(result.Findings, f => f.Rule == MetalRules.HoleInBend);
        Assert.Contains("centre at", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(result.Findings, f => f.Rule == MetalRules.HoleOutside);
    }

    [Fact]
    public void A_hole_of_the_flange_that_lies_in_its_bend_is_told_as_well()
    {
        var result = SheetPart.Of(Wall(30, new HoleSpec("h", "w", new(0.04, 0.001), HoleShape.Round(0.001))));
        Assert.Contains(result.Findings, f => f.Rule == MetalRules.HoleInBend);
    }

    [Fact]
    public void A_million_holes_are_refused_in_no_time()
    {
        var field = new HoleSpec("f", "face", default, HoleShape.Round(0.00001), HoleAnchor.Centre)
        {
            Pattern = HolePattern.Field(0.0001, 0.1, 0.1, staggered: true),
        };
        var since = Stopwatch.StartNew();
        var result = SheetPart.Of(Plate(Square, field));
        Assert.Single(result.Findings, f => f.Rule == MetalRules.TooManyHoles && f.Severity == Severity.Stop);
        Assert.Empty(result.Blank!.Holes);
        Assert.True(since.ElapsedMilliseconds < 2000, $"{since.ElapsedMilliseconds} ms");
    }

    [Fact]
    public void Single_holes_past_the_limit_are_told_once()
    {
        var many = Enumerable
            .Range(0, 1000)
            .Select(i => new HoleSpec(
                $"h{i}",
                "face",
                new(0.002 + (i % 40 * 0.002), 0.002 + (i / 40 * 0.002)),
                HoleShape.Round(0.0002)
            ))
            .ToArray();
        var plate = Plate(Square, many);
        var result = SheetPart.Of(plate with { Limits = new() { MostHoles = 900 } });
        Assert.Single(result.Findings, f => f.Rule == MetalRules.TooManyHoles);
        Assert.Equal(900, result.Blank!.Holes.Count);
        Assert.DoesNotContain(
            SheetPart.Of(plate with { Limits = new() { MostHoles = 1000 } }).Findings,
            f => f.Rule == MetalRules.TooManyHoles
        );
    }
}
