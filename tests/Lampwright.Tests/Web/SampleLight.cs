using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Findings;

namespace Lampwright.Tests.Web;

/// <summary>Answers made up for the pages: plausible to look at, computed from nothing.</summary>
internal static class SampleLight
{
    /// <summary>An evaluation of every station.</summary>
    public static LightEvaluation Of(double ambientC = 22, string title = "Herbarium copy light", bool bands = true) =>
        new()
        {
            Title = title,
            Draws = bands ? 512 : 0,
            Steps = Steps(ambientC, bands),
            Heat = Heat(ambientC, bands),
            Light = Light(bands),
            Metal = SampleParts.Metal,
            FitUp = SampleParts.FitUp,
            Balance = Balance(bands),
            Readings = Readings(bands),
            Findings = Findings(ambientC),
            Influences =
            [
                new("current, brightest", "driver.main.sense.resistance", 0.52, -1),
                new("current, brightest", "driver.main.current.rated", 0.31, 1),
                new("lux at the subject, brightest", "diffuser.front.transmittance", 0.48, 1),
                new("junction, hot, brightest", "heat.sink_fins", 0.44, 1),
                new("junction, hot, brightest", "interface.main.thickness", 0.21, 1),
            ],
        };

    private static Predicted P(double value, bool bands, double share = 0.05) =>
        bands
            ? new(value, value - (Math.Abs(value) * share), value + (Math.Abs(value) * share * 1.1))
            : Predicted.Sharp(value);

    private static StepsAnswer Steps(double ambientC, bool bands)
    {
        double[] chain = [0.10, 0.20, 0.39, 0.82];
        var all = new List<Combination>();
        for (var i = 15; i >= 0; i--)
        {
            var switches = Convert.ToString(i, 2).PadLeft(4, '0');
            var ohm = 0.165 + chain.Where((_, k) => switches[k] == '0').Sum();
            var amps = 0.287 / ohm;
            var volts = 33 + (2.4 * amps);
            var watts = amps * volts;
            var lumens = 4700 * amps * (1 - (0.03 * amps));
            var hot = ambientC + 10 + (watts * 0.98);
            all.Add(
                new()
                {
                    Switches = switches,
                    ResistanceOhm = P(ohm, bands, 0.02),
                    CurrentA = P(amps, bands, 0.04),
                    VoltageV = P(volts, bands, 0.02),
                    EmitterW = P(watts, bands),
                    FluxLm = P(lumens, bands, 0.08),
                    FluxOutLm = P(lumens * 0.46, bands, 0.12),
                    LuxAtSubject = P(lumens * 0.62, bands, 0.15),
                    Stops = P(Math.Log2(amps / 1.74), bands, 0.02),
                    Ev = P(Math.Log2(lumens * 0.62 / 2.5), bands, 0.02),
                    Aperture = P(Math.Sqrt(lumens * 0.62 / 2.5 / 60), bands),
                    JunctionC = P(hot - 10, bands, 0.06),
                    JunctionHotC = P(hot, bands, 0.06),
                    JunctionFanStoppedC = P(hot + (watts * 0.7), bands, 0.1),
                    DriverLossW = P(watts * 0.12, bands),
                    InputW = P(watts * 1.12, bands),
                    ResistorsW =
                    [
                        P(amps * amps * 0.165, bands),
                        .. chain.Select((r, k) => P(switches[k] == '0' ? amps * amps * r : 0, bands)),
                    ],
                    CurrentMarginA = P(2.0 - amps, bands),
                    JunctionMarginK = P(108 - hot, bands, 0.2),
                }
            );
        }

        return new()
        {
            SenseThresholdV = P(0.287, bands, 0.02),
            ThresholdIsPlausible = true,
            ChosenBy = "given",
            Parts =
            [
                .. new[] { 0.165 }
                    .Concat(chain)
                    .Select(
                        (r, k) => new ChainPart("R" + k, r, 3, P(0.5 / (k + 1), bands), P(2.6, bands), P(61, bands))
                    ),
            ],
            Combinations = all,
            LeadOhm = P(0.0168, bands),
            Arrangement = "series chain",
            Targets =
            [
                .. Enumerable
                    .Range(0, 5)
                    .Select(k => new TargetMatch(
                        $"{-0.5 * k:0.0} stops",
                        P(1.74 * Math.Pow(2, -0.5 * k), bands),
                        all[Math.Min(15, k * 3)].Switches,
                        P(0.08 - (0.05 * k), bands)
                    )),
            ],
        };
    }

    private static HeatAnswer Heat(double ambientC, bool bands)
    {
        var steps = Steps(ambientC, bands);
        HeatScene Scene(string name, double ambient, bool runs, double extra) =>
            new(
                name,
                P(ambient, bands, 0.03),
                runs,
                P(runs ? 31 : 0, bands),
                P(runs ? 19 : 0, bands),
                P(runs ? 0.41 : 1.2, bands),
                [
                    .. steps.Combinations.Select(c => new HeatPoint
                    {
                        Switches = c.Switches,
                        HeatW = P(c.EmitterW.Value * 0.7, bands),
                        JunctionC = P(ambient + (c.EmitterW.Value * (0.85 + extra)), bands),
                        CaseC = P(ambient + (c.EmitterW.Value * (0.62 + extra)), bands),
                        SinkC = P(ambient + (c.EmitterW.Value * (0.4 + extra)), bands),
                        DriverC = P(ambient + 22, bands),
                        CompartmentC = P(ambient + 9, bands),
                        FrontC = P(ambient + 6, bands),
                    }),
                ]
            );
        double[] flow = [.. Enumerable.Range(0, 21).Select(i => i * 2.5)];
        return new()
        {
            Scenes =
            [
                Scene("normal", ambientC, true, 0),
                Scene("hot", ambientC + 10, true, 0),
                Scene("fan stopped", ambientC, false, 0.7),
            ],
            Staircase =
            [
                new("junction", "case", P(14.2, bands), "data sheet"),
                new("case", "sink", P(6.1, bands), "interface"),
                new("sink under the emitter", "sink", P(3.4, bands), "spreading"),
                new("sink", "air", P(19.8, bands), "plate fins, forced"),
            ],
            Fan = new(
                flow,
                [.. flow.Select(f => Math.Max(0, 34 - (f * f * 0.0136)))],
                [.. flow.Select(f => f * f * 0.02)]
            ),
            SinkFrom = "computed",
        };
    }

    private static LightAnswer Light(bool bands) =>
        new()
        {
            Efficiency = P(0.46, bands),
            ReflectorAbsorbs = P(0.24, bands),
            DiffuserAbsorbs = P(0.12, bands),
            FluxOutLm = P(3600, bands),
            AxisCd = P(1400, bands),
            LuxAtSubject = P(1930, bands),
            Evenness = P(0.82, bands),
            InverseSquareError = P(0.061, bands),
            Ev = P(9.6, bands, 0.02),
            Aperture = P(3.6, bands),
            PercentFlicker = P(0.08, bands),
            ShutterResidual = P(0.011, bands),
            CareDistanceM = P(0.4, bands),
            ExitM = (0.28, 0.18),
            SubjectPicture =
            [
                .. Enumerable
                    .Range(0, 9)
                    .Select(r =>
                        (IReadOnlyList<double>)
                            [
                                .. Enumerable
                                    .Range(0, 13)
                                    .Select(c => 1 - (0.006 * (((r - 4) * (r - 4)) + ((c - 6) * (c - 6) * 0.5)))),
                            ]
                    ),
            ],
        };

    private static BalanceAnswer Balance(bool bands) =>
        new(
            [
                new()
                {
                    Name = "main",
                    TiltingMassKg = P(3.1, bands),
                    OffsetMm = P(42, bands),
                    WorstMomentNm = P(1.28, bands),
                    WorstAngleDeg = P(90, bands, 0.01),
                    HoldingNm = P(2.9, bands, 0.3),
                    SafetyFactor = P(2.3, bands, 0.3),
                    MomentPicture = [.. Enumerable.Range(-18, 37).Select(i => 1.28 * Math.Sin(i * Math.PI / 18))],
                },
            ],
            [new("column", P(1.2, bands), P(18, bands))],
            [new("table", P(19, bands), P(210, bands))]
        );

    private static ReadingsAnswer Readings(bool bands) =>
        new(
            [
                new(2, "current", "1111", "", "A", 1.71, P(1.74, bands), -0.017, -0.4),
                new(3, "lux", "1111", "", "lx", 2250, P(1930, bands, 0.15), 0.166, 1.2),
                new(4, "temperature", "1111", "sink", "°C", 47.5, P(46, bands), 0.03, 0.5),
                new(5, "noise", "1111", "", "dB", 31, null, null, null),
            ],
            [
                new(
                    "sink.main.measured",
                    "resistance of the sink",
                    "0.43 K/W ± 0.03 K/W",
                    "from line 4: sink at 47.5 °C with 25.5 W of heat"
                ),
            ]
        );

    private static IReadOnlyList<Finding> Findings(double ambientC)
    {
        var rule = new Rule(
            "HEA004",
            "Junction near its limit",
            Severity.Warn,
            "Give the sink more air, or drive it with less current.",
            "common practice, no source"
        );
        var note = new Rule(
            "STP010",
            "Default used",
            Severity.Note,
            "Write it into the file if it differs.",
            "common practice, no source"
        );
        var stop = new Rule(
            "STP002",
            "Output not isolated",
            Severity.Stop,
            "Use an isolated driver for wires that leave it.",
            "IEC 61347-1",
            true
        );
        var found = new List<Finding> { note.At("steps.contact", "Contact resistance is the default of 10 mΩ.") };
        if (ambientC > 25)
        {
            found.Insert(
                0,
                rule.At(
                    "place.ambient_max",
                    $"In the scene hot the junction reaches {ambientC + 70:0} °C.",
                    "112 °C",
                    "120 °C",
                    "hot"
                )
            );
        }

        if (ambientC > 60)
        {
            found.Insert(0, stop.At("driver.main.isolated", "The output of the driver is not known to be isolated."));
        }

        return found;
    }
}
