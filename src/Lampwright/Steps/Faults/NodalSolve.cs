namespace Lampwright.Steps.Faults;

/// <summary>Node voltages of a network of resistors for two currents at once: nodal analysis, dense, without allocation.</summary>
/// <remarks>
/// G·v = i with a leak of 1 nS from every node to ground, so that a node that hangs free has a voltage. Nodes joined by a wire are one unknown.
/// <b>Validity</b>: resistances from 1 µΩ to 1 GΩ, some twenty nodes. <b>Source</b>: Ho, Ruehli, Brennan, The modified nodal approach to network
/// analysis, IEEE Trans. CAS 22 (1975) for the method; elimination without pivoting, which a positive definite matrix allows.
/// <b>Accuracy</b>: rounding; the matrix is symmetric and positive definite. <b>Checked by</b>: solver, invariant.
/// </remarks>
internal ref struct NodalSolve
{
    private static readonly double LeakS = 1e-9;
    private readonly Span<int> _root;
    private readonly Span<double> _matrix;
    private readonly Span<double> _first;
    private readonly Span<double> _second;
    private readonly int _stride;

    /// <param name="nodes">Count of nodes; node 0 is ground.</param>
    /// <param name="root">Room for as many integers.</param>
    /// <param name="room">Room for nodes times (nodes + 2) numbers.</param>
    public NodalSolve(int nodes, Span<int> root, Span<double> room)
    {
        _root = root[..nodes];
        _stride = nodes;
        _matrix = room[..(nodes * nodes)];
        _first = room.Slice(nodes * nodes, nodes);
        _second = room.Slice((nodes * nodes) + nodes, nodes);
        room[..(nodes * (nodes + 2))].Clear();
        for (var i = 0; i < nodes; i++)
        {
            _root[i] = i;
        }
    }

    /// <summary>Joins two nodes. All wires come before <see cref="Number"/>.</summary>
    public readonly void Wire(int a, int b)
    {
        var (x, y) = (Root(a), Root(b));
        _root[Math.Max(x, y)] = Math.Min(x, y);
    }

    /// <summary>Numbers the unknowns: after the last wire, before the first resistor.</summary>
    public void Number()
    {
        // Roots come before what hangs on them, so one pass upward numbers all; the ground is 0 and no unknown.
        Unknowns = 0;
        for (var i = 1; i < _stride; i++)
        {
            _root[i] = _root[i] == i ? ++Unknowns : _root[_root[i]];
        }
    }

    /// <summary>Count of unknown voltages.</summary>
    public int Unknowns { get; private set; }

    /// <summary>Puts a conductance between two nodes, in siemens.</summary>
    public readonly void Resistor(int a, int b, double siemens)
    {
        var (x, y) = (_root[a], _root[b]);
        if (x == y)
        {
            return;
        }

        if (x > y)
        {
            (x, y) = (y, x);
        }

        // Symmetric: the upper half is enough.
        _matrix[(y * _stride) + y] += siemens;
        if (x > 0)
        {
            _matrix[(x * _stride) + x] += siemens;
            _matrix[(x * _stride) + y] -= siemens;
        }
    }

    /// <summary>Feeds currents into a node: one of each of the two cases.</summary>
    public readonly void Feed(int node, double first, double second)
    {
        _first[_root[node]] += first;
        _second[_root[node]] += second;
    }

    /// <summary>Solves; the voltages of both cases are then read with <see cref="First"/> and <see cref="Second"/>.</summary>
    public readonly void Solve()
    {
        for (var p = 1; p <= Unknowns; p++)
        {
            _matrix[(p * _stride) + p] += LeakS;
        }

        for (var p = 1; p <= Unknowns; p++)
        {
            var row = _matrix.Slice(p * _stride, _stride);
            var inverse = 1 / row[p];
            for (var q = p + 1; q <= Unknowns; q++)
            {
                if (row[q] == 0)
                {
                    continue;
                }

                var factor = row[q] * inverse;
                var below = _matrix.Slice(q * _stride, _stride);
                for (var c = q; c <= Unknowns; c++)
                {
                    below[c] -= factor * row[c];
                }

                _first[q] -= factor * _first[p];
                _second[q] -= factor * _second[p];
            }
        }

        for (var p = Unknowns; p >= 1; p--)
        {
            var row = _matrix.Slice(p * _stride, _stride);
            var (a, b) = (_first[p], _second[p]);
            for (var c = p + 1; c <= Unknowns; c++)
            {
                a -= row[c] * _first[c];
                b -= row[c] * _second[c];
            }

            (_first[p], _second[p]) = (a / row[p], b / row[p]);
        }

        _first[0] = 0;
        _second[0] = 0;
    }

    /// <summary>Voltage of a node in the first case.</summary>
    public readonly double First(int node) => _first[_root[node]];

    /// <summary>Voltage of a node in the second case.</summary>
    public readonly double Second(int node) => _second[_root[node]];

    private readonly int Root(int node)
    {
        while (_root[node] != node)
        {
            node = _root[node];
        }

        return node;
    }
}
