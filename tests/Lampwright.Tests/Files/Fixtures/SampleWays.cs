using Lampwright.Evaluation.Answers;
using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Files.Fixtures;

/// <summary>Two ways of dimming put together by hand: one that works, one that hiccups and gives no steady light.</summary>
internal static class SampleWays
{
    public static IReadOnlyList<WayAnswer> All { get; } = [Chain(), Behind()];

    private static EmitterModel Emitter =>
        EmitterFit.From(new([new(0.5, 33.5, 2600), new(1.75, 36, 8200)], 298.15, Path: "emitter.main")).Model;

    private static WayAnswer Chain()
    {
        var circuit = new WayCircuit(
            new DriverOutput(1.75, 20, 42, OverVoltage.Clamps, UnderVoltage.Hiccups, 0.5),
            new EmitterLine(Emitter, 338.15),
            470e-6
        );
        return new()
        {
            IsChosen = true,
            LeastShare = SampleLight.About(0.2),
            MostShare = SampleLight.About(1),
            LeastA = SampleLight.About(0.3),
            MostA = SampleLight.About(1.7),
            EfficiencyAtHalf = SampleLight.About(0.86),
            HeatAtHalfW = SampleLight.About(4.5),
            AddedHeatAtHalfW = SampleLight.About(0.2),
            Way = new()
            {
                Kind = WayKind.SteppedChain,
                Name = "By-passed resistors in the sense path",
                Regulates = Told.Yes,
                Blinks = Told.No,
                Hiccups = Told.No,
                LightShare = new(0.2, 1),
                CurrentA = new(0.3, 1.75),
                EfficiencyAtHalf = 0.86,
                HeatAtHalfW = 4.5,
                AddedHeatAtHalfW = 0.2,
                Stresses = [],
                OpensDriver = true,
                Safety = ["Isolated output, measured"],
                Stops = [],
                Verdict = Verdict.Works,
                Reason = "The driver holds each current itself: 0.3 A to 1.75 A.",
                Picture = new(circuit, [new(35.6, 1.75, true, "holds the current")]),
                Circuit = circuit,
            },
        };
    }

    private static WayAnswer Behind()
    {
        var circuit = new WayCircuit(
            new DriverOutput(1.75, 20, 42, OverVoltage.Trips, UnderVoltage.Hiccups, 0.5),
            new ConverterLine(30, 9, 8.2, 0.8),
            470e-6
        );
        return new()
        {
            IsChosen = false,
            Way = new()
            {
                Kind = WayKind.ConverterBehind,
                Name = "Step-down converter behind the driver",
                Regulates = Told.No,
                Blinks = Told.Yes,
                Hiccups = Told.Yes,
                HiccupHz = new(1.2, 2.4),
                Stresses = ["driver's output capacitor at 42 V"],
                OpensDriver = false,
                Safety = [],
                Stops = ["STP002"],
                Verdict = Verdict.DoesNotWork,
                Reason = "The crossing at 17.1 V is not stable, so the voltage runs to 42 V and trips.",
                Picture = new(circuit, [new(17.1, 1.75, false, "runs away")]),
                Circuit = circuit,
            },
        };
    }
}
