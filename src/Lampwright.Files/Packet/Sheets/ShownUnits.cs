using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.Charts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>Lengths and temperatures in the units that the maker likes to read.</summary>
internal sealed class ShownUnits(Show show)
{
    private readonly bool inches = show.Length == "in";

    public string LengthSign => inches ? "in" : "mm";

    public TemperatureUnit Temperature { get; } = TemperatureUnit.Of(show);

    /// <summary>A length given in mm, as a number without its unit.</summary>
    public string Length(double mm, int decimals = 1) =>
        inches ? ChartText.Fixed(mm / 25.4, decimals + 2) : ChartText.Fixed(mm, decimals);

    /// <summary>A size as it is drilled: two decimals at most, in inches with the millimetres of the drill kept.</summary>
    public string Diameter(double mm) => inches ? $"{ChartText.Fixed(mm / 25.4, 3)} ({Trimmed(mm)} mm)" : Trimmed(mm);

    /// <summary>A predicted length given in mm.</summary>
    public Cell Length(Predicted mm, int decimals = 1)
    {
        var (p, d) = inches ? (mm.In(1 / 25.4), decimals + 2) : (mm, decimals);
        return new(ChartText.Fixed(p.Value, d), ChartText.Band(p, d));
    }

    /// <summary>A predicted temperature given in °C.</summary>
    public Cell Degrees(Predicted celsius)
    {
        var p = Temperature.From(celsius);
        return new(ChartText.Fixed(p.Value, 0), ChartText.Band(p, 0));
    }

    private static string Trimmed(double mm) => ChartText.Fixed(mm, 2).TrimEnd('0').TrimEnd('.');
}
