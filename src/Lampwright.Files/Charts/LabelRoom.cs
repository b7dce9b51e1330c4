namespace Lampwright.Files.Charts;

/// <summary>Finds places for words inside a frame that keep clear of each other.</summary>
internal sealed class LabelRoom(double left, double top, double right, double bottom)
{
    private readonly List<(double Left, double Top, double Right, double Bottom)> taken = [];

    /// <summary>Takes an area, so that no words come to lie on it.</summary>
    public void Take(double fromX, double fromY, double toX, double toY) => taken.Add((fromX, fromY, toX, toY));

    /// <summary>Takes a line, so that words rather stand beside it than on it.</summary>
    /// <param name="points">Its corners.</param>
    /// <param name="step">Distance at which it is noticed, and its width.</param>
    public void TakeLine(IReadOnlyList<(double X, double Y)> points, double step)
    {
        for (var i = 1; i < points.Count; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            var pieces = Math.Max(1, (int)(Math.Sqrt(Square(b.X - a.X) + Square(b.Y - a.Y)) / step));
            for (var k = 0; k < pieces; k++)
            {
                var share = (k + 0.5) / pieces;
                var (x, y) = (a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)));
                var half = step / 4 * Math.Min(1, Math.Abs(b.X - a.X) + Math.Abs(b.Y - a.Y));
                Take(x - half, y - half, x + half, y + half);
            }
        }
    }

    private static double Square(double value) => value * value;

    /// <summary>Upper left corner of a box beside a point, and takes it: the clearest of eight places, kept inside the frame.</summary>
    public (double Left, double Top) Beside(double x, double y, double width, double height, double gap)
    {
        var (best, least) = ((Left: x, Top: y), double.PositiveInfinity);
        foreach (
            var (dx, dy) in (ReadOnlySpan<(double, double)>)
                [
                    (gap, -gap - height),
                    (-gap - width, -gap - height),
                    (gap, gap),
                    (-gap - width, gap),
                    (gap * 2, -height / 2),
                    (-(gap * 2) - width, -height / 2),
                    (-width / 2, -(gap * 2) - height),
                    (-width / 2, gap * 2),
                ]
        )
        {
            var place = (
                Left: Math.Clamp(x + dx, left, Math.Max(left, right - width)),
                Top: Math.Clamp(y + dy, top, Math.Max(top, bottom - height))
            );
            var moved = Math.Abs(place.Left - x - dx) + Math.Abs(place.Top - y - dy);
            var cost = (taken.Sum(t => Overlap(t, place, width, height)) * 10) + moved;
            if (cost < least - 1e-9)
            {
                (best, least) = (place, cost);
            }
        }

        Take(best.Left, best.Top, best.Left + width, best.Top + height);
        return best;
    }

    private static double Overlap(
        (double Left, double Top, double Right, double Bottom) area,
        (double Left, double Top) place,
        double width,
        double height
    )
    {
        var across = Math.Min(area.Right, place.Left + width) - Math.Max(area.Left, place.Left);
        var down = Math.Min(area.Bottom, place.Top + height) - Math.Max(area.Top, place.Top);
        return across > 0 && down > 0 ? across * down : 0;
    }
}
