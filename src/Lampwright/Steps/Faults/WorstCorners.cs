namespace Lampwright.Steps.Faults;

/// <summary>How far parts and driver may be off, for the worst corner.</summary>
/// <param name="Tolerance">Tolerance of the switched resistors, as a share.</param>
/// <param name="FixedTolerance">
/// That of the fixed resistor. It counts for the part on the board too, as in the search: with the threshold found at that part its error cancels in one position
/// only, and a fault leaves that position.
/// </param>
/// <param name="ThresholdShare">How far the threshold may be off, as a share.</param>
/// <param name="LeadShare">How far the leads may be off, as a share.</param>
/// <param name="RiseShare">How far the resistors' own rise may be off, as a share.</param>
/// <param name="LawPerE">How far the current may be off for each factor e of sense resistance away from where the threshold was found, as a share; for faults.</param>
/// <param name="AgeShare">How far a resistor drifts over its life, as a share; for faults.</param>
/// <param name="LimitMostA">Greatest value of the driver's own limit, in amperes; null for the one stated. For faults.</param>
/// <param name="OverMostV">Greatest value of the driver's voltage limit, in volts; null for the one stated. For faults.</param>
public sealed record CornerSpec(
    double Tolerance,
    double FixedTolerance,
    double ThresholdShare,
    double LeadShare = 0.07,
    double RiseShare = 0.30,
    double LawPerE = 0,
    double AgeShare = 0,
    double? LimitMostA = null,
    double? OverMostV = null
)
{
    /// <summary>Factor of a position at an end of its tolerance; two parts of a position stand at the same end.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="position">Which position, 0 is the fixed one.</param>
    /// <param name="sign">−1 for the least, +1 for the greatest, 0 for the stated resistance.</param>
    internal double Factor(ChainSpec chain, int position, int sign)
    {
        var part = position == 0 ? chain.Fixed : chain.Switched[position - 1];
        double Of(ResistorPart p) =>
            1 + (sign * Guard.InRange(p.Tolerance ?? (position == 0 ? FixedTolerance : Tolerance), 0, 0.9));
        return part.Pair is { } pair ? pair.Ohm(Of(pair.First), Of(pair.Second)) / part.Ohm : Of(part);
    }
}

/// <summary>The worst corners of one position.</summary>
/// <param name="Switches">The position, 1 = closed.</param>
/// <param name="LeastA">Least current in amperes: every resistance greatest, contacts worn, threshold least.</param>
/// <param name="MostA">Greatest current in amperes: every resistance least, contacts without any, threshold greatest.</param>
/// <param name="ChainLeastA">The least by the chain's parts alone, in amperes.</param>
/// <param name="ChainMostA">The greatest by the chain's parts alone, in amperes.</param>
public sealed record WorstCorner(string Switches, double LeastA, double MostA, double ChainLeastA, double ChainMostA);

/// <summary>The worst corners of every position: no draw, no search, since every current falls when any resistance rises.</summary>
/// <remarks>
/// The sign of the temperature coefficient and the size of the rise are tried at both ends, since what they do hangs on which side of 25 °C a part is.
/// <b>Validity</b>: parts within their tolerance; contacts between none and worn. <b>Source</b>: monotone corners; Ohm and Kirchhoff.
/// <b>Accuracy</b>: exact for the model. <b>Checked by</b>: invariant (no draw and no corner of all corners lies outside).
/// </remarks>
public static class WorstCorners
{
    /// <summary>The corners of every position in the order of <see cref="ChainNetwork"/>.</summary>
    /// <param name="network">The chain.</param>
    /// <param name="driver">The driver at nominal.</param>
    /// <param name="airK">Temperature of the air round the resistors, in kelvin.</param>
    /// <param name="spec">How far things may be off.</param>
    public static IReadOnlyList<WorstCorner> Of(ChainNetwork network, DriverModel driver, double airK, CornerSpec spec)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(spec);
        var least = Side(network, driver, airK, spec, +1);
        var most = Side(network, driver, airK, spec, -1);
        var off = Guard.InRange(spec.ThresholdShare, 0, 0.5);
        var (low, high) = (driver.With(1 - off, 1, 1), driver.With(1 + off, 1, 1));
        return
        [
            .. Enumerable
                .Range(0, network.CombinationCount)
                .Select(i => new WorstCorner(
                    network.Switches(i),
                    low.CurrentA(least[i]),
                    high.CurrentA(most[i]),
                    driver.CurrentA(least[i]),
                    driver.CurrentA(most[i])
                )),
        ];
    }

    // Greatest (+1) or least (−1) resistance of every position.
    private static double[] Side(ChainNetwork network, DriverModel driver, double airK, CornerSpec spec, int sign)
    {
        var chain = network.Spec;
        var factors = new double[network.SwitchCount + 1];
        for (var k = 0; k < factors.Length; k++)
        {
            factors[k] = spec.Factor(chain, k, sign);
        }

        double[] contacts = [sign > 0 ? Math.Max(chain.ContactOhm, chain.ContactMostOhm ?? 0) : 0];
        var (amps, ohms) = (new double[network.CombinationCount], new double[network.CombinationCount]);
        var worst = new double[network.CombinationCount];
        worst.AsSpan().Fill(sign > 0 ? 0 : double.PositiveInfinity);
        foreach (var tempco in chain.TempcoIsLimit ? new[] { -1.0, 1.0 } : [1.0])
        {
            foreach (var rise in new[] { 1 - spec.RiseShare, 1 + spec.RiseShare })
            {
                var draw = new ChainDraw
                {
                    Driver = driver,
                    AirK = airK,
                    OhmFactors = factors,
                    ContactOhms = contacts,
                    TempcoFactor = tempco,
                    LeadFactor = 1 + (sign * spec.LeadShare),
                    RiseFactor = rise,
                };
                network.Operate(draw, amps, ohms, []);
                for (var i = 0; i < worst.Length; i++)
                {
                    worst[i] = sign > 0 ? Math.Max(worst[i], ohms[i]) : Math.Min(worst[i], ohms[i]);
                }
            }
        }

        return worst;
    }
}
