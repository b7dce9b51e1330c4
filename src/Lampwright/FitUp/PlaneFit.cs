using Lampwright.Geometry;

namespace Lampwright.FitUp;

/// <summary>How one plane set of points lies on another: turned, then shifted.</summary>
/// <param name="TurnRad">Turn of the moved points, radians, −π to π.</param>
/// <param name="Shift">Shift after the turn, metres.</param>
/// <param name="RmsM">Root mean square of the distances that are left over, metres.</param>
/// <param name="Alike">How many turns fit as well: 1 where the pattern is not symmetric.</param>
internal readonly record struct PlaneFit(double TurnRad, Vec2 Shift, double RmsM, int Alike)
{
    /// <summary>Most holes that are matched; beyond it a joint is not computed.</summary>
    public static int MostHoles { get; } = 64;

    /// <summary>Points that lie in the same place within this are one place, metres.</summary>
    private static readonly double Same = 1e-5;

    /// <summary>Fits <paramref name="moved"/> on <paramref name="still"/>.</summary>
    /// <param name="still">Points that stay.</param>
    /// <param name="moved">Points that are turned and shifted.</param>
    /// <param name="turnRad">The turn; null takes the best fit that is nearest to no turn.</param>
    /// <remarks>
    /// The turn of least squares is atan2(Σ cross, Σ dot) about the centroids (Kabsch in the plane). Who belongs to whom is found by laying
    /// the two points that are furthest apart on every pair of like distance.
    /// </remarks>
    public static PlaneFit Of(Vec2[] still, Vec2[] moved, double? turnRad)
    {
        if (still.Length == 0 || moved.Length == 0)
        {
            return default;
        }

        if (Math.Min(still.Length, moved.Length) == 1)
        {
            var turn = Wrapped(turnRad ?? 0);
            return new(turn, still[0] - moved[0].Turned(turn), 0, 1);
        }

        if (turnRad is { } told && still.Length == moved.Length)
        {
            return Near(still, moved, Wrapped(told));
        }

        var found =
            moved.Length <= still.Length ? Candidates(still, moved) : Candidates(moved, still).ConvertAll(Inverse);
        var wish = turnRad ?? 0;
        var best = found.Min(f => f.RmsM);
        var alike = new List<PlaneFit>();
        foreach (var fit in found.Where(f => f.RmsM <= (best * 1.02) + Same).OrderBy(f => f.RmsM))
        {
            if (alike.TrueForAll(f => Math.Abs(Wrapped(f.TurnRad - fit.TurnRad)) > 1e-3))
            {
                alike.Add(fit);
            }
        }

        // A hair of preference for the positive turn settles +90° against −90° the same way everywhere.
        return alike.MinBy(f => Math.Abs(Wrapped(f.TurnRad - wish)) - (f.TurnRad > 0 ? 1e-7 : 0)) with
        {
            Alike = alike.Count,
        };
    }

    /// <summary>Pairs of points nearest to one another, nearest pair first, each point in one pair at most.</summary>
    public static (int A, int B)[] Pairs(Vec2[] a, Vec2[] b)
    {
        var pairs = new (int A, int B)[Math.Min(a.Length, b.Length)];
        Span<bool> usedA = stackalloc bool[a.Length];
        Span<bool> usedB = stackalloc bool[b.Length];
        for (var k = 0; k < pairs.Length; k++)
        {
            var (least, p, q) = (double.PositiveInfinity, 0, 0);
            for (var i = 0; i < a.Length; i++)
            {
                if (usedA[i])
                {
                    continue;
                }

                for (var j = 0; j < b.Length; j++)
                {
                    var (x, y) = (a[i].X - b[j].X, a[i].Y - b[j].Y);
                    var square = (x * x) + (y * y);
                    if (!usedB[j] && square < least)
                    {
                        (least, p, q) = (square, i, j);
                    }
                }
            }

            (usedA[p], usedB[q]) = (true, true);
            pairs[k] = (p, q);
        }

        return pairs;
    }

    /// <summary>An angle between −π and π.</summary>
    public static double Wrapped(double angle)
    {
        var turn = Math.IEEERemainder(angle, 2 * Math.PI);
        return turn < -Math.PI + 1e-9 ? turn + (2 * Math.PI) : turn;
    }

    private static PlaneFit Near(Vec2[] still, Vec2[] moved, double turn)
    {
        var fit = new PlaneFit(turn, Mean(still) - Mean(moved).Turned(turn), 0, 1);
        for (var i = 0; i < 4; i++)
        {
            fit = Refined(still, moved, fit);
        }

        return fit;
    }

    private static List<PlaneFit> Candidates(Vec2[] still, Vec2[] moved)
    {
        var (p, q) = Furthest(moved);
        var span = moved[q] - moved[p];
        var loose = (0.05 * span.Length) + 1e-3;
        var found = new List<PlaneFit>();
        for (var pass = 0; pass < 2 && found.Count == 0; pass++)
        {
            for (var i = 0; i < still.Length; i++)
            {
                for (var j = 0; j < still.Length; j++)
                {
                    var other = still[j] - still[i];
                    if (i == j || (pass == 0 && Math.Abs(other.Length - span.Length) > loose))
                    {
                        continue;
                    }

                    var turn = Math.Atan2(span.Cross(other), span.Dot(other));
                    var middle = (still[i] + still[j]) / 2;
                    var guess = new PlaneFit(turn, middle - ((moved[p] + moved[q]) / 2).Turned(turn), 0, 1);
                    found.Add(Refined(still, moved, guess));
                }
            }
        }

        return found;
    }

    private static PlaneFit Refined(Vec2[] still, Vec2[] moved, PlaneFit guess)
    {
        var turned = new Vec2[moved.Length];
        for (var i = 0; i < moved.Length; i++)
        {
            turned[i] = moved[i].Turned(guess.TurnRad) + guess.Shift;
        }

        var pairs = Pairs(still, turned);
        var (ca, cb) = (default(Vec2), default(Vec2));
        foreach (var (i, j) in pairs)
        {
            (ca, cb) = (ca + (still[i] / pairs.Length), cb + (moved[j] / pairs.Length));
        }

        var (cross, dot) = (0.0, 0.0);
        foreach (var (i, j) in pairs)
        {
            cross += (moved[j] - cb).Cross(still[i] - ca);
            dot += (moved[j] - cb).Dot(still[i] - ca);
        }

        var turn = cross == 0 && dot == 0 ? guess.TurnRad : Math.Atan2(cross, dot);
        var shift = ca - cb.Turned(turn);
        var sum = 0.0;
        foreach (var (i, j) in pairs)
        {
            var left = still[i] - (moved[j].Turned(turn) + shift);
            sum += left.Dot(left);
        }

        return new(Wrapped(turn), shift, Math.Sqrt(sum / pairs.Length), 1);
    }

    private static PlaneFit Inverse(PlaneFit fit) =>
        fit with
        {
            TurnRad = Wrapped(-fit.TurnRad),
            Shift = -fit.Shift.Turned(-fit.TurnRad),
        };

    private static (int P, int Q) Furthest(Vec2[] points)
    {
        var (p, q, most) = (0, 1, -1.0);
        for (var i = 0; i < points.Length; i++)
        {
            for (var j = i + 1; j < points.Length; j++)
            {
                var d = (points[i] - points[j]).Length;
                if (d > most + Same)
                {
                    (p, q, most) = (i, j, d);
                }
            }
        }

        return (p, q);
    }

    private static Vec2 Mean(Vec2[] points)
    {
        var sum = default(Vec2);
        foreach (var p in points)
        {
            sum += p;
        }

        return sum / points.Length;
    }
}
