using System.Globalization;
using CsvHelper;
using Lampwright.Files.DesignFile;
using Lampwright.Quantities;
using Lampwright.Readings;

namespace Lampwright.Files.ReadingsFile;

/// <summary>Readings from the bench: a CSV with the columns <c>what,switches,place,value,meter</c>.</summary>
/// <remarks>
/// Values carry their unit (<c>1.41 A</c>, <c>36.8 V</c>, <c>4100 lx</c>, <c>52 degC</c>, <c>0.241 ohm</c>). Lines that start with
/// <c>#</c> are remarks. Columns may stand in any order; <c>place</c> and <c>meter</c> may be missing.
/// </remarks>
public static class ReadingsCsv
{
    private static readonly string[] Needed = ["what", "switches", "value"];
    private static readonly int MostRows = 100_000;

    private static readonly Dictionary<string, (ReadingKind Kind, Dimension Unit, string Example)> Kinds = new(
        StringComparer.OrdinalIgnoreCase
    )
    {
        ["current"] = (ReadingKind.Current, Dimension.Current, "1.41 A"),
        ["voltage"] = (ReadingKind.Voltage, Dimension.Voltage, "36.8 V"),
        ["power"] = (ReadingKind.Power, Dimension.Power, "58 W"),
        ["lux"] = (ReadingKind.Illuminance, Dimension.Illuminance, "4100 lx"),
        ["temperature"] = (ReadingKind.Temperature, Dimension.Temperature, "52 degC"),
        ["resistance"] = (ReadingKind.Resistance, Dimension.Resistance, "0.241 ohm"),
    };

    /// <summary>Reads a text of readings. Bad rows are problems; the others are still read.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">Name of the file, for the problems.</param>
    public static (IReadOnlyList<Reading> Readings, IReadOnlyList<FileProblem> Problems) Parse(string text, string file)
    {
        var readings = new List<Reading>();
        var problems = new List<FileProblem>();
        var options = new CsvReaderOptions
        {
            Separator = ',',
            CommentPrefix = '#',
            TrimWhitespace = true,
            TrackLineNumbers = true,
            FormatProvider = CultureInfo.InvariantCulture,
        };
        using var csv = CsvReader.FromText(text, options);
        try
        {
            csv.ReadHeader();
            var missing = Needed.Where(n => !csv.TryGetFieldIndex(n, out _)).ToList();
            if (missing.Count > 0)
            {
                problems.Add(
                    new(
                        file,
                        1,
                        1,
                        "readings",
                        string.Join(",", csv.Headers.ToArray()),
                        "a first line what,switches,place,value,meter",
                        $"The first line names no column {string.Join(", ", missing)}"
                    )
                );
                return (readings, problems);
            }

            while (readings.Count + problems.Count < MostRows && csv.Read())
            {
                Row(csv, file, readings, problems);
            }
        }
        catch (Exception e) when (e is FormatException or InvalidDataException or IOException)
        {
            problems.Add(
                new(
                    file,
                    (int)csv.LineNumber,
                    1,
                    "readings",
                    "a row that is no CSV",
                    "rows of five columns",
                    e.Message.Split('\n')[0]
                )
            );
        }

        return (readings, problems);
    }

    private static void Row(CsvReader csv, string file, List<Reading> readings, List<FileProblem> problems)
    {
        string Cell(string name) =>
            csv.TryGetFieldIndex(name, out var at) && at < csv.FieldCount ? csv.GetString(at) : "";
        var line = (int)csv.LineNumber;
        void Problem(string column, string found, string accepted, string message) =>
            problems.Add(
                new(
                    file,
                    line,
                    (csv.TryGetFieldIndex(column, out var at) ? at : 0) + 1,
                    "readings",
                    found,
                    accepted,
                    message
                )
            );

        var what = Cell("what");
        if (!Kinds.TryGetValue(what, out var kind))
        {
            Problem("what", what, string.Join(", ", Kinds.Keys), $"'{what}' is nothing that is measured here");
            return;
        }

        var switches = Cell("switches");
        if (!switches.All(c => c is '0' or '1'))
        {
            Problem(
                "switches",
                switches,
                "one digit a switch, 1 for closed, for example 1011",
                "The switch position can't be read"
            );
            return;
        }

        var value = Cell("value");
        if (!QuantityText.TryParse(value, kind.Unit, out var stated, out var error))
        {
            Problem(
                "value",
                value,
                $"a number with its unit, for example {kind.Example}",
                error?.Message ?? "It can't be read"
            );
            return;
        }

        readings.Add(new(line, kind.Kind, switches, Cell("place"), stated.Nominal.Si, Cell("meter")));
    }
}
