namespace Lampwright.Heat.Network;

/// <summary>Nodes, ways of heat between them and heat set free: the box as a network.</summary>
/// <remarks>
/// <para>Steady: damped Newton on the heat that each node keeps. The last guess is never given as a value: where it does not come to
/// rest, <see cref="NetworkSolve"/> says which node kept how much. A balance that the smallest push would drive away from is no rest
/// either.</para>
/// Validity: each node even in temperature. Source: Incropera ch. 3 and 4 (nodal balances). Accuracy: the balance closes to 1e-6 of the
/// heat. Checked by: solver (an independent one in tests/Lampwright.References/Heat/Network), invariant (energy).
/// </remarks>
public sealed class ThermalNetwork
{
    private static readonly int MostPasses = 100;
    private static readonly double MostStepK = 200;
    private static readonly double LeastK = 50;
    private static readonly double MostK = 5000;

    private readonly NetworkLink[] links;
    private readonly NetworkSource[] sources;
    private readonly int[] place;

    /// <summary>A network.</summary>
    /// <param name="nodes">Its nodes; at least one of given temperature.</param>
    /// <param name="links">Ways of heat.</param>
    /// <param name="sources">Heat set free.</param>
    /// <exception cref="ArgumentException">A link or source names no node, or no temperature is given anywhere.</exception>
    public ThermalNetwork(
        IReadOnlyList<NetworkNode> nodes,
        IReadOnlyList<NetworkLink> links,
        IReadOnlyList<NetworkSource> sources
    )
    {
        ArgumentNullException.ThrowIfNull(nodes);
        ArgumentNullException.ThrowIfNull(links);
        ArgumentNullException.ThrowIfNull(sources);
        Nodes = nodes;
        this.links = [.. links];
        this.sources = [.. sources];
        bool Is(int i) => i >= 0 && i < nodes.Count;
        if (
            nodes.All(n => n.FixedK is null)
            || !this.links.All(l => Is(l.From) && Is(l.To) && Is(l.Hot) && Is(l.Cold))
            || !this.sources.All(s => Is(s.Node) && Is(s.Seen))
        )
        {
            throw new ArgumentException("A link or source names no node, or no temperature is given anywhere.");
        }

        place = new int[nodes.Count];
        for (var i = 0; i < place.Length; i++)
        {
            Guard.InRange(nodes[i].CapacityJPerK, 0, 1e9);
            place[i] = nodes[i].FixedK is null ? Free++ : -1;
        }
    }

    /// <summary>The nodes.</summary>
    public IReadOnlyList<NetworkNode> Nodes { get; }

    /// <summary>The ways of heat, in the order they were given.</summary>
    public IReadOnlyList<NetworkLink> Links => links;

    /// <summary>Count of nodes whose temperature is to be found.</summary>
    public int Free { get; }

    /// <summary>Index of a node by its name; -1 where there is none.</summary>
    /// <param name="name">Its name.</param>
    public int IndexOf(string name)
    {
        for (var i = 0; i < Nodes.Count; i++)
        {
            if (string.Equals(Nodes[i].Name, name, StringComparison.Ordinal))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Temperatures at rest, each node of given temperature at it and the others from a guess.</summary>
    /// <param name="guessK">Guess of every node, K; empty starts all a little above the warmest that is given.</param>
    public NetworkSolve Steady(ReadOnlySpan<double> guessK = default)
    {
        var kelvin = Start(guessK);
        var (keeps, trial, old) = (new double[Free], new double[Free], new double[Nodes.Count]);
        var slopes = new double[Free * Free];
        var solver = new Elimination(Free);
        var norm = double.PositiveInfinity;
        for (var pass = 1; pass <= MostPasses; pass++)
        {
            Balance(kelvin, keeps, slopes);
            norm = Norm(keeps);
            if (norm <= Settled(kelvin))
            {
                return solver.Factor(slopes) && Stays(solver) ? Rest(kelvin, norm, pass) : RunsAway(kelvin, pass);
            }

            // slopes·step = -keeps
            for (var i = 0; i < Free; i++)
            {
                trial[i] = -keeps[i];
            }

            if (!solver.Factor(slopes))
            {
                break;
            }

            solver.Solve(trial);
            kelvin.CopyTo(old, 0);
            if (!Step(kelvin, old, trial, keeps, norm))
            {
                // No shorter step helps: at the last bits of the numbers this is rest, else it is told.
                Balance(kelvin, keeps, slopes);
                norm = Norm(keeps);
                return norm > 100 * Settled(kelvin) ? Stuck(keeps, norm, pass)
                    : solver.Factor(slopes) && Stays(solver) ? Rest(kelvin, norm, pass)
                    : RunsAway(kelvin, pass);
            }
        }

        Balance(kelvin, keeps, null);
        return Stuck(keeps, Norm(keeps), MostPasses);
    }

    /// <summary>Heat set free at temperatures, W.</summary>
    /// <param name="kelvin">Temperature of each node, K.</param>
    public double SourceW(ReadOnlySpan<double> kelvin)
    {
        var sum = 0.0;
        foreach (var source in sources)
        {
            sum += source.At(kelvin);
        }

        return sum;
    }

    /// <summary>Heat through each link at temperatures, W, in the order they were given.</summary>
    /// <param name="kelvin">Temperature of each node, K.</param>
    public IReadOnlyList<double> LinkHeatsW(IReadOnlyList<double> kelvin)
    {
        ArgumentNullException.ThrowIfNull(kelvin);
        return [.. links.Select(l => l.At(kelvin[l.Hot], kelvin[l.Cold]).W)];
    }

    /// <summary>
    /// What a watt more in some nodes does to all, K/W: one array of every node's slope for each of them; null where the network has no slope there.
    /// </summary>
    /// <param name="kelvin">Temperatures at rest, K.</param>
    /// <param name="heated">Nodes that the watt is set free in; one of given temperature moves nothing.</param>
    public IReadOnlyList<double[]>? Slopes(ReadOnlySpan<double> kelvin, ReadOnlySpan<int> heated)
    {
        var (keeps, slopes, solver) = (new double[Free], new double[Free * Free], new Elimination(Free));
        Balance(kelvin, keeps, slopes);
        if (!solver.Factor(slopes))
        {
            return null;
        }

        var found = new double[heated.Length][];
        for (var k = 0; k < heated.Length; k++)
        {
            found[k] = new double[kelvin.Length];
            keeps.AsSpan().Clear();
            if (place[heated[k]] >= 0)
            {
                keeps[place[heated[k]]] = -1;
                solver.Solve(keeps);
            }

            for (var i = 0; i < kelvin.Length; i++)
            {
                found[k][i] = place[i] >= 0 ? keeps[place[i]] : 0;
            }
        }

        return found;
    }

    /// <summary>Heat that each free node keeps (in less out), W, and the slopes of that over the temperatures, W/K.</summary>
    internal void Balance(ReadOnlySpan<double> kelvin, Span<double> keeps, double[]? slopes)
    {
        keeps.Clear();
        slopes?.AsSpan().Clear();
        foreach (var link in links)
        {
            var heat = link.At(kelvin[link.Hot], kelvin[link.Cold]);
            var (from, to) = (place[link.From], place[link.To]);
            var (hot, cold) = (place[link.Hot], place[link.Cold]);
            Add(keeps, slopes, from, -1, heat, hot, cold);
            Add(keeps, slopes, to, 1, heat, hot, cold);
        }

        foreach (var source in sources)
        {
            var row = place[source.Node];
            if (row < 0)
            {
                continue;
            }

            keeps[row] += source.At(kelvin);
            var seen = place[source.Seen];
            if (slopes is not null && seen >= 0)
            {
                slopes[(row * Free) + seen] += source.WPerK;
            }
        }
    }

    /// <summary>Temperatures in which nodes without capacity follow the others, which stay where they are.</summary>
    internal double[] Followed(double[] kelvin)
    {
        if (Nodes.All(n => n.FixedK is not null || n.CapacityJPerK > 0))
        {
            return kelvin;
        }

        var held = new ThermalNetwork(
            [
                .. Nodes.Select(
                    (n, i) => n.CapacityJPerK > 0 || n.FixedK is not null ? n with { FixedK = kelvin[i] } : n
                ),
            ],
            links,
            sources
        );
        return held.Steady(kelvin).Result is { } rest ? [.. rest.Kelvin] : kelvin;
    }

    /// <summary>Place of a node among the free ones; -1 for one of given temperature.</summary>
    internal int PlaceOf(int node) => place[node];

    /// <summary>Every node from a guess, those of given temperature at it.</summary>
    internal double[] Start(ReadOnlySpan<double> guessK)
    {
        var warmest = Nodes.Max(n => n.FixedK ?? 0);
        var kelvin = new double[Nodes.Count];
        for (var i = 0; i < kelvin.Length; i++)
        {
            kelvin[i] = Nodes[i].FixedK ?? (guessK.Length == kelvin.Length ? guessK[i] : warmest + 5 + (0.1 * i));
        }

        return kelvin;
    }

    private bool Step(double[] kelvin, double[] old, double[] step, double[] keeps, double norm)
    {
        var longest = 0.0;
        foreach (var d in step)
        {
            longest = Math.Max(longest, Math.Abs(d));
        }

        if (!double.IsFinite(longest))
        {
            return false;
        }

        var share = longest > MostStepK ? MostStepK / longest : 1;
        for (var half = 0; half < 30; half++, share *= 0.5)
        {
            for (var i = 0; i < kelvin.Length; i++)
            {
                if (place[i] >= 0)
                {
                    kelvin[i] = Math.Clamp(old[i] + (share * step[place[i]]), LeastK, MostK);
                }
            }

            Balance(kelvin, keeps, null);
            if (Norm(keeps) < norm)
            {
                return true;
            }
        }

        old.CopyTo(kelvin, 0);
        return false;
    }

    private double Settled(ReadOnlySpan<double> kelvin)
    {
        var all = 0.0;
        foreach (var source in sources)
        {
            all += Math.Abs(source.At(kelvin));
        }

        return Math.Max(1e-9 * all, 1e-10);
    }

    private NetworkSolve Rest(double[] kelvin, double norm, int passes)
    {
        var leaves = 0.0;
        foreach (var link in links)
        {
            var w = link.At(kelvin[link.Hot], kelvin[link.Cold]).W;
            leaves += (place[link.To] < 0 ? w : 0) - (place[link.From] < 0 ? w : 0);
        }

        var fixedW = sources.Where(s => place[s.Node] < 0).Sum(s => s.At(kelvin));
        return new(new(kelvin, SourceW(kelvin), leaves + fixedW, norm, passes), norm, "", passes);
    }

    // A node that is pushed a little must come back: det(-J) > 0, or one way of moving grows without end.
    private bool Stays(Elimination solver) => solver.Sign * (Free % 2 == 0 ? 1 : -1) > 0;

    private NetworkSolve RunsAway(double[] kelvin, int passes)
    {
        var steepest = sources.MaxBy(s => s.WPerK);
        var node = steepest is null ? "" : Nodes[steepest.Node].Name;
        return new(null, Math.Abs(steepest?.At(kelvin) ?? 0), node, passes);
    }

    private NetworkSolve Stuck(double[] keeps, double norm, int passes)
    {
        var worst = 0;
        for (var i = 0; i < keeps.Length; i++)
        {
            worst = Math.Abs(keeps[i]) > Math.Abs(keeps[worst]) ? i : worst;
        }

        var node = Array.IndexOf(place, worst);
        return new(null, norm, node >= 0 ? Nodes[node].Name : "", passes);
    }

    private void Add(Span<double> keeps, double[]? slopes, int row, double sign, in LinkHeat heat, int hot, int cold)
    {
        if (row < 0)
        {
            return;
        }

        keeps[row] += sign * heat.W;
        if (slopes is null)
        {
            return;
        }

        if (hot >= 0)
        {
            slopes[(row * Free) + hot] += sign * heat.ByHot;
        }

        if (cold >= 0)
        {
            slopes[(row * Free) + cold] += sign * heat.ByCold;
        }
    }

    private static double Norm(ReadOnlySpan<double> keeps)
    {
        var most = 0.0;
        foreach (var k in keeps)
        {
            most = Math.Max(most, Math.Abs(k));
            if (double.IsNaN(k))
            {
                return double.PositiveInfinity;
            }
        }

        return most;
    }
}
