namespace Lampwright.Evaluation.Coupling;

/// <summary>Which position stands for each wanted step.</summary>
internal sealed partial class CoupledLight
{
    /// <summary>The positions of switches that are thrown one after another, all closed first; null where they are thrown freely.</summary>
    public IReadOnlyList<int>? InTurn =>
        Inputs.Steps.IsOneAfterAnother && Inputs.Network.Spec.Arrangement != Steps.Arrangement.Selector
            ?
            [
                .. Enumerable
                    .Range(0, Inputs.Network.SwitchCount + 1)
                    .Select(open => ((1 << open) - 1) << (Inputs.Network.SwitchCount - open)),
            ]
            : null;

    private void Match(double[] row)
    {
        if (InTurn is { } turn)
        {
            // Each wanted step has its own position, whether another is nearer or not: the maker throws one switch more.
            int[] byLight = [.. Enumerable.Range(0, Wanted.Count).OrderByDescending(k => row[WantedPlace(k)])];
            for (var rank = 0; rank < byLight.Length; rank++)
            {
                MetBy[byLight[rank]] = turn[Math.Min(rank, turn.Count - 1)];
            }

            return;
        }

        for (var k = 0; k < Wanted.Count; k++)
        {
            var current = row[WantedPlace(k)];
            MetBy[k] = Enumerable
                .Range(0, Positions)
                .MinBy(i =>
                    Math.Abs(
                        Math.Log(
                            Math.Max(row[Place(Scene.Normal, i) + PositionRow.CurrentA], 1e-9) / Math.Max(current, 1e-9)
                        )
                    )
                );
        }
    }
}
