using Lampwright.Metal;
using Lampwright.Metal.Bending;

namespace Lampwright.References.Metal;

/// <summary>
/// What is published of hand brakes (M.H1 is in <see cref="SetLineRows"/>, M.H5a in <see cref="RadiusAndSpringbackRows"/>): US Navy aviation structural
/// training manual, chapter 13, figures 13-25 and 13-26; closing and finger widths are common practice.
/// </summary>
public sealed class BrakeRows
{
    private static BrakeMachine Brake(double length, double closing, double fingerHeight, params double[] fingers)
    {
        var (finger, clamp, bed, apron) = BrakeMachine.Sections(closing, fingerHeight, 0.05, 0.05, 0.2, 0.06, 0.03);
        return new()
        {
            LengthM = length,
            ClosingRad = closing,
            FingerWidthsM = fingers,
            Finger = finger,
            Clamp = clamp,
            Bed = bed,
            Apron = apron,
            OpeningM = 0.03,
            LeastHoldM = 0.006,
        };
    }

    private static FoldedPart Fold(double width, double height, double wall, params string[] edges) =>
        SheetPart
            .Of(
                new PartSpec("box", new("mild", 0.001, 0.001, BendRule.Din6935), FaceSpec.Rectangle(width, height))
                {
                    Flanges = [.. edges.Select(e => new FlangeSpec(e, "face." + e, wall))],
                }
            )
            .Folded!;

    // M.H2: two opposite sides first; the last two with those fingers alone that make the bend, no wider than between the standing walls.
    [Fact]
    public void A_box_on_a_finger_brake_is_bent_two_opposite_sides_first_then_between_the_walls()
    {
        var plan = BendOrder.Of(
            Fold(0.12, 0.1, 0.03, "left", "right", "top", "bottom"),
            Brake(0.6, 2.1, 0.06, 0.02, 0.025, 0.03, 0.04, 0.05, 0.075, 0.1)
        );
        Assert.Equal(BendVerdict.Found, plan.Verdict);
        string[] first = [plan.Stages[0].Stroke.Name, plan.Stages[1].Stroke.Name];
        Array.Sort(first, StringComparer.Ordinal);
        Assert.True(first is ["left", "right"] or ["bottom", "top"]);
        var inside = (first[0] == "left" ? 0.12 : 0.1) - (2 * 0.001);
        foreach (var stage in plan.Stages.Skip(2))
        {
            Assert.InRange(stage.FingersM.Sum(), 0, inside);
            // The rounds at the feet of the walls and a little room are kept clear.
            Assert.InRange(stage.MostM, inside - (2 * 0.001) - 0.0005, inside);
        }
    }

    // M.H2: standing walls no higher than the fingers.
    [Theory]
    [InlineData(0.058, BendVerdict.Found)]
    [InlineData(0.068, BendVerdict.None)]
    public void Standing_walls_are_no_higher_than_the_fingers(double wall, BendVerdict verdict) =>
        Assert.Equal(
            verdict,
            BendOrder
                .Of(
                    Fold(0.12, 0.1, wall, "left", "right", "top", "bottom"),
                    Brake(0.6, 2.1, 0.06, 0.02, 0.025, 0.03, 0.04, 0.05, 0.075, 0.1)
                )
                .Verdict
        );

    // M.H3: a bar folder takes up to 42 in.
    [Theory]
    [InlineData(41.9, BendVerdict.Found)]
    [InlineData(42.1, BendVerdict.None)]
    public void A_bar_folder_takes_42_inches(double inches, BendVerdict verdict) =>
        Assert.Equal(
            verdict,
            BendOrder.Of(Fold(0.1, inches * 0.0254, 0.025, "left"), Brake(42 * 0.0254, 2.1, 0.06, 42 * 0.0254)).Verdict
        );

    // M.H4: about 120° for plain brakes: what the design file takes where it says nothing.
    [Fact]
    public void A_plain_brake_closes_to_about_120_degrees() =>
        Assert.Equal(120, new Design.Brake().Closing.Nominal * 180 / Math.PI, 6);

    // M.H6: sets of about 25, 50 and 75 mm.
    [Fact]
    public void A_set_of_25_50_and_75_makes_every_row_in_steps_of_25()
    {
        var brake = Brake(0.6, 2.1, 0.06, 0.025, 0.05, 0.075);
        foreach (var row in (double[])[0.025, 0.05, 0.075, 0.1, 0.125, 0.15])
        {
            var plan = BendOrder.Of(Fold(0.1, row + 0.004, 0.03, "left"), brake);
            Assert.Equal(row, Assert.Single(plan.Stages).FingersM.Sum(), 9);
        }
    }
}
