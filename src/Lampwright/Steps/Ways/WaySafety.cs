namespace Lampwright.Steps.Ways;

/// <summary>What each way needs in safety, and the stops that no reason goes around.</summary>
/// <remarks>
/// A sense node on the primary side, an output that is not isolated, and pulses in the sense part are stops, and so is not knowing. None
/// of them hangs on a value that the maker could set as a limit.
/// <b>Source</b>: cautions: common practice, no source; extra-low voltage 60 V: IEC 60335-1, 3.4.2 (second-hand).
/// </remarks>
internal static class WaySafety
{
    private static readonly string[] None = [];

    private static readonly string Mains =
        "Work at mains voltage belongs to licensed people and local codes; unplug, then measure before touching anything.";

    private static readonly string Charge =
        "Capacitors stay charged after unplugging: wait, discharge through a resistor, and measure.";

    private static readonly string Approval =
        "Opening the driver voids its approval: insulation, earth bond, leakage and temperature are then the builder's to prove.";

    private static readonly string Hot =
        "The resistor gets hot enough to burn: metal-cased, on metal, away from wires.";

    private static readonly string Insulated =
        "The output is not shown to be isolated from the mains: everything wired to it counts as live and needs full insulation.";

    private static readonly string Flicker = "Chopped light can make turning machines seem to stand still.";

    private static readonly string ControlWires =
        "Control terminals are often only basically insulated from the mains: keep their wires apart and insulated as mains unless the data sheet says extra-low voltage.";

    private static readonly string Eyes = "Bright sources: do not look into the beam while trying steps.";

    /// <summary>Greatest direct voltage that counts as extra-low, in volts.</summary>
    private static readonly double ExtraLowV = 60;

    /// <summary>What a way needs in safety.</summary>
    public static IReadOnlyList<string> Of(WayFacts facts, WayKind kind, bool opensDriver)
    {
        var list = new List<string>(5);
        if (facts.Alternating && (opensDriver || kind is WayKind.SupplyResistor or WayKind.OtherDriver))
        {
            list.Add(Mains);
        }

        if (opensDriver)
        {
            list.Add(Approval);
            list.Add(Charge);
        }

        if (kind is WayKind.SupplyResistor or WayKind.SeriesResistor or WayKind.ShuntResistor)
        {
            list.Add(Hot);
        }

        if (kind is WayKind.ChoppedBehindCapacitor or WayKind.ChoppedWithoutCapacitor)
        {
            list.Add(Flicker);
        }

        if (kind is WayKind.DimmingInput)
        {
            list.Add(ControlWires);
        }

        var output = kind is not (WayKind.SupplyResistor or WayKind.OtherDriver or WayKind.DimmingInput);
        if (output && facts.Spec.Driver.Isolated != Isolation.Yes)
        {
            list.Add(Insulated);
        }
        else if (output && facts.LimitRangeV.Most > ExtraLowV)
        {
            list.Add(
                WayBench.Text(
                    $"The output may reach {facts.LimitRangeV.Most:0} V{(facts.KnownLimitV is null ? " (assumed)" : "")}, over the {ExtraLowV:0} V direct current that counts as extra-low: insulate everything on it."
                )
            );
        }

        list.Add(Eyes);
        return list;
    }

    /// <summary>Stops against wires from the sense path, those of the board's reading, and that of a loop that opens.</summary>
    public static IReadOnlyList<string> SenseStops(WayFacts facts, bool opensLoop)
    {
        var stops = facts.BoardStops;
        return !opensLoop
            ? [.. stops.Select(s => s.Code)]
            : [.. stops.Select(s => s.Code), StepsRules.SelectorOpens.Code];
    }

    private static readonly string[] NotIsolated = [StepsRules.OutputNotIsolated.Code];

    /// <summary>Stops against parts that a hand works and that are wired to the output or to control terminals.</summary>
    public static IReadOnlyList<string> OutputStops(WayFacts facts) =>
        facts.Spec.Driver.Isolated == Isolation.Yes ? None : NotIsolated;

    /// <summary>Nothing stands against it.</summary>
    public static IReadOnlyList<string> NoStops => None;

    /// <summary>The reason of a way that a stop stands against: the stops, and nothing that would lead around them.</summary>
    /// <param name="facts">What was told.</param>
    /// <param name="stops">Codes of the stops.</param>
    /// <param name="reason">What else speaks against it; said where the loop opens, and where the way would not work in any case.</param>
    /// <param name="works">Whether it would work but for the stops.</param>
    public static string Stopped(WayFacts facts, IReadOnlyList<string> stops, string reason, bool works)
    {
        var text = new System.Text.StringBuilder();
        foreach (var stop in facts.BoardStops)
        {
            if (stops.Contains(stop.Code))
            {
                var what = stop.Message.Split(';')[0].TrimEnd('.');
                text.Append(text.Length == 0 ? what : ", " + char.ToLowerInvariant(what[0]) + what[1..]);
            }
        }

        if (text.Length > 0)
        {
            text.Append(": no wire and no part that a hand works may be joined to it");
        }

        if (text.Length == 0)
        {
            return reason;
        }

        return works
            ? text.Append('.').ToString()
            : text.Append("; nor would it work: ")
                .Append(char.ToLowerInvariant(reason[0]))
                .Append(reason.AsSpan(1))
                .ToString();
    }
}
