using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

/// <summary>Lights for the tests of the ways: one that is in order, and random ones.</summary>
internal static class WaysLight
{
    public static EmitterModel Emitter { get; } =
        EmitterFit
            .From(
                new(
                    [new(0.35, 33.1, 1870), new(0.70, 34.5, 3560), new(1.40, 36.9, 6600), new(1.80, 38.1, 8150)],
                    VoltageSlopePerK: -0.018,
                    FluxHot: new(358.15, 0.9)
                )
            )
            .Model;

    public static WaysSpec Good { get; } =
        new(
            Emitter,
            2.0,
            new(
                1.75,
                0.25,
                24,
                42,
                0.89,
                new(
                    ["R39", "R39"],
                    MeasuredA: 1.74,
                    Side: SenseSide.Secondary,
                    Carries: SenseCarries.Smooth,
                    Control: SenseControl.Average
                ),
                Isolation.Yes,
                46,
                OverVoltage.Clamps,
                UnderVoltage.Hiccups
            ),
            new(100, 264, 90, 80, 470e-6, 0.95, 0.05, DimmingInput.OneToTenVolts, 0.1),
            new(true, 230, 50),
            null
        );

    public static Way Of(this WaysSpec spec, WayKind kind) => WaysComparison.Of(spec).Ways[(int)kind];

    public static WaysSpec Driver(this WaysSpec spec, Func<DriverSpec, DriverSpec> change) =>
        spec with
        {
            Driver = change(spec.Driver),
        };

    public static WaysSpec Around(this WaysSpec spec, Func<DriverSurroundings, DriverSurroundings> change) =>
        spec with
        {
            Surroundings = change(spec.Surroundings),
        };

    /// <summary>A light that could be: voltages, currents and thresholds in the order they have in the shop, some of them not known.</summary>
    public static WaysSpec Random(Random random)
    {
        double Between(double a, double b) => a * Math.Pow(b / a, random.NextDouble());
        double? Maybe(double value) => random.Next(4) == 0 ? null : value;
        T Any<T>()
            where T : struct, Enum
        {
            var all = Enum.GetValues<T>();
            return all[random.Next(all.Length)];
        }

        var amps = Between(0.15, 4);
        var volts = Between(2.7, 60);
        var rise = volts * (0.05 + (0.2 * random.NextDouble()));
        var log = random.NextDouble() * 0.3 * rise;
        var ohm = (rise - log) / amps;
        var model = new EmitterModel(
            log,
            volts - (ohm * amps) - (log * Math.Log(amps)),
            ohm,
            -0.0005 * volts,
            298.15,
            100 * volts * amps,
            amps,
            FluxForm.Saturating,
            0.4 * random.NextDouble(),
            0.0017,
            0.1 * amps,
            1.2 * amps
        );
        var most = volts * (1.05 + (0.25 * random.NextDouble()));
        var alternating = random.Next(2) == 0;
        var supply = alternating ? 230 : volts * (1.3 + random.NextDouble());
        var off = supply * (0.2 + (0.5 * random.NextDouble()));
        return new(
            model,
            Maybe(amps * 1.2),
            new(
                amps,
                Maybe(amps * (0.05 + (0.3 * random.NextDouble()))),
                Maybe(volts * (0.3 + (0.45 * random.NextDouble()))),
                Maybe(most),
                0.8 + (0.15 * random.NextDouble()),
                new(
                    random.Next(3) == 0 ? [] : ["R22"],
                    random.Next(3) == 0 ? null : 0.2 / amps,
                    Maybe(amps * (0.97 + (0.05 * random.NextDouble()))),
                    Side: Any<SenseSide>(),
                    Carries: Any<SenseCarries>(),
                    Control: Any<SenseControl>()
                ),
                Any<Isolation>(),
                Maybe(most * (1.02 + (0.3 * random.NextDouble()))),
                Any<OverVoltage>(),
                Any<UnderVoltage>()
            ),
            new(
                Maybe(off),
                null,
                Maybe(off * (1.02 + (0.2 * random.NextDouble()))),
                Maybe(off),
                Maybe(Between(47e-6, 2200e-6)),
                Maybe(0.5 + (0.5 * random.NextDouble())),
                Maybe(Between(5e-3, 0.5)),
                Any<DimmingInput>(),
                Maybe(0.3 * random.NextDouble())
            ),
            random.Next(6) == 0 ? null : new(alternating, supply, alternating ? 50 : null, Maybe(0.01 * supply)),
            random.Next(3) == 0
                ? new(
                    Any<Arrangement>(),
                    new(0.2 / amps, 0, 3, 343, 428),
                    [new(0.1 / amps, 0, 3, 343, 428), new(0.3 / amps, 0, 3, 343, 428)],
                    0.005,
                    0.01,
                    new(0.1, 0.75),
                    Any<SelectorKind>()
                )
                : null
        );
    }
}
