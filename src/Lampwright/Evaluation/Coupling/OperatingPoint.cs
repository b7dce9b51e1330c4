using Lampwright.Heat;
using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Where electricity, light and heat of one switch position come to rest.</summary>
/// <param name="ResistanceOhm">Sense path, warm, ohm.</param>
/// <param name="CurrentA">Emitter current, A.</param>
/// <param name="VoltageV">Emitter voltage, V.</param>
/// <param name="FluxLm">Flux of the bare emitter, lm.</param>
/// <param name="HeatW">Heat through the emitter's back, W.</param>
/// <param name="JunctionK">Junction, K.</param>
/// <param name="CaseK">Case of the emitter, K.</param>
/// <param name="SinkK">Base of the sink under the emitter, K.</param>
/// <param name="BaseK">Base of the sink, mean, K.</param>
/// <param name="DriverLossW">Heat lost in the driver, W.</param>
/// <param name="CompartmentK">Air round the chain's resistors, K.</param>
/// <param name="DriverK">Case of the driver, K.</param>
/// <param name="ResidualK">What the last pass still moved the junction, K.</param>
internal readonly record struct OperatingPoint(
    double ResistanceOhm,
    double CurrentA,
    double VoltageV,
    double FluxLm,
    double HeatW,
    double JunctionK,
    double CaseK,
    double SinkK,
    double BaseK,
    double DriverLossW,
    double CompartmentK,
    double DriverK,
    double ResidualK
)
{
    /// <summary>Power of the emitter, W.</summary>
    public double EmitterW => CurrentA * VoltageV;

    /// <summary>False when the loop had not settled to a millikelvin.</summary>
    public bool Converged => ResidualK < 1e-3;
}

/// <summary>What the loop needs to know of a light in one scene of one draw.</summary>
internal readonly struct Circuit
{
    /// <summary>The emitter.</summary>
    public required EmitterModel Emitter { get; init; }

    /// <summary>The driver.</summary>
    public required DriverModel Driver { get; init; }

    /// <summary>Rise of the sink over heat; null when the design has no sink, which keeps the junction at its reference.</summary>
    public required SinkCurve? Sink { get; init; }

    /// <summary>Interface below the emitter, K/W.</summary>
    public required double InterfaceKPerW { get; init; }

    /// <summary>Junction to case, K/W.</summary>
    public required double JunctionKPerW { get; init; }

    /// <summary>True when that resistance counts on electrical power.</summary>
    public required bool JunctionIsElectrical { get; init; }

    /// <summary>Lumens of the bare emitter for each watt that leaves as light and does not come back to it, lm/W.</summary>
    public required double RadiationLmPerW { get; init; }

    /// <summary>Share of the power that leaves as light, where it is given; else flux and efficacy tell it.</summary>
    public double? LightShare { get; init; }

    /// <summary>Air round the light, K.</summary>
    public required double AmbientK { get; init; }

    /// <summary>The driver's compartment and the front.</summary>
    public required Boxes Boxes { get; init; }

    /// <summary>Share of the emitter's heat that sheet under the sink carries off beside it.</summary>
    public double SeatShare { get; init; }

    /// <summary>Rises of the sink over the room at a heat, mean and under the emitter, K; none without a sink.</summary>
    /// <param name="heatW">Heat through the emitter's back, W.</param>
    public (double BaseK, double SourceK) SinkRisesK(double heatW) => Sink?.RisesK(heatW, 1 - SeatShare) ?? (0, 0);
}

/// <summary>
/// The one place where steps and heat pull on each other: the junction's temperature moves voltage and flux, these move the
/// heat, the driver's loss warms the chain's resistors, and those move the current.
/// </summary>
/// <remarks>
/// Each loop is a fixed point with a slope far below one (a kelvin more at the junction takes a few hundredths of a watt from
/// the heat; a kelvin more at a resistor of 100 ppm/K moves the current by a ten-thousandth), taken with Aitken's step
/// (Abramowitz and Stegun, 3.9.7). What has not settled is told by the residual and never shown as a value.
/// </remarks>
internal static class OperatingPoints
{
    private static readonly int MostPasses = 60;
    private static readonly double SettledK = 1e-5;

    // Beyond this the emitter is long destroyed; the bound keeps a runaway finite so that it can be reported.
    private static readonly double MostK = 1500;

    /// <summary>The point at a given current, whatever sets it.</summary>
    /// <param name="c">The light in one scene.</param>
    /// <param name="currentA">Emitter current, A.</param>
    /// <param name="guessK">Guess of the junction, K.</param>
    /// <param name="chainW">Loss of the chain's resistors in the driver's compartment, W.</param>
    public static OperatingPoint AtCurrent(in Circuit c, double currentA, double guessK, double chainW = 0)
    {
        var emitter = new EmitterAtCurrent(c.Emitter, currentA);
        var (t, residual) = Junction(c, emitter, guessK);
        var (voltage, flux) = (emitter.VoltageV(t), emitter.FluxLm(t));
        var heat = Heat(c, currentA * voltage, flux);
        var (baseRise, sourceRise) = c.SinkRisesK(heat);
        var loss = c.Driver.LossW(currentA * voltage);
        var (air, box) = c.Boxes.Driver(loss, chainW, heat);
        return new(
            0,
            currentA,
            voltage,
            flux,
            heat,
            t,
            c.AmbientK + sourceRise + (heat * c.InterfaceKPerW),
            c.AmbientK + sourceRise,
            c.AmbientK + baseRise,
            loss,
            air,
            box,
            residual
        );
    }

    /// <summary>Junction and flux alone at a given current.</summary>
    /// <param name="c">The light in one scene.</param>
    /// <param name="currentA">Emitter current, A.</param>
    /// <param name="guessK">Guess of the junction, K.</param>
    public static (double JunctionK, double FluxLm) LightAt(in Circuit c, double currentA, double guessK)
    {
        var emitter = new EmitterAtCurrent(c.Emitter, currentA);
        var junction = Junction(c, emitter, guessK).JunctionK;
        return (junction, emitter.FluxLm(junction));
    }

    /// <summary>The point at one switch position of the chain.</summary>
    /// <param name="c">The light in one scene.</param>
    /// <param name="network">The chain.</param>
    /// <param name="index">Switch position.</param>
    /// <param name="contacts">Contact resistances, ohm.</param>
    /// <param name="ohms">Factors of the resistors, the fixed one first.</param>
    /// <param name="tempco">Factor of the temperature coefficient.</param>
    /// <param name="lead">Factor of the leads.</param>
    /// <param name="rise">Factor of the resistors' own rise.</param>
    /// <param name="warm">Room for the warm resistances.</param>
    /// <param name="watts">Gives back the power of each resistor, W.</param>
    /// <param name="guessK">Guess of the junction, K.</param>
    /// <param name="guessAirK">Guess of the compartment's air, K.</param>
    public static OperatingPoint AtPosition(
        in Circuit c,
        ChainNetwork network,
        int index,
        ReadOnlySpan<double> contacts,
        ReadOnlySpan<double> ohms,
        double tempco,
        double lead,
        double rise,
        Span<double> warm,
        Span<double> watts,
        double guessK,
        double guessAirK
    )
    {
        var (airK, junctionK, last) = (guessAirK, guessK, 0.0);
        var point = default(OperatingPoint);
        for (var pass = 0; pass < 5; pass++)
        {
            var draw = new ChainDraw
            {
                Driver = c.Driver,
                AirK = airK,
                ContactOhms = contacts,
                OhmFactors = ohms,
                TempcoFactor = tempco,
                LeadFactor = lead,
                RiseFactor = rise,
            };
            var total = network.Solve(index, draw, warm, watts, out _, pass > 0 ? 1 : 2, resume: pass > 0);
            var current = c.Driver.CurrentA(total);

            if (pass == 0)
            {
                // One step of the junction's loop tells the driver's loss, and with it the air, all but exactly.
                var emitter = new EmitterAtCurrent(c.Emitter, current);
                junctionK = Next(c, emitter, guessK);
                airK = c.Boxes.Driver(c.Driver.LossW(current * emitter.VoltageV(junctionK)), Sum(watts)).AirK;
                continue;
            }

            // The air that the last pass found moves the current no more: what that pass found stands.
            if (pass > 1 && Math.Abs(current - last) <= 2e-6 * current)
            {
                break;
            }

            point = AtCurrent(c, current, junctionK, Sum(watts)) with { ResistanceOhm = total };
            (airK, junctionK, last) = (point.CompartmentK, point.JunctionK, current);
        }

        return point;
    }

    private static (double JunctionK, double ResidualK) Junction(
        in Circuit c,
        in EmitterAtCurrent emitter,
        double guessK
    )
    {
        var t = guessK;
        var residual = double.PositiveInfinity;
        for (var pass = 0; pass < MostPasses && residual > SettledK; pass++)
        {
            var t1 = Next(c, emitter, t);
            residual = Math.Abs(t1 - t);
            if (residual <= SettledK)
            {
                t = t1;
                break;
            }

            var t2 = Next(c, emitter, t1);
            var bend = t2 - (2 * t1) + t;
            var better = Math.Abs(bend) > 1e-9 ? t - ((t1 - t) * (t1 - t) / bend) : t2;
            residual = Math.Abs(t2 - t1);
            t = better > 0 && better < MostK && residual > SettledK ? better : t2;
        }

        if (t > MostK - 1)
        {
            // At the bound nothing moves any more, but nothing has come to rest either.
            residual = MostK;
        }

        return (t, residual);
    }

    /// <summary>All powers together, W.</summary>
    public static double Sum(ReadOnlySpan<double> watts)
    {
        var sum = 0.0;
        foreach (var w in watts)
        {
            sum += w;
        }

        return sum;
    }

    private static double Next(in Circuit c, in EmitterAtCurrent emitter, double junctionK)
    {
        if (c.Sink is null)
        {
            return c.Emitter.ReferenceK;
        }

        var power = emitter.CurrentA * emitter.VoltageV(junctionK);
        var heat = Heat(c, power, emitter.FluxLm(junctionK));
        var inside = (c.JunctionIsElectrical ? power : heat) * c.JunctionKPerW;
        return Math.Min(MostK, c.AmbientK + c.SinkRisesK(heat).SourceK + (heat * c.InterfaceKPerW) + inside);
    }

    /// <summary>Heat through the emitter's back, W.</summary>
    /// <param name="c">The light in one scene.</param>
    /// <param name="power">Electric power of the emitter, W.</param>
    /// <param name="flux">Flux of the bare emitter, lm.</param>
    public static double Heat(in Circuit c, double power, double flux) =>
        // A curve fit far outside its points must not turn a lamp into a refrigerator.
        Math.Max(0.05 * power, c.LightShare is { } share ? power * (1 - share) : power - (flux / c.RadiationLmPerW));
}
