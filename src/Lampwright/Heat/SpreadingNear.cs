using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace Lampwright.Heat;

/// <summary>The part of the spreading series that converges slowly, summed as heat that spreads from the source and its mirror images instead.</summary>
/// <remarks>
/// <para>On a plate so thick that its far face is not felt, the series is Σ C·P/β with 1/β = (2/√π)·∫ exp(-β²s²) ds. From η on, the integral is
/// erfc(βη)/β and a few dozen terms are enough. From 0 to η the sum over waves under the integral is, by Poisson's formula, a sum of error functions over
/// the source and its mirror images at the edges; with η no more than a twelfth of the shorter side only the three nearest count.</para>
/// Source: Ewald 1921, Ann. Phys. 369:253 (the split; from memory), applied here. Accuracy: 1e-9 of the series.
/// Checked by: invariant (the plain series with many terms; the split's place does not show), printed (half-space limits).
/// </remarks>
internal static class SpreadingNear
{
    private static readonly GaussLegendreRule Rule = new(0, 1, 10);

    // The error function is 1 beyond this, to 2e-17.
    private static readonly double Far = 6;

    /// <summary>Where the series is split, m.</summary>
    internal static double Split(double acrossM, double alongM) => Math.Min(acrossM, alongM) / 14;

    /// <summary>β from which erfc(βη) is below 1e-10.</summary>
    internal static double LastWave(double split) => 4.6 / split;

    /// <summary>Weight of a wave beyond the split: erfc(βη).</summary>
    internal static double Beyond(double wave, double split) => SpecialFunctions.Erfc(wave * split);

    /// <summary>Sum of the near part: (2/√π)·(∫ K_x·K_y ds - η), from 0 to η.</summary>
    /// <param name="across">The pair of source and probe across.</param>
    /// <param name="along">The pair of source and probe along.</param>
    /// <param name="split">η, m.</param>
    internal static double Sum(in SpreadingPair across, in SpreadingPair along, double split)
    {
        var sum = 0.0;
        foreach (var (from, to) in Panels(Math.Min(across.Finest, along.Finest), split))
        {
            for (var i = 0; i < Rule.Order; i++)
            {
                var s = from + (to - from) * Rule.Abscissas[i];
                var x = across.At(s);
                sum += x == 0 ? 0 : (to - from) * Rule.Weights[i] * x * along.At(s);
            }
        }

        return 2 / Math.Sqrt(Math.PI) * (sum - split);
    }

    /// <summary>The same for a point, with its slopes and bends in both directions.</summary>
    internal static SurfaceValue Point(in SpreadingPair across, in SpreadingPair along, double split)
    {
        SurfaceValue sum = default;
        foreach (var (from, to) in Panels(Math.Min(across.Finest, along.Finest), split))
        {
            for (var i = 0; i < Rule.Order; i++)
            {
                var s = from + (to - from) * Rule.Abscissas[i];
                var x = across.PointAt(s);
                if (x.Value == 0)
                {
                    continue;
                }

                var y = along.PointAt(s);
                var w = (to - from) * Rule.Weights[i];
                sum += new SurfaceValue(
                    w * x.Value * y.Value,
                    w * x.Slope * y.Value,
                    w * x.Value * y.Slope,
                    w * x.Bend * y.Value,
                    w * x.Slope * y.Slope,
                    w * x.Value * y.Bend
                );
            }
        }

        return (sum + new SurfaceValue(-split, 0, 0, 0, 0, 0)) * (2 / Math.Sqrt(Math.PI));
    }

    /// <summary>One end of the source, seen from a point: its error function, first and second derivative.</summary>
    internal static (double Value, double Slope, double Bend) Edge(double distance, double s)
    {
        var u = distance / (2 * s);
        if (Math.Abs(u) > Far)
        {
            return (Math.Sign(u), 0, 0);
        }

        var slope = Math.Exp(-u * u) / (s * Math.Sqrt(Math.PI));
        return (SpecialFunctions.Erf(u), slope, -u / s * slope);
    }

    /// <summary>Integral of the error function: u·erf(u) + exp(-u²)/√π.</summary>
    internal static double EdgeSum(double u) =>
        Math.Abs(u) > Far ? Math.Abs(u) : u * SpecialFunctions.Erf(u) + Math.Exp(-u * u) / Math.Sqrt(Math.PI);

    /// <summary>Panels that double in length, down to where the finest distance is out of sight.</summary>
    private static List<(double From, double To)> Panels(double finest, double split)
    {
        List<(double, double)> panels = [];
        var to = split;
        while (to > finest / (2 * Far) && panels.Count < 24)
        {
            panels.Add((to / 2, to));
            to /= 2;
        }

        panels.Add((0, to));
        return panels;
    }
}

/// <summary>A value on the face with its slopes and bends.</summary>
internal readonly record struct SurfaceValue(
    double Value,
    double SlopeX,
    double SlopeY,
    double BendXx,
    double BendXy,
    double BendYy
)
{
    public static SurfaceValue operator +(in SurfaceValue a, in SurfaceValue b) =>
        new(
            a.Value + b.Value,
            a.SlopeX + b.SlopeX,
            a.SlopeY + b.SlopeY,
            a.BendXx + b.BendXx,
            a.BendXy + b.BendXy,
            a.BendYy + b.BendYy
        );

    public static SurfaceValue operator *(in SurfaceValue a, double f) =>
        new(a.Value * f, a.SlopeX * f, a.SlopeY * f, a.BendXx * f, a.BendXy * f, a.BendYy * f);
}

/// <summary>Source and probe in one direction between two walls.</summary>
internal readonly struct SpreadingPair
{
    private readonly double side;
    private readonly double from;
    private readonly double to;
    private readonly double probe;
    private readonly double half;

    /// <summary>Places a source and a probe.</summary>
    /// <param name="side">From wall to wall, m.</param>
    /// <param name="centre">Centre of the source, m.</param>
    /// <param name="width">Width of the source, m, above 0.</param>
    /// <param name="probe">Centre of the probe, m.</param>
    /// <param name="probeWidth">Width of the probe, m; 0 for a point.</param>
    internal SpreadingPair(double side, double centre, double width, double probe, double probeWidth)
    {
        (this.side, from, to, this.probe, half) = (side, centre - width / 2, centre + width / 2, probe, probeWidth / 2);
        var finest = width;
        foreach (var place in new[] { probe - half, probe + half })
        {
            foreach (var edge in new[] { from, to, -from, -to, 2 * side - from, 2 * side - to })
            {
                var distance = Math.Abs(place - edge);
                finest = distance > 1e-9 * side ? Math.Min(finest, distance) : finest;
            }
        }

        Finest = finest;
    }

    /// <summary>Shortest distance that shows, m.</summary>
    internal double Finest { get; }

    /// <summary>Heat that has spread for s, seen by the probe, as a part of what evenly spread heat gives.</summary>
    internal double At(double s) =>
        half > 0
            ? side / (to - from) * (Mean(from, to, s) + Mean(-to, -from, s) + Mean(2 * side - to, 2 * side - from, s))
            : PointAt(s).Value;

    /// <summary>The same for a point, with slope and bend.</summary>
    internal (double Value, double Slope, double Bend) PointAt(double s)
    {
        var (value, slope, bend) = (0.0, 0.0, 0.0);
        Add(from, to, ref value, ref slope, ref bend, s);
        Add(-to, -from, ref value, ref slope, ref bend, s);
        Add(2 * side - to, 2 * side - from, ref value, ref slope, ref bend, s);
        var f = side / (to - from) / 2;
        return (f * value, f * slope, f * bend);
    }

    private void Add(double one, double other, ref double value, ref double slope, ref double bend, double s)
    {
        var a = SpreadingNear.Edge(probe - one, s);
        var b = SpreadingNear.Edge(probe - other, s);
        value += a.Value - b.Value;
        slope += a.Slope - b.Slope;
        bend += a.Bend - b.Bend;
    }

    private double Mean(double one, double other, double s)
    {
        double Sum(double place) => SpreadingNear.EdgeSum(place / (2 * s));
        double low = probe - half,
            high = probe + half;
        return s / (2 * half) * (Sum(high - one) - Sum(low - one) - Sum(high - other) + Sum(low - other));
    }
}
