namespace Lampwright.Steps.Faults;

/// <summary>What follows from a fault, in words, and what one would see of it.</summary>
internal static class FaultWords
{
    public static (string Words, string See) Of(
        FaultsSpec spec,
        FaultResult r,
        in FaultPoint point,
        bool dark,
        bool pinJumps
    )
    {
        var (words, see) = What(spec, r, point, dark, pinJumps);
        if (r.Overloaded.Length > 0)
        {
            words += r.Resistors == Survival.No ? $" {r.Overloaded} burns." : $" {r.Overloaded} may burn.";
        }

        if (point.EmitterV < -1)
        {
            words += Text(
                $" The emitter stands {-point.EmitterV:0.#} V the wrong way round; few bear more than some volts."
            );
        }

        if (r.Driver == Survival.No)
        {
            words += Text($" The sense input sees {r.SenseV:0.#} V, more than such inputs bear.");
        }

        if (r.PeakA is { } peak)
        {
            words += Text(
                $" When the contact comes back under power the output capacitor drives a peak of up to {peak:0.0} A through the emitter."
            );
        }

        if (r.IsNarrow(spec.Emitter.MostA))
        {
            words += r.WorstA is not { } worst
                ? " With parts and driver as far off as they may be nothing holds it."
                : Text(
                    $" With parts and driver as far off as they may be it is {Math.Max(worst, r.WorstPeakA ?? 0):0.000} A, over the {spec.Emitter.MostA:0.000} A that the emitter bears: by that it is judged."
                );
        }

        if (r.Standing == FaultStanding.Excluded)
        {
            words +=
                r.Fault.Kind == FaultKind.ResistorShort
                    ? " Left out of the stops on your word that these parts fail open only (steps.part.fails); a drop of solder shorts them all the same: look for one."
                    : " Left out of the stops on your word that the emitter's leads run apart from the chain's (steps.lead.apart).";
        }

        return (words, see);
    }

    private static (string Words, string See) What(
        FaultsSpec spec,
        FaultResult r,
        in FaultPoint point,
        bool dark,
        bool pinJumps
    )
    {
        if (r.Fault.Kind == FaultKind.SupplyPulled)
        {
            return (
                "The output runs down and nothing exceeds its working value. Capacitors stay charged for a while.",
                "dark; the light is as before when the plug goes in again"
            );
        }

        if (dark)
        {
            return Dark(spec, r, point, pinJumps);
        }

        if (r.RunsToLimit)
        {
            var until =
                point.AtVoltageLimit
                    ? Text($"its voltage limit of {spec.Driver.OverVoltageV:0.#} V, {r.CurrentMostA:0.00} A")
                : spec.Driver.LimitA is { } limit ? Text($"its own limit of {limit:0.00} A")
                : "its own limit, which is not known";
            return (
                $"Nothing holds the current: the driver runs to {until}.",
                "far too bright, whatever the switches say"
            );
        }

        if (spec.Driver.LimitA is null && r.CurrentMostA > r.CurrentA * 1.001)
        {
            return (
                Text(
                    $"The threshold asks for {r.CurrentMostA:0.00} A; the driver runs to its own limit, which is not known."
                ),
                "far too bright, whatever the switches say"
            );
        }

        var off = r.SoundA > 0 ? (r.CurrentA / r.SoundA) - 1 : 0;
        return Math.Abs(off) < 0.005
            ? (
                Text($"The current stays at {r.CurrentA:0.000} A."),
                "nothing; only measuring with the plug out shows it"
            )
            : (
                Text($"The driver holds {r.CurrentA:0.000} A instead of {r.SoundA:0.000} A."),
                off > 0 ? "brighter than the plate says" : "dimmer than the plate says"
            );
    }

    private static (string Words, string See) Dark(FaultsSpec spec, FaultResult r, in FaultPoint point, bool pinJumps)
    {
        if (pinJumps)
        {
            return (
                Text(
                    $"The emitter's path is open and the sense input hangs on it: it jumps to about {r.SenseV:0.0} V{(r.Driver == Survival.Yes ? "" : ", more than such inputs are sure to bear")}, and the driver holds back."
                ),
                "dark"
            );
        }

        if (point.OutputV < 0.1 && point.DriverMostA > 1e3)
        {
            return (
                "The driver's output is shorted: what flows is up to the driver.",
                "dark; the driver hums, trips or blinks"
            );
        }

        if (point.DriverMostA < 1e-3 || (r.RunsToLimit && double.IsNaN(point.OutputV)))
        {
            var then = spec.Driver.Over switch
            {
                OverVoltage.Clamps => "and stays there",
                OverVoltage.Trips => "and trips",
                _ => "and does what its data sheet does not say",
            };
            var volts = spec.Driver.OverVoltageV is { } v
                ? Text($"its voltage limit of {v:0.#} V")
                : "its voltage limit, which is not known,";
            var back = spec.Driver.OverVoltageV is null
                ? " What goes through the emitter when the contact comes back under power is not known either."
                : "";
            return (
                $"No current flows: the output goes to {volts} {then}.{back}",
                "dark, or short flashes where the driver tries again"
            );
        }

        var known = spec.Driver.LimitA ?? (spec.Driver.RatedA * 1.1);
        var amps = point.DriverMostA <= known ? Text($"{point.DriverMostA:0.00} A") : "as much as the driver gives";
        return (
            $"The current by-passes the emitter: {amps} through what lies beside it.",
            "dark; something beside the emitter gets hot"
        );
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
