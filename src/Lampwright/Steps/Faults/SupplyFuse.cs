namespace Lampwright.Steps.Faults;

/// <summary>The fuse in the supply.</summary>
/// <remarks>
/// A fuse of the UL type carries 75 % of its rating for good, so its rating is at least the working current over 0.75; one of the IEC type carries
/// all of it. The first covers both. <b>Validity</b>: room temperature; the inrush of the driver decides the delay, and its sheet knows it.
/// <b>Source</b>: EDN, 26 Sep 1996 (rating over 0.75); ratings: IEC 60127-2 (memory); inrush: <see cref="FusePulse"/>. <b>Checked by</b>: printed.
/// </remarks>
public static class SupplyFuse
{
    // Ten times a day for nearly thirty years.
    private static readonly double SwitchedOn = 100_000;

    private static readonly double[] Ratings =
    [
        0.1,
        0.125,
        0.16,
        0.2,
        0.25,
        0.315,
        0.4,
        0.5,
        0.63,
        0.8,
        1,
        1.25,
        1.6,
        2,
        2.5,
        3.15,
        4,
        5,
        6.3,
        8,
        10,
        12.5,
        16,
        20,
        25,
        32,
    ];

    /// <summary>Least nominal rating for a working current, in amperes.</summary>
    /// <param name="workingA">Working current in amperes; above 0.</param>
    public static double LeastRatingA(double workingA) => Guard.Positive(workingA) / 0.75;

    /// <summary>The fuse for a supply.</summary>
    /// <param name="inputW">Greatest input power, in watts; above 0.</param>
    /// <param name="leastV">Least supply voltage, in volts; above 0.</param>
    /// <param name="powerFactor">Power factor; null where the label does not say one. Counts on alternating current only.</param>
    /// <param name="isAc">Whether the supply alternates.</param>
    public static FuseRow Of(double inputW, double leastV, double? powerFactor, bool isAc)
    {
        var factor = isAc ? Guard.InRange(powerFactor ?? MainsPowerFactor.Of(inputW), 0.05, 1) : 1;
        var amps = Guard.Positive(inputW) / (Guard.Positive(leastV) * factor);
        var least = LeastRatingA(amps);
        var rating = Ratings.Where(r => r >= least * (1 - 1e-9)).Select(r => (double?)r).FirstOrDefault();
        var where = isAc
            ? "in the live conductor at the inlet, before the switch, time-lag for the driver's inrush"
                + Text(
                    $" (its melting I²t at least {1 / FusePulse.ShareEndured(SwitchedOn):0.0} times that of the inrush on the driver's sheet, so that it lives through {SwitchedOn:0} times switching on; as an example, half a sine of 30 A and 1 ms has {FusePulse.HalfSineA2s(30, 1e-3):0.00} A²s and asks for {FusePulse.HalfSineA2s(30, 1e-3) / FusePulse.ShareEndured(SwitchedOn):0.0} A²s)"
                )
            : "at the battery's pole, rated for its short-circuit current; the lead behind it must bear the fuse's rating";
        var taken =
            isAc && powerFactor is null
                ? Text($" (power factor taken as {factor:0.0}, driver.power_factor tells it)")
                : "";
        var take = rating is { } known
            ? Text($"next rating {known:0.###} A, {where}.")
            : Text(
                $"more than the {Ratings[^1]:0} A where the cartridge fuses of this list end. No fuse is named: a link or breaker for that, with its holder and its leads, {where}, is chosen by somebody who is licensed for it."
            );
        return new(
            amps,
            rating,
            Text(
                $"{amps:0.00} A at the brightest position and the least supply voltage{taken}; over 0.75, since a fuse of the UL type carries 75 % of its rating for good: {least:0.00} A; {take} It protects leads and supply against a short, not the emitter: no fuse is fast enough for that."
            )
        );
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
