namespace Lampwright.Web.Charts;

/// <summary>An axis: which numbers lie where, and which are written at it.</summary>
/// <param name="Least">Number at its beginning.</param>
/// <param name="Most">Number at its end.</param>
/// <param name="Step">Distance of the written numbers.</param>
public sealed record PlotScale(double Least, double Most, double Step)
{
    /// <summary>An axis that holds all numbers, with round ends and about so many written numbers.</summary>
    public static PlotScale Over(IEnumerable<double> numbers, bool fromZero, int about = 5)
    {
        var finite = numbers.Where(double.IsFinite).DefaultIfEmpty(0).ToList();
        var (least, most) = (finite.Min(), finite.Max());
        if (fromZero)
        {
            (least, most) = (Math.Min(0, least), Math.Max(0, most));
        }

        if (most - least < 1e-12)
        {
            (least, most) = (least - (Math.Abs(least) * 0.1) - 0.5, most + (Math.Abs(most) * 0.1) + 0.5);
        }

        var raw = (most - least) / about;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        var step =
            power
            * (raw / power) switch
            {
                <= 1 => 1,
                <= 2 => 2,
                <= 2.5 => 2.5,
                <= 5 => 5,
                _ => 10,
            };
        return new(Math.Floor((least / step) + 1e-9) * step, Math.Ceiling((most / step) - 1e-9) * step, step);
    }

    /// <summary>The written numbers.</summary>
    public IEnumerable<double> Ticks
    {
        get
        {
            for (var i = 0; Least + (i * Step) <= Most + (Step * 1e-6); i++)
            {
                yield return Least + (i * Step);
            }
        }
    }

    /// <summary>Decimals that tell the written numbers apart.</summary>
    public int Decimals => Math.Clamp((int)Math.Ceiling(-Math.Log10(Step) + (Step.ToString("R", null).Contains("25", StringComparison.Ordinal) ? 1 : 0) - 1e-9), 0, 6);

    /// <summary>Share of the way from beginning to end.</summary>
    public double At(double number) => (number - Least) / (Most - Least);
}
