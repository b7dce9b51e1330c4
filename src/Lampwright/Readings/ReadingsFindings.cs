using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Readings;

/// <summary>What a foreman would say of the readings.</summary>
public static class ReadingsFindings
{
    // Readings of a kind that lie half a band to one side before it is spoken of.
    private static readonly int OneSidedFrom = 4;
    private static readonly double OneSidedBands = 0.5;

    /// <summary>Findings of all comparisons.</summary>
    /// <param name="path">Path of the readings in the design file.</param>
    /// <param name="comparisons">The comparisons.</param>
    /// <param name="meterOf">The meter that was used for each, as given to <see cref="Comparison.Of"/>.</param>
    public static IReadOnlyList<Finding> Of(
        string path,
        IReadOnlyList<Comparison> comparisons,
        Func<Comparison, Meter> meterOf
    )
    {
        ArgumentNullException.ThrowIfNull(comparisons);
        ArgumentNullException.ThrowIfNull(meterOf);
        var findings = new List<Finding>();
        foreach (var comparison in comparisons)
        {
            OfOne(path, comparison, meterOf(comparison), findings);
        }

        foreach (var group in comparisons.GroupBy(c => c.Reading.What))
        {
            OfKind(path, [.. group], findings);
        }

        foreach (
            var kind in comparisons
                .Where(c => !meterOf(c).Calibrated)
                .Select(c => meterOf(c).Kind)
                .Distinct(StringComparer.Ordinal)
        )
        {
            var rough = comparisons.First(c => string.Equals(meterOf(c).Kind, kind, StringComparison.Ordinal));
            if (meterOf(rough).FactorHalfWidth >= 0.1)
            {
                findings.Add(
                    ReadingsRules.MeterUncalibrated.At(
                        path + ".meter",
                        Text(
                            $"The meter '{(kind.Length > 0 ? kind : "unknown")}' may be off by {meterOf(rough).FactorHalfWidth * 100:0} %."
                        ),
                        Text($"±{meterOf(rough).FactorHalfWidth * 100:0} %")
                    )
                );
            }
        }

        return findings;
    }

    /// <summary>A row that could not be read.</summary>
    /// <param name="path">Path of the readings in the design file.</param>
    /// <param name="line">Line in the readings file, from 1.</param>
    /// <param name="why">What was found and what would be accepted; a full sentence.</param>
    public static Finding OfRow(string path, int line, string why) =>
        ReadingsRules.Unreadable.At(path, Text($"Line {line}: {why}"));

    /// <summary>Too few readings for a correction; null when there are enough.</summary>
    /// <param name="path">Path of the readings in the design file.</param>
    /// <param name="what">What would be corrected, in words.</param>
    /// <param name="count">Count of usable readings.</param>
    /// <param name="needed">Count that is needed.</param>
    public static Finding? OfCount(string path, string what, int count, int needed = 3) =>
        count >= needed
            ? null
            : ReadingsRules.TooFew.At(
                path,
                Text($"There are {count} readings for the {what}; {needed} are needed."),
                Text($"{count}"),
                Text($"{needed}")
            );

    /// <summary>A sense threshold that no controller has; null when it is plausible.</summary>
    /// <param name="path">Path of the sense parts in the design file.</param>
    /// <param name="thresholdV">Threshold, volts.</param>
    public static Finding? OfThreshold(string path, double thresholdV) =>
        SenseThreshold.IsPlausible(thresholdV)
            ? null
            : ReadingsRules.ThresholdImplausible.At(
                path,
                Text(
                    $"The measured pair gives a threshold of {thresholdV:0.000} V; a controller may have {SenseThreshold.PlausibleV.Least:0.000} to {SenseThreshold.PlausibleV.Most:0.000} V."
                ),
                Text($"{thresholdV:0.000} V"),
                Text($"{SenseThreshold.PlausibleV.Least:0.000} to {SenseThreshold.PlausibleV.Most:0.000} V")
            );

    private static void OfOne(string path, Comparison comparison, Meter meter, List<Finding> findings)
    {
        var name = Name(comparison.Reading);
        if (!meter.Spans(comparison.Reading.Value))
        {
            findings.Add(
                ReadingsRules.MeterExtrapolated.At(
                    path + ".meter",
                    Text(
                        $"{name}: the meter showed {comparison.Reading.Value:G4}, it was calibrated from {meter.Least:G4} to {meter.Most:G4}."
                    ),
                    Text($"{comparison.Reading.Value:G4}"),
                    Text($"{meter.Least:G4} to {meter.Most:G4}")
                )
            );
        }

        if (comparison.InJointBands is not { } bands || comparison.Predicted is not { } predicted)
        {
            findings.Add(ReadingsRules.NothingPredicted.At(path, Text($"{name}: nothing is predicted for it.")));
            return;
        }

        if (Math.Abs(bands) > 1)
        {
            var rule = Math.Abs(bands) > 2 ? ReadingsRules.FarOutsideBand : ReadingsRules.OutsideBand;
            findings.Add(
                rule.At(
                    path,
                    Text(
                        $"{name}: measured {Shown(comparison.Reading.What, comparison.Measured.Value)}, predicted {Shown(comparison.Reading.What, predicted.Nominal)} ({Shown(comparison.Reading.What, predicted.Low)} to {Shown(comparison.Reading.What, predicted.High)}), {Math.Abs(bands):0.0} bands {(bands > 0 ? "above" : "below")}."
                    ),
                    Shown(comparison.Reading.What, comparison.Measured.Value),
                    Text(
                        $"{Shown(comparison.Reading.What, predicted.Low)} to {Shown(comparison.Reading.What, predicted.High)}"
                    )
                )
            );
        }
    }

    private static void OfKind(string path, Comparison[] group, List<Finding> findings)
    {
        var judged = group.Where(c => c.InJointBands is not null && c.Difference is not null).ToArray();
        if (judged.Length >= 5)
        {
            double[] differences = [.. judged.Select(c => c.Difference!.Value)];
            var (g, index) = Outliers.Grubbs(differences);
            if (g > Outliers.GrubbsLimit(judged.Length, 0.05))
            {
                findings.Add(
                    ReadingsRules.Outlier.At(
                        path,
                        Text(
                            $"{Name(judged[index].Reading)}: its difference of {differences[index] * 100:0.0} % does not belong to those of the other {judged.Length - 1} readings of its kind."
                        ),
                        Text($"{g:0.00}"),
                        Text($"{Outliers.GrubbsLimit(judged.Length, 0.05):0.00}")
                    )
                );
            }
        }

        if (judged.Length >= OneSidedFrom)
        {
            var above = judged.Count(c => c.InJointBands > OneSidedBands);
            var below = judged.Count(c => c.InJointBands < -OneSidedBands);
            if (above == judged.Length || below == judged.Length)
            {
                var mean = judged.Average(c => c.Difference!.Value);
                findings.Add(
                    ReadingsRules.OneSided.At(
                        path,
                        Text(
                            $"All {judged.Length} readings of {Kind(group[0].Reading.What)} lie {(above > 0 ? "above" : "below")} the prediction, by {Math.Abs(mean) * 100:0} % on average."
                        ),
                        Text($"{mean * 100:0} %")
                    )
                );
            }
        }
    }

    private static string Name(Reading reading) =>
        Text($"Line {reading.Line}, {Kind(reading.What)}")
        + (reading.Place.Length > 0 ? " at " + reading.Place : "")
        + (reading.Switches.Length > 0 ? " with switches " + reading.Switches : "");

    private static string Kind(ReadingKind what) =>
        what == ReadingKind.Illuminance ? "lux" : what.ToString().ToLowerInvariant();

    private static string Shown(ReadingKind what, double value) =>
        what switch
        {
            ReadingKind.Current => Text($"{value:0.000} A"),
            ReadingKind.Voltage => Text($"{value:0.00} V"),
            ReadingKind.Power => Text($"{value:0.0} W"),
            ReadingKind.Illuminance => Text($"{value:0} lx"),
            ReadingKind.Temperature => Text($"{value - 273.15:0.0} °C"),
            _ => Text($"{value:0.0000} Ω"),
        };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
