namespace Lampwright.Steps.Ways;

/// <summary>The ways that change the sense resistance: the driver itself gives less, its efficiency stays.</summary>
internal static class SenseWays
{
    private static readonly string Voided = "the driver's approval: its board is changed";

    public static Way Of(WayBench bench, WayKind kind)
    {
        var f = bench.Facts;
        var stops = WaySafety.SenseStops(f, kind == WayKind.SelectorOpening);

        // Half of the light, or what comes nearest to it within the reach.
        var amps = bench.Half.HalfA;
        if (bench.Numbers(kind).CurrentA is { } reach)
        {
            amps = Math.Clamp(amps, reach.Least, reach.Most);
        }

        return bench.Judged(kind, bench.Plain(amps), Words(bench, kind), stops, opensDriver: true);
    }

    private static WayWords Words(WayBench bench, WayKind kind)
    {
        var f = bench.Facts;
        var numbers = bench.Numbers(kind);
        if (kind == WayKind.SelectorOpening)
        {
            var most = f.EmitterMostA is { } m ? WayBench.Text($" into an emitter that takes {m:0.##} A") : "";
            return new(
                Verdict.Stop,
                WayBench.Text(
                    $"Between two positions the sense loop is open, the driver sees no current and pushes up to {f.LimitMostText}{most} until the next contact closes."
                ),
                Told.No,
                Told.Yes,
                Told.No,
                [
                    WayBench.Text(
                        $"emitter: whatever current the driver can push at {f.LimitMostText}, at every turn of the knob"
                    ),
                ]
            );
        }

        if (numbers.CurrentA is not { } amps || numbers.LightShare is not { } share)
        {
            return new(
                Verdict.DoesNotWork,
                WayBench.Text(
                    $"No current suits all: the driver holds from {bench.Reach.LeastA(bench.Draw, out _):0.##} A, and emitter, rating and window allow {bench.Reach.MostA(bench.Draw):0.##} A at most."
                ),
                Told.No,
                Told.Unknown,
                Told.Unknown,
                [Voided]
            );
        }

        var lead = WayBench.Text(
            $"The driver itself then gives {amps.Least:0.##} A to {amps.Most:0.##} A, {share.Least * 100:0} % to {share.Most * 100:0} % of the light, at its own {f.Efficiency * 100:0} %"
        );
        var (verdict, tail) = Particular(bench, kind, amps);
        return new(
            verdict,
            lead + tail + Bound(bench) + ".",
            verdict == Verdict.AskFirst ? Told.Unknown : Told.Yes,
            verdict == Verdict.AskFirst ? Told.Unknown : Told.No,
            verdict == Verdict.AskFirst ? Told.Unknown : Told.No,
            Stresses(bench, kind)
        );
    }

    private static (Verdict Verdict, string Tail) Particular(WayBench bench, WayKind kind, Extent amps)
    {
        var reach = bench.Reach;
        if (reach.Driver is not { } driver)
        {
            return (Verdict.AskFirst, ", but the sense threshold is not known: read the marks or measure first");
        }

        if (reach.Threshold.Likelihood == ThresholdLikelihood.Implausible)
        {
            return (
                Verdict.AskFirst,
                WayBench.Text(
                    $", but {reach.Threshold.VoltageV * 1000:0.#} mV is hardly a sense threshold: a part was missed or misread"
                )
            );
        }

        if (bench.Facts.Spec.Driver.Sense.Control == SenseControl.Primary)
        {
            return (
                Verdict.AskFirst,
                ", but the controller holds the primary current, from which the output bends away: measure first"
            );
        }

        var halfOhm = driver.SenseOhm(bench.Half.HalfA);
        var fullOhm = driver.SenseOhm(amps.Most);
        switch (kind)
        {
            case WayKind.FixedSense:
                return (
                    Verdict.WithDrawback,
                    WayBench.Text($", one light only ({halfOhm:0.###} ohm for half), and opened again to change it")
                );
            case WayKind.SteppedChain:
                return (
                    Verdict.Works,
                    WayBench.Text(
                        $", {fullOhm:0.###} ohm to {driver.SenseOhm(amps.Least):0.###} ohm in all, and whatever a switch does the loop never opens"
                    )
                );
            case WayKind.ParallelBranches:
                var floorA = bench.Reach.Threshold.VoltageV!.Value / WayExamples.BranchFloorOhm;
                return (
                    Verdict.Works,
                    WayBench.Text(
                        $", a contact that fails only dims, and leads and contacts of {WayExamples.BranchFloorOhm * 1000:0} mohm (an example) cap the branches at {floorA:0.#} A together"
                    )
                );
            default:
                var overlap = Overlap(bench, amps);
                return (
                    overlap > reach.MostA(bench.Draw) * (1 + 1e-6) ? Verdict.WithDrawback : Verdict.Works,
                    WayBench.Text($", and while two positions touch it gives up to {overlap:0.##} A")
                );
        }
    }

    // The chosen selector's own overlap; otherwise the brightest position, whose part alone stays in the loop: beside it nothing adds.
    private static double Overlap(WayBench bench, Extent amps) =>
        bench.Reach.IsChosen(WayKind.SelectorShorting) && bench.Reach.OverlapA is { } chosen ? chosen : amps.Most;

    private static string Bound(WayBench bench)
    {
        var least = bench.Reach.LeastA(bench.Draw, out var bound);
        return bound switch
        {
            SenseBound.Label => "",
            SenseBound.Ripple => WayBench.Text($"; under {least:0.##} A the inductor runs dry and the law ends"),
            SenseBound.Window => WayBench.Text($"; under {least:0.##} A the hot emitter leaves the output window"),
            _ => WayBench.Text($"; its least current is not known, {least:0.##} A is taken"),
        };
    }

    private static string[] Stresses(WayBench bench, WayKind kind)
    {
        var f = bench.Facts;
        var most = bench.Numbers(kind).CurrentA!.Value.Most;
        return bench.Reach.Threshold.VoltageV is { } v
            ?
            [
                WayBench.Text($"sense resistors: {v * most:0.00} W at {most:0.##} A, {v * 1000:0} mV across them"),
                WayBench.Text($"noise and contacts: 10 mohm more is {0.01 * most / v * 100:0.#} % at {most:0.##} A"),
                Voided,
            ]
            : [WayBench.Text($"sense resistors: not known without the threshold, at {f.SetA:0.##} A"), Voided];
    }
}
