namespace Lampwright.Steps.Ways;

/// <summary>A converter (or the input of a driver): constant power while it is on, with a lock-out at low voltage.</summary>
/// <remarks>
/// While it regulates it takes P/V. In drop-out its switch is always on and the emitter behind it takes the current:
/// what the emitter would take there bounds both, so a converter in drop-out is no constant-power load. Where the losses make P/V greater
/// than that at the edge of regulation, the line rises from one to the other without a jump.
/// Under <see cref="FloorV"/> it counts as a resistance, so that no voltage asks for endless current.
/// <b>Validity</b>: averaged over the converter's switching; its own output filter is taken as fast.
/// <b>Source</b>: definition of constant power; drop-out derived. <b>Checked by</b>: derived rows E.C-1 to E.C-7, solver.
/// </remarks>
/// <param name="PowerW">Power it takes when it regulates, in watts.</param>
/// <param name="OnV">Voltage at which it starts, in volts.</param>
/// <param name="OffV">Voltage at which it stops, in volts; not above <paramref name="OnV"/>.</param>
/// <param name="EmitterRegulatedA">Emitter current while it regulates, in amperes.</param>
/// <param name="DropOut">The emitter behind it once its input is too low to regulate (a switch that is always on); null where it has none.</param>
public sealed record ConverterLine(
    double PowerW,
    double OnV,
    double OffV,
    double EmitterRegulatedA,
    EmitterLine? DropOut = null
) : LoadLine
{
    /// <summary>Voltage under which it takes no constant power any more, in volts: the 2 V of the circuit in the reference decks, or the lock-out where that is lower.</summary>
    public double FloorV => OffV > 0 ? Math.Min(2, OffV) : 2;

    /// <inheritdoc/>
    public override double CurrentA(double volts)
    {
        if (!(volts > 0))
        {
            return 0;
        }

        var regulating = volts >= FloorV ? PowerW / volts : PowerW * volts / (FloorV * FloorV);
        return DropOut is null ? regulating : Math.Min(regulating, DropOut.CurrentA(volts));
    }

    /// <inheritdoc/>
    public override double EmitterA(double volts)
    {
        if (!(volts > 0))
        {
            return 0;
        }

        return DropOut is null ? EmitterRegulatedA : Math.Min(EmitterRegulatedA, DropOut.EmitterA(volts));
    }
}
