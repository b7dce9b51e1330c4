namespace Lampwright.Heat;

/// <summary>Several sources on a base: the rise at any point of the face, and the hottest one, by the exact series.</summary>
/// <remarks>
/// <para>The same series as <see cref="Spreading"/>, laid once for all points. The hottest point lies inside a source (outside, and on free
/// faces, a steady temperature has no maximum); from each centre that is warm enough Newton's steps lead to it, kept inside the source.</para>
/// Validity, Source: as <see cref="Spreading"/>. Accuracy: 1e-6 of the rise from a thickness of a 150th of the longer side on.
/// Checked by: solver (CalculiX, our own grid), invariant.
/// </remarks>
public sealed class SpreadingPeak
{
    private readonly double acrossM;
    private readonly double alongM;
    private readonly double split;
    private readonly double perWatt;
    private readonly double evenRise;
    private readonly IReadOnlyList<Footprint> sources;

    // Waves across by waves along, each with its weight in kelvin.
    private readonly double[][] waves;

    /// <summary>Lays the series.</summary>
    /// <param name="acrossM">Side a of the plate, m.</param>
    /// <param name="alongM">Side b of the plate, m.</param>
    /// <param name="thicknessM">Thickness, m.</param>
    /// <param name="conductivityWPerMK">Conductivity, W/(m·K).</param>
    /// <param name="filmWPerM2K">Film coefficient on the far face, W/(m²·K), above 0.</param>
    /// <param name="sources">Sources inside the plate; <see cref="Footprint.Share"/> is the heat in W.</param>
    public SpreadingPeak(
        double acrossM,
        double alongM,
        double thicknessM,
        double conductivityWPerMK,
        double filmWPerM2K,
        IReadOnlyList<Footprint> sources
    )
    {
        ArgumentNullException.ThrowIfNull(sources);
        this.acrossM = Guard.Positive(acrossM);
        this.alongM = Guard.Positive(alongM);
        Guard.Positive(thicknessM);
        Guard.Positive(conductivityWPerMK);
        Guard.Positive(filmWPerM2K);
        foreach (var s in sources)
        {
            Guard.Positive(s.WidthM);
            Guard.Positive(s.DepthM);
            Guard.InRange(s.Share, 0, double.MaxValue);
            Guard.InRange(s.CentreAcrossM, s.WidthM / 2 * (1 - 1e-9), acrossM - s.WidthM / 2 * (1 - 1e-9));
            Guard.InRange(s.CentreAlongM, s.DepthM / 2 * (1 - 1e-9), alongM - s.DepthM / 2 * (1 - 1e-9));
        }

        this.sources = sources;
        var area = acrossM * alongM;
        perWatt = 1 / (conductivityWPerMK * area);
        evenRise = sources.Sum(s => s.Share) * (thicknessM * perWatt + 1 / (filmWPerM2K * area));
        split = SpreadingNear.Split(acrossM, alongM);
        var last = Spreading.LastWave(thicknessM, split, Math.Max(acrossM, alongM));
        int termsAcross = (int)(last * acrossM / Math.PI) + 2,
            termsAlong = (int)(last * alongM / Math.PI) + 2;
        var across = sources.Select(s => Spreading.Shape(s.CentreAcrossM, s.WidthM, acrossM, termsAcross)).ToArray();
        var along = sources.Select(s => Spreading.Shape(s.CentreAlongM, s.DepthM, alongM, termsAlong)).ToArray();
        var ratio = filmWPerM2K / conductivityWPerMK;
        waves = new double[termsAcross][];
        for (var m = 0; m < termsAcross; m++)
        {
            var lambda = m * Math.PI / acrossM;
            var reach = last * last - lambda * lambda;
            var count = reach < 0 ? 0 : Math.Min(termsAlong, (int)(Math.Sqrt(reach) * alongM / Math.PI) + 1);
            var line = new double[count];
            for (var n = m == 0 ? 1 : 0; n < count; n++)
            {
                var delta = n * Math.PI / alongM;
                var beta = Math.Sqrt(lambda * lambda + delta * delta);
                var excitation = 0.0;
                for (var s = 0; s < sources.Count; s++)
                {
                    excitation += sources[s].Share * across[s][m] * along[s][n];
                }

                // Z - 1 = 2·ρ·e/(1 - ρ·e) with e = exp(-2βt), ρ = (β - h/k)/(β + h/k)
                var decay = Math.Exp(-2 * beta * thicknessM) * (beta - ratio) / (beta + ratio);
                var felt = 2 * decay / (1 - decay);
                line[n] =
                    (m == 0 || n == 0 ? 2 : 4)
                    * perWatt
                    * excitation
                    / beta
                    * (felt + SpreadingNear.Beyond(beta, split));
            }

            waves[m] = line;
        }
    }

    /// <summary>Rise of a point of the face with the sources over the fluid, K.</summary>
    /// <param name="atAcrossM">Place across, m, within the plate.</param>
    /// <param name="atAlongM">Place along, m, within the plate.</param>
    public double RiseAt(double atAcrossM, double atAlongM) =>
        At(Guard.InRange(atAcrossM, 0, acrossM), Guard.InRange(atAlongM, 0, alongM)).Value;

    /// <summary>The greatest rise, K, and where it is, m.</summary>
    public (double RiseK, double AcrossM, double AlongM) Peak()
    {
        var starts = sources
            .Where(s => s.Share > 0)
            .Select(s => (Source: s, Value: At(s.CentreAcrossM, s.CentreAlongM)))
            .ToList();
        if (starts.Count == 0)
        {
            return (0, acrossM / 2, alongM / 2);
        }

        var warmest = starts.Max(s => s.Value.Value);
        (double RiseK, double AcrossM, double AlongM) best = (double.NegativeInfinity, 0, 0);
        foreach (var (source, value) in starts.Where(s => s.Value.Value > WarmEnough * warmest))
        {
            var found = Climb(source, value);
            best = found.RiseK > best.RiseK ? found : best;
        }

        return best;
    }

    /// <summary>Centres cooler than this part of the warmest one do not lead to the peak (common practice, no source; sources of a light are alike).</summary>
    private static double WarmEnough => 0.6;

    private (double RiseK, double AcrossM, double AlongM) Climb(Footprint source, SurfaceValue value)
    {
        double x = source.CentreAcrossM,
            y = source.CentreAlongM;
        for (var step = 0; step < 30; step++)
        {
            // Newton where the face is domed, else uphill; a step that does not gain is halved.
            var det = value.BendXx * value.BendYy - value.BendXy * value.BendXy;
            var domed = det > 0 && value.BendXx < 0;
            double dx = domed
                    ? -(value.SlopeX * value.BendYy - value.SlopeY * value.BendXy) / det
                    : Math.Sign(value.SlopeX) * source.WidthM / 8,
                dy = domed
                    ? -(value.SlopeY * value.BendXx - value.SlopeX * value.BendXy) / det
                    : Math.Sign(value.SlopeY) * source.DepthM / 8;
            if (domed && 0.5 * Math.Abs(value.SlopeX * dx + value.SlopeY * dy) < 1e-8 * value.Value)
            {
                // What the last step would gain is added, not walked.
                return
                    Inside(x + dx, source.CentreAcrossM, source.WidthM) == x + dx
                    && Inside(y + dy, source.CentreAlongM, source.DepthM) == y + dy
                    ? (value.Value + 0.5 * (value.SlopeX * dx + value.SlopeY * dy), x + dx, y + dy)
                    : (value.Value, x, y);
            }

            var moved = false;
            for (var part = 1.0; part > 1e-4 && !moved; part /= 2)
            {
                double toX = Inside(x + part * dx, source.CentreAcrossM, source.WidthM),
                    toY = Inside(y + part * dy, source.CentreAlongM, source.DepthM);
                var there = At(toX, toY);
                if (there.Value > value.Value)
                {
                    (x, y, value, moved) = (toX, toY, there, true);
                }
            }

            if (!moved)
            {
                break;
            }
        }

        return (value.Value, x, y);
    }

    private static double Inside(double at, double centre, double width) =>
        Math.Clamp(at, centre - 0.499 * width, centre + 0.499 * width);

    private SurfaceValue At(double x, double y)
    {
        SurfaceValue sum = new(evenRise, 0, 0, 0, 0, 0);
        foreach (var s in sources)
        {
            SpreadingPair across = new(acrossM, s.CentreAcrossM, s.WidthM, x, 0),
                along = new(alongM, s.CentreAlongM, s.DepthM, y, 0);
            sum += SpreadingNear.Point(across, along, split) * (s.Share * perWatt);
        }

        var longest = waves.Max(w => w.Length);
        double[] cos = new double[longest],
            sin = new double[longest];
        for (var n = 0; n < longest; n++)
        {
            (sin[n], cos[n]) = Math.SinCos(n * Math.PI / alongM * y);
        }

        for (var m = 0; m < waves.Length; m++)
        {
            var (value, slope, bend) = (0.0, 0.0, 0.0);
            var line = waves[m];
            for (var n = 0; n < line.Length; n++)
            {
                var delta = n * Math.PI / alongM;
                var even = line[n] * cos[n];
                value += even;
                slope -= line[n] * delta * sin[n];
                bend -= even * delta * delta;
            }

            var lambda = m * Math.PI / acrossM;
            var (s, c) = Math.SinCos(lambda * x);
            sum += new SurfaceValue(
                c * value,
                -lambda * s * value,
                c * slope,
                -lambda * lambda * c * value,
                -lambda * s * slope,
                c * bend
            );
        }

        return sum;
    }
}
