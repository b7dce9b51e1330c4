using Lampwright.Tables;

namespace Lampwright.Heat;

/// <summary>What a touched surface is made of.</summary>
public enum TouchMaterial
{
    /// <summary>Bare or painted metal.</summary>
    Metal,

    /// <summary>Glass, ceramics, stone.</summary>
    Glass,

    /// <summary>Plastic, rubber.</summary>
    Plastic,

    /// <summary>Wood.</summary>
    Wood,
}

/// <summary>Who set a touch limit.</summary>
public enum TouchStandard
{
    /// <summary>ISO 13732-1: burn thresholds of healthy skin.</summary>
    BurnThreshold,

    /// <summary>IEC 62368-1, class TS1: limits of equipment for anybody.</summary>
    Equipment,

    /// <summary>IEC 60598-1: luminaire parts touched while adjusting.</summary>
    LuminaireAdjusting,

    /// <summary>Lines that shops draw for themselves.</summary>
    ShopLine,
}

/// <summary>One row of the table.</summary>
/// <param name="Standard">Who set it.</param>
/// <param name="Material">What is touched.</param>
/// <param name="UpToS">Longest contact it holds for, s; infinite where any longer.</param>
/// <param name="LowK">Lower end, K.</param>
/// <param name="HighK">Upper end, K.</param>
/// <param name="Mark">How it was obtained.</param>
public sealed record TouchLimit(
    TouchStandard Standard,
    TouchMaterial Material,
    double UpToS,
    double LowK,
    double HighK,
    string Mark
);

/// <summary>Temperatures of surfaces that skin may touch, by material and time of contact.</summary>
/// <remarks>
/// Source: ISO 13732-1 (memory), IEC 62368-1 Table 42 (second-hand), IEC 60598-1 cl. 12.4 (second-hand), shop lines (common practice);
/// the resource Tables/touch-limits.csv. ISO states burn <i>thresholds</i>, not limits.
/// </remarks>
public static class TouchLimits
{
    /// <summary>All rows.</summary>
    public static readonly IReadOnlyList<TouchLimit> All = Read();

    /// <summary>Limit for a contact, K: the lower end of the row for that time or the next longer; null where the table is silent.</summary>
    /// <param name="standard">Who set it.</param>
    /// <param name="material">What is touched.</param>
    /// <param name="contactS">Time of contact, s, above 0.</param>
    public static double? LimitK(TouchStandard standard, TouchMaterial material, double contactS)
    {
        Guard.Positive(contactS);
        return All.Where(r => r.Standard == standard && r.Material == material && contactS <= r.UpToS)
            .MinBy(r => r.UpToS)
            ?.LowK;
    }

    /// <summary>Longest contact that a standard allows at a temperature, s: infinite where any, 0 where none, null where it is silent.</summary>
    /// <param name="standard">Who set it.</param>
    /// <param name="material">What is touched.</param>
    /// <param name="surfaceK">Temperature of the surface, K.</param>
    public static double? LongestContactS(TouchStandard standard, TouchMaterial material, double surfaceK)
    {
        var rows = All.Where(r => r.Standard == standard && r.Material == material).ToList();
        return rows.Count == 0
            ? null
            : rows.Where(r => surfaceK <= r.LowK).Select(r => r.UpToS).DefaultIfEmpty(0).Max();
    }

    /// <summary>Shortest contact in the table whose burn threshold a surface passes, s; infinite where it passes none.</summary>
    /// <param name="material">What is touched.</param>
    /// <param name="surfaceK">Temperature of the surface, K.</param>
    public static double BurnsFromS(TouchMaterial material, double surfaceK) =>
        All.Where(r => r.Standard == TouchStandard.BurnThreshold && r.Material == material && surfaceK > r.LowK)
            .Select(r => r.UpToS)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();

    private static List<TouchLimit> Read()
    {
        var table = TableResource.Read("touch-limits.csv");
        return
        [
            .. Enumerable
                .Range(0, table.RowCount)
                .Select(row => new TouchLimit(
                    table.Text(row, "standard") switch
                    {
                        "iso-13732-1" => TouchStandard.BurnThreshold,
                        "iec-62368-1" => TouchStandard.Equipment,
                        "iec-60598-1" => TouchStandard.LuminaireAdjusting,
                        _ => TouchStandard.ShopLine,
                    },
                    Enum.Parse<TouchMaterial>(table.Text(row, "material"), ignoreCase: true),
                    table.Number(row, "up_to_s") is var longest && double.IsNaN(longest)
                        ? double.PositiveInfinity
                        : longest,
                    table.Number(row, "low_c") + Physics.ZeroCelsius,
                    table.Number(row, "high_c") + Physics.ZeroCelsius,
                    table.Text(row, "mark")
                )),
        ];
    }
}
