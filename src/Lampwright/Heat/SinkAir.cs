namespace Lampwright.Heat;

/// <summary>One draw of a sink in one scene, with what does not change with its temperature.</summary>
internal readonly record struct SinkScene(
    SinkSpec Spec,
    double AmbientK,
    bool FanRuns,
    Air Cool,
    AirPath Path,
    double GapM,
    double FlowLengthM,
    double PrandtlTerm
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
            nominal.FinCount < 2 ? 1 : Radiation.ChannelViewFactor(nominal.GapM, nominal.FinHeightM, nominal.AlongM);
    }

    /// <summary>A draw in a scene.</summary>
    internal static SinkScene In(SinkSpec spec, double ambientK, bool fanRuns)
    {
        var cool = Air.At(ambientK, spec.PressurePa);
        var gap = Math.Max(spec.GapM, 1e-5);
        var tips = spec.Entry == AirEntry.Tips;
        var length = tips ? spec.AlongM / 2 : spec.AlongM;
        return new SinkScene(
            spec,
            ambientK,
            fanRuns && spec.Fan?.VoltageRatio > 0,
            cool,
            PathOf(spec, gap, length, tips),
            gap,
            length,
            NaturalFilm.VerticalPlateTerm(cool.Prandtl)
        );
    }

    /// <summary>Heat given off with the base at a rise over the ambient air.</summary>
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
            housed * RadiatedW(spec, scene.GapM, rise, scene.AmbientK),
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
                    fan.VoltageRatio * factors.FanSpeed,
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
        return fan.VoltageRatio * scene.Spec.Factors.FanSpeed * (fan.InSeries ? 1 : fan.Count);
    }

    private static AirPath PathOf(SinkSpec spec, double gap, double length, bool tips)
    {
        double quadratic = 0,
            laminar = 0;
        foreach (var loss in spec.AirLosses)
        {
            quadratic += loss.KPerAreaSquared;
            laminar += loss.LaminarPerM3;
        }

        if (spec.FinCount < 2)
        {
            return new AirPath(quadratic, laminar, 0, 1, 1, 24, 0, 1, spec.Factors.AirOpenings);
        }

        var open = spec.OpenRatio;

        // Air that enters at the tips turns by a right angle: one more velocity head (common practice, no source).
        var ends = ChannelFriction.EntranceK(open) + ChannelFriction.ExitK(open) + (tips ? 1 : 0);
        var area =
            (spec.FinCount - 1)
            * gap
            * spec.FinHeightM
            * (tips ? 2 : 1)
            / (1 - Math.Clamp(spec.BypassShare * spec.Factors.Bypass, 0, 0.95));
        var short_ = Math.Min(gap, spec.FinHeightM);
        return new AirPath(
            quadratic,
            laminar,
            area,
            ChannelFriction.HydraulicDiameterM(gap, spec.FinHeightM),
            length,
            ChannelFriction.DevelopedFRe(short_ / Math.Max(gap, spec.FinHeightM)),
            ends,
            spec.Factors.Friction,
            spec.Factors.AirOpenings
        );
    }

    private (
        double Conductance,
        double Flow,
        double Velocity,
        double Film,
        double Efficiency,
        double ReStar,
        double ReDiameter
    ) Forced(in SinkScene scene, in Air warm)
    {
        if (!scene.FanRuns)
        {
            return default;
        }

        var spec = scene.Spec;
        var factors = spec.Factors;
        var flow = FanOperatingPoint
            .Flow(curve!, spec.Fan!, factors.FanSpeed, factors.FanPressure, scene.Path, scene.Cool, warm)
            .X;
        if (flow <= 0)
        {
            return default;
        }

        if (spec.FinCount < 2)
        {
            return ForcedOverPlate(scene, warm, flow);
        }

        var velocity = scene.Path.ChannelVelocity(flow, scene.Cool, warm);
        var reStar = ChannelFilm.ReStar(velocity, scene.GapM, scene.FlowLengthM, warm.KinematicViscosity);
        var film =
            ChannelFilm.Nusselt(reStar, warm.Prandtl)
            * warm.Conductivity
            / scene.GapM
            * factors.ChannelFilm
            * (spec.Entry == AirEntry.Tips ? factors.TipFlow : 1);
        var efficiency = Fin.PlateEfficiency(film, spec.ConductivityWPerMK, spec.FinThicknessM, spec.FinHeightM);
        var channels = (spec.FinCount - 1) * spec.AlongM;
        var conductance = film * channels * (scene.GapM + 2 * spec.FinHeightM * efficiency);
        var reDiameter = velocity * scene.Path.ChannelDiameterM / warm.KinematicViscosity;
        return (conductance, flow, velocity, film, efficiency, reStar, reDiameter);
    }

    private static (double, double, double, double, double, double, double) ForcedOverPlate(
        in SinkScene scene,
        in Air warm,
        double flow
    )
    {
        var spec = scene.Spec;
        var fan = spec.Fan!;
        var area = fan.BoxAcrossM * fan.BoxAlongM;
        var plate = spec.AcrossM * spec.AlongM;
        var velocity = flow / (area > 0 ? area : plate);
        var re = velocity * spec.AlongM / warm.KinematicViscosity;
        var film = ForcedPlate.Nusselt(re, warm.Prandtl) * warm.Conductivity / spec.AlongM * spec.Factors.ChannelFilm;

        // Air cannot take more than warming all of it to the plate's temperature.
        var capacity = flow * scene.Cool.Density * scene.Cool.SpecificHeat;
        return (Blend.InverseCubes(film * plate, capacity), flow, velocity, film, 1, 0, 0);
    }

    private double RadiatedW(SinkSpec spec, double gap, double rise, double ambientK)
    {
        // The rise is carried, not found again as a difference of temperatures: that loses small heats.
        var emissivity = Math.Min(1, spec.Emissivity);
        var perArea =
            spec.OpenShare * spec.Factors.Emissivity * Radiation.CoefficientBlack(ambientK + rise, ambientK) * rise;
        if (spec.FinCount < 2)
        {
            return perArea * emissivity * spec.AcrossM * spec.AlongM;
        }

        var walls = (spec.FinCount - 1) * (2 * spec.FinHeightM + gap) * spec.AlongM;
        var outer = 2 * spec.FinHeightM * spec.AlongM + spec.FinCount * spec.FinThicknessM * spec.AlongM;
        return perArea * (walls * Radiation.ChannelEmissivity(channelView, emissivity) + outer * emissivity);
    }
}
