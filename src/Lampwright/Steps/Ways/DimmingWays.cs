namespace Lampwright.Steps.Ways;

/// <summary>The driver's own dimming input, and another driver that has one.</summary>
internal static class DimmingWays
{
    /// <summary>1-10 V control: full at 10 V and above, least at 1 V and below (IEC 60929 annex E).</summary>
    private static readonly (double LeastV, double MostV) Control = (1, 10);

    private static readonly string[] Nothing = [];

    /// <summary>The driver's own dimming input.</summary>
    public static Way Input(WayBench bench)
    {
        var f = bench.Facts;
        var number = bench.Numbers(WayKind.DimmingInput);
        var words = f.Dimming switch
        {
            DimmingInput.None => new WayWords(
                Verdict.DoesNotWork,
                WayBench.Text($"This driver has no dimming input: it gives its {f.SetA:0.##} A and nothing else."),
                Told.No,
                Told.No,
                Told.No,
                Nothing
            ),
            DimmingInput.Unknown => new(
                Verdict.AskFirst,
                WayBench.Text(
                    $"Whether this driver of {f.SetA:0.##} A has a dimming input is not known: look for terminals or wires marked DIM, 1-10 V or PWM, and on its label."
                ),
                Told.Unknown,
                Told.Unknown,
                Told.Unknown,
                Nothing
            ),
            _ => Known(bench, number),
        };
        var has = f.Dimming is DimmingInput.OneToTenVolts or DimmingInput.Chopped or DimmingInput.Voltage;
        var half = number.EfficiencyAtHalf is not null;
        return bench.Judged(
            WayKind.DimmingInput,
            bench.Plain(has && half ? bench.Half.HalfA : bench.Half.SetA),
            words,
            has ? WaySafety.OutputStops(f) : WaySafety.NoStops,
            opensDriver: false
        );
    }

    /// <summary>Another driver, and what its label has to say.</summary>
    public static Way Other(WayBench bench)
    {
        var (f, half) = (bench.Facts, bench.Half);
        var lowV = f.Model.VoltageV(WayExamples.LeastShare * half.SetA, f.HotK);
        var reason = WayBench.Text(
            $"Nothing is opened and all of it is held: take one of {half.SetA:0.##} A and {half.SetA * f.ColdV:0} W with a window from {Math.Floor(lowV):0} V or less to {Math.Ceiling(f.ColdV):0} V or more, isolated with an extra-low output, and a dimming input (1-10 V or chopped) down to {WayExamples.LeastShare * 100:0} %."
        );
        return bench.Judged(
            WayKind.OtherDriver,
            bench.Plain(half.HalfA) with
            {
                Source = new DriverOutput(
                    half.HalfA,
                    Math.Floor(lowV),
                    1.1 * Math.Ceiling(f.ColdV),
                    OverVoltage.Clamps,
                    UnderVoltage.Unknown,
                    WayExamples.RestartS
                ),
            },
            new(Verdict.Works, reason, Told.Yes, Told.No, Told.No, Nothing),
            WaySafety.NoStops,
            opensDriver: false
        );
    }

    private static WayWords Known(WayBench bench, in WayNumber number)
    {
        var f = bench.Facts;
        var least = f.DimmingLeast ?? WayExamples.LeastShare;
        if (number.LightShare is not { } share)
        {
            return new(
                Verdict.DoesNotWork,
                WayBench.Text(
                    $"The driver gives nothing into this emitter: the {f.Model.VoltageV(f.SetA, f.WarmK):0.#} V it wants are far over the {f.GivesUpToV:0.#} V it is given."
                ),
                Told.No,
                Told.Unknown,
                Told.Unknown,
                Nothing
            );
        }

        var x = bench.Half.HalfA / bench.Half.SetA;
        var how = f.Dimming switch
        {
            DimmingInput.OneToTenVolts => WayBench.Text($"about {Volts(x, least):0.0} V of 1 V to 10 V"),
            DimmingInput.Chopped => WayBench.Text($"a signal that is on {x * 100:0} % of the time"),
            _ => WayBench.Text($"{x * 100:0} % of its control range"),
        };
        var taken = f.DimmingLeast is null
            ? WayBench.Text($" (least share not known, {least * 100:0} % of the current taken)")
            : "";
        var half = number.EfficiencyAtHalf is null
            ? "half of the light is under its least"
            : $"half of the light at {how}";
        var under = f.WindowLeastV is { } window && f.Model.VoltageV(Math.Max(least, x) * f.SetA, f.HotK) < window;
        if (under)
        {
            return new(
                Verdict.DoesNotWork,
                WayBench.Text(
                    $"At half of the light the hot emitter falls under the {f.WindowLeastV:0.#} V that the driver needs, whatever its dimming input says."
                ),
                Told.No,
                Told.Unknown,
                Told.Unknown,
                Nothing
            );
        }

        return new(
            number.EfficiencyAtHalf is null ? Verdict.WithDrawback : Verdict.Works,
            WayBench.Text(
                $"The driver was made for it: {share.Least * 100:0} % to {share.Most * 100:0} % of the light{taken}, {half}, at its own {f.Efficiency * 100:0} % and without opening it."
            ),
            Told.Yes,
            Told.No,
            Told.No,
            Nothing
        );
    }

    private static double Volts(double share, double least) =>
        Control.LeastV + ((Control.MostV - Control.LeastV) * Math.Clamp((share - least) / (1 - least), 0, 1));
}
