using Lampwright.Evaluation;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>Readings beside predictions.</summary>
internal static class ReadingsTables
{
    /// <summary>Shows the station; false when it has no answer.</summary>
    public static bool Show(IAnsiConsole screen, LightEvaluation light)
    {
        if (light.Readings is not { Rows.Count: > 0 } readings)
        {
            return false;
        }

        var rows = new Cells(">line", "what", "switches", ">measured", "unit", ">predicted", ">off by %", ">in bands");
        foreach (var row in readings.Rows)
        {
            rows.Row(
                Cells.Side(Numbers.Fixed(row.Line, 0)),
                Cells.Of(row.Place.Length > 0 ? $"{row.What}, {row.Place}" : row.What),
                Cells.Of(row.Switches),
                Cells.Of(Predicted.Sharp(row.Measured), v => Numbers.Significant(v, 4)),
                Cells.Side(row.Unit),
                Cells.Rounded(row.Predicted),
                Cells.Of(row.Difference is { } d ? Numbers.Signed(d * 100, 1) : ""),
                Cells.Of(row.InBands is { } n ? Numbers.Signed(n, 1) : "")
            );
        }

        rows.On(screen, "Readings beside predictions (1 band = from the prediction to the edge of its band)");

        var takeovers = new Cells("the file could say", "", "because");
        foreach (var takeover in readings.Takeovers)
        {
            takeovers.Row(Cells.Of(takeover.Path), Cells.Of(takeover.Text), Cells.Of(takeover.Because));
        }

        takeovers.On(screen, "What the readings would correct");
        return true;
    }
}
