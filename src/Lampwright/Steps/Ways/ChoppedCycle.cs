namespace Lampwright.Steps.Ways;

/// <summary>The steady cycle of a switch that chops an emitter's current behind a capacitor which a constant current charges.</summary>
/// <remarks>
/// Open: V rises by I0·t/C, to the limit at most. Closed: V goes to Vd + Rd·I0 with the time constant Rd·C. The cycle is the one that returns to
/// itself; where it would pass the limit it starts there. The charge of one closed phase over the period is the mean current: it stays
/// I0 unless the limit cuts in.
/// <b>Validity</b>: the emitter as a straight line between the set current and the peak; a limit that clamps; a switch of little resistance.
/// <b>Source</b>: derived.
/// <b>Checked by</b>: rows E.M-3 and E.M-4, transient solutions of the circuit.
/// </remarks>
/// <param name="LeastV">Least voltage of the node, in volts.</param>
/// <param name="MostV">Greatest voltage of the node, in volts.</param>
/// <param name="PeakA">Greatest emitter current, in amperes.</param>
/// <param name="EndA">Emitter current at the end of the closed phase, in amperes.</param>
/// <param name="MeanA">Mean emitter current, in amperes.</param>
/// <param name="Limited">Whether the limit cuts in.</param>
/// <param name="Decay">Length of the closed phase in time constants.</param>
public readonly record struct ChoppedCycle(
    double LeastV,
    double MostV,
    double PeakA,
    double EndA,
    double MeanA,
    bool Limited,
    double Decay
)
{
    // Abscissae and weights of five-point Gauss quadrature on 0 to 1.
    private static readonly double[] At =
    [
        0.0469100770306680,
        0.2307653449471585,
        0.5,
        0.7692346550528415,
        0.9530899229693320,
    ];

    private static readonly double[] Weight =
    [
        0.1184634425280945,
        0.2393143352496832,
        0.2844444444444444,
        0.2393143352496832,
        0.1184634425280945,
    ];

    /// <summary>The cycle for an emitter that is a straight line, V = Vd + Rd·I.</summary>
    /// <param name="setA">Current of the source in amperes; above 0.</param>
    /// <param name="kneeV">Vd in volts.</param>
    /// <param name="ohm">Rd in ohm; above 0.</param>
    /// <param name="farad">Capacitor in farad; above 0.</param>
    /// <param name="limitV">Voltage limit of the source in volts.</param>
    /// <param name="frequencyHz">How often the switch closes, in hertz.</param>
    /// <param name="duty">Share of the time that it is closed, above 0 to 1.</param>
    public static ChoppedCycle Of(
        double setA,
        double kneeV,
        double ohm,
        double farad,
        double limitV,
        double frequencyHz,
        double duty
    )
    {
        var period = 1 / frequencyHz;
        var restV = kneeV + (ohm * setA);
        var decay = duty * period / (ohm * farad);
        var kept = Math.Exp(-decay);
        var rise = setA * (1 - duty) * period / farad;
        var above = rise / Math.Max(1 - kept, 1e-300);
        var limited = restV + above > limitV;
        if (limited)
        {
            above = limitV - restV;
        }

        // Under its rest the node climbs again while the switch is closed: then it stands at the limit all the time.
        var end = above > 0 ? above * kept : above;
        var charge = (setA * duty * period) + (above > 0 ? above * farad * (1 - kept) : above / ohm * duty * period);
        double Current(double v) => Math.Max(0, (v - kneeV) / ohm);
        return new(
            restV + end,
            restV + above,
            Current(restV + above),
            Current(restV + end),
            Math.Max(0, charge / period),
            limited,
            decay
        );
    }

    /// <summary>The cycle for an emitter's own curve: the straight line through the set current and the peak, found in three passes.</summary>
    /// <param name="model">The emitter's curve.</param>
    /// <param name="junctionK">Junction temperature in kelvin.</param>
    /// <param name="setA">Current of the source in amperes; above 0.</param>
    /// <param name="farad">Capacitor in farad; above 0.</param>
    /// <param name="limitV">Voltage limit of the source in volts.</param>
    /// <param name="frequencyHz">How often the switch closes, in hertz.</param>
    /// <param name="duty">Share of the time that it is closed, above 0 to 1.</param>
    public static ChoppedCycle Of(
        in EmitterModel model,
        double junctionK,
        double setA,
        double farad,
        double limitV,
        double frequencyHz,
        double duty
    )
    {
        var fullV = model.VoltageV(setA, junctionK);
        var peak = setA / duty;
        var cycle = default(ChoppedCycle);
        for (var pass = 0; pass < 3; pass++)
        {
            var far = Math.Abs(peak - setA) > 0.01 * setA ? peak : 1.01 * setA;
            var ohm = Math.Max(
                (model.VoltageV(far, junctionK) - fullV) / (far - setA),
                1e-3 * Math.Max(fullV, 1) / setA
            );
            cycle = Of(setA, fullV - (ohm * setA), ohm, farad, limitV, frequencyHz, duty);
            peak = Math.Clamp(cycle.PeakA, 1e-3 * setA, 1e3 * setA);
        }

        return cycle;
    }

    /// <summary>Mean over the period of what an emitter does at each current, for example its light: five-point Gauss quadrature over the closed phase.</summary>
    /// <param name="duty">Share of the time that the switch is closed.</param>
    /// <param name="of">What it does at a current, told the state and the current in amperes.</param>
    /// <param name="state">What <paramref name="of"/> is told besides.</param>
    internal double Mean<TState>(double duty, Func<TState, double, double> of, TState state)
    {
        // I(t) = rest + (peak − rest)·exp(−Decay·t): the rest follows from the two ends.
        var kept = Math.Exp(-Decay);
        var rest = kept < 1 ? (EndA - (PeakA * kept)) / (1 - kept) : PeakA;
        var sum = 0.0;
        for (var k = 0; k < At.Length; k++)
        {
            sum += Weight[k] * of(state, Math.Max(0, rest + ((PeakA - rest) * Math.Exp(-Decay * At[k]))));
        }

        return duty * sum;
    }
}
