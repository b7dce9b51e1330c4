using Lampwright.Geometry;
using Lampwright.Metal;
using Lampwright.Metal.Bending;

namespace Lampwright.Tests.Metal.Bending;

public sealed class StageSectionTests
{
    private static (FoldedPart Part, BrakeMachine Brake, BendPlan Plan) Box()
    {
        var part = SheetPart.Of(Parts.Box(120, 100, 30)).Folded!;
        return (part, Brakes.Of(), BendOrder.Of(part, Brakes.Of()));
    }

    [Fact]
    public void What_is_cut_of_the_sheet_weighs_the_same_however_far_it_is_bent()
    {
        var (part, brake, plan) = Box();
        double Area(double share) => StageSection.Of(part, brake, plan, 0, share).Cut.Sum(c => Of(c.Outline).Area);
        var flat = Area(0);

        // 120 or 100 mm and two walls of 30 mm in 1.5 mm sheet, less the deductions of two bends.
        Assert.InRange(flat, 0.0015 * 0.15, 0.0015 * 0.18);

        // A bend's section is a little more than its allowance times the thickness, since the neutral fibre lies inside of the middle.
        Assert.InRange(Area(0.5), flat * 0.995, flat * 1.01);
        Assert.InRange(Area(1), flat * 0.995, flat * 1.01);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.5, 45)]
    [InlineData(1, 90)]
    public void The_flange_stands_as_far_as_it_is_swung_and_lies_on_the_apron_at_the_end(double share, double degrees)
    {
        var (part, brake, plan) = Box();
        var now = plan.Stages[0];
        var section = StageSection.Of(part, brake, plan, 0, share);
        var flange = part.Faces[now.Stroke.Children[0]].Face;
        var flat = section.Cut.Where(c => c.Flat == flange).MaxBy(c => Of(c.Outline).Area)!.Outline;
        var along = flat[1] - flat[0];
        var angle = Math.Abs(Math.Atan2(along.Y, along.X)) * 180 / Math.PI;
        Assert.Equal(degrees, Math.Min(angle, 180 - angle), 6);

        var apron = section.Apron[3] - section.Apron[0];
        Assert.Equal(degrees, Math.Atan2(apron.Y, apron.X) * 180 / Math.PI, 6);
    }

    [Fact]
    public void No_section_of_a_plan_shows_the_sheet_inside_of_the_machine()
    {
        var (part, brake, plan) = Box();
        for (var stage = 0; stage < plan.Stages.Count; stage++)
        {
            foreach (var share in (double[])[0, 0.3, 0.7, 1])
            {
                var section = StageSection.Of(part, brake, plan, stage, share);
                Assert.NotEmpty(section.Cut);

                // Beside the nose: its round, which the bend lies on, is no part of its section.
                var nose = section.Finger[0];
                foreach (var p in section.Cut.SelectMany(c => c.Outline).Where(p => (p - nose).Length > 0.004))
                {
                    foreach (var solid in (IReadOnlyList<Vec2>[])[section.Bed, section.Finger, section.Clamp])
                    {
                        Assert.True(Depth(solid, p) < 1.5e-4, $"stage {stage} at {share}: {p}");
                    }
                }
            }
        }
    }

    [Fact]
    public void Walls_that_stand_beyond_the_cut_are_shown_as_high_as_they_are()
    {
        var (part, brake, plan) = Box();
        var last = plan.Stages.Count - 1;
        Assert.Contains(
            StageSection.Of(part, brake, plan, last).Beyond,
            b => Math.Abs(b.Outline.Max(p => p.Y) - 0.03) < 1e-3
        );
    }

    private static Outline Of(IReadOnlyList<Vec2> points) => new([.. points.Select(p => new Corner(p))]);

    /// <summary>Least distance to a side of a polygon from inside; 0 outside.</summary>
    private static double Depth(IReadOnlyList<Vec2> polygon, Vec2 p)
    {
        var (inside, least) = (false, double.PositiveInfinity);
        for (int i = 0, j = polygon.Count - 1; i < polygon.Count; j = i++)
        {
            var (a, b) = (polygon[i], polygon[j]);
            inside ^= a.Y > p.Y != b.Y > p.Y && p.X < a.X + ((b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y));
            var along = b - a;
            var share = Math.Clamp((p - a).Dot(along) / along.Dot(along), 0, 1);
            least = Math.Min(least, (a + (along * share) - p).Length);
        }

        return inside ? least : 0;
    }
}
