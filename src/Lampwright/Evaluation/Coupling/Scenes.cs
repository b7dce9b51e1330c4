namespace Lampwright.Evaluation.Coupling;

/// <summary>The three scenes that every light is looked at in.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Hot">True at the highest ambient, false at the usual one.</param>
/// <param name="FanRuns">True with the fan as set.</param>
internal sealed record Scene(string Name, bool Hot, bool FanRuns)
{
    /// <summary>Normal, hot, fan stopped, in this order everywhere.</summary>
    public static IReadOnlyList<Scene> All { get; } =
    [new("normal", false, true), new("hot", true, true), new("fan stopped", false, false)];

    /// <summary>Place of the scene normal.</summary>
    public static int Normal => 0;

    /// <summary>Place of the scene hot.</summary>
    public static int AtHighestAmbient => 1;

    /// <summary>Place of the scene fan stopped.</summary>
    public static int FanStopped => 2;
}
