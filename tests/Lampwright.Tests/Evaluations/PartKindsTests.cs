using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Files.DesignFile;
using Lampwright.Findings;

namespace Lampwright.Tests.Evaluations;

/// <summary>Kinds of parts from their keys in the design file to blank and fold.</summary>
public sealed class PartKindsTests
{
    private static readonly string Sheet =
        "format = 1\n[sheet.mild]\nthickness = \"1 mm\"\nradius = \"1 mm\"\n[part.p]\nsheet = \"mild\"\n";

    private static LoadedDesign Load(string keys) => DesignLoader.Parse(Sheet + keys, "light.toml", _ => null);

    private static MadePart Of(string keys)
    {
        var loaded = Load(keys);
        Assert.Empty(loaded.Problems);
        var (parts, findings) = MetalShop.Of(loaded.Design, new HolePatterns(loaded.Design));
        Assert.DoesNotContain(findings, f => f.Severity == Severity.Stop);
        return parts.Single();
    }

    // DIN 6935, r = s = 1 mm, 90°: v = 4 - π/2 (1 + 0.65/2) = 1.9187 mm a bend.
    [Theory]
    [InlineData("L", "outside", "outside", "[\"15 mm\", \"20 mm\"]", 40 + 15 - 1.9187)]
    [InlineData("U", "outside", "outside", "[\"15 mm\", \"20 mm\"]", 40 + 15 + 20 - (2 * 1.9187))]
    [InlineData("Z", "outside", "outside", "\"15 mm\"", 40 + 15 + 15 - (2 * 1.9187))]
    [InlineData("U", "inside", "outside", "\"15 mm\"", 42 + 15 + 15 - (2 * 1.9187))]
    [InlineData("U", "inside", "inside", "\"15 mm\"", 42 + 16 + 16 - (2 * 1.9187))]
    [InlineData("Z", "inside", "inside", "\"15 mm\"", 42 + 16 + 16 - (2 * 1.9187))]
    public void A_bracket_is_as_long_as_its_outside_legs_less_the_deductions(
        string shape,
        string web,
        string side,
        string legs,
        double widthMm
    )
    {
        var part = Of(
            $"bracket = {{ shape = \"{shape}\", length = \"60 mm\", web = {{ {web} = \"40 mm\" }}, legs = {{ {side} = {legs} }} }}\n"
        );
        Assert.Equal(widthMm, part.Blank.WidthM * 1000, 3);
        Assert.Equal(60, part.Blank.HeightM * 1000, 9);
    }

    [Fact]
    public void The_legs_of_a_Z_stand_on_either_side_as_far_apart_as_its_web_says()
    {
        var part = Of(
            "bracket = { shape = \"Z\", length = \"60 mm\", web = { outside = \"40 mm\" }, legs = { outside = \"15 mm\" } }\n"
        );
        Assert.Equal(0.040, part.Folded.BoxMost.X - part.Folded.BoxLeast.X, 9);
        Assert.Equal(0.015 + 0.015 - 0.001, part.Folded.BoxMost.Z - part.Folded.BoxLeast.Z, 9);
    }

    [Fact]
    public void Hems_joggles_reliefs_slants_and_their_ids_are_read()
    {
        var part = Of(
            """
            face = { outside = ["100 mm", "80 mm"] }
            relief = { corner = "hole", hole = "4 mm", gap = "0.5 mm" }
            [part.p.flange.wall]
            on = "face.left"
            height = { outside = "30 mm" }
            start_slant = "10 deg"
            end_slant = "5 deg"
            [part.p.hem.safe]
            on = "wall.far"
            width = "9 mm"
            [part.p.joggle.lap]
            on = "face.right"
            lap = "12 mm"
            [part.p.hole.a]
            on = "lap"
            at = "centre"
            shape = "round 3 mm"

            """
        );
        Assert.Equal(
            ["wall", "safe", "lap_step", "lap"],
            part.Blank.Bends.Select(b => b.Flange).OrderBy(f => Array.IndexOf(["wall", "safe", "lap_step", "lap"], f))
        );
        var lap = part.Folded.Faces.Single(f => f.Face == "lap");
        Assert.Equal(-0.001, lap.Frame.Origin.Z, 12);
        var far = part.Folded.Edges.Single(e => e.Id == "p.safe.far");
        Assert.True(far.LengthM < 0.080 - (0.029 * (Math.Tan(Math.PI / 18) + Math.Tan(Math.PI / 36))) + 1e-9);
    }

    [Fact]
    public void A_trapezoid_with_a_flange_on_its_short_edge_and_round_corners()
    {
        var part = Of(
            """
            face = { outline = [["0 mm", "0 mm"], ["80 mm", "0 mm"], ["60 mm", "50 mm"], ["20 mm", "50 mm"]], round = "4 mm" }
            flange.tab = { on = "face.e3", height = { outside = "15 mm" } }

            """
        );
        Assert.Equal(2, part.Blank.Outline.Corners.Count(c => c.Bulge != 0));
        // Two corners of 68.2° (turn θ = 111.8°): r² (tan θ/2 - θ/2) less each.
        var turn = Math.PI - Math.Atan2(50, 20);
        var corners = 2 * 16 * (Math.Tan(turn / 2) - (turn / 2));
        var flat = 3000 - corners - (2 * 40);
        Assert.InRange(part.Blank.AreaM2 * 1e6, flat, flat + (2 * 40) + (40 * 15));
    }

    [Fact]
    public void A_tube_is_read_with_its_cuts_and_holes_and_the_corners_of_its_standard()
    {
        var loaded = DesignLoader.Parse(
            """
            format = 1
            [part.arm.tube]
            size = ["30 mm", "20 mm"]
            wall = "2 mm"
            length = "400 mm"
            end = { angle = "45 deg", on = "top" }
            [part.arm.hole.bolt]
            on = "back"
            at = ["50 mm", "centre"]
            shape = "round 6.4 mm"
            [part.arm2]
            mirror = "arm"

            """,
            "light.toml",
            _ => null
        );
        Assert.Empty(loaded.Problems);
        var (parts, findings) = MetalShop.Of(loaded.Design, new HolePatterns(loaded.Design));
        Assert.Empty(findings);
        Assert.Equal(["arm", "arm2"], parts.Select(p => p.Name));
        var (arm, sheet) = (parts[0], parts[0].Sheet);
        Assert.Equal(("tube 30 × 20 × 2", "S235JR"), (sheet.Name, sheet.Material));
        Assert.Equal(0.004, arm.Blank.Wrap!.Sides[0].CornerM, 12);
        Assert.Equal(0.0008, sheet.Radius!.HalfWidth, 12);
        Assert.Equal(0.380, arm.Folded.Faces[2].Nominal.Corners[1].Point.X, 12);
        Assert.Equal(0.015, arm.Folded.Holes.Single().Centre.Y, 12);
    }

    [Theory]
    [InlineData("four", 4, false)]
    [InlineData("six", 6, true)]
    [InlineData("eight", 8, true)]
    public void A_funnel_has_as_many_panels_as_its_sides_with_their_lips_and_the_light_is_told(
        string sides,
        int count,
        bool told
    )
    {
        var loaded = Load(
            $"panels = {{ small = [\"90 mm\", \"90 mm\"], large = [\"200 mm\", \"200 mm\"], depth = \"120 mm\", sides = \"{sides}\", lip = \"12 mm\" }}\n[reflector.r]\npart = \"p\"\n"
        );
        Assert.Empty(loaded.Problems);
        var (parts, findings) = MetalShop.Of(loaded.Design, new HolePatterns(loaded.Design));
        Assert.Equal(count, parts.Count);
        Assert.All(parts, p => Assert.Equal("lip", Assert.Single(p.Blank.Bends).Flange));
        Assert.DoesNotContain(findings, f => f.Severity == Severity.Stop);
        Assert.Equal(told, findings.Any(f => f.Rule == Lampwright.Metal.MetalRules.LightOfRectangle));
    }

    [Theory]
    [InlineData("tube = { size = [\"30 mm\", \"20 mm\"], wall = \"2 mm\", length = \"1 m\" }\n", "part.p.sheet")]
    [InlineData("tube = { size = \"30 mm\", wall = \"2 mm\", length = \"1 m\" }\n", "part.p.tube.size")]
    [InlineData("tube = { size = [\"30 mm\", \"20 mm\"], wall = \"2 mm\" }\n", "part.p.tube.length")]
    public void A_tube_that_is_not_meant_so_is_told_at_its_place(string keys, string path) =>
        Assert.Contains(Load(keys).Problems, p => p.Path == path);

    [Theory]
    [InlineData("face = { outline = [[\"0 mm\", \"0 mm\"], [\"80 mm\", \"0 mm\"]] }\n", "part.p.face.outline")]
    [InlineData(
        "face = { outside = [\"9 mm\", \"9 mm\"], outline = [[\"0 mm\", \"0 mm\"], [\"8 mm\", \"0 mm\"], [\"8 mm\", \"8 mm\"]] }\n",
        "part.p.face.outline"
    )]
    [InlineData("face = { outside = [\"9 mm\", \"9 mm\"], round = \"1 mm\", mitre = \"1 mm\" }\n", "part.p.face.mitre")]
    [InlineData(
        "face = { outside = [\"9 mm\", \"9 mm\"] }\nbracket = { shape = \"L\", length = \"60 mm\", web = { outside = \"40 mm\" }, legs = { outside = \"15 mm\" } }\n",
        "part.p.bracket"
    )]
    [InlineData(
        "face = { outside = [\"90 mm\", \"90 mm\"] }\nhem.a = { on = \"face.up\", width = \"9 mm\" }\n",
        "part.p.hem.a.on"
    )]
    public void What_cannot_be_meant_is_told_at_its_place(string keys, string path) =>
        Assert.Contains(Load(keys).Problems, p => p.Path == path);
}
