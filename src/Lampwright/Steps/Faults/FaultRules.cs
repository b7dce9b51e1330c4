using Lampwright.Findings;

namespace Lampwright.Steps.Faults;

/// <summary>The rules of single faults of a chain; each has a paragraph in docs/findings.md.</summary>
public static class FaultRules
{
    private const string Practice = "common practice, no source";

    /// <summary>One fault of the chain drives the emitter over its limit.</summary>
    public static readonly Rule FaultOverEmitter = new(
        "STP045",
        "One fault can drive the emitter over its limit",
        Severity.Stop,
        "Keep a fixed resistor on the driver's board that alone holds the emitter's limit (parallel branches: steps.floor), give a tap lead a resistor on the board to fall back to (steps.fallback) and the leads one across them (steps.bleed), or state the driver's own limit (current.limit) where it lies below the emitter's.",
        "every single fault solved in the sense circuit; that one fault must not harm: " + Practice
    );

    /// <summary>Only the way it is built keeps a fault away.</summary>
    public static readonly Rule FaultByConstruction = new(
        "STP046",
        "Only the way it is built keeps one fault from the emitter",
        Severity.Warn,
        "Run the emitter's leads apart from the chain's with plugs that cannot be exchanged and write steps.lead.apart = true; take metal strip, metal film or wirewound parts for the fixed resistor and write steps.part.fails = \"open\".",
        "every single fault solved in the sense circuit; resistors that fail open only are not shorted, IEC 61347-1 clause 14 (memory)"
    );

    /// <summary>Parallel branches without a floor.</summary>
    public static readonly Rule NoFloor = new(
        "STP047",
        "Parallel branches without a series floor on the board",
        Severity.Warn,
        "Put a resistor in series with all branches on the driver's board (steps.floor): two leads that touch then ask for no more than the emitter takes.",
        "Ohm's law; " + Practice
    );

    /// <summary>A loose lead opens the loop.</summary>
    public static readonly Rule LooseLead = new(
        "STP048",
        "A loose lead does not fall to the dimmest step",
        Severity.Warn,
        "Put a resistor across the two leads on the driver's board (steps.bleed): a lead that comes loose then dims the light instead of opening the emitter's path.",
        "every single fault solved in the sense circuit; " + Practice
    );

    /// <summary>A switch carries more than it is rated for.</summary>
    public static readonly Rule ContactOverRating = new(
        "STP049",
        "A switch carries more than its contacts are rated for",
        Severity.Stop,
        "Take a switch of a higher direct-current rating, or wire both of its poles in parallel for reserve, not for the rating itself.",
        "the switch's data sheet"
    );

    /// <summary>No fuse of the list bears the supply's current.</summary>
    public static readonly Rule FuseBeyondList = new(
        "STP055",
        "No cartridge fuse bears the supply's current",
        Severity.Warn,
        "Take a higher supply voltage, or let somebody who is licensed for it choose link or breaker, holder and leads.",
        "rated currents of IEC 60127-2 (memory)"
    );

    /// <summary>A fault that would be a stop is left out because the file says that it cannot happen.</summary>
    public static readonly Rule TakenOnWord = new(
        "STP056",
        "One fault over the emitter's limit is left out on your word",
        Severity.Note,
        "Look at the light itself before the first power and tick it there: the parts are metal strip, metal film or wirewound, the emitter's pair has its own way and a plug that fits nowhere else. If that is not so, take the line out of the file.",
        "every single fault solved in the sense circuit; resistors that fail open only are not shorted, IEC 61347-1 clause 14 (memory); apart and no plug that fits: "
            + Practice
    );

    /// <summary>All rules of single faults.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [FaultOverEmitter, FaultByConstruction, NoFloor, LooseLead, ContactOverRating, FuseBeyondList, TakenOnWord];
}
