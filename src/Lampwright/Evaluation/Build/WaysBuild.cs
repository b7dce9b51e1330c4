using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Dimming;
using Lampwright.Evaluation.Draws;
using Lampwright.Steps.Ways;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out what each way of dimming would do.</summary>
internal static class WaysBuild
{
    public static IReadOnlyList<WayAnswer> Of(WaysRows rows, Bands bands) =>
        [.. (rows.Result?.Ways ?? []).Select(w => One(rows, bands, w))];

    private static WayAnswer One(WaysRows rows, Bands bands, Way way)
    {
        Predicted? At(int number)
        {
            var predicted = bands.At(rows.Place(way.Kind, number));
            return double.IsFinite(predicted.Value) ? predicted : null;
        }

        return new()
        {
            Way = way,
            IsChosen = way.Kind == rows.Inputs.Chosen,
            LeastShare = At(WayRow.LeastShare),
            MostShare = At(WayRow.MostShare),
            LeastA = At(WayRow.LeastA),
            MostA = At(WayRow.MostA),
            EfficiencyAtHalf = At(WayRow.EfficiencyAtHalf),
            HeatAtHalfW = At(WayRow.HeatAtHalfW),
            AddedHeatAtHalfW = At(WayRow.AddedHeatAtHalfW),
        };
    }
}
