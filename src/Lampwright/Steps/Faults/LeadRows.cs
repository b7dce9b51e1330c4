namespace Lampwright.Steps.Faults;

/// <summary>The wiring schedule: every lead from the board to the light, and every link on the plate.</summary>
internal static class LeadRows
{
    public static IReadOnlyList<LeadRow> Of(SenseCircuit circuit, double mostA)
    {
        var rows = new List<LeadRow>();
        var spec = circuit.Spec;
        foreach (var lead in circuit.Leads)
        {
            // No current to speak of flows in a tap lead.
            var amps = lead.Name == "tap" ? 0 : mostA;
            var known = lead.Ohm > 0;
            rows.Add(
                new(
                    lead.Name,
                    SenseNode.Name(lead.Board),
                    SenseNode.Name(lead.Far),
                    known ? spec.Lead?.LengthM : null,
                    known ? spec.Lead?.AreaMm2 : null,
                    known ? lead.Ohm : null,
                    amps,
                    known ? lead.Ohm * amps : null,
                    known ? lead.Ohm * amps * amps : null,
                    InLoop(spec, lead.Name),
                    Words(spec, lead.Name)
                )
            );
        }

        return rows;
    }

    private static bool InLoop(ChainSpec spec, string name) =>
        name switch
        {
            "out" => true,
            "back" => !spec.HasTapLead,
            _ => false,
        };

    private static string Words(ChainSpec spec, string name) =>
        name switch
        {
            "LED +" or "LED −" => "apart from the chain's leads, with a plug of another kind",
            "tap" => "carries no current; twisted with the lead back",
            _ when spec.Arrangement == Arrangement.ParallelBranches => "as short as it goes; out and back twisted",
            _ => "out and back twisted, held by a clamp at both ends",
        };
}
