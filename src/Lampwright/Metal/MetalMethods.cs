using System.Globalization;
using Lampwright.Tables;

namespace Lampwright.Metal;

/// <summary>Known errors of this station's methods, for the draws of Evaluation.</summary>
public static class MetalMethods
{
    /// <summary>On every bend allowance by a published rule: K scatters by about ±0.05, at R = T ±3.5 % of the allowance.</summary>
    public static MethodError Allowance { get; } =
        new("metal.allowance", 0.035, "spread of K by metal, Machinery's Handbook, 26th ed. (second-hand)");

    /// <summary>Least half-width where one strip alone is known: nothing is known of the next one.</summary>
    private static double OneStrip => 0.03;

    /// <summary>On the density of the sheet within its grade.</summary>
    public static MethodError Density { get; } = new("metal.density", 0.01, "common practice, no source");

    /// <summary>On the allowance of one sheet by own strips: the band of their mean deduction, as a share of the allowance.</summary>
    /// <param name="sheet">The sheet, its rule by strips.</param>
    /// <remarks>
    /// The strips nearest to a square bend speak for all, as the same relative error of K goes to the other angles. A strip alone is taken
    /// at ±3 % at least (common practice, no source).
    /// <para><b>Source</b>: <see cref="StripMean"/>. <b>Checked by</b>: hand case.</para>
    /// </remarks>
    public static MethodError StripAllowance(SheetSpec sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var known = StripMean.Of(sheet.Rule.Strips ?? []).MinBy(s => Math.Abs(s.AngleRad - (Math.PI / 2)));
        if (known is null)
        {
            return Allowance;
        }

        var allowance = BendFigures.Of(sheet.Rule, known.AngleRad, sheet.InsideRadiusM, sheet.ThicknessM).AllowanceM;
        var share = allowance > 0 ? known.HalfWidthM / allowance : 0;
        return new(
            "metal.allowance.strips." + sheet.Name,
            Math.Min(0.5, known.Count == 1 ? Math.Max(share, OneStrip) : share),
            string.Create(
                CultureInfo.InvariantCulture,
                $"spread of {known.Count} own strips, Student's t (JCGM 100:2008), and their readings"
            )
        );
    }

    /// <summary>The errors that a sheet's rule brings with it; their names begin with those of <see cref="MetalFactors"/>.</summary>
    /// <param name="sheet">The sheet.</param>
    public static IReadOnlyList<MethodError> MethodErrors(SheetSpec sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return [sheet.Rule.Method == BendMethod.Strips ? StripAllowance(sheet) : Allowance, Density];
    }
}
