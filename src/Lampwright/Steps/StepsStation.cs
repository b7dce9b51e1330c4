using System.Globalization;

namespace Lampwright.Steps;

/// <summary>The steps station at nominal: emitter, driver and chain from what is known of them, with their findings.</summary>
/// <remarks>
/// Runs once. The draws reuse <see cref="EmitterModel.With"/>, <see cref="DriverModel.With"/> and
/// <see cref="ChainNetwork.Operate"/>, which are closed form and do not allocate.
/// </remarks>
public static class StepsStation
{
    /// <summary>Everything the station can say of a light at nominal.</summary>
    /// <exception cref="ArgumentException">
    /// The emitter has neither a usable point nor rated values, or the driver's rated current is not above zero.
    /// </exception>
    public static StepsResult Evaluate(StepsSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.Positive(spec.Driver.RatedA);
        var fit = EmitterFit.From(spec.Emitter);
        var threshold = SenseThreshold.From(spec.Driver);
        var driver = DriverModel.From(spec.Driver, threshold);
        var network = spec.Chain is { } c && Computable(c) ? new ChainNetwork(c) : null;
        return Warm(spec, new(fit, threshold, driver, network, null, new(0, 0, null, null, ""), []));
    }

    /// <summary>The same light with other temperatures: combinations, window and findings anew, fit and network kept.</summary>
    /// <param name="spec">The spec of the earlier result with the temperatures that heat has found since.</param>
    /// <param name="earlier">The earlier result of the same emitter, driver and chain.</param>
    public static StepsResult Warm(StepsSpec spec, StepsResult earlier)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(earlier);
        var chain =
            earlier.Network is not null && earlier.Driver is { } d
                ? ChainResult.From(
                    earlier.Network,
                    d,
                    spec.AirK,
                    Sound(spec.Emitter.MostA),
                    spec.Driver.RatedA,
                    Sound(spec.Driver.LeastA)
                )
                : null;
        var result = earlier with { Chain = chain, Window = Window(spec, earlier.Emitter.Model, chain), Findings = [] };
        return result with { Findings = StepsRules.Judge(spec, result) };
    }

    /// <summary>Whether a chain has numbers that a network can be made of.</summary>
    public static bool Computable(ChainSpec chain)
    {
        ArgumentNullException.ThrowIfNull(chain);
        return chain.Switched.Count <= ChainSpec.MostSwitches
            && chain.Switched.Append(chain.Fixed).All(Sound)
            && chain.ContactOhm is >= 0 and <= 1e6
            && chain.BleedOhm is null or (> 0 and <= 1e9)
            && chain.FloorOhm is null or (>= 0 and <= 1e9)
            && (chain.Lead is not { } l || (l.LengthM is >= 0 and <= 1e6 && l.AreaMm2 is >= 0.01 and <= 1000));
    }

    // What is no number above zero counts as not known.
    private static double? Sound(double? value) => value is > 0 and < 1e9 ? value : null;

    internal static bool Sound(ResistorPart p) =>
        p.Ohm is > 0 and <= 1e9
        && p.RatingW is > 0 and <= 1e6
        && p.TempcoPerK is >= -1 and <= 1
        && p.ZeroAtK > p.FullToK
        && p.ZeroAtK <= 1e4;

    private static WindowCheck Window(StepsSpec spec, EmitterModel model, ChainResult? chain)
    {
        var driver = spec.Driver;
        var mostV = model.VoltageV(chain?.MostA ?? driver.RatedA, spec.ColdJunctionK);
        var leastV = model.VoltageV(chain?.LeastA ?? driver.RatedA, spec.HotJunctionK);
        return new(
            leastV,
            mostV,
            mostV - Sound(driver.WindowMostV),
            Sound(driver.WindowLeastV) - leastV,
            Words(driver, leastV, mostV)
        );
    }

    private static string Words(DriverSpec driver, double leastV, double mostV)
    {
        if (mostV > driver.WindowMostV)
        {
            var then = driver.Over switch
            {
                OverVoltage.Clamps => "holds its voltage limit and gives less current than set",
                OverVoltage.Trips => "trips: the light goes dark, or blinks when it tries again",
                _ => "may clamp, trip or blink; its data sheet does not say",
            };
            return string.Create(CultureInfo.InvariantCulture, $"At {mostV:0.0} V the driver {then}.");
        }

        if (leastV < driver.WindowLeastV)
        {
            var then = driver.Under switch
            {
                UnderVoltage.Hiccups => "starts and stops again and again: the light blinks",
                UnderVoltage.Stops => "stays off",
                _ => "may blink or stay off; its data sheet does not say",
            };
            return string.Create(CultureInfo.InvariantCulture, $"At {leastV:0.0} V the driver {then}.");
        }

        return driver.WindowLeastV is null || driver.WindowMostV is null
            ? "The driver's output window is not known in full."
            : "The emitter stays inside the driver's output window.";
    }
}
