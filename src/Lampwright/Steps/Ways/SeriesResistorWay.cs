namespace Lampwright.Steps.Ways;

/// <summary>A resistor in series with the emitter: the driver keeps its current until its voltage limit.</summary>
/// <remarks>Judged with the resistor that brings half of the light at the limit: below it nothing dims, from there on the limit decides.</remarks>
internal static class SeriesResistorWay
{
    public static Way Of(WayBench bench)
    {
        var (f, half) = (bench.Facts, bench.Half);
        var limit = f.LimitRangeV.Most;
        var roomV = limit - half.FullV;
        var freeOhm = Math.Max(0, roomV / half.SetA);
        var ohm = limit > half.HalfV ? (limit - half.HalfV) / half.HalfA : half.HalfV / half.HalfA;
        var circuit = new WayCircuit(bench.Output(half.SetA), bench.Emitter with { SeriesOhm = ohm }, f.OutputF);
        var lost = half.SetA * half.SetA * freeOhm;
        var hz = bench.TripHz(half.SetA - half.HalfA, f.OutputRangeF.Most);
        var lead =
            roomV > 0
                ? WayBench.Text(
                    $"The driver keeps its {half.SetA:0.##} A through any resistor: up to {freeOhm:0.#} ohm{(f.KnownLimitV is null ? " at the most" : "")} it only burns up to {lost:0.#} W and dims nothing"
                )
                : WayBench.Text(
                    $"No resistor fits between the emitter's {half.FullV:0.#} V and the driver's limit of {f.LimitText}"
                );
        string[] stresses =
        [
            WayBench.Text($"resistor: {half.HalfA * half.HalfA * ohm:0.#} W at half of the light with {ohm:0.#} ohm"),
            WayBench.Text($"driver: output at {f.LimitMostText} instead of {half.FullV:0.#} V"),
        ];
        var words = f.Over switch
        {
            OverVoltage.Clamps when f.LimitRangeV.Least > half.HalfV => Clamped(bench, ohm, lead, stresses),
            OverVoltage.Clamps => new(
                Verdict.DoesNotWork,
                WayBench.Text(
                    $"The driver's limit of {f.LimitText} leaves no room over the emitter's {half.HalfV:0.#} V at half of the light."
                ),
                Told.No,
                Told.No,
                Told.No,
                stresses
            ),
            OverVoltage.Trips => new(
                Verdict.DoesNotWork,
                lead
                    + (
                        f.RestartS is null
                            ? WayBench.Text($", beyond that it trips at {f.LimitText} and the light is gone or blinks.")
                            : WayBench.Text($", beyond that it trips at {f.LimitText} and blinks {WayBench.Rate(hz)}.")
                    ),
                Told.No,
                bench.Retries,
                bench.Retries,
                stresses,
                hz
            ),
            _ => new(
                Verdict.AskFirst,
                lead
                    + WayBench.Text(
                        $", beyond that it meets its limit of {f.LimitText}, where it dims if it clamps and blinks or goes dark if it trips."
                    ),
                Told.No,
                Told.Unknown,
                Told.Unknown,
                stresses
            ),
        };
        return bench.Judged(WayKind.SeriesResistor, circuit, words, WaySafety.OutputStops(f), opensDriver: false);
    }

    private static WayWords Clamped(WayBench bench, double ohm, string lead, string[] stresses)
    {
        var f = bench.Facts;
        var moves = Moves(bench, ohm);
        var held = Math.Abs(moves) <= WayExamples.Held;
        return new(
            Verdict.WithDrawback,
            lead
                + WayBench.Text(
                    $"; from there it dims on the driver's limit of {f.LimitText}, half of the light at {(f.KnownLimitV is null ? "up to " : "")}{ohm:0.#} ohm with {(f.LimitRangeV.Most - bench.Half.HalfV) * bench.Half.HalfA:0.#} W of heat, and the current moves by {moves * 100:0} % from a cold to a hot emitter."
                ),
            held ? Told.Yes : Told.No,
            Told.No,
            Told.No,
            stresses
        );
    }

    /// <summary>Change of the emitter's current from cold to hot at the clamp, as a share of the warm one.</summary>
    private static double Moves(WayBench bench, double ohm)
    {
        var f = bench.Facts;
        double At(double kelvin) =>
            Math.Min(f.SetA, (bench.Emitter with { JunctionK = kelvin, SeriesOhm = ohm }).EmitterA(f.LimitRangeV.Most));
        return (At(f.HotK) - At(f.ColdK)) / Math.Max(At(f.WarmK), 1e-9);
    }
}
