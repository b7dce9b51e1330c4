namespace Lampwright.References.Heat.Truth;

/// <summary>Spreading of the true lights: a network of nodes in base and fins, fine where the source is, with a film that changes along the air.</summary>
/// <remarks>Finite volumes with the fins as a body that conducts along and down but not across; conjugate gradients. No series, no even film.</remarks>
internal static class TrueBase
{
    private static readonly int Layers = 4;
    private static readonly int FinLayers = 6;

    /// <summary>Mean under the source less the mean of the fins' side of the base, per watt, K/W.</summary>
    public static double OverMeanKPerW(TrueLight light, double faceFilm, Func<double, double> along)
    {
        var (under, mean) = RisesKPerW(light, faceFilm, along);
        return under - mean;
    }

    /// <summary>Mean under the source and mean of the fins' side of the base over the air, per watt, K/W.</summary>
    public static (double UnderK, double MeanK) RisesKPerW(TrueLight light, double faceFilm, Func<double, double> along)
    {
        var x = Axis(light.AcrossM, light.Source.Across, light.Source.Width);
        var y = Axis(light.AlongM, light.Source.Along, light.Source.Depth);
        var finned = light.Fins >= 2;
        double[] z =
        [
            .. Enumerable.Repeat(light.BaseM / Layers, Layers),
            // Thin near the roots, where most of the heat passes: layers as 1, 2, 3 and so on.
            .. Enumerable
                .Range(1, finned ? FinLayers : 0)
                .Select(l => light.FinHeightM * l / (FinLayers * (FinLayers + 1) / 2.0)),
        ];
        int nx = x.Length,
            ny = y.Length,
            nz = z.Length,
            count = nx * ny * nz;
        var solid = finned ? light.Fins * light.FinM / light.AcrossM : 1;
        var k = light.ConductivityWPerMK;
        double[] gx = new double[count],
            gy = new double[count],
            gz = new double[count],
            diagonal = new double[count],
            heat = new double[count];
        var ys = 0.0;
        var source = light.Source.Width * light.Source.Depth;
        for (var j = 0; j < ny; j++)
        {
            var h = faceFilm * along(ys + y[j] / 2);
            ys += y[j];
            for (var i = 0; i < nx; i++)
            {
                for (var l = 0; l < nz; l++)
                {
                    var c = (l * ny + j) * nx + i;
                    var isBase = l < Layers;
                    var share = isBase ? 1 : solid;
                    if (i + 1 < nx && isBase)
                    {
                        gx[c] = k * y[j] * z[l] / ((x[i] + x[i + 1]) / 2);
                    }

                    if (j + 1 < ny)
                    {
                        gy[c] = k * share * x[i] * z[l] / ((y[j] + y[j + 1]) / 2);
                    }

                    if (l + 1 < nz)
                    {
                        var below = l + 1 < Layers ? 1 : solid;
                        gz[c] = k * x[i] * y[j] / (z[l] / 2 / share + z[l + 1] / 2 / below);
                    }

                    if (l == Layers - 1)
                    {
                        diagonal[c] += h * x[i] * y[j] * (finned ? 1 - solid : 1);
                    }

                    if (!isBase)
                    {
                        diagonal[c] += h * 2 * (light.Fins - 1) / light.AcrossM * x[i] * y[j] * z[l];
                    }
                }

                var inside =
                    Within(x, i, light.Source.Across, light.Source.Width)
                    && Within(y, j, light.Source.Along, light.Source.Depth);
                heat[j * nx + i] = inside ? x[i] * y[j] / source : 0;
            }
        }

        var rise = Solve(nx, ny, gx, gy, gz, diagonal, heat);
        double under = 0,
            mean = 0;
        for (var j = 0; j < ny; j++)
        {
            for (var i = 0; i < nx; i++)
            {
                // The face lies half a cell above the middle of the first layer.
                var top = j * nx + i;
                var face = rise[top] + heat[top] * z[0] / 2 / (k * x[i] * y[j]);
                under += heat[top] * face;
                mean += rise[((Layers - 1) * ny + j) * nx + i] * x[i] * y[j];
            }
        }

        // From the middle of the last layer down to its face: the even part of the heat.
        var area = light.AcrossM * light.AlongM;
        return (under, mean / area - z[0] / 2 / (k * area));
    }

    /// <summary>Cells with faces on the source's edges, growing away from it.</summary>
    private static double[] Axis(double side, double centre, double width)
    {
        double from = centre - width / 2,
            to = centre + width / 2;
        return [.. Grow(from, width / 6).Reverse(), .. Enumerable.Repeat(width / 6, 6), .. Grow(side - to, width / 6)];
    }

    private static double[] Grow(double length, double first)
    {
        if (length < 1e-9)
        {
            return [];
        }

        List<double> cells = [];
        var (left, cell) = (length, first);
        while (left > 1e-12)
        {
            cell *= 1.35;
            if (left < 1.7 * cell)
            {
                cells.Add(left);
                break;
            }

            cells.Add(cell);
            left -= cell;
        }

        return [.. cells];
    }

    private static bool Within(double[] cells, int i, double centre, double width)
    {
        var middle = cells.Take(i).Sum() + cells[i] / 2;
        return Math.Abs(middle - centre) < width / 2;
    }

    private static double[] Solve(int nx, int ny, double[] gx, double[] gy, double[] gz, double[] film, double[] heat)
    {
        int n = heat.Length,
            row = nx,
            layer = nx * ny;
        double[] x = new double[n],
            r = (double[])heat.Clone(),
            p = new double[n],
            ap = new double[n],
            d = (double[])film.Clone();
        for (var c = 0; c < n; c++)
        {
            d[c] += gx[c] + gy[c] + gz[c];
            if (gx[c] > 0)
            {
                d[c + 1] += gx[c];
            }

            if (gy[c] > 0)
            {
                d[c + row] += gy[c];
            }

            if (gz[c] > 0)
            {
                d[c + layer] += gz[c];
            }
        }

        var old = 0.0;
        for (var pass = 0; pass < 2000; pass++)
        {
            double rz = 0,
                rr = 0;
            for (var c = 0; c < n; c++)
            {
                rz += r[c] * r[c] / d[c];
                rr += Math.Abs(r[c]);
            }

            if (rr < 1e-5)
            {
                return x;
            }

            var beta = pass == 0 ? 0 : rz / old;
            for (var c = 0; c < n; c++)
            {
                p[c] = r[c] / d[c] + beta * p[c];
                ap[c] = d[c] * p[c];
            }

            for (var c = 0; c < n; c++)
            {
                if (gx[c] > 0)
                {
                    ap[c] -= gx[c] * p[c + 1];
                    ap[c + 1] -= gx[c] * p[c];
                }

                if (gy[c] > 0)
                {
                    ap[c] -= gy[c] * p[c + row];
                    ap[c + row] -= gy[c] * p[c];
                }

                if (gz[c] > 0)
                {
                    ap[c] -= gz[c] * p[c + layer];
                    ap[c + layer] -= gz[c] * p[c];
                }
            }

            var pap = 0.0;
            for (var c = 0; c < n; c++)
            {
                pap += p[c] * ap[c];
            }

            var alpha = rz / pap;
            for (var c = 0; c < n; c++)
            {
                x[c] += alpha * p[c];
                r[c] -= alpha * ap[c];
            }

            old = rz;
        }

        throw new InvalidOperationException("The network came to no rest.");
    }
}
