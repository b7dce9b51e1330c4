namespace Lampwright.Files.Charts;

/// <summary>Cuts a line at the edges of its axes, so that a curve that runs away ends at the frame.</summary>
internal static class ClippedLine
{
    /// <summary>The pieces inside the frame, at their places on the drawing; each has at least two points.</summary>
    /// <param name="points">The points; one that is no number breaks the line, an infinite one lies far outside.</param>
    /// <param name="x">Scale of the first coordinate.</param>
    /// <param name="y">Scale of the second.</param>
    public static IEnumerable<IReadOnlyList<(double X, double Y)>> Pieces(
        IReadOnlyList<(double X, double Y)> points,
        Scale x,
        Scale y
    )
    {
        var piece = new List<(double X, double Y)>();
        for (var i = 1; i < points.Count; i++)
        {
            var (a, b) = (Near(points[i - 1], x, y), Near(points[i], x, y));
            if (Inside(a, b, x, y) is not { } cut)
            {
                if (piece.Count > 1)
                {
                    yield return piece;
                }

                piece = [];
                continue;
            }

            var (from, to) = (At(a, b, cut.From, x, y), At(a, b, cut.To, x, y));
            if (piece.Count > 0 && cut.From > 0)
            {
                yield return piece;
                piece = [];
            }

            if (piece.Count == 0)
            {
                piece.Add(from);
            }

            piece.Add(to);
            if (cut.To < 1)
            {
                yield return piece;
                piece = [];
            }
        }

        if (piece.Count > 1)
        {
            yield return piece;
        }
    }

    /// <summary>An infinite coordinate as one far outside, which has a direction.</summary>
    private static (double X, double Y) Near((double X, double Y) p, Scale x, Scale y) => (Near(p.X, x), Near(p.Y, y));

    private static double Near(double value, Scale scale)
    {
        var far = 1e4 * (scale.Most - scale.Least);
        return Math.Clamp(value, scale.Least - far, scale.Most + far);
    }

    private static (double X, double Y) At(
        (double X, double Y) a,
        (double X, double Y) b,
        double share,
        Scale x,
        Scale y
    ) => (x.At(a.X + (share * (b.X - a.X))), y.At(a.Y + (share * (b.Y - a.Y))));

    /// <summary>Shares of the way from a to b between which it lies inside; null where it does not.</summary>
    private static (double From, double To)? Inside((double X, double Y) a, (double X, double Y) b, Scale x, Scale y)
    {
        if (double.IsNaN(a.X + a.Y + b.X + b.Y))
        {
            return null;
        }

        var (from, to) = (0.0, 1.0);
        return Narrow(a.X, b.X, x, ref from, ref to) && Narrow(a.Y, b.Y, y, ref from, ref to) ? (from, to) : null;
    }

    private static bool Narrow(double a, double b, Scale scale, ref double from, ref double to)
    {
        var slack = 1e-9 * (scale.Most - scale.Least);
        var (least, most) = (scale.Least - slack, scale.Most + slack);
        if (a >= least && a <= most && b >= least && b <= most)
        {
            return true;
        }

        if ((a < least && b < least) || (a > most && b > most))
        {
            return false;
        }

        // Not both inside and not both on one side: a and b differ.
        var (one, other) = ((least - a) / (b - a), (most - a) / (b - a));
        from = Math.Max(from, Math.Min(one, other));
        to = Math.Min(to, Math.Max(one, other));
        return from < to;
    }
}
