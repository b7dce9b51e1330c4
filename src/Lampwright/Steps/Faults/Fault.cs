namespace Lampwright.Steps.Faults;

/// <summary>What can go wrong with one thing.</summary>
public enum FaultKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A switch that no longer closes.</summary>
    SwitchOpen,

    /// <summary>A switch that no longer opens.</summary>
    SwitchClosed,

    /// <summary>A resistor that is broken or came off.</summary>
    ResistorOpen,

    /// <summary>A resistor that is by-passed by itself or by a drop of solder.</summary>
    ResistorShort,

    /// <summary>A lead that is broken, or never was connected.</summary>
    LeadBroken,

    /// <summary>Two leads that touch.</summary>
    LeadsTouch,

    /// <summary>Two leads that were exchanged.</summary>
    LeadsSwapped,

    /// <summary>The plug of the switch plate pulled while powered: all of its leads off at once.</summary>
    PlatePulled,

    /// <summary>The emitter pulled off while powered and put back.</summary>
    EmitterPulled,

    /// <summary>The supply's plug pulled.</summary>
    SupplyPulled,

    /// <summary>A rotary switch between two positions that closes none.</summary>
    BetweenPositions,

    /// <summary>A rotary switch between two positions that closes both, or a bridge between their lugs.</summary>
    BothPositions,

    /// <summary>A rotary switch whose wiper stays where it is whatever the knob says.</summary>
    SelectorStuck,
}

/// <summary>One single fault.</summary>
/// <param name="Kind">What goes wrong.</param>
/// <param name="First">Index of the switch, resistor or lead; of the first of two positions.</param>
/// <param name="Second">Index of the second lead; −1 where there is none.</param>
public readonly record struct Fault(FaultKind Kind, int First = -1, int Second = -1);

/// <summary>Every single fault of a circuit.</summary>
public static class FaultList
{
    /// <summary>All of them, switches first, then resistors, leads, plugs.</summary>
    public static IReadOnlyList<Fault> Of(SenseCircuit circuit)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        var all = new List<Fault>();
        for (var k = 0; k < circuit.Contacts.Count; k++)
        {
            all.Add(new(FaultKind.SwitchOpen, k));
            all.Add(new(FaultKind.SwitchClosed, k));
        }

        if (circuit.Spec is { Arrangement: Arrangement.Selector, Selector: not SelectorKind.MakeBeforeBreak })
        {
            all.Add(new(FaultKind.BetweenPositions));
        }

        if (circuit.Spec is { Arrangement: Arrangement.Selector, Selector: not SelectorKind.BreakBeforeMake })
        {
            for (var k = 0; k + 1 < circuit.Contacts.Count; k++)
            {
                all.Add(new(FaultKind.BothPositions, k));
            }
        }

        if (circuit.Spec.Arrangement == Arrangement.Selector && circuit.Contacts.Count > 1)
        {
            for (var k = 0; k < circuit.Contacts.Count; k++)
            {
                all.Add(new(FaultKind.SelectorStuck, k));
            }
        }

        for (var k = 0; k < circuit.Resistors.Count; k++)
        {
            all.Add(new(FaultKind.ResistorOpen, k));
            all.Add(new(FaultKind.ResistorShort, k));
        }

        for (var i = 0; i < circuit.Leads.Count; i++)
        {
            all.Add(new(FaultKind.LeadBroken, i));
        }

        foreach (var kind in new[] { FaultKind.LeadsTouch, FaultKind.LeadsSwapped })
        {
            for (var i = 0; i < circuit.Leads.Count; i++)
            {
                for (var j = i + 1; j < circuit.Leads.Count; j++)
                {
                    all.Add(new(kind, i, j));
                }
            }
        }

        all.Add(new(FaultKind.PlatePulled));
        all.Add(new(FaultKind.EmitterPulled));
        all.Add(new(FaultKind.SupplyPulled));
        return all;
    }

    /// <summary>A fault in words.</summary>
    public static string Words(SenseCircuit circuit, Fault fault)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        string Lead(int i) => circuit.Leads[i].Name;
        var selects = circuit.Spec.Arrangement == Arrangement.Selector;
        return fault.Kind switch
        {
            FaultKind.SwitchOpen when selects => Text($"selector position {fault.First + 1} open"),
            FaultKind.SwitchClosed when selects => Text($"selector position {fault.First + 1} always closed"),
            FaultKind.SwitchOpen => $"{circuit.Contacts[fault.First].Name} never closes",
            FaultKind.SwitchClosed => $"{circuit.Contacts[fault.First].Name} never opens",
            FaultKind.ResistorOpen => $"{circuit.Resistors[fault.First].Name} open",
            FaultKind.ResistorShort => $"{circuit.Resistors[fault.First].Name} short",
            FaultKind.LeadBroken => $"lead {Lead(fault.First)} broken",
            FaultKind.LeadsTouch => $"leads {Lead(fault.First)} and {Lead(fault.Second)} touch",
            FaultKind.LeadsSwapped => $"leads {Lead(fault.First)} and {Lead(fault.Second)} swapped",
            FaultKind.PlatePulled => "plug of the switch plate pulled while powered",
            FaultKind.EmitterPulled => "emitter pulled off while powered, and put back",
            FaultKind.SupplyPulled => "supply plug pulled",
            FaultKind.BetweenPositions => "selector between two positions, none closed",
            FaultKind.BothPositions => Text($"selector between {fault.First + 1} and {fault.First + 2}, both closed"),
            FaultKind.SelectorStuck => Text($"selector stuck at {fault.First + 1}"),
            _ => "no fault",
        };
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
