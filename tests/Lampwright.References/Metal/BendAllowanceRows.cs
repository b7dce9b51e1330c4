using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>metal.md section 1. Each example keeps its own rule; lengths in the unit of the source.</summary>
public sealed class BendAllowanceRows
{
    private static double Din(double r, double s, double opening) =>
        BendAllowance.DinDeduction(Near.Rad(180 - opening), r, s);

    // M.B1, published: Tabellenbuch Metall (Europa-Lehrmittel), page on DIN 6935. r 6, s 5.
    [Fact]
    public void Factor_k_of_Din_6935() => Near.Is(0.689, BendAllowance.DinFactor(6, 5), 0.001, "M.B1 k(6, 5)");

    // M.B3, published, second-hand: DIN 6935 summary. With k = 1 the deduction changes sign at an opening of 65° 24' 30".
    [Theory]
    [InlineData(-1)]
    [InlineData(+1)]
    public void Deduction_changes_sign_at_65_degrees_24_minutes_30_seconds(int seconds)
    {
        var opening = 65 + (24.0 / 60) + ((30.0 + seconds) / 3600);
        var v = Din(1e6, 1, opening) / 1e6;
        Assert.True(Math.Sign(v) == seconds, $"M.B3 opening {opening}°: v/r = {v}");
    }

    // M.B5x, derived: s 3.18, r 7, 90°; legs 50 + 605, two bends: 640.37.
    [Fact]
    public void Deduction_by_the_exact_formula()
    {
        Near.Is(7.313, Din(7, 3.18, 90), 0.001, "M.B5x v(7, 3.18, 90°)");
        Near.Is(640.37, 655 - (2 * Din(7, 3.18, 90)), 0.005, "M.B5x blank of 50 + 605 with two bends");
    }

    // M.B5, published, second-hand: teaching sheet on DIN 6935:1975. The short rule v = 0.43 r + 1.48 s is DIN with k = 0.662:
    // held against our K form at K = k/2; printed v 7.71, L 639.58. The coefficients of the rule are rounded to 0.01.
    [Fact]
    public void Short_rule_is_the_formula_with_a_fixed_k()
    {
        var v =
            (2 * BendAllowance.Setback(Near.Rad(90), 7, 3.18)) - BendAllowance.FromK(Near.Rad(90), 7, 3.18, 0.662 / 2);
        Near.Is(7.71, v, 0.01, "M.B5 v(7, 3.18) with k 0.662");
        Near.Is(639.58, 655 - (2 * v), 0.02, "M.B5 blank of 50 + 605");
    }

    // M.B6, derived part: legs 50 + 40 + 30, r 1, t 1: DIN gives 116.16 (the short rule of Westermann, p. 206, prints 116).
    [Fact]
    public void Blank_of_three_legs() => Near.Is(116.16, 120 - (2 * Din(1, 1, 90)), 0.005, "M.B6 blank, r 1, t 1");

    // M.B7, M.B8a, memory: DIN 6935 Beiblatt 2, deductions at 90° printed to a tenth.
    [Theory]
    [InlineData(1, 1, 1.9)] // M.B7
    [InlineData(1.6, 1, 2.1)] // M.B8a
    [InlineData(2.5, 1.5, 3.2)] // M.B8a
    [InlineData(2.5, 2.5, 4.8)] // M.B8a
    public void Deductions_of_the_supplement(double r, double s, double v) =>
        Near.Is(v, Din(r, s, 90), 0.05, $"M.B7/8 v({r}, {s}, 90°)");

    // M.B9a, derived: r 1.5, s 1.5, openings in both branches.
    [Theory]
    [InlineData(30, 0.797)]
    [InlineData(60, 1.837)]
    [InlineData(90, 2.878)]
    [InlineData(120, 1.383)]
    [InlineData(150, 0.567)]
    public void Deductions_over_the_opening_angle(double opening, double v) =>
        Near.Is(v, Din(1.5, 1.5, opening), 0.001, $"M.B9a v(1.5, 1.5, {opening}°)");

    // DIN 6935 summary, third branch: nothing is deducted above 165°. Published, second-hand.
    [Fact]
    public void Nothing_is_deducted_above_165_degrees() => Near.Is(0, Din(1.5, 1.5, 166), 0, "DIN 6935 v(166°)");

    // M.B10, published: Machinery's Handbook, 31st ed., p. 1421, fig. 13; inches; soft steel; the second bend turns 60°.
    [Fact]
    public void Example_of_Machinerys_Handbook()
    {
        var first = BendAllowance.Handbook(HandbookMetal.Medium, Math.PI, 0.375, 0.125);
        var second = BendAllowance.Handbook(HandbookMetal.Medium, Near.Rad(60), 0.625, 0.125);
        Near.Is(1.338, first, 0.001, "M.B10 180°, R 3/8, T 1/8");
        Near.Is(0.707, second, 0.001, "M.B10 60°, R 5/8, T 1/8");
        Near.Is(5.545, 3.5 + first + second, 0.001, "M.B10 in all");
    }

    // Machinery's Handbook, eq. 32 to 34: equivalent K, derived.
    [Theory]
    [InlineData(HandbookMetal.Soft, 0.350)]
    [InlineData(HandbookMetal.Medium, 0.407)]
    [InlineData(HandbookMetal.Hard, 0.452)]
    public void Handbook_rules_as_K(HandbookMetal metal, double k) =>
        Near.Is(
            k,
            BendAllowance.KOf(BendAllowance.Handbook(metal, Math.PI / 2, 0, 1), Math.PI / 2, 0, 1),
            0.0005,
            $"eq. 32-34 {metal}"
        );

    // M.B11, published, second-hand: FAA-H-8083-31 ch. 4, fig. 4-124 to 4-126; inches. Setback 0.200, flats 0.8, 1.6, 0.8.
    // M.B12, memory: the same channel: allowance 0.2791 (empirical) or 0.2827 (mid-line); blank 3.758 or 3.765, printed 3.76.
    [Fact]
    public void Channel_of_the_airframe_handbook()
    {
        var setback = BendAllowance.Setback(Math.PI / 2, 0.16, 0.040);
        var empirical = BendAllowance.Empirical(Math.PI / 2, 0.16, 0.040);
        var middle = BendAllowance.FromK(Math.PI / 2, 0.16, 0.040, 0.5);
        Near.Is(0.200, setback, 0.001, "M.B11 setback");
        Near.Is(1.6, 2 - (2 * setback), 0.001, "M.B11 middle flat");
        Near.Is(0.2791, empirical, 0.0001, "M.B12 empirical allowance");
        Near.Is(0.2827, middle, 0.0001, "M.B12 mid-line allowance");
        Near.Is(3.76, 0.8 + 1.6 + 0.8 + (2 * empirical), 0.01, "M.B12 blank, empirical");
        Near.Is(3.76, 0.8 + 1.6 + 0.8 + (2 * middle), 0.01, "M.B12 blank, mid-line");
    }

    // M.B12 through the whole station: the channel folded and laid flat with K = 0.5; 25.4 mm to the inch.
    [Fact]
    public void Channel_of_the_airframe_handbook_laid_flat()
    {
        const double inch = 0.0254;
        var sheet = new SheetSpec("2024-T3", 0.040 * inch, 0.16 * inch, BendRule.WithK(0.5));
        var part = new PartSpec("channel", sheet, FaceSpec.Rectangle(2 * inch, 3 * inch))
        {
            Flanges = [new("a", "face.left", inch), new("b", "face.right", inch)],
        };
        var blank = SheetPart.Of(part).Blank!;
        Near.Is(3.765, blank.WidthM / inch, 0.001, "M.B12 blank of the channel");
        Near.Is(3, blank.HeightM / inch, 1e-9, "M.B12 length of the channel");
    }

    // M.B14, memory: Groover, sheet bending example; mm. Turned 60°, R 4.75, t 3.2, K 0.33, flats 38 + 25.
    [Fact]
    public void Example_of_Groover()
    {
        var allowance = BendAllowance.FromK(Near.Rad(60), 4.75, 3.2, 0.33);
        Near.Is(6.08, allowance, 0.01, "M.B14 allowance");
        Near.Is(69.08, 38 + 25 + allowance, 0.01, "M.B14 blank");
    }

    // M.B15, memory: Groover, the same example: width 44.5, Rm 450 MPa, die opening 25, factor 1.33.
    [Fact]
    public void Force_of_Groovers_example() =>
        Near.Is(10909, BrakeForce.DieForce(1.33, 450, 44.5, 3.2, 25), 1, "M.B15 force, N");

    // M.B16, published, second-hand: K attributed to Machinery's Handbook, 26th ed.; a range only: the three rules lie inside it.
    [Theory]
    [InlineData(HandbookMetal.Medium, 0.38, 0.47)]
    [InlineData(HandbookMetal.Hard, 0.43, 0.48)]
    public void Plausible_K(HandbookMetal metal, double least, double most)
    {
        var k = BendFigures.Of(BendRule.Handbook(metal), Math.PI / 2, 1.5e-3, 1.5e-3).K;
        Assert.True(k >= least - 0.001 && k <= most, $"M.B16 {metal}: K {k}, expected {least} to {most}");
    }

    // M.B17, derived: strip T 1.5, R 1.5, L0 100.00, legs 51.42 and 51.40; u 0.05 per reading, u(R) 0.3, u(T) 0.02.
    [Fact]
    public void K_out_of_a_strip()
    {
        var k = StripK.With(new(Math.PI / 2, 51.42 + 51.40 - 100.00), 1.5, 1.5, 0.05, 0.3, 0.02);
        Near.Is(3.18, (2 * BendAllowance.Setback(Math.PI / 2, 1.5, 1.5)) - 2.82, 0.001, "M.B17 allowance");
        Near.Is(0.350, k.K, 0.001, "M.B17 K");
        Near.Is(0.037, k.FromDeduction, 0.001, "M.B17 u(K) from BD");
        Near.Is(0.055, k.FromRadius, 0.001, "M.B17 u(K) from R");
        Near.Is(0.012, k.FromThickness, 0.001, "M.B17 u(K) from T");
        Near.Is(0.067, k.Uncertainty, 0.001, "M.B17 u(K)");
    }
}
