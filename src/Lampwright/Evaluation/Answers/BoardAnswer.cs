using Lampwright.Steps.Board;

namespace Lampwright.Evaluation.Answers;

/// <summary>What can be known of the driver's sense circuit from its board.</summary>
/// <remarks>It asks for a driver alone, so it is there where no chain and no light can be computed.</remarks>
public sealed record BoardAnswer
{
    /// <summary>The reading at nominal values: marks, law, questions, stops.</summary>
    public required BoardReading Reading { get; init; }

    /// <summary>Voltage over the sense parts at which the driver regulates, V; null where nothing tells it.</summary>
    public Predicted? ThresholdV { get; init; }
}
