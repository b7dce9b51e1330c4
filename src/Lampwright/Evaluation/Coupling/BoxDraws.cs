using Lampwright.Heat;
using Lampwright.Heat.Network;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Driver's compartment and front of one draw in one scene at one position.</summary>
/// <remarks>
/// What is read is the light's network about its rest. Before that was found for the first time, and where a light has no network at all
/// (no sink, no heat), the two boxes of <see cref="BoxModel"/> stand in for it.
/// </remarks>
internal readonly struct Boxes
{
    private readonly BoxCurve? _curve;
    private readonly HousingPoint? _point;
    private readonly double[]? _times;
    private readonly double _ambientK;

    /// <summary>Two boxes without neighbours.</summary>
    /// <param name="curve">The boxes.</param>
    /// <param name="ambientK">The room, K.</param>
    public Boxes(BoxCurve curve, double ambientK) => (_curve, _ambientK) = (curve, ambientK);

    /// <summary>The network.</summary>
    /// <param name="point">The network at rest: air, driver, then what a hand reaches of the front.</param>
    /// <param name="times">How many times its rises this draw has; null at nominal.</param>
    /// <param name="ambientK">The room, K.</param>
    public Boxes(HousingPoint point, double[]? times, double ambientK) =>
        (_point, _times, _ambientK) = (point, times, ambientK);

    /// <summary>Air of the compartment and case of the driver, K.</summary>
    /// <param name="lossW">Loss of the driver, W.</param>
    /// <param name="chainW">Loss of the chain's resistors, W.</param>
    /// <param name="emitterW">Heat through the emitter's back, W; that of the network's rest where it is not known yet.</param>
    public (double AirK, double CaseK) Driver(double lossW, double chainW, double? emitterW = null)
    {
        if (_point is not { } point)
        {
            var (air, box) = _curve!.CompartmentRisesK(new BoxHeat(0, 0, lossW, chainW));
            return (_ambientK + air, _ambientK + box);
        }

        var heat = point.Heat with { EmitterW = emitterW ?? point.Heat.EmitterW, DriverW = lossW, ChainW = chainW };
        return (At(point, Housing.Air, heat), At(point, Housing.Driver, heat));
    }

    /// <summary>Hottest skin of the front, K: what stands round the reflector, or its own outside, or the diffuser.</summary>
    /// <param name="heat">What is set free in the light.</param>
    public double FrontK(in HousingHeat heat)
    {
        if (_point is not { } point)
        {
            var two = new BoxHeat(heat.ReflectorW, heat.DiffuserW, 0);
            return _ambientK + Math.Max(_curve!.FrontRiseK(two), _curve.DiffuserRiseK(two));
        }

        var most = _ambientK;
        for (var i = Housing.Front; i < point.Count; i++)
        {
            most = Math.Max(most, At(point, i, heat));
        }

        return most;
    }

    private double At(HousingPoint point, int node, in HousingHeat heat) =>
        _ambientK + (point.RiseK(node, heat) * (_times?[node] ?? 1));
}
