using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Drawings;
using Lampwright.Findings;
using Lampwright.Metal;
using Lampwright.Metal.Bending;

namespace Lampwright.Tests.Evaluations;

/// <summary>From the brake in the design file to the order of bending and what is said of it.</summary>
public sealed class BendPlansTests
{
    private static readonly string Own =
        "length = \"600 mm\"\nclosing = \"135 deg\"\nfinger_height = \"60 mm\"\n"
        + "fingers = [\"20 mm\", \"25 mm\", \"30 mm\", \"40 mm\", \"50 mm\", \"75 mm\", \"100 mm\", \"150 mm\"]\n";

    private static string Box(int wall = 30, string more = "") =>
        "[part.p]\nsheet = \"mild\"\nface = { outside = [\"120 mm\", \"100 mm\"] }\n"
        + string.Concat(
            new[] { "left", "right", "top", "bottom" }.Select(e =>
                $"[part.p.flange.{e}]\non = \"face.{e}\"\nheight = {{ outside = \"{wall} mm\" }}\n"
            )
        )
        + more;

    private static BendingAnswer Of(string brake, string part)
    {
        var loaded = DesignLoader.Parse(
            $"format = 1\n[sheet.mild]\nthickness = \"1 mm\"\nradius = \"1 mm\"\n[brake]\n{brake}{part}",
            "light.toml",
            _ => null
        );
        Assert.Empty(loaded.Problems);
        var (parts, _) = MetalShop.Of(loaded.Design, new HolePatterns(loaded.Design));
        return BendPlans.Of(loaded.Design, parts);
    }

    [Fact]
    public void The_brake_of_the_file_bends_a_box_and_nothing_is_said()
    {
        var bending = Of(Own, Box());
        Assert.True(bending.IsDescribed);
        Assert.Empty(bending.Findings);
        Assert.Equal(BendVerdict.Found, bending.Parts.Single().Plan.Verdict);
        Assert.Equal(0.06, bending.Machine!.Finger.Max(p => p.Y), 9);
        Assert.Equal(8, bending.Machine.FingerWidthsM.Count);
    }

    [Theory]
    [InlineData(55, false)]
    [InlineData(75, true)]
    public void Walls_that_no_order_bends_are_told_with_what_is_in_the_way(int wall, bool told)
    {
        var found = Of(Own, Box(wall)).Findings;
        Assert.Equal(told, found.Any(f => f.Rule == MetalRules.NoBendOrder));
        if (told)
        {
            var message = Assert.Single(found).Message;
            Assert.Contains("meets the clamp", message, StringComparison.Ordinal);
            Assert.Contains("384", message, StringComparison.Ordinal);
            Assert.Contains("states", message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(30, false)]
    [InlineData(75, true)]
    public void A_brake_that_is_not_described_says_no_more_than_a_note(int wall, bool told)
    {
        var bending = Of("length = \"600 mm\"\n", Box(wall));
        Assert.False(bending.IsDescribed);
        Assert.Equal(told, bending.Findings.Any(f => f.Rule == MetalRules.NoBendOrderUsual));
        Assert.All(bending.Findings, f => Assert.Equal(Severity.Note, f.Severity));
    }

    [Fact]
    public void A_row_that_no_fingers_make_is_told_with_the_finger_that_frees_it()
    {
        var finding = Assert.Single(
            Of(
                "fingers = [\"50 mm\", \"100 mm\", \"100 mm\"]\nfinger_height = \"60 mm\"\n",
                Box().Replace("\"100 mm\"]", "\"80 mm\"]", StringComparison.Ordinal)
            ).Findings
        );
        Assert.Contains("no fingers of the set", finding.Message, StringComparison.Ordinal);
        Assert.Contains("one more finger of", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[]", true)]
    [InlineData("[\"600 mm\"]", false)]
    public void A_brake_without_fingers_is_told(string fingers, bool told)
    {
        var bending = Of($"fingers = {fingers}\n", Box());
        Assert.Equal(told, bending.Findings.Any(f => f.Rule == MetalRules.NoFingers && f.Path == "brake.fingers"));
        Assert.Equal(told, bending.Machine is null);
    }

    [Theory]
    [InlineData("[\"0 mm\", \"0 mm\"], [\"60 mm\", \"-30 mm\"], [\"0 mm\", \"-30 mm\"], [\"60 mm\", \"0 mm\"]", true)]
    [InlineData("[\"0 mm\", \"0 mm\"], [\"30 mm\", \"0 mm\"], [\"60 mm\", \"0 mm\"]", true)]
    [InlineData("[\"0 mm\", \"0 mm\"], [\"0 mm\", \"-30 mm\"], [\"60 mm\", \"-30 mm\"], [\"60 mm\", \"0 mm\"]", false)]
    public void A_section_that_crosses_itself_or_has_no_area_is_told(string apron, bool told) =>
        Assert.Equal(
            told,
            Of($"apron = [{apron}]\n", Box())
                .Findings.Any(f => f.Rule == MetalRules.BrakeSectionWrong && f.Path == "brake.apron")
        );

    [Theory]
    [InlineData(3, false)]
    [InlineData(21, true)]
    public void More_bends_than_are_searched_through_claim_nothing(int bends, bool told)
    {
        var stair = string.Concat(
            Enumerable
                .Range(0, bends)
                .Select(i =>
                    $"[part.s.flange.f{i}]\non = \"{(i == 0 ? "face.right" : $"f{i - 1}.far")}\"\nheight = {{ outside = \"20 mm\" }}\nangle = \"{(i % 2 == 0 ? "" : "-")}90 deg\"\n"
                )
        );
        var bending = Of(Own, "[part.s]\nsheet = \"mild\"\nface = { outside = [\"30 mm\", \"40 mm\"] }\n" + stair);
        Assert.Equal(told, bending.Findings.Any(f => f.Rule == MetalRules.TooManyBends));
    }

    [Fact]
    public async Task A_tube_comes_with_its_corners_and_is_not_bent()
    {
        var tube =
            "[part.t]\ntube = { material = \"steel\", size = [\"30 mm\", \"20 mm\"], length = \"200 mm\", wall = \"2 mm\" }\n";
        var bending = await Task.Run(() => Of(Own, tube + Box()), TestContext.Current.CancellationToken)
            .WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken);
        Assert.Equal("p", Assert.Single(bending.Parts).Name);
    }

    [Fact]
    public void A_joggle_is_pressed_and_the_rest_bent()
    {
        var bending = Of(Own, Box(30, "[part.p.joggle.lap]\non = \"top.far\"\nlap = \"10 mm\"\noffset = \"2 mm\"\n"));
        var plan = bending.Parts.Single().Plan;
        Assert.Equal(4, plan.Stages.Count);
        Assert.Contains("lap", plan.Pressed);
    }

    [Fact]
    public void Each_card_tells_fingers_angle_and_the_side_that_is_up()
    {
        var part = Of(Own, Box()).Parts.Single();
        for (var i = 0; i < part.Plan.Stages.Count; i++)
        {
            var card = BendCards.Of(part, i);
            Assert.Equal("inside up", card.Up);
            Assert.Equal("face", card.Clamped);
            Assert.StartsWith("9", card.SwingTo, StringComparison.Ordinal);
            Assert.Equal(
                part.Plan.Stages[i].FingersM.Sum() * 1000,
                card.Fingers.Split(" + ").Sum(w => double.Parse(w, System.Globalization.CultureInfo.InvariantCulture)),
                6
            );
        }
    }
}
