namespace Lampwright.Steps.Faults;

/// <summary>Puts the sense circuit with one fault in it into a network: wires first, then what has resistance.</summary>
internal static class FaultWiring
{
    public static void Wires(ref NodalSolve net, SenseCircuit circuit, Fault fault, int closed, in FaultOhms ohms)
    {
        foreach (var (a, b) in circuit.Wires)
        {
            net.Wire(a, b);
        }

        for (var i = 0; i < circuit.Leads.Count; i++)
        {
            if (ohms.Leads[i] <= 0 && Connects(circuit, fault, i, out var board, out var far))
            {
                net.Wire(board, far);
            }
        }

        if (fault.Kind == FaultKind.LeadsTouch)
        {
            net.Wire(circuit.Leads[fault.First].Board, circuit.Leads[fault.Second].Board);
        }

        if (fault.Kind == FaultKind.ResistorShort)
        {
            net.Wire(circuit.Resistors[fault.First].A, circuit.Resistors[fault.First].B);
        }

        for (var k = 0; k < circuit.Contacts.Count; k++)
        {
            if (ohms.Contacts[k] <= 0 && IsClosed(fault, closed, k))
            {
                net.Wire(circuit.Contacts[k].A, circuit.Contacts[k].B);
            }
        }
    }

    public static void Parts(ref NodalSolve net, SenseCircuit circuit, Fault fault, int closed, in FaultOhms ohms)
    {
        for (var k = 0; k < circuit.Resistors.Count; k++)
        {
            var part = circuit.Resistors[k];
            if (fault != new Fault(FaultKind.ResistorOpen, k))
            {
                net.Resistor(part.A, part.B, 1 / ohms.Resistors[k]);
            }
        }

        for (var k = 0; k < circuit.Contacts.Count; k++)
        {
            if (ohms.Contacts[k] > 0 && IsClosed(fault, closed, k))
            {
                net.Resistor(circuit.Contacts[k].A, circuit.Contacts[k].B, 1 / ohms.Contacts[k]);
            }
        }

        for (var i = 0; i < circuit.Leads.Count; i++)
        {
            if (ohms.Leads[i] > 0 && Connects(circuit, fault, i, out var board, out var far))
            {
                net.Resistor(board, far, 1 / ohms.Leads[i]);
            }
        }
    }

    public static bool IsClosed(Fault fault, int closed, int k) =>
        fault.Kind switch
        {
            FaultKind.SwitchOpen when fault.First == k => false,
            FaultKind.SwitchClosed when fault.First == k => true,
            FaultKind.BetweenPositions => false,
            FaultKind.BothPositions => k == fault.First || k == fault.First + 1,
            FaultKind.SelectorStuck => k == fault.First,
            _ => ((closed >> k) & 1) == 1,
        };

    // Where a lead goes, if it goes anywhere; swapped leads trade their ends on the board.
    private static bool Connects(SenseCircuit circuit, Fault fault, int i, out int board, out int far)
    {
        var emitter = i < 2;
        (board, far) = (circuit.Leads[i].Board, circuit.Leads[i].Far);
        if (fault.Kind == FaultKind.LeadsSwapped && (fault.First == i || fault.Second == i))
        {
            board = circuit.Leads[fault.First == i ? fault.Second : fault.First].Board;
        }

        return fault.Kind switch
        {
            FaultKind.LeadBroken => fault.First != i,
            FaultKind.PlatePulled => emitter,
            FaultKind.EmitterPulled => !emitter,
            _ => true,
        };
    }
}
