using Lampwright.Tables;

namespace Lampwright.FitUp;

/// <summary>The layers that a screw passes and what holds it.</summary>
/// <param name="LayersM">Thickness of all layers before the nut or the thread, metres.</param>
/// <param name="WashersM">Thickness of all washers, metres.</param>
/// <param name="ThreadM">Height of the nut or depth of the tapped hole, metres; 0 when nothing holds the screw.</param>
/// <param name="Thread">The screw's thread.</param>
/// <param name="IsNut">True for a nut, false for a tapped hole.</param>
/// <param name="IsBlind">True when the tapped hole has a bottom.</param>
public sealed record ScrewGrip(
    double LayersM,
    double WashersM,
    double ThreadM,
    MetricThread Thread,
    bool IsNut,
    bool IsBlind
)
{
    /// <summary>What a screw of a length reaches; runs per draw.</summary>
    /// <param name="lengthM">Length under the head, metres.</param>
    /// <param name="layersFactor">Factor on the thickness of the layers; 1 is nominal.</param>
    public ScrewReach Reach(double lengthM, double layersFactor = 1)
    {
        var grip = (LayersM * layersFactor) + WashersM;
        var beyond = lengthM - grip;
        return new(grip, Math.Clamp(beyond, 0, ThreadM), beyond - ThreadM);
    }
}

/// <summary>What a screw reaches.</summary>
/// <param name="GripM">Thickness it passes before its nut or thread, metres.</param>
/// <param name="EngagedM">Thread that is engaged, metres.</param>
/// <param name="StandsOutM">Length it stands out beyond, metres; below 0 when it does not come through.</param>
public readonly record struct ScrewReach(double GripM, double EngagedM, double StandsOutM);
