namespace Lampwright.Heat.Network;

/// <summary>Where the slopes of a network can be other than zero, and in which order they are best split.</summary>
/// <remarks>
/// A panel touches a few neighbours: of a light's thirty-five by thirty-five slopes one in seven is there at all. The order and what it
/// fills in hang only on who touches whom, so they are found once and hold for every position and every pass. Source: Tinney and Walker
/// 1967, Proc. IEEE, vol. 55:1801-1809 (of the nodes left, the one with the fewest neighbours next).
/// </remarks>
internal sealed class NetworkPattern
{
    private readonly int[] slots;

    /// <summary>Lays the pattern.</summary>
    /// <param name="count">Count of unknowns.</param>
    /// <param name="places">Row and column of each slope that may be other than zero; those below 0 are passed over.</param>
    internal NetworkPattern(int count, IEnumerable<(int Row, int Column)> places)
    {
        Count = count;
        var touches = new HashSet<int>[count];
        for (var i = 0; i < count; i++)
        {
            touches[i] = [];
        }

        foreach (var (row, column) in places)
        {
            if (row >= 0 && column >= 0 && row != column)
            {
                touches[row].Add(column);
                touches[column].Add(row);
            }
        }

        Order = new int[count];
        Place = new int[count];
        var later = new int[count][];
        var left = Enumerable.Range(0, count).ToList();
        for (var k = 0; k < count; k++)
        {
            var next = left[0];
            foreach (var i in left)
            {
                next = touches[i].Count < touches[next].Count ? i : next;
            }

            left.Remove(next);
            (Order[k], Place[next], later[k]) = (next, k, [.. touches[next]]);
            foreach (var i in later[k])
            {
                touches[i].Remove(next);
                touches[i].UnionWith(later[k]);
                touches[i].Remove(i);
            }
        }

        slots = new int[count * count];
        Array.Fill(slots, -1);
        Starts = new int[count + 1];
        for (var k = 0; k < count; k++)
        {
            // Rows of the matrix by their place, the diagonals first.
            slots[(k * count) + k] = k;
            later[k] = [.. later[k].Select(i => Place[i]).Order()];
            Starts[k + 1] = Starts[k] + later[k].Length;
        }

        Later = [.. later.SelectMany(l => l)];
        for (var k = 0; k < count; k++)
        {
            for (var a = Starts[k]; a < Starts[k + 1]; a++)
            {
                slots[(k * count) + Later[a]] = count + a;
                slots[(Later[a] * count) + k] = count + Later.Length + a;
            }
        }

        Targets = new int[later.Sum(l => l.Length * l.Length)];
        var t = 0;
        foreach (var l in later)
        {
            foreach (var i in l)
            {
                foreach (var j in l)
                {
                    Targets[t++] = slots[(i * count) + j];
                }
            }
        }
    }

    /// <summary>Count of unknowns.</summary>
    internal int Count { get; }

    /// <summary>Count of slopes that are kept: diagonals, then those right of them, then those below.</summary>
    internal int Size => Count + (2 * Later.Length);

    /// <summary>Unknown that comes at each place of the order.</summary>
    internal int[] Order { get; }

    /// <summary>Place of each unknown in the order.</summary>
    internal int[] Place { get; }

    /// <summary>Where the later neighbours of each place begin in <see cref="Later"/>.</summary>
    internal int[] Starts { get; }

    /// <summary>Later neighbours of each place.</summary>
    internal int[] Later { get; }

    /// <summary>What each pair of later neighbours changes when a place is split off.</summary>
    internal int[] Targets { get; }

    /// <summary>Where the slope of a row over a column is kept; -1 where it is always zero.</summary>
    internal int SlotOf(int row, int column) =>
        row < 0 || column < 0 ? -1 : slots[(Place[row] * Count) + Place[column]];
}
