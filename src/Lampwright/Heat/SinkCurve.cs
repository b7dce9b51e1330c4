namespace Lampwright.Heat;

/// <summary>Rise of a sink over its heat, for one draw and one scene: what Evaluation asks at every switch position.</summary>
/// <remarks>
/// Laid through six temperatures from 1 to 150 K of rise, a power law outside. Accuracy: 0.3 % and 0.1 K of the exact solution.
/// Reading it takes some tens of nanoseconds and allocates nothing.
/// </remarks>
public sealed class SinkCurve
{
    private readonly RiseCurve baseRise;
    private readonly double[] conduction;
    private readonly double airHeatCapacityWPerK;
    private readonly double[] byOthers;
    private readonly double otherW;

    internal SinkCurve(
        RiseCurve baseRise,
        double[] conduction,
        double flowM3PerS,
        double pressurePa,
        double airHeatCapacityWPerK,
        double[]? byOthers = null,
        double otherW = 0
    )
    {
        this.byOthers = byOthers ?? [];
        this.otherW = otherW;
        this.baseRise = baseRise;
        this.conduction = conduction;
        FlowM3PerS = flowM3PerS;
        PressurePa = pressurePa;
        this.airHeatCapacityWPerK = airHeatCapacityWPerK;
    }

    /// <summary>Flow of the fan at 15 K of rise, m³/s of ambient air; 0 with the fan stopped.</summary>
    public double FlowM3PerS { get; }

    /// <summary>Heat of other emitters on the same sink, W, which its rise counts with that of the light's emitter.</summary>
    public double OtherW => otherW;

    /// <summary>Static pressure of the fan at that flow, Pa; 0 with the fan stopped.</summary>
    public double PressurePa { get; }

    /// <summary>A sink of which only a measured resistance is known.</summary>
    /// <param name="resistanceKPerW">Rise at the emitter's back per watt, K/W, above 0.</param>
    /// <param name="measuredAtW">
    /// Heat it was measured at when no fan ran, W: the resistance then goes with heat to the power -0.2, as natural convection does
    /// (derived from h ~ ΔT^¼); 0 keeps it constant, as with a fan.
    /// </param>
    /// <param name="flowM3PerS">Flow of the fan where known, m³/s.</param>
    public static SinkCurve Measured(double resistanceKPerW, double measuredAtW = 0, double flowM3PerS = 0)
    {
        Guard.Positive(resistanceKPerW);
        Guard.InRange(measuredAtW, 0, 1e6);
        Guard.InRange(flowM3PerS, 0, 1e3);
        var count = RiseCurve.NodeRisesK.Length;
        Span<double> heats = stackalloc double[count];
        for (var i = 0; i < count; i++)
        {
            var rise = RiseCurve.NodeRisesK[i];
            var atMeasured = resistanceKPerW * measuredAtW;
            heats[i] = rise / resistanceKPerW * (atMeasured > 0 ? Math.Pow(rise / atMeasured, 0.25) : 1);
        }

        var air = Air.At(300, 101325);
        return new SinkCurve(
            new RiseCurve(heats, RiseCurve.NodeRisesK),
            [],
            flowM3PerS,
            0,
            flowM3PerS * air.Density * air.SpecificHeat
        );
    }

    /// <summary>A sink measured at several heats: its rise goes with a power of the heat.</summary>
    /// <param name="riseAtOneWattK">Rise at 1 W, K, above 0.</param>
    /// <param name="exponent">Power of the heat, 0.5 to 1; 0.8 is that of natural convection, 1 that of a fan.</param>
    public static SinkCurve Power(double riseAtOneWattK, double exponent)
    {
        Guard.Positive(riseAtOneWattK);
        Guard.InRange(exponent, 0.5, 1);
        var count = RiseCurve.NodeRisesK.Length;
        Span<double> heats = stackalloc double[count];
        for (var i = 0; i < count; i++)
        {
            heats[i] = Math.Pow(RiseCurve.NodeRisesK[i] / riseAtOneWattK, 1 / exponent);
        }

        return new SinkCurve(new RiseCurve(heats, RiseCurve.NodeRisesK), [], 0, 0, 0);
    }

    /// <summary>The same with a flow of air that is known from elsewhere.</summary>
    /// <param name="flowM3PerS">Flow of the fan, m³/s, 0 or above.</param>
    public SinkCurve WithFlow(double flowM3PerS)
    {
        var air = Air.At(300, 101325);
        return new(baseRise, conduction, flowM3PerS, 0, flowM3PerS * air.Density * air.SpecificHeat, byOthers, otherW);
    }

    /// <summary>Mean rise of the base over the ambient air, K.</summary>
    /// <param name="heatW">Heat of the light's emitter, W; below 0 counts as 0.</param>
    public double BaseRiseK(double heatW) => baseRise.RiseK(Math.Max(0, heatW) + otherW);

    /// <summary>Mean rise under a footprint over the ambient air, K.</summary>
    /// <param name="heatW">Heat of the light's emitter, W; below 0 counts as 0.</param>
    /// <param name="source">Which footprint, in the order of the spec; a measured sink has one.</param>
    public double SourceRiseK(double heatW, int source = 0)
    {
        var own = Math.Max(0, heatW);
        if (own + otherW <= 0)
        {
            return 0;
        }

        var log = Math.Log(own + otherW);
        return baseRise.RiseAtLogK(log) + Above(own, log, source);
    }

    /// <summary>Mean rise under the hottest footprint over the ambient air, K.</summary>
    /// <param name="heatW">Heat of the light's emitter, W; below 0 counts as 0.</param>
    public double HottestRiseK(double heatW) => RisesK(heatW).SourceK;

    /// <summary>Base and hottest footprint at once, for a loop that needs them often.</summary>
    /// <param name="heatW">Heat of the light's emitter, W; below 0 counts as 0.</param>
    /// <param name="share">Share of the heat that leaves over the sink's own faces, above 0; sheet that it is screwed to takes the rest.</param>
    internal (double BaseK, double SourceK) RisesK(double heatW, double share = 1)
    {
        var own = Math.Max(0, heatW);
        if (own + otherW <= 0)
        {
            return (0, 0);
        }

        var log = Math.Log((own + otherW) * share);
        var rise = baseRise.RiseAtLogK(log);
        var above = Above(own, log, 0);
        for (var i = baseRise.LogHeats.Length; i < conduction.Length; i += baseRise.LogHeats.Length)
        {
            above = Math.Max(above, Above(own, log, i / baseRise.LogHeats.Length));
        }

        return (rise, rise + above);
    }

    private double Above(double ownW, double logHeat, int source) =>
        (ownW * Conduction(conduction, logHeat, source))
        + (otherW > 0 ? otherW * Conduction(byOthers, logHeat, source) : 0);

    /// <summary>Mean rise of the air that leaves the fan's path, K; 0 with the fan stopped.</summary>
    /// <param name="heatW">Heat of all emitters on the sink, W.</param>
    public double AirRiseK(double heatW) =>
        airHeatCapacityWPerK > 0 && heatW + otherW > 0
            ? Math.Min((heatW + otherW) / airHeatCapacityWPerK, BaseRiseK(heatW))
            : 0;

    /// <summary>Heat at a mean rise of the base, W, and its slope, W/K: <see cref="BaseRiseK"/> read the other way.</summary>
    /// <param name="riseK">Mean rise of the base over the ambient air, K; a straight line through zero below a thousandth of a kelvin.</param>
    public (double W, double WPerK) HeatW(double riseK) => baseRise.HeatAtRise(riseK);

    /// <summary>Resistance of the base from the footprint to its far face, between the points in a straight line.</summary>
    private double Conduction(double[] rows, double logHeat, int source)
    {
        if (rows.Length == 0)
        {
            return 0;
        }

        var logs = baseRise.LogHeats;
        var row = rows.AsSpan(source * logs.Length, logs.Length);
        if (logHeat <= logs[0])
        {
            return row[0];
        }

        var i = 1;
        while (i < logs.Length && logHeat > logs[i])
        {
            i++;
        }

        return i == logs.Length
            ? row[^1]
            : row[i - 1] + (row[i] - row[i - 1]) * (logHeat - logs[i - 1]) / (logs[i] - logs[i - 1]);
    }
}
