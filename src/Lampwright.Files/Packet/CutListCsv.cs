using System.Globalization;
using CsvHelper;
using Lampwright.Evaluation;

namespace Lampwright.Files.Packet;

/// <summary>Writes <c>cut-list.csv</c>: one row a part, units in the heads, the decimal point a point.</summary>
public static class CutListCsv
{
    /// <summary>Writes the list.</summary>
    /// <param name="evaluation">What is known of the light.</param>
    /// <param name="writer">What is written to; stays open.</param>
    public static void Write(LightEvaluation evaluation, TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        using var csv = CsvWriter.Create(
            writer,
            new CsvWriterOptions
            {
                NewLine = "\n",

                // A name that begins like a formula is text to a table program, too.
                Injection = CsvInjection.Escape,
            },
            leaveOpen: true
        );
        csv.WriteRecord(heads);
        foreach (var part in evaluation.Metal?.Parts ?? [])
        {
            csv.WriteField(part.Name);
            csv.WriteField(part.Sheet);
            csv.WriteField(part.Material);
            csv.WriteField(Number(part.ThicknessMm, 3));
            csv.WriteField(Number(part.Count, 0));
            foreach (var size in new[] { part.BlankWidthMm, part.BlankHeightMm })
            {
                csv.WriteField(Number(size.Value, 2));
                csv.WriteField(Number(size.Low, 2));
                csv.WriteField(Number(size.High, 2));
            }

            csv.WriteField(Number(part.AreaMm2.Value, 0));
            csv.WriteField(Number(part.MassKg.Value * 1000, 1));
            csv.WriteField(Number(part.Blank.Bends.Count, 0));
            csv.WriteField(Number(part.Blank.Holes.Count, 0));
            csv.EndRecord();
        }
    }

    private static readonly string[] heads =
    [
        "part",
        "sheet",
        "material",
        "thickness_mm",
        "count",
        "width_mm",
        "width_low_mm",
        "width_high_mm",
        "height_mm",
        "height_low_mm",
        "height_high_mm",
        "area_mm2",
        "mass_g",
        "bends",
        "holes",
    ];

    private static string Number(double value, int decimals) =>
        (Math.Round(value, decimals) + 0.0).ToString("0.######", CultureInfo.InvariantCulture);
}
