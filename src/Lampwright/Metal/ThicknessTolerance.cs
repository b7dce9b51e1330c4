using Lampwright.Tables;

namespace Lampwright.Metal;

/// <summary>Normal thickness tolerances of sheet from the mill.</summary>
/// <remarks>
/// <b>Source</b>: EN 10131 (steel), EN 10259 (stainless), EN 485-4 group I (aluminium); all second-hand. <b>Checked by</b>: the table's sums.
/// </remarks>
public static class ThicknessTolerance
{
    private static readonly TableResource Table = TableResource.Read("sheet-thickness.csv");

    /// <summary>Half-width of the tolerance for narrow sheet, metres; null outside the table.</summary>
    /// <param name="metal"><c>steel</c>, <c>stainless</c> or <c>aluminium</c>.</param>
    /// <param name="thicknessM">Nominal thickness, metres.</param>
    public static double? HalfWidthM(string metal, double thicknessM)
    {
        for (var i = 0; i < Table.RowCount; i++)
        {
            if (
                string.Equals(Table.Text(i, "metal"), metal, StringComparison.Ordinal)
                && thicknessM * 1000 > Table.Number(i, "over_mm") - 1e-9
                && thicknessM * 1000 < Table.Number(i, "to_mm") + 1e-9
            )
            {
                return Table.Number(i, "narrow_mm") / 1000;
            }
        }

        return null;
    }
}
