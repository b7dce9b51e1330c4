using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Maps;
using Lampwright.Files.Opening;
using Lampwright.Steps.Board;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>The band that a board is read with is the band that the draws give its threshold: two ways to one number.</summary>
public class BoardBandTests
{
    [Theory]
    [InlineData("herbarium")]
    [InlineData("boatshed")]
    [InlineData("puppet-theatre")]
    public void The_named_errors_together_are_what_the_draws_scatter_by(string name)
    {
        var opened = OpenedLight.At(Path.Combine(Repository.Root, "examples", name, name + ".toml"));
        var light = opened.Prepare().WithBands(512);
        var board = BoardReading.Of(StepsMap.Driver(LightParts.DriverOf(opened.Loaded.Design))!);
        var drawn = light.Steps!.SenseThresholdV;
        var half = board.Threshold.HalfWidth * drawn.Value;
        Assert.Equal(board.Threshold.VoltageV!.Value, drawn.Value, 12);
        Assert.InRange((drawn.High - drawn.Low) / 2 / half, 0.85, 1.15);
        Assert.Empty(board.Stops);
    }
}
