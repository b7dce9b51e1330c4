namespace Lampwright.Steps.Board;

/// <summary>Threshold and offset through two measured points: I = V/R − I_off.</summary>
/// <param name="ThresholdV">Threshold in volts.</param>
/// <param name="OffsetA">Current that the law falls short by, in amperes; below zero where the current falls less than 1/R.</param>
/// <param name="OffsetErrorA">Half-width of the 5 to 95 % band of the offset, in amperes.</param>
/// <param name="Problem">Empty, or why the two points cannot belong to one driver; then the numbers are not to be used.</param>
/// <remarks>
/// V = (I1 − I2)/(1/R1 − 1/R2), I_off = V/R1 − I1. <b>Validity</b>: one law between and near the points; the ratio of the
/// resistances at least 1.1. <b>Source</b>: two equations of Iavg = Vcs/Rs − ΔI/2, TI AN-1954 p. 8 (derived); spread by
/// JCGM 100:2008, 5.1.2. An offset above the current itself would be a coil that runs empty (derived: ΔI/2 = Iavg is its limit);
/// one below −0.3 of it is known of no controller (common practice, no source). <b>Checked by</b>: invariant (returns the law it
/// was made from).
/// </remarks>
public sealed record SecondPoint(double ThresholdV, double OffsetA, double OffsetErrorA, string Problem)
{
    private static readonly double LeastRatio = 1.1;
    private static readonly double LeastOffset = -0.3;

    /// <summary>The law through two points.</summary>
    /// <param name="first">Resistance in ohm and current in amperes, both above 0.</param>
    /// <param name="firstError">Half-width of the first current as a share of it, 0 or more.</param>
    /// <param name="second">The other point.</param>
    /// <param name="secondError">Half-width of the second current as a share of it.</param>
    public static SecondPoint Fit(SensePair first, double firstError, SensePair second, double secondError)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var (x1, x2) = (1 / Guard.Positive(first.Ohm), 1 / Guard.Positive(second.Ohm));
        var (i1, i2) = (Guard.Positive(first.CurrentA), Guard.Positive(second.CurrentA));
        if (Math.Max(x1 / x2, x2 / x1) < LeastRatio)
        {
            return Not("Both points have nearly the same sense resistance; they tell nothing of the law between.");
        }

        if ((i1 > i2) != (x1 > x2) || i1 == i2)
        {
            return Not("The current does not fall as the sense resistance rises.");
        }

        var volts = (i1 - i2) / (x1 - x2);
        var offset = (volts * x1) - i1;
        var error = Math.Sqrt(Square(x2 * firstError * i1) + Square(x1 * secondError * i2)) / Math.Abs(x1 - x2);
        var problem =
            offset > Math.Min(i1, i2) ? "The current falls much faster than any control known would let it."
            : offset < LeastOffset * i1
                ? "The current falls much slower than 1/R; resistance was missed, or a part misread."
            : "";
        return new(volts, offset, error, problem);
    }

    private static SecondPoint Not(string problem) => new(0, 0, 0, problem);

    private static double Square(double value) => value * value;
}
