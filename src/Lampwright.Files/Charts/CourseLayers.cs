using Lampwright.Evaluation;

namespace Lampwright.Files.Charts;

/// <summary>A curve whose points are predicted numbers: the line for the nominal, the ground round it for the band.</summary>
/// <param name="Name">Name of the series.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Points">Its points, by rising first coordinate.</param>
/// <param name="Dashed">Whether the line is dashed.</param>
public sealed record CourseLayer(
    string Name,
    Tint Tint,
    IReadOnlyList<(double X, Predicted Y)> Points,
    bool Dashed = false
) : ChartLayer(Name, Tint);

/// <summary>Draws courses with their bands.</summary>
internal static class CourseLayers
{
    private const double Tone = 0.16;

    /// <summary>The line of a course alone.</summary>
    public static LineLayer LineOf(CourseLayer layer) =>
        new(layer.Name, layer.Tint, [.. layer.Points.Select(p => (p.X, p.Y.Value))], layer.Dashed);

    public static void Draw(Chart chart, CourseLayer layer, IInk ink, ChartDrawing.Frame frame, double size)
    {
        (double X, double Y) At(double x, double y) => (frame.X.At(x), frame.Y.At(y));
        if (layer.Points.Any(p => p.Y.High > p.Y.Low))
        {
            ink.Path(
                [
                    .. layer.Points.Select(p => At(p.X, p.Y.Low)),
                    .. layer.Points.Reverse().Select(p => At(p.X, p.Y.High)),
                ],
                true,
                null,
                layer.Tint,
                Tone
            );
        }

        ink.Path(
            [.. layer.Points.Select(p => At(p.X, p.Y.Value))],
            false,
            ChartLayers.StrokeOf(LineOf(layer), size * 0.85)
        );

        // Where points lie too close for a pointer, one of them speaks.
        var (half, last) = (size * 0.6, double.NegativeInfinity);
        foreach (var (x, y) in layer.Points)
        {
            var (left, top) = At(x, y.Value);
            if (left - last < size)
            {
                continue;
            }

            last = left;
            ink.Readout(
                left - half,
                top - half,
                2 * half,
                2 * half,
                new(
                    layer.Name,
                    $"{ChartText.Number(x)} {chart.X.Unit}".TrimEnd(),
                    ChartText.WithBand(y, chart.Y.Unit),
                    y.Value,
                    y.Low,
                    y.High
                )
            );
        }
    }
}
