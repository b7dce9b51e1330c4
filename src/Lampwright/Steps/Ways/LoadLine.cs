namespace Lampwright.Steps.Ways;

/// <summary>What takes current from the node.</summary>
public abstract record LoadLine
{
    /// <summary>Current it takes at a voltage of the node while it is on, in amperes; never below zero.</summary>
    /// <param name="volts">Voltage of the node, in volts.</param>
    public abstract double CurrentA(double volts);

    /// <summary>Emitter current at a voltage of the node while it is on, in amperes.</summary>
    /// <param name="volts">Voltage of the node, in volts.</param>
    public abstract double EmitterA(double volts);
}
