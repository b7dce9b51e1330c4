using Lampwright.Files.Charts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The charts, two or three on a sheet.</summary>
internal static class ChartPages
{
    public static void Draw(PacketBook book)
    {
        var evaluation = book.Evaluation;
        var charts = new[]
        {
            StepCharts.Light(evaluation),
            StepCharts.Junction(evaluation, book.Design.Show),
            HeatCharts.Staircase(evaluation, book.Design.Show),
            HeatCharts.FanCurve(evaluation),
            LightCharts.Subject(evaluation, book.Design.Subject),
        }
            .OfType<Chart>()
            .Concat((evaluation.Balance?.Tilts ?? []).Select(BalanceCharts.TiltMoment))
            .ToList();
        foreach (var three in charts.Chunk(3))
        {
            var sheet = book.Add(new("Charts"));
            var gap = 7.0;
            var height = (sheet.Height - (2 * gap)) / 3;
            for (var i = 0; i < three.Length; i++)
            {
                ChartDrawing.Draw(
                    three[i],
                    sheet.Ink,
                    sheet.Left,
                    sheet.Top + (i * (height + gap)),
                    sheet.Width,
                    height,
                    2.9
                );
            }
        }
    }
}
