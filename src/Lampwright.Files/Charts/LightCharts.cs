using Lampwright.Design;
using Lampwright.Evaluation;

namespace Lampwright.Files.Charts;

/// <summary>Charts of the light on the subject.</summary>
public static class LightCharts
{
    /// <summary>Illuminance over the subject as a share of its centre; null without light.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="subject">The subject, whose size the axes count; null counts in shares of it.</param>
    public static Chart? Subject(LightEvaluation evaluation, Subject? subject = null)
    {
        var rows = evaluation.Light?.SubjectPicture ?? [];
        if (rows.Count == 0 || rows[0].Count == 0)
        {
            return null;
        }

        var (width, height, unit) = subject?.Size is { } size
            ? (size.Width.Nominal * 1000, size.Height.Nominal * 1000, "mm")
            : (100.0, 100.0, "%");
        var tick = Scale.RoundTick(Math.Min(width, height) / 3);
        return new(
            "Evenness over the subject",
            new("Across", unit)
            {
                Least = -width / 2,
                Most = width / 2,
                Tick = tick,
            },
            new("Along", unit)
            {
                Least = -height / 2,
                Most = height / 2,
                Tick = tick,
            },
            [new CellsLayer("light", Palette.Light, Readable(rows))]
        )
        {
            IsToScale = true,
            Says = "Percent of the light at the centre.",
        };
    }

    /// <summary>As many cells as can hold their numbers: an odd count, so that centre and edges stay.</summary>
    private static IReadOnlyList<IReadOnlyList<double>> Readable(IReadOnlyList<IReadOnlyList<double>> rows) =>
        [.. Sampled(rows, 9).Select(r => (IReadOnlyList<double>)[.. Sampled(r, 7)])];

    private static IEnumerable<T> Sampled<T>(IReadOnlyList<T> all, int most) =>
        all.Count <= most
            ? all
            : Enumerable
                .Range(0, most)
                .Select(i => all[(int)Math.Round(i * (all.Count - 1.0) / (most - 1), MidpointRounding.AwayFromZero)]);
}
