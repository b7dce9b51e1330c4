namespace Lampwright.Heat;

/// <summary>One draw of a sink in one scene, with what does not change with its temperature; gravity by its shares along the channels, out of the face and across.</summary>
internal readonly record struct SinkScene(
    SinkSpec Spec,
    double AmbientK,
    bool FanRuns,
    Air Cool,
    AirPath Path,
    SinkSurface Surface,
    double PrandtlTerm,
    double Along,
    double Up,
    double Across
);

/// <summary>What a sink gives off at one temperature of its base.</summary>
internal readonly record struct SinkState(
    double ConvectedW,
    double RadiatedW,
    double FlowM3PerS,
    double VelocityMPerS,
    double ForcedFilm,
    double FinEfficiency,
    double ReStar,
    double ReDiameter,
    double Elenbaas,
    Air Warm
)
{
    /// <summary>All of it, W.</summary>
    internal double HeatW => ConvectedW + RadiatedW;
}

/// <summary>The air side of a sink: heat as an explicit function of the base's temperature, so that no iteration hides a leak.</summary>
internal sealed class SinkAir
{
    private readonly FanCurve? curve;
    private readonly double channelView;

    internal SinkAir(SinkSpec nominal)
    {
        curve = nominal.Fan is null ? null : new FanCurve(nominal.Fan.Curve);
        channelView =
            nominal.Form == SinkForm.Fins
                ? Radiation.ChannelViewFactor(nominal.GapM, nominal.FinHeightM, nominal.AlongM)
                : 1;
    }

    /// <summary>A draw in a scene.</summary>
    internal static SinkScene In(SinkSpec spec, double ambientK, bool fanRuns)
    {
        var cool = Air.At(ambientK, spec.PressurePa);
        var surface = SinkSurface.Of(spec);
        var (along, up, across) = spec.Gravity;
        return new SinkScene(
            spec,
            ambientK,
            fanRuns && spec.Fan?.SpeedRatio > 0,
            cool,
            PathOf(spec, surface),
            surface,
            NaturalFilm.VerticalPlateTerm(cool.Prandtl),
            along,
            up,
            across
        );
    }

    /// <summary>Heat given off with the roots of the fins at a rise over the ambient air.</summary>
    internal SinkState At(in SinkScene scene, double rise)
    {
        var spec = scene.Spec;
        var film = Air.At(scene.AmbientK + rise / 2, spec.PressurePa);
        var forced = Forced(scene, film);
        SinkNatural still = new(scene, film);
        var natural = still.HousedW(scene, rise, out var overAir) / rise;
        var conductance = forced.Conductance > 0 ? Blend.Cubes(forced.Conductance, natural) : natural;
        var housed = spec.Housed && !scene.FanRuns ? spec.Factors.HousedStill : 1;
        return new SinkState(
            housed * conductance * rise,
            housed * RadiatedW(scene, rise),
            forced.Flow,
            forced.Velocity,
            forced.Film,
            scene.FanRuns ? forced.Efficiency : still.Efficiency(overAir),
            forced.ReStar,
            forced.ReDiameter,
            still.Elenbaas(overAir),
            film
        );
    }

    /// <summary>True where the fan's curve rises at this flow.</summary>
    internal bool InStall(in SinkScene scene, double flow) => curve!.RisesAt(flow / FlowPerRated(scene));

    /// <summary>The fan's curve as it runs; empty where it does not.</summary>
    internal IReadOnlyList<FanPoint> FanLine(SinkScene scene)
    {
        if (!scene.FanRuns)
        {
            return [];
        }

        var fan = scene.Spec.Fan!;
        var factors = scene.Spec.Factors;
        return Line(
            scene,
            q =>
                FanOperatingPoint.FanPressurePa(
                    curve!,
                    fan,
                    fan.SpeedRatio * factors.FanSpeed,
                    factors.FanPressure,
                    scene.Cool.Density / fan.CurveDensity,
                    q
                )
        );
    }

    /// <summary>What the path costs over the same flows; empty where the fan does not run or the path is shut.</summary>
    internal IReadOnlyList<FanPoint> PathLine(SinkScene scene, Air warm) =>
        scene.FanRuns && double.IsFinite(scene.Path.QuadraticPerM4)
            ? Line(scene, q => scene.Path.LossPa(q, scene.Cool, warm))
            : [];

    private FanPoint[] Line(SinkScene scene, Func<double, double> pressure)
    {
        var free = curve!.FreeFlowM3PerS * FlowPerRated(scene);
        return [.. Enumerable.Range(0, 25).Select(i => new FanPoint(free * i / 24, pressure(free * i / 24)))];
    }

    private static double FlowPerRated(in SinkScene scene)
    {
        var fan = scene.Spec.Fan!;
        return fan.SpeedRatio * scene.Spec.Factors.FanSpeed * (fan.InSeries ? 1 : fan.Count);
    }

    private static AirPath PathOf(SinkSpec spec, in SinkSurface surface)
    {
        double quadratic = 0,
            laminar = 0;
        List<AirLoss>? beside = null;
        foreach (var loss in spec.AirLosses)
        {
            if (loss.Branches.Count > 0 && double.IsFinite(loss.KPerAreaSquared))
            {
                (beside ??= []).Add(loss);
                continue;
            }

            quadratic += loss.KPerAreaSquared;
            laminar += loss.LaminarPerM3;
        }

        var through = surface.Form is SinkForm.Plate ? 0 : surface.FreeM2;
        return new AirPath(
            quadratic,
            laminar,
            through / (1 - Math.Clamp(spec.BypassShare * spec.Factors.Bypass, 0, 0.95)),
            surface.DiameterM,
            surface.FlowLengthM,
            surface.FRe,
            surface.EndsK,
            surface.Form == SinkForm.Pins ? spec.Factors.PinFriction : spec.Factors.Friction,
            spec.Factors.AirOpenings,
            surface.Arrangement,
            beside
        );
    }

    private ForcedState Forced(in SinkScene scene, in Air warm)
    {
        if (!scene.FanRuns)
        {
            return default;
        }

        var factors = scene.Spec.Factors;
        var flow = FanOperatingPoint
            .Flow(curve!, scene.Spec.Fan!, factors.FanSpeed, factors.FanPressure, scene.Path, scene.Cool, warm)
            .X;
        return SinkForced.At(scene, warm, flow);
    }

    private double RadiatedW(in SinkScene scene, double rise)
    {
        // The rise is carried, not found again as a difference of temperatures: that loses small heats.
        var spec = scene.Spec;
        var surface = scene.Surface;
        var emissivity = Math.Min(1, spec.Emissivity);
        var perArea =
            spec.OpenShare
            * spec.Factors.Emissivity
            * Radiation.CoefficientBlack(scene.AmbientK + rise, scene.AmbientK)
            * rise;
        switch (surface.Form)
        {
            case SinkForm.Fins:
                var walls = surface.WallM2 + surface.FloorM2;
                var outer =
                    (2 * spec.FinHeightM * spec.AlongM)
                    + (spec.FinCount * spec.FinThicknessM * spec.AlongM)
                    + spec.EdgesM2;
                return perArea
                    * ((walls * Radiation.ChannelEmissivity(channelView, emissivity)) + (outer * emissivity));
            case SinkForm.Plate:
                return perArea * emissivity * (surface.FloorM2 + spec.EdgesM2);
            default:
                // A body full of cavities: its outline radiates, the walls behind it reflect into each other.
                var inside = Math.Max(surface.WallM2 + surface.FloorM2, surface.OutlineM2);
                return perArea * inside * Radiation.ChannelEmissivity(surface.OutlineM2 / inside, emissivity);
        }
    }
}
