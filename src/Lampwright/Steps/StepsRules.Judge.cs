using Lampwright.Findings;
using Lampwright.Steps.Board;
using Lampwright.Tables;

namespace Lampwright.Steps;

/// <content>What the rules say of one light.</content>
public static partial class StepsRules
{
    /// <summary>All findings of the station for what it was told and what came of it, the gravest first.</summary>
    public static IReadOnlyList<Finding> Judge(StepsSpec spec, StepsResult result)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(result);
        var findings = new List<Finding>(result.Emitter.Findings);
        if (spec.Chain is { } wired)
        {
            findings.AddRange(BoardStops.Of(spec.Driver));
            Selector(wired, findings);
            if (result.Network is null)
            {
                findings.Add(Cannot(wired));
            }
        }

        var limits = spec.Limits ?? new StepsLimits();
        Threshold(spec, result.Threshold, limits, findings);
        findings.AddRange(BoardFindings.Of(spec.Driver, result.Threshold, limits));
        if (result.Chain is { } chain && spec.Chain is { } built)
        {
            Currents(spec, result, chain, limits, findings);
            Resistors(built, chain, limits, findings);
            Contacts(built, chain, limits, findings);
            Small(built, findings);
            if (
                result.Threshold.Law is { } law
                && BoardFindings.Beyond(spec.Driver.Path, law, Laid(chain), limits) is { } far
            )
            {
                findings.Add(far);
            }
        }
        else
        {
            AsItIs(spec, result.Emitter.Model, limits, findings);
        }

        Window(spec, result, findings);
        return [.. findings.OrderByDescending(f => f.Severity).ThenBy(f => f.Code, StringComparer.Ordinal)];
    }

    /// <summary>The finding for a wanted step that is missed by more than a third of a stop, or null.</summary>
    /// <param name="path">Path in the design file of the wanted step.</param>
    /// <param name="wantedA">Wanted current in amperes.</param>
    /// <param name="givenA">Current of the combination that stands for it, in amperes.</param>
    public static Finding? Missed(string path, double wantedA, double givenA)
    {
        var stops = wantedA > 0 && givenA > 0 ? Math.Abs(Math.Log2(givenA / wantedA)) : 0;
        return stops <= 1.0 / 3
            ? null
            : StepMissed.At(
                path,
                Text($"{wantedA:0.###} A is wanted; its combination gives {givenA:0.###} A, {stops:0.00} stops away."),
                Amps(givenA),
                Amps(wantedA)
            );
    }

    // Without a chain the driver gives its rated current.
    private static void AsItIs(StepsSpec spec, EmitterModel model, StepsLimits limits, List<Finding> findings)
    {
        var rated = spec.Driver.RatedA;
        if (rated > spec.Emitter.MostA)
        {
            findings.Add(
                OverEmitter.At(
                    spec.Driver.Path + ".current",
                    Text($"The driver gives {rated:0.###} A; the emitter takes {spec.Emitter.MostA:0.###} A."),
                    Amps(rated),
                    Amps(spec.Emitter.MostA.Value)
                )
            );
        }

        Beyond(spec, model, [("rated current", rated)], limits, findings);
    }

    private static void Selector(ChainSpec chain, List<Finding> findings)
    {
        if (
            chain.Arrangement == Arrangement.Selector
            && chain.Selector != SelectorKind.MakeBeforeBreak
            && chain.BleedOhm is null
        )
        {
            findings.Add(
                SelectorOpens.At(
                    chain.Path + ".arrangement",
                    "Between two positions the sense loop is open, and the current is no longer held."
                )
            );
        }
    }

    private static void Threshold(StepsSpec spec, SenseThreshold threshold, StepsLimits limits, List<Finding> findings)
    {
        var path = spec.Driver.Path + ".sense";
        for (var i = 0; i < threshold.Marks.Count; i++)
        {
            if (threshold.Marks[i].Ohm is null)
            {
                findings.Add(UnreadableMarks.At($"{path}.marks[{i}]", threshold.Marks[i].Problem));
            }
        }

        if (threshold.VoltageV is not { } volts)
        {
            if (spec.Chain is not null)
            {
                findings.Add(NoThreshold.At(path, threshold.Reason));
            }

            return;
        }

        var rule = threshold.Likelihood switch
        {
            ThresholdLikelihood.Implausible => ImplausibleThreshold,
            ThresholdLikelihood.Unusual => UnusualThreshold,
            _ => null,
        };
        if (rule is not null)
        {
            var (least, most) = SenseThresholds.Usual;
            findings.Add(rule.At(path, threshold.Reason, Text($"{volts:0.0000} V"), Text($"{least} V to {most} V")));
        }

        if (threshold.Contradiction is { } apart && Math.Abs(apart) > limits.Contradiction)
        {
            findings.Add(
                Contradiction.At(
                    path,
                    Text($"Marks, resistance, rating and measurement differ by {apart * 100:+0.0;-0.0} %."),
                    Text($"{Math.Abs(apart) * 100:0.0} %"),
                    Text($"{limits.Contradiction * 100:0.#} %")
                )
            );
        }
    }

    private static void Currents(
        StepsSpec spec,
        StepsResult result,
        ChainResult chain,
        StepsLimits limits,
        List<Finding> findings
    )
    {
        var path = spec.Chain!.Path;
        var most = Math.Max(chain.MostA, chain.OverlapA ?? 0);
        var when =
            most > chain.MostA ? "between two positions" : $"at {chain.Combinations[chain.ByCurrent[0]].Switches}";
        var rated = spec.Driver.RatedA;
        if (most > spec.Emitter.MostA)
        {
            var message = Text(
                $"The chain gives {most:0.###} A {when}; the emitter takes {spec.Emitter.MostA:0.###} A."
            );
            findings.Add(OverEmitter.At(path, message, Amps(most), Amps(spec.Emitter.MostA.Value)));
        }

        if (most > rated * (1 + 1e-6))
        {
            var rule = most > rated * (1 + limits.OverRated) ? FarOverRated : OverRated;
            var message = Text($"The chain gives {most:0.###} A {when}; the driver is rated {rated:0.###} A.");
            findings.Add(rule.At(path, message, Amps(most), Amps(rated)));
        }

        if (spec.Driver.LeastA is { } least)
        {
            string[] low = [.. chain.Combinations.Where(c => c.CurrentA < least * (1 - 1e-6)).Select(c => c.Switches)];
            if (low.Length > 0)
            {
                var message = Text(
                    $"{low.Length} of {chain.Combinations.Count} combinations ({Some(low)}) give less than {least:0.###} A."
                );
                findings.Add(UnderLeast.At(path, message, Amps(chain.LeastA), Amps(least)));
            }
        }

        Beyond(
            spec,
            result.Emitter.Model,
            [.. chain.Combinations.Select(c => (c.Switches, c.CurrentA))],
            limits,
            findings
        );
    }

    private static void Beyond(
        StepsSpec spec,
        EmitterModel model,
        (string Name, double CurrentA)[] steps,
        StepsLimits limits,
        List<Finding> findings
    )
    {
        var beyond = steps.Where(c => model.LogBeyond(c.CurrentA) > limits.Extrapolation).ToArray();
        if (beyond.Length == 0)
        {
            return;
        }

        var range = Text($"{model.FromA:0.###} A to {model.ToA:0.###} A");
        var names = Some([.. beyond.Select(c => c.Name)]);
        var message = Text(
            $"{beyond.Length} of {steps.Length} combinations ({names}) lie beyond the emitter's points, which cover {range}."
        );
        var far = beyond.MaxBy(c => model.LogBeyond(c.CurrentA)).CurrentA;
        findings.Add(Extrapolated.At(spec.Emitter.Path + ".points", message, Amps(far), range));
    }

    private static void Resistors(ChainSpec spec, ChainResult chain, StepsLimits limits, List<Finding> findings)
    {
        for (var k = 0; k <= spec.Switched.Count; k++)
        {
            var worst = chain.Combinations.MaxBy(c => c.Resistors[k].Load)!;
            var state = worst.Resistors[k];
            if (state.Load <= limits.ResistorLoad)
            {
                continue;
            }

            var path = k == 0 ? spec.Path + ".chosen.fixed" : $"{spec.Path}.chosen.chain[{k - 1}]";
            var message = Text(
                $"Resistor {state.Name} takes {state.PowerW:0.00} W at {worst.Switches}; in its air it may carry {state.AllowedW:0.00} W."
            );
            var rule = state.Load > 1 ? ResistorOver : ResistorNear;
            findings.Add(rule.At(path, message, Text($"{state.PowerW:0.00} W"), Text($"{state.AllowedW:0.00} W")));
        }
    }

    // The first part that no number can be made of is named with its place.
    private static Finding Cannot(ChainSpec spec)
    {
        for (var k = 0; k <= spec.Switched.Count; k++)
        {
            var part = k == 0 ? spec.Fixed : spec.Switched[k - 1];
            if (StepsStation.Sound(part))
            {
                continue;
            }

            var path = k == 0 ? spec.Path + ".chosen.fixed" : $"{spec.Path}.chosen.chain[{k - 1}]";
            var wrong =
                part.Ohm is not (> 0 and <= 1e9) ? $"R{k} has {Read(part.Ohm, "ohm")}."
                : part.RatingW is not (> 0 and <= 1e6) ? $"R{k} is rated for {Read(part.RatingW, "W")}."
                : $"R{k} has full power to {Read(part.FullToK - 273.15, "°C")} and none at {Read(part.ZeroAtK - 273.15, "°C")}.";
            return NotComputable.At(path, wrong + " The chain cannot be computed.");
        }

        return NotComputable.At(
            spec.Path,
            Text($"A chain of {spec.Switched.Count} switches with these contacts and leads cannot be computed.")
        );
    }

    private static string Read(double value, string unit) =>
        double.IsFinite(value) ? Text($"{value:0.####} {unit}") : $"no number of {unit}";

    private static void Small(ChainSpec spec, List<Finding> findings)
    {
        // Contacts that are no number are told by the rule for a chain that cannot be computed.
        var worn = Math.Max(spec.ContactOhm, spec.ContactMostOhm ?? 0);
        for (var k = 0; double.IsFinite(worn) && k < spec.Switched.Count; k++)
        {
            var ohm = spec.Switched[k].Ohm;
            if (!double.IsFinite(ohm) || ohm >= spec.LeastSwitchedOhm * (1 - 1e-9))
            {
                continue;
            }

            var message = Text(
                $"R{k + 1} has {ohm * 1000:0.##} mohm; its switch, worn to {worn * 1000:0.##} mohm, takes {ohm / (ohm + worn) * 100:0} % of the current when it is closed, so the step shrinks to {ohm * ohm / (ohm + worn) * 1000:0.##} mohm."
            );
            findings.Add(
                SmallerThanContact.At(
                    $"{spec.Path}.chosen.chain[{k}]",
                    message,
                    Text($"{ohm * 1000:0.##} mohm"),
                    Text($"{spec.LeastSwitchedOhm * 1000:0.##} mohm")
                )
            );
        }
    }

    private static void Contacts(ChainSpec spec, ChainResult chain, StepsLimits limits, List<Finding> findings)
    {
        var worst = chain.Combinations.MaxBy(c => Loss(c))!;
        var share = Loss(worst);
        if (share > limits.ContactShare)
        {
            var message = Text(
                $"At {worst.Switches} contacts take {worst.ContactShare * 100:0.0} % of the sense resistance, and {share * 100:0.0} % of the current is lost when they are worn."
            );
            findings.Add(
                ContactShare.At(
                    spec.Path + ".contact",
                    message,
                    Text($"{share * 100:0.0} %"),
                    Text($"{limits.ContactShare * 100:0.#} %")
                )
            );
        }

        // Against clean contacts, so that a chain that is only good while new is told.
        static double Loss(Combination c)
        {
            var clean = c.CurrentA / (1 - Math.Min(c.ContactShare, 0.999));
            return clean > 0 ? Math.Max(c.ContactShare, 1 - (c.WornCurrentA / clean)) : 0;
        }
    }

    private static void Window(StepsSpec spec, StepsResult result, List<Finding> findings)
    {
        var window = result.Window;
        if (window.OverBy > 0)
        {
            var message = Text(
                $"Cold, the emitter wants {window.MostV:0.0} V; the driver reaches {spec.Driver.WindowMostV:0.0} V. {window.Words}"
            );
            findings.Add(
                OverWindow.At(
                    spec.Driver.Path + ".window",
                    message,
                    Volts(window.MostV),
                    Volts(spec.Driver.WindowMostV ?? 0)
                )
            );
        }

        if (window.UnderBy > 0)
        {
            var message = Text(
                $"Hot and dimmed, the emitter falls to {window.LeastV:0.0} V; the driver needs {spec.Driver.WindowLeastV:0.0} V."
            );
            findings.Add(
                UnderWindow.At(
                    spec.Driver.Path + ".window",
                    message,
                    Volts(window.LeastV),
                    Volts(spec.Driver.WindowLeastV ?? 0)
                )
            );
        }
    }

    private static IEnumerable<(string, double, double)> Laid(ChainResult chain) =>
        chain.Combinations.Select(c => (c.Switches, c.ResistanceOhm, c.CurrentA));

    private static string Some(string[] names) =>
        names.Length <= 4 ? string.Join(", ", names) : string.Join(", ", names.Take(4)) + ", …";

    private static string Amps(double a) => Text($"{a:0.000} A");

    private static string Volts(double v) => Text($"{v:0.0} V");

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
