using Lampwright.Metal;
using Lampwright.Metal.Bending;

namespace Lampwright.Tests.Metal.Bending;

public sealed class BendOrderTests
{
    /// <summary>A box whose walls have lips outwards and rims down: twelve bends.</summary>
    private static PartSpec Hat(double width, double height, double wall)
    {
        var box = Parts.Box(width, height, wall) with { Name = "hat" };
        return box with
        {
            Flanges =
            [
                .. box.Flanges,
                .. box.Flanges.Select(f => new FlangeSpec("lip_" + f.Id, f.Id + ".far", 0.016, -Math.PI / 2)),
                .. box.Flanges.Select(f => new FlangeSpec("rim_" + f.Id, $"lip_{f.Id}.far", 0.012, -Math.PI / 2)),
            ],
        };
    }

    private static BendPlan Plan(PartSpec spec, BrakeMachine? brake = null) =>
        BendOrder.Of(SheetPart.Of(spec).Folded!, brake ?? Brakes.Of());

    [Fact]
    public void Two_opposite_walls_come_first_and_fingers_between_them_make_the_others()
    {
        var plan = Plan(Parts.Box(120, 100, 30));

        Assert.Equal(BendVerdict.Found, plan.Verdict);
        string[] first = [plan.Stages[0].Stroke.Name, plan.Stages[1].Stroke.Name];
        Assert.True(
            first.Order(StringComparer.Ordinal).SequenceEqual(["wall_b", "wall_t"])
                || first.Order(StringComparer.Ordinal).SequenceEqual(["wall_l", "wall_r"])
        );
        var last = plan.Stages[^1];
        Assert.InRange(last.FingersM.Sum(), 0, last.MostM);
        Assert.True(last.MostM < last.LengthM);
    }

    [Fact]
    public void A_box_as_wide_as_no_row_of_fingers_has_none_and_the_finger_that_frees_it_is_told()
    {
        var plan = Plan(Parts.Box(120, 80, 30), Brakes.Of(0.06, 0.05, 0.1, 0.1));

        Assert.Equal(BendVerdict.None, plan.Verdict);
        Assert.Equal(384, plan.Orders);
        Assert.Contains(plan.Blocked, b => b.FromParent.Obstacle == Obstacle.FingerWidths);
        var freeing = plan.Freeings.Single(f => f.FingerFromM > 0);
        var between = (freeing.FingerFromM + freeing.FingerToM) / 2;
        Assert.Equal(BendVerdict.Found, Plan(Parts.Box(120, 80, 30), Brakes.Of(0.06, 0.05, 0.1, 0.1, between)).Verdict);
    }

    [Fact]
    public void A_seam_frees_a_part_only_where_what_is_cut_off_can_be_bent_too()
    {
        // A box on the end of a tongue: its walls are too high on the tongue and off it.
        var far = Parts.Box(120, 100, 70);
        PartSpec On(string id) =>
            new("tongue", Parts.Mild, FaceSpec.Rectangle(0.12, 0.1))
            {
                Flanges =
                [
                    new(id, "face.top", 0.1),
                    new("wall_r", id + ".end", 0.07),
                    new("wall_l", id + ".start", 0.07),
                    new("wall_f", id + ".far", 0.07),
                ],
            };
        Assert.Equal(BendVerdict.None, Plan(far).Verdict);

        var plan = Plan(On("floor"));
        Assert.Equal(BendVerdict.None, plan.Verdict);
        Assert.DoesNotContain(plan.Freeings, f => f.BySeam && f.Stroke.Name == "floor");
    }

    [Fact]
    public void A_row_leaves_no_more_than_the_end_gap_at_either_end()
    {
        var brake = Brakes.Of(0.06, 0.02, 0.025, 0.03, 0.04);
        var isSpread = false;
        for (var width = 90; width < 115; width++)
        {
            foreach (var stage in Plan(Parts.Box(width, 80, 30), brake).Stages)
            {
                var span = Math.Max(stage.FingersM.Sum(), stage.LeastM);
                isSpread |= span > stage.FingersM.Sum() + 1e-5;
                Assert.InRange(stage.RowFromM, double.NegativeInfinity, brake.EndGapM + 1e-9);
                Assert.InRange(stage.LengthM - stage.RowFromM - span, double.NegativeInfinity, brake.EndGapM + 1e-9);
            }
        }

        Assert.True(isSpread);
    }

    [Fact]
    public void Walls_higher_than_the_fingers_meet_the_clamp()
    {
        var plan = Plan(Parts.Box(120, 100, 70));

        Assert.Equal(BendVerdict.None, plan.Verdict);
        Assert.All(plan.Blocked, b => Assert.Equal(Obstacle.Clamp, b.FromParent.Obstacle));
        Assert.Equal(BendVerdict.Found, Plan(Parts.Box(120, 100, 70), Brakes.Of(0.09)).Verdict);
    }

    [Theory]
    [InlineData(59, BendVerdict.Found)]
    [InlineData(75, BendVerdict.None)]
    public void A_wall_higher_than_the_fingers_has_no_room_under_the_beam_behind_them(int wall, BendVerdict verdict)
    {
        var channel = new PartSpec("channel", Parts.Mild, FaceSpec.Rectangle(0.08, 0.1))
        {
            Flanges = [new("a", "face.left", wall * 0.001), new("b", "face.right", wall * 0.001)],
        };
        Assert.Equal(verdict, Plan(channel).Verdict);
    }

    [Fact]
    public void A_bend_beyond_the_closing_and_one_longer_than_the_brake_are_named()
    {
        var sharp = new PartSpec("sharp", Parts.Mild, FaceSpec.Rectangle(0.1, 0.1))
        {
            Flanges = [new("f", "face.left", 0.03, 2.5)],
        };
        var plan = Plan(sharp);
        Assert.Equal(Obstacle.Closing, Assert.Single(plan.Blocked).FromParent.Obstacle);

        var wide = new PartSpec("wide", Parts.Mild, FaceSpec.Rectangle(0.1, 0.7))
        {
            Flanges = [new("f", "face.left", 0.03)],
        };
        Assert.Equal(Obstacle.Length, Assert.Single(Plan(wide).Blocked).FromParent.Obstacle);
    }

    [Fact]
    public void Tabs_of_one_line_are_one_stroke()
    {
        var spec = new PartSpec("tabs", Parts.Mild, FaceSpec.Rectangle(0.1, 0.12))
        {
            Flanges =
            [
                new("a", "face.left", 0.02) { EndOffsetM = 0.07 },
                new("b", "face.left", 0.03) { StartOffsetM = 0.07 },
            ],
        };
        var stage = Assert.Single(Plan(spec).Stages);
        Assert.Equal("a, b", stage.Stroke.Name);
    }

    [Fact]
    public void What_is_pressed_is_no_stroke()
    {
        var plan = BendOrder.Of(
            SheetPart.Of(Parts.Box(120, 100, 30)).Folded!,
            Brakes.Of(),
            new HashSet<string>(StringComparer.Ordinal) { "wall_l" }
        );
        Assert.Equal(3, plan.Stages.Count);
        Assert.Equal("wall_l", Assert.Single(plan.Pressed));
    }

    [Fact]
    public void Twelve_bends_are_closed_with_all_their_orders()
    {
        var plan = Plan(Hat(200, 160, 40));
        Assert.Equal(1961990553600, plan.Orders);
        Assert.NotEqual(BendVerdict.TooMany, plan.Verdict);
    }

    [Fact]
    public void No_stage_of_a_plan_hits_the_machine_when_another_code_bends_it()
    {
        var found = 0;
        for (var start = 0; found < 12; start++)
        {
            Assert.InRange(start, 0, 200);
            var result = SheetPart.Of(BenchParts.Of(start, 5));
            var brake = Brakes.Of();
            if (result.Folded is null || BendOrder.Of(result.Folded, brake) is not { Verdict: BendVerdict.Found } plan)
            {
                continue;
            }

            found++;
            var bench = new OwnBench(result, brake);
            var made = new List<string>();
            foreach (var stage in plan.Stages)
            {
                var (depth, where) = bench.Worst(
                    made,
                    stage.Stroke.Name,
                    stage.Side,
                    stage.RowFromM - (stage.LengthM / 2),
                    stage.FingersM.Sum()
                );
                Assert.True(depth < 3e-4, $"part {start}, {stage.Stroke.Name}: {depth * 1000:0.00} mm, {where}");
                made.Add(stage.Stroke.Name);
            }
        }
    }

    [Fact]
    public void What_the_plan_says_is_in_the_way_is_hit_when_another_code_bends_it()
    {
        var hits = 0;
        for (var start = 0; hits < 12; start++)
        {
            Assert.InRange(start, 0, 200);
            var result = SheetPart.Of(BenchParts.Of(start, 5));
            var brake = Brakes.Of();
            if (result.Folded is null || BendOrder.Of(result.Folded, brake) is not { Verdict: BendVerdict.None } plan)
            {
                continue;
            }

            foreach (var blocked in plan.Blocked)
            {
                if (blocked.FromParent.Obstacle is Obstacle.Bed or Obstacle.Clamp or Obstacle.Apron)
                {
                    var bench = new OwnBench(result, brake);
                    var (depth, _) = bench.Worst(plan.Made, blocked.Stroke.Name, ClampedSide.Parent, null, 0);
                    Assert.True(depth > 0, $"part {start}: {blocked}");
                    hits++;
                }
            }
        }
    }

    [Fact]
    public void All_orders_tried_one_by_one_come_to_the_same_answer()
    {
        var (some, none) = (0, 0);
        for (var start = 0; start < 60; start++)
        {
            if (SheetPart.Of(BenchParts.Of(start, 8)).Folded is not { } part)
            {
                continue;
            }

            var isFound = BendOrder.Of(part, Brakes.Of()).Verdict == BendVerdict.Found;
            Assert.Equal(Tried(part, Brakes.Of()), isFound);
            (some, none) = isFound ? (some + 1, none) : (some, none + 1);
        }

        Assert.InRange(some, 5, 55);
        Assert.InRange(none, 5, 55);
    }

    /// <summary>Tries stroke after stroke, from either side, and goes back where nothing goes on: no states, no memory.</summary>
    private static bool Tried(FoldedPart part, BrakeMachine brake)
    {
        var tree = new FoldTree(part);
        var solids = new BrakeSolids(brake);
        var plates = new PartPlates(part);
        var strokes = Strokes.Of(
            tree,
            new HashSet<string>(StringComparer.Ordinal),
            b => Math.Abs(b.AngleRad),
            brake.ClosingRad
        );
        var present = Enumerable.Repeat(true, part.Faces.Count).ToArray();
        StrokeChecks Anew(Stroke stroke, ClampedSide side) => new(tree, plates, solids, stroke, side);

        // What a look costs is kept for large parts alone; small ones are looked at anew in every order, so that nothing kept can be wrong unseen.
        var kept =
            strokes.Count <= 4
                ? null
                : strokes
                    .SelectMany(s => Enum.GetValues<ClampedSide>().Select(side => (s, side)))
                    .ToDictionary(k => k, k => Anew(k.s, k.side));
        bool Goes(ulong done, Stroke stroke, ClampedSide side) =>
            (kept?[(stroke, side)] ?? Anew(stroke, side)).At(done, present, solids.Fingers, out _).Obstacle
            == Obstacle.None;
        bool On(ulong done, List<Stroke> left) =>
            left.Count == 0
            || left.Exists(s =>
                Enum.GetValues<ClampedSide>()
                    .Any(side => (side == ClampedSide.Parent || s.Bends.Count == 1) && Goes(done, s, side))
                && On(s.Bends.Aggregate(done, (bits, b) => bits | 1UL << b), left.FindAll(o => o != s))
            );
        return On(0, strokes);
    }
}
