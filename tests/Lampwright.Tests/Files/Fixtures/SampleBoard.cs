using Lampwright.Evaluation.Answers;
using Lampwright.Steps;
using Lampwright.Steps.Board;

namespace Lampwright.Tests.Files.Fixtures;

/// <summary>The board of a driver: two marks, its side not looked at, so that a stop stands against wires from it.</summary>
internal static class SampleBoard
{
    public static BoardAnswer Answer { get; } = Of(SenseSide.Unknown);

    /// <summary>The same after someone has looked: wires may leave it.</summary>
    public static BoardAnswer Cleared { get; } = Of(SenseSide.Secondary);

    private static BoardAnswer Of(SenseSide side) =>
        new()
        {
            Reading = BoardReading.Of(
                new(
                    1.75,
                    0.25,
                    20,
                    42,
                    0.88,
                    new(
                        ["R33", "R33"],
                        MeasuredA: 1.74,
                        Side: side,
                        Carries: SenseCarries.Smooth,
                        Control: SenseControl.Average
                    ),
                    Isolation.Yes,
                    Path: "driver.main"
                )
            ),
            ThresholdV = SampleLight.About(0.287),
        };
}
