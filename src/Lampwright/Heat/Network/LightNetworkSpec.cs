namespace Lampwright.Heat.Network;

/// <summary>Which air a panel has on its inside.</summary>
public enum PanelZone
{
    /// <summary>Room air on both sides.</summary>
    None,

    /// <summary>The channel that the sink stands in.</summary>
    Channel,

    /// <summary>The driver's compartment.</summary>
    Compartment,

    /// <summary>The front, round the reflector.</summary>
    Front,
}

/// <summary>A face or flange of a folded part, as a node of the network.</summary>
/// <param name="Name">Its id, for example <c>tray.fan_end</c>.</param>
/// <param name="Outside">The face that the room sees; area 0 where another part covers it.</param>
/// <param name="InsideM2">Area that the air inside touches, m², 0 or above.</param>
/// <param name="CapacityJPerK">Heat it stores, J/K.</param>
/// <param name="Zone">Which air it has on its inside.</param>
public sealed record NetworkPanel(string Name, Panel Outside, double InsideM2, double CapacityJPerK, PanelZone Zone);

/// <summary>Conduction between two panels: along the sheet, or through a joint.</summary>
/// <param name="A">Index of one.</param>
/// <param name="B">Index of the other.</param>
/// <param name="WPerK">Conductance, W/K.</param>
/// <param name="IsJoint">True for a joint, whose contact is known badly.</param>
public sealed record PanelBridge(int A, int B, double WPerK, bool IsJoint);

/// <summary>A panel that the sink's base is screwed to.</summary>
/// <param name="Panel">Index of the panel.</param>
/// <param name="ContactWPerK">Conductance of the joint, W/K.</param>
/// <param name="SheetWPerK">From there through the sheet to the room, W/K: what limits a hot sink on thin sheet.</param>
public sealed record SinkSeat(int Panel, double ContactWPerK, double SheetWPerK);

/// <summary>A resistor in the compartment.</summary>
/// <param name="Name">Name of its node, for example <c>r1</c>.</param>
/// <param name="HeatW">Its loss, W.</param>
/// <param name="KPerW">Its rise over the air of the compartment for each watt, K/W, 0 or above: the slope of its derating line.</param>
/// <param name="JPerK">Heat it stores, J/K.</param>
public sealed record NetworkResistor(string Name, double HeatW, double KPerW, double JPerK);

/// <summary>A whole light in one scene at one switch position, as the network is told of it. SI throughout.</summary>
public sealed record LightNetworkSpec
{
    /// <summary>Air of the room, K, 200 to 400.</summary>
    public required double AmbientK { get; init; }

    /// <summary>Pressure of the air, Pa.</summary>
    public double PressurePa { get; init; } = 101325;

    /// <summary>Rise of the sink over its heat in this scene.</summary>
    public required SinkCurve Sink { get; init; }

    /// <summary>Share of the sink's heat that is radiated, 0 to 1.</summary>
    public double RadiatedShare { get; init; }

    /// <summary>From the base into the fins, W/K; 0 keeps both as one.</summary>
    public double FinWPerK { get; init; }

    /// <summary>Heat stored in the base, J/K.</summary>
    public required double BaseJPerK { get; init; }

    /// <summary>Heat stored in the fins, J/K.</summary>
    public double FinJPerK { get; init; }

    /// <summary>Heat through the emitter's back at <see cref="JunctionAtK"/>, W.</summary>
    public required double EmitterW { get; init; }

    /// <summary>Slope of that over the junction's temperature, W/K.</summary>
    public double EmitterWPerK { get; init; }

    /// <summary>Junction at which that heat holds, K.</summary>
    public double JunctionAtK { get; init; }

    /// <summary>Junction to case, K/W, above 0, on heat.</summary>
    public required double JunctionKPerW { get; init; }

    /// <summary>Case through contact layer and spreading to the base, K/W, above 0.</summary>
    public required double CaseKPerW { get; init; }

    /// <summary>Heat stored in the junction, J/K.</summary>
    public double JunctionJPerK { get; init; }

    /// <summary>Heat stored in the rest of the emitter, J/K.</summary>
    public double CaseJPerK { get; init; }

    /// <summary>Loss of the driver, W.</summary>
    public double DriverW { get; init; }

    /// <summary>Area of the driver's case, m²; 0 where not known: it then is as warm as its air.</summary>
    public double DriverCaseM2 { get; init; }

    /// <summary>Length of the driver's case along rising air, m.</summary>
    public double DriverLengthM { get; init; } = 0.05;

    /// <summary>Heat stored in the driver, J/K.</summary>
    public double DriverJPerK { get; init; }

    /// <summary>The chain's resistors, each a node of its own.</summary>
    public IReadOnlyList<NetworkResistor> Resistors { get; init; } = [];

    /// <summary>Light absorbed in the reflector, W.</summary>
    public double ReflectorW { get; init; }

    /// <summary>Area of the reflector, one side, m²; 0 where there is none.</summary>
    public double ReflectorM2 { get; init; }

    /// <summary>Emissivity of the reflector's back, 0 to 1.</summary>
    public double ReflectorEmissivity { get; init; } = 0.2;

    /// <summary>Heat stored in the reflector, J/K.</summary>
    public double ReflectorJPerK { get; init; }

    /// <summary>The reflector's outside where no part stands round it; null where one does.</summary>
    public Panel? ReflectorShell { get; init; }

    /// <summary>Light absorbed in the diffuser, W.</summary>
    public double DiffuserW { get; init; }

    /// <summary>Outer face of the diffuser; null where there is none.</summary>
    public Panel? Diffuser { get; init; }

    /// <summary>Heat stored in the diffuser, J/K.</summary>
    public double DiffuserJPerK { get; init; }

    /// <summary>Heat capacity of the fan's stream through the channel, W/K; 0 with the fan stopped.</summary>
    public double FanWPerK { get; init; }

    /// <summary>Film of the fan's air on the channel's walls, W/(m²·K); 0 with the fan stopped.</summary>
    public double WallFilmWPerM2K { get; init; }

    /// <summary>Heat capacity of the draft through the channel's openings at 1 K, W/K^(3/2).</summary>
    public double DraftWPerK32 { get; init; }

    /// <summary>Length of still air along the walls inside, m.</summary>
    public double InsideLengthM { get; init; } = 0.06;

    /// <summary>Emissivity inside the compartment, 0 to 1.</summary>
    public double InsideEmissivity { get; init; } = 0.8;

    /// <summary>Faces and flanges.</summary>
    public IReadOnlyList<NetworkPanel> Panels { get; init; } = [];

    /// <summary>Conduction between them.</summary>
    public IReadOnlyList<PanelBridge> Bridges { get; init; } = [];

    /// <summary>Panels that the sink is screwed to.</summary>
    public IReadOnlyList<SinkSeat> Seats { get; init; } = [];

    /// <summary>
    /// True where the sink's curve already holds what the sheet carries off, as that of a sink measured in the light may: the sheet is then
    /// warmed by its share and the base is no cooler for it. False adds the sheet to the curve.
    /// </summary>
    public bool CurveHoldsSeats { get; init; }

    /// <summary>Errors of inputs and methods; 1 at nominal.</summary>
    public NetworkFactors Factors { get; init; } = NetworkFactors.Nominal;
}
