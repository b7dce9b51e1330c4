using Lampwright.Geometry;
using Lampwright.Metal.Fields;

namespace Lampwright.Metal;

/// <summary>How one figure of a part changes per metre of thickness, per metre of inside radius, and per 1 (100 %) of allowance.</summary>
/// <param name="PerThickness">Change per metre of thickness.</param>
/// <param name="PerRadius">Change per metre of inside radius of the sheet (flanges with a radius of their own keep it).</param>
/// <param name="PerAllowance">Change when every bend allowance grows by its own size.</param>
public readonly record struct Sensitivity(double PerThickness, double PerRadius, double PerAllowance)
{
    /// <summary>The figure's change for small changes of the three.</summary>
    public double Change(double thickness, double radius, double allowance) =>
        (PerThickness * thickness) + (PerRadius * radius) + (PerAllowance * allowance);
}

/// <summary>Influence coefficients of a part at its nominal values; the draws use them instead of folding again.</summary>
/// <param name="Width">Of the blank's width, metres.</param>
/// <param name="Height">Of the blank's height, metres.</param>
/// <param name="Area">Of the net area, m².</param>
/// <param name="Mass">Of the mass, kg.</param>
/// <param name="CentreX">Of the centre of mass in the part's frame, metres.</param>
/// <param name="CentreY">Its y.</param>
/// <param name="CentreZ">Its z.</param>
/// <remarks>
/// Central differences of the exact geometry, three pairs of foldings without checks: run once per part, not per draw.
/// <b>Accuracy</b>: the blank is linear in allowance and, for one K, in radius and thickness; curvature within a stock's tolerance is below 1 %.
/// <b>Checked by</b>: invariant (against the exact blank at changed thickness, and against the closed form of a channel).
/// </remarks>
public sealed record PartSensitivities(
    Sensitivity Width,
    Sensitivity Height,
    Sensitivity Area,
    Sensitivity Mass,
    Sensitivity CentreX,
    Sensitivity CentreY,
    Sensitivity CentreZ
)
{
    /// <summary>The coefficients of a part; null where the part or a neighbour of it cannot be folded.</summary>
    public static PartSensitivities? Of(PartSpec spec)
    {
        spec = FieldEdges.Settled(spec);
        var sheet = spec.Sheet;
        var (dt, dr, da) = (0.02 * sheet.ThicknessM, 0.05 * Math.Max(sheet.InsideRadiusM, 1e-4), 0.01);
        if (sheet.InsideRadiusM < dr)
        {
            dr = sheet.InsideRadiusM / 2;
        }

        var byThickness = Slope(s => spec with { Sheet = sheet with { ThicknessM = sheet.ThicknessM + s } }, dt);
        var byRadius =
            dr > 0
                ? Slope(s => spec with { Sheet = sheet with { InsideRadiusM = sheet.InsideRadiusM + s } }, dr)
                : new double[7];
        var byAllowance = Slope(
            s => spec with { Factors = spec.Factors with { Allowance = spec.Factors.Allowance * (1 + s) } },
            da
        );
        if (byThickness is null || byRadius is null || byAllowance is null)
        {
            return null;
        }

        Sensitivity At(int i) => new(byThickness[i], byRadius[i], byAllowance[i]);
        return new(At(0), At(1), At(2), At(3), At(4), At(5), At(6));
    }

    private static double[]? Slope(Func<double, PartSpec> at, double step)
    {
        if (Figures(at(step)) is not { } above || Figures(at(-step)) is not { } below)
        {
            return null;
        }

        for (var i = 0; i < above.Length; i++)
        {
            above[i] = (above[i] - below[i]) / (2 * step);
        }

        return above;
    }

    private static double[]? Figures(PartSpec spec)
    {
        var part = SheetPart.Unchecked(spec);
        if (part.Blank is not { } blank || part.Folded is not { } folded)
        {
            return null;
        }

        Vec3 c = folded.CentreOfMass;
        return [blank.WidthM, blank.HeightM, blank.AreaM2, blank.MassKg, c.X, c.Y, c.Z];
    }
}
