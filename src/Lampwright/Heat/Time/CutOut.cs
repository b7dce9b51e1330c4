namespace Lampwright.Heat.Time;

/// <summary>A limit that something must not pass.</summary>
/// <param name="Node">Index of the node.</param>
/// <param name="Kelvin">The limit, K.</param>
/// <param name="What">What is harmed there, for example <c>junction</c>.</param>
public sealed record HarmLimit(int Node, double Kelvin, string What);

/// <summary>The settings that a thermal cut-out may have at one place.</summary>
/// <param name="NormalK">Highest temperature there in normal use, upper end of its band, K.</param>
/// <param name="HarmS">When the first limit is reached after the fan stops, s; null where none is.</param>
/// <param name="HarmWhat">What reaches it; empty where nothing does.</param>
/// <param name="LeastK">Lowest setting that never trips in normal use, K.</param>
/// <param name="MostK">Highest setting that trips before harm, K; infinite where nothing is harmed.</param>
/// <param name="SettingK">Setting to buy, K: a whole five degrees Celsius in the middle; null where none exists.</param>
/// <param name="TripsAfterS">When the upper end of its tolerance trips after the fan stops, s; null where it does not.</param>
public sealed record CutOutWindow(
    double NormalK,
    double? HarmS,
    string HarmWhat,
    double LeastK,
    double MostK,
    double? SettingK,
    double? TripsAfterS
);

/// <summary>Setting and lag of a thermal cut-out against the course of a stopped fan.</summary>
/// <remarks>
/// Window: highest normal temperature + margin + tolerance ≤ setting ≤ what it feels when the first limit is reached - tolerance.
/// The cut-out feels its place behind a lag of first order. At dimmer positions emitter and place lie closer together, so that the
/// brightest decides. Validity: the cut-out opens the driver's input; on the emitter's or the sense line it would harm more than it saves.
/// Source: definition (Incropera ch. 5, first-order response). Checked by: hand, invariant.
/// </remarks>
public static class CutOut
{
    /// <summary>Room between the highest normal temperature and the lowest trip, K (common practice, no source).</summary>
    public static readonly double MarginK = 5;

    /// <summary>Tolerance of a usual snap disc, K (common practice, no source).</summary>
    public static readonly double UsualToleranceK = 5;

    /// <summary>Lag of a snap disc screwed to metal, s (common practice, no source).</summary>
    public static readonly double UsualLagS = 15;

    /// <summary>The window of one place.</summary>
    /// <param name="course">Course of all nodes after the fan stops, at the highest ambient.</param>
    /// <param name="place">Node that the cut-out sits on.</param>
    /// <param name="normalK">Highest temperature there in normal use, K.</param>
    /// <param name="limits">What must not be passed.</param>
    /// <param name="toleranceK">Tolerance of the setting to either side, K, 0 or above.</param>
    /// <param name="lagS">Lag, s, 0 or above.</param>
    public static CutOutWindow Window(
        HeatCourse course,
        int place,
        double normalK,
        IReadOnlyList<HarmLimit> limits,
        double toleranceK,
        double lagS
    )
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(limits);
        Guard.InRange(toleranceK, 0, 100);
        Guard.InRange(lagS, 0, 1e5);
        var (harm, what) = FirstHarm(course, limits);
        var least = normalK + MarginK + toleranceK;
        var felt = Sensed(course, place, lagS, harm ?? course.EndS);
        var most = harm is null ? double.PositiveInfinity : felt - toleranceK;
        double? setting = null;
        if (most >= least)
        {
            // A whole five degrees in the middle of the window, as far from use as from harm; where nothing is harmed, 15 K over use.
            var middle = double.IsFinite(most) ? 0.5 * (least + most) : least + 15;
            var step = (Math.Floor((middle - Physics.ZeroCelsius) / 5) * 5) + Physics.ZeroCelsius;
            step = step < least ? step + 5 : step;
            setting = step <= most ? step : null;
        }

        var trips = setting is { } at ? TripsS(course, place, at + toleranceK, lagS) : null;
        return new(normalK, harm, what, least, most, setting, trips);
    }

    /// <summary>When the first limit is reached, and what reaches it; null where none is.</summary>
    /// <param name="course">Course of all nodes.</param>
    /// <param name="limits">What must not be passed.</param>
    public static (double? AtS, string What) FirstHarm(HeatCourse course, IReadOnlyList<HarmLimit> limits)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(limits);
        (double? AtS, string What) first = (null, "");
        foreach (var limit in limits)
        {
            if (course.FirstS(limit.Node, limit.Kelvin) is { } at && at < (first.AtS ?? double.PositiveInfinity))
            {
                first = (at, limit.What);
            }
        }

        return first;
    }

    /// <summary>When a cut-out with a lag trips, s; null where it does not.</summary>
    /// <param name="course">Course of all nodes.</param>
    /// <param name="place">Node that it sits on.</param>
    /// <param name="settingK">Temperature it opens at, K.</param>
    /// <param name="lagS">Lag, s, 0 or above.</param>
    public static double? TripsS(HeatCourse course, int place, double settingK, double lagS)
    {
        ArgumentNullException.ThrowIfNull(course);
        Guard.InRange(lagS, 0, 1e5);
        if (lagS <= 0)
        {
            return course.FirstS(place, settingK);
        }

        double? at = null;
        _ = Feel(
            course,
            place,
            lagS,
            course.EndS,
            (time, felt) =>
            {
                at ??= felt >= settingK ? time : null;
                return at is null;
            }
        );
        return at;
    }

    /// <summary>What a cut-out with a lag feels at a moment, K; at time 0 it has its place's temperature.</summary>
    /// <param name="course">Course of all nodes.</param>
    /// <param name="place">Node that it sits on.</param>
    /// <param name="lagS">Lag, s, 0 or above.</param>
    /// <param name="timeS">The moment, s.</param>
    public static double Sensed(HeatCourse course, int place, double lagS, double timeS)
    {
        ArgumentNullException.ThrowIfNull(course);
        return lagS <= 0 || timeS <= 0
            ? course.KelvinAt(place, timeS)
            : Feel(course, place, lagS, timeS, (_, _) => true);
    }

    // First order behind a place that goes straight from point to point: exact within each.
    private static double Feel(HeatCourse course, int place, double lagS, double untilS, Func<double, double, bool> go)
    {
        var felt = course.KelvinAt(place, 0);
        var (before, time) = (felt, 0.0);
        var most = Math.Max(untilS / 400, 1e-6);
        while (time < untilS)
        {
            // Dense where the course and the lag are quick, then ever longer.
            var step = Math.Min(Math.Min(most, Math.Max(lagS / 20, 0.02 * time)), untilS - time);
            step = Math.Max(step, 1e-9 * untilS);
            time += step;
            var now = course.KelvinAt(place, time);
            var slope = (now - before) / step;
            var decay = Math.Exp(-step / lagS);
            felt = now - (slope * lagS) + ((felt - before + (slope * lagS)) * decay);
            before = now;
            if (!go(time, felt))
            {
                break;
            }
        }

        return felt;
    }
}
