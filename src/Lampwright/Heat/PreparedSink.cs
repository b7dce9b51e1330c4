namespace Lampwright.Heat;

/// <summary>A sink ready for the draws: the heavy series lie behind it.</summary>
/// <remarks>
/// A curve of one draw and scene takes six temperatures and, at each, the fan's operating point and the films in closed form: about
/// 10 µs. Forced and natural convection are joined by cubes (Churchill 1977), so that nothing jumps when the fan slows to zero.
/// </remarks>
public sealed class PreparedSink
{
    private static readonly double MostRiseK = 3000;

    private readonly SpreadingTable[] means;
    private readonly Spreading[] peaks;
    private readonly Spreading[] exact;
    private readonly SinkAir airSide;

    internal PreparedSink(SinkSpec nominal)
    {
        Nominal = nominal;
        var shares = nominal.Footprints.Sum(f => Guard.Positive(f.Share));
        var inside = nominal.Footprints.Select(f => Inside(f with { Share = f.Share / shares }, nominal)).ToArray();
        exact = [.. inside.Select(f => Series(nominal, inside, f, local: false))];
        peaks = [.. inside.Select(f => Series(nominal, inside, f, local: true))];
        means = [.. exact.Select(s => new SpreadingTable(s))];
        airSide = new SinkAir(nominal);
        SpreadingMethod = FinsOf(nominal) is null ? "series, even film" : "series, fins that carry heat along";
    }

    /// <summary>How spreading in the base is computed: <c>series, even film</c> or <c>series, fins that carry heat along</c>.</summary>
    public string SpreadingMethod { get; }

    /// <summary>The sink as it was prepared.</summary>
    public SinkSpec Nominal { get; }

    /// <summary>Rise over heat for one draw in one scene. Allocates some 300 bytes.</summary>
    /// <param name="draw">The sink as drawn: <see cref="Nominal"/> with changed scalars.</param>
    /// <param name="ambientK">Air that the fan draws in, K, 200 to 400.</param>
    /// <param name="fanRuns">False for the scene with the fan stopped.</param>
    public SinkCurve Curve(SinkSpec draw, double ambientK, bool fanRuns)
    {
        ArgumentNullException.ThrowIfNull(draw);
        Guard.InRange(ambientK, 200, 400);
        var rises = RiseCurve.NodeRisesK;
        var count = rises.Length;
        Span<double> heats = stackalloc double[count];
        var conduction = new double[means.Length * count];
        var scene = SinkAir.In(draw, ambientK, fanRuns);
        double flow = 0,
            pressure = 0,
            capacity = 0;
        for (var i = 0; i < count; i++)
        {
            var state = airSide.At(scene, rises[i]);
            heats[i] = state.HeatW;
            var film = Math.Max(heats[i], 1e-6) / (rises[i] * draw.AcrossM * draw.AlongM);
            for (var s = 0; s < means.Length; s++)
            {
                conduction[s * count + i] = Conduction(draw, means[s].SpreadPerM(film / draw.ConductivityWPerMK));
            }

            if (i == 2 && state.FlowM3PerS > 0)
            {
                flow = state.FlowM3PerS;
                pressure = scene.Path.LossPa(flow, scene.Cool, state.Warm);
                capacity = flow * scene.Cool.Density * scene.Cool.SpecificHeat;
            }
        }

        return new SinkCurve(new RiseCurve(heats, rises), conduction, flow, pressure, capacity);
    }

    /// <summary>The sink at one heat, solved to 1e-9 of the heat, with all that a page wants to show. For nominal values.</summary>
    /// <param name="spec">The sink: <see cref="Nominal"/>, or that with changed scalars.</param>
    /// <param name="ambientK">Air that the fan draws in, K, 200 to 400.</param>
    /// <param name="fanRuns">False for the scene with the fan stopped.</param>
    /// <param name="heatW">Heat that enters, W, above 0.</param>
    /// <returns>The result, or null where no temperature up to 3000 K of rise carries the heat away (HEA011).</returns>
    public SinkResult? At(SinkSpec spec, double ambientK, bool fanRuns, double heatW)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.InRange(ambientK, 200, 400);
        Guard.Positive(heatW);
        var scene = SinkAir.In(spec, ambientK, fanRuns);
        HeatAtRise balance = new(airSide, scene, heatW);
        var found = Root.Between(ref balance, 0, MostRiseK, 0);
        if (!found.Converged || Math.Abs(found.Residual) > 1e-7 * heatW)
        {
            return null;
        }

        var rise = found.X;
        var state = airSide.At(scene, rise);
        var film = heatW / (rise * spec.AcrossM * spec.AlongM);
        double Source(Spreading series) =>
            rise + heatW * Conduction(spec, series.SpreadPerM(film / spec.ConductivityWPerMK));
        return new SinkResult
        {
            HeatW = heatW,
            BaseRiseK = rise,
            SourceRiseK = [.. exact.Select(Source)],
            SourcePeakRiseK = [.. peaks.Select(Source)],
            ConvectedW = state.ConvectedW,
            RadiatedW = state.RadiatedW,
            FlowM3PerS = state.FlowM3PerS,
            ChannelVelocityMPerS = state.VelocityMPerS,
            PressurePa = state.FlowM3PerS > 0 ? scene.Path.LossPa(state.FlowM3PerS, scene.Cool, state.Warm) : 0,
            ChannelLossPa = state.FlowM3PerS > 0 ? scene.Path.ChannelsPa(state.FlowM3PerS, scene.Cool, state.Warm) : 0,
            AirRiseK =
                state.FlowM3PerS > 0
                    ? state.ConvectedW / (state.FlowM3PerS * scene.Cool.Density * scene.Cool.SpecificHeat)
                    : 0,
            ForcedFilmWPerM2K = state.ForcedFilm,
            FinEfficiency = state.FinEfficiency,
            ReStar = state.ReStar,
            ReDiameter = state.ReDiameter,
            Elenbaas = state.Elenbaas,
            ChannelTiltRad = spec.ChannelTiltRad,
            InStall = state.FlowM3PerS > 0 && airSide.InStall(scene, state.FlowM3PerS),
            OutsideRange = OutsideRange(spec, scene, state),
            FanLine = airSide.FanLine(scene),
            PathLine = airSide.PathLine(scene, state.Warm),
            BalanceError = (heatW - state.HeatW) / heatW,
            Iterations = found.Iterations,
        };
    }

    private static List<string> OutsideRange(SinkSpec spec, in SinkScene scene, in SinkState state)
    {
        List<string> names = [];
        if (spec.FinCount >= 2 && state.FlowM3PerS > 0)
        {
            if (
                state.ReStar < ChannelFilm.LeastReStar
                || state.ReStar > ChannelFilm.MostReStar
                || state.ReDiameter > 2300
            )
            {
                names.Add(HeatMethods.ChannelFilm.Name);
            }

            if (state.ReDiameter > 2300)
            {
                names.Add(HeatMethods.Friction.Name);
            }
        }

        if (
            spec.FinCount >= 2
            && !scene.FanRuns
            && (state.Elenbaas is < 0.1 or > 1e5 || spec.ChannelTiltRad > Math.PI / 3)
        )
        {
            names.Add(HeatMethods.NaturalChannelFilm.Name);
        }

        return names;
    }

    private static double Conduction(SinkSpec spec, double spreadPerM) =>
        (spec.BaseThicknessM / (spec.AcrossM * spec.AlongM) + spec.Factors.Spreading * spreadPerM)
        / spec.ConductivityWPerMK;

    private static Spreading Series(SinkSpec spec, IReadOnlyList<Footprint> sources, Footprint probe, bool local) =>
        new(spec.AcrossM, spec.AlongM, spec.BaseThicknessM, sources, probe, local, FinsOf(spec));

    private static SpreadingFins? FinsOf(SinkSpec spec) =>
        spec.FinCount < 2 ? null : new(spec.AcrossM, spec.FinCount, spec.FinThicknessM, spec.FinHeightM);

    /// <summary>The part of a footprint that lies on the base; one that hangs over is told as a finding.</summary>
    private static Footprint Inside(Footprint f, SinkSpec spec)
    {
        var (x, width) = Clip(f.CentreAcrossM, f.WidthM, spec.AcrossM);
        var (y, depth) = Clip(f.CentreAlongM, f.DepthM, spec.AlongM);
        return f with { CentreAcrossM = x, WidthM = width, CentreAlongM = y, DepthM = depth };
    }

    private static (double Centre, double Size) Clip(double centre, double size, double side)
    {
        var least = 0.01 * side;
        var from = Math.Clamp(centre - size / 2, 0, side - least);
        var to = Math.Clamp(centre + size / 2, from + least, side);
        return ((from + to) / 2, to - from);
    }

    private readonly struct HeatAtRise(SinkAir airSide, SinkScene scene, double heatW) : IScalarFunction
    {
        /// <inheritdoc/>
        public double At(double x) => x <= 0 ? -heatW : airSide.At(scene, x).HeatW - heatW;
    }
}
