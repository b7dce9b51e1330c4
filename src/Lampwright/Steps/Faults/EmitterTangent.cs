using Lampwright.Steps.Ways;

namespace Lampwright.Steps.Faults;

/// <summary>The straight line that stands for the emitter in one solution: a chord or a tangent of its curve, or nothing.</summary>
/// <param name="KneeV">Voltage at no current, in volts.</param>
/// <param name="SlopeOhm">Rise of the voltage with the current, in ohm; above 0.</param>
/// <param name="Conducts">Whether it conducts at all.</param>
internal readonly record struct EmitterTangent(double KneeV, double SlopeOhm, bool Conducts)
{
    /// <summary>The tangent of a curve.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="amps">Current at which it touches, in amperes; above 0.</param>
    public static EmitterTangent Of(EmitterLine curve, double amps)
    {
        var slope = Math.Max(curve.Model.DynamicResistanceOhm(amps), 1e-3);
        return new(curve.Model.VoltageV(amps, curve.JunctionK) - (slope * amps), slope, true);
    }

    /// <summary>Voltage at a current, in volts.</summary>
    /// <param name="amps">Current in amperes.</param>
    public double VoltageV(double amps) => KneeV + (SlopeOhm * amps);

    /// <summary>Current at a voltage, in amperes; below zero where the line does not reach.</summary>
    /// <param name="volts">Voltage across the emitter, in volts.</param>
    public double CurrentA(double volts) => Conducts ? (volts - KneeV) / SlopeOhm : 0;

    /// <summary>Puts it into a network.</summary>
    public void Into(ref NodalSolve net)
    {
        if (!Conducts)
        {
            return;
        }

        var siemens = 1 / SlopeOhm;
        net.Resistor(SenseNode.Anode, SenseNode.Cathode, siemens);
        net.Feed(SenseNode.Anode, KneeV * siemens, 0);
        net.Feed(SenseNode.Cathode, -KneeV * siemens, 0);
    }
}
