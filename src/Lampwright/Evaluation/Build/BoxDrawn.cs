using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;

namespace Lampwright.Evaluation.Build;

/// <summary>Nodes of the box that the draws compute too: they are told with the draws' number and band, here as everywhere.</summary>
internal static class BoxDrawn
{
    /// <summary>Band of each of these nodes, by node; none in a scene that is not drawn.</summary>
    public static Dictionary<int, Predicted> Of(BoxStudy study, BoxState state, Bands bands)
    {
        int? scene =
            ReferenceEquals(state, study.Normal) ? Scene.Normal
            : ReferenceEquals(state, study.Hot) ? Scene.AtHighestAmbient
            : ReferenceEquals(state, study.Stopped) ? Scene.FanStopped
            : null;
        if (scene is not { } s)
        {
            return [];
        }

        var (n, row) = (state.Light, study.Light.Place(s, study.Light.Brightest));
        var found = new Dictionary<int, Predicted>();
        foreach (
            var (node, number) in new[]
            {
                (n.Junction, PositionRow.JunctionC),
                (n.Case, PositionRow.CaseC),
                (n.Base, PositionRow.SinkC),
                (n.CompartmentAir, PositionRow.CompartmentC),
                (n.Driver, PositionRow.DriverC),
            }
        )
        {
            found[node] = bands.At(row + number);
        }

        return found;
    }
}
