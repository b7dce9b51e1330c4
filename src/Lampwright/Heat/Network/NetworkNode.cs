namespace Lampwright.Heat.Network;

/// <summary>A place of one temperature.</summary>
/// <param name="Name">Its name, for example <c>base</c> or <c>tray.face</c>.</param>
/// <param name="CapacityJPerK">Heat it stores for each kelvin, J/K, 0 or above; 0 follows its neighbours at once.</param>
/// <param name="FixedK">Its temperature where it is given (the room), K; null where it is to be found.</param>
public sealed record NetworkNode(string Name, double CapacityJPerK, double? FixedK = null);

/// <summary>Heat that is set free in a node: W + slope·(T - at).</summary>
/// <remarks>The slope is that of an emitter, which gives less light and more heat the warmer it is.</remarks>
/// <param name="Node">Index of the node it warms.</param>
/// <param name="HeatW">Heat at the stated temperature, W.</param>
/// <param name="WPerK">Slope over the temperature of <paramref name="SeenBy"/>, W/K.</param>
/// <param name="AtK">The stated temperature, K.</param>
/// <param name="SeenBy">Index of the node whose temperature counts; -1 takes the node itself.</param>
public sealed record NetworkSource(int Node, double HeatW, double WPerK = 0, double AtK = 0, int SeenBy = -1)
{
    /// <summary>Heat at the temperatures of all nodes, W.</summary>
    internal double At(ReadOnlySpan<double> kelvin) => HeatW + (WPerK == 0 ? 0 : WPerK * (kelvin[Seen] - AtK));

    /// <summary>The node whose temperature counts.</summary>
    internal int Seen => SeenBy < 0 ? Node : SeenBy;
}

/// <summary>Where a network came to rest.</summary>
/// <param name="Kelvin">Temperature of each node, K.</param>
/// <param name="SourceW">All heat set free, W.</param>
/// <param name="LeavesW">Heat that enters the nodes of given temperature, W.</param>
/// <param name="ResidualW">Largest heat that a node keeps, W.</param>
/// <param name="Passes">Newton steps taken.</param>
public sealed record NetworkResult(
    IReadOnlyList<double> Kelvin,
    double SourceW,
    double LeavesW,
    double ResidualW,
    int Passes
)
{
    /// <summary>Heat in less heat out over heat in; 0 where nothing is set free.</summary>
    public double BalanceError => Math.Abs(SourceW) > 1e-9 ? (SourceW - LeavesW) / SourceW : 0;
}

/// <summary>How a search for rest ended: with a result, or with where it stood.</summary>
/// <param name="Result">The result; null where none was found.</param>
/// <param name="ResidualW">Largest heat that a node still kept, W.</param>
/// <param name="WorstNode">Name of that node.</param>
/// <param name="Passes">Newton steps taken.</param>
public sealed record NetworkSolve(NetworkResult? Result, double ResidualW, string WorstNode, int Passes);
