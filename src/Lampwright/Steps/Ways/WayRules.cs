using Lampwright.Findings;

namespace Lampwright.Steps.Ways;

/// <summary>The rules about what the comparison of ways of dimming is told; each has a paragraph in docs/findings.md.</summary>
public static class WayRules
{
    private static readonly string Practice = "common practice, no source";

    /// <summary>Supply under the driver's least input.</summary>
    public static readonly Rule SupplyTooLow = new(
        "STP026",
        "Supply below the driver's least input",
        Severity.Stop,
        "Take a supply of more voltage, shorter or thicker lines, or a driver for this supply.",
        "the driver's label; drop in the line: Kirchhoff"
    );

    /// <summary>Supply over the driver's greatest input.</summary>
    public static readonly Rule SupplyTooHigh = new(
        "STP027",
        "Supply above the driver's greatest input",
        Severity.Stop,
        "Take a driver for this supply; its input parts do not stand more than the label says.",
        "the driver's label"
    );

    /// <summary>Lock-out that contradicts itself, or its window.</summary>
    public static readonly Rule LockOutContradicts = new(
        "STP028",
        "Start and stop of the driver's input contradict",
        Severity.Warn,
        "Read the data sheet again: an input starts at a higher voltage than it stops, both under its supply.",
        "hysteresis of an under-voltage lock-out; " + Practice
    );

    /// <summary>Limits of the output that contradict each other.</summary>
    public static readonly Rule OutputContradicts = new(
        "STP029",
        "Limits of the driver's output contradict each other",
        Severity.Warn,
        "Read the label again: the window goes from least to most, and its protection acts above it.",
        Practice
    );

    /// <summary>Power factor that none has.</summary>
    public static readonly Rule PowerFactorOutOfRange = new(
        "STP030",
        "The power factor is out of range",
        Severity.Warn,
        "Give a number above 0 and up to 1 for alternating current, as on the label.",
        "definition: power over volts times amperes"
    );

    /// <summary>Dimmed to half, the emitter leaves the window.</summary>
    public static readonly Rule HalfLeavesWindow = new(
        "STP031",
        "Dimmed to half, the emitter leaves the driver's output window",
        Severity.Warn,
        "Take a driver whose window begins lower, or an emitter of more voltage: dimming brings the voltage down.",
        "the driver's label"
    );

    /// <summary>All rules of the comparison.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [SupplyTooLow, SupplyTooHigh, LockOutContradicts, OutputContradicts, PowerFactorOutOfRange, HalfLeavesWindow];

    /// <summary>All findings for what was told, in the order of the rules.</summary>
    internal static IReadOnlyList<Finding> Judge(WayBench bench)
    {
        var findings = new List<Finding>();
        Supply(bench, findings);
        LockOut(bench.Facts, findings);
        Output(bench.Facts, findings);
        PowerFactor(bench.Facts, findings);
        Window(bench, findings);
        return findings;
    }

    private static void Supply(WayBench bench, List<Finding> findings)
    {
        var f = bench.Facts;
        if (f.KnownSupplyV is not { } openV || f.Spec.Supply is not { } supply)
        {
            return;
        }

        var drawn = bench.Half.SetA * bench.Half.FullV / f.Efficiency / f.PowerFactor;
        var reached = ConstantPowerInput.Voltages(openV, f.SupplyOhm, drawn);
        var line = f.SupplyOhm > 0 ? WayBench.Text($" behind {f.SupplyOhm:0.##} ohm") : "";
        if (reached is not var (inputV, _))
        {
            var most = ConstantPowerInput.MostW(openV, f.SupplyOhm);
            findings.Add(
                SupplyTooLow.At(
                    supply.Path,
                    WayBench.Text(
                        $"{openV:0.#} V{line} give {most:0.#} W at most; the driver draws {drawn:0.#} {Unit(f)}."
                    ),
                    WayBench.Text($"{most:0.#} W"),
                    WayBench.Text($"{drawn:0.#} {Unit(f)}")
                )
            );
        }
        else if ((f.InputLeastV ?? f.InputOffV) is { } least && inputV < least)
        {
            findings.Add(
                SupplyTooLow.At(
                    supply.Path,
                    WayBench.Text(
                        $"{openV:0.#} V{line} come to {inputV:0.#} V at the driver, which needs {least:0.#} V."
                    ),
                    WayBench.Text($"{inputV:0.0} V"),
                    WayBench.Text($"{least:0.0} V")
                )
            );
        }

        if (WayFacts.Sound(f.Spec.Surroundings.InputMostV) is { } top && openV > top)
        {
            findings.Add(
                SupplyTooHigh.At(
                    supply.Path,
                    WayBench.Text($"The supply has {openV:0.#} V; the driver takes {top:0.#} V."),
                    WayBench.Text($"{openV:0.0} V"),
                    WayBench.Text($"{top:0.0} V")
                )
            );
        }
    }

    private static void LockOut(WayFacts f, List<Finding> findings)
    {
        var (on, off) = (f.InputOnV, f.InputOffV);
        if (off >= on)
        {
            findings.Add(
                LockOutContradicts.At(
                    f.Spec.Driver.Path + ".lockout",
                    WayBench.Text($"The input starts at {on:0.##} V and stops at {off:0.##} V, which is not lower."),
                    WayBench.Text($"{off:0.00} V"),
                    WayBench.Text($"{on:0.00} V")
                )
            );
        }
        else if (f.KnownSupplyV is { } volts && on >= volts)
        {
            findings.Add(
                LockOutContradicts.At(
                    f.Spec.Driver.Path + ".lockout",
                    WayBench.Text(
                        $"The input starts at {on:0.##} V; the supply has {volts:0.##} V and never gets there."
                    ),
                    WayBench.Text($"{on:0.00} V"),
                    WayBench.Text($"{volts:0.00} V")
                )
            );
        }
        else if (WayFacts.Sound(f.Spec.Surroundings.InputMostV) is { } most && Math.Max(on ?? 0, off ?? 0) > most)
        {
            findings.Add(
                LockOutContradicts.At(
                    f.Spec.Driver.Path + ".lockout",
                    WayBench.Text(
                        $"The input starts or stops at {Math.Max(on ?? 0, off ?? 0):0.##} V, over the {most:0.##} V it takes."
                    ),
                    WayBench.Text($"{Math.Max(on ?? 0, off ?? 0):0.00} V"),
                    WayBench.Text($"{most:0.00} V")
                )
            );
        }
    }

    private static void Output(WayFacts f, List<Finding> findings)
    {
        var path = f.Spec.Driver.Path;
        if (f.WindowLeastV >= f.WindowMostV)
        {
            findings.Add(
                OutputContradicts.At(
                    path + ".window",
                    WayBench.Text(
                        $"The window goes from {f.WindowLeastV:0.##} V to {f.WindowMostV:0.##} V, which is no window."
                    ),
                    WayBench.Text($"{f.WindowMostV:0.00} V"),
                    WayBench.Text($"{f.WindowLeastV:0.00} V")
                )
            );
        }

        var limit = WayFacts.Sound(f.Spec.Driver.OverVoltageV);
        if (limit < f.WindowMostV || (f.WindowMostV is null && limit <= f.WindowLeastV))
        {
            var where = limit <= f.WindowLeastV ? "under" : "inside";
            findings.Add(
                OutputContradicts.At(
                    path + ".over",
                    WayBench.Text(
                        $"The protection acts at {limit:0.##} V, {where} the window of {f.WindowLeastV ?? 0:0.##} V to {f.WindowMostV ?? double.PositiveInfinity:0.##} V."
                    ),
                    WayBench.Text($"{limit:0.00} V"),
                    WayBench.Text($"{f.WindowMostV ?? f.WindowLeastV:0.00} V")
                )
            );
        }

        if (f.LeastA > f.Spec.Driver.RatedA)
        {
            findings.Add(
                OutputContradicts.At(
                    path + ".current",
                    WayBench.Text(
                        $"The driver holds {f.LeastA:0.###} A at least and is rated {f.Spec.Driver.RatedA:0.###} A."
                    ),
                    WayBench.Text($"{f.LeastA:0.000} A"),
                    WayBench.Text($"{f.Spec.Driver.RatedA:0.000} A")
                )
            );
        }
    }

    private static void PowerFactor(WayFacts f, List<Finding> findings)
    {
        if (f.Spec.Surroundings.PowerFactor is { } factor && f.KnownPowerFactor is null)
        {
            findings.Add(
                PowerFactorOutOfRange.At(
                    f.Spec.Driver.Path + ".power_factor",
                    double.IsNaN(factor)
                        ? "The power factor is not a number."
                        : WayBench.Text($"A power factor of {factor:0.###} is outside of 0.05 to 1."),
                    double.IsNaN(factor) ? "" : WayBench.Text($"{factor:0.###}"),
                    "0.05 to 1"
                )
            );
        }
    }

    // With a chain its own positions are held against the window (STP011); without one, half of the light is.
    private static void Window(WayBench bench, List<Finding> findings)
    {
        var f = bench.Facts;
        if (f.Spec.Chain is not null || f.WindowLeastV is not { } least)
        {
            return;
        }

        var full = f.Model.VoltageV(f.SetA, f.HotK);
        var half = f.Model.VoltageV(bench.Half.HalfA, f.HotK);
        if (full >= least && half < least)
        {
            var amps = EmitterCurve.CurrentA(f.Model, least, f.HotK, f.SetA);
            findings.Add(
                HalfLeavesWindow.At(
                    f.Spec.Driver.Path + ".window",
                    WayBench.Text(
                        $"Hot and at half of its light the emitter falls to {half:0.0} V; the driver needs {least:0.0} V and holds down to {amps:0.##} A."
                    ),
                    WayBench.Text($"{half:0.0} V"),
                    WayBench.Text($"{least:0.0} V")
                )
            );
        }
    }

    private static string Unit(WayFacts f) => f.Alternating ? "VA" : "W";
}
