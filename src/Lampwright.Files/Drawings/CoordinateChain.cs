using Lampwright.Geometry;

namespace Lampwright.Files.Drawings;

/// <summary>One place in a chain of coordinates.</summary>
/// <param name="At">Where it is along the edge, paper mm.</param>
/// <param name="From">How far from the edge the feature lies, paper mm; its extension line starts there (negative is inside).</param>
/// <param name="Text">What is written.</param>
/// <param name="Id">Permanent id of the feature.</param>
/// <param name="Rank">The lower, the sooner it is kept when there is not room for all.</param>
internal sealed record ChainEntry(double At, double From, string Text, string Id, int Rank);

/// <summary>
/// A chain of coordinates from one datum edge: each feature has its extension line out of the part and its distance written along it
/// (running dimensions from a common zero). Neighbours that are too close are spread with a jog in their lines.
/// </summary>
/// <param name="Map">From (along the edge, outward from it) to paper with y up.</param>
/// <param name="TextAngle">Turn of the texts, radians.</param>
/// <param name="ReadsOutward">True when texts read away from the part (top, right), false when towards it.</param>
/// <param name="TextSide">+1 when texts lie on the side of larger places of their lines, -1 on the other.</param>
internal sealed record CoordinateChain(
    Func<double, double, Vec2> Map,
    double TextAngle,
    bool ReadsOutward,
    int TextSide
)
{
    private const double Gap = 1.2;
    private const double Bend = 4;
    private const double Jog = 4;

    /// <summary>Draws the chain along an edge and returns how far out it reaches.</summary>
    /// <param name="draw">The drawing.</param>
    /// <param name="entries">Its places.</param>
    /// <param name="length">Length of the edge, paper mm.</param>
    /// <param name="size">Size of the type.</param>
    /// <param name="holdsEnds">True when both ends of the edge are kept free for the lines of the over-all dimension.</param>
    public double Draw(
        DrawingBuilder draw,
        IReadOnlyList<ChainEntry> entries,
        double length,
        double size,
        bool holdsEnds
    )
    {
        var pitch = size * 1.12;
        var ends = holdsEnds ? pitch : -2 * pitch;
        var kept = Fitting(entries, (int)Math.Floor((length - (2 * ends)) / pitch) + 1);
        if (kept.Count == 0)
        {
            return 0;
        }

        var places = Spread.Apart([.. kept.Select(e => e.At)], pitch, ends, length - ends);
        var jogs = kept.Where((e, i) => Math.Abs(e.At - places[i]) > 0.01).Any();
        var start = jogs ? Bend + Jog : Bend;
        if (holdsEnds)
        {
            draw.Text(
                "",
                "0",
                Map(TextSide * size * 0.2, start + 0.4),
                size,
                TextRole.Dimension,
                TextAnchor.End,
                TextAngle
            );
        }

        var widest = kept.Max(e => TextWidth.Of(e.Text, size)) + 1;
        for (var i = 0; i < kept.Count; i++)
        {
            var e = kept[i];
            var far = start + widest;
            var from = Map(e.At, e.From + Gap);
            if (jogs)
            {
                draw.Chain(e.Id, LineKind.Dimension, from, Map(e.At, Bend), Map(places[i], start), Map(places[i], far));
                draw.Crowd.Take(from, Map(e.At, Bend), 1);
            }
            else
            {
                draw.Line(e.Id, LineKind.Dimension, from, Map(e.At, far));
                draw.Crowd.Take(from, Map(e.At, far), 1);
            }

            var beside = places[i] + (TextSide * size * 0.2);
            draw.Text(
                e.Id,
                e.Text,
                Map(beside, ReadsOutward ? start + 0.6 : start + 0.4),
                size,
                TextRole.Dimension,
                ReadsOutward ? TextAnchor.Start : TextAnchor.End,
                TextAngle
            );
        }

        return start + widest;
    }

    private static List<ChainEntry> Fitting(IReadOnlyList<ChainEntry> entries, int most) =>
        [.. entries.OrderBy(e => e.Rank).ThenBy(e => e.At).Take(Math.Max(0, most)).OrderBy(e => e.At)];
}
