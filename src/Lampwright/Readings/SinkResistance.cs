namespace Lampwright.Readings;

/// <summary>A measured rise of the sink.</summary>
/// <param name="Power">Electrical power into the emitter, watts.</param>
/// <param name="LightShare">Share of it that leaves as light, 0 to below 1.</param>
/// <param name="Sink">Temperature of the sink under the emitter, kelvin.</param>
/// <param name="Ambient">Temperature of the air, kelvin.</param>
public readonly record struct SinkReading(Estimate Power, Estimate LightShare, Estimate Sink, Estimate Ambient);

/// <summary>Thermal resistance of a sink from readings.</summary>
/// <remarks>
/// R = (T − Ta)/(P·(1 − η)). Uncertainties by JCGM 100:2008, 5.1.2. <b>Validity</b>: steady state (no change over ten minutes), fan as told.
/// </remarks>
public static class SinkResistance
{
    /// <summary>Thermal resistance in kelvin per watt.</summary>
    /// <param name="reading">The reading; power above 0, light share below 1.</param>
    public static Estimate KelvinPerWatt(SinkReading reading)
    {
        var dark = 1 - Guard.InRange(reading.LightShare.Value, 0, 0.99);
        var heat = Guard.Positive(reading.Power.Value) * dark;
        var rise = reading.Sink.Value - reading.Ambient.Value;
        var value = rise / heat;
        var (a, b, c, d) = (
            reading.Sink.Uncertainty / heat,
            reading.Ambient.Uncertainty / heat,
            value * reading.Power.Uncertainty / reading.Power.Value,
            value * reading.LightShare.Uncertainty / dark
        );
        return new(value, Math.Sqrt((a * a) + (b * b) + (c * c) + (d * d)));
    }

    /// <summary>Thermal resistance from several readings: the factor of rise over heat through the origin, in kelvin per watt.</summary>
    /// <remarks>The scatter of the readings, joined with the mean of what each alone is uncertain by (errors of one meter go together).</remarks>
    /// <param name="readings">Two or more readings.</param>
    public static Estimate KelvinPerWatt(IReadOnlyList<SinkReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var line = StraightLine.FactorThroughOrigin(
            [.. readings.Select(r => r.Power.Value * (1 - r.LightShare.Value))],
            [.. readings.Select(r => r.Sink.Value - r.Ambient.Value)]
        );
        var common = readings.Average(r => KelvinPerWatt(r).Uncertainty);
        return new(line.Value, Math.Sqrt((line.Uncertainty * line.Uncertainty) + (common * common)));
    }
}
