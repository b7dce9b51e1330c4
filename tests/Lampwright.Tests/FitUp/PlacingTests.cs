using CsCheck;
using Lampwright.FitUp;
using Lampwright.Geometry;

namespace Lampwright.Tests.FitUp;

public sealed class PlacingTests
{
    [Fact]
    public void A_fan_lies_on_the_outside_of_a_tray_with_its_back()
    {
        var result = Fit.Of(Bodies.FanOnTray());
        var fan = result.Placed.Single(p => p.Id == "fan.main");
        // Its centre over the tray's centre, its back on z = 0, itself above it.
        Near(new(0.06, 0.055, 0), fan.Frame.Out(new(0.046, 0.046, 0)));
        Near(new(0.06, 0.055, 0.025), fan.Frame.Out(new(0.046, 0.046, 0.025)));
        Near(new(0.06, 0.055, 0.0125), fan.CentreOfMass);
        // No turn: its x runs along the tray's x.
        Near(new(1, 0, 0), fan.Frame.X);
        Assert.All(result.Joints[0].Holes, h => Assert.Equal(0, h.DrawnMissM, 1e-12));
    }

    [Fact]
    public void Inside_means_one_thickness_further_in()
    {
        var joint = Bodies.FanJoint() with { Sides = ["back", "inside"] };
        var fan = Fit.Of(Bodies.FanOnTray(joint)).Placed.Single(p => p.Id == "fan.main");
        Near(new(0.06, 0.055, -0.0012), fan.Frame.Out(new(0.046, 0.046, 0)));
        Near(new(0.06, 0.055, -0.0262), fan.Frame.Out(new(0.046, 0.046, 0.025)));
    }

    [Fact]
    public void Front_on_the_outside_turns_the_fan_over()
    {
        var joint = Bodies.FanJoint() with { Sides = ["front", "outside"] };
        var fan = Fit.Of(Bodies.FanOnTray(joint)).Placed.Single(p => p.Id == "fan.main");
        Near(new(0.06, 0.055, 0.025), fan.Frame.Out(new(0.046, 0.046, 0)));
        Near(new(0.06, 0.055, 0), fan.Frame.Out(new(0.046, 0.046, 0.025)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(-90)]
    public void A_turn_turns_about_the_axis_of_the_pattern(double degrees)
    {
        var turn = degrees * Math.PI / 180;
        var result = Fit.Of(Bodies.FanOnTray(Bodies.FanJoint(turn)));
        var fan = result.Placed.Single(p => p.Id == "fan.main");
        // The turn is counted on the fan's back, seen from outside: there the tray's x lies turned by it against the fan's.
        Assert.Equal(Math.Cos(turn), fan.Frame.X.X, 1e-9);
        Near(new(0.06, 0.055, 0.0125), fan.CentreOfMass);
        Assert.Equal(0, PlaneFit.Wrapped(result.Joints[0].TurnsRad[0] - turn), 1e-9);
        Assert.Empty(result.Findings);
    }

    [Fact]
    public void Without_a_turn_a_symmetric_pattern_takes_the_nearest_to_none_and_says_so()
    {
        var result = Fit.Of(Bodies.FanOnTray(Bodies.FanJoint(turn: null)));
        Near(new(1, 0, 0), result.Placed[1].Frame.X);
        Assert.Contains(
            result.Findings,
            f => f.Rule == FitUpRules.TakenByDefault && f.Message.Contains("4 turns", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_stack_of_three_lies_layer_on_layer()
    {
        var plate = new BodySpec("part.plate", 0.1, default, [Bodies.Grid("plate.a", 2, 1, 0.04, 0, thickness: 0.002)]);
        var spacer = new BodySpec(
            "item.spacer",
            0.1,
            default,
            [Bodies.Grid("spacer.a", 2, 1, 0.04, 0, thickness: 0.010)]
        );
        var cover = new BodySpec("part.cover", 0.1, default, [Bodies.Grid("cover.a", 2, 1, 0.04, 0, thickness: 0.001)]);
        var joint = new JointSpec(
            "sandwich",
            ["cover.a", "spacer.a", "plate.a"],
            ["inside", "outside", "outside"],
            0,
            new("M4", 0.020, true, 0),
            HoleMarking.DrilledTogether
        );
        var result = Fit.Of(new("part.plate", [plate, spacer, cover], [joint]));
        // From the plate's skin at 0 the spacer fills 10 mm, the cover lies on top with its inside: its outside is at 11 mm.
        Assert.Equal(0.010, result.Placed[1].Frame.Out(default).Z, 1e-12);
        Assert.Equal(0.011, result.Placed[2].Frame.Out(default).Z, 1e-12);
        Assert.Equal(0.013, result.Joints[0].Reach!.Value.GripM, 1e-12);
        Assert.All(result.Joints[0].Holes, h => Assert.Equal(3, h.Ids.Count));
    }

    [Fact]
    public void A_pivot_of_one_hole_turns_by_the_angle_told()
    {
        var yoke = new BodySpec("part.yoke", 0.3, default, [Bodies.Grid("yoke.pivot", 1, 1, 0, 0, new(0.1, 0, 0))]);
        var head = new BodySpec("part.head", 1, new(0.05, 0, 0), [Bodies.Grid("head.pivot", 1, 1, 0, 0)]);
        var joint = new JointSpec(
            "pivot",
            ["yoke.pivot", "head.pivot"],
            ["outside", "outside"],
            Math.PI / 6,
            null,
            HoleMarking.ByHand
        );
        var placed = Fit.Of(new("part.yoke", [yoke, head], [joint])).Placed[1];
        Near(new(0.1 + (0.05 * Math.Cos(Math.PI / 6)), 0.025, 0), placed.CentreOfMass);
    }

    [Fact]
    public void A_body_placed_by_its_holes_lies_where_they_were_taken_from()
    {
        var coordinate = Gen.Double[-0.2, 0.2];
        var points = Gen.Select(coordinate, coordinate, (x, y) => new Vec2(x, y)).Array[3, 8];
        Gen.Select(points, Gen.Double[-3.1, 3.1], coordinate, coordinate, Gen.Double[0.001, 0.02], Gen.Bool)
            .Where(t => Spaced(t.Item1))
            .Sample(
                t =>
                {
                    var (at, turn, dx, dy, thickness, isFar) = t;
                    // A plate, and a second one whose frame was chosen at will: mirrored on its back, turned, moved.
                    var still = new PatternSpec(
                        "a.p",
                        [.. at.Select((p, i) => new PatternHole($"a{i}", new(p.X, p.Y, 0)))],
                        new(0, 0, 1),
                        new(1, 0, 0),
                        0.004,
                        0.001
                    );
                    var (s, c) = Math.SinCos(turn);
                    var truth = new Frame(
                        new(dx, dy, isFar ? thickness : 0),
                        new(c, s, 0),
                        isFar ? new(-s, c, 0) : new(s, -c, 0),
                        new(0, 0, isFar ? 1 : -1)
                    );
                    // Seen from the second body its holes lie on its near side; that is z = 0 of its own frame, outward +z.
                    var moved = new PatternSpec(
                        "b.p",
                        [
                            .. at.Select(
                                (p, i) =>
                                {
                                    var h = truth.In(new(p.X, p.Y, 0));
                                    return new PatternHole($"b{i}", new(h.X, h.Y, 0));
                                }
                            ),
                        ],
                        new(0, 0, 1),
                        new(1, 0, 0),
                        0.004,
                        thickness
                    );
                    var joint = new JointSpec(
                        "j",
                        ["a.p", "b.p"],
                        ["near", isFar ? "far" : "near"],
                        null,
                        null,
                        HoleMarking.ByHand
                    );
                    var result = Fit.Of(
                        new("a", [new("a", 1, default, [still]), new("b", 1, default, [moved])], [joint])
                    );
                    var found = result.Placed[1].Frame;
                    return (found.Origin - truth.Origin).Length < 1e-7
                        && (found.X - truth.X).Length < 1e-6
                        && (found.Z - truth.Z).Length < 1e-9
                        && result.Joints[0].Holes.All(h => h.DrawnMissM < 1e-7);
                },
                iter: 300,
                seed: "0000Lamp0000"
            );
    }

    [Fact]
    public void A_loop_that_closes_says_nothing_and_one_that_does_not_is_a_contradiction()
    {
        var left = Bodies.Grid("tray.left", 1, 1, 0, 0, new(0, 0.05, 0)) with
        {
            Outward = new(-1, 0, 0),
            Along = new(0, 1, 0),
        };
        var right = Bodies.Grid("tray.right", 1, 1, 0, 0, new(0.12, 0.05, 0)) with
        {
            Outward = new(1, 0, 0),
            Along = new(0, 1, 0),
        };
        FitUpSpec Spec(double width)
        {
            var armLeft = Bodies.Grid("yoke.left", 1, 1, 0, 0, new(0, 0, 0)) with
            {
                Outward = new(1, 0, 0),
                Along = new(0, 1, 0),
            };
            var armRight = Bodies.Grid("yoke.right", 1, 1, 0, 0, new(width, 0, 0)) with
            {
                Outward = new(-1, 0, 0),
                Along = new(0, 1, 0),
            };
            JointSpec Joint(string side) =>
                new(
                    side,
                    ["yoke." + side, "tray." + side],
                    ["outside", "outside"],
                    0,
                    new("M4", 0.012, true, 1),
                    HoleMarking.ByHand
                );
            return new(
                "yoke",
                [new("yoke", 0.3, default, [armLeft, armRight]), Bodies.Tray(left, right)],
                [Joint("left"), Joint("right")]
            );
        }

        Assert.DoesNotContain(Fit.Of(Spec(0.12)).Findings, f => f.Rule == FitUpRules.Contradiction);
        Assert.DoesNotContain(Fit.Of(Spec(0.1219)).Findings, f => f.Rule == FitUpRules.Contradiction);
        var finding = Assert.Single(Fit.Of(Spec(0.1221)).Findings, f => f.Rule == FitUpRules.Contradiction);
        Assert.Equal("joint.right", finding.Path);
    }

    [Fact]
    public void A_body_that_no_joint_reaches_is_named()
    {
        var spec = Bodies.FanOnTray();
        var result = Fit.Of(spec with { Bodies = [.. spec.Bodies, new("item.inlet", 0.024, default, [])] });
        Assert.Equal(["item.inlet"], result.Unplaced);
        Assert.Contains(result.Findings, f => f.Rule == FitUpRules.Unplaced && f.Path == "item.inlet");
        Assert.DoesNotContain(Fit.Of(spec).Findings, f => f.Rule == FitUpRules.Unplaced);
    }

    [Fact]
    public void A_pattern_without_an_outward_direction_is_the_callers_bug()
    {
        var fan = Bodies.Fan();
        fan = fan with { Patterns = [fan.Patterns[0] with { Outward = default }] };
        Assert.Throws<ArgumentOutOfRangeException>(() => Fit.Of(Bodies.FanOnTray(fan: fan)));
    }

    private static bool Spaced(Vec2[] points)
    {
        // Apart from each other and free of symmetry, so that only one fit is right.
        for (var i = 0; i < points.Length; i++)
        {
            for (var j = i + 1; j < points.Length; j++)
            {
                if ((points[i] - points[j]).Length < 0.01)
                {
                    return false;
                }
            }
        }

        var sides = points.Select((p, i) => (p - points[(i + 1) % points.Length]).Length).Order().ToArray();
        return sides.Zip(sides.Skip(1)).All(s => s.Second - s.First > 0.002);
    }

    private static void Near(Vec3 expected, Vec3 actual) =>
        Assert.True((expected - actual).Length < 1e-9, $"expected {expected}, found {actual}");
}
