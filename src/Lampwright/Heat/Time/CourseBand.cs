using Lampwright.Heat.Network;

namespace Lampwright.Heat.Time;

/// <summary>A course at given moments with its band.</summary>
/// <param name="TimesS">Moments, s.</param>
/// <param name="Kelvin">Temperatures, K: by node, then by moment.</param>
/// <param name="HalfK">Half width of the 5 to 95 % band, K, in the same order; zeros without bands.</param>
public sealed record BandedCourse(
    IReadOnlyList<double> TimesS,
    IReadOnlyList<IReadOnlyList<double>> Kelvin,
    IReadOnlyList<IReadOnlyList<double>> HalfK
);

/// <summary>Bands of a network's answers from its named errors, one at a time.</summary>
/// <remarks>
/// Each error is moved to the end of its 5 to 95 % interval; the band is the root of the sum of squares of what that changes. Validity:
/// errors that do not hang on each other and answers nearly straight over them. An error whose upper end gives no answer is moved to its
/// lower end instead; one that gives none at either end is in no band and is told by <see cref="Unsolved"/>. Source: law of propagation (GUM, JCGM 100:2008, 5.1.2;
/// memory). Checked by: invariant (draws of all errors together, in the tests).
/// </remarks>
public static class CourseBand
{
    /// <summary>Moments for a curve: 0 and then evenly over the logarithm.</summary>
    /// <param name="firstS">First moment after 0, s, above 0.</param>
    /// <param name="lastS">Last moment, s.</param>
    /// <param name="count">How many with the 0, at least 3.</param>
    public static IReadOnlyList<double> Moments(double firstS, double lastS, int count)
    {
        Guard.Positive(firstS);
        Guard.InRange(lastS, firstS, 1e9);
        Guard.InRange(count, 3, 10_000);
        var ratio = Math.Log(lastS / firstS) / (count - 2);
        return [0, .. Enumerable.Range(0, count - 1).Select(i => firstS * Math.Exp(i * ratio))];
    }

    /// <summary>Half widths of the band of a list of numbers that the errors move.</summary>
    /// <param name="fanRuns">Whether the fan runs, which decides the sink's error.</param>
    /// <param name="nominal">The numbers at nominal.</param>
    /// <param name="under">The same numbers under a set of errors; null where they could not be found.</param>
    /// <param name="ambientHalfK">Half width of the room's temperature, K, which moves every number by itself.</param>
    public static IReadOnlyList<double> Halves(
        bool fanRuns,
        IReadOnlyList<double> nominal,
        Func<NetworkFactors, IReadOnlyList<double>?> under,
        double ambientHalfK = 0
    )
    {
        ArgumentNullException.ThrowIfNull(nominal);
        ArgumentNullException.ThrowIfNull(under);
        var squares = new double[nominal.Count];
        Array.Fill(squares, ambientHalfK * ambientHalfK);
        foreach (var (error, with) in NetworkFactors.All(fanRuns))
        {
            // A factor drawn wide is drawn over its logarithm: up and down by the same ratio.
            var moved = Sides(error.HalfWidth)
                .Select(x => under(with(NetworkFactors.Nominal, x)))
                .FirstOrDefault(m => m is not null);
            for (var i = 0; moved is not null && i < squares.Length; i++)
            {
                var d = moved[i] - nominal[i];
                squares[i] += d * d;
            }
        }

        return [.. squares.Select(Math.Sqrt)];
    }

    /// <summary>Names of the errors that no band carries: neither end of theirs has an answer.</summary>
    /// <param name="fanRuns">Whether the fan runs, which decides the sink's error.</param>
    /// <param name="isFound">Whether there is an answer under a set of errors.</param>
    public static IReadOnlyList<string> Unsolved(bool fanRuns, Func<NetworkFactors, bool> isFound)
    {
        ArgumentNullException.ThrowIfNull(isFound);
        return
        [
            .. NetworkFactors
                .All(fanRuns)
                .Where(e => !Sides(e.Error.HalfWidth).Any(x => isFound(e.With(NetworkFactors.Nominal, x))))
                .Select(e => e.Error.Name),
        ];
    }

    private static double[] Sides(double halfWidth) => [1 + halfWidth, 1 / (1 + halfWidth)];

    /// <summary>A course at moments, with its band.</summary>
    /// <param name="fanRuns">Whether the fan runs.</param>
    /// <param name="timesS">Moments, s.</param>
    /// <param name="nodes">Which nodes.</param>
    /// <param name="under">The course under a set of errors.</param>
    /// <param name="banded">False leaves the bands closed.</param>
    /// <param name="ambientHalfK">Half width of the room's temperature, K.</param>
    public static BandedCourse Of(
        bool fanRuns,
        IReadOnlyList<double> timesS,
        IReadOnlyList<int> nodes,
        Func<NetworkFactors, HeatCourse?> under,
        bool banded,
        double ambientHalfK = 0
    )
    {
        ArgumentNullException.ThrowIfNull(timesS);
        ArgumentNullException.ThrowIfNull(nodes);
        ArgumentNullException.ThrowIfNull(under);
        IReadOnlyList<double>? At(NetworkFactors factors) =>
            under(factors) is { } course ? [.. nodes.SelectMany(n => timesS.Select(t => course.KelvinAt(n, t)))] : null;
        var nominal = At(NetworkFactors.Nominal) ?? [.. Enumerable.Repeat(double.NaN, nodes.Count * timesS.Count)];
        var halves = banded ? Halves(fanRuns, nominal, At, ambientHalfK) : new double[nominal.Count];
        IReadOnlyList<IReadOnlyList<double>> Rows(IReadOnlyList<double> flat) =>
            [.. nodes.Select((_, k) => (IReadOnlyList<double>)[.. flat.Skip(k * timesS.Count).Take(timesS.Count)])];
        return new(timesS, Rows(nominal), Rows(halves));
    }
}
