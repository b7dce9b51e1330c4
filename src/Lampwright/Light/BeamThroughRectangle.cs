namespace Lampwright.Light;

/// <summary>Share of a cos^m beam from a point that passes a rectangle parallel to the emitting face.</summary>
/// <remarks>
/// In polar angles about the face's normal the beam inside the polar angle θ is 1 − cos^(m+1) θ, so that the share is one integral
/// over the azimuth for each side of the rectangle; sides seen from outside count negative. For m = 1 it is the closed form of
/// <see cref="ViewFactors.ElementToRectangle"/>. By reciprocity it is also the illuminance at the point, times area over flux, of a
/// cos^m face that fills the rectangle.
/// <b>Source</b>: derived. <b>Accuracy</b>: twelve Gauss points a side, better than 1e-5 of the beam. <b>Checked by</b>: <i>invariant</i> (m = 1
/// meets the closed form; a disc's axis).
/// </remarks>
public static class BeamThroughRectangle
{
    private static readonly double[] Nodes =
    [
        0.1252334085114689,
        0.3678314989981802,
        0.5873179542866175,
        0.7699026741943047,
        0.9041172563704749,
        0.9815606342467192,
    ];

    private static readonly double[] Weights =
    [
        0.2491470458134028,
        0.2334925365383548,
        0.2031674267230659,
        0.1600783285433462,
        0.1069393259953184,
        0.0471753363865118,
    ];

    /// <summary>Share of the beam, 0 to 1, for a rectangle given by its limits relative to the foot of the axis.</summary>
    /// <param name="x0M">Least x, metres.</param>
    /// <param name="x1M">Greatest x, metres.</param>
    /// <param name="y0M">Least y, metres.</param>
    /// <param name="y1M">Greatest y, metres.</param>
    /// <param name="distanceM">Distance of the rectangle's plane, metres, above 0.</param>
    /// <param name="beamExponent">Exponent m of the beam, 0 or more.</param>
    public static double Share(double x0M, double x1M, double y0M, double y1M, double distanceM, double beamExponent)
    {
        if (x1M <= x0M || y1M <= y0M)
        {
            return 0;
        }

        if (Math.Abs(beamExponent - 1) < 1e-6)
        {
            return ViewFactors.ElementToRectangle(x0M, x1M, y0M, y1M, distanceM);
        }

        var sum =
            Side(x1M, y0M, y1M, distanceM, beamExponent)
            + Side(-x0M, y0M, y1M, distanceM, beamExponent)
            + Side(y1M, x0M, x1M, distanceM, beamExponent)
            + Side(-y0M, x0M, x1M, distanceM, beamExponent);
        return Math.Clamp(sum / (2 * Math.PI), 0, 1);
    }

    /// <summary>Share of the beam of a whole face, centred on the axis, that passes a centred rectangle.</summary>
    /// <param name="face">The emitting face.</param>
    /// <param name="halfWidthM">Half width of the rectangle, metres.</param>
    /// <param name="halfHeightM">Half height of the rectangle, metres.</param>
    /// <param name="distanceM">Distance of the rectangle's plane, metres, above 0.</param>
    /// <param name="beamExponent">Exponent m of the beam.</param>
    internal static double ShareOfFace(
        EmitterFace face,
        double halfWidthM,
        double halfHeightM,
        double distanceM,
        double beamExponent
    )
    {
        // By symmetry one quarter of the face stands for all of it: three by three Gauss points on it.
        ReadOnlySpan<double> nodes = [0.1127016653792583, 0.5, 0.8872983346207417];
        ReadOnlySpan<double> weights = [5.0 / 18, 8.0 / 18, 5.0 / 18];
        var sum = 0.0;
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                double x,
                    y;
                if (face.Round)
                {
                    var (sine, cosine) = Math.SinCos(nodes[j] * Math.PI / 2);
                    var radius = face.WidthM / 2 * Math.Sqrt(nodes[i]);
                    (x, y) = (radius * cosine, radius * sine);
                }
                else
                {
                    (x, y) = (face.WidthM / 2 * nodes[i], face.HeightM / 2 * nodes[j]);
                }

                sum +=
                    weights[i]
                    * weights[j]
                    * Share(
                        -halfWidthM - x,
                        halfWidthM - x,
                        -halfHeightM - y,
                        halfHeightM - y,
                        distanceM,
                        beamExponent
                    );
            }
        }

        return sum;
    }

    private static double Side(double toLine, double from, double to, double distance, double exponent)
    {
        if (toLine == 0)
        {
            return 0;
        }

        // Azimuth as the Gudermannian of u, so that a side near the axis has no sharp ends: tan of the azimuth is sinh u.
        var e = Math.Abs(toLine);
        var (u0, u1) = (Math.Asinh(from / e), Math.Asinh(to / e));
        var (middle, half) = ((u0 + u1) / 2, (u1 - u0) / 2);
        var (slope, power) = (e / distance, -(exponent + 1) / 2);
        var sum = 0.0;
        for (var i = 0; i < Nodes.Length; i++)
        {
            sum +=
                Weights[i]
                * (Inside(middle + (half * Nodes[i]), slope, power) + Inside(middle - (half * Nodes[i]), slope, power));
        }

        return Math.Sign(toLine) * half * sum;
    }

    private static double Inside(double u, double slope, double power)
    {
        var longer = Math.Cosh(u); // 1/cos of the azimuth
        var tangent = slope * longer;
        return (1 - Math.Pow(1 + (tangent * tangent), power)) / longer;
    }
}
