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
    private readonly SpreadingTable[] otherMeans;
    private readonly Spreading[] otherPeaks;
    private readonly Spreading[] otherExact;
    private readonly double otherW;
    private readonly Spreading[] peaks;
    private readonly Spreading[] exact;
    private readonly SinkAir airSide;

    internal PreparedSink(SinkSpec nominal)
    {
        Nominal = nominal;
        otherW = nominal.OtherW;
        var own = nominal.Footprints.Where(f => f.OtherW <= 0).ToList();
        var shares = own.Sum(f => Guard.Positive(f.Share));
        var inside = own.Select(f => Inside(f with { Share = f.Share / shares }, nominal)).ToArray();
        var others = nominal
            .Footprints.Where(f => f.OtherW > 0)
            .Select(f => Inside(f with { Share = f.OtherW / otherW }, nominal))
            .ToArray();
        exact = [.. inside.Select(f => Series(nominal, inside, f, local: false))];
        peaks = [.. inside.Select(f => Series(nominal, inside, f, local: true))];
        means = [.. exact.Select(s => new SpreadingTable(s))];
        otherExact = others.Length == 0 ? [] : [.. inside.Select(f => Series(nominal, others, f, local: false))];
        otherPeaks = others.Length == 0 ? [] : [.. inside.Select(f => Series(nominal, others, f, local: true))];
        otherMeans = [.. otherExact.Select(s => new SpreadingTable(s))];
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
        Span<double> bases = stackalloc double[count];
        var back = draw.RootKPerW;
        var conduction = new double[means.Length * count];
        var byOthers = new double[otherMeans.Length * count];
        var scene = SinkAir.In(draw, ambientK, fanRuns);
        double flow = 0,
            pressure = 0,
            capacity = 0;
        for (var i = 0; i < count; i++)
        {
            var state = airSide.At(scene, rises[i]);
            heats[i] = state.HeatW;
            bases[i] = rises[i] + (back * heats[i]);
            var film = Math.Max(heats[i], 1e-6) / (bases[i] * draw.AcrossM * draw.AlongM);
            for (var s = 0; s < means.Length; s++)
            {
                conduction[s * count + i] = Conduction(draw, means[s].SpreadPerM(film / draw.ConductivityWPerMK));
            }

            for (var s = 0; s < otherMeans.Length; s++)
            {
                byOthers[s * count + i] = Conduction(draw, otherMeans[s].SpreadPerM(film / draw.ConductivityWPerMK));
            }

            if (i == 2 && state.FlowM3PerS > 0)
            {
                flow = state.FlowM3PerS;
                pressure = scene.Path.LossPa(flow, scene.Cool, state.Warm);
                capacity = flow * scene.Cool.Density * scene.Cool.SpecificHeat;
            }
        }

        return new SinkCurve(new RiseCurve(heats, bases), conduction, flow, pressure, capacity, byOthers, otherW);
    }

    /// <summary>The sink at one heat, solved to 1e-9 of the heat, with all that a page wants to show. For nominal values.</summary>
    /// <param name="spec">The sink: <see cref="Nominal"/>, or that with changed scalars.</param>
    /// <param name="ambientK">Air that the fan draws in, K, 200 to 400.</param>
    /// <param name="fanRuns">False for the scene with the fan stopped.</param>
    /// <param name="heatW">Heat of the emitter itself, W, above 0; that of others on the base comes on top.</param>
    /// <returns>The result, or null where no temperature up to 3000 K of rise carries the heat away (HEA011).</returns>
    public SinkResult? At(SinkSpec spec, double ambientK, bool fanRuns, double heatW)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.InRange(ambientK, 200, 400);
        Guard.Positive(heatW);
        var scene = SinkAir.In(spec, ambientK, fanRuns);
        var totalW = heatW + otherW;
        HeatAtRise balance = new(airSide, scene, totalW);
        var found = Root.Between(ref balance, 0, MostRiseK, 0);
        if (!found.Converged || Math.Abs(found.Residual) > 1e-7 * totalW)
        {
            return null;
        }

        var state = airSide.At(scene, found.X);
        var rise = found.X + (spec.RootKPerW * totalW);
        var film = totalW / (rise * spec.AcrossM * spec.AlongM);
        double By(Spreading series) => Conduction(spec, series.SpreadPerM(film / spec.ConductivityWPerMK));
        double Source(Spreading[] own, Spreading[] others, int i) =>
            rise + (heatW * By(own[i])) + (others.Length > 0 ? otherW * By(others[i]) : 0);
        return new SinkResult
        {
            HeatW = totalW,
            BaseRiseK = rise,
            SourceRiseK = [.. exact.Select((_, i) => Source(exact, otherExact, i))],
            SourcePeakRiseK = [.. peaks.Select((_, i) => Source(peaks, otherPeaks, i))],
            ConvectedW = state.ConvectedW,
            RadiatedW = state.RadiatedW,
            FlowM3PerS = state.FlowM3PerS,
            ChannelVelocityMPerS = state.VelocityMPerS,
            PressurePa = state.FlowM3PerS > 0 ? scene.Path.LossPa(state.FlowM3PerS, scene.Cool, state.Warm) : 0,
            RootRiseK = found.X,
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
            Losses = state.FlowM3PerS > 0 ? Losses(scene, state) : [],
            InStall = state.FlowM3PerS > 0 && airSide.InStall(scene, state.FlowM3PerS),
            OutsideRange = OutsideRange(spec, scene, state),
            FanLine = airSide.FanLine(scene),
            PathLine = airSide.PathLine(scene, state.Warm),
            BalanceError = (totalW - state.HeatW) / totalW,
            Iterations = found.Iterations,
        };
    }

    private static List<LossAtPoint> Losses(in SinkScene scene, in SinkState state)
    {
        List<LossAtPoint> losses = [];
        foreach (var loss in scene.Spec.AirLosses)
        {
            losses.Add(
                new(loss.Path, loss.OpenM2, scene.Path.OpeningFactor * loss.LossPa(state.FlowM3PerS, scene.Cool))
            );
        }

        if (scene.Path.ChannelAreaM2 > 0)
        {
            losses.Add(new("", 0, scene.Path.ChannelsPa(state.FlowM3PerS, scene.Cool, state.Warm)));
        }

        losses.Sort((a, b) => b.PressurePa.CompareTo(a.PressurePa));
        return losses;
    }

    private static List<string> OutsideRange(SinkSpec spec, in SinkScene scene, in SinkState state)
    {
        List<string> names = [];
        var form = scene.Surface.Form;
        if (form is SinkForm.Fins or SinkForm.Tower && state.FlowM3PerS > 0)
        {
            if (
                state.ReStar < ChannelFilm.LeastReStar
                || state.ReStar > ChannelFilm.MostReStar
                || state.ReDiameter > TurbulentChannel.LaminarRe
            )
            {
                names.Add(HeatMethods.ChannelFilm.Name);
            }

            if (state.ReDiameter > TurbulentChannel.LaminarRe)
            {
                names.Add(HeatMethods.Friction.Name);
            }
        }

        if (form == SinkForm.Pins && state.FlowM3PerS > 0)
        {
            var pins = spec.Pins!;
            if (state.ReDiameter > PinFilm.MostRe || pins.HeightM < 2 * pins.DiameterM)
            {
                names.Add(HeatMethods.PinFilm.Name);
            }

            var pitch = pins.PitchAcrossM(spec.AcrossM) / pins.DiameterM;
            if (pitch is < 1.25 or > 5)
            {
                names.Add(HeatMethods.PinFriction.Name);
            }
        }

        if (
            form is SinkForm.Fins or SinkForm.Tower
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
        spec.Form != SinkForm.Fins ? null : new(spec.AcrossM, spec.FinCount, spec.FinThicknessM, spec.FinHeightM);

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
