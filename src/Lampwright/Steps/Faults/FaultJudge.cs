namespace Lampwright.Steps.Faults;

/// <summary>The points of rest that a fault is judged by, at the position where it is worst.</summary>
/// <param name="Point">With every part as stated.</param>
/// <param name="Sound">The same position without the fault.</param>
/// <param name="Corner">With the fault and every part as far off as it may be.</param>
/// <param name="MostSenseV">Greatest voltage at the sense input over all positions and corners, in volts.</param>
internal readonly record struct FaultPlayed(FaultPoint Point, FaultPoint Sound, FaultPoint Corner, double MostSenseV);

/// <summary>Judges what survives one fault, and says it in words.</summary>
internal static class FaultJudge
{
    public static FaultResult Of(
        SenseCircuit circuit,
        FaultsSpec spec,
        Fault fault,
        string position,
        in FaultPlayed played,
        ReadOnlySpan<double> load,
        ReadOnlySpan<double> mostLoad
    )
    {
        var (point, sound, corner) = (played.Point, played.Sound, played.Corner);
        var limits = spec.Limits ?? new FaultLimits();
        var dark = point.EmitterMostA < limits.Dark;
        var runs = fault.Kind != FaultKind.SupplyPulled && !point.Regulated;
        var floating = double.IsNaN(point.SenseV) || (runs && !point.AtVoltageLimit && point.SenseFollowsLow);

        // Only what the sense input draws still flows: the rest of the emitter's voltage is at once at the pad LED −, and at the sense input if that hangs there.
        var fallV =
            (spec.Emitter.SlopeOhm * sound.EmitterA)
            + Math.Max(0, spec.Emitter.KneeV - (spec.Emitter.DarkV ?? spec.Emitter.KneeV));
        var jump = dark && point.SenseFollowsLow ? spec.ThresholdV + fallV : (double?)null;

        // Nothing flows and nobody knows how far the output climbs: what comes when the contact is back is not known either.
        var climbs = dark && runs && double.IsNaN(point.OutputV);
        var (over, resistors) = Parts(circuit, limits, load, mostLoad);
        double? most = climbs || double.IsInfinity(point.EmitterMostA) ? null : point.EmitterMostA;
        double? worst = climbs || double.IsInfinity(corner.EmitterMostA) ? null : corner.EmitterMostA;
        var peak = Peak(spec, fault, point, sound, dark, spec.Driver.OverVoltageV);
        var highV = Math.Max(spec.Driver.OverVoltageV ?? 0, spec.Corners?.OverMostV ?? 0);
        var worstPeak = peak is null ? null : Peak(spec, fault, point, sound, dark, highV);
        var result = new FaultResult(
            fault,
            FaultList.Words(circuit, fault),
            position,
            point.EmitterA,
            most,
            sound.EmitterA,
            floating ? null : jump ?? Math.Max(0, point.SenseV),
            double.IsNaN(point.OutputV) ? null : point.OutputV,
            peak,
            worst,
            worstPeak,
            climbs ? Survival.Unknown : Emitter(spec, point, worst, worstPeak),
            climbs ? Survival.Unknown : Driver(spec, limits, played, jump),
            resistors,
            over,
            runs,
            Standing(circuit, spec, fault),
            "",
            ""
        );
        var (words, see) = FaultWords.Of(spec, result, point, dark, jump is not null);
        return result with { Words = words, See = see };
    }

    private static (string Name, Survival Survives) Parts(
        SenseCircuit circuit,
        FaultLimits limits,
        ReadOnlySpan<double> load,
        ReadOnlySpan<double> mostLoad
    )
    {
        var worst = -1;
        for (var k = 0; k < load.Length; k++)
        {
            worst = mostLoad[k] > 1 && (worst < 0 || mostLoad[k] > mostLoad[worst]) ? k : worst;
        }

        return worst < 0 ? ("", Survival.Yes)
            : load[worst] > limits.ResistorOverload ? (circuit.Resistors[worst].Name, Survival.No)
            : (circuit.Resistors[worst].Name, Survival.Unknown);
    }

    // A peak is the emitter's exponential at the voltage limit, milliseconds long: above its limit it is a gamble, not a certain death.
    private static double? Peak(
        FaultsSpec spec,
        Fault fault,
        in FaultPoint point,
        in FaultPoint sound,
        bool dark,
        double? limitV
    )
    {
        var opens = fault.Kind is FaultKind.LeadBroken or FaultKind.EmitterPulled or FaultKind.PlatePulled;
        if (!opens || !dark || !point.AtVoltageLimit || limitV is not { } volts)
        {
            return null;
        }

        var inSeries = sound.EmitterA > 0 ? Math.Max(0, (sound.OutputV - sound.EmitterV) / sound.EmitterA) : 0;
        return spec.Emitter.CurrentA(volts, inSeries);
    }

    private static Survival Emitter(FaultsSpec spec, in FaultPoint point, double? worst, double? peak)
    {
        if (spec.Emitter.MostA is not { } limit)
        {
            return
                point.EmitterMostA <= point.EmitterA
                && worst is not null
                && !(peak > spec.Driver.RatedA)
                && point.EmitterA <= spec.Driver.RatedA
                ? Survival.Yes
                : Survival.Unknown;
        }

        return point.EmitterA > limit ? Survival.No
            : worst is null || worst > limit || peak > limit || point.EmitterV < -1 ? Survival.Unknown
            : Survival.Yes;
    }

    private static Survival Driver(FaultsSpec spec, FaultLimits limits, in FaultPlayed played, double? jump)
    {
        var (driver, point, corner) = (spec.Driver, played.Point, played.Corner);
        if (point.SenseV > limits.SensePinV)
        {
            return Survival.No;
        }

        if (jump > limits.SensePinV || (jump is null && played.MostSenseV > limits.SensePinV))
        {
            return Survival.Unknown;
        }

        if (driver.Over == OverVoltage.Unknown && (point.AtVoltageLimit || corner.AtVoltageLimit))
        {
            return Survival.Unknown;
        }

        if (point.AtVoltageLimit)
        {
            return Survival.Yes;
        }

        var most = Math.Max(point.DriverMostA, corner.DriverMostA);
        var within = most <= Math.Max(driver.RatedA * (1 + limits.OverRated), spec.LimitMostA ?? 0) * (1 + 1e-9);
        var low = driver.WindowLeastV is { } least && point.DriverMostA > 0 && point.OutputV < least;
        return !within ? Survival.Unknown
            : low
            && point.EmitterMostA < limits.Dark
            && point.DriverMostA > limits.Dark
            && driver.Under == UnderVoltage.Unknown
                ? Survival.Unknown
            : Survival.Yes;
    }

    private static FaultStanding Standing(SenseCircuit circuit, FaultsSpec spec, Fault fault)
    {
        switch (fault.Kind)
        {
            case FaultKind.None or FaultKind.EmitterPulled or FaultKind.SupplyPulled:
                return FaultStanding.AnyLight;
            case FaultKind.LeadBroken when IsEmitters(fault.First):
                return FaultStanding.AnyLight;
            case FaultKind.LeadsTouch or FaultKind.LeadsSwapped when IsEmitters(fault.Second):
                return FaultStanding.AnyLight;
            case FaultKind.LeadsTouch or FaultKind.LeadsSwapped when IsEmitters(fault.First):
                return spec.Chain.LeadsApart ? FaultStanding.Excluded : FaultStanding.ByConstruction;
            case FaultKind.ResistorShort:
                return spec.Chain.Fails switch
                {
                    FailureKind.Open => FaultStanding.Excluded,
                    FailureKind.Unknown when circuit.Resistors[fault.First].OnBoard => FaultStanding.ByConstruction,
                    _ => FaultStanding.Counts,
                };
            default:
                return FaultStanding.Counts;
        }

        // The two leads of the emitter come first; of a pair the second index is the greater.
        static bool IsEmitters(int lead) => lead < 2;
    }
}
