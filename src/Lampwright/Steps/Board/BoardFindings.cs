using Lampwright.Findings;

namespace Lampwright.Steps.Board;

/// <summary>What is to be said of a board beside the stops.</summary>
public static class BoardFindings
{
    /// <summary>Findings of marks, control, offset and second point.</summary>
    /// <param name="driver">What is known of the driver.</param>
    /// <param name="threshold">Its threshold.</param>
    /// <param name="limits">Rules of thumb.</param>
    public static IReadOnlyList<Finding> Of(DriverSpec driver, SenseThreshold threshold, StepsLimits limits)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(threshold);
        ArgumentNullException.ThrowIfNull(limits);
        var path = driver.Path + ".sense";
        var findings = new List<Finding>();
        Marks(path, threshold.Marks, limits, findings);
        if (threshold.Law is { } law)
        {
            Second(path, driver.Sense, threshold, findings);
            Offset(path, driver.Sense, law, limits, findings);
            Control(path, driver.Sense, law, findings);
        }

        return findings;
    }

    /// <summary>The finding for a law whose own error at some step is larger than is let pass, or that has ended there; null else.</summary>
    /// <param name="path">Path of the driver.</param>
    /// <param name="law">The law.</param>
    /// <param name="steps">Each step with its sense resistance in ohm and its current in amperes.</param>
    /// <param name="limits">Rules of thumb.</param>
    public static Finding? Beyond(
        string path,
        SenseLaw law,
        IEnumerable<(string Name, double Ohm, double CurrentA)> steps,
        StepsLimits limits
    )
    {
        ArgumentNullException.ThrowIfNull(law);
        ArgumentNullException.ThrowIfNull(steps);
        ArgumentNullException.ThrowIfNull(limits);
        var sound = steps.Where(s => s.Ohm > 0 && double.IsFinite(s.Ohm)).ToArray();
        if (sound.Length == 0)
        {
            return null;
        }

        var (name, ohm, amps) = sound.MaxBy(s => law.ErrorAt(s.Ohm));
        var error = law.ErrorAt(ohm);
        if (error > limits.LawError && law.FactorBeyond(ohm) > 1)
        {
            return BoardRules.LawExtrapolated.At(
                path + ".sense.control",
                Text(
                    $"At {name} the sense resistance is {law.FactorBeyond(ohm):0.#} times beyond what is known; the current of {amps:0.###} A may be off by {error * 100:0} % from the law alone. {law.Words}"
                ),
                Text($"{error * 100:0} %"),
                Text($"{limits.LawError * 100:0.#} %")
            );
        }

        var ended = sound.Where(s => s.CurrentA < law.EndsBelowA * (1 - 1e-9) || s.CurrentA <= 0).ToArray();
        return ended.Length == 0
            ? null
            : BoardRules.LawExtrapolated.At(
                path + ".sense.control",
                Text(
                    $"At {ended[0].Name} and {ended.Length - 1} more of {sound.Length} steps the law has ended: {ended.Min(s => s.CurrentA):0.###} A. {law.Words}"
                ),
                Text($"{ended.Min(s => s.CurrentA):0.000} A"),
                Text($"{law.EndsBelowA ?? 0:0.000} A")
            );
    }

    private static void Marks(string path, IReadOnlyList<Marking> marks, StepsLimits limits, List<Finding> findings)
    {
        for (var i = 0; i < marks.Count; i++)
        {
            if (marks[i] is { Ohm: { } ohm, OtherOhm: { } other } mark)
            {
                findings.Add(
                    BoardRules.AmbiguousMark.At(
                        Text($"{path}.marks[{i}]"),
                        Text(
                            $"'{mark.Text}' is taken as {ohm:0.####} ohm ({mark.How}); the other is {other:0.####} ohm."
                        )
                    )
                );
            }
        }

        double[] read = [.. marks.Where(m => m.Ohm is not null).Select(m => m.Ohm!.Value)];
        if (read.Length > 1 && read.Max() / read.Min() is var ratio && ratio > limits.MarkRatio)
        {
            findings.Add(
                BoardRules.UnusualMix.At(
                    path + ".marks",
                    Text(
                        $"The parts lie between {read.Min():0.####} ohm and {read.Max():0.####} ohm; the greatest carries {100 * read.Min() / read.Max():0.##} % of what the least carries."
                    ),
                    Text($"{ratio:0.#}"),
                    Text($"{limits.MarkRatio:0.#}")
                )
            );
        }
    }

    private static void Second(string path, SenseSpec sense, SenseThreshold threshold, List<Finding> findings)
    {
        if (threshold.Second is { Problem.Length: > 0 } second)
        {
            findings.Add(
                BoardRules.SecondContradicts.At(
                    path + ".second",
                    Text(
                        $"{threshold.CurrentA:0.###} A at {threshold.Ohm:0.####} ohm and {sense.SecondPair!.CurrentA:0.###} A at {sense.SecondPair.Ohm:0.####} ohm: {second.Problem}"
                    )
                )
            );
        }
    }

    private static void Offset(string path, SenseSpec sense, SenseLaw law, StepsLimits limits, List<Finding> findings)
    {
        var share = Math.Abs(sense.OffsetV ?? 0) / law.ThresholdV;
        if (law.ThresholdV > 0 && double.IsFinite(share) && share > limits.OffsetShare)
        {
            findings.Add(
                BoardRules.OffsetLarge.At(
                    path + ".offset",
                    Text(
                        $"An offset of {Math.Abs(sense.OffsetV!.Value) * 1000:0.##} mV is {share * 100:0.#} % of the threshold of {law.ThresholdV * 1000:0.#} mV; the current may be off by as much."
                    ),
                    Text($"{share * 100:0.#} %"),
                    Text($"{limits.OffsetShare * 100:0.#} %")
                )
            );
        }
    }

    private static void Control(string path, SenseSpec sense, SenseLaw law, List<Finding> findings)
    {
        void Disagrees(string message) => findings.Add(BoardRules.ControlDisagrees.At(path + ".control", message));

        var ripple = law.Control == SenseControl.Peak ? SenseLaw.UsableRipple(sense, law.ReferenceA) : null;
        if (law.Control == SenseControl.Peak && ripple is null)
        {
            if (sense.InductorRippleA is { } odd && double.IsFinite(odd))
            {
                Disagrees(
                    Text(
                        $"A ripple of {odd:0.###} A peak to peak is none, or more than twice the current of {law.ReferenceA:0.###} A, which empties the coil; it is not used."
                    )
                );
            }
            else if (law.SecondOhm is null)
            {
                findings.Add(
                    BoardRules.PeakWithoutRipple.At(
                        path + ".inductor_ripple",
                        Text(
                            $"The controller holds the peak; without the ripple the current is off by up to {law.ErrorPerE * 100:0} % for each factor of 2.7 in resistance."
                        )
                    )
                );
            }
        }

        if (sense.Control == SenseControl.Primary && sense.Side == SenseSide.Secondary)
        {
            Disagrees("The side is told as secondary and the control as primary: one of them is wrong.");
        }

        if (sense.Control == SenseControl.Peak && sense.Carries == SenseCarries.Smooth)
        {
            Disagrees(
                "The part is told to carry a smooth current, and the controller to watch its peaks: one is wrong."
            );
        }

        if (law.SecondOhm is not null && Expected(law.Control, ripple) is { } expected)
        {
            var apart = Math.Abs(law.OffsetA - expected);
            var error = Math.Max(law.OffsetErrorA, 1e-12);
            if (apart > 2 * error)
            {
                Disagrees(
                    Text(
                        $"The two points give an offset of {law.OffsetA:0.000} A; the kind of control and its ripple give {expected:0.000} A. The points are used."
                    )
                );
            }
        }
    }

    private static double? Expected(SenseControl control, double? ripple) =>
        control switch
        {
            SenseControl.Average => 0,
            SenseControl.Peak => ripple / 2,
            _ => null,
        };

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
