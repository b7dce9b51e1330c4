namespace Lampwright.Heat.Network;

/// <summary>Nodes, ways of heat between them and heat set free: the box as a network.</summary>
/// <remarks>
/// <para>Steady: damped Newton on the heat that each node keeps. The last guess is never given as a value: where it does not come to
/// rest, <see cref="NetworkSolve"/> says which node kept how much. A balance that the smallest push would drive away from is no rest
/// either.</para>
/// Validity: each node even in temperature. Source: Incropera ch. 3 and 4 (nodal balances). Accuracy: the balance closes to 1e-6 of the
/// heat. Checked by: solver (an independent one in tests/Lampwright.References/Heat/Network), invariant (energy).
/// </remarks>
public sealed partial class ThermalNetwork
{
    private static readonly int MostPasses = 100;
    private static readonly double MostStepK = 200;
    private static readonly double LeastK = 50;
    private static readonly double MostK = 5000;

    private readonly NetworkLink[] links;
    private readonly NetworkSource[] sources;
    private readonly int[] place;
    private readonly NetworkPattern pattern;
    private readonly LinkPlaces[] places;
    private readonly int[] sourceSlots;

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
        : this(nodes, links, sources, null) { }

    /// <summary>The same, told of a network that is likely joined in the same way: its pattern then holds here too.</summary>
    internal ThermalNetwork(
        IReadOnlyList<NetworkNode> nodes,
        IReadOnlyList<NetworkLink> links,
        IReadOnlyList<NetworkSource> sources,
        ThermalNetwork? like
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

        if (like is not null && IsJoinedAs(like))
        {
            (pattern, places, sourceSlots) = (like.pattern, like.places, like.sourceSlots);
            return;
        }

        pattern = new(
            Free,
            [
                .. this.links.SelectMany(l =>
                    new[] { l.From, l.To }.SelectMany(
                        _ => new[] { l.Hot, l.Cold },
                        (row, by) => (place[row], place[by])
                    )
                ),
                .. this.sources.Select(s => (place[s.Node], place[s.Seen])),
            ]
        );
        places = [.. this.links.Select(l => new LinkPlaces(l, place, pattern))];
        sourceSlots = [.. this.sources.Select(s => pattern.SlotOf(place[s.Node], place[s.Seen]))];
    }

    private ThermalNetwork(ThermalNetwork like, NetworkLink[] links, NetworkSource[] sources)
    {
        (Nodes, Free, place, pattern, places, sourceSlots) = (
            like.Nodes,
            like.Free,
            like.place,
            like.pattern,
            like.places,
            like.sourceSlots
        );
        (this.links, this.sources) = (links, sources);
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

    /// <summary>The same nodes, joined in the same way, with other values of links and sources.</summary>
    /// <param name="changeLinks">Changes values of links in their array; who is joined to whom stays.</param>
    /// <param name="changeSources">The same for the sources.</param>
    internal ThermalNetwork With(Action<NetworkLink[]> changeLinks, Action<NetworkSource[]> changeSources)
    {
        NetworkLink[] linksThen = [.. links];
        NetworkSource[] sourcesThen = [.. sources];
        changeLinks(linksThen);
        changeSources(sourcesThen);
        return new(this, linksThen, sourcesThen);
    }

    /// <summary>Room for the slopes of this network and of all that are joined in the same way.</summary>
    internal NetworkMatrix Matrix() => new(pattern);

    /// <summary>Temperatures at rest, each node of given temperature at it and the others from a guess.</summary>
    /// <param name="guessK">Guess of every node, K; empty starts all a little above the warmest that is given.</param>
    public NetworkSolve Steady(ReadOnlySpan<double> guessK = default) => Steady(guessK, Matrix());

    /// <summary>The same with room that is at hand.</summary>
    /// <param name="guessK">Guess of every node, K.</param>
    /// <param name="matrix">Room for the slopes; holds them, split, at the rest that was found.</param>
    internal NetworkSolve Steady(ReadOnlySpan<double> guessK, NetworkMatrix matrix)
    {
        var kelvin = Start(guessK);
        var (keeps, step, old) = (new double[Free], new double[Free], new double[Nodes.Count]);
        Balance(kelvin, keeps, matrix.Values);
        for (var pass = 1; pass <= MostPasses; pass++)
        {
            var norm = Norm(keeps);
            if (norm <= Settled(kelvin))
            {
                return matrix.Factor() && Stays(matrix) ? Rest(kelvin, norm, pass) : RunsAway(kelvin, pass);
            }

            // slopes·step = -keeps
            for (var i = 0; i < Free; i++)
            {
                step[i] = -keeps[i];
            }

            if (!matrix.Factor())
            {
                break;
            }

            matrix.Solve(step);
            kelvin.CopyTo(old, 0);
            if (!Step(kelvin, old, step, keeps, norm, matrix.Values))
            {
                // No shorter step helps: at the last bits of the numbers this is rest, else it is told.
                Balance(kelvin, keeps, matrix.Values);
                norm = Norm(keeps);
                return norm > 100 * Settled(kelvin) ? Stuck(keeps, norm, pass)
                    : matrix.Factor() && Stays(matrix) ? Rest(kelvin, norm, pass)
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
            var guess = guessK.Length == kelvin.Length ? guessK[i] : double.NaN;
            kelvin[i] =
                Nodes[i].FixedK
                ?? (double.IsFinite(guess) ? Math.Clamp(guess, LeastK, MostK) : warmest + 5 + (0.1 * i));
        }

        return kelvin;
    }

    private bool Step(double[] kelvin, double[] old, double[] step, double[] keeps, double norm, double[] slopes)
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

            // The slopes cost little beside the heats, and the next pass begins with them.
            Balance(kelvin, keeps, slopes);
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
    private bool Stays(NetworkMatrix matrix) => matrix.Sign * (Free % 2 == 0 ? 1 : -1) > 0;

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
