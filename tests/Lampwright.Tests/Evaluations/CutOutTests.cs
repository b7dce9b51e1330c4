using Lampwright.Evaluation;
using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Files.DesignFile;
using Lampwright.Metal;

namespace Lampwright.Tests.Evaluations;

/// <summary>Named standard cut-outs, from the word in the design file to the hole in the blank.</summary>
public sealed class CutOutTests
{
    private static readonly string Plate =
        "format = 1\n[sheet.mild]\nthickness = \"1 mm\"\n[part.plate]\nsheet = \"mild\"\nface = { outside = [\"200 mm\", \"160 mm\"] }\n";

    private static (LoadedDesign Loaded, Blank Blank, IReadOnlyList<Lampwright.Findings.Finding> Findings) Of(
        string more
    )
    {
        var loaded = DesignLoader.Parse(Plate + more, "light.toml", _ => null);
        var (parts, findings) = MetalShop.Of(loaded.Design, new HolePatterns(loaded.Design));
        return (loaded, parts.Single().Blank, findings);
    }

    [Fact]
    public void A_hole_that_names_a_fan_is_its_opening_and_four_screws()
    {
        var (_, blank, _) = Of(
            "[part.plate.hole.fan]\non = \"face\"\nat = [\"70 mm\", \"80 mm\"]\ncutout = \"fan 80\"\n"
        );
        Assert.Equal(5, blank.Holes.Count);
        var opening = blank.Holes.Single(h => h.Hole == "fan");
        Assert.Equal(0.076, opening.DiameterM, 12);
        var screws = blank.Holes.Where(h => h.Hole == "fan.screws").ToList();
        Assert.All(screws, s => Assert.Equal(0.0715 / 2, Math.Abs(s.Centre.X - 0.070), 12));
        Assert.All(screws, s => Assert.Equal(0.0715 / 2, Math.Abs(s.Centre.Y - 0.080), 12));
    }

    [Theory]
    [InlineData("cutout = \"fan 80\"", "", "part.plate.hole.h")]
    [InlineData("for = \"fan.main.mount\"", "", "")]
    [InlineData("for = \"fan.main.mouth\"", "", "part.plate.hole.h")]
    [InlineData("for = \"M4 clearance\"", "", "")]
    [InlineData("shape = \"round 20 mm\"\nfor = \"cable\"", "", "part.plate.hole.h")]
    [InlineData("shape = \"round 20 mm\"", "", "part.plate.hole.h")]
    [InlineData("for = \"item.inlet.cutout\"", "", "")]
    [InlineData("for = \"item.inlet.screws\"", "", "")]
    [InlineData("cutout = \"appliance inlet C14\"", "", "")]
    [InlineData("cutout = \"appliance inlet C14\"", "live = \"5 mm\"", "part.plate.hole.h")]
    public void Only_a_screw_or_a_bought_thing_keeps_a_finger_out(string what, string own, string told)
    {
        var (_, _, findings) = Of(
            "live = \"5 mm\"\n"
                + "[item.inlet]\ncutout = \"appliance inlet C14\"\n"
                + "[fan.main]\nholes.mount = { shape = \"round 4.4 mm\", grid = { count = [2, 2], pitch = [\"50 mm\", \"50 mm\"] } }\n"
                + "holes.mouth = { shape = \"round 56 mm\" }\n"
                + $"[part.plate.hole.h]\non = \"face\"\nat = \"centre\"\n{what}\n{own}\n"
        );
        Assert.Equal(
            told,
            string.Join(' ', findings.Where(f => f.Rule == MetalRules.FingerReachesLive).Select(f => f.Path))
        );
    }

    [Fact]
    public void An_item_brings_its_opening_and_screws_to_the_part_that_receives_it()
    {
        var (loaded, blank, findings) = Of(
            "[item.inlet]\ncutout = \"appliance inlet C14\"\n"
                + "[part.plate.hole.a]\non = \"face\"\nat = \"centre\"\nfor = \"item.inlet.cutout\"\nturn = \"90 deg\"\n"
                + "[part.plate.hole.b]\non = \"face\"\nat = \"centre\"\nfor = \"inlet.screws\"\nturn = \"90 deg\"\n"
        );
        Assert.Empty(loaded.Problems);
        Assert.Equal(3, blank.Holes.Count);
        var (least, most) = blank.Holes.Single(h => h.Hole == "a").Outline.Box;
        Assert.Equal(0.0205, most.X - least.X, 12);
        Assert.Equal(0.028, most.Y - least.Y, 12);
        var screws = blank.Holes.Where(h => h.Hole == "b").ToList();
        Assert.Equal(0.040, (screws[0].Centre - screws[1].Centre).Length, 12);
        Assert.Contains(findings, f => f.Rule == MetalRules.CutOutNotRead && f.Path == "part.plate.hole.a");
    }

    [Fact]
    public void A_hole_of_an_item_wins_over_the_standard()
    {
        var (_, blank, findings) = Of(
            "[item.inlet]\ncutout = \"appliance inlet C14\"\nholes.cutout = { shape = \"round 30 mm\" }\n"
                + "[part.plate.hole.a]\non = \"face\"\nat = \"centre\"\nfor = \"item.inlet.cutout\"\n"
        );
        Assert.Equal(0.030, blank.Holes.Single().DiameterM, 12);
        Assert.DoesNotContain(findings, f => f.Rule == MetalRules.CutOutNotRead);
    }

    [Theory]
    [InlineData("cutout = \"fan 81\"", "cutout")]
    [InlineData("cutout = \"fan 80\"\nshape = \"round 4 mm\"", "cutout")]
    public void A_name_that_is_none_and_two_shapes_at_once_are_problems(string keys, string key)
    {
        var loaded = DesignLoader.Parse(
            Plate + "[part.plate.hole.fan]\non = \"face\"\nat = \"centre\"\n" + keys + "\n",
            "light.toml",
            _ => null
        );
        Assert.Contains(loaded.Problems, p => p.Path == $"part.plate.hole.fan.{key}");
    }
}
