using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

/// <summary>Circuits of every kind, from sound to absurd.</summary>
internal static class RandomCircuits
{
    /// <summary>A clamping driver or a supply into any load, at values that a maker could have.</summary>
    public static WayCircuit Sound(Random r) =>
        new(
            r.Next(3) == 0
                ? new SupplyBehindResistance(Log(r, 12, 60), Log(r, 0.1, 20))
                : new DriverOutput(Log(r, 0.2, 3), null, Log(r, 20, 60), OverVoltage.Clamps, UnderVoltage.Hiccups, 0.1),
            r.Next(3) switch
            {
                0 => Emitter(r),
                1 => Converter(r) with { DropOut = null },
                _ => new ChoppedLine(
                    Emitter(r) with
                    {
                        ShuntOhm = double.PositiveInfinity,
                    },
                    Log(r, 50, 500),
                    r.NextDouble(),
                    0.01
                ),
            },
            Log(r, 20e-6, 2e-3),
            r.Next(2) * 20 * r.NextDouble()
        );

    /// <summary>Anything that types allow, finite and not negative.</summary>
    public static WayCircuit Any(Random r) =>
        new(
            r.Next(3) switch
            {
                0 => new SupplyBehindResistance(Log(r, 0.5, 400), Log(r, 1e-3, 1e3))
                {
                    Henry = r.Next(3) == 0 ? Log(r, 1e-7, 1e-2) : 0,
                    StartA = r.Next(2) * r.NextDouble(),
                },
                _ => Driver(r),
            },
            r.Next(3) switch
            {
                0 => Emitter(r),
                1 => Converter(r),
                _ => Chopped(r),
            },
            Log(r, 1e-10, 0.1),
            r.Next(2) * Log(r, 0.1, 400),
            r.Next(2) == 0
        );

    private static DriverOutput Driver(Random r) =>
        new(
            r.Next(20) == 0 ? 0 : Log(r, 1e-3, 20),
            r.Next(2) == 0 ? null : Log(r, 0.1, 300),
            r.Next(4) == 0 ? double.PositiveInfinity : Log(r, 1, 400),
            (OverVoltage)r.Next(3),
            (UnderVoltage)r.Next(3),
            r.Next(5) switch
            {
                0 => 0,
                1 => double.PositiveInfinity,
                _ => Log(r, 1e-4, 3),
            }
        )
        {
            RippleShare = r.Next(4) == 0 ? r.NextDouble() : 0,
            RippleHz = r.Next(3) == 0 ? 0 : Log(r, 50, 1000),
        };

    private static EmitterLine Emitter(Random r) =>
        new(
            new(
                r.Next(3) == 0 ? 0 : Log(r, 0.01, 5),
                Log(r, 1, 300),
                r.Next(5) == 0 ? 0 : Log(r, 1e-3, 50),
                -0.03 * r.NextDouble(),
                298.15,
                r.Next(5) == 0 ? 0 : 1000,
                1,
                (FluxForm)r.Next(2),
                0.05 + (0.9 * r.NextDouble()),
                0.001,
                0.1,
                1
            ),
            250 + (150 * r.NextDouble()),
            r.Next(2) * Log(r, 0.1, 100),
            r.Next(2) == 0 ? double.PositiveInfinity : Log(r, 1, 1e4)
        );

    private static ConverterLine Converter(Random r)
    {
        var on = r.Next(10) == 0 ? 0 : Log(r, 0.5, 300);
        return new(
            r.Next(20) == 0 ? 0 : Log(r, 0.1, 300),
            on,
            on * (r.Next(10) == 0 ? 1 : r.NextDouble()),
            Log(r, 0.01, 5),
            r.Next(2) == 0 ? null : Emitter(r)
        );
    }

    private static ChoppedLine Chopped(Random r) =>
        new(
            Emitter(r),
            r.Next(10) == 0 ? 0 : Log(r, 1, 1e5),
            r.Next(10) == 0 ? r.Next(2) : r.NextDouble(),
            Log(r, 1e-4, 1)
        );

    private static double Log(Random r, double a, double b) => a * Math.Pow(b / a, r.NextDouble());
}
