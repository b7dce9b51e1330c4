using Lampwright.Findings;

namespace Lampwright.Steps.Ways;

/// <summary>What the comparison was told, with what is no usable number counted as not known.</summary>
internal sealed class WayFacts
{
    public WayFacts(WaysSpec spec)
    {
        Spec = spec;
        var (driver, around) = (spec.Driver, spec.Surroundings);
        Guard.Positive(driver.RatedA);
        BoardStops = Board.BoardStops.Of(driver);
        SetA =
            Sound(driver.Sense.MeasuredA) is { } m && m < 5 * driver.RatedA && m > driver.RatedA / 5
                ? m
                : driver.RatedA;
        LeastA = Sound(driver.LeastA);
        EmitterMostA = Sound(spec.EmitterMostA);
        WindowLeastV = Sound(driver.WindowLeastV);
        WindowMostV = Sound(driver.WindowMostV);
        Efficiency = double.IsFinite(driver.Efficiency) ? Math.Clamp(driver.Efficiency, 0.05, 1) : 0.85;
        WarmK = Kelvin(spec.WarmJunctionK, 338.15);
        ColdK = Math.Min(WarmK, Kelvin(spec.ColdJunctionK, 283.15));
        HotK = Math.Max(WarmK, Kelvin(spec.HotJunctionK, 373.15));

        // Shares of light do not hang on how much light there is: without a flux the bend of the default curve serves.
        Model = spec.Model.FluxRefLm > 0 ? spec.Model : spec.Model with { FluxRefLm = 1 };
        ColdV = Math.Max(Model.VoltageV(SetA, ColdK), 1e-3);
        KnownLimitV = Sound(driver.OverVoltageV);
        LimitRangeV =
            KnownLimitV is { } limit ? new(limit, limit)
            : WindowMostV is { } top ? Times(WayExamples.LimitOverWindow, top)
            : Times(WayExamples.LimitOverCold, ColdV);
        LimitV = 0.5 * (LimitRangeV.Least + LimitRangeV.Most);
        GivesUpToV = Math.Min(KnownLimitV ?? double.PositiveInfinity, WindowMostV ?? double.PositiveInfinity);
        RestartS = Sound(around.RestartS);
        RestartRangeS = RestartS is { } wait ? Spread(wait, around.RestartHalfS) : null;
        KnownOutputF = Sound(around.OutputCapacitorF);
        OutputF = KnownOutputF ?? WayExamples.OutputF;
        OutputRangeF = KnownOutputF is { } farad ? Spread(farad, around.OutputCapacitorHalfF) : new(OutputF, OutputF);
        Alternating = spec.Supply?.Alternating ?? true;
        KnownSupplyV = Sound(spec.Supply?.VoltageV);
        SupplyV = KnownSupplyV ?? WayExamples.MainsV;
        SupplyOhm = Sound(spec.Supply?.Ohm) ?? 0;
        KnownPowerFactor = around.PowerFactor is > 0.05 and <= 1 ? around.PowerFactor : null;
        PowerFactor = Alternating ? KnownPowerFactor ?? MainsPowerFactor.Of(SetA * ColdV / Efficiency) : 1;
        InputLeastV = Sound(around.InputLeastV);
        InputOnV = Sound(around.InputOnV);
        InputOffV = Sound(around.InputOffV);
        DimmingLeast = around.DimmingLeast is >= 0 and < 1 ? around.DimmingLeast : null;
    }

    public WaysSpec Spec { get; }

    /// <summary>The stops that stand against wires from this driver.</summary>
    public IReadOnlyList<Finding> BoardStops { get; }

    public EmitterModel Model { get; }

    public double SetA { get; }

    public double? LeastA { get; }

    public double? EmitterMostA { get; }

    public double? WindowLeastV { get; }

    public double? WindowMostV { get; }

    public double Efficiency { get; }

    public double WarmK { get; }

    public double ColdK { get; }

    public double HotK { get; }

    public double ColdV { get; }

    /// <summary>Voltage at which the protection acts, where it is told.</summary>
    public double? KnownLimitV { get; }

    /// <summary>Where it may act: as told, else an assumption over the window's top or over the cold emitter.</summary>
    public Extent LimitRangeV { get; }

    /// <summary>As told, else the middle of what is assumed.</summary>
    public double LimitV { get; }

    /// <summary>Voltage up to which the driver gives its current: the window's top, or the protection under it; infinite where neither is told.</summary>
    public double GivesUpToV { get; }

    /// <summary>The limit in words, told as an assumption where it is one.</summary>
    public string LimitText =>
        KnownLimitV is { } v
            ? WayBench.Text($"{v:0.#} V")
            : WayBench.Text($"{LimitRangeV.Least:0.#} V to {LimitRangeV.Most:0.#} V (assumed, not told)");

    /// <summary>The highest that it may be, in words.</summary>
    public string LimitMostText =>
        KnownLimitV is { } v ? WayBench.Text($"{v:0.#} V") : WayBench.Text($"up to {LimitRangeV.Most:0.#} V (assumed)");

    public OverVoltage Over => Spec.Driver.Over;

    public UnderVoltage Under => Spec.Driver.Under;

    public double? RestartS { get; }

    /// <summary>The same with its spread; null where it is not known.</summary>
    public Extent? RestartRangeS { get; }

    public double? KnownOutputF { get; }

    public double OutputF { get; }

    /// <summary>The same with its spread.</summary>
    public Extent OutputRangeF { get; }

    public bool Alternating { get; }

    public double? KnownSupplyV { get; }

    public double SupplyV { get; }

    public double SupplyOhm { get; }

    public double? KnownPowerFactor { get; }

    public double PowerFactor { get; }

    public double? InputLeastV { get; }

    public double? InputOnV { get; }

    public double? InputOffV { get; }

    public double? DimmingLeast { get; }

    public DimmingInput Dimming => Spec.Surroundings.Dimming;

    // What is no number above zero counts as not known.
    public static double? Sound(double? value) => value is > 0 and < 1e9 ? value : null;

    private static Extent Times(Extent share, double of) => new(share.Least * of, share.Most * of);

    private static Extent Spread(double value, double half)
    {
        var h = half > 0 ? Math.Min(half, 0.95 * value) : 0;
        return new(value - h, value + h);
    }

    private static double Kelvin(double value, double otherwise) => value is > 150 and < 700 ? value : otherwise;
}
