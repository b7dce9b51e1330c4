namespace Lampwright.Heat.Network;

/// <summary>Heats of the links at given temperatures, added up by node, and the slopes of the sums.</summary>
public sealed partial class ThermalNetwork
{
    /// <summary>
    /// What a watt more in some nodes does to all, K/W: one array of every node's slope for each of them; null where the network has no slope there.
    /// </summary>
    /// <param name="kelvin">Temperatures at rest, K.</param>
    /// <param name="heated">Nodes that the watt is set free in; one of given temperature moves nothing.</param>
    public IReadOnlyList<double[]>? Slopes(ReadOnlySpan<double> kelvin, ReadOnlySpan<int> heated)
    {
        var (keeps, matrix) = (new double[Free], Matrix());
        Balance(kelvin, keeps, matrix.Values);
        return matrix.Factor() ? Slopes(matrix, heated) : null;
    }

    /// <summary>The same where the slopes at rest are split already.</summary>
    internal double[][] Slopes(NetworkMatrix matrix, ReadOnlySpan<int> heated)
    {
        var (watt, found) = (new double[Free], new double[heated.Length][]);
        for (var k = 0; k < heated.Length; k++)
        {
            found[k] = new double[place.Length];
            if (place[heated[k]] < 0)
            {
                continue;
            }

            watt.AsSpan().Clear();
            watt[place[heated[k]]] = -1;
            matrix.Solve(watt);
            for (var i = 0; i < place.Length; i++)
            {
                found[k][i] = place[i] >= 0 ? watt[place[i]] : 0;
            }
        }

        return found;
    }

    /// <summary>Heat that each free node keeps (in less out), W, and the slopes of that over the temperatures, W/K, by the slots of the pattern.</summary>
    internal void Balance(ReadOnlySpan<double> kelvin, Span<double> keeps, double[]? slopes)
    {
        keeps.Clear();
        slopes?.AsSpan().Clear();
        for (var l = 0; l < links.Length; l++)
        {
            ref readonly var at = ref places[l];
            var heat = links[l].At(kelvin[at.Hot], kelvin[at.Cold]);
            if (at.From >= 0)
            {
                keeps[at.From] -= heat.W;
            }

            if (at.To >= 0)
            {
                keeps[at.To] += heat.W;
            }

            if (slopes is not null)
            {
                Add(slopes, at.FromByHot, -heat.ByHot);
                Add(slopes, at.FromByCold, -heat.ByCold);
                Add(slopes, at.ToByHot, heat.ByHot);
                Add(slopes, at.ToByCold, heat.ByCold);
            }
        }

        for (var s = 0; s < sources.Length; s++)
        {
            var row = place[sources[s].Node];
            if (row < 0)
            {
                continue;
            }

            keeps[row] += sources[s].At(kelvin);
            if (slopes is not null)
            {
                Add(slopes, sourceSlots[s], sources[s].WPerK);
            }
        }
    }

    private bool IsJoinedAs(ThermalNetwork like)
    {
        if (
            links.Length != like.links.Length
            || sources.Length != like.sources.Length
            || !place.AsSpan().SequenceEqual(like.place)
        )
        {
            return false;
        }

        for (var l = 0; l < links.Length; l++)
        {
            var (own, other) = (links[l], like.links[l]);
            if (own.From != other.From || own.To != other.To || own.Hot != other.Hot || own.Cold != other.Cold)
            {
                return false;
            }
        }

        for (var s = 0; s < sources.Length; s++)
        {
            if (sources[s].Node != like.sources[s].Node || sources[s].Seen != like.sources[s].Seen)
            {
                return false;
            }
        }

        return true;
    }

    private static void Add(double[] slopes, int slot, double value)
    {
        if (slot >= 0)
        {
            slopes[slot] += value;
        }
    }

    /// <summary>Where a link's nodes are among the temperatures, the balances and the slopes; -1 for what a given temperature takes out.</summary>
    private readonly struct LinkPlaces(NetworkLink link, int[] place, NetworkPattern pattern)
    {
        public readonly int Hot = link.Hot;
        public readonly int Cold = link.Cold;
        public readonly int From = place[link.From];
        public readonly int To = place[link.To];
        public readonly int FromByHot = pattern.SlotOf(place[link.From], place[link.Hot]);
        public readonly int FromByCold = pattern.SlotOf(place[link.From], place[link.Cold]);
        public readonly int ToByHot = pattern.SlotOf(place[link.To], place[link.Hot]);
        public readonly int ToByCold = pattern.SlotOf(place[link.To], place[link.Cold]);
    }
}
