using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;

namespace Lampwright.Tests.Files.Fixtures;

/// <summary>A box with one of everything, for the writers.</summary>
internal static class SampleBox
{
    public static BoxAnswer Box { get; } =
        new()
        {
            Scenes =
            [
                new(
                    "normal",
                    22,
                    [
                        new("junction", "inside", About(71), 120, null, null),
                        new("tray.face", "skin", About(52), 60, 10, 60),
                    ]
                ),
                new("hot", 32, [new("junction", "inside", About(82), 120, null, null)]),
            ],
            Flows = [new("junction", "case", 31.2)],
            WarmUp = Curves(22, 71),
            CoolDown = Curves(71, 22),
            FanStop = new(
                32,
                Curves(82, 160),
                About(640),
                About(1900),
                "tray.face",
                0.22,
                false,
                [new(0, "the fan stops"), new(640, "junction over its limit")]
            ),
            CutOuts = [new("sink base", 50, 60, 97, 75, 344, 629, "junction", true)],
            Played = [new("main", "sink base", 75, 5, 50, 344, 97, "protects")],
            RoomLimits = [new("1111", About(49), "junction")],
            Duty = new(32, 0.6, 900, 600, "junction"),
            Life = new(55, 0.7, 36000, 124190, 36000, true, [new(0, 1), new(36000, 0.9)], ""),
        };

    private static Predicted About(double value) => new(value, 0.9 * value, 1.1 * value);

    private static HeatCurves Curves(double from, double to) =>
        new(
            [0, 60, 3600],
            [
                new(
                    "junction",
                    [from, (from + to) / 2, to],
                    [from - 1, (from + to) / 2 - 2, to - 3],
                    [from + 1, (from + to) / 2 + 2, to + 3]
                ),
            ],
            About(500)
        );
}
