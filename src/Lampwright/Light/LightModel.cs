namespace Lampwright.Light;

/// <summary>
/// One light, prepared once at nominal (about a millisecond with a funnel), answering draws in a few microseconds without allocation.
/// </summary>
/// <remarks>
/// With a diffuser the exit is a Lambertian panel, brighter where more light falls on it, made of concentric rectangles. With an open
/// funnel the subject sees the emitter and the wall's bands through the mouth. A diffuser without a funnel is taken as standing close
/// before the emitter and lit evenly. All is proportional to the emitter's flux.
/// <b>Validity</b>: subject centred on the axis and square to it. <b>Source</b>: see <see cref="FunnelEnclosure"/> and
/// <see cref="Illuminance"/>. <b>Checked by</b>: <i>solver</i> (benchmark funnel: efficiency, axis candela, lux at 1 m), <i>invariant</i>.
/// </remarks>
public sealed class LightModel
{
    private readonly FunnelEnclosure? enclosure;

    private LightModel(LightSpec spec)
    {
        Spec = spec;
        BeamExponent = spec.Emitter.BeamExponent;
        if (spec.Funnel is { } funnel)
        {
            var nominal = spec.Nominal;
            enclosure = FunnelEnclosure.Prepare(
                FunnelGeometry.Prepare(funnel, spec.Emitter),
                Math.Clamp(nominal.WallReflectance, 0, 1),
                Math.Clamp(nominal.SpecularShare, 0, 1),
                Math.Clamp(nominal.BaseReflectance, 0, 1),
                Math.Clamp(nominal.Reflectance, 0, 1)
            );
        }
    }

    /// <summary>What it was prepared from.</summary>
    public LightSpec Spec { get; }

    /// <summary>Exponent m of the emitter's cos^m beam.</summary>
    public double BeamExponent { get; }

    /// <summary>Share of the emitter's light that meets the mouth without touching the wall; 1 without a funnel.</summary>
    public double DirectShare => enclosure?.Geometry.DirectShare ?? 1;

    /// <summary>Prepares a light. Run once at nominal; draws reuse it.</summary>
    public static LightModel Prepare(LightSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.Positive(spec.Subject.DistanceM);
        Guard.Positive(spec.Emitter.WidthM);
        Guard.Positive(spec.Emitter.HeightM);
        return new(spec);
    }

    /// <summary>What comes of one lumen. Runs per draw.</summary>
    public LightResult Result(in LightDraw draw)
    {
        var (w, h) = (Spec.Subject.WidthM / 2, Spec.Subject.HeightM / 2);
        Guard.Positive(draw.DistanceM);
        return enclosure is null ? WithoutFunnel(draw, w, h)
            : Spec.Diffuser is null ? ThroughOpenMouth(enclosure, draw, w, h)
            : ThroughDiffuser(enclosure, draw, w, h);
    }

    /// <summary>Illuminance on a grid over the subject, lux per emitter lumen, row by row from −x, −y. For pictures; not per draw.</summary>
    /// <param name="columns">Points along x, 2 or more.</param>
    /// <param name="rows">Points along y, 2 or more.</param>
    public double[] SubjectGrid(int columns, int rows)
    {
        Guard.InRange(columns, 2, 1000);
        Guard.InRange(rows, 2, 1000);
        var grid = new double[columns * rows];
        var nominal = Spec.Nominal;

        // Everything lies about the axis: one quarter is computed and mirrored both ways.
        for (var r = 0; r < (rows + 1) / 2; r++)
        {
            for (var c = 0; c < (columns + 1) / 2; c++)
            {
                var x = Spec.Subject.WidthM * (((double)c / (columns - 1)) - 0.5);
                var y = Spec.Subject.HeightM * (((double)r / (rows - 1)) - 0.5);
                var (top, right) = (rows - 1 - r, columns - 1 - c);
                grid[(r * columns) + c] =
                    grid[(r * columns) + right] =
                    grid[(top * columns) + c] =
                    grid[(top * columns) + right] =
                        (
                            enclosure is null ? WithoutFunnel(nominal, x, y)
                            : Spec.Diffuser is null ? ThroughOpenMouth(enclosure, nominal, x, y)
                            : ThroughDiffuser(enclosure, nominal, x, y)
                        ).CornerLuxPerLm;
            }
        }

        return grid;
    }

    private LightResult WithoutFunnel(in LightDraw draw, double x, double y)
    {
        if (Spec.Diffuser is not { } panel)
        {
            var face = Spec.Emitter;
            // Off the axis a round face is taken as the square of equal area: their second moments differ by 5 %.
            var (a, b) = face.Round
                ? (Math.Sqrt(face.AreaM2) / 2, Math.Sqrt(face.AreaM2) / 2)
                : (face.WidthM / 2, face.HeightM / 2);
            var area = face.AreaM2;
            var distance = draw.DistanceM;
            var centre = face.Round
                ? 1 - Math.Pow(1 + (face.WidthM * face.WidthM / 4 / (distance * distance)), -(BeamExponent + 1) / 2)
                : BeamThroughRectangle.Share(-a, a, -b, b, distance, BeamExponent);
            var corner = BeamThroughRectangle.Share(-a - x, a - x, -b - y, b - y, distance, BeamExponent);
            return new(
                1,
                0,
                0,
                0,
                draw.BeamFactor * Emission.PeakIntensityPerLumen(BeamExponent),
                draw.BeamFactor * centre / area,
                draw.BeamFactor * Aside(draw.BeamFactor, BeamExponent, x, y, distance) * corner / area,
                distance
            );
        }

        var pass = Math.Clamp(draw.Transmittance, 0, 1);
        var mirror = Math.Min(Math.Clamp(draw.Reflectance, 0, 1 - pass), 1 - 1e-9);
        var back = Math.Clamp(draw.BaseReflectance, 0, 1);
        var falling = 1 / (1 - (mirror * back));
        var flux = Scaled(
            new(pass * falling, 0, (1 - pass - mirror) * falling, (1 - back) * mirror * falling),
            draw.FunnelFactor
        );
        var luminance = draw.DiffuserFactor * flux.Exit / (Math.PI * panel.WidthM * panel.HeightM);
        return new(
            flux.Exit,
            0,
            flux.AbsorbedDiffuser,
            flux.AbsorbedBase,
            draw.DiffuserFactor * flux.Exit / Math.PI,
            Illuminance.OnAxisOfRectangle(luminance, panel.WidthM, panel.HeightM, draw.DistanceM),
            Aside(draw.DiffuserFactor, 1, x, y, draw.DistanceM)
                * Illuminance.OfRectangleAt(luminance, panel.WidthM, panel.HeightM, draw.DistanceM, x, y),
            draw.DistanceM
        );
    }

    private LightResult ThroughDiffuser(FunnelEnclosure box, in LightDraw draw, double x, double y)
    {
        Span<double> late = stackalloc double[FunnelEnclosure.Bands];
        var solved = box.Flux(
            draw.WallReflectance,
            draw.SpecularShare * draw.SpecularFactor,
            draw.BaseReflectance,
            draw.Transmittance,
            draw.Reflectance,
            late,
            out var mirror
        );
        Span<double> rings = stackalloc double[FunnelGeometry.Mouths];
        box.OnMouthRings(late, mirror, rings);
        var flux = Scaled(solved, draw.FunnelFactor);

        // Concentric rectangles: each ring is its rectangle less the one inside.
        var funnel = box.Geometry.Funnel;
        var (a, b) = (funnel.LargeWidthM / 2, funnel.LargeHeightM / 2);
        var (centre, corner, falling, innerCentre, innerCorner) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var j = 0; j < rings.Length; j++)
        {
            var part = (j + 1.0) / rings.Length;
            var (pa, pb) = (a * part, b * part);
            var atCentre = 4 * ViewFactors.ElementToCornerRectangle(pa, pb, draw.DistanceM);
            var atCorner = ViewFactors.ElementToRectangle(-pa - x, pa - x, -pb - y, pb - y, draw.DistanceM);
            var light = rings[j] / box.Geometry.AreasM2[FunnelGeometry.FirstMouth + j];
            centre += light * (atCentre - innerCentre);
            corner += light * (atCorner - innerCorner);
            falling += rings[j];
            (innerCentre, innerCorner) = (atCentre, atCorner);
        }

        var pass = falling > 0 ? draw.DiffuserFactor * flux.Exit / falling : 0;
        return new(
            flux.Exit,
            flux.AbsorbedReflector,
            flux.AbsorbedDiffuser,
            flux.AbsorbedBase,
            draw.DiffuserFactor * flux.Exit / Math.PI,
            pass * centre,
            pass * Aside(draw.DiffuserFactor, 1, x, y, draw.DistanceM) * corner,
            draw.DistanceM
        );
    }

    private LightResult ThroughOpenMouth(FunnelEnclosure box, in LightDraw draw, double x, double y)
    {
        Span<double> late = stackalloc double[FunnelEnclosure.Bands];
        var solved = box.Flux(
            draw.WallReflectance,
            draw.SpecularShare * draw.SpecularFactor,
            draw.BaseReflectance,
            1,
            0,
            late,
            out var mirror
        );
        var flux = Scaled(solved, draw.FunnelFactor);
        var scale = solved.Exit > 0 ? flux.Exit / solved.Exit : 0;
        Span<double> bands = stackalloc double[1 + FunnelEnclosure.WallBands];
        box.ScatteredByBands(
            late,
            Math.Clamp(draw.WallReflectance, 0, 1),
            mirror,
            Math.Clamp(draw.BaseReflectance, 0, 1),
            bands
        );
        var mirrored = box.MirroredToMouth(mirror);
        var centre = scale * OpenMouth.Seen(box, bands, mirrored, 0, 0, draw.DistanceM, BeamExponent, draw.BeamFactor);
        var corner = scale * OpenMouth.Seen(box, bands, mirrored, x, y, draw.DistanceM, BeamExponent, draw.BeamFactor);
        return new(
            flux.Exit,
            flux.AbsorbedReflector,
            0,
            flux.AbsorbedBase,
            scale * OpenMouth.AxisIntensity(box, bands, mirrored, BeamExponent, draw.BeamFactor),
            centre,
            corner,
            draw.DistanceM
        );
    }

    /// <summary>
    /// A source that is brighter by a factor along its axis is darker aside: cos^m with the same flux and (m + 1) times the factor.
    /// </summary>
    private static double Aside(double factor, double exponent, double x, double y, double distance)
    {
        var cos = distance / Math.Sqrt((distance * distance) + (x * x) + (y * y));
        return Math.Pow(cos, (exponent + 1) * (factor - 1));
    }

    /// <summary>The method's error acts on what leaves; the rest is shared as before, so that the sum stays 1.</summary>
    private static FunnelFlux Scaled(FunnelFlux flux, double factor)
    {
        var exit = Math.Clamp(flux.Exit * factor, 0, 1);
        var lost = 1 - flux.Exit;
        var rest = lost > 1e-12 ? (1 - exit) / lost : 0;
        return lost > 1e-12
            ? new(exit, flux.AbsorbedReflector * rest, flux.AbsorbedDiffuser * rest, flux.AbsorbedBase * rest)
            : flux;
    }
}
