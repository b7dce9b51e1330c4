namespace Lampwright.Light;

/// <summary>Where one lumen of the emitter goes in a funnel with its mouth.</summary>
/// <param name="Exit">Share that leaves through the mouth (through the diffuser where there is one).</param>
/// <param name="AbsorbedReflector">Share that heats the funnel's wall.</param>
/// <param name="AbsorbedDiffuser">Share that heats the diffuser.</param>
/// <param name="AbsorbedBase">Share that heats the plane of the emitter.</param>
public readonly record struct FunnelFlux(
    double Exit,
    double AbsorbedReflector,
    double AbsorbedDiffuser,
    double AbsorbedBase
);

/// <summary>
/// Many reflections in the funnel, reduced to thirteen bands: prepared once at nominal reflectances (a 33 by 33 solve), then a solve of
/// thirteen equations for each draw (about a microsecond, no allocation).
/// </summary>
/// <remarks>
/// Light is followed as: first falls (closed form) and their mirror continuations; the first scattering of those, exact for any
/// reflectance; all later scattering, spread within a band as at nominal (so that nominal is the full solution of all rings, and
/// the balance of light closes for any reflectances). After the first scattering the mirrored part counts as scattered too:
/// that is the stated approximation of the specular share.
/// <b>Validity</b>: reflectances 0 to 1; mouth reflects diffusely. <b>Source</b>: radiosity method (Siegel and Howell). <b>Accuracy</b>:
/// see <see cref="FunnelGeometry"/>; away from nominal within 0.1 % for reflectances changed by 0.2. <b>Checked by</b>: <i>solver</i>, <i>invariant</i>.
/// </remarks>
public sealed class FunnelEnclosure
{
    /// <summary>Bands of one pair of walls.</summary>
    internal static readonly int PairBands = 4;

    /// <summary>Bands of the wall: those across x, then those across y.</summary>
    internal static readonly int WallBands = 2 * PairBands;

    /// <summary>Bands: the base, the walls, four of the mouth.</summary>
    internal static readonly int Bands = 1 + WallBands + 4;

    private static readonly int Falls = MirrorPaths.Most + 1;

    private readonly FunnelGeometry geometry;
    private readonly double[] bandAreas = new double[Bands];
    private readonly double[] within; // share of a band's late light on each ring
    private readonly double[] late; // band to band exchange of late light, at from * Bands + to
    private readonly double[] fallen; // per fall and band, what falls
    private readonly double[] scattered; // per fall and surface (base, wall, mouth) and band, where its first scattering goes

    private FunnelEnclosure(FunnelGeometry geometry, double wall, double mirror, double back, double mouth)
    {
        this.geometry = geometry;
        within = Within(geometry, wall, mirror, back, mouth);
        late = new double[Bands * Bands];
        fallen = new double[Falls * Bands];
        scattered = new double[Falls * 3 * Bands];
        for (var j = 0; j < FunnelGeometry.Count; j++)
        {
            var surface = Surface(j);
            bandAreas[Band(j)] += geometry.AreasM2[j];
            for (var i = 0; i < FunnelGeometry.Count; i++)
            {
                var share = geometry.Exchange[(j * FunnelGeometry.Count) + i];
                late[(Band(j) * Bands) + Band(i)] += within[j] * share;
                for (var fall = 0; fall < Falls; fall++)
                {
                    scattered[(((fall * 3) + surface) * Bands) + Band(i)] += Fall(geometry, fall)[j] * share;
                }
            }

            for (var fall = 0; fall < Falls; fall++)
            {
                fallen[(fall * Bands) + Band(j)] += Fall(geometry, fall)[j];
            }
        }
    }

    /// <summary>The shape that was prepared.</summary>
    public FunnelGeometry Geometry => geometry;

    /// <summary>Prepares the reduced enclosure at nominal reflectances.</summary>
    /// <param name="geometry">The prepared shape.</param>
    /// <param name="wallReflectance">Total reflectance of the wall, 0 to 1.</param>
    /// <param name="specularShare">Mirrored share of that, 0 to 1.</param>
    /// <param name="baseReflectance">Reflectance of the plane of the emitter, 0 to 1.</param>
    /// <param name="mouthReflectance">Reflectance of the diffuser, 0 to 1; 0 for an open mouth.</param>
    public static FunnelEnclosure Prepare(
        FunnelGeometry geometry,
        double wallReflectance,
        double specularShare,
        double baseReflectance,
        double mouthReflectance
    )
    {
        ArgumentNullException.ThrowIfNull(geometry);
        Guard.InRange(wallReflectance, 0, 1);
        return new(
            geometry,
            wallReflectance,
            wallReflectance * Guard.InRange(specularShare, 0, 1),
            Guard.InRange(baseReflectance, 0, 1),
            Guard.InRange(mouthReflectance, 0, 1)
        );
    }

    /// <summary>Where one lumen goes for given surfaces. Runs per draw; values outside 0 to 1 are taken at the limit.</summary>
    /// <param name="wallReflectance">Total reflectance of the wall.</param>
    /// <param name="specularShare">Mirrored share of that.</param>
    /// <param name="baseReflectance">Reflectance of the plane of the emitter.</param>
    /// <param name="mouthTransmittance">Transmittance of the diffuser; 1 for an open mouth.</param>
    /// <param name="mouthReflectance">Reflectance of the diffuser; with the transmittance it is held to 1.</param>
    public FunnelFlux Flux(
        double wallReflectance,
        double specularShare,
        double baseReflectance,
        double mouthTransmittance,
        double mouthReflectance
    )
    {
        Span<double> state = stackalloc double[Bands];
        return Flux(
            wallReflectance,
            specularShare,
            baseReflectance,
            mouthTransmittance,
            mouthReflectance,
            state,
            out _
        );
    }

    /// <summary>As the public one; also the late light on the bands and the powers of the mirror part.</summary>
    internal FunnelFlux Flux(
        double wallReflectance,
        double specularShare,
        double baseReflectance,
        double mouthTransmittance,
        double mouthReflectance,
        Span<double> lateOnBand,
        out double mirror
    )
    {
        var wall = Math.Clamp(wallReflectance, 0, 1);
        var back = Math.Clamp(baseReflectance, 0, 1);
        var pass = Math.Clamp(mouthTransmittance, 0, 1);
        // A mouth that gives all light back inside white walls would never end: a hair is always kept by it.
        var mouth = Math.Min(Math.Clamp(mouthReflectance, 0, 1 - pass), 1 - 1e-9);
        mirror = wall * Math.Clamp(specularShare, 0, 1);

        // First scattering of everything that has only been mirrored so far.
        lateOnBand.Clear();
        var (onBase, onWall, onMouth) = (0.0, 0.0, 0.0);
        var power = 1.0;
        for (var fall = 0; fall < Falls; fall++)
        {
            var scatter = (fall == Falls - 1 ? wall : wall - mirror) * power;
            var rows = scattered.AsSpan(fall * 3 * Bands, 3 * Bands);
            for (var b = 0; b < Bands; b++)
            {
                lateOnBand[b] +=
                    (power * back * rows[b]) + (scatter * rows[Bands + b]) + (power * mouth * rows[(2 * Bands) + b]);
                var falls = power * fallen[(fall * Bands) + b];
                if (b == 0)
                {
                    onBase += falls;
                }
                else if (b <= WallBands)
                {
                    onWall += falls;
                }
                else
                {
                    onMouth += falls;
                }
            }

            power *= mirror;
        }

        Span<double> matrix = stackalloc double[Bands * Bands];
        for (var to = 0; to < Bands; to++)
        {
            for (var from = 0; from < Bands; from++)
            {
                var reflectance =
                    from == 0 ? back
                    : from <= WallBands ? wall
                    : mouth;
                matrix[(to * Bands) + from] = (to == from ? 1 : 0) - (late[(from * Bands) + to] * reflectance);
            }
        }

        Elimination.Solve(matrix, lateOnBand, Bands);
        onBase += lateOnBand[0];
        for (var b = 1; b < Bands; b++)
        {
            if (b <= WallBands)
            {
                onWall += lateOnBand[b];
            }
            else
            {
                onMouth += lateOnBand[b];
            }
        }

        return new(pass * onMouth, (1 - wall) * onWall, (1 - pass - mouth) * onMouth, (1 - back) * onBase);
    }

    /// <summary>What falls on each ring of the mouth, from a solved state.</summary>
    internal void OnMouthRings(ReadOnlySpan<double> lateOnBand, double mirror, Span<double> rings)
    {
        for (var j = 0; j < FunnelGeometry.Mouths; j++)
        {
            var ring = FunnelGeometry.FirstMouth + j;
            var sum = within[ring] * lateOnBand[Band(ring)];
            var power = 1.0;
            for (var fall = 0; fall < Falls; fall++)
            {
                sum += power * Fall(geometry, fall)[ring];
                power *= mirror;
            }

            rings[j] = sum;
        }
    }

    /// <summary>What the wall's bands and the base scatter, per lumen, from a solved state (base first).</summary>
    internal void ScatteredByBands(
        ReadOnlySpan<double> lateOnBand,
        double wall,
        double mirror,
        double back,
        Span<double> bands
    )
    {
        for (var b = 0; b <= WallBands; b++)
        {
            var (sum, power) = (lateOnBand[b] * (b == 0 ? back : wall), 1.0);
            for (var fall = 0; fall < Falls; fall++)
            {
                var reflectance =
                    b == 0 ? back
                    : fall == Falls - 1 ? wall
                    : wall - mirror;
                sum += reflectance * power * fallen[(fall * Bands) + b];
                power *= mirror;
            }

            bands[b] = sum;
        }
    }

    /// <summary>Light that meets the mouth after at least one mirror reflection and no scattering, per lumen.</summary>
    internal double MirroredToMouth(double mirror)
    {
        var (sum, power) = (0.0, mirror);
        for (var fall = 1; fall < Falls; fall++)
        {
            for (var b = 1 + WallBands; b < Bands; b++)
            {
                sum += power * fallen[(fall * Bands) + b];
            }

            power *= mirror;
        }

        return sum;
    }

    /// <summary>Area of a wall band in square metres; band 0 is the base.</summary>
    internal double BandAreaM2(int band) => bandAreas[band];

    /// <summary>Band that a ring belongs to.</summary>
    internal static int Band(int ring) =>
        ring == 0 ? 0
        : ring < FunnelGeometry.FirstMouth ? 1 + ((ring - 1) * PairBands / FunnelGeometry.Walls)
        : 1 + WallBands + ((ring - FunnelGeometry.FirstMouth) * (Bands - 1 - WallBands) / FunnelGeometry.Mouths);

    private static int Surface(int ring) =>
        ring == 0 ? 0
        : ring < FunnelGeometry.FirstMouth ? 1
        : 2;

    private static double[] Fall(FunnelGeometry geometry, int fall) =>
        fall == 0 ? geometry.First : geometry.Mirrored[fall - 1];

    /// <summary>Full solution of all rings at nominal: how late light is spread within each band.</summary>
    private static double[] Within(FunnelGeometry geometry, double wall, double mirror, double back, double mouth)
    {
        var count = FunnelGeometry.Count;
        mouth = Math.Min(mouth, 1 - 1e-9);
        var light = new double[count];
        var matrix = new double[count * count];
        for (var j = 0; j < count; j++)
        {
            var reflectance = Surface(j) switch
            {
                0 => back,
                1 => wall,
                _ => mouth,
            };
            var (emitted, power) = (0.0, 1.0);
            for (var fall = 0; fall < Falls; fall++)
            {
                var scatter = Surface(j) == 1 && fall < Falls - 1 ? wall - mirror : reflectance;
                emitted += scatter * power * Fall(geometry, fall)[j];
                power *= mirror;
            }

            for (var i = 0; i < count; i++)
            {
                var share = geometry.Exchange[(j * count) + i];
                light[i] += emitted * share;
                matrix[(i * count) + j] = (i == j ? 1 : 0) - (share * reflectance);
            }
        }

        Elimination.Solve(matrix, light, count);
        var sums = new double[Bands];
        var areas = new double[Bands];
        for (var i = 0; i < count; i++)
        {
            sums[Band(i)] += light[i];
            areas[Band(i)] += geometry.AreasM2[i];
        }

        for (var i = 0; i < count; i++)
        {
            light[i] = sums[Band(i)] > 1e-12 ? light[i] / sums[Band(i)] : geometry.AreasM2[i] / areas[Band(i)];
        }

        return light;
    }
}
