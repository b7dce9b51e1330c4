using System.Globalization;

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

    private static List<TouchLimit> Read()
    {
        using var stream =
            typeof(TouchLimits).Assembly.GetManifestResourceStream("Tables/touch-limits.csv")
            ?? throw new InvalidOperationException("The table of touch limits is not in the assembly.");
        using StreamReader reader = new(stream);
        return
        [
            .. reader
                .ReadToEnd()
                .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Where(line => !line.StartsWith('#'))
                .Skip(1)
                .Select(Row),
        ];
    }

    private static TouchLimit Row(string line)
    {
        var cells = line.Split(',');
        return new TouchLimit(
            cells[0] switch
            {
                "iso-13732-1" => TouchStandard.BurnThreshold,
                "iec-62368-1" => TouchStandard.Equipment,
                "iec-60598-1" => TouchStandard.LuminaireAdjusting,
                _ => TouchStandard.ShopLine,
            },
            Enum.Parse<TouchMaterial>(cells[1], ignoreCase: true),
            cells[2].Length == 0 ? double.PositiveInfinity : Number(cells[2]),
            Number(cells[3]) + Physics.ZeroCelsius,
            Number(cells[4]) + Physics.ZeroCelsius,
            cells[5]
        );
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
