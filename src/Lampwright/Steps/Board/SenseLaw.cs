namespace Lampwright.Steps.Board;

/// <summary>How a driver's current follows its sense resistance, from where to where that is known, and how fast it gets less sure.</summary>
/// <param name="Control">What the controller holds still, as far as it is known.</param>
/// <param name="ReferenceOhm">Resistance the current is known at, in ohm.</param>
/// <param name="ReferenceA">Current there, in amperes.</param>
/// <param name="OffsetA">Current the law falls short by, in amperes: half of the inductor's ripple, or what the second point gives.</param>
/// <param name="OffsetErrorA">Half-width of the 5 to 95 % band of that offset, in amperes.</param>
/// <param name="SecondOhm">Resistance of the second point where it is used, in ohm; null where there is none.</param>
/// <param name="ErrorPerE">Half-width of the 5 to 95 % band of the current per factor e of resistance beyond what is known, relative.</param>
/// <param name="ErrorAtSecond">Half-width at the second point, relative; 0 where there is none.</param>
/// <param name="EndsBelowA">Current under which the law does not hold, in amperes; null where that is not known.</param>
/// <param name="Words">The law in one sentence.</param>
/// <remarks>
/// I = V/R − OffsetA. <b>Validity</b>: continuous conduction (peak control: Iavg of at least half of the ripple); the ripple of the
/// inductor stays, as it does at one output voltage. <b>Source</b>: linear sense DS31992 p. 17; peak control TI AN-1954 p. 8;
/// primary side TI SLUSBL5A. <b>Accuracy</b>: per factor e of resistance 3 % for control of the average, 4.3 % where only a smooth
/// current is known (derived: ripple of 5 % peak to peak), 10 % for primary-side regulation, 26 % for peak control without its
/// ripple and where nothing is known (derived: ripple of 30 % peak to peak); all but derived: common practice, no source.
/// <b>Checked by</b>: printed (E.D-4), invariant.
/// </remarks>
public sealed record SenseLaw(
    SenseControl Control,
    double ReferenceOhm,
    double ReferenceA,
    double OffsetA,
    double OffsetErrorA,
    double? SecondOhm,
    double ErrorPerE,
    double ErrorAtSecond,
    double? EndsBelowA,
    string Words
)
{
    private static readonly double Average = 0.03;
    private static readonly double PrimarySide = 0.10;

    // Half of a ripple of 5 %, and of 30 %, of the current.
    private static readonly double SmoothHalfRipple = 0.025;
    private static readonly double UsualHalfRipple = 0.15;

    // Inductors hold their inductance to 20 % (common practice, no source).
    private static readonly double RippleSpread = 0.2;

    /// <summary>Threshold in volts that the law has: what the controller compares with, the peak for control of the peak.</summary>
    public double ThresholdV => (ReferenceA + OffsetA) * ReferenceOhm;

    /// <summary>The law from what is known.</summary>
    /// <param name="sense">The sense circuit.</param>
    /// <param name="first">Resistance and current known first, both above 0.</param>
    /// <param name="firstError">Half-width of the first current, relative.</param>
    /// <param name="second">The fit through a second point; null where there is none or it contradicts.</param>
    /// <param name="secondError">Half-width of the second current, relative.</param>
    public static SenseLaw Of(
        SenseSpec sense,
        SensePair first,
        double firstError,
        SecondPoint? second,
        double secondError
    )
    {
        ArgumentNullException.ThrowIfNull(sense);
        ArgumentNullException.ThrowIfNull(first);
        var control =
            sense.Control != SenseControl.Unknown ? sense.Control
            : sense.Side == SenseSide.Primary ? SenseControl.Primary
            : SenseControl.Unknown;
        var ripple = control == SenseControl.Peak ? UsableRipple(sense, first.CurrentA) : null;
        if (second is { Problem: "" } fit && sense.SecondPair is { } other)
        {
            return Through(control, first, firstError, other, secondError, fit, ripple);
        }

        var half = ripple / 2 ?? 0;
        var halfError = half * RippleSpread;
        var perE = control switch
        {
            SenseControl.Average => Average,
            SenseControl.Primary => PrimarySide,
            SenseControl.Peak when ripple is not null => Joint(Average, Bend(first.CurrentA, half, halfError)),
            SenseControl.Unknown when sense.Carries == SenseCarries.Smooth => Bend(1, 0, SmoothHalfRipple),
            _ => Bend(1, 0, UsualHalfRipple),
        };
        return new(
            control,
            first.Ohm,
            first.CurrentA,
            half,
            halfError,
            null,
            perE,
            0,
            ripple is null ? null : half,
            Say(control, ripple is not null)
        );
    }

    /// <summary>The ripple that can be true: above zero and at most twice the current; null where there is none.</summary>
    /// <param name="sense">The sense circuit.</param>
    /// <param name="currentA">Current it belongs to, in amperes.</param>
    public static double? UsableRipple(SenseSpec sense, double currentA)
    {
        ArgumentNullException.ThrowIfNull(sense);
        return sense.InductorRippleA is { } r && r > 0 && r <= 2 * currentA ? r : null;
    }

    /// <summary>How far a resistance lies beyond what is known, in factors of resistance; 1 inside.</summary>
    /// <param name="ohm">Resistance in ohm; above 0.</param>
    public double FactorBeyond(double ohm)
    {
        var (from, to) = (
            Math.Min(ReferenceOhm, SecondOhm ?? ReferenceOhm),
            Math.Max(ReferenceOhm, SecondOhm ?? ReferenceOhm)
        );
        return Math.Max(1, Math.Max(from / Guard.Positive(ohm), ohm / to));
    }

    /// <summary>Half-width of the 5 to 95 % band of the law's own error at a resistance, relative to the current.</summary>
    /// <param name="ohm">Resistance in ohm; above 0.</param>
    public double ErrorAt(double ohm)
    {
        var x = Math.Log(Guard.Positive(ohm) / ReferenceOhm);
        return ErrorPerE * Math.Abs(Reach(x, SecondLog, SlopeToSecond));
    }

    /// <summary>Natural logarithm of the second over the first resistance; 0 where there is none.</summary>
    public double SecondLog => SecondOhm is { } r ? Math.Log(r / ReferenceOhm) : 0;

    /// <summary>What share of <see cref="ErrorPerE"/> holds between the two points; 1 where there is one.</summary>
    public double SlopeToSecond =>
        SecondOhm is null ? 1 : Math.Min(1, ErrorAtSecond / (ErrorPerE * Math.Abs(SecondLog)));

    /// <summary>Logarithmic distance that the law's error grows with: slower between the points, as ever beyond.</summary>
    /// <param name="x">ln of resistance over that of the first point.</param>
    /// <param name="secondLog">The same of the second point; 0 where there is none.</param>
    /// <param name="slope">Share between the points.</param>
    public static double Reach(double x, double secondLog, double slope)
    {
        if (secondLog == 0 || x * secondLog <= 0)
        {
            return x;
        }

        return Math.Abs(x) <= Math.Abs(secondLog) ? slope * x : (slope * secondLog) + (x - secondLog);
    }

    private static SenseLaw Through(
        SenseControl control,
        SensePair first,
        double firstError,
        SensePair second,
        double secondError,
        SecondPoint fit,
        double? ripple
    )
    {
        // Beyond either point the errors of both spread like a lever.
        double Lever(double ohm, double error, int way)
        {
            var h = way > 0 ? Room(fit.ThresholdV / ohm, fit.OffsetA) : 1;
            return (Spread(first, firstError, second, secondError, fit, ohm * Math.Exp(way * h)) - error) / h;
        }

        var lower = second.Ohm < first.Ohm ? (second.Ohm, secondError) : (first.Ohm, firstError);
        var upper = second.Ohm < first.Ohm ? (first.Ohm, firstError) : (second.Ohm, secondError);
        var lever = Math.Max(0, Math.Max(Lever(lower.Item1, lower.Item2, -1), Lever(upper.Item1, upper.Item2, 1)));
        return new(
            control,
            first.Ohm,
            first.CurrentA,
            fit.OffsetA,
            fit.OffsetErrorA,
            second.Ohm,
            Math.Min(1, Joint(Average, lever)),
            secondError,
            ripple / 2,
            "Two points give threshold and offset: I = V/R less the offset; between them the current is known, beyond it is a guess that widens."
        );
    }

    private static double Spread(SensePair a, double errorA, SensePair b, double errorB, SecondPoint fit, double ohm)
    {
        var (xa, xb, x) = (1 / a.Ohm, 1 / b.Ohm, 1 / ohm);
        var amps = (fit.ThresholdV * x) - fit.OffsetA;
        var spread = Joint(errorA * a.CurrentA * (x - xb), errorB * b.CurrentA * (xa - x)) / Math.Abs(xa - xb);
        return amps > spread ? spread / amps : 1;
    }

    // What an offset of that error does to the current over a factor e of resistance, or to where the law ends, per factor e.
    private static double Bend(double amps, double offsetA, double offsetErrorA)
    {
        var h = Room(amps + offsetA, offsetA);
        var there = ((amps + offsetA) * Math.Exp(-h)) - offsetA;
        var off = offsetErrorA * (1 - Math.Exp(-h));
        return there > off ? Math.Min(1, off / there / h) : 1;
    }

    // Logarithmic distance to where the current has fallen to the offset, which ends the law; at most a factor e, at least 5 %.
    private static double Room(double peakA, double offsetA) =>
        offsetA > 0 ? Math.Clamp(Math.Log(peakA / (2 * offsetA)), 0.05, 1) : 1;

    private static double Joint(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static string Say(SenseControl control, bool rippleKnown) =>
        control switch
        {
            SenseControl.Average => "The average is held: I = V/R.",
            SenseControl.Peak when rippleKnown =>
                "The peak is held: I = V/R less half of the inductor's ripple, down to that half; below, the coil runs empty and the law ends.",
            SenseControl.Peak =>
                "The peak is held: I = V/R less half of a ripple that is not known, so the current falls faster than 1/R.",
            SenseControl.Primary =>
                "The primary side infers the current: it follows 1/R only roughly, bent by the transformer's efficiency.",
            _ => "What is held is not known: 1/R is taken and may be far off away from the known current.",
        };
}
