using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Readings;

namespace Lampwright.Evaluation.Build;

/// <summary>What the readings could replace in the file: the sense pair and the sink's resistance.</summary>
internal static class Takeovers
{
    public static IReadOnlyList<Takeover> Of(LightDesign design, IReadOnlyList<Reading> readings, StepsAnswer? steps) =>
        [.. new[] { Sense(design, readings), Sink(design, readings, steps) }.OfType<Takeover>()];

    private static Takeover? Sense(LightDesign design, IReadOnlyList<Reading> readings)
    {
        var driver =
            design.Drivers.FirstOrDefault(d => d.Name == design.Steps?.Driver) ?? design.Drivers.FirstOrDefault();
        var ohm = readings.FirstOrDefault(r =>
            r.What == ReadingKind.Resistance
            && readings.Any(c => c.What == ReadingKind.Current && c.Switches == r.Switches)
        );
        if (driver is null || ohm is null)
        {
            return null;
        }

        var amp = readings.First(c => c.What == ReadingKind.Current && c.Switches == ohm.Switches);
        var (r, i) = (
            ReadingsBuild.MeterOf(design, ohm).Corrected(ohm.Value),
            ReadingsBuild.MeterOf(design, amp).Corrected(amp.Value)
        );
        return new(
            $"driver.{driver.Name}.sense.measured",
            "sense resistance and the current through it",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{{ resistance = \"{r.Value:0.####} ohm ± {r.HalfWidth:0.####} ohm\", at = \"{i.Value:0.###} A ± {i.HalfWidth:0.###} A\" }}"
            ),
            $"resistance and current at {ohm.Switches}, lines {ohm.Line} and {amp.Line}"
        );
    }

    private static Takeover? Sink(LightDesign design, IReadOnlyList<Reading> readings, StepsAnswer? steps)
    {
        var sink = design.Sinks.FirstOrDefault();
        var hot = readings.FirstOrDefault(r => r is { What: ReadingKind.Temperature, Place: "sink" });
        if (
            sink is null
            || hot is null
            || steps?.Combinations.FirstOrDefault(c => c.Switches == hot.Switches) is not { } at
        )
        {
            return null;
        }

        Reading? Of(ReadingKind what) => readings.FirstOrDefault(r => r.What == what && r.Switches == hot.Switches);
        var room = readings.FirstOrDefault(r =>
            r is { What: ReadingKind.Temperature, Place: "ambient" } && r.Switches == hot.Switches
        );
        if (room is null || Of(ReadingKind.Current) is not { } amps || Of(ReadingKind.Voltage) is not { } volts)
        {
            return null;
        }

        Estimate Read(Reading r) => ReadingsBuild.MeterOf(design, r).Corrected(r.Value);
        var (i, v, t, a) = (Read(amps), Read(volts), Read(hot), Read(room));
        var watts = i.Value * v.Value;
        if (!(watts > 0 && t.Value > a.Value))
        {
            return null;
        }

        var power = new Estimate(
            watts,
            watts * Math.Sqrt(Math.Pow(i.Uncertainty / i.Value, 2) + Math.Pow(v.Uncertainty / v.Value, 2))
        );
        var emitter = design.Emitters.FirstOrDefault(e => e.Name == design.Steps?.Emitter) ?? design.Emitters[0];
        var share =
            emitter.LightShare?.Nominal
            ?? Math.Clamp(at.FluxLm.Value / emitter.RadiationEfficacy.Nominal / at.EmitterW.Value, 0, 0.9);
        var resistance = SinkResistance.KelvinPerWatt(new SinkReading(power, Estimate.Between(share, 0.05), t, a));
        return new(
            $"sink.{sink.Name}.measured",
            "resistance of the sink, fan as set",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{resistance.Value:0.###} K/W ± {resistance.HalfWidth:0.###} K/W"
            ),
            $"temperatures, current and voltage at {hot.Switches}, lines {hot.Line}, {room.Line}, {amps.Line}, {volts.Line}"
        );
    }
}
