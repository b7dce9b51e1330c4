using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Closed hems: an edge folded back flat on its own sheet, so that no sharp edge is left where hands go.</summary>
/// <remarks>
/// The fold has no inside radius and its neutral fibre lies in the middle of the sheet: it uses up π/2·T and deducts (2 − π/2)·T = 0.43·T from the
/// sum of wall and hem, each measured to the outside of the fold.
/// <para><b>Source</b>: common practice (0.43 T), which is the K form with R = 0 and K = 0.5.
/// <b>Validity</b>: hems pressed shut in sheet to about 2 mm. <b>Accuracy</b>: about ±0.2·T, since the press decides how far it closes; fold a strip
/// where it matters. <b>Checked by</b>: <i>invariant</i> (area, place of holes).</para>
/// </remarks>
public static class Hem
{
    private static readonly BendRule MidFibre = BendRule.WithK(0.5);
    private static readonly double MostYieldRatio = 0.75;
    private static readonly double LeastWidthThicknesses = 4;

    /// <summary>A hem as a flange.</summary>
    /// <param name="id">Permanent id.</param>
    /// <param name="onEdge">The edge that is made safe.</param>
    /// <param name="widthM">Width of the hem over all, from the outside of the fold to its own edge, metres.</param>
    /// <param name="outwards">True when it lies on the outside of its parent.</param>
    public static FlangeSpec Of(string id, string onEdge, double widthM, bool outwards = false) =>
        new(id, onEdge, widthM, outwards ? -Math.PI : Math.PI) { InsideRadiusM = 0, Making = FlangeMaking.Hem };

    /// <summary>The figures of its fold.</summary>
    /// <param name="thicknessM">Thickness, metres.</param>
    /// <param name="allowanceFactor">Factor of the method's error, nominally 1.</param>
    public static BendFigures Figures(double thicknessM, double allowanceFactor = 1) =>
        BendFigures.Of(MidFibre, Math.PI, 0, thicknessM, allowanceFactor);

    internal static void Check(PartSpec spec, Panel panel, string path, List<Finding> findings)
    {
        var hem = panel.Spec!;
        var (sheet, t) = (spec.Sheet, spec.Sheet.ThicknessM);
        if (
            sheet is { YieldPa: > 0, TensileStrengthPa: > 0 }
            && sheet.YieldPa > MostYieldRatio * sheet.TensileStrengthPa
        )
        {
            findings.Add(
                MetalRules
                    .HemCracks.At(
                        path,
                        $"Hem {hem.Id} is folded flat in {sheet.Material}, which yields at {sheet.YieldPa / sheet.TensileStrengthPa * 100:0} % of its strength and stretches little.",
                        $"{sheet.YieldPa / sheet.TensileStrengthPa * 100:0} %",
                        $"{MostYieldRatio * 100:0} %"
                    )
                    .OnBend(spec, panel)
            );
        }

        if (hem.HeightM < (LeastWidthThicknesses * t) - 1e-9)
        {
            findings.Add(
                MetalRules
                    .HemCracks.At(
                        path + ".width",
                        $"Hem {hem.Id} is {Mm.Of(hem.HeightM)} wide; {Mm.Of(LeastWidthThicknesses * t)} can be taken hold of and pressed flat.",
                        Mm.Of(hem.HeightM),
                        Mm.Of(LeastWidthThicknesses * t)
                    )
                    .OnHeight(spec, panel)
            );
        }
    }
}
