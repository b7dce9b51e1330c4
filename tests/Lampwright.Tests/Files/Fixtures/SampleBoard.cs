using Lampwright.Evaluation.Answers;
using Lampwright.Steps;
using Lampwright.Steps.Board;

namespace Lampwright.Tests.Files.Fixtures;

/// <summary>The board of a driver: two marks, its side not looked at.</summary>
internal static class SampleBoard
{
    public static BoardAnswer Answer { get; } =
        new()
        {
            Reading = BoardReading.Of(
                new(
                    1.75,
                    0.25,
                    20,
                    42,
                    0.88,
                    new(["R33", "R33"], MeasuredA: 1.74, Carries: SenseCarries.Smooth, Control: SenseControl.Average),
                    Isolation.Yes,
                    Path: "driver.main"
                )
            ),
            ThresholdV = SampleLight.About(0.287),
        };
}
