using Lampwright.Tables;

namespace Lampwright.Metal;

/// <summary>How far a bend opens again when it is let go.</summary>
/// <remarks>
/// <b>Validity</b>: air bends, r/s from 1 to 100 (18-8 to 40); between the heads logarithmic in r/s, held at the ends.
/// <b>Source</b>: Tabellenbuch Metall, kR; elastic-perfectly plastic: Gardiner, in Kalpakjian and Schmid (memory).
/// <b>Accuracy</b>: with a nominal yield the elastic form under-predicts; prefer kR or the own strip.
/// <b>Checked by</b>: printed (M.P1), derived (M.P2).
/// </remarks>
public static class Springback
{
    private static readonly TableResource Table = TableResource.Read("springback.csv");

    /// <summary>Metals with a row in the table: <c>DC04 DC01 18_8 Al99 AlSiMgMn</c>.</summary>
    public static IReadOnlyList<string> Metals { get; } =
    [.. Table.Columns.Where(c => c.StartsWith("kr_", StringComparison.Ordinal)).Select(c => c[3..])];

    /// <summary>kR: angle after over angle before letting go; null beyond the source's row.</summary>
    /// <param name="metal">One of <see cref="Metals"/>.</param>
    /// <param name="ratio">Wanted inside radius over thickness, above 0.</param>
    public static double? Factor(string metal, double ratio)
    {
        Guard.Positive(ratio);
        var column = "kr_" + metal;
        double? last = null;
        var lastRatio = 0.0;
        for (var i = 0; i < Table.RowCount; i++)
        {
            var (head, value) = (Table.Number(i, "r_over_s"), OrNull(Table.Number(i, column)));
            if (ratio <= head + 1e-12)
            {
                return value is null || last is not { } low
                    ? value
                    : low + ((value - low) * Math.Log(ratio / lastRatio) / Math.Log(head / lastRatio));
            }

            (last, lastRatio) = (value, head);
        }

        return last;
    }

    /// <summary>Angle to bend to so that the wanted one is left, radians; null for a sheet or a radius that the source has no row for.</summary>
    /// <param name="grade">Designation of the sheet: DC01, DC04, 1.4301, 6082-T6 have a row.</param>
    /// <param name="angleRad">Wanted angle, turned from flat.</param>
    /// <param name="radiusM">Inside radius, metres.</param>
    /// <param name="thicknessM">Thickness, metres.</param>
    public static double? Advice(string grade, double angleRad, double radiusM, double thicknessM)
    {
        string? metal = grade switch
        {
            "DC01" => "DC01",
            "DC04" => "DC04",
            "1.4301" => "18_8",
            "6082-T6" => "AlSiMgMn",
            _ => null,
        };
        return metal is not null && radiusM > 0 && Factor(metal, radiusM / Guard.Positive(thicknessM)) is { } kept
            ? BendTo(angleRad, kept)
            : null;
    }

    private static double? OrNull(double cell) => double.IsNaN(cell) ? null : cell;

    /// <summary>Angle to bend to so that the wanted angle is left: wanted / kR.</summary>
    public static double BendTo(double wantedRad, double factor) => wantedRad / Guard.InRange(factor, 0.01, 1);

    /// <summary>Radius to bend round: kR (r2 + s/2) - s/2.</summary>
    public static double ToolRadius(double wantedRadius, double thickness, double factor) =>
        (factor * (wantedRadius + (thickness / 2))) - (thickness / 2);

    /// <summary>Ri/Rf of an elastic-perfectly plastic sheet: 4x³ - 3x + 1, x = Ri Y / (E T), for x below 0.5.</summary>
    public static double ElasticRatio(double radius, double thickness, double yield, double modulus)
    {
        var x = Guard.InRange(radius * yield / (modulus * thickness), 0, 0.5);
        return (4 * x * x * x) - (3 * x) + 1;
    }
}
