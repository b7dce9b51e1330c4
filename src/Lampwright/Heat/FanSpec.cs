namespace Lampwright.Heat;

/// <summary>A fan, or several equal ones, as they run.</summary>
public sealed record FanSpec
{
    /// <summary>Curve at rated voltage, flow rising. At least two points; the heavy part, laid once at nominal.</summary>
    public required IReadOnlyList<FanPoint> Curve { get; init; }

    /// <summary>Voltage it runs at over rated voltage, 0 to 1.5; the speed is taken in proportion (common practice).</summary>
    public double VoltageRatio { get; init; } = 1;

    /// <summary>Share of the rated voltage below which it stands still, 0 to 1; 0 where that is not known.</summary>
    public double StartRatio { get; init; }

    /// <summary>Speed over rated speed: 0 below the voltage it starts at, then in proportion to the voltage (common practice).</summary>
    public double SpeedRatio => VoltageRatio < StartRatio ? 0 : VoltageRatio;

    /// <summary>Density of the air the curve was taken in, kg/m³; makers state 1.2 (common practice).</summary>
    public double CurveDensity { get; init; } = 1.2;

    /// <summary>Number of fans, 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>True when they blow one into the next (pressures add), false when side by side (flows add).</summary>
    public bool InSeries { get; init; }

    /// <summary>Side of the box across the sink's fins, m.</summary>
    public double BoxAcrossM { get; init; }

    /// <summary>Side of the box along the sink's fins, or its height where it blows into their ends, m.</summary>
    public double BoxAlongM { get; init; }
}
