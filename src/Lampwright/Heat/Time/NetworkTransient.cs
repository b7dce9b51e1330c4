using Lampwright.Heat.Network;

namespace Lampwright.Heat.Time;

/// <summary>Course of a network's temperatures over time.</summary>
/// <remarks>
/// <para>A stiffly accurate, L-stable Rosenbrock method of order 3 with an error estimate of order 2 and steps chosen by it: nodes
/// without capacity and time constants from seconds to hours are no trouble, and no iteration can hide a leak.</para>
/// Source: Sandu, Verwer, Blom, Spee, Carmichael, Potra 1997, Atmospheric Environment 31:3459-3472 (RODAS3; coefficients memory).
/// Accuracy: 2e-4 of the largest change. Checked by: printed (H.TR-01 to H.TR-11), solver, invariant (heat stored is heat kept).
/// </remarks>
public static class NetworkTransient
{
    private static readonly int MostSteps = 4000;

    /// <summary>Follows a network from given temperatures.</summary>
    /// <param name="network">The network.</param>
    /// <param name="startK">Temperature of each node at time 0, K; those of given temperature jump to it.</param>
    /// <param name="untilS">End, s, above 0.</param>
    /// <param name="tolerance">Error of one step over the largest change so far or 1 K, 1e-9 to 0.1.</param>
    /// <returns>The course; it says itself where it could not be followed to the end.</returns>
    public static HeatCourse Follow(
        ThermalNetwork network,
        IReadOnlyList<double> startK,
        double untilS,
        double tolerance = 1e-4
    )
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(startK);
        Guard.Positive(untilS);
        Guard.InRange(tolerance, 1e-9, 0.1);
        return new Walk(network, startK, untilS, tolerance).Go();
    }

    private sealed class Walk
    {
        // RODAS3: gamma 1/2; stages 1 and 2 share their place.
        private const double Gamma = 0.5;

        private readonly ThermalNetwork network;
        private readonly double untilS;
        private readonly double tolerance;
        private readonly int free;
        private readonly double[] capacity;
        private readonly int[] nodes;
        private readonly double[] kelvin;
        private readonly double[] at;
        private readonly double[] keeps;
        private readonly double[] stored;
        private readonly double[] held;
        private readonly NetworkMatrix matrix;
        private readonly double[] k1;
        private readonly double[] k2;
        private readonly double[] k3;
        private readonly double[] k4;
        private readonly HeatCourse course;
        private readonly double[] start;
        private double spanK = 1;

        public Walk(ThermalNetwork network, IReadOnlyList<double> startK, double untilS, double tolerance)
        {
            (this.network, this.untilS, this.tolerance) = (network, untilS, tolerance);
            free = network.Free;
            // Nodes without capacity have no temperature of their own to start from.
            kelvin = network.Followed(network.Start([.. startK]));
            start = [.. kelvin];
            at = [.. kelvin];
            nodes = [.. Enumerable.Range(0, kelvin.Length).Where(i => network.PlaceOf(i) >= 0)];
            capacity = [.. nodes.Select(i => network.Nodes[i].CapacityJPerK)];
            (keeps, stored, held) = (new double[free], new double[free], new double[free]);
            (k1, k2, k3, k4) = (new double[free], new double[free], new double[free], new double[free]);
            matrix = network.Matrix();
            course = new HeatCourse(network.Nodes);
        }

        public HeatCourse Go()
        {
            var (time, step) = (0.0, Math.Min(untilS, 1e-3));
            network.Balance(kelvin, keeps, matrix.Values);
            course.Add(0, kelvin, Rates());
            for (var taken = 0; time < untilS; taken++)
            {
                if (taken >= MostSteps || step < 1e-12 * untilS)
                {
                    course.Stopped = true;
                    break;
                }

                step = Math.Min(step, untilS - time);
                var error = Try(step);
                if (error <= 1)
                {
                    time = untilS - time - step < 1e-12 * untilS ? untilS : time + step;
                    at.CopyTo(kelvin, 0);
                    network.Balance(kelvin, keeps, matrix.Values);
                    course.Add(time, kelvin, Rates());
                    for (var i = 0; i < kelvin.Length; i++)
                    {
                        spanK = Math.Max(spanK, Math.Abs(kelvin[i] - start[i]));
                    }
                }

                step *= Math.Clamp(0.9 / Math.Cbrt(Math.Max(error, 1e-9)), 0.2, 6);
            }

            return course;
        }

        // (C/(hγ) - J)·K = keeps + C·Σ c·K/h
        private double Try(double h)
        {
            for (var i = 0; i < free; i++)
            {
                stored[i] = capacity[i] / (h * Gamma);
            }

            if (!matrix.Factor(-1, stored))
            {
                return 1e3;
            }

            // The balance at the start of the step is at hand.
            for (var i = 0; i < free; i++)
            {
                k1[i] = keeps[i];
            }

            matrix.Solve(k1);
            for (var i = 0; i < free; i++)
            {
                k2[i] = keeps[i] + (capacity[i] / h * 4 * k1[i]);
            }

            matrix.Solve(k2);
            keeps.CopyTo(held, 0);
            Move(2, k1, 0, k2, 0, k3);
            network.Balance(at, keeps, null);
            for (var i = 0; i < free; i++)
            {
                k3[i] = keeps[i] + (capacity[i] / h * (k1[i] - k2[i]));
            }

            matrix.Solve(k3);
            Move(2, k1, 0, k2, 1, k3);
            network.Balance(at, keeps, null);
            for (var i = 0; i < free; i++)
            {
                k4[i] = keeps[i] + (capacity[i] / h * (k1[i] - k2[i] - (8.0 / 3 * k3[i])));
            }

            matrix.Solve(k4);
            var worst = 0.0;
            for (var i = 0; i < free; i++)
            {
                at[nodes[i]] += k4[i];
                worst = Math.Max(worst, Math.Abs(k4[i]));
            }

            held.CopyTo(keeps, 0);
            return double.IsFinite(worst) ? worst / (tolerance * spanK) : 1e3;
        }

        private void Move(double a, double[] x, double b, double[] y, double c, double[] z)
        {
            for (var i = 0; i < free; i++)
            {
                at[nodes[i]] = kelvin[nodes[i]] + (a * x[i]) + (b == 0 ? 0 : b * y[i]) + (c == 0 ? 0 : c * z[i]);
            }
        }

        // K/s of each node; 0 where it has no capacity, which the course then joins by straight lines.
        private double[] Rates()
        {
            var rates = new double[kelvin.Length];
            for (var i = 0; i < free; i++)
            {
                rates[nodes[i]] = capacity[i] > 0 ? keeps[i] / capacity[i] : double.NaN;
            }

            return rates;
        }
    }
}
