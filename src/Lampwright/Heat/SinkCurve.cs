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

    internal SinkCurve(
        RiseCurve baseRise,
        double[] conduction,
        double flowM3PerS,
        double pressurePa,
        double airHeatCapacityWPerK
    )
    {
        this.baseRise = baseRise;
        this.conduction = conduction;
        FlowM3PerS = flowM3PerS;
        PressurePa = pressurePa;
        this.airHeatCapacityWPerK = airHeatCapacityWPerK;
    }

    /// <summary>Flow of the fan at 15 K of rise, m³/s of ambient air; 0 with the fan stopped.</summary>
    public double FlowM3PerS { get; }

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

    /// <summary>Mean rise of the base over the ambient air, K.</summary>
    /// <param name="heatW">Heat of all emitters on the sink, W; below 0 counts as 0.</param>
    public double BaseRiseK(double heatW) => baseRise.RiseK(heatW);

    /// <summary>Mean rise under a footprint over the ambient air, K.</summary>
    /// <param name="heatW">Heat of all emitters on the sink, W; below 0 counts as 0.</param>
    /// <param name="source">Which footprint, in the order of the spec; a measured sink has one.</param>
    public double SourceRiseK(double heatW, int source = 0)
    {
        if (heatW <= 0)
        {
            return 0;
        }

        var log = Math.Log(heatW);
        return baseRise.RiseAtLogK(log) + heatW * Conduction(log, source);
    }

    /// <summary>Both at once, for a loop that needs them often.</summary>
    /// <param name="heatW">Heat of all emitters on the sink, W; below 0 counts as 0.</param>
    internal (double BaseK, double SourceK) RisesK(double heatW)
    {
        if (heatW <= 0)
        {
            return (0, 0);
        }

        var log = Math.Log(heatW);
        var rise = baseRise.RiseAtLogK(log);
        return (rise, rise + (heatW * Conduction(log, 0)));
    }

    /// <summary>Mean rise of the air that leaves the fan's path, K; 0 with the fan stopped.</summary>
    /// <param name="heatW">Heat of all emitters on the sink, W.</param>
    public double AirRiseK(double heatW) =>
        airHeatCapacityWPerK > 0 && heatW > 0 ? Math.Min(heatW / airHeatCapacityWPerK, BaseRiseK(heatW)) : 0;

    /// <summary>Resistance of the base from the footprint to its far face, between the points in a straight line.</summary>
    private double Conduction(double logHeat, int source)
    {
        if (conduction.Length == 0)
        {
            return 0;
        }

        var logs = baseRise.LogHeats;
        var row = conduction.AsSpan(source * logs.Length, logs.Length);
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
