using Lampwright.Geometry;

namespace Lampwright.Light;

/// <summary>
/// Everything about a funnel that hangs on shape and beam alone: how the emitter's light first falls on rings of the wall and of the
/// mouth, where it goes after mirror reflections, and how light is exchanged between the rings. Heavy (about a millisecond): prepared
/// once at nominal and reused by every draw.
/// </summary>
/// <remarks>
/// The funnel is cut by planes parallel to its openings into rings, each of all four walls; mouth into concentric rings. A straight
/// ray between two cross-sections of a convex funnel passes every cross-section between them, so that all exchange areas follow by
/// differences from the closed form of two parallel rectangles on one axis (<see cref="ViewFactors.CoaxialExchangeM2"/>), and a
/// ring's exchange with itself by closure. Within a ring the walls across x and across y are told apart (<see cref="WallPairs"/>);
/// along each the light is taken as even.
/// <b>Validity</b>: convex four-sided funnel, emitter centred in the plane of the small opening. <b>Source</b>: flux algebra as in
/// Siegel and Howell, Thermal Radiation Heat Transfer, 4th ed. <b>Accuracy</b>: efficiency within 0.1 % of a patch radiosity for a
/// diffuse square funnel. <b>Checked by</b>: <i>solver</i> (benchmark funnel), <i>invariant</i> (closure, all light accounted for).
/// </remarks>
public sealed class FunnelGeometry
{
    /// <summary>Rings of the wall; each holds the pair of walls across x and the pair across y.</summary>
    internal static readonly int Walls = 12;

    /// <summary>Concentric rings of the mouth.</summary>
    internal static readonly int Mouths = 8;

    /// <summary>Index of the first ring of the mouth.</summary>
    internal static readonly int FirstMouth = 1 + (2 * Walls);

    /// <summary>
    /// All patches: the base, the walls across x from small to large, the walls across y, the mouth from the centre outward.
    /// </summary>
    internal static readonly int Count = FirstMouth + Mouths;

    private FunnelGeometry(FunnelSpec funnel, EmitterFace face)
    {
        Funnel = funnel;
        Face = Fitted(face, funnel);
        Levels = LevelsOf(funnel);
        var pairs = new WallPairs(funnel, Levels);
        AreasM2 = AreasOf(funnel, pairs);
        Exchange = ExchangeShares(funnel, Levels, pairs);
        First = FirstFall(funnel, Face, Levels, pairs);
        Mirrored = MirrorPaths.Falls(this);
    }

    /// <summary>The funnel that was prepared.</summary>
    public FunnelSpec Funnel { get; }

    /// <summary>Share of the emitter's light that meets the mouth without touching the wall, 0 to 1.</summary>
    public double DirectShare
    {
        get
        {
            var sum = 0.0;
            for (var i = FirstMouth; i < Count; i++)
            {
                sum += First[i];
            }

            return sum;
        }
    }

    /// <summary>The emitting face, made no larger than the small opening.</summary>
    internal EmitterFace Face { get; }

    /// <summary>Heights of the cuts above the small opening, metres.</summary>
    internal double[] Levels { get; }

    /// <summary>Areas of the rings in square metres.</summary>
    internal double[] AreasM2 { get; }

    /// <summary>Share of the diffuse light of ring j that falls on ring i, at <c>j * Count + i</c>.</summary>
    internal double[] Exchange { get; }

    /// <summary>Where the emitter's light falls first, per lumen.</summary>
    internal double[] First { get; }

    /// <summary>Where it falls after one, two… mirror reflections at a perfect mirror, per lumen.</summary>
    internal double[][] Mirrored { get; }

    /// <summary>Prepares a funnel for an emitter. Run once at nominal; draws reuse it.</summary>
    /// <param name="funnel">The funnel; all lengths above 0.</param>
    /// <param name="face">The emitting face, centred in the small opening; where it is larger than the opening the part inside is taken.</param>
    public static FunnelGeometry Prepare(FunnelSpec funnel, EmitterFace face)
    {
        ArgumentNullException.ThrowIfNull(funnel);
        ArgumentNullException.ThrowIfNull(face);
        Guard.Positive(funnel.SmallWidthM);
        Guard.Positive(funnel.SmallHeightM);
        Guard.Positive(funnel.LargeWidthM);
        Guard.Positive(funnel.LargeHeightM);
        Guard.Positive(funnel.DepthM);
        Guard.Positive(face.WidthM);
        Guard.Positive(face.HeightM);
        return new(funnel, face);
    }

    private static EmitterFace Fitted(EmitterFace face, FunnelSpec funnel)
    {
        if (face.Round)
        {
            var diameter = Math.Min(face.WidthM, Math.Min(funnel.SmallWidthM, funnel.SmallHeightM));
            return face with { WidthM = diameter, HeightM = diameter };
        }

        return face with
        {
            WidthM = Math.Min(face.WidthM, funnel.SmallWidthM),
            HeightM = Math.Min(face.HeightM, funnel.SmallHeightM),
        };
    }

    private static double[] LevelsOf(FunnelSpec funnel)
    {
        // Closer cuts near the small opening, where the light changes fastest.
        var levels = new double[Walls + 1];
        for (var k = 0; k <= Walls; k++)
        {
            var t = (double)k / Walls;
            levels[k] = funnel.DepthM * t * (0.5 + (0.5 * t));
        }

        return levels;
    }

    private static double[] FirstFall(FunnelSpec funnel, EmitterFace face, double[] levels, WallPairs pairs)
    {
        var first = new double[Count];
        var exponent = face.BeamExponent;
        var before = 1.0;
        for (var k = 1; k <= Walls; k++)
        {
            var z = levels[k];
            var through = BeamThroughRectangle.ShareOfFace(
                face,
                funnel.HalfWidthAt(z),
                funnel.HalfHeightAt(z),
                z,
                exponent
            );
            through = Math.Min(through, before);
            var x = SharedByX(face, pairs, k - 1);
            first[k] = (before - through) * x;
            first[Walls + k] = (before - through) * (1 - x);
            before = through;
        }

        var inside = 0.0;
        for (var j = 0; j < Mouths; j++)
        {
            var part = (j + 1.0) / Mouths;
            var through =
                j == Mouths - 1
                    ? before
                    : BeamThroughRectangle.ShareOfFace(
                        face,
                        funnel.LargeWidthM / 2 * part,
                        funnel.LargeHeightM / 2 * part,
                        funnel.DepthM,
                        exponent
                    );
            first[FirstMouth + j] = Math.Max(through - inside, 0);
            inside = Math.Max(through, inside);
        }

        return first;
    }

    /// <summary>Share of a ring's first light that falls on the walls across x; as for a Lambertian face.</summary>
    private static double SharedByX(EmitterFace face, WallPairs pairs, int ring)
    {
        ReadOnlySpan<double> part = [0.2113248654051871, 0.7886751345948129];
        var (x, y) = (0.0, 0.0);
        foreach (var u in part)
        {
            foreach (var v in part)
            {
                var (sine, cosine) = Math.SinCos(v * Math.PI / 2);
                var point = face.Round
                    ? new Vec3(face.WidthM / 2 * Math.Sqrt(u) * cosine, face.WidthM / 2 * Math.Sqrt(u) * sine, 0)
                    : new Vec3(face.WidthM / 2 * u, face.HeightM / 2 * v, 0);
                x += pairs.FromBase(point, 0, ring);
                y += pairs.FromBase(point, 1, ring);
            }
        }

        return x + y > 0 ? x / (x + y) : 0.5;
    }

    private static double[] ExchangeShares(FunnelSpec funnel, double[] levels, WallPairs pairs)
    {
        // Cross-sections: the levels from the small opening up, then the growing rectangles of the mouth.
        var sections = new (double A, double B, double Z)[Walls + 1 + Mouths];
        for (var k = 0; k <= Walls; k++)
        {
            sections[k] = (funnel.HalfWidthAt(levels[k]), funnel.HalfHeightAt(levels[k]), levels[k]);
        }

        for (var j = 0; j < Mouths; j++)
        {
            sections[Walls + 1 + j] = MouthSection(funnel, j);
        }

        var count = sections.Length;
        var between = new double[count, count];
        for (var i = 0; i < count; i++)
        {
            for (var j = i; j < count; j++)
            {
                between[i, j] = between[j, i] = ViewFactors.CoaxialExchangeM2(
                    sections[i].A,
                    sections[i].B,
                    sections[j].A,
                    sections[j].B,
                    Math.Abs(sections[j].Z - sections[i].Z)
                );
            }
        }

        var exchange = new double[Count * Count];
        void Set(int i, int j, double area)
        {
            exchange[(i * Count) + j] = exchange[(j * Count) + i] = Math.Max(area, 0);
        }

        // What a rectangle sees of a wall ring is what passes the ring's nearer cross-section but not its farther one;
        // the walls across x and y share it by their own views.
        void Share(int ring, int other, double exact, double x, double y)
        {
            var part = x + y > 0 ? x / (x + y) : 0.5;
            Set(1 + ring, other, exact * part);
            Set(1 + Walls + ring, other, exact * (1 - part));
        }

        for (var k = 0; k < Walls; k++)
        {
            var (a, b, z) = sections[0];
            Share(
                k,
                0,
                between[0, k] - between[0, k + 1],
                pairs.WithRectangle(0, k, a, b, z),
                pairs.WithRectangle(1, k, a, b, z)
            );
            var (beforeX, beforeY, before) = (0.0, 0.0, 0.0);
            for (var j = 0; j < Mouths; j++)
            {
                var (ma, mb, mz) = sections[Walls + 1 + j];
                var exact = between[Walls + 1 + j, k + 1] - between[Walls + 1 + j, k];
                var (x, y) = (pairs.WithRectangle(0, k, ma, mb, mz), pairs.WithRectangle(1, k, ma, mb, mz));
                Share(k, FirstMouth + j, exact - before, Math.Max(x - beforeX, 0), Math.Max(y - beforeY, 0));
                (beforeX, beforeY, before) = (x, y, exact);
            }

            for (var l = k + 1; l < Walls; l++)
            {
                var exact = between[k + 1, l] - between[k + 1, l + 1] - between[k, l] + between[k, l + 1];
                SetWalls(k, l, Math.Max(exact, 0), pairs.Between(k, l), Set);
            }
        }

        for (var j = 0; j < Mouths; j++)
        {
            Set(0, FirstMouth + j, between[0, Walls + 1 + j] - (j == 0 ? 0 : between[0, Walls + j]));
        }

        SetOwn(exchange, pairs, Set);
        Normalise(exchange);
        return exchange;
    }

    private static void SetWalls(
        int k,
        int l,
        double exact,
        (double XX, double XY, double YX, double YY) by,
        Action<int, int, double> set
    )
    {
        var sum = by.XX + by.XY + by.YX + by.YY;
        var scale = sum > 0 ? exact / sum : 0;
        set(1 + k, 1 + l, by.XX * scale);
        set(1 + k, 1 + Walls + l, by.XY * scale);
        set(1 + Walls + k, 1 + l, by.YX * scale);
        set(1 + Walls + k, 1 + Walls + l, by.YY * scale);
    }

    /// <summary>A ring's exchange with itself by closure: what it does not send elsewhere stays in it.</summary>
    private static void SetOwn(double[] exchange, WallPairs pairs, Action<int, int, double> set)
    {
        for (var k = 0; k < Walls; k++)
        {
            var sent = 0.0;
            for (var i = 0; i < Count; i++)
            {
                sent += exchange[((1 + k) * Count) + i] + exchange[((1 + Walls + k) * Count) + i];
            }

            var exact = Math.Max(pairs.AreaM2(0, k) + pairs.AreaM2(1, k) - sent, 0);
            var by = pairs.Between(k, k);
            var across = (by.XY + by.YX) / 2;
            var sum = by.XX + by.YY + (2 * across);
            var scale = sum > 0 ? exact / sum : 0;
            set(1 + k, 1 + k, by.XX * scale);
            set(1 + Walls + k, 1 + Walls + k, by.YY * scale);
            set(1 + k, 1 + Walls + k, across * scale);
        }
    }

    private static (double A, double B, double Z) MouthSection(FunnelSpec funnel, int ring)
    {
        var part = (ring + 1.0) / Mouths;
        return (funnel.LargeWidthM / 2 * part, funnel.LargeHeightM / 2 * part, funnel.DepthM);
    }

    private static double[] AreasOf(FunnelSpec funnel, WallPairs pairs)
    {
        var areas = new double[Count];
        areas[0] = funnel.SmallWidthM * funnel.SmallHeightM;
        for (var k = 0; k < Walls; k++)
        {
            areas[1 + k] = pairs.AreaM2(0, k);
            areas[1 + Walls + k] = pairs.AreaM2(1, k);
        }

        var before = 0.0;
        for (var j = 0; j < Mouths; j++)
        {
            var (a, b, _) = MouthSection(funnel, j);
            areas[FirstMouth + j] = (4 * a * b) - before;
            before = 4 * a * b;
        }

        return areas;
    }

    /// <summary>Exchange areas to shares: every patch sends all of its light somewhere.</summary>
    private static void Normalise(double[] exchange)
    {
        for (var i = 0; i < Count; i++)
        {
            var row = exchange.AsSpan(i * Count, Count);
            var sum = 0.0;
            foreach (var area in row)
            {
                sum += area;
            }

            for (var j = 0; j < Count; j++)
            {
                row[j] /= sum;
            }
        }
    }
}
