using Lampwright.Heat;

namespace Lampwright.Tests.Heat;

/// <summary>An invented sink and fan for the tests of this station.</summary>
internal static class HeatSamples
{
    internal static readonly FanSpec Fan = new()
    {
        Curve = [new(0, 34), new(35.0 / 3600, 22), new(62.0 / 3600, 0)],
        VoltageRatio = 10.0 / 12,
        BoxAcrossM = 0.092,
        BoxAlongM = 0.092,
    };

    internal static readonly SinkSpec Sink = new()
    {
        AcrossM = 0.092,
        AlongM = 0.092,
        BaseThicknessM = 0.006,
        ConductivityWPerMK = 209,
        FinCount = 21,
        FinHeightM = 0.034,
        FinThicknessM = 0.0008,
        Footprints = [new Footprint(0.046, 0.046, 0.028, 0.028)],
        Fan = Fan,
        AirLosses =
        [
            AirLoss.PerforatedSheet("vents", 0.060 * 0.024 * 2, 0.4, 0.004),
            AirLoss.Discharge("outlet", Math.PI * 0.043 * 0.043),
        ],
    };
}
