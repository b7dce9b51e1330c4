namespace Lampwright.Steps.Ways;

/// <summary>What drives the node between source and load.</summary>
public abstract record SourceLine
{
    /// <summary>Current it gives at a voltage of the node while it runs, in amperes; never below zero.</summary>
    /// <param name="volts">Voltage of the node, in volts.</param>
    public abstract double CurrentA(double volts);
}
