using Lampwright.Tables;

namespace Lampwright.Metal;

/// <summary>Smallest inside radius that a sheet bears without cracking.</summary>
/// <remarks>
/// <b>Validity</b>: steel of Rm up to 640 MPa, thickness up to 10 mm; other metals read the row of their tensile strength as a first guess.
/// <b>Source</b>: DIN 6935:1975 (second-hand); the ductility rule: Kalpakjian and Schmid (memory). <b>Checked by</b>: printed (M.R1, M.R6a).
/// </remarks>
public static class LeastRadius
{
    private static readonly (double To, double Rm390, double Rm490, double Rm640)[] Rows = Load();

    /// <summary>Smallest inside radius by DIN 6935, metres; null outside the table.</summary>
    /// <param name="thicknessM">Thickness, metres.</param>
    /// <param name="tensileStrengthPa">Rm, pascals.</param>
    /// <param name="angleRad">Angle turned from flat, radians; above 120° the next thicker row counts.</param>
    /// <param name="along">True when the bend runs along the rolling direction: the next thicker row counts.</param>
    public static double? Din6935(double thicknessM, double tensileStrengthPa, double angleRad, bool along = false)
    {
        var s = thicknessM * 1000;
        var row = Array.FindIndex(Rows, r => s <= r.To + 1e-9);
        if (row < 0 || !(s > 0))
        {
            return null;
        }

        if (along || angleRad > (2 * Math.PI / 3) + 1e-9)
        {
            row = Math.Min(row + 1, Rows.Length - 1);
        }

        var rm = tensileStrengthPa / 1e6;
        double? mm =
            rm <= 390 ? Rows[row].Rm390
            : rm <= 490 ? Rows[row].Rm490
            : rm <= 640 ? Rows[row].Rm640
            : null;
        return mm / 1000;
    }

    /// <summary>Smallest radius over thickness from the reduction of area: 50/q - 1, not below 0.</summary>
    /// <param name="reductionPercent">Reduction of area in the tensile test, percent, above 0.</param>
    public static double FromDuctility(double reductionPercent) =>
        Math.Max(0, (50 / Guard.Positive(reductionPercent)) - 1);

    private static (double, double, double, double)[] Load()
    {
        var table = TableResource.Read("least-radius.csv");
        var rows = new (double, double, double, double)[table.RowCount];
        for (var i = 0; i < rows.Length; i++)
        {
            rows[i] = (
                table.Number(i, "to_mm"),
                table.Number(i, "r_rm390_mm"),
                table.Number(i, "r_rm490_mm"),
                table.Number(i, "r_rm640_mm")
            );
        }

        return rows;
    }
}
