namespace Lampwright.Steps.Ways;

/// <summary>A step-down converter between driver and emitter: the driver runs to its voltage limit, and what it does there decides.</summary>
internal static class ConverterWay
{
    public static Way Of(WayBench bench)
    {
        var (f, half) = (bench.Facts, bench.Half);
        var takesW = half.HalfW / WayExamples.ConverterEfficiency;
        var leastA = takesW / f.LimitRangeV.Most;
        var mostA = takesW / half.HalfV;
        var fits = bench.Numbers(WayKind.ConverterBehind).EfficiencyAtHalf is not null || f.Over == OverVoltage.Trips;
        fits &= f.LimitRangeV.Least > half.HalfV;

        // A lock-out well under the emitter's voltage: there the emitter is dark and the converter no load.
        var circuit = new WayCircuit(
            bench.Output(half.SetA),
            new ConverterLine(takesW, 0.5 * half.HalfV, 0.45 * half.HalfV, half.HalfA, bench.Emitter),
            f.OutputF
        );
        var limit = WayBench.Text($"its limit of {f.LimitText}");
        var crossV = ConverterOnCurrent.CrossingV(takesW, half.SetA);
        var lead = WayBench.Text(
            $"For half of the light the converter takes {takesW:0.#} W, at most {mostA:0.##} A, less than the {half.SetA:0.##} A the driver keeps giving, so the voltage runs up to {limit}"
        );
        var hz = bench.TripHz(half.SetA - mostA, f.OutputRangeF.Most);
        var words = !fits
            ? new WayWords(
                Verdict.DoesNotWork,
                WayBench.Text(
                    $"The driver ends at {f.LimitText} and the emitter wants {half.HalfV:0.#} V at half of the light: a step-down converter has no room between them."
                ),
                Told.No,
                f.Over == OverVoltage.Clamps ? Told.No : Told.Unknown,
                f.Over == OverVoltage.Clamps ? Told.No : Told.Unknown,
                []
            )
            : f.Over switch
            {
                OverVoltage.Clamps => new(
                    Verdict.WithDrawback,
                    lead
                        + WayBench.Text(
                            $" and stays there with {(f.KnownLimitV is null ? "at least " : "")}{leastA:0.##} A: it dims, the driver always on its limit, at {bench.Numbers(WayKind.ConverterBehind).EfficiencyAtHalf * 100:0} % with a converter of {WayExamples.ConverterEfficiency * 100:0} % (an example)."
                        ),
                    Told.Yes,
                    Told.No,
                    Told.No,
                    Stresses(bench, crossV)
                ),
                OverVoltage.Trips => new(
                    Verdict.DoesNotWork,
                    lead
                        + (
                            f.RestartS is null
                                ? " and trips: the light goes dark, for good or to blink when it tries again."
                                : WayBench.Text($" and trips: the light blinks {WayBench.Rate(hz)}.")
                        ),
                    Told.No,
                    bench.Retries,
                    bench.Retries,
                    Stresses(bench, crossV),
                    hz
                ),
                _ => new(
                    Verdict.AskFirst,
                    lead
                        + WayBench.Text(
                            $": if it clamps there, {(f.KnownLimitV is null ? "at least " : "")}{leastA:0.##} A flow and it dims; if it trips, the light blinks or stays dark; its data sheet or a measurement has to say which."
                        ),
                    Told.Unknown,
                    Told.Unknown,
                    Told.Unknown,
                    Stresses(bench, crossV)
                ),
            };
        return bench.Judged(WayKind.ConverterBehind, circuit, words, WaySafety.OutputStops(f), opensDriver: false);
    }

    private static string[] Stresses(WayBench bench, double crossV)
    {
        var f = bench.Facts;
        var takesW = bench.Half.HalfW / WayExamples.ConverterEfficiency;

        // A converter that can also step up has no drop-out: under P/I0 it collapses to its lock-out. Two usual lock-outs, no source.
        var (on, off) = (0.5 * crossV, 0.4 * crossV);
        var fast =
            1 / ConverterOnCurrent.HiccupPeriodS(takesW, bench.Half.SetA, WayExamples.OutputRangeF.Least, on, off);
        var slow =
            1 / ConverterOnCurrent.HiccupPeriodS(takesW, bench.Half.SetA, WayExamples.OutputRangeF.Most, on, off);
        return
        [
            WayBench.Text($"driver: always at its limit, its output capacitor at {f.LimitMostText}"),
            WayBench.Text(
                $"converter: must stand {f.LimitMostText} at its input, lose {takesW - bench.Half.HalfW:0.#} W and start under the limit"
            ),
            WayBench.Text(
                $"a converter that also steps up must not start under {crossV:0.#} V: with a lock-out of {off:0.#} V to {on:0.#} V it would hiccup at {slow:0} Hz to {fast:0} Hz (output capacitor {WayExamples.OutputRangeF.Least * 1e6:0} µF to {WayExamples.OutputRangeF.Most * 1e6:0} µF)"
            ),
        ];
    }
}
