namespace Lampwright.Heat;

/// <summary>Everything that resists the fan, in the order the air passes: openings, then the sink's channels.</summary>
/// <param name="QuadraticPerM4">Sum of K/A² of the openings, 1/m⁴.</param>
/// <param name="LaminarPerM3">Sum of the viscous terms of the openings, 1/m³.</param>
/// <param name="ChannelAreaM2">Free area of the channels, m²; 0 where there are none.</param>
/// <param name="ChannelDiameterM">Hydraulic diameter of a channel, m.</param>
/// <param name="ChannelLengthM">Length of the channels, m.</param>
/// <param name="ChannelFRe">f·Re of the developed flow.</param>
/// <param name="ChannelEndsK">Losses at the channels' ends on their velocity head.</param>
/// <param name="FrictionFactor">Factor of the method error on the channels' loss.</param>
/// <param name="OpeningFactor">Factor of the method error on the openings' loss.</param>
/// <param name="PinArrangement">Factor of the pins' arrangement; 0 where the air passes channels.</param>
/// <param name="Beside">Openings that stand side by side, each group as one loss; null where there are none.</param>
internal readonly record struct AirPath(
    double QuadraticPerM4,
    double LaminarPerM3,
    double ChannelAreaM2,
    double ChannelDiameterM,
    double ChannelLengthM,
    double ChannelFRe,
    double ChannelEndsK,
    double FrictionFactor = 1,
    double OpeningFactor = 1,
    double PinArrangement = 0,
    IReadOnlyList<AirLoss>? Beside = null
)
{
    /// <summary>Loss of the whole path, Pa.</summary>
    /// <param name="flow">Flow at the fan, m³/s of cool air.</param>
    /// <param name="cool">Air at the fan and the openings.</param>
    /// <param name="warm">Air in the channels.</param>
    internal double LossPa(double flow, in Air cool, in Air warm) =>
        OpeningsPa(flow, cool) + ChannelsPa(flow, cool, warm);

    /// <summary>Loss of the openings alone, Pa.</summary>
    internal double OpeningsPa(double flow, in Air cool)
    {
        var sum = flow * (0.5 * cool.Density * QuadraticPerM4 * flow + LaminarPerM3 * cool.Viscosity);
        for (var i = 0; i < Beside?.Count; i++)
        {
            sum += Beside[i].LossPa(flow, cool);
        }

        return OpeningFactor * sum;
    }

    /// <summary>Loss of the channels alone, Pa. The mass flow is the fan's; warm air runs faster.</summary>
    internal double ChannelsPa(double flow, in Air cool, in Air warm) =>
        ChannelAreaM2 <= 0 ? 0
        : PinArrangement > 0
            ? FrictionFactor
                * PinFriction.LossPa(
                    warm,
                    ChannelVelocity(flow, cool, warm),
                    ChannelDiameterM,
                    PinArrangement,
                    ChannelLengthM
                )
        : FrictionFactor
            * ChannelFriction.DuctLossPa(
                warm,
                ChannelVelocity(flow, cool, warm),
                ChannelDiameterM,
                ChannelLengthM,
                ChannelFRe,
                ChannelEndsK
            );

    /// <summary>Velocity in the channels, m/s.</summary>
    internal double ChannelVelocity(double flow, in Air cool, in Air warm) =>
        flow * cool.Density / (warm.Density * ChannelAreaM2);
}

/// <summary>Where the fan's curve and the air path's meet.</summary>
/// <remarks>
/// Safeguarded search between the curve's points from free flow downward, so that on a curve with a hump the branch on the right is
/// found, which is where a fan settles when it starts into an open path (common practice). Closed-form evaluations: cheap enough for
/// every draw.
/// </remarks>
internal static class FanOperatingPoint
{
    /// <summary>Flow through fan and path, m³/s at the fan.</summary>
    /// <param name="curve">The fan's curve at rated speed.</param>
    /// <param name="fan">How it runs.</param>
    /// <param name="speedFactor">Factor of the method error on the speed.</param>
    /// <param name="pressureFactor">Factor of the method error on the pressure.</param>
    /// <param name="path">What resists it.</param>
    /// <param name="cool">Air at the fan.</param>
    /// <param name="warm">Air in the channels.</param>
    internal static RootReport Flow(
        FanCurve curve,
        FanSpec fan,
        double speedFactor,
        double pressureFactor,
        in AirPath path,
        in Air cool,
        in Air warm
    )
    {
        var speed = fan.SpeedRatio * speedFactor;
        if (speed < 1e-4 || !double.IsFinite(path.QuadraticPerM4))
        {
            return new RootReport(0, 0, 0, true);
        }

        var balance = new Balance(curve, fan, speed, pressureFactor, path, cool, warm);
        var flows = curve.Flows;
        for (var i = flows.Length - 1; i > 0; i--)
        {
            var lower = flows[i - 1] * balance.FlowPerRated;
            if (i == 1 || balance.At(lower) > 0)
            {
                var upper = flows[i] * balance.FlowPerRated;
                return Root.Between(ref balance, lower, upper, 1e-9 * flows[^1] * balance.FlowPerRated);
            }
        }

        return new RootReport(0, 0, 0, false);
    }

    /// <summary>Pressure of the fans as they run, Pa.</summary>
    internal static double FanPressurePa(
        FanCurve curve,
        FanSpec fan,
        double speed,
        double pressureFactor,
        double densityRatio,
        double flow
    )
    {
        var perRated = speed * (fan.InSeries ? 1 : fan.Count);
        var factor = FanLaws.PressureFactor(speed, densityRatio) * (fan.InSeries ? fan.Count : 1);
        return pressureFactor * factor * curve.PressurePa(flow / perRated);
    }

    private readonly struct Balance(
        FanCurve curve,
        FanSpec fan,
        double speed,
        double pressureFactor,
        AirPath path,
        Air cool,
        Air warm
    ) : IScalarFunction
    {
        private readonly double densityRatio = cool.Density / fan.CurveDensity;

        /// <summary>Flow of all fans as they run per flow of one at rated speed.</summary>
        internal double FlowPerRated { get; } = speed * (fan.InSeries ? 1 : fan.Count);

        /// <inheritdoc/>
        public double At(double x) =>
            FanPressurePa(curve, fan, speed, pressureFactor, densityRatio, x) - path.LossPa(x, cool, warm);
    }
}
