namespace Lampwright.Steps.Ways;

/// <summary>A resistor across the emitter: the set current splits at the emitter's own voltage, and the split moves with its warmth.</summary>
/// <remarks>Iled = (I0 − Vd/Rsh)/(1 + Rd/Rsh) for a straight line; solved here with the emitter's own curve.</remarks>
internal static class ShuntResistorWay
{
    public static Way Of(WayBench bench)
    {
        var (f, half) = (bench.Facts, bench.Half);
        var ohm = half.HalfV / (half.SetA - half.HalfA);
        var circuit = new WayCircuit(bench.Output(half.SetA), bench.Emitter with { ShuntOhm = ohm }, f.OutputF);
        var heat = half.HalfV * (half.SetA - half.HalfA);
        var atHalf = Moves(bench, ohm);
        var lowA = WayExamples.LeastShare * half.SetA;
        var lowV = f.Model.VoltageV(lowA, f.WarmK);
        var atLow = Moves(bench, lowV / (half.SetA - lowA));
        var hotV = f.Model.VoltageV(half.HalfA, f.HotK);
        var openV = Math.Min(half.SetA * ohm, f.LimitRangeV.Most);
        string[] stresses =
        [
            WayBench.Text($"resistor: {heat:0.#} W at half of the light"),
            WayBench.Text($"resistor, should the emitter come off: {openV * openV / ohm:0.#} W at {openV:0.#} V"),
        ];
        var under = f.WindowLeastV is { } window && hotV < window;
        var over = half.FullV > f.LimitRangeV.Least;
        var held = Math.Abs(atHalf) <= WayExamples.Held;
        var words = under
            ? new WayWords(
                Verdict.DoesNotWork,
                WayBench.Text(
                    $"At half of the light the hot emitter falls to {hotV:0.#} V, under the {f.WindowLeastV:0.#} V that the driver needs, and the light {(f.Under == UnderVoltage.Hiccups ? "starts and stops" : f.Under == UnderVoltage.Stops ? "goes out" : "blinks or goes out")}."
                ),
                Told.No,
                f.Under == UnderVoltage.Stops ? Told.No : Told.Unknown,
                f.Under == UnderVoltage.Stops ? Told.No : Told.Unknown,
                stresses
            )
            : new(
                Verdict.WithDrawback,
                WayBench.Text(
                    $"It dims by burning the rest: half of the light with {ohm:0.#} ohm and {heat:0.#} W in the resistor{bench.AtHalf(WayKind.ShuntResistor)}, and from a cold to a hot emitter the current moves by {atHalf * 100:0} % there and by {atLow * 100:0} % at a tenth."
                ),
                over ? Told.Unknown
                    : held ? Told.Yes
                    : Told.No,
                over ? Told.Unknown : Told.No,
                over ? Told.Unknown : Told.No,
                stresses
            );
        return bench.Judged(WayKind.ShuntResistor, circuit, words, WaySafety.OutputStops(f), opensDriver: false);
    }

    /// <summary>Emitter current beside a shunt on a constant current, in amperes.</summary>
    /// <remarks>Falling difference I0 − V/Rsh − I over the current: one root, halved and cut by Newton's method on the emitter's curve.</remarks>
    /// <param name="model">The emitter's curve.</param>
    /// <param name="junctionK">Junction temperature in kelvin.</param>
    /// <param name="setA">Set current in amperes; above 0.</param>
    /// <param name="ohm">Resistance across the emitter, in ohm; above 0.</param>
    public static double EmitterA(in EmitterModel model, double junctionK, double setA, double ohm)
    {
        var (low, high) = (0.0, setA);
        var amps = 0.5 * setA;
        for (var pass = 0; pass < 60 && high - low > 1e-12 * setA; pass++)
        {
            var left = setA - (model.VoltageV(amps, junctionK) / ohm) - amps;
            (low, high) = left > 0 ? (amps, high) : (low, amps);
            var next = amps + (left / (1 + (model.DynamicResistanceOhm(amps) / ohm)));
            next = next > low && next < high ? next : 0.5 * (low + high);
            if (Math.Abs(next - amps) < 1e-12 * setA)
            {
                return next;
            }

            amps = next;
        }

        return amps;
    }

    private static double Moves(WayBench bench, double ohm)
    {
        var f = bench.Facts;
        var (cold, warm, hot) = (
            EmitterA(f.Model, f.ColdK, f.SetA, ohm),
            EmitterA(f.Model, f.WarmK, f.SetA, ohm),
            EmitterA(f.Model, f.HotK, f.SetA, ohm)
        );
        return (hot - cold) / Math.Max(warm, 1e-9);
    }
}
