namespace Lampwright.Metal;

/// <summary>Outline of a funnel's opening: four, six or eight flats that face fixed ways, each at its own distance from the axis.</summary>
/// <remarks>
/// Six flats face at 60° from each other, two of them down and up; eight at 45°. Since both openings have the same directions, every panel is flat whatever
/// the sizes. Of eight, the corners are cut at 45° by (1 − 1/√2) of the smaller size, which is the regular one where both are equal.
/// <b>Source</b>: geometry. <b>Checked by</b>: <i>invariant</i> (regular outlines).
/// </remarks>
public static class FunnelOutline
{
    private static readonly string[] Four = ["bottom", "right", "top", "left"];
    private static readonly string[] Six = ["bottom", "right_bottom", "right_top", "top", "left_top", "left_bottom"];
    private static readonly string[] Eight =
    [
        "bottom",
        "bottom_right",
        "right",
        "top_right",
        "top",
        "top_left",
        "left",
        "bottom_left",
    ];

    /// <summary>Names of the panels, from the bottom round; empty for a count that is not made.</summary>
    /// <param name="sides">4, 6 or 8.</param>
    public static IReadOnlyList<string> Names(int sides) =>
        sides switch
        {
            4 => Four,
            6 => Six,
            8 => Eight,
            _ => [],
        };

    /// <summary>Distances of the flats from the axis, metres.</summary>
    /// <param name="sides">4, 6 or 8.</param>
    /// <param name="widthM">Across the flats right and left; of six, across each slanted pair.</param>
    /// <param name="heightM">Across the flats bottom and top.</param>
    public static IReadOnlyList<double> Distances(int sides, double widthM, double heightM)
    {
        var (w, h) = (widthM / 2, heightM / 2);
        if (sides == 4)
        {
            return [h, w, h, w];
        }

        if (sides == 6)
        {
            return [h, w, w, h, w, w];
        }

        var corner = (w + h - ((2 - Math.Sqrt(2)) * Math.Min(w, h))) / Math.Sqrt(2);
        return [h, corner, w, corner, h, corner, w, corner];
    }

    /// <summary>From where to where a flat reaches along itself, from the foot of the axis on it, metres.</summary>
    /// <param name="distances">Distances of all flats.</param>
    /// <param name="side">Which one.</param>
    public static (double FromM, double ToM) Reach(IReadOnlyList<double> distances, int side)
    {
        var n = distances.Count;
        var (sin, cos) = Math.SinCos(2 * Math.PI / n);
        var d = distances[side];
        return (-(distances[(side + n - 1) % n] - (d * cos)) / sin, (distances[(side + 1) % n] - (d * cos)) / sin);
    }

    /// <summary>Area of the opening, m².</summary>
    /// <param name="distances">Distances of all flats.</param>
    public static double AreaM2(IReadOnlyList<double> distances) =>
        distances.Select((d, i) => d * (Reach(distances, i).ToM - Reach(distances, i).FromM)).Sum() / 2;
}
