using Lampwright.Steps.Board;

namespace Lampwright.Steps.Ways;

/// <summary>What each way needs in safety, and the stops that no reason goes around.</summary>
/// <remarks>
/// A sense node on the primary side, an output that is not isolated, and pulses in the sense part are stops, and so is not knowing. None
/// of them hangs on a value that the maker could set as a limit.
/// <b>Source</b>: electrical.md section 8 (cautions, common practice); extra-low voltage 60 V: IEC 60335-1, 3.4.2 (second-hand).
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
        else if (output && facts.LimitV > ExtraLowV)
        {
            list.Add(
                WayBench.Text(
                    $"The output may reach {facts.LimitV:0} V, over the {ExtraLowV:0} V direct current that counts as extra-low: insulate everything on it."
                )
            );
        }

        list.Add(Eyes);
        return list;
    }

    /// <summary>Stops against wires from the sense path.</summary>
    public static IReadOnlyList<string> SenseStops(WayFacts facts, bool opensLoop)
    {
        var driver = facts.Spec.Driver;
        var (side, isolated, smooth) = (
            !BoardStops.SideStands(driver),
            !BoardStops.IsolationStands(driver),
            !BoardStops.CurrentStands(driver)
        );
        if (side && isolated && smooth && !opensLoop)
        {
            return None;
        }

        var stops = new List<string>(4);
        if (!side)
        {
            stops.Add(StepsRules.SenseNotSecondary.Code);
        }

        if (!isolated)
        {
            stops.Add(StepsRules.OutputNotIsolated.Code);
        }

        if (!smooth)
        {
            stops.Add(StepsRules.PulsedSense.Code);
        }

        if (opensLoop)
        {
            stops.Add(StepsRules.SelectorOpens.Code);
        }

        return stops;
    }

    private static readonly string[] NotIsolated = [StepsRules.OutputNotIsolated.Code];

    /// <summary>Stops against parts that a hand works and that are wired to the output or to control terminals.</summary>
    public static IReadOnlyList<string> OutputStops(WayFacts facts) =>
        facts.Spec.Driver.Isolated == Isolation.Yes ? None : NotIsolated;

    /// <summary>Nothing stands against it.</summary>
    public static IReadOnlyList<string> NoStops => None;

    /// <summary>The reason of a way that a stop stands against: the stop alone, unless it would not work even so.</summary>
    public static string Stopped(WayFacts facts, IReadOnlyList<string> stops, string reason)
    {
        var driver = facts.Spec.Driver;
        var why = new List<string>(4);
        foreach (var code in stops)
        {
            why.Add(
                code == StepsRules.SenseNotSecondary.Code
                    ? driver.Sense.Side == SenseSide.Primary
                        ? "the sense part is at mains potential"
                        : "the sense part is not shown to be on the output side and may be at mains potential"
                    : code == StepsRules.OutputNotIsolated.Code
                        ? driver.Isolated == Isolation.No
                            ? "the output is connected to the mains"
                            : "the output is not shown to be isolated from the mains"
                        : code == StepsRules.PulsedSense.Code
                            ? driver.Sense.Carries == SenseCarries.Pulsed
                                ? "the sense part carries the pulses of the switching stage"
                                : "the sense part is not shown to carry a smooth current"
                            : reason
            );
        }

        var all = string.Join(", ", why);
        return char.ToUpperInvariant(all[0])
            + all[1..].TrimEnd('.')
            + ": no wire and no part worked by hand may be joined to it.";
    }
}
