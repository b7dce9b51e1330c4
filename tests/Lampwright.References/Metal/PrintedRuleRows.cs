using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>Published parts through the whole station, each by the rule that its source prints; lengths in the unit of the source.</summary>
public sealed class PrintedRuleRows
{
    // A strip's deduction is what a source prints as its rule for one bend.
    private static Blank Channel(
        double unit,
        double t,
        double r,
        BendRule rule,
        double left,
        double middle,
        double right
    ) =>
        SheetPart
            .Of(
                new("channel", new("any", t * unit, r * unit, rule), FaceSpec.Rectangle(middle * unit, 100 * unit))
                {
                    Flanges = [new("a", "face.left", left * unit), new("b", "face.right", right * unit)],
                }
            )
            .Blank!;

    private static BendRule Deducts(double unit, double v) => BendRule.FromStrips(new BendStrip(Math.PI / 2, v * unit));

    // M.B5, published, second-hand: teaching sheet Biegeumformen berechnen (DIN 6935:1975): s 3.18, r 7, legs of 655 in all, two bends of
    // v = 0.43 r + 1.48 s = 7.71 (7.716 unrounded): L 639.58, printed 640.
    [Fact]
    public void Sheet_of_the_teaching_page()
    {
        Near.Is(7.71, (0.43 * 7) + (1.48 * 3.18), 0.01, "M.B5 v by the printed rule");
        Near.Is(639.58, Channel(1e-3, 3.18, 7, Deducts(1e-3, 7.71), 25, 605, 25).WidthM * 1e3, 0.01, "M.B5 L");
    }

    // M.B5x, derived: the same part by DIN's formula.
    [Fact]
    public void The_same_sheet_by_the_exact_formula() =>
        Near.Is(640.37, Channel(1e-3, 3.18, 7, BendRule.Din6935, 25, 605, 25).WidthM * 1e3, 0.01, "M.B5x L");

    // M.B6, published: Westermann textbook, ISBN 978-3-7100-2443-6, p. 206: legs 50 + 40 + 30, r 1, t 1, v = 0.5 r + 1.5 t: 116.
    [Fact]
    public void Sheet_of_the_textbook()
    {
        var v = (0.5 * 1) + (1.5 * 1);
        Near.Is(
            116,
            Channel(1e-3, 1, 1, Deducts(1e-3, v), 50, 40, 30).WidthM * 1e3,
            0.01,
            "M.B6 blank by the printed rule"
        );
        Near.Is(116.16, Channel(1e-3, 1, 1, BendRule.Din6935, 50, 40, 30).WidthM * 1e3, 0.01, "M.B6 blank by DIN 6935");
    }

    // M.B10, published: Machinery's Handbook, 31st ed., p. 1421, fig. 13, inches, soft steel: straights of 3.5 in all, a bend of 180° round
    // 3/8 and one of 60° round 5/8 in 1/8 sheet: 5.545.
    [Fact]
    public void Figure_13_of_Machinerys_Handbook()
    {
        const double inch = 0.0254;
        var (t, hook, slope) = (0.125, 0.375, 0.625);
        var hooked = hook + t; // beyond 90° the tangent plane counts
        var sloped = (slope + t) * Math.Tan(Near.Rad(30));
        var part = new PartSpec(
            "hook",
            new("soft steel", t * inch, hook * inch, BendRule.Handbook(HandbookMetal.Medium)),
            FaceSpec.Rectangle((1.5 + hooked + sloped) * inch, 2 * inch)
        )
        {
            Flanges =
            [
                new("hook", "face.left", (1 + hooked) * inch, Math.PI),
                new("slope", "face.right", (1 + sloped) * inch, Near.Rad(60)) { InsideRadiusM = slope * inch },
            ],
        };
        Near.Is(5.545, SheetPart.Of(part).Blank!.WidthM / inch, 0.001, "M.B10 blank");
    }

    // M.B11, M.B12 (second-hand; memory): FAA-H-8083-31 ch. 4, fig. 4-124 to 4-126: U-channel of 0.040 in 2024-T3, R 0.16, mould lines 1, 2, 1:
    // flats 0.8, 1.6, 0.8; by the empirical rule (0.01743 R + 0.0078 T) per degree 3.758, printed 3.76.
    [Fact]
    public void Channel_of_the_airframe_handbook_by_its_own_rule()
    {
        const double inch = 0.0254;
        var allowance = ((0.01743 * 0.16) + (0.0078 * 0.040)) * 90;
        Near.Is(0.2791, allowance, 0.0001, "M.B12 BA");
        var result = SheetPart.Of(
            new(
                "channel",
                new("2024-T3", 0.040 * inch, 0.16 * inch, Deducts(inch, (2 * 0.200) - allowance)),
                FaceSpec.Rectangle(2 * inch, 3 * inch)
            )
            {
                Flanges = [new("a", "face.left", inch), new("b", "face.right", inch)],
            }
        );
        Near.Is(3.758, result.Blank!.WidthM / inch, 0.001, "M.B12 blank");
        double Wide(Func<Vec2, double> along, string face)
        {
            var flat = result.Folded!.Faces.Single(f => f.Face == face).Flat.Corners;
            return (flat.Max(c => along(c.Point)) - flat.Min(c => along(c.Point))) / inch;
        }

        Near.Is(1.6, Wide(p => p.X, "face"), 0.001, "M.B11 middle flat");
        Near.Is(0.8, Wide(p => p.Y, "a"), 0.001, "M.B11 flat of a");
        Near.Is(0.8, Wide(p => p.Y, "b"), 0.001, "M.B11 flat of b");
    }

    // M.B14, memory: Groover, Fundamentals of Modern Manufacturing, sheet bending example: 60°, R 4.75, t 3.2, K 0.33, flats 38 + 25: 69.08.
    [Fact]
    public void Sheet_of_Groover()
    {
        var setback = (4.75 + 3.2) * Math.Tan(Near.Rad(30));
        var part = new PartSpec(
            "bent",
            new("any", 3.2e-3, 4.75e-3, BendRule.WithK(0.33)),
            FaceSpec.Rectangle((38 + setback) / 1e3, 44.5e-3)
        )
        {
            Flanges = [new("a", "face.right", (25 + setback) / 1e3, Near.Rad(60))],
        };
        Near.Is(69.08, SheetPart.Of(part).Blank!.WidthM * 1e3, 0.01, "M.B14 blank");
    }

    // DIN 6935 Beiblatt 2, memory (M.B7, M.B8a): an angle of 50 + 50 by the printed deductions.
    [Theory]
    [InlineData(1, 1, 98.1)]
    [InlineData(1.6, 1, 97.9)]
    [InlineData(2.5, 1.5, 96.8)]
    [InlineData(2.5, 2.5, 95.2)]
    public void Angle_of_two_legs(double r, double s, double length)
    {
        var part = new PartSpec("angle", new("any", s / 1e3, r / 1e3, BendRule.Din6935), FaceSpec.Rectangle(0.05, 0.1))
        {
            Flanges = [new("a", "face.right", 0.05)],
        };
        Near.Is(length, SheetPart.Of(part).Blank!.WidthM * 1e3, 0.05, $"M.B7/8 r {r}, s {s}");
    }
}
