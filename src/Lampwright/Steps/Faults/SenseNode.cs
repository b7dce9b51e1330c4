namespace Lampwright.Steps.Faults;

/// <summary>The nodes of the sense circuit; the inner ones of a chain follow <see cref="PlateQ"/>.</summary>
/// <remarks>
/// On the driver's board: <see cref="Ground"/> the controller's reference, <see cref="Out"/> the pad LED +, <see cref="Low"/> the pad LED −,
/// <see cref="Sense"/> the input that the controller regulates, <see cref="Board"/> the pad behind the fixed resistor where a lead begins.
/// In the light: <see cref="Anode"/> and <see cref="Cathode"/> of the emitter, <see cref="PlateP"/> and <see cref="PlateQ"/> the ends of the chain.
/// </remarks>
public static class SenseNode
{
    /// <summary>The controller's reference, 0 V.</summary>
    public static int Ground => 0;

    /// <summary>Pad LED + of the driver.</summary>
    public static int Out => 1;

    /// <summary>Pad LED − of the driver.</summary>
    public static int Low => 2;

    /// <summary>The controller's sense input.</summary>
    public static int Sense => 3;

    /// <summary>Pad on the board between fixed resistor and lead.</summary>
    public static int Board => 4;

    /// <summary>Positive end of the emitter.</summary>
    public static int Anode => 5;

    /// <summary>Negative end of the emitter.</summary>
    public static int Cathode => 6;

    /// <summary>First end of the chain.</summary>
    public static int PlateP => 7;

    /// <summary>Last end of the chain.</summary>
    public static int PlateQ => 8;

    /// <summary>First of the inner nodes of the switch plate; those between two parts of a position come after them.</summary>
    public static int Inner => 9;

    /// <summary>Name of a node as the wiring sheet prints it.</summary>
    /// <param name="node">The node.</param>
    public static string Name(int node) =>
        node switch
        {
            0 => "board G",
            1 => "board LED +",
            2 => "board LED −",
            3 => "board S",
            4 => "board M",
            5 => "emitter +",
            6 => "emitter −",
            7 => "plate P",
            8 => "plate Q",
            _ => FormattableString.Invariant($"plate {node - 8}"),
        };
}

/// <summary>A lead from the board to the light.</summary>
/// <param name="Name">Its name: <c>LED +</c>, <c>LED −</c>, <c>out</c>, <c>back</c> or <c>tap</c>.</param>
/// <param name="Board">Node on the board.</param>
/// <param name="Far">Node in the light.</param>
/// <param name="Ohm">Its resistance in ohm; 0 for the emitter's own leads, whose drop the driver makes up for.</param>
public sealed record SenseLead(string Name, int Board, int Far, double Ohm);

/// <summary>A resistor of the circuit.</summary>
/// <param name="Name">Its name: <c>R0</c>, <c>R1</c>…, <c>R1a</c> and <c>R1b</c> for two parts in one position, <c>floor</c>, <c>bleed</c>, <c>fallback</c>.</param>
/// <param name="A">One node.</param>
/// <param name="B">The other.</param>
/// <param name="Ohm">Its resistance in ohm; above 0.</param>
/// <param name="AllowedW">Power it may take in its air, in watts; null where nothing is known of the part.</param>
/// <param name="OnBoard">Whether it sits on the driver's board.</param>
/// <param name="RisePerWattK">Its own rise over the air for each watt, in K/W.</param>
/// <param name="Switch">Index of the switch of its position; −1 where it has none.</param>
/// <param name="DriftShare">How far heat can move its resistance, as a share.</param>
/// <param name="Tolerance">Its own tolerance as a share; null for that of all parts of the chain.</param>
public sealed record SenseResistor(
    string Name,
    int A,
    int B,
    double Ohm,
    double? AllowedW,
    bool OnBoard,
    double RisePerWattK = 0,
    int Switch = -1,
    double DriftShare = 0,
    double? Tolerance = null
);

/// <summary>A switch contact.</summary>
/// <param name="Name">Its name: <c>S1</c>…</param>
/// <param name="A">One node.</param>
/// <param name="B">The other.</param>
public sealed record SenseContact(string Name, int A, int B);
