using MathNet.Numerics.Distributions;

namespace Lampwright.Metal;

/// <summary>What several equal test strips say together: the mean of their deductions and how well it is known. Metres, radians.</summary>
/// <param name="AngleRad">Angle they were bent to.</param>
/// <param name="Count">How many there are.</param>
/// <param name="DeductionM">Mean of their deductions.</param>
/// <param name="SpreadM">Standard deviation of one strip from the mean (n − 1); 0 for one strip.</param>
/// <param name="HalfWidthM">Half-width of the 5 to 95 % band of the mean.</param>
/// <remarks>
/// <b>Validity</b>: strips of one tool, sheet and direction of rolling, bent and read alike. A single strip says nothing about the next
/// one: ±3 % of its allowance are then added by the caller.
/// <b>Source</b>: mean and its uncertainty s/√n, widened by Student's t with n − 1 degrees of freedom: JCGM 100:2008, 4.2 and G.3; never under
/// what the readings allow, 1.645·u/√n with u² = u(leg)² + u(leg)² + u(length)².
/// <b>Checked by</b>: printed (t of JCGM 100:2008, table G.2), hand case.
/// </remarks>
public sealed record StripMean(double AngleRad, int Count, double DeductionM, double SpreadM, double HalfWidthM)
{
    /// <summary>One group for each angle, in the order of the angles.</summary>
    /// <param name="strips">The strips.</param>
    public static IReadOnlyList<StripMean> Of(IReadOnlyList<BendStrip> strips)
    {
        ArgumentNullException.ThrowIfNull(strips);
        return
        [
            .. strips
                .GroupBy(s => Math.Round(s.AngleRad, 6))
                .OrderBy(g => g.Key)
                .Select(g => Group(g.First().AngleRad, [.. g])),
        ];
    }

    /// <summary>The quantile of Student's t that 95 % lie below: 6.314 for one degree of freedom, 2.920 for two.</summary>
    /// <param name="degreesOfFreedom">Degrees of freedom, 1 or more.</param>
    public static double Student(int degreesOfFreedom) =>
        StudentT.InvCDF(0, 1, Guard.InRange(degreesOfFreedom, 1, 1e6), 0.95);

    private static StripMean Group(double angle, List<BendStrip> strips)
    {
        var n = strips.Count;
        var mean = strips.Average(s => s.DeductionM);
        var squares = strips.Sum(s => (s.DeductionM - mean) * (s.DeductionM - mean));
        var spread = n > 1 ? Math.Sqrt(squares / (n - 1)) : 0;
        var reading = Math.Sqrt(strips.Sum(s => s.ReadingM * s.ReadingM)) / n * 1.6448536269514722;
        var scatter = n > 1 ? Student(n - 1) * spread / Math.Sqrt(n) : 0;
        return new(angle, n, mean, spread, Math.Max(scatter, reading));
    }
}
