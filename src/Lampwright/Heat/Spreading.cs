namespace Lampwright.Heat;

/// <summary>Resistance of heat that spreads in a base from rectangular sources: the exact series.</summary>
/// <remarks>
/// <para>Plate a × b × t, uniform film on the far face, adiabatic edges, uniform flux in each source.</para>
/// Validity: one isotropic layer, uniform film over the far face.
/// Source: Yovanovich, Muzychka and Culham 1999, J. Thermophys. Heat Transfer 13:495; Muzychka, Culham and Yovanovich 2003, J. Electronic
/// Packaging 125:178. Accuracy: 200 × 200 terms give the mean to 5e-5.
/// Checked by: printed (limits of the half-space), solver (finite volumes). <b>Heavy</b> (about 1 ms): once at nominal, into
/// <see cref="SpreadingTable"/>.
/// </remarks>
public sealed class Spreading
{
    private readonly double plateAreaM2;
    private readonly double thicknessM;
    private readonly double fixedPart;
    private readonly double[] weights;
    private readonly double[] decays;
    private readonly double[] waves;

    /// <summary>Sums the part of the series that does not hang on the film.</summary>
    /// <param name="acrossM">Side a of the plate, m.</param>
    /// <param name="alongM">Side b of the plate, m.</param>
    /// <param name="thicknessM">Thickness t, m.</param>
    /// <param name="sources">Sources, inside the plate; their shares weigh them.</param>
    /// <param name="probe">Where the temperature is asked for: a mean over a rectangle.</param>
    /// <param name="terms">Terms each way, 50 to 2000.</param>
    /// <param name="local">True for the point in the middle of the probe instead of the mean over it.</param>
    public Spreading(
        double acrossM,
        double alongM,
        double thicknessM,
        IReadOnlyList<Footprint> sources,
        Footprint probe,
        int terms = 200,
        bool local = false
    )
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(probe);
        Guard.InRange(terms, 50, 2000);
        plateAreaM2 = Guard.Positive(acrossM) * Guard.Positive(alongM);
        this.thicknessM = Guard.Positive(thicknessM);

        double[] probeAcross = Shape(probe.CentreAcrossM, local ? 0 : probe.WidthM, acrossM, terms),
            probeAlong = Shape(probe.CentreAlongM, local ? 0 : probe.DepthM, alongM, terms);
        var across = new double[sources.Count][];
        var along = new double[sources.Count][];
        for (var s = 0; s < sources.Count; s++)
        {
            across[s] = Shape(sources[s].CentreAcrossM, sources[s].WidthM, acrossM, terms);
            along[s] = Shape(sources[s].CentreAlongM, sources[s].DepthM, alongM, terms);
        }

        List<(double Weight, double Wave)> soft = [];
        double sum = 0;
        for (var m = 0; m < terms; m++)
        {
            var lambda = m * Math.PI / acrossM;
            if (Math.Abs(probeAcross[m]) < 1e-14)
            {
                // Every second wave of a centred probe has its node there.
                continue;
            }

            for (var n = m == 0 ? 1 : 0; n < terms; n++)
            {
                var excitation = 0.0;
                for (var s = 0; s < sources.Count; s++)
                {
                    excitation += sources[s].Share * across[s][m] * along[s][n];
                }

                var delta = n * Math.PI / alongM;
                var beta = Math.Sqrt(lambda * lambda + delta * delta);
                var weight = (m == 0 || n == 0 ? 2 : 4) * excitation * probeAcross[m] * probeAlong[n] / beta;
                sum += weight;

                // Beyond this the film on the far side is not felt: Z differs from 1 by less than 1e-8.
                if (beta * thicknessM < 10)
                {
                    soft.Add((weight, beta));
                }
            }
        }

        fixedPart = sum;
        weights = [.. soft.Select(x => x.Weight)];
        waves = [.. soft.Select(x => x.Wave)];
        decays = [.. soft.Select(x => Math.Tanh(x.Wave * thicknessM))];
    }

    /// <summary>Spreading part, times conductivity, 1/m: what comes on top of the one-dimensional resistance.</summary>
    /// <param name="filmPerConductivity">h/k, 1/m, above 0; infinite is allowed.</param>
    public double SpreadPerM(double filmPerConductivity)
    {
        var sum = fixedPart;
        for (var i = 0; i < waves.Length; i++)
        {
            double z = waves[i],
                tanh = decays[i];
            var ratio = double.IsInfinity(filmPerConductivity)
                ? tanh
                : (z + filmPerConductivity * tanh) / (z * tanh + filmPerConductivity);
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

    private static double[] Shape(double centre, double width, double side, int terms)
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
