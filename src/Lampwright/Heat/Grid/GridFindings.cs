using Lampwright.Findings;

namespace Lampwright.Heat.Grid;

/// <summary>What a grid that gave no answer has to say: HEA018 to HEA020.</summary>
public static class GridFindings
{
    /// <summary>The finding of a failure.</summary>
    /// <param name="failure">The failure.</param>
    /// <param name="path">Path of the sink in the design file.</param>
    /// <param name="scene">Name of the scene, where it belongs to one.</param>
    public static Finding Of(GridFailure failure, string path, string scene = "")
    {
        ArgumentNullException.ThrowIfNull(failure);
        var rule = failure.Trouble switch
        {
            GridTrouble.NotConverged => HeatRules.GridNotConverged,
            GridTrouble.TooManyCells => HeatRules.GridTooFine,
            _ => HeatRules.GridIllStated,
        };
        return rule.At(path, failure.Reason, scene: scene);
    }
}
