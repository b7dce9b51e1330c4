using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Findings;
using Lampwright.Readings;

namespace Lampwright.Evaluation.Build;

/// <summary>Sets readings beside predictions and says what they could correct.</summary>
internal static class ReadingsBuild
{
    private static readonly double ZeroC = 273.15;

    // Before the draws are there, or without them, no band has any width: nothing lies outside of it.
    private static readonly Rule[] NeedBands =
    [
        ReadingsRules.OutsideBand,
        ReadingsRules.FarOutsideBand,
        ReadingsRules.OneSided,
    ];

    public static (ReadingsAnswer? Answer, IReadOnlyList<Finding> Findings) Of(
        LightDesign design,
        IReadOnlyList<Reading> readings,
        StepsAnswer? steps,
        HeatAnswer? heat,
        bool hasBands
    )
    {
        if (readings.Count == 0)
        {
            return (null, []);
        }

        var compared = readings
            .Select(r => Comparison.Of(r, MeterOf(design, r), Prediction(r, steps, heat), Base(design, r)))
            .ToList();
        var findings = ReadingsFindings.Of("readings", compared, c => MeterOf(design, c.Reading));
        return (
            new([.. compared.Select(Row)], Takeovers.Of(design, readings, steps)),
            hasBands ? findings : [.. findings.Where(f => !NeedBands.Contains(f.Rule))]
        );
    }

    /// <summary>The meter a reading was taken with: the design's own factor for light, usual figures for the rest.</summary>
    public static Meter MeterOf(LightDesign design, Reading reading)
    {
        var usual = Meter.Usual(reading.Meter, reading.What);
        return reading.What == ReadingKind.Illuminance && design.Readings is { } source && source.Factor.Nominal > 0
            ? usual with
            {
                Kind = source.Meter.Length > 0 ? source.Meter : usual.Kind,
                Factor = source.Factor.Nominal,
                FactorHalfWidth = source.Factor.HalfWidth,
            }
            : usual;
    }

    private static Prediction? Prediction(Reading r, StepsAnswer? steps, HeatAnswer? heat)
    {
        var position = steps?.Combinations.FirstOrDefault(c => c.Switches == r.Switches);
        var point = heat?.Scenes[0].Points.FirstOrDefault(p => p.Switches == r.Switches);
        Predicted? predicted = r.What switch
        {
            ReadingKind.Current => position?.CurrentA,
            ReadingKind.Voltage => position?.VoltageV,
            ReadingKind.Power => r.Place == "input" ? position?.InputW : position?.EmitterW,
            ReadingKind.Illuminance => position?.LuxAtSubject,
            ReadingKind.Resistance => position?.ResistanceOhm,
            _ => r.Place switch
            {
                "junction" => point?.JunctionC,
                "case" => point?.CaseC,
                "sink" => point?.SinkC,
                "driver" => point?.DriverC,
                "front" => point?.FrontC,
                "compartment" => point?.CompartmentC,
                "ambient" => heat?.Scenes[0].AmbientC,
                _ => null,
            },
        };
        var zero = r.What == ReadingKind.Temperature ? ZeroC : 0;
        return predicted is { } p ? new(p.Value + zero, p.Low + zero, p.High + zero) : null;
    }

    // Of a temperature the rise over the room is what was predicted; the room itself is judged as the thermometer shows it.
    private static double Base(LightDesign design, Reading r) =>
        r.What != ReadingKind.Temperature ? 0
        : r.Place == "ambient" ? ZeroC
        : design.Place.Ambient.Nominal;

    private static ReadingRow Row(Comparison c)
    {
        var zero = c.Reading.What == ReadingKind.Temperature ? ZeroC : 0;
        return new(
            c.Reading.Line,
            c.Reading.What == ReadingKind.Illuminance ? "lux" : c.Reading.What.ToString().ToLowerInvariant(),
            c.Reading.Switches,
            c.Reading.Place,
            Unit(c.Reading.What),
            c.Measured.Value - zero,
            c.Predicted is { } p ? new Predicted(p.Nominal - zero, p.Low - zero, p.High - zero) : null,
            c.Difference,
            c.InBands
        );
    }

    private static string Unit(ReadingKind what) =>
        what switch
        {
            ReadingKind.Current => "A",
            ReadingKind.Voltage => "V",
            ReadingKind.Power => "W",
            ReadingKind.Illuminance => "lx",
            ReadingKind.Resistance => "Ω",
            _ => "°C",
        };
}
