using Lampwright.Findings;

namespace Lampwright.Steps;

/// <summary>The emitter's voltage against the driver's output window over all combinations.</summary>
/// <param name="LeastV">Least emitter voltage: dimmest combination, hot, in volts.</param>
/// <param name="MostV">Greatest emitter voltage: brightest combination, cold, in volts.</param>
/// <param name="OverBy">Volts over the window's upper end; 0 or less when inside, null where the window is not known.</param>
/// <param name="UnderBy">Volts under the window's lower end; 0 or less when inside, null where the window is not known.</param>
/// <param name="Words">What the driver then does, in one sentence.</param>
public sealed record WindowCheck(double LeastV, double MostV, double? OverBy, double? UnderBy, string Words);

/// <summary>What the steps station answers at nominal.</summary>
/// <param name="Emitter">The emitter's fit.</param>
/// <param name="Threshold">The driver's sense threshold.</param>
/// <param name="Driver">The driver's model, null where nothing tells its threshold.</param>
/// <param name="Network">The chain, ready for the draws; null where there is none or it cannot be computed.</param>
/// <param name="Chain">All combinations, null where there is no chain or no threshold.</param>
/// <param name="Window">Emitter against output window.</param>
/// <param name="Findings">All that is to be said.</param>
public sealed record StepsResult(
    EmitterFit Emitter,
    SenseThreshold Threshold,
    DriverModel? Driver,
    ChainNetwork? Network,
    ChainResult? Chain,
    WindowCheck Window,
    IReadOnlyList<Finding> Findings
);
