using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Charts;

/// <summary>Charts of balance.</summary>
public static class BalanceCharts
{
    /// <summary>Moment that gravity puts on a tilt joint over all angles, against what its screws hold.</summary>
    public static Chart TiltMoment(TiltAnswer tilt)
    {
        var step = 360.0 / Math.Max(1, tilt.MomentPicture.Count - 1);
        var holds = tilt.HoldingNm;
        return new(
            $"Tilt joint {tilt.Name}",
            new("Tilt from the drawn position", "°")
            {
                Least = -180,
                Most = 180,
                Tick = 45,
            },
            new("Moment", "N·m"),
            [
                new LevelLayer($"clamp holds {ChartText.Number(holds.Value, 2)} N·m", Palette.Hold, holds.Value),
                new LevelLayer("", Palette.Hold, -holds.Value),
                .. holds.Low < holds.Value
                    ? [new LevelLayer($"surely {ChartText.Number(holds.Low, 2)} N·m", Palette.Soft, holds.Low)]
                    : Array.Empty<ChartLayer>(),
                new LineLayer(
                    "moment",
                    Palette.Heat,
                    [.. tilt.MomentPicture.Select((m, i) => (X: -180 + (step * i), Y: m))]
                ),
            ]
        )
        {
            Says = "The light stays where it is put while the curve lies between the lines.",
        };
    }
}
