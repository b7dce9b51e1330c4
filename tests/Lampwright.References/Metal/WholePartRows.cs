using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>Whole parts of handbooks and textbooks through the whole station, each by its own rule; metal.md section 1.</summary>
public sealed class WholePartRows
{
    private static readonly double Inch = 0.0254;

    private static Blank U(SheetSpec sheet, double web, double left, double right, double angle = Math.PI / 2) =>
        SheetPart
            .Of(
                new PartSpec("u", sheet, FaceSpec.Rectangle(web, 0.1))
                {
                    Flanges = [new("a", "face.left", left, angle), new("b", "face.right", right, angle)],
                }
            )
            .Blank!;

    // M.B11, published, second-hand: FAA-H-8083-31 ch. 4, fig. 4-124 to 4-126. 0.040 in 2024-T3, R 0.16 in, mould lines 1, 2, 1 in.
    // M.B12, memory: BA 0.2791 in by the empirical rule (K 0.4475), blank 3.758, printed 3.76 in.
    [Fact]
    public void U_channel_of_the_aircraft_handbook()
    {
        var blank = U(new("2024-T3", 0.040 * Inch, 0.16 * Inch, BendRule.WithK(0.4475)), 2 * Inch, Inch, Inch);
        var (a, b) = (blank.Bends[0], blank.Bends[1]);
        Near.Is(0.200, a.SetbackM / Inch, 0.0005, "M.B11 setback");
        Near.Is(0.8, a.OuterTangent.A.X / Inch, 0.001, "M.B11 flat of the leg");
        Near.Is(1.6, (b.InnerTangent.A.X - a.InnerTangent.A.X) / Inch, 0.001, "M.B11 flat of the web");
        Near.Is(0.2791, a.AllowanceM / Inch, 0.0005, "M.B12 allowance");
        Near.Is(3.758, blank.WidthM / Inch, 0.001, "M.B12 blank");
    }

    // M.B6, published: Westermann textbook, ISBN 978-3-7100-2443-6, p. 206. Legs 50 + 40 + 30, r 1, t 1; by the DIN formula 116.16 (its short rule: 116).
    [Fact]
    public void Bent_strip_of_the_textbook_by_the_exact_formula() =>
        Near.Is(
            116.16,
            U(new("sheet", 0.001, 0.001, BendRule.Din6935), 0.040, 0.050, 0.030).WidthM * 1000,
            0.005,
            "M.B6 blank"
        );

    // M.B14, memory: Groover, sheet bending example. 60°, R 4.75, t 3.2, K 0.33, flats 38 + 25: BA 6.08, blank 69.08.
    [Fact]
    public void Bent_strip_of_60_degrees()
    {
        var setback = (4.75 + 3.2) * Math.Tan(Math.PI / 6) / 1000;
        var blank = SheetPart
            .Of(
                new PartSpec(
                    "bent",
                    new("steel", 0.0032, 0.00475, BendRule.WithK(0.33)),
                    FaceSpec.Rectangle(0.038 + setback, 0.0445)
                )
                {
                    Flanges = [new("leg", "face.right", 0.025 + setback, Math.PI / 3)],
                }
            )
            .Blank!;
        Near.Is(6.08, blank.Bends[0].AllowanceM * 1000, 0.005, "M.B14 allowance");
        Near.Is(69.08, blank.WidthM * 1000, 0.005, "M.B14 blank");
    }

    // Common practice: a closed hem deducts 0.43 T of wall and hem.
    [Fact]
    public void Closed_hem_deducts_0_43_thicknesses() => Near.Is(0.43, Hem.Figures(1).DeductionM, 0.005, "hem");
}
