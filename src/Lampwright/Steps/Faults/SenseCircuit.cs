namespace Lampwright.Steps.Faults;

/// <summary>The sense circuit of an arrangement as it is drawn: which part and which lead lies between which nodes.</summary>
/// <remarks>
/// Series chain and selector, sensed on the board: LED − — R0 — M — lead — P — chain — Q — lead — G, sense input at LED −. With taps at the
/// chain's ends the order on the board is turned: G — R0 — M — lead — P — chain — Q — lead — LED −, and the sense input goes by a lead of its own
/// to Q, so that the lead from Q to LED − falls out of the loop. Parallel branches: LED − — floor — M — R0 — G, branches from M to G by two leads.
/// The bleed lies across the ends of the two leads on the board.
/// <b>Validity</b>: direct current; the sense input draws nothing; the controller's reference is the board's G.
/// <b>Source</b>: Kirchhoff. <b>Checked by</b>: solver (decks of a general-purpose circuit simulator), invariant.
/// </remarks>
public sealed class SenseCircuit
{
    /// <summary>The circuit of a chain.</summary>
    /// <param name="spec">The chain.</param>
    /// <param name="airK">Temperature of the air round resistors and leads, in kelvin.</param>
    public SenseCircuit(ChainSpec spec, double airK)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Spec = spec;
        var (g, low, sense, m) = (SenseNode.Ground, SenseNode.Low, SenseNode.Sense, SenseNode.Board);
        var (p, q) = (SenseNode.PlateP, SenseNode.PlateQ);
        var lead = spec.Lead is { } l
            ? l.LengthM * Tables.CopperWire.OhmPerMetre(l.AreaMm2, l.Tinned) * Tables.CopperWire.TemperatureFactor(airK)
            : 0;
        var n = spec.Switched.Count;
        Nodes = SenseNode.Inner + Math.Max(0, spec.Arrangement == Arrangement.SeriesChain ? n - 1 : n);
        var parts = new List<SenseResistor>();
        var leads = new List<SenseLead>
        {
            new("LED +", SenseNode.Out, SenseNode.Anode, 0),
            new("LED −", low, SenseNode.Cathode, 0),
        };
        var tap = spec.HasTapLead;
        var parallel = spec.Arrangement == Arrangement.ParallelBranches;
        var wires = new List<(int A, int B)>();
        Solder(parts, "R0", tap || parallel ? m : low, tap || parallel ? g : m, spec.Fixed, airK, -1);
        if (parallel)
        {
            if (spec.FloorOhm is > 0)
            {
                parts.Add(OnBoard(spec, "floor", low, m, spec.FloorOhm.Value, airK));
            }
            else
            {
                wires.Add((low, m));
            }
        }
        else if (spec.BleedOhm is { } bleed)
        {
            parts.Add(OnBoard(spec, "bleed", m, tap ? low : g, bleed, airK));
        }

        leads.Add(new("out", m, p, lead));
        leads.Add(new("back", tap ? low : g, q, lead));
        if (tap)
        {
            leads.Add(new("tap", sense, q, lead));
            if (spec.FallbackOhm is { } fallback)
            {
                parts.Add(new("fallback", sense, low, fallback, null, true, DriftShare: spec.Fixed.DriftShare));
            }
        }
        else
        {
            wires.Add((sense, low));
        }

        var contacts = new List<SenseContact>();
        for (var k = 0; k < n; k++)
        {
            var (name, part) = (FormattableString.Invariant($"{k + 1}"), spec.Switched[k]);
            if (spec.Arrangement == Arrangement.SeriesChain)
            {
                var (a, b) = (k == 0 ? p : SenseNode.Inner + k - 1, k == n - 1 ? q : SenseNode.Inner + k);
                Solder(parts, "R" + name, a, b, part, airK, k);
                contacts.Add(new("S" + name, a, b));
            }
            else
            {
                Solder(parts, "R" + name, p, SenseNode.Inner + k, part, airK, k);
                contacts.Add(new("S" + name, SenseNode.Inner + k, q));
            }
        }

        if (n == 0 && !parallel)
        {
            wires.Add((p, q));
        }

        (Resistors, Leads, Contacts, Wires) = (parts, leads, contacts, wires);
    }

    private readonly Dictionary<int, string> _between = [];

    // Two parts of a position are two of the circuit: each with its own power, each may fail by itself.
    private void Solder(
        List<SenseResistor> parts,
        string name,
        int a,
        int b,
        ResistorPart part,
        double airK,
        int position
    )
    {
        SenseResistor One(string called, int from, int to, ResistorPart p) =>
            new(
                called,
                from,
                to,
                p.Ohm,
                p.AllowedW(airK),
                position < 0,
                p.RisePerWattK,
                position,
                p.DriftShare,
                p.Tolerance
            );
        if (part.Pair is not { } pair)
        {
            parts.Add(One(name, a, b, part));
            return;
        }

        var (first, second) = (name + "a", name + "b");
        if (pair.Joint == ChainProof.Joint.Parallel)
        {
            parts.Add(One(first, a, b, pair.First));
            parts.Add(One(second, a, b, pair.Second));
            return;
        }

        var between = Nodes++;
        _between[between] = $"between {first} and {second}";
        parts.Add(One(first, a, between, pair.First));
        parts.Add(One(second, between, b, pair.Second));
    }

    private static SenseResistor OnBoard(ChainSpec spec, string name, int a, int b, double ohm, double airK)
    {
        // Of the kind of the fixed resistor's parts.
        var kind = spec.Fixed.Soldered()[0];
        return new(name, a, b, ohm, kind.AllowedW(airK), true, kind.RisePerWattK, DriftShare: kind.DriftShare);
    }

    /// <summary>Name of a node as the wiring sheet prints it.</summary>
    /// <param name="node">The node.</param>
    public string Name(int node) => _between.GetValueOrDefault(node) ?? SenseNode.Name(node);

    /// <summary>The chain it is made from.</summary>
    public ChainSpec Spec { get; }

    /// <summary>Count of nodes.</summary>
    public int Nodes { get; private set; }

    /// <summary>Resistors, R0 first.</summary>
    public IReadOnlyList<SenseResistor> Resistors { get; }

    /// <summary>Leads: LED +, LED −, out, back and, where the sense input has one of its own, tap.</summary>
    public IReadOnlyList<SenseLead> Leads { get; }

    /// <summary>Contacts in the order of the chain.</summary>
    public IReadOnlyList<SenseContact> Contacts { get; }

    /// <summary>Connections on the board without a resistance worth speaking of.</summary>
    public IReadOnlyList<(int A, int B)> Wires { get; }

    /// <summary>The contacts of a position as bits, the first switch the lowest; set = closed.</summary>
    /// <param name="switches">Digits in the order of the chain, 1 = closed.</param>
    public static int Closed(string switches)
    {
        ArgumentNullException.ThrowIfNull(switches);
        var bits = 0;
        for (var k = 0; k < switches.Length; k++)
        {
            bits |= switches[k] == '1' ? 1 << k : 0;
        }

        return bits;
    }

    /// <summary>The digits of a position.</summary>
    /// <param name="closed">Its contacts as bits, the first switch the lowest.</param>
    public string Switches(int closed) =>
        string.Create(
            Contacts.Count,
            closed,
            (s, bits) =>
            {
                for (var k = 0; k < s.Length; k++)
                {
                    s[k] = ((bits >> k) & 1) == 1 ? '1' : '0';
                }
            }
        );
}
