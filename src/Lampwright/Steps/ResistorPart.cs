using Lampwright.Steps.ChainProof;

namespace Lampwright.Steps;

/// <summary>What is soldered in one position of the chain: one resistor, or two that count as one.</summary>
/// <remarks>
/// Two parts share the power of their position: of R = a + b the first carries s = a/(a + b), of two side by side s = b/(a + b). The
/// same share is how much of the position's relative change comes from that part (dR/R = s·da/a + (1 − s)·db/b in both joints), so
/// that a pair drifts with its own heat as one part of the rise s²·θa + (1 − s)²·θb would, and may carry what the first of the two to come to its limit
/// allows. <b>Validity</b>: both parts in the same air and of one temperature coefficient. <b>Source</b>: Ohm's law, derived.
/// <b>Checked by</b>: invariant (the two parts solved apart).
/// </remarks>
/// <param name="Ohm">Resistance at 25 °C in ohm; above 0.</param>
/// <param name="TempcoPerK">Temperature coefficient in 1/K. A data sheet's figure is a limit to both sides: what is given here is used as it is.</param>
/// <param name="RatingW">Rated power in watts; above 0.</param>
/// <param name="FullToK">Temperature up to which the rating holds in full, in kelvin.</param>
/// <param name="ZeroAtK">Temperature at which it has fallen to zero, in kelvin; above <paramref name="FullToK"/>.</param>
public sealed record ResistorPart(double Ohm, double TempcoPerK, double RatingW, double FullToK, double ZeroAtK)
{
    /// <summary>Temperature that resistances are stated at, 25 °C.</summary>
    public static double ReferenceK => 298.15;

    /// <summary>Its own tolerance as a share; null for that of all parts of the chain.</summary>
    public double? Tolerance { get; init; }

    /// <summary>The two parts that it is made of; null for one part.</summary>
    public ResistorPair? Pair { get; private init; }

    /// <summary>Two parts in one position.</summary>
    /// <param name="joint">In series or side by side.</param>
    /// <param name="first">The first.</param>
    /// <param name="second">The second, of the same temperature coefficient and derating line.</param>
    public static ResistorPart Of(Joint joint, ResistorPart first, ResistorPart second)
    {
        var pair = new ResistorPair(joint, first, second);
        return new(
            pair.Ohm(1, 1),
            first.TempcoPerK,
            Math.Min(first.RatingW / pair.FirstShare, second.RatingW / pair.SecondShare),
            first.FullToK,
            first.ZeroAtK
        )
        {
            Pair = pair,
        };
    }

    /// <summary>What is soldered: the part itself, or both of a pair.</summary>
    public IReadOnlyList<ResistorPart> Soldered() => Pair is { } p ? [p.First, p.Second] : [this];

    /// <summary>Power the part may carry at an ambient temperature, in watts: the straight derating line.</summary>
    /// <remarks><b>Source</b>: Bourns CRA2512 derating curve. Knee and zero belong to the part. <b>Checked by</b>: printed knees.</remarks>
    /// <param name="ambientK">Temperature of the air round the part, in kelvin.</param>
    public double AllowedW(double ambientK) =>
        ambientK <= FullToK ? RatingW
        : ambientK >= ZeroAtK ? 0
        : RatingW * (ZeroAtK - ambientK) / (ZeroAtK - FullToK);

    /// <summary>Rise over the air for each watt, in K/W, that its resistance drifts with: the slope of the derating line; for a pair see the remarks.</summary>
    public double RisePerWattK =>
        Pair is { } p
            ? (p.FirstShare * p.FirstShare * p.First.RisePerWattK)
                + (p.SecondShare * p.SecondShare * p.Second.RisePerWattK)
            : Math.Max(0, ZeroAtK - FullToK) / RatingW;

    /// <summary>Rise of its hottest part over the air for each watt of the position, in K/W.</summary>
    public double HottestRisePerWattK =>
        Pair is { } p
            ? Math.Max(p.FirstShare * p.First.RisePerWattK, p.SecondShare * p.Second.RisePerWattK)
            : RisePerWattK;

    /// <summary>How far its resistance can move to either side from 25 °C up to the temperature at which its rating has fallen to zero, as a share.</summary>
    public double DriftShare => Math.Abs(TempcoPerK) * Math.Max(0, ZeroAtK - ReferenceK);

    /// <summary>Greatest current at full rating, sqrt(P/R), in amperes.</summary>
    public double MostA => Math.Sqrt(RatingW / Ohm);

    /// <summary>Greatest voltage at full rating, sqrt(P·R), in volts.</summary>
    public double MostV => Math.Sqrt(RatingW * Ohm);
}

/// <summary>Two resistors in one position of the chain.</summary>
/// <param name="Joint">In series or side by side.</param>
/// <param name="First">The first.</param>
/// <param name="Second">The second.</param>
public sealed record ResistorPair(Joint Joint, ResistorPart First, ResistorPart Second)
{
    /// <summary>Share of the position's power that the first part carries.</summary>
    public double FirstShare => (Joint == Joint.Parallel ? Second.Ohm : First.Ohm) / (First.Ohm + Second.Ohm);

    /// <summary>Share of the position's power that the second part carries.</summary>
    public double SecondShare => 1 - FirstShare;

    /// <summary>Resistance of the two when each is off by a factor, in ohm.</summary>
    /// <param name="first">Factor of the first; above 0.</param>
    /// <param name="second">Factor of the second; above 0.</param>
    public double Ohm(double first, double second)
    {
        var (a, b) = (First.Ohm * first, Second.Ohm * second);
        return Joint == Joint.Parallel ? a * b / (a + b) : a + b;
    }
}
