namespace Lampwright.References.Heat.SecondTruth;

/// <summary>Laminar air between two parallel walls of one temperature, marched from the inlet by finite differences.</summary>
/// <remarks>
/// The boundary layer form of momentum, continuity and energy, as Bodoia and Osterle solved it: forced (J. Heat Transfer 83, 1961) and
/// with buoyancy and the flow that makes the pressure at the outlet that of the room (J. Heat Transfer 84, 1962). Half of the gap is the length,
/// the wall is at 1 and the inlet at 0. No correlation is used.
/// </remarks>
internal static class Developing
{
    private static readonly int Cells = 48;
    private static readonly double Pr = 0.71;

    /// <summary>One station on the way down the channel.</summary>
    /// <param name="X">Way from the inlet.</param>
    /// <param name="Head">Pressure over the room's, in ρu².</param>
    /// <param name="Bulk">Temperature of the air, mixed: 0 as it came, 1 as warm as the wall.</param>
    public readonly record struct Station(double X, double Head, double Bulk);

    /// <summary>Stations from the inlet to a length, growing as the layers do.</summary>
    /// <param name="inlet">Speed at the inlet.</param>
    /// <param name="buoyancy">Push of air as warm as the wall.</param>
    /// <param name="length">Where the channel ends.</param>
    /// <param name="first">First step.</param>
    /// <param name="growth">Each step over the one before.</param>
    public static List<Station> March(double inlet, double buoyancy, double length, double first, double growth)
    {
        var dy = 1.0 / Cells;
        var widest = 0.004 * length;
        double[] u = new double[Cells],
            t = new double[Cells];
        Array.Fill(u, inlet);
        double x = 0,
            head = -inlet * inlet / 2,
            step = first;
        List<Station> stations = [new(0, head, 0)];
        double[] lower = new double[Cells],
            main = new double[Cells],
            upper = new double[Cells],
            free = new double[Cells],
            pushed = new double[Cells];
        while (x < length * (1 - 1e-12))
        {
            step = Math.Min(step, length - x);
            double[] nextU = [.. u],
                nextT = [.. t];
            var slope = 0.0;
            for (var pass = 0; pass < 3; pass++)
            {
                // Across the way from what the speeds along it lack; the centre line is one of symmetry.
                var v = new double[Cells + 1];
                for (var i = 0; i < Cells; i++)
                {
                    v[i + 1] = v[i] - (nextU[i] - u[i]) / step * dy;
                }

                Energy(u, nextU, t, nextT, v, step, dy, lower, main, upper);
                for (var i = 0; i < Cells; i++)
                {
                    Row(i, Math.Max(nextU[i], 1e-9), v, step, dy, 1, lower, main, upper);
                    free[i] = Math.Max(nextU[i], 1e-9) * u[i] / step + buoyancy * nextT[i];
                    pushed[i] = 1;
                }

                Thomas(lower, main, upper, free, pushed);
                slope = (inlet * Cells - free.Sum()) / pushed.Sum();
                for (var i = 0; i < Cells; i++)
                {
                    nextU[i] = free[i] + slope * pushed[i];
                }
            }

            (u, t) = (nextU, nextT);
            x += step;
            head -= slope * step;
            var bulk = 0.0;
            for (var i = 0; i < Cells; i++)
            {
                bulk += u[i] * t[i] * dy / inlet;
            }

            stations.Add(new(x, head, bulk));
            step = Math.Min(step * growth, widest);
        }

        return stations;
    }

    // Energy in its conserving form, so that what the wall gives is what the air carries.
    private static void Energy(
        double[] u,
        double[] nextU,
        double[] t,
        double[] nextT,
        double[] v,
        double step,
        double dy,
        double[] lower,
        double[] main,
        double[] upper
    )
    {
        var right = new double[Cells];
        for (var i = 0; i < Cells; i++)
        {
            var d = 1 / (Pr * dy * dy);
            double inner = i == 0 ? 0 : d,
                outer = i == Cells - 1 ? 2 * d : d;
            double inward = i == 0 ? 0 : v[i] / (2 * dy),
                outward = i == Cells - 1 ? 0 : v[i + 1] / (2 * dy);
            main[i] = nextU[i] / step + inner + outer + outward - inward;
            lower[i] = -inner - inward;
            upper[i] = i == Cells - 1 ? 0 : -outer + outward;
            right[i] = u[i] * t[i] / step + (i == Cells - 1 ? outer : 0);
        }

        Thomas(lower, main, upper, right, null);
        right.CopyTo(nextT, 0);
    }

    private static void Row(
        int i,
        double speed,
        double[] v,
        double step,
        double dy,
        double diffusivity,
        double[] lower,
        double[] main,
        double[] upper
    )
    {
        var d = diffusivity / (dy * dy);
        double inner = i == 0 ? 0 : d,
            outer = i == Cells - 1 ? 2 * d : d,
            across = (v[i] + v[i + 1]) / 2 / (2 * dy);
        main[i] = speed / step + inner + outer + (i == 0 ? -across : 0) + (i == Cells - 1 ? -across : 0);
        lower[i] = i == 0 ? 0 : -inner - across;
        upper[i] = i == Cells - 1 ? 0 : -outer + across;
    }

    private static void Thomas(double[] lower, double[] main, double[] upper, double[] a, double[]? b)
    {
        var n = main.Length;
        for (var i = 1; i < n; i++)
        {
            var m = lower[i] / main[i - 1];
            main[i] -= m * upper[i - 1];
            a[i] -= m * a[i - 1];
            if (b is not null)
            {
                b[i] -= m * b[i - 1];
            }
        }

        for (var i = n - 1; i >= 0; i--)
        {
            a[i] = (a[i] - (i == n - 1 ? 0 : upper[i] * a[i + 1])) / main[i];
            if (b is not null)
            {
                b[i] = (b[i] - (i == n - 1 ? 0 : upper[i] * b[i + 1])) / main[i];
            }
        }
    }
}
