namespace Lampwright.Heat;

/// <summary>Resistance of heat that spreads in a base from rectangular sources: the exact series.</summary>
/// <remarks>
/// <para>Plate a × b × t, uniform film on the far face, adiabatic edges, uniform flux in each source. The part of the series that converges slowly is
/// summed in another way (<see cref="SpreadingNear"/>), so that no cut shows.</para>
/// Validity: one isotropic layer, uniform film over the far face.
/// Source: Yovanovich, Muzychka and Culham 1999, J. Thermophys. Heat Transfer 13:495; Muzychka, Culham and Yovanovich 2003, J. Electronic
/// Packaging 125:178. Accuracy: 1e-7 of the series, for means and for points, from a thickness of a 150th of the longer side on; below that up to 1e-4.
/// Checked by: printed (limits of the half-space), solver (finite volumes), invariant (reciprocity). A tenth of a millisecond: once at nominal, into
/// <see cref="SpreadingTable"/>. Hottest point of several sources: <see cref="SpreadingPeak"/>.
/// </remarks>
public sealed class Spreading
{
    private readonly double plateAreaM2;
    private readonly double thicknessM;
    private readonly double fixedPart;
    private readonly double[] weights;
    private readonly double[] decays;
    private readonly double[] waves;
    private readonly int[] alongOf;
    private readonly double[] alongWaves;
    private readonly SpreadingFins? fins;

    /// <summary>Sums the part of the series that does not hang on the film.</summary>
    /// <param name="acrossM">Side a of the plate, m.</param>
    /// <param name="alongM">Side b of the plate, m.</param>
    /// <param name="thicknessM">Thickness t, m.</param>
    /// <param name="sources">Sources, inside the plate; their shares weigh them.</param>
    /// <param name="probe">Where the temperature is asked for: a mean over a rectangle.</param>
    /// <param name="local">True for the point in the middle of the probe instead of the mean over it.</param>
    public Spreading(
        double acrossM,
        double alongM,
        double thicknessM,
        IReadOnlyList<Footprint> sources,
        Footprint probe,
        bool local = false
    )
        : this(acrossM, alongM, thicknessM, sources, probe, local, null) { }

    /// <summary>The same over fins that carry heat along themselves; null for an even film.</summary>
    internal Spreading(
        double acrossM,
        double alongM,
        double thicknessM,
        IReadOnlyList<Footprint> sources,
        Footprint probe,
        bool local,
        SpreadingFins? fins
    )
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(probe);
        plateAreaM2 = Guard.Positive(acrossM) * Guard.Positive(alongM);
        this.thicknessM = Guard.Positive(thicknessM);

        var split = SpreadingNear.Split(acrossM, alongM);
        var last = LastWave(thicknessM, split, Math.Max(acrossM, alongM));
        int termsAcross = (int)(last * acrossM / Math.PI) + 2,
            termsAlong = (int)(last * alongM / Math.PI) + 2;
        double[] probeAcross = Shape(probe.CentreAcrossM, local ? 0 : probe.WidthM, acrossM, termsAcross),
            probeAlong = Shape(probe.CentreAlongM, local ? 0 : probe.DepthM, alongM, termsAlong);
        var across = new double[sources.Count][];
        var along = new double[sources.Count][];
        double sum = 0;
        for (var s = 0; s < sources.Count; s++)
        {
            var source = sources[s];
            across[s] = Shape(source.CentreAcrossM, source.WidthM, acrossM, termsAcross);
            along[s] = Shape(source.CentreAlongM, source.DepthM, alongM, termsAlong);
            SpreadingPair x =
                    new(acrossM, source.CentreAcrossM, source.WidthM, probe.CentreAcrossM, local ? 0 : probe.WidthM),
                y = new(alongM, source.CentreAlongM, source.DepthM, probe.CentreAlongM, local ? 0 : probe.DepthM);
            sum += source.Share * SpreadingNear.Sum(x, y, split);
        }

        List<(double Weight, double Wave, int Along)> soft = [];
        for (var m = 0; m < termsAcross; m++)
        {
            var lambda = m * Math.PI / acrossM;
            if (Math.Abs(probeAcross[m]) < 1e-14)
            {
                // Every second wave of a centred probe has its node there.
                continue;
            }

            for (var n = m == 0 ? 1 : 0; n < termsAlong; n++)
            {
                var delta = n * Math.PI / alongM;
                var beta = Math.Sqrt(lambda * lambda + delta * delta);
                if (beta > last)
                {
                    break;
                }

                var excitation = 0.0;
                for (var s = 0; s < sources.Count; s++)
                {
                    excitation += sources[s].Share * across[s][m] * along[s][n];
                }

                var weight = (m == 0 || n == 0 ? 2 : 4) * excitation * probeAcross[m] * probeAlong[n] / beta;
                sum += weight * SpreadingNear.Beyond(beta, split);
                if (beta * thicknessM < FilmUnfelt)
                {
                    soft.Add((weight, beta, n));
                }
            }
        }

        fixedPart = sum;
        weights = [.. soft.Select(x => x.Weight)];
        waves = [.. soft.Select(x => x.Wave)];
        alongOf = [.. soft.Select(x => x.Along)];
        alongWaves =
        [
            .. Enumerable.Range(0, alongOf.Length == 0 ? 0 : alongOf.Max() + 1).Select(n => n * Math.PI / alongM),
        ];
        this.fins = fins;
        decays = [.. soft.Select(x => Math.Tanh(x.Wave * thicknessM))];
    }

    /// <summary>β·t beyond which the far face is not felt: Z differs from 1 by less than 1e-7.</summary>
    internal static double FilmUnfelt => 8.5;

    /// <summary>Last wave of the series: all that feel the far face, up to a number that a thin plate must do with.</summary>
    internal static double LastWave(double thicknessM, double split, double longerM) =>
        Math.Max(SpreadingNear.LastWave(split), Math.Min(FilmUnfelt / thicknessM, MostTerms * Math.PI / longerM));

    private static int MostTerms => 400;

    /// <summary>Spreading part, times conductivity, 1/m: what comes on top of the one-dimensional resistance.</summary>
    /// <param name="filmPerConductivity">h/k over the outline of the far face, 1/m, above 0; infinite is allowed.</param>
    public double SpreadPerM(double filmPerConductivity)
    {
        var sum = fixedPart;
        Span<double> films = stackalloc double[alongWaves.Length];
        films.Fill(filmPerConductivity);
        if (double.IsFinite(filmPerConductivity))
        {
            fins?.Films(filmPerConductivity, alongWaves, films);
        }

        for (var i = 0; i < waves.Length; i++)
        {
            double z = waves[i],
                tanh = decays[i],
                film = films[alongOf[i]];
            var ratio = double.IsInfinity(film) ? tanh : (z + film * tanh) / (z * tanh + film);
            sum += weights[i] * (ratio - 1);
        }

        return sum / plateAreaM2;
    }

    /// <summary>Rise of the probe over the fluid per watt of all sources, K/W.</summary>
    /// <param name="conductivityWPerMK">Conductivity of the plate, W/(m·K).</param>
    /// <param name="filmWPerM2K">Film coefficient on the far face, W/(m²·K).</param>
    public double ResistanceKPerW(double conductivityWPerMK, double filmWPerM2K)
    {
        Guard.Positive(conductivityWPerMK);
        Guard.Positive(filmWPerM2K);
        return SpreadPerM(filmWPerM2K / conductivityWPerMK) / conductivityWPerMK
            + thicknessM / (conductivityWPerMK * plateAreaM2)
            + 1 / (filmWPerM2K * plateAreaM2);
    }

    /// <summary>Waves of a rectangle in one direction: cos(λ·centre)·sin(λ·width/2)/(λ·width/2).</summary>
    internal static double[] Shape(double centre, double width, double side, int terms)
    {
        var shape = new double[terms];
        shape[0] = 1;
        for (var m = 1; m < terms; m++)
        {
            var lambda = m * Math.PI / side;
            var half = 0.5 * lambda * width;
            shape[m] = Math.Cos(lambda * centre) * (half > 0 ? Math.Sin(half) / half : 1);
        }

        return shape;
    }
}
