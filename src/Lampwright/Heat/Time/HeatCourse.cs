using Lampwright.Heat.Network;

namespace Lampwright.Heat.Time;

/// <summary>Temperatures of a network over time, readable at any moment within it.</summary>
/// <remarks>Between the steps a cubic through values and rates (Hermite); straight lines for nodes without capacity.</remarks>
public sealed class HeatCourse
{
    private readonly List<double> times = [];
    private readonly List<double[]> values = [];
    private readonly List<double[]> rates = [];

    internal HeatCourse(IReadOnlyList<NetworkNode> nodes) => Nodes = nodes;

    /// <summary>The nodes.</summary>
    public IReadOnlyList<NetworkNode> Nodes { get; }

    /// <summary>True where the steps became too small or too many: what follows the last time is not known.</summary>
    public bool Stopped { get; internal set; }

    /// <summary>Last moment that is known, s.</summary>
    public double EndS => times[^1];

    /// <summary>Count of steps.</summary>
    public int Steps => times.Count - 1;

    /// <summary>Temperature of a node, K; held at the ends.</summary>
    /// <param name="node">Index of the node.</param>
    /// <param name="timeS">Moment, s.</param>
    public double KelvinAt(int node, double timeS)
    {
        if (timeS <= times[0])
        {
            return values[0][node];
        }

        if (timeS >= times[^1])
        {
            return values[^1][node];
        }

        var i = times.BinarySearch(timeS);
        i = i >= 0 ? Math.Max(i, 1) : ~i;
        return Between(node, i, timeS);
    }

    /// <summary>First moment at which a node passes a temperature, s; null where it does not.</summary>
    /// <param name="node">Index of the node.</param>
    /// <param name="kelvin">The temperature, K.</param>
    /// <param name="rising">True to look for rising through it; false for falling.</param>
    public double? FirstS(int node, double kelvin, bool rising = true)
    {
        var sign = rising ? 1 : -1;
        if (sign * (values[0][node] - kelvin) >= 0)
        {
            return 0;
        }

        for (var i = 1; i < times.Count; i++)
        {
            if (sign * (values[i][node] - kelvin) < 0)
            {
                continue;
            }

            var (low, high) = (times[i - 1], times[i]);
            for (var pass = 0; pass < 60; pass++)
            {
                var middle = 0.5 * (low + high);
                (low, high) = sign * (Between(node, i, middle) - kelvin) >= 0 ? (low, middle) : (middle, high);
            }

            return high;
        }

        return null;
    }

    /// <summary>Temperatures of all nodes at the end, K.</summary>
    public IReadOnlyList<double> EndK => values[^1];

    internal void Add(double time, double[] kelvin, double[] rate)
    {
        times.Add(time);
        values.Add([.. kelvin]);
        rates.Add(rate);
    }

    private double Between(int node, int i, double time)
    {
        var h = times[i] - times[i - 1];
        var (t, a, b) = ((time - times[i - 1]) / h, values[i - 1][node], values[i][node]);
        var (m, n) = (rates[i - 1][node] * h, rates[i][node] * h);
        if (double.IsNaN(m) || double.IsNaN(n))
        {
            return a + ((b - a) * t);
        }

        // A stiff node's rate at the ends of a long step says nothing of its middle: hold the curve to where it goes.
        var d = b - a;
        m = d == 0 ? 0 : Math.Clamp(m / d, 0, 3) * d;
        n = d == 0 ? 0 : Math.Clamp(n / d, 0, 3) * d;
        var u = 1 - t;
        return (u * u * (a * (1 + (2 * t)) + (m * t))) + (t * t * (b * (1 + (2 * u)) - (n * u)));
    }
}
