namespace Lampwright.Heat;

/// <summary>Rises of the housing over its heats, for one draw and one scene. Reading allocates nothing.</summary>
/// <remarks>Accuracy: 0.3 % and 0.1 K of <see cref="BoxModel.At"/>.</remarks>
public sealed class BoxCurve
{
    private readonly RiseCurve front;
    private readonly RiseCurve diffuser;
    private readonly bool hasDiffuser;
    private readonly RiseCurve air;
    private readonly RiseCurve skin;
    private readonly RiseCurve? driverCase;
    private readonly double ventWPerK;

    internal BoxCurve(
        RiseCurve front,
        RiseCurve diffuser,
        bool hasDiffuser,
        RiseCurve air,
        RiseCurve skin,
        RiseCurve? driverCase,
        double ventWPerK
    )
    {
        this.front = front;
        this.diffuser = diffuser;
        this.hasDiffuser = hasDiffuser;
        this.air = air;
        this.skin = skin;
        this.driverCase = driverCase;
        this.ventWPerK = ventWPerK;
    }

    /// <summary>Outer skin of the front over the room, K.</summary>
    public double FrontRiseK(in BoxHeat heat) => front.RiseK(heat.ReflectorW + (hasDiffuser ? 0 : heat.DiffuserW));

    /// <summary>Outer face of the diffuser over the room, K; the front's where there is none.</summary>
    public double DiffuserRiseK(in BoxHeat heat) => hasDiffuser ? diffuser.RiseK(heat.DiffuserW) : FrontRiseK(heat);

    /// <summary>Air of the compartment over the room, K: what the chain's resistors live in.</summary>
    public double CompartmentAirRiseK(in BoxHeat heat) => air.RiseK(Compartment(heat));

    /// <summary>Outer skin of the compartment over the room, K.</summary>
    public double CompartmentSkinRiseK(in BoxHeat heat) => skin.RiseK(Compartment(heat));

    /// <summary>Case of the driver over the room, K.</summary>
    public double DriverCaseRiseK(in BoxHeat heat) =>
        CompartmentAirRiseK(heat) + (driverCase?.RiseK(heat.DriverW) ?? 0);

    /// <summary>Air of the compartment and case of the driver over the room at once, K.</summary>
    internal (double AirK, double CaseK) CompartmentRisesK(in BoxHeat heat)
    {
        var rise = CompartmentAirRiseK(heat);
        return (rise, rise + (driverCase?.RiseK(heat.DriverW) ?? 0));
    }

    /// <summary>Heat of the compartment, with what warm air from the fan brings in.</summary>
    private double Compartment(in BoxHeat heat) => heat.DriverW + heat.ChainW + ventWPerK * heat.InletRiseK;
}
