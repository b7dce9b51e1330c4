namespace Lampwright.Steps;

/// <summary>What one draw tells a chain; lives on the stack.</summary>
public readonly ref struct ChainDraw
{
    /// <summary>The driver of this draw.</summary>
    public required DriverModel Driver { get; init; }

    /// <summary>Temperature of the air round the resistors, in kelvin.</summary>
    public required double AirK { get; init; }

    /// <summary>Factor on each resistance, the fixed one first; empty for nominal.</summary>
    public ReadOnlySpan<double> OhmFactors { get; init; }

    /// <summary>Resistance of each closed contact in ohm; one number for all; empty for nominal.</summary>
    public ReadOnlySpan<double> ContactOhms { get; init; }

    /// <summary>Factor on the temperature coefficients, −1 to 1 for a limit to both sides; 1 at nominal.</summary>
    public double TempcoFactor { get; init; }

    /// <summary>Factor on the lead resistance (<c>steps.lead_resistance</c>).</summary>
    public double LeadFactor { get; init; }

    /// <summary>Factor on the resistors' rise over the air (<c>steps.resistor_rise</c>).</summary>
    public double RiseFactor { get; init; }

    /// <summary>A draw that changes nothing; set what differs with an initializer on top of these three ones.</summary>
    public ChainDraw()
    {
        TempcoFactor = 1;
        LeadFactor = 1;
        RiseFactor = 1;
    }
}
