namespace Lampwright.Steps.Ways;

/// <summary>An emitter behind a switch that opens and closes.</summary>
/// <remarks>Its currents are those of the closed switch; open it takes nothing.</remarks>
/// <param name="Emitter">The emitter.</param>
/// <param name="FrequencyHz">How often it closes, in hertz.</param>
/// <param name="Duty">Share of the time that it is closed, 0 to 1.</param>
/// <param name="SwitchOhm">Resistance of the closed switch, in ohm.</param>
public sealed record ChoppedLine(EmitterLine Emitter, double FrequencyHz, double Duty, double SwitchOhm) : LoadLine
{
    /// <summary>The emitter with the closed switch in series.</summary>
    public EmitterLine Closed => Emitter with { SeriesOhm = Emitter.SeriesOhm + SwitchOhm };

    /// <inheritdoc/>
    public override double CurrentA(double volts) => Closed.CurrentA(volts);

    /// <inheritdoc/>
    public override double EmitterA(double volts) => Closed.EmitterA(volts);
}
