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
/// ring's exchange with itself by closure. Within a ring the light is taken as even round the funnel.
/// <b>Validity</b>: convex four-sided funnel, emitter centred in the plane of the small opening. <b>Source</b>: flux algebra as in
/// Siegel and Howell, Thermal Radiation Heat Transfer, 4th ed. <b>Accuracy</b>: efficiency within 0.1 % of a patch radiosity for a
/// diffuse square funnel. <b>Checked by</b>: <i>solver</i> (benchmark funnel), <i>invariant</i> (closure, all light accounted for).
/// </remarks>
public sealed class FunnelGeometry
{
    /// <summary>Rings of the wall.</summary>
    internal static readonly int Walls = 20;

    /// <summary>Concentric rings of the mouth.</summary>
    internal static readonly int Mouths = 8;

    /// <summary>All rings: the base, the walls from small to large, the mouth from the centre outward.</summary>
    internal static readonly int Count = 1 + Walls + Mouths;

    private FunnelGeometry(FunnelSpec funnel, EmitterFace face)
    {
        Funnel = funnel;
        Face = Fitted(face, funnel);
        Levels = LevelsOf(funnel);
        Exchange = ExchangeShares(funnel, Levels, out var areas);
        AreasM2 = areas;
        First = FirstFall(funnel, Face, Levels);
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
            for (var i = 1 + Walls; i < Count; i++)
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

    private static double[] FirstFall(FunnelSpec funnel, EmitterFace face, double[] levels)
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
            first[k] = before - through;
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
            first[1 + Walls + j] = Math.Max(through - inside, 0);
            inside = Math.Max(through, inside);
        }

        return first;
    }

    private static double[] ExchangeShares(FunnelSpec funnel, double[] levels, out double[] areas)
    {
        // Cross-sections: the levels from the small opening up, then the growing rectangles of the mouth.
        var sections = new (double A, double B, double Z)[Walls + 1 + Mouths];
        for (var k = 0; k <= Walls; k++)
        {
            sections[k] = (funnel.HalfWidthAt(levels[k]), funnel.HalfHeightAt(levels[k]), levels[k]);
        }

        for (var j = 0; j < Mouths; j++)
        {
            var part = (j + 1.0) / Mouths;
            sections[Walls + 1 + j] = (funnel.LargeWidthM / 2 * part, funnel.LargeHeightM / 2 * part, funnel.DepthM);
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

        areas = AreasOf(sections, levels);
        var exchange = new double[Count * Count];
        void Set(int i, int j, double area)
        {
            exchange[(i * Count) + j] = exchange[(j * Count) + i] = Math.Max(area, 0);
        }

        // What a rectangle sees of a wall ring is what passes the ring's nearer cross-section but not its farther one.
        for (var k = 0; k < Walls; k++)
        {
            Set(0, 1 + k, between[0, k] - between[0, k + 1]);
            for (var l = k + 1; l < Walls; l++)
            {
                Set(1 + k, 1 + l, between[k + 1, l] - between[k + 1, l + 1] - between[k, l] + between[k, l + 1]);
            }

            for (var j = 0; j < Mouths; j++)
            {
                var outer = between[Walls + 1 + j, k + 1] - between[Walls + 1 + j, k];
                var inner = j == 0 ? 0 : between[Walls + j, k + 1] - between[Walls + j, k];
                Set(1 + k, 1 + Walls + j, outer - inner);
            }
        }

        for (var j = 0; j < Mouths; j++)
        {
            Set(0, 1 + Walls + j, between[0, Walls + 1 + j] - (j == 0 ? 0 : between[0, Walls + j]));
        }

        Close(exchange, areas);
        return exchange;
    }

    private static double[] AreasOf((double A, double B, double Z)[] sections, double[] levels)
    {
        var areas = new double[Count];
        areas[0] = 4 * sections[0].A * sections[0].B;
        for (var k = 0; k < Walls; k++)
        {
            var (lower, upper) = (sections[k], sections[k + 1]);
            var rise = levels[k + 1] - levels[k];
            var (da, db) = (upper.A - lower.A, upper.B - lower.B);
            areas[1 + k] =
                (2 * (lower.B + upper.B) * Math.Sqrt((rise * rise) + (da * da)))
                + (2 * (lower.A + upper.A) * Math.Sqrt((rise * rise) + (db * db)));
        }

        for (var j = 0; j < Mouths; j++)
        {
            var outer = sections[Walls + 1 + j];
            var inner = j == 0 ? (A: 0.0, B: 0.0, Z: 0.0) : sections[Walls + j];
            areas[1 + Walls + j] = 4 * ((outer.A * outer.B) - (inner.A * inner.B));
        }

        return areas;
    }

    private static void Close(double[] exchange, double[] areas)
    {
        for (var i = 0; i < Count; i++)
        {
            var others = 0.0;
            for (var j = 0; j < Count; j++)
            {
                others += exchange[(i * Count) + j];
            }

            // A flat face never sees itself; what a wall ring does not send elsewhere it sends to itself.
            var wall = i > 0 && i <= Walls;
            if (wall)
            {
                exchange[(i * Count) + i] = Math.Max(areas[i] - others, 0);
                others += exchange[(i * Count) + i];
            }

            for (var j = 0; j < Count; j++)
            {
                exchange[(i * Count) + j] /= others;
            }
        }
    }
}
