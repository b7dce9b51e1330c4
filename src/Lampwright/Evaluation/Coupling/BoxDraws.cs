using Lampwright.Heat;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Driver's compartment and front of one draw in one scene.</summary>
internal readonly struct Boxes(BoxCurve curve, double ambientK)
{
    /// <summary>Air of the compartment and case of the driver, K.</summary>
    /// <param name="lossW">Loss of the driver, W.</param>
    /// <param name="chainW">Loss of the chain's resistors, W.</param>
    public (double AirK, double CaseK) Driver(double lossW, double chainW)
    {
        var heat = new BoxHeat(0, 0, lossW, chainW);
        var (air, box) = curve.CompartmentRisesK(heat);
        return (ambientK + air, ambientK + box);
    }

    /// <summary>Hottest skin of the front, K: the reflector's outside or the diffuser.</summary>
    /// <param name="reflectorW">Light absorbed in the reflector, W.</param>
    /// <param name="diffuserW">Light absorbed in the diffuser, W.</param>
    public double FrontK(double reflectorW, double diffuserW)
    {
        var heat = new BoxHeat(reflectorW, diffuserW, 0);
        return ambientK + Math.Max(curve.FrontRiseK(heat), curve.DiffuserRiseK(heat));
    }
}
