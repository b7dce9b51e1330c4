using Lampwright.Tables;

namespace Lampwright.Light;

/// <summary>How near one may look into the light: the distance at which its blue light falls to risk group 1.</summary>
/// <remarks>
/// Threshold illuminance by colour temperature, distance √(I/E). <b>Validity</b>: white light up to 8000 K; beyond the table's end the
/// last row is taken and said so. <b>Source</b>: IEC TR 62778, table C.2 (memory). <b>Accuracy</b>: the table lies 2 to 13 % below half of 1/K_B,v of
/// four standard LED spectra (L.B-2a), that is on the safe side. <b>Checked by</b>: L.B-1a, L.B-3a, L.B-3b.
/// </remarks>
public static class BlueLight
{
    private static readonly (double ToK, double Lux)[] Rows = Read();

    /// <summary>Highest colour temperature of the table, kelvin.</summary>
    public static double HighestCctK => Rows[^1].ToK;

    /// <summary>Illuminance at the eye, lux, up to which the light stays within risk group 1.</summary>
    /// <param name="cctK">Correlated colour temperature in kelvin, above 0; above the table's end its last row is taken.</param>
    public static double ThresholdLux(double cctK)
    {
        Guard.Positive(cctK);
        foreach (var (to, lux) in Rows)
        {
            if (cctK <= to)
            {
                return lux;
            }
        }

        return Rows[^1].Lux;
    }

    /// <summary>Distance in metres within which looking into the light needs care: √(I/E).</summary>
    /// <param name="axisCd">Largest intensity, candela, 0 or more.</param>
    /// <param name="thresholdLux">Threshold illuminance, lux, above 0.</param>
    public static double CareDistanceM(double axisCd, double thresholdLux) =>
        Math.Sqrt(Math.Max(axisCd, 0) / Guard.Positive(thresholdLux));

    private static (double ToK, double Lux)[] Read()
    {
        var table = TableResource.Read("blue-light.csv");
        return
        [
            .. Enumerable.Range(0, table.RowCount).Select(i => (table.Number(i, "cct_to_K"), table.Number(i, "lux"))),
        ];
    }
}
