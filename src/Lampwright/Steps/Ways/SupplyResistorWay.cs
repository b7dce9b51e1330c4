namespace Lampwright.Steps.Ways;

/// <summary>A resistor in the supply line: the driver's input takes constant power, so that a resistor only makes it draw more until it stops.</summary>
/// <remarks>
/// Judged with the resistor that would halve the power of a filament lamp of the same power, (sqrt 2 − 1)·Vs²/P: always more than the
/// Vs²/(4·P) through which the power still comes. Starting may end it before that, see <see cref="ConstantPowerInput.MostOhm"/>; where the
/// lock-out is not told, the least input of the label stands for both of its voltages.
/// </remarks>
internal static class SupplyResistorWay
{
    /// <summary>(sqrt 2 − 1): the resistance in series that halves the power in a resistance of 1.</summary>
    private static readonly double Halving = Math.Sqrt(2) - 1;

    public static Way Of(WayBench bench)
    {
        var f = bench.Facts;
        var inputW = bench.Half.SetA * bench.Half.FullV / f.Efficiency;

        // Alternating current flows with the power over the power factor; at 1 for direct current.
        var drawn = inputW / f.PowerFactor;
        var off = Math.Min(f.InputOffV ?? f.InputLeastV ?? 0, f.InputOnV ?? double.MaxValue);
        var on = f.InputOnV ?? f.InputLeastV ?? double.PositiveInfinity;
        var mostOhm = Math.Max(0, ConstantPowerInput.MostOhm(f.SupplyV, drawn, off, on) - f.SupplyOhm);

        // Once it is on, it runs at the upper crossing.
        var atV = ConstantPowerInput.Voltages(f.SupplyV, mostOhm + f.SupplyOhm, drawn)?.UpperV ?? f.SupplyV / 2;
        var starting = on < f.SupplyV / 2 ? " (from there on it no longer starts)" : "";
        var atA = drawn / atV;
        var ohm = Halving * f.SupplyV * f.SupplyV / inputW;
        var total = ohm + f.SupplyOhm;

        var (onV, offV) = Thresholds(f);
        var known = f.InputOnV is not null && f.InputOffV is not null && !f.Alternating && onV < f.SupplyV;
        Extent? hz = known
            ? new(
                1
                    / (
                        Period(f, total, drawn, WayExamples.InputRangeF.Most, onV, offV)
                        + Math.Max(WayExamples.SoftStartS, f.RestartRangeS?.Most ?? 0)
                    ),
                1 / Period(f, total, drawn, WayExamples.InputRangeF.Least, onV, offV)
            )
            : null;
        var starts = onV < f.SupplyV;
        var reason = WayBench.Text(
            $"The driver takes {inputW:0.#} W whatever its voltage, so the light stays as it is up to {WayBench.Ohm(mostOhm)}{starting} (which then burns {atA * atA * mostOhm:0.#} W at {atA:0.##} A) and beyond, as with the {WayBench.Ohm(ohm)} that would halve a filament lamp, {(starts ? "its input collapses and it starts and stops " + WayBench.Rate(hz) + Taken(hz) : "it does not start at all")}{Taken(f)}."
        );
        string[] stresses =
        [
            WayBench.Text($"resistor: up to {atA * atA * mostOhm:0.#} W before the light changes"),
            WayBench.Text($"driver input: {atA:0.##} A instead of {drawn / f.SupplyV:0.##} A"),
        ];
        var circuit = new WayCircuit(
            new SupplyBehindResistance(f.SupplyV, total),
            new ConverterLine(drawn, onV, offV, bench.Half.SetA),
            WayExamples.InputF,
            0,
            EmitterOnNode: false
        );
        var blinks = starts ? Told.Yes : Told.No;
        return bench.Judged(
            WayKind.SupplyResistor,
            circuit,
            new(Verdict.DoesNotWork, reason, Told.No, blinks, blinks, stresses, hz),
            WaySafety.NoStops,
            opensDriver: false
        );
    }

    /// <summary>Lock-out of the input: as told, from the label's least input, or an example that starts on this supply.</summary>
    private static (double OnV, double OffV) Thresholds(WayFacts f)
    {
        var off = f.InputOffV ?? (f.InputOnV is { } on ? 0.9 * on : 0.9 * (f.InputLeastV ?? f.SupplyV / 2));
        var start = f.InputOnV ?? f.InputLeastV ?? 1.1 * off;
        return (Math.Max(start, off * (1 + 1e-3)), off);
    }

    private static double Period(WayFacts f, double ohm, double drawn, double farad, double onV, double offV) =>
        ConstantPowerInput.HiccupPeriodS(f.SupplyV, ohm, drawn, farad, onV, offV);

    private static string Taken(Extent? hz) =>
        hz is null
            ? ""
            : WayBench.Text(
                $" ({WayExamples.InputRangeF.Least * 1e6:0} µF to {WayExamples.InputRangeF.Most * 1e6:0} µF at its input and up to {WayExamples.SoftStartS * 1e3:0} ms of soft start taken)"
            );

    private static string Taken(WayFacts f)
    {
        if (f.KnownSupplyV is null)
        {
            return WayBench.Text($" (no supply is given: {WayExamples.MainsV:0} V mains is taken)");
        }

        return f is { Alternating: true, KnownPowerFactor: null }
            ? WayBench.Text($" (power factor taken as {f.PowerFactor:0.0})")
            : "";
    }
}
