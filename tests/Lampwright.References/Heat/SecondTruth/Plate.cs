namespace Lampwright.References.Heat.SecondTruth;

/// <summary>Conduction in the base on a grid of its own: 20 by 20 cells, three layers, finite volumes, conjugate gradients.</summary>
internal static class Plate
{
    private static readonly int Side = 20;
    private static readonly int Layers = 3;

    /// <summary>Mean under the source over the mean of the face with the fins, K/W.</summary>
    /// <param name="acrossM">Size, m.</param>
    /// <param name="alongM">Size, m.</param>
    /// <param name="thickM">Thickness, m.</param>
    /// <param name="conductivity">W/(m·K).</param>
    /// <param name="film">What takes the heat from the face with the fins, W/(m²·K) of the base.</param>
    /// <param name="x">Centre of the source across, m.</param>
    /// <param name="y">Along, m.</param>
    /// <param name="bodyM">Side of the source, m.</param>
    /// <param name="kernel">Share of the heat that enters through the middle quarter of its back over what evenly would.</param>
    public static double SpreadKPerW(
        double acrossM,
        double alongM,
        double thickM,
        double conductivity,
        double film,
        double x,
        double y,
        double bodyM,
        double kernel
    )
    {
        int n = Side,
            m = n * n * Layers;
        double dx = acrossM / n,
            dy = alongM / n,
            dz = thickM / Layers,
            gx = conductivity * dy * dz / dx,
            gy = conductivity * dx * dz / dy,
            gz = conductivity * dx * dy / dz,
            sink = dx * dy / (1 / film + dz / 2 / conductivity);
        double[] load = new double[m],
            even = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                even[i * n + j] = Overlap(i * dx, dx, x, bodyM) * Overlap(j * dy, dy, y, bodyM) / (bodyM * bodyM);
                load[(i * n + j) * Layers] =
                    (1 - kernel) * even[i * n + j]
                    + kernel
                        * Overlap(i * dx, dx, x, bodyM / 2)
                        * Overlap(j * dy, dy, y, bodyM / 2)
                        * 4
                        / (bodyM * bodyM);
            }
        }

        double[] t = new double[m],
            r = [.. load],
            p = [.. load],
            a = new double[m];
        var rho = r.Sum(v => v * v);
        var stop = 1e-8 * rho;
        for (var k = 0; k < 400 && rho > stop; k++)
        {
            for (var i = 0; i < n; i++)
            {
                for (var j = 0; j < n; j++)
                {
                    for (var l = 0; l < Layers; l++)
                    {
                        var c = (i * n + j) * Layers + l;
                        var own = p[c];
                        var sum = l == Layers - 1 ? sink * own : gz * (own - p[c + 1]);
                        sum += l > 0 ? gz * (own - p[c - 1]) : 0;
                        sum += i > 0 ? gx * (own - p[c - n * Layers]) : 0;
                        sum += i < n - 1 ? gx * (own - p[c + n * Layers]) : 0;
                        sum += j > 0 ? gy * (own - p[c - Layers]) : 0;
                        sum += j < n - 1 ? gy * (own - p[c + Layers]) : 0;
                        a[c] = sum;
                    }
                }
            }

            var dot = 0.0;
            for (var c = 0; c < m; c++)
            {
                dot += p[c] * a[c];
            }

            double alpha = rho / dot,
                next = 0;
            for (var c = 0; c < m; c++)
            {
                t[c] += alpha * p[c];
                r[c] -= alpha * a[c];
                next += r[c] * r[c];
            }

            for (var c = 0; c < m; c++)
            {
                p[c] = r[c] + next / rho * p[c];
            }

            rho = next;
        }

        // From the middle of the upper cells to the face: half a layer of what enters there.
        double under = 0,
            mean = 1 / (film * acrossM * alongM);
        for (var c = 0; c < n * n; c++)
        {
            under += even[c] * (t[c * Layers] + load[c * Layers] * dz / 2 / (conductivity * dx * dy));
        }

        return under - mean;
    }

    private static double Overlap(double from, double size, double centre, double width) =>
        Math.Max(0, Math.Min(from + size, centre + width / 2) - Math.Max(from, centre - width / 2));
}
