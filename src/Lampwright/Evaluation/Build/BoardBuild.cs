using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Steps.Board;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out what the driver's board tells.</summary>
internal static class BoardBuild
{
    /// <summary>The reading; its band comes from the draws that all predictions share, or from its named errors where there is no light.</summary>
    public static BoardAnswer Of(BoardReading board, CoupledLight? light, Bands bands) =>
        new()
        {
            Reading = board,
            ThresholdV =
                board.Threshold.VoltageV is not { } volts ? null
                : light is not null ? bands.At(light.CommonPlace(CommonRow.ThresholdV))
                : bands.Draws > 0 ? new(volts, board.LeastV ?? volts, board.MostV ?? volts)
                : Predicted.Sharp(volts),
        };
}
