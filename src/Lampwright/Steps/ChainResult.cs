namespace Lampwright.Steps;

/// <summary>One resistor in one combination.</summary>
/// <param name="Name"><c>fixed</c>, or <c>r1</c>… in the order of the chain.</param>
/// <param name="Ohm">Warm resistance in ohm.</param>
/// <param name="PowerW">Power in watts.</param>
/// <param name="AllowedW">Rating at the temperature of the air round it, in watts; of two parts in one position, where the first comes to its limit.</param>
/// <param name="TemperatureK">Temperature of the part, the hotter of two, in kelvin.</param>
public sealed record ResistorState(string Name, double Ohm, double PowerW, double AllowedW, double TemperatureK)
{
    /// <summary>Share of the derated rating in use; 1 is the limit. A part without any rating left counts as far over it.</summary>
    public double Load => AllowedW > 0 ? Math.Min(PowerW / AllowedW, 1000) : 1000;
}

/// <summary>One combination of the switches at nominal.</summary>
/// <param name="Index">Place in the order of <see cref="ChainNetwork"/>.</param>
/// <param name="Switches">Order of the chain, 1 = closed = by-passed (a closed branch or position for the other arrangements).</param>
/// <param name="ResistanceOhm">Total resistance in the sense loop, in ohm.</param>
/// <param name="CurrentA">Output current in amperes.</param>
/// <param name="ContactShare">Share of the total resistance that is contact resistance.</param>
/// <param name="WornCurrentA">Current with all closed contacts worn to their greatest resistance, in amperes.</param>
/// <param name="Resistors">Each resistor, the fixed one first.</param>
/// <param name="EmitterMargin">Emitter's greatest current over this current, minus 1; null where it is not known.</param>
/// <param name="RatedMargin">Driver's rated current over this current, minus 1.</param>
/// <param name="LeastMargin">This current over the driver's least, minus 1; null where it is not known.</param>
public sealed record Combination(
    int Index,
    string Switches,
    double ResistanceOhm,
    double CurrentA,
    double ContactShare,
    double WornCurrentA,
    IReadOnlyList<ResistorState> Resistors,
    double? EmitterMargin,
    double RatedMargin,
    double? LeastMargin
);

/// <summary>All combinations of a chain at nominal.</summary>
/// <param name="Combinations">In the order of <see cref="ChainNetwork"/>.</param>
/// <param name="ByCurrent">Indices of the combinations, brightest first.</param>
/// <param name="LeadOhm">Resistance of the leads in ohm.</param>
/// <param name="OverlapA">Greatest current while a make-before-break selector holds two positions, in amperes; null otherwise.</param>
public sealed record ChainResult(
    IReadOnlyList<Combination> Combinations,
    IReadOnlyList<int> ByCurrent,
    double LeadOhm,
    double? OverlapA
)
{
    /// <summary>Greatest current of all combinations, in amperes.</summary>
    public double MostA => Combinations[ByCurrent[0]].CurrentA;

    /// <summary>Least current of all combinations, in amperes.</summary>
    public double LeastA => Combinations[ByCurrent[^1]].CurrentA;

    /// <summary>All combinations of a chain with their resistors warm. Runs once, at nominal.</summary>
    /// <param name="network">The chain.</param>
    /// <param name="driver">The driver.</param>
    /// <param name="airK">Temperature of the air round the resistors, in kelvin.</param>
    /// <param name="emitterMostA">Greatest current of the emitter, null where it is not known.</param>
    /// <param name="ratedA">Rated current of the driver, in amperes.</param>
    /// <param name="leastA">Least current of the driver, null where it is not known.</param>
    public static ChainResult From(
        ChainNetwork network,
        DriverModel driver,
        double airK,
        double? emitterMostA,
        double ratedA,
        double? leastA
    )
    {
        ArgumentNullException.ThrowIfNull(network);
        Guard.InRange(airK, 1, 2000);
        var spec = network.Spec;
        var draw = new ChainDraw
        {
            Driver = driver,
            AirK = airK,
            TempcoFactor = spec.TempcoIsLimit ? 0 : 1,
        };
        ResistorPart[] parts = [spec.Fixed, .. spec.Switched];
        var warm = new double[parts.Length];
        var watts = new double[parts.Length];
        double[] worn = [Math.Max(spec.ContactOhm, spec.ContactMostOhm ?? 0)];
        double[] none = [0];
        var combinations = new Combination[network.CombinationCount];
        var lead = 0.0;
        for (var i = 0; i < combinations.Length; i++)
        {
            var ohm = network.Solve(i, draw, warm, watts, out lead);
            var amps = driver.CurrentA(ohm);
            var clean = network.TotalOhm(i, warm, none, lead);
            combinations[i] = new(
                i,
                network.Switches(i),
                ohm,
                amps,
                (ohm - clean) / ohm,
                driver.CurrentA(network.TotalOhm(i, warm, worn, lead)),
                [.. parts.Select((p, k) => State(p, k, warm[k], watts[k], airK))],
                amps > 0 ? (emitterMostA / amps) - 1 : null,
                amps > 0 ? (ratedA / amps) - 1 : 0,
                leastA > 0 ? (amps / leastA) - 1 : null
            );
        }

        return new(
            combinations,
            [.. combinations.OrderByDescending(c => c.CurrentA).ThenByDescending(c => c.Index).Select(c => c.Index)],
            lead,
            Overlap(network, driver, lead)
        );
    }

    private static ResistorState State(ResistorPart part, int k, double ohm, double watts, double airK) =>
        new(k == 0 ? "fixed" : $"r{k}", ohm, watts, part.AllowedW(airK), airK + (watts * part.HottestRisePerWattK));

    private static double? Overlap(ChainNetwork network, DriverModel driver, double leadOhm)
    {
        var spec = network.Spec;
        if (spec.Arrangement != Arrangement.Selector || spec.Switched.Count < 2)
        {
            return null;
        }

        var most = 0.0;
        for (var k = 1; k < spec.Switched.Count; k++)
        {
            var (a, b) = (spec.Switched[k - 1].Ohm + spec.ContactOhm, spec.Switched[k].Ohm + spec.ContactOhm);
            var chain = ChainNetwork.ByPassed(a, b);
            var sensed = chain + (leadOhm * network.SensedLeadShare);
            var share = spec.BleedOhm is { } bleed ? bleed / (bleed + chain + leadOhm) : 1;
            most = Math.Max(most, driver.CurrentA(spec.Fixed.Ohm + (sensed * share)));
        }

        return most;
    }
}
