namespace Lampwright.Tables;

/// <summary>Preferred values of resistors.</summary>
/// <remarks>
/// <b>Validity</b>: E6, E12, E24, E48, E96, E192. <b>Source</b>: IEC 60063 (second-hand; 920 in E192 from memory).
/// <b>Checked by</b>: printed (E24, E96), invariant (E48 and up follow 100·10^(i/N) with the one exception).
/// </remarks>
public static class ESeries
{
    private static readonly Dictionary<string, double[]> Series = Load();

    /// <summary>Names of the series, coarse to fine.</summary>
    public static IReadOnlyList<string> Names { get; } = ["E6", "E12", "E24", "E48", "E96", "E192"];

    /// <summary>Whether there is a series of that name.</summary>
    public static bool Has(string name) => Series.ContainsKey(name ?? "");

    /// <summary>Values of one decade, 1.00 to 9.99, ascending.</summary>
    /// <param name="name">Name, for example <c>E24</c>.</param>
    /// <exception cref="ArgumentException">There is no such series.</exception>
    public static IReadOnlyList<double> Decade(string name) =>
        Series.TryGetValue(name ?? "", out var values)
            ? values
            : throw new ArgumentException($"There is no series {name}.", nameof(name));

    /// <summary>All values of a series from least to most, ascending, each the nearest number to its decimal value.</summary>
    /// <param name="name">Name of the series.</param>
    /// <param name="least">Least value in ohm; above 0.</param>
    /// <param name="most">Greatest value in ohm.</param>
    public static IReadOnlyList<double> Between(string name, double least, double most)
    {
        var decade = Decade(name);
        Guard.InRange(least, 1e-9, 1e12);
        Guard.InRange(most, 0, 1e12);
        var values = new List<double>();
        for (var power = (int)Math.Floor(Math.Log10(least)); Math.Pow(10, power) <= most; power++)
        {
            foreach (var v in decade)
            {
                // Hundredths of the decade are whole numbers; one division or product of whole numbers rounds once.
                var whole = Math.Round(v * 100);
                var ohm = power >= 2 ? whole * Math.Pow(10, power - 2) : whole / Math.Pow(10, 2 - power);
                if (ohm >= least * (1 - 1e-12) && ohm <= most * (1 + 1e-12))
                {
                    values.Add(ohm);
                }
            }
        }

        return values;
    }

    /// <summary>Largest half-gap between neighbours, (b − a)/(b + a), the step into the next decade included.</summary>
    public static double LargestHalfGap(string name)
    {
        var decade = Decade(name);
        var largest = 0.0;
        for (var i = 0; i < decade.Count; i++)
        {
            var a = decade[i];
            var b = i + 1 < decade.Count ? decade[i + 1] : 10 * decade[0];
            largest = Math.Max(largest, (b - a) / (b + a));
        }

        return largest;
    }

    private static Dictionary<string, double[]> Load()
    {
        var table = TableResource.Read("e-series.csv");
        var lists = new Dictionary<string, List<double>>(StringComparer.Ordinal);
        for (var i = 0; i < table.RowCount; i++)
        {
            var name = table.Text(i, "series");
            if (!lists.TryGetValue(name, out var list))
            {
                lists[name] = list = [];
            }

            list.Add(table.Number(i, "value") / 100);
        }

        return lists.ToDictionary(p => p.Key, p => p.Value.ToArray(), StringComparer.Ordinal);
    }
}
