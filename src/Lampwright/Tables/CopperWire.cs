namespace Lampwright.Tables;

/// <summary>Resistance of copper leads.</summary>
/// <remarks>
/// <b>Validity</b>: fine-stranded class 5 from 0.14 to 10 mm², tinned from 0.5 to 2.5 mm²; outside, and between the sizes,
/// the product of resistance and area of the nearest sizes is carried on.
/// <b>Source</b>: IEC 60228 / DIN VDE 0295 (second-hand); AWG: d = 0.127 mm·92^((36−n)/39), copper 17.241 Ω·mm²/km.
/// <b>Accuracy</b>: the class 5 figures are greatest values; plain copper of the full area is about 13 % lower.
/// <b>Checked by</b>: printed.
/// </remarks>
public static class CopperWire
{
    private static readonly (double AreaMm2, double Ohm)[] Plain = Load("plain_ohm_per_km");
    private static readonly (double AreaMm2, double Ohm)[] Tinned = Load("tinned_ohm_per_km");

    /// <summary>Resistance of a class 5 conductor at 20 °C in ohm per metre.</summary>
    /// <param name="areaMm2">Nominal area in mm², 0.01 to 1000.</param>
    /// <param name="tinned">True for tinned strands.</param>
    public static double OhmPerMetre(double areaMm2, bool tinned = false)
    {
        Guard.InRange(areaMm2, 0.01, 1000);
        return Product(tinned ? Tinned : Plain, areaMm2) / areaMm2 / 1000;
    }

    /// <summary>Resistance at a temperature over resistance at 20 °C: (230 + t)/250 with t in °C (IEC 60228).</summary>
    /// <param name="temperatureK">Temperature of the copper in kelvin.</param>
    public static double TemperatureFactor(double temperatureK) => (230 + (temperatureK - 273.15)) / 250;

    /// <summary>Diameter of a solid wire of a gauge number, in mm.</summary>
    /// <param name="gauge">AWG number, −3 (0000) to 50.</param>
    public static double AwgDiameterMm(double gauge) => 0.127 * Math.Pow(92, (36 - Guard.InRange(gauge, -3, 50)) / 39);

    /// <summary>Resistance of a solid copper wire of a gauge number at 20 °C, in ohm per metre.</summary>
    /// <param name="gauge">AWG number, −3 (0000) to 50.</param>
    public static double AwgOhmPerMetre(double gauge)
    {
        var d = AwgDiameterMm(gauge);
        return 17.241e-3 / (Math.PI / 4 * d * d);
    }

    private static double Product((double AreaMm2, double Ohm)[] table, double areaMm2)
    {
        if (areaMm2 <= table[0].AreaMm2)
        {
            return table[0].AreaMm2 * table[0].Ohm;
        }

        for (var i = 1; i < table.Length; i++)
        {
            var (b, r) = table[i];
            if (areaMm2 > b)
            {
                continue;
            }

            var (a, q) = table[i - 1];
            var part = Math.Log(areaMm2 / a) / Math.Log(b / a);
            return (a * q * (1 - part)) + (b * r * part);
        }

        return table[^1].AreaMm2 * table[^1].Ohm;
    }

    private static (double AreaMm2, double Ohm)[] Load(string column)
    {
        var table = TableResource.Read("copper-class5.csv");
        return
        [
            .. Enumerable
                .Range(0, table.RowCount)
                .Select(i => (table.Number(i, "area_mm2"), table.Number(i, column)))
                .Where(x => double.IsFinite(x.Item2)),
        ];
    }
}
