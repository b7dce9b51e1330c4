namespace Lampwright.Files.Drawings;

/// <summary>Moves labels along a line as little as possible so that none overlaps the next.</summary>
internal static class Spread
{
    /// <summary>Places of labels in the order given, at least <paramref name="pitch"/> apart, each as near to its wish as can be.</summary>
    /// <param name="wishes">Wanted places, ascending.</param>
    /// <param name="pitch">Least distance of neighbours.</param>
    /// <param name="least">No label lies below it.</param>
    /// <param name="most">No label lies above it; given up when there are too many.</param>
    /// <remarks>Least squares under an order: neighbours that touch are pooled into a block that lies at their mean.</remarks>
    public static double[] Apart(IReadOnlyList<double> wishes, double pitch, double least, double most)
    {
        var blocks = new List<(double Sum, int Count)>();
        for (var i = 0; i < wishes.Count; i++)
        {
            blocks.Add((wishes[i] - (i * pitch), 1));
            while (blocks.Count > 1 && Mean(blocks[^2]) > Mean(blocks[^1]))
            {
                var (a, b) = (blocks[^2], blocks[^1]);
                blocks.RemoveRange(blocks.Count - 2, 2);
                blocks.Add((a.Sum + b.Sum, a.Count + b.Count));
            }
        }

        var places = new double[wishes.Count];
        var at = 0;
        var top = Math.Max(least, most - ((wishes.Count - 1) * pitch));
        foreach (var block in blocks)
        {
            for (var k = 0; k < block.Count; k++, at++)
            {
                places[at] = Math.Clamp(Mean(block), least, top) + (at * pitch);
            }
        }

        return places;
    }

    private static double Mean((double Sum, int Count) block) => block.Sum / block.Count;
}
