namespace Lampwright.Steps.Ways;

/// <summary>A switch that chops the emitter's current: behind the output capacitor the average stays; without it every cycle runs into the limit.</summary>
internal static class ChoppingWays
{
    private static readonly double NearShare = 0.03;

    /// <summary>Behind the driver's output capacitor, judged at half of the time on.</summary>
    public static Way Behind(WayBench bench)
    {
        var (f, half) = (bench.Facts, bench.Half);
        const double Duty = 0.5;
        var free = ChoppedCycle.Of(
            f.Model,
            f.WarmK,
            half.SetA,
            f.OutputF,
            double.PositiveInfinity,
            WayExamples.ChopHz,
            Duty
        );
        var cycle = ChoppedHalf.Cycle(bench.Draw, Duty);
        var meets = cycle.Limited;

        // The higher the limit, the higher the peaks; the smaller the capacitor, too.
        var worst = ChoppedHalf.Cycle(
            bench.Draw with
            {
                LimitV = f.LimitRangeV.Most,
                OutputF = f.OutputRangeF.Least,
            },
            Duty
        );

        // The emitter as a straight line leaves a few per cent of the climb open: so near the limit it is not to be told whether it cuts in.
        var near =
            free.MostV > (1 - NearShare) * f.LimitRangeV.Least && free.MostV < (1 + NearShare) * f.LimitRangeV.Most;
        var number = bench.Numbers(WayKind.ChoppedBehindCapacitor);
        var circuit = Circuit(bench, f.OutputF);
        var taken = f.KnownOutputF is null ? WayBench.Text($" ({f.OutputF * 1e6:0} µF taken)") : "";
        var peaks = f.EmitterMostA is { } most && worst.PeakA > most;
        var over = peaks ? WayBench.Text($", over the {f.EmitterMostA:0.##} A the emitter takes") : "";
        var hz = bench.TripHz(0.5 * half.SetA, f.OutputRangeF.Most, Climb(free, half.SetA, f));
        string[] stresses =
        [
            WayBench.Text($"emitter: peaks of {worst.PeakA:0.##} A instead of {half.SetA:0.##} A"),
            WayBench.Text(
                $"output capacitor: {worst.LeastV:0.#} V to {worst.MostV:0.#} V at {WayExamples.ChopHz:0} Hz"
            ),
        ];
        WayWords words;
        if (!meets)
        {
            words = new(
                Verdict.DoesNotWork,
                WayBench.Text(
                    $"The capacitor{taken} keeps what the switch holds back: at {WayExamples.ChopHz:0} Hz and half of the time on the mean stays {cycle.MeanA:0.##} A, in peaks of {worst.PeakA:0.##} A{over}."
                ),
                Told.No,
                Told.Yes,
                near && f.Over != OverVoltage.Clamps ? Told.Unknown : Told.No,
                stresses
            );
        }
        else if (f.Over == OverVoltage.Trips)
        {
            words = new(
                Verdict.DoesNotWork,
                WayBench.Text(
                    $"While the switch is open the capacitor{taken} climbs towards {free.MostV:0.#} V and the driver trips at {f.LimitText}: the light blinks {WayBench.Rate(hz)} or stays dark."
                ),
                Told.No,
                Told.Yes,
                near ? Told.Unknown : bench.Retries,
                stresses,
                hz
            );
        }
        else
        {
            var reaches = number.EfficiencyAtHalf is null
                ? "never comes down to half of the light"
                : "comes to half of the light only when on for less";
            var reason = WayBench.Text(
                $"Half of the time on, the capacitor{taken} makes up for it in peaks of {worst.PeakA:0.##} A{over} until the driver's limit of {f.LimitText} cuts in, so the mean only falls to {cycle.MeanA:0.##} A and it {reaches}"
            );
            words =
                f.Over == OverVoltage.Clamps
                    ? new(
                        peaks || number.EfficiencyAtHalf is null ? Verdict.DoesNotWork : Verdict.WithDrawback,
                        reason + ", flickering all the while.",
                        Told.No,
                        Told.Yes,
                        Told.No,
                        stresses
                    )
                    : new(
                        peaks ? Verdict.DoesNotWork : Verdict.AskFirst,
                        reason + ", if it clamps there and does not trip.",
                        Told.No,
                        Told.Yes,
                        Told.Unknown,
                        stresses
                    );
        }

        return bench.Judged(
            WayKind.ChoppedBehindCapacitor,
            circuit,
            words,
            WaySafety.OutputStops(f),
            opensDriver: false
        );
    }

    /// <summary>Without the output capacitor.</summary>
    public static Way Without(WayBench bench)
    {
        var (f, half) = (bench.Facts, bench.Half);
        var climb = WayExamples.LeftOverF * Math.Max(0, f.LimitRangeV.Most - half.FullV) / half.SetA;

        // A driver that comes back while the switch is closed runs on until it opens.
        var hz = bench.TripHz(half.SetA, WayExamples.LeftOverF, 0.5 / WayExamples.ChopHz);
        var lead = WayBench.Text(
            $"Each time the switch opens, the {half.SetA:0.##} A have nowhere to go and drive the output to {f.LimitText} within {climb * 1e6:0.#} µs ({WayExamples.LeftOverF * 1e6:0} µF left, an example)"
        );
        string[] stresses =
        [
            WayBench.Text(
                $"driver: its voltage limit of {f.LimitText} in every cycle, {WayExamples.ChopHz:0} times a second"
            ),
            f.Alternating
                ? WayBench.Text(
                    $"emitter: mains ripple no longer smoothed, up to {2 * half.SetA:0.##} A at its peak on a single-stage driver"
                )
                : "emitter: the driver's switching ripple no longer smoothed",
        ];
        var words = f.Over switch
        {
            OverVoltage.Clamps => new WayWords(
                Verdict.WithDrawback,
                lead
                    + WayBench.Text(
                        $"; as it clamps there, half of the time on is half of what it gives{bench.AtHalf(WayKind.ChoppedWithoutCapacitor)}, fully chopped at {WayExamples.ChopHz:0} Hz{(f.Alternating ? " and with the mains ripple in it" : "")}, which cameras see."
                    ),
                Told.Yes,
                Told.Yes,
                Told.No,
                stresses
            ),
            OverVoltage.Trips => new(
                Verdict.DoesNotWork,
                lead + WayBench.Text($", where it trips: the light blinks {WayBench.Rate(hz)} or stays dark."),
                Told.No,
                Told.Yes,
                bench.Retries,
                stresses,
                hz
            ),
            _ => new(
                Verdict.AskFirst,
                lead + ", where it dims if it clamps, and blinks or goes dark if it trips.",
                Told.Unknown,
                Told.Yes,
                Told.Unknown,
                stresses
            ),
        };
        return bench.Judged(
            WayKind.ChoppedWithoutCapacitor,
            Circuit(bench, WayExamples.LeftOverF),
            words,
            WaySafety.OutputStops(f),
            opensDriver: true
        );
    }

    // The distance from the free cycle shrinks by exp(−decay) with each period, until the limit is met.
    private static double Climb(in ChoppedCycle free, double setA, WayFacts f)
    {
        var left = (free.MostV - f.LimitRangeV.Most) / Math.Max(free.MostV - f.Model.VoltageV(setA, f.WarmK), 1e-9);
        var cycles = 2 + (left is > 0 and < 1 ? -Math.Log(left) / Math.Max(free.Decay, 1e-3) : 0);
        return cycles / WayExamples.ChopHz;
    }

    private static WayCircuit Circuit(WayBench bench, double farad) =>
        new(
            bench.Output(bench.Half.SetA),
            new ChoppedLine(bench.Emitter, WayExamples.ChopHz, 0.5, WayExamples.SwitchOhm),
            farad
        );
}
