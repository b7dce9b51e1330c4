using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Web;

/// <summary>A handful of ways made up for the page, one of each verdict.</summary>
internal static class SampleWays
{
    private static readonly EmitterModel Emitter = EmitterFit
        .From(new([new(0.5, 33.5, 2600), new(1.75, 36, 8200)], 298.15, Path: "emitter.main"))
        .Model;

    private static readonly DriverOutput Driver = new(1.75, 24, 46, OverVoltage.Trips, UnderVoltage.Hiccups, 0.5);

    /// <summary>In the order they are compared, so the page has something to sort.</summary>
    public static IReadOnlyList<WayAnswer> All { get; } =
    [
        Of(
            WayKind.SupplyResistor,
            "Resistor in the supply line",
            Verdict.DoesNotWork,
            "The driver takes the power it needs: a resistor makes it draw more current until it drops out, and the light stays the same.",
            regulates: Told.No,
            circuit: new(new SupplyBehindResistance(230, 20), new ConverterLine(75, 90, 80, 1.75), 100e-6, 0, false)
        ),
        Of(
            WayKind.ConverterBehind,
            "Step-down converter behind the driver",
            Verdict.DoesNotWork,
            "The crossing at 17.1 V does not hold: the voltage falls under 8.2 V, the converter stops and starts again.",
            regulates: Told.No,
            blinks: Told.Yes,
            hz: new(20, 45),
            circuit: new(
                new DriverOutput(1.2, 24, 46, OverVoltage.Clamps, UnderVoltage.Hiccups, 0.5),
                new ConverterLine(30, 9, 8.2, 0.8),
                4700e-6
            ),
            crossing: new(25, 1.2, false, "runs away")
        ),
        Of(
            WayKind.SeriesResistor,
            "Resistor in series with the emitter",
            Verdict.DoesNotWork,
            "The driver raises its voltage and holds 1.75 A: no dimming, 9.2 W of heat in the resistor.",
            regulates: Told.Yes,
            light: (0.99, 1),
            efficiency: 0.72,
            heat: 17.3
        ),
        Of(
            WayKind.ShuntResistor,
            "Resistor across the emitter",
            Verdict.WithDrawback,
            "It takes 0.8 A past the emitter and turns it into 28 W of heat.",
            light: (0.5, 1),
            efficiency: 0.45,
            heat: 38
        ),
        Of(
            WayKind.SteppedChain,
            "By-passed resistors in the sense path",
            Verdict.Works,
            "The driver itself holds each current from 0.58 A to 1.75 A; what is added turns 0.2 W into heat.",
            light: (0.36, 1),
            efficiency: 0.87,
            heat: 4.4,
            opens: true,
            chosen: true
        ),
        Of(
            WayKind.ChoppedBehindCapacitor,
            "Chopping switch behind the output capacitor",
            Verdict.DoesNotWork,
            "The capacitor charges while the switch is open: each pulse starts at 6.4 A.",
            blinks: Told.Yes,
            light: (0.08, 1),
            circuit: new(Driver, new EmitterLine(Emitter, 338.15), 470e-6)
        ),
        Of(
            WayKind.SelectorOpening,
            "Rotary selector that opens between positions",
            Verdict.DoesNotWork,
            "Between positions the driver sees no emitter, trips at 46 V and tries again half a second later.",
            blinks: Told.Yes,
            hz: new(1.5, 2),
            circuit: new(Driver, new ConverterLine(20, 40, 10, 0.5), 470e-6)
        ),
        Of(
            WayKind.DimmingInput,
            "The driver's own dimming input",
            Verdict.AskFirst,
            "The file does not say whether this driver has one: look for a third pair of wires and its data sheet.",
            regulates: Told.Unknown,
            blinks: Told.Unknown
        ),
        Of(
            WayKind.FixedSense,
            "Another fixed sense resistance",
            Verdict.Stop,
            "It would work, but the sense part is not shown to be on the secondary side.",
            light: (0.36, 0.36),
            opens: true,
            stops: ["STP001"]
        ),
    ];

    private static WayAnswer Of(
        WayKind kind,
        string name,
        Verdict verdict,
        string reason,
        Told regulates = Told.Yes,
        Told blinks = Told.No,
        Extent? hz = null,
        (double Least, double Most)? light = null,
        double? efficiency = null,
        double? heat = null,
        bool opens = false,
        bool chosen = false,
        IReadOnlyList<string>? stops = null,
        WayCircuit? circuit = null,
        Crossing? crossing = null
    )
    {
        var run = circuit ?? new(Driver, new EmitterLine(Emitter, 338.15), 470e-6);
        return new()
        {
            IsChosen = chosen,
            LeastShare = light is { } l ? About(l.Least) : null,
            MostShare = light is { } m ? About(m.Most) : null,
            EfficiencyAtHalf = efficiency is { } e ? About(e) : null,
            HeatAtHalfW = heat is { } h ? About(h) : null,
            AddedHeatAtHalfW = heat is { } a ? About(a - 4) : null,
            Way = new()
            {
                Kind = kind,
                Name = name,
                Regulates = regulates,
                Blinks = blinks,
                Hiccups = hz is null ? Told.No : Told.Yes,
                HiccupHz = hz,
                LightShare = light is { } s ? new(s.Least, s.Most) : null,
                EfficiencyAtHalf = efficiency,
                HeatAtHalfW = heat,
                Stresses = verdict == Verdict.DoesNotWork ? ["output capacitor at 46 V <of> 50 V"] : [],
                OpensDriver = opens,
                Safety = opens ? ["An opened driver has lost its maker's approval."] : [],
                Stops = stops ?? [],
                Verdict = verdict,
                Reason = reason,
                Picture = new(run, [crossing ?? new(35.6, 1.75, true, "holds the current")]),
                Circuit = run,
            },
        };
    }

    private static Predicted About(double value) => new(value, value * 0.95, value * 1.05);
}
