namespace Lampwright.Files.Charts;

/// <summary>Carries numbers of an axis to places on the drawing, and chooses round ticks.</summary>
internal sealed record Scale(
    double Least,
    double Most,
    double From,
    double To,
    IReadOnlyList<double> Ticks,
    int Decimals
)
{
    public double At(double value) => From + ((value - Least) / (Most - Least) * (To - From));

    /// <summary>Whether a number lies on the scale; none that is not finite does.</summary>
    public bool Holds(double value)
    {
        var slack = 1e-9 * (Most - Least);
        return value >= Least - slack && value <= Most + slack;
    }

    public string Text(double tick) => ChartText.Fixed(tick, Decimals);

    /// <summary>A scale whose ends are ticks and that holds all of the numbers.</summary>
    public static Scale Of(Axis axis, IEnumerable<double> numbers, double from, double to, int wantedTicks)
    {
        if (axis.Places.Count > 0)
        {
            return new(-0.5, axis.Places.Count - 0.5, from, to, [.. Enumerable.Range(0, axis.Places.Count)], 0);
        }

        var finite = numbers.Where(double.IsFinite).DefaultIfEmpty(0).ToList();
        var (least, most) = (axis.Least ?? finite.Min(), axis.Most ?? finite.Max());
        if (most - least < 1e-12 * Math.Max(1, Math.Abs(most)))
        {
            (least, most) = (
                least - (0.05 * Math.Max(1, Math.Abs(least))),
                most + (0.05 * Math.Max(1, Math.Abs(most)))
            );
        }

        var tick = axis.Tick ?? RoundTick((most - least) / wantedTicks);
        var first = axis.Least is null ? Math.Floor((least / tick) + 1e-9) * tick : least;
        var last = axis.Most is null ? Math.Ceiling((most / tick) - 1e-9) * tick : most;
        var start = (long)Math.Ceiling((first / tick) - 1e-9);
        var count = (int)Math.Clamp(Math.Floor((last / tick) + 1e-9) - start + 1, 0, 200);
        var decimals = DecimalsOf(tick);
        return new(first, last, from, to, [.. Enumerable.Range(0, count).Select(i => (start + i) * tick)], decimals);
    }

    /// <summary>Decimals that tell neighbouring ticks without rounding them: two for 0.25, none for 25.</summary>
    private static int DecimalsOf(double tick)
    {
        var first = Math.Clamp((int)Math.Floor(-Math.Log10(tick) - 1e-9), 0, 9);
        for (var decimals = first; decimals < 9; decimals++)
        {
            var whole = tick * Math.Pow(10, decimals);
            if (Math.Abs(whole - Math.Round(whole)) < 1e-6 * whole)
            {
                return decimals;
            }
        }

        return 9;
    }

    /// <summary>The round number (1, 2, 2.5, 5 times a power of ten) next above.</summary>
    internal static double RoundTick(double rough)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        foreach (var step in (ReadOnlySpan<double>)[1, 2, 2.5, 5])
        {
            if (rough <= step * power * (1 + 1e-9))
            {
                return step * power;
            }
        }

        return 10 * power;
    }
}
