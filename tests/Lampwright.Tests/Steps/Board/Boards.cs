using Lampwright.Steps;

namespace Lampwright.Tests.Steps.Board;

/// <summary>Boards that the tests of this folder start from.</summary>
internal static class Boards
{
    /// <summary>Everything is known and in order: 0.165 ohm and 1.74 A on an isolated secondary, the average held.</summary>
    public static DriverSpec Good { get; } =
        new(
            1.75,
            0.2,
            24,
            42,
            0.89,
            new(
                ["R33", "R33"],
                MeasuredA: 1.74,
                Side: SenseSide.Secondary,
                Carries: SenseCarries.Smooth,
                Control: SenseControl.Average
            ),
            Isolation.Yes
        );

    public static DriverSpec With(Func<SenseSpec, SenseSpec> change) => Good with { Sense = change(Good.Sense) };
}
