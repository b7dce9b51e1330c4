namespace Lampwright.Files.Charts;

/// <summary>Thins a course to what a drawing can show without losing a pulse of it.</summary>
/// <remarks>
/// The stretch is cut into columns; of each the first, the least, the greatest and the last point are kept, in their order. Whatever the
/// count of points, each pulse keeps its height and each gap its depth.
/// </remarks>
internal static class Envelope
{
    /// <summary>At most four points a column, and all points where there are no more than that.</summary>
    /// <param name="points">Points by rising first coordinate.</param>
    /// <param name="columns">Count of columns, at least 1.</param>
    public static IReadOnlyList<(double X, double Y)> Of(IReadOnlyList<(double X, double Y)> points, int columns)
    {
        if (points.Count <= 4 * columns)
        {
            return points;
        }

        var (from, to) = (points[0].X, points[^1].X);
        var thin = new List<(double X, double Y)>(4 * columns);
        for (var i = 0; i < points.Count; )
        {
            var column = Column(points[i].X, from, to, columns);
            var (first, least, most) = (i, i, i);
            for (i++; i < points.Count && Column(points[i].X, from, to, columns) == column; i++)
            {
                least = points[i].Y < points[least].Y ? i : least;
                most = points[i].Y > points[most].Y ? i : most;
            }

            foreach (var kept in new[] { first, least, most, i - 1 }.Distinct().Order())
            {
                thin.Add(points[kept]);
            }
        }

        return thin;
    }

    private static int Column(double x, double from, double to, int columns) =>
        to > from ? (int)Math.Clamp((x - from) / (to - from) * columns, 0, columns - 1) : 0;
}
