using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Findings;
using Lampwright.Quantities;

namespace Lampwright.Tests.Files.Fixtures;

/// <summary>
/// An evaluation put together by hand, so that what is written can be tested without computing anything: every station answers, with
/// numbers that look like a light but come from plain sums.
/// </summary>
internal static class SampleLight
{
    public static readonly Rule Hot = new(
        "HEA901",
        "A junction at its limit",
        Severity.Warn,
        "Take a larger sink or less current.",
        "made up for this test"
    );

    public static readonly Rule Live = new(
        "STP901",
        "Sense side unknown",
        Severity.Stop,
        "Find out which side the sense part is on before a wire leaves the driver.",
        "made up for this test",
        ProtectsPeople: true
    );

    public static Predicted About(double value, double share = 0.06) =>
        new(value, value - Math.Abs(value * share), value + Math.Abs(value * share));

    public static LightEvaluation Evaluation(int switches = 4) =>
        new()
        {
            Title = "Bench light <b>of a test</b>",
            Draws = 512,
            Steps = SampleChain.With(Steps(switches)) with { Chain = SampleBestChain.Answer },
            Ways = SampleWays.All,
            Board = SampleBoard.Answer,
            Heat = Heat(switches),
            Light = Light(),
            Metal = new([SampleParts.Tray(), SampleParts.Plate(), SampleParts.Long()]),
            FitUp = FitUp(),
            Balance = Balance(),
            Readings = Readings(),
            Findings =
            [
                Live.At(
                    "driver.main.sense.side",
                    "Nobody has looked which side the sense part is on.",
                    "unknown",
                    "secondary"
                ),
                Hot.At("sink.main", "The junction reaches 118 °C in the hottest air.", "118 °C", "120 °C", "hot") with
                {
                    Place = new("tray", "face", new(0.01, 0.02), new(0.03, 0.02)),
                },
            ],
            Influences = [new("junction, hot, brightest", "interface.main.thickness", 0.61, 1)],
        };

    public static LightDesign Design(string paper = "A4", string length = "mm", string temperature = "degC") =>
        new()
        {
            Title = "Bench light <b>of a test</b>",
            Show = new(length, temperature, paper),
            Emitters = [new("main")],
            Drivers = [new("main")],
            Fans = [new("main") { RunAt = Value.Exact(10) }],
            Steps = new() { Switches = 4 },
            Subject = new() { Distance = Value.Exact(0.8) },
            Parts = [new("tray"), new("plate"), new("long")],
            Joints = [new("fan") { Marked = Marking.ByTemplate }],
            Tilts = [new("main")],
        };

    private static IEnumerable<string> Positions(int switches) =>
        Enumerable
            .Range(0, 1 << switches)
            .Select(i => Convert.ToString((1 << switches) - 1 - i, 2).PadLeft(switches, '0'));

    private static StepsAnswer Steps(int switches)
    {
        var chain = Enumerable.Range(0, switches).Select(i => 0.1 * Math.Pow(2, i)).ToList();
        Combination Position(string closed)
        {
            var ohm = 0.18 + chain.Where((_, i) => closed[i] == '0').Sum();
            var amps = 0.306 / ohm;
            var lux = 4200 * amps;
            return new()
            {
                Switches = closed,
                ResistanceOhm = About(ohm, 0.03),
                CurrentA = About(amps, 0.04),
                VoltageV = About(33 + (2 * amps), 0.02),
                EmitterW = About(amps * (33 + (2 * amps))),
                FluxLm = About(4700 * amps),
                FluxOutLm = About(2300 * amps),
                LuxAtSubject = About(lux, 0.12),
                Stops = About(Math.Log2(amps / 1.7), 0.02),
                Ev = About(Math.Log2(lux / 2.5), 0.01),
                Aperture = About(Math.Sqrt(lux / 250 / 60 * 100), 0.05),
                JunctionC = About(25 + (40 * amps)),
                JunctionHotC = About(38 + (44 * amps)),
                JunctionFanStoppedC = About(40 + (75 * amps)),
                DriverLossW = About(4 * amps),
                InputW = About(41 * amps),
                ResistorsW =
                [
                    About(amps * amps * 0.18),
                    .. chain.Select((r, i) => About(closed[i] == '0' ? amps * amps * r : 0)),
                ],
                CurrentMarginA = About(2.0 - amps),
                JunctionMarginK = new(120 - (38 + (44 * amps)), 120 - (42 + (44 * amps)), 120 - (34 + (44 * amps))),
            };
        }

        return new()
        {
            SenseThresholdV = About(0.306, 0.03),
            ThresholdIsPlausible = true,
            ChosenBy = "given",
            Parts =
            [
                new("R0", 0.18, 3, About(0.52), About(2.6), About(71)),
                .. chain.Select(
                    (r, i) =>
                        new ChainPart($"R{i + 1}", r, 3, About(0.3), About(2.6), About(60)) with
                        {
                            Joined = i == 0 ? "series" : "",
                            Pair =
                                i > 0
                                    ? []
                                    :
                                    [
                                        new("R1a", r / 2, 3, About(0.15), About(2.6), About(55)),
                                        new("R1b", r / 2, 3, About(0.15), About(2.6), About(55)),
                                    ],
                        }
                ),
            ],
            Combinations = [.. Positions(switches).Select(Position)],
            Targets = [new("1.70 A", About(1.7), new string('1', switches), new(0.01, -0.1, 0.12))],
            LeadOhm = About(0.016),
            Arrangement = "series chain",
        };
    }

    private static HeatAnswer Heat(int switches)
    {
        HeatScene Scene(string name, double air, double slope, bool runs) =>
            new(
                name,
                About(air, 0.1),
                runs,
                About(runs ? 31 : 0),
                About(runs ? 14 : 0),
                About(slope / 60),
                [
                    .. Steps(switches)
                        .Combinations.Select(c => new HeatPoint
                        {
                            Switches = c.Switches,
                            HeatW = About(c.EmitterW.Value * 0.65),
                            JunctionC = About(air + (slope * c.CurrentA.Value)),
                            CaseC = About(air + (slope * 0.7 * c.CurrentA.Value)),
                            SinkC = About(air + (slope * 0.5 * c.CurrentA.Value)),
                            DriverC = About(air + 20),
                            CompartmentC = About(air + 10),
                            FrontC = About(air + 15),
                        }),
                ]
            );

        var flows = Enumerable.Range(0, 25).Select(i => 2.5 * i).ToList();
        return new()
        {
            Box = SampleBox.Box,
            Scenes = [Scene("normal", 22, 40, true), Scene("hot", 32, 46, true), Scene("fan stopped", 22, 70, false)],
            Staircase =
            [
                new("junction", "case", About(12.3), "given resistance"),
                new("case", "sink", About(4.1), "interface"),
                new("spot", "base", About(2.2), "spreading"),
                new("sink", "air", About(17.5), "fins in the fan's air"),
            ],
            Advice = new(() =>
                new(
                    [new("junction", "hot", "emitter.main.junction_max", 101, 125)],
                    [new("fan.main.run_at", "faster: 10 to 11 V", -3, -3, -1, 0, 2.1, 0.01, "noise, dust")]
                )
            ),
            Air = new(() =>
                new(
                    [new("part.tray.hole.air_in", About(8)), new("sink.main", About(5))],
                    10,
                    6,
                    [new("00", About(7), true, About(-8)), new("11", null, false, null)],
                    new(60, About(1.4), true, About(59), [new("part.tray.hole.air_in", 22, About(30))])
                )
            ),
            Fan = new(
                flows,
                [.. flows.Select(f => 30 * (1 - Math.Pow(f / 60, 2)))],
                [.. flows.Select(f => 14 * Math.Pow(f / 31, 1.7))]
            ),
            SinkFrom = "computed",
        };
    }

    private static LightAnswer Light() =>
        new()
        {
            Efficiency = About(0.49),
            ReflectorAbsorbs = About(0.28),
            DiffuserAbsorbs = About(0.1),
            FluxOutLm = About(3900),
            AxisCd = About(2600),
            LuxAtSubject = About(7140, 0.12),
            Evenness = About(0.83),
            InverseSquareError = About(0.04),
            Ev = About(11.5, 0.01),
            Aperture = About(6.9),
            PercentFlicker = About(0.08),
            ShutterResidual = About(0.01),
            CareDistanceM = About(0.3),
            ExitM = (0.28, 0.18),
            SubjectPicture =
            [
                .. Enumerable
                    .Range(-4, 9)
                    .Select(y =>
                        (IReadOnlyList<double>)
                            [.. Enumerable.Range(-3, 7).Select(x => 1 / Math.Pow(1 + (((x * x) + (y * y)) / 150.0), 2))]
                    ),
            ],
        };

    private static FitUpAnswer FitUp() =>
        new()
        {
            Placements =
            [
                new("part.tray", global::Lampwright.Geometry.Frame.World, null),
                new("fan.main", global::Lampwright.Geometry.Frame.World, new(0.092, 0.092, 0.025)),
            ],
            Unplaced = ["item.label"],
            Joints =
            [
                new(
                    "fan",
                    ["fan.main.mount", "tray.fan"],
                    [new(["fan.main.mount[1,1]", "tray.fan[1,1]"], About(0.31, 0.5), About(0.5, 0.2))],
                    "M4 × 35",
                    About(26.2),
                    About(5),
                    About(3.8)
                ),
                new("seam", ["tray.wall_l.start", "plate.left"], [], "", null, null, null),
            ],
            TotalMassKg = About(2.14),
            BalancePointMm = new(About(12), About(-3), About(48)),
            Masses = [new("part.tray", 1, About(0.62), true), new("item.label", 1, Predicted.Sharp(0), false)],
        };

    private static BalanceAnswer Balance() =>
        new(
            [
                new()
                {
                    Name = "main",
                    TiltingMassKg = About(1.9),
                    OffsetMm = About(52),
                    WorstMomentNm = About(0.97),
                    WorstAngleDeg = About(84),
                    HoldingNm = About(2.4, 0.4),
                    SafetyFactor = About(2.5, 0.4),
                    MomentPicture =
                    [
                        .. Enumerable.Range(0, 37).Select(i => 0.97 * Math.Sin(((10 * i) - 174) * Math.PI / 180)),
                    ],
                },
            ],
            [new("boom", About(3.1), About(41))],
            [new("column", About(14), About(180))]
        );

    private static ReadingsAnswer Readings() =>
        new(
            [
                new(2, "current", "1111", "", "A", 1.66, About(1.7), -0.0235, -0.59),
                new(3, "sound", "1111", "bench", "dB", 41, null, null, null),
            ],
            [new("sink.main.measured", "Resistance of the sink", "0.41 K/W ± 0.03 K/W", "readings 4 to 6")]
        );
}
