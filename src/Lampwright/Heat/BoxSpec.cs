namespace Lampwright.Heat;

/// <summary>The housing round the light: a front that absorbed light warms, and the compartment of the driver.</summary>
public sealed record BoxSpec
{
    /// <summary>Outer panels of the front, which the reflector's heat leaves through. At least one with an area.</summary>
    public required IReadOnlyList<Panel> Front { get; init; }

    /// <summary>Outer face of the diffuser; null where there is none, and its heat then goes to the front.</summary>
    public Panel? Diffuser { get; init; }

    /// <summary>Outer panels of the driver's compartment. At least one with an area.</summary>
    public required IReadOnlyList<Panel> Compartment { get; init; }

    /// <summary>Area of the driver's case, m²; 0 where it is not known: the case then counts as warm as the air.</summary>
    public double DriverCaseM2 { get; init; }

    /// <summary>Length of the driver's case along the rising air, m, above 0.</summary>
    public double DriverCaseLengthM { get; init; } = 0.05;

    /// <summary>Emissivity inside the compartment, 0 to 1.</summary>
    public double InsideEmissivity { get; init; } = 0.8;

    /// <summary>Pressure of the air, Pa.</summary>
    public double PressurePa { get; init; } = 101325;

    /// <summary>Errors of the methods; 1 at nominal.</summary>
    public HeatFactors Factors { get; init; } = HeatFactors.Nominal;
}

/// <summary>What warms the housing.</summary>
/// <param name="ReflectorW">Light absorbed in the reflector, W, 0 or above.</param>
/// <param name="DiffuserW">Light absorbed in the diffuser, W, 0 or above.</param>
/// <param name="DriverW">Loss of the driver, W, 0 or above.</param>
/// <param name="ChainW">Loss of the chain's resistors in the compartment, W, 0 or above.</param>
/// <param name="InletRiseK">Air that the fan sends into the compartment over the room, K: 0 for room air, the sink's air rise for its exhaust.</param>
public readonly record struct BoxHeat(
    double ReflectorW,
    double DiffuserW,
    double DriverW,
    double ChainW = 0,
    double InletRiseK = 0
);

/// <summary>Temperatures of the housing, as rises over the room, K, and how well the balance closes.</summary>
/// <param name="FrontRiseK">Outer skin of the front.</param>
/// <param name="DiffuserRiseK">Outer face of the diffuser.</param>
/// <param name="CompartmentAirRiseK">Air round the driver and the chain's resistors.</param>
/// <param name="CompartmentSkinRiseK">Outer skin of the compartment.</param>
/// <param name="DriverCaseRiseK">Case of the driver.</param>
/// <param name="PanelsW">Heat that leaves through all outer panels, W.</param>
/// <param name="VentW">Heat that the air through the compartment carries off, W.</param>
/// <param name="BalanceError">Heat in less heat out over heat in.</param>
public sealed record BoxResult(
    double FrontRiseK,
    double DiffuserRiseK,
    double CompartmentAirRiseK,
    double CompartmentSkinRiseK,
    double DriverCaseRiseK,
    double PanelsW,
    double VentW,
    double BalanceError
);
