namespace Lampwright.References.Heat.SecondTruth;

/// <summary>The marched channel as two tables: what a fan pushes through it, and what rises through it by itself.</summary>
internal static class Channels
{
    private static readonly Lazy<List<Developing.Station>> Pushed = new(() => Developing.March(1, 0, 1.25, 2e-6, 1.04));

    private static readonly Lazy<(double LogGr, double LogNu)[]> Rising = new(() =>
        [
            .. Enumerable
                .Range(0, 33)
                .Select(i => -2 + 8.0 * i / 32)
                .Select(l => (l, Math.Log10(OwnDraft(Math.Pow(10, l))))),
        ]
    );

    /// <summary>Pressure lost over ρu², and temperature of the air at the outlet, 0 as it came to 1 as warm as the wall.</summary>
    /// <param name="xi">Length times viscosity over speed and half gap squared.</param>
    public static (double Heads, double Bulk) Forced(double xi)
    {
        var table = Pushed.Value;
        var last = table[^1];
        if (xi >= last.X)
        {
            // Developed: three for the pressure (Poiseuille), 7.541/4 over Pr for the heat (Graetz).
            return (
                -0.5 - last.Head + 3 * (xi - last.X),
                1 - (1 - last.Bulk) * Math.Exp(-7.541 / 4 / 0.71 * (xi - last.X))
            );
        }

        int low = 0,
            high = table.Count - 1;
        while (high - low > 1)
        {
            var mid = (low + high) / 2;
            (low, high) = table[mid].X <= xi ? (mid, high) : (low, mid);
        }

        var part = (xi - table[low].X) / (table[high].X - table[low].X);
        return (
            -0.5 - (table[low].Head + part * (table[high].Head - table[low].Head)),
            table[low].Bulk + part * (table[high].Bulk - table[low].Bulk)
        );
    }

    /// <summary>Mean film over conductivity and half gap, on wall less room, of a channel whose own draft is all there is.</summary>
    /// <param name="gr">gβΔT·a⁴/(ν²L), a half of the gap.</param>
    public static double Natural(double gr)
    {
        var table = Rising.Value;
        var log = Math.Log10(Math.Max(gr, 1e-30));
        if (log <= table[0].LogGr)
        {
            return 0.71 * gr / 3;
        }

        var at = (log - table[0].LogGr) / (table[1].LogGr - table[0].LogGr);
        var i = Math.Min((int)at, table.Length - 2);
        return Math.Pow(10, table[i].LogNu + (at - i) * (table[i + 1].LogNu - table[i].LogNu));
    }

    // The flow that makes the outlet's pressure the room's; more flow loses more.
    private static double OwnDraft(double gr)
    {
        // From too much flow downward: with too little the air in the middle would turn back, which a march cannot follow.
        var high = 0.34 * gr;
        while (End(0.8 * high) < 0)
        {
            high *= 0.8;
        }

        var low = 0.8 * high;
        for (var i = 0; i < 14; i++)
        {
            var mid = Math.Sqrt(low * high);
            (low, high) = End(mid) > 0 ? (mid, high) : (low, mid);
        }

        var flow = Math.Sqrt(low * high);
        return 0.71 * flow * Developing.March(flow, gr, 1, 2e-5, 1.12)[^1].Bulk;

        double End(double inlet) => Developing.March(inlet, gr, 1, 2e-5, 1.12)[^1].Head;
    }
}
