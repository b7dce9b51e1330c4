using System.Globalization;
using CsvHelper;
using Lampwright.Evaluation;
using Lampwright.Files.Drawings;

namespace Lampwright.Files.Packet;

/// <summary>Writes <c>marking-out.csv</c>: one row a point or line to be marked, from the left and bottom edge of each blank.</summary>
public static class MarkingOutCsv
{
    private static readonly string[] heads = ["part", "kind", "id", "x_mm", "y_mm", "x2_mm", "y2_mm", "what"];

    /// <summary>Writes the list.</summary>
    /// <param name="evaluation">What is known of the light.</param>
    /// <param name="writer">What is written to; stays open.</param>
    public static void Write(LightEvaluation evaluation, TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        using var csv = CsvWriter.Create(
            writer,
            new CsvWriterOptions { NewLine = "\n", Injection = CsvInjection.Escape },
            leaveOpen: true
        );
        csv.WriteRecord(heads);
        foreach (var part in evaluation.Metal?.Parts ?? [])
        {
            foreach (var point in MarkingOut.Of(part.Blank))
            {
                csv.WriteField(part.Name);
                csv.WriteField(point.Kind);
                csv.WriteField(point.Id);
                csv.WriteField(Number(point.AtMm.X));
                csv.WriteField(Number(point.AtMm.Y));
                csv.WriteField(point.ToMm is { } x ? Number(x.X) : "");
                csv.WriteField(point.ToMm is { } y ? Number(y.Y) : "");
                csv.WriteField(point.What);
                csv.EndRecord();
            }
        }
    }

    private static string Number(double mm) => (Math.Round(mm, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}
