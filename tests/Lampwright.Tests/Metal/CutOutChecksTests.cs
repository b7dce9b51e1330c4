using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class CutOutChecksTests
{
    private static PartResult Of(double thicknessM, HoleSpec hole) =>
        SheetPart.Of(
            new PartSpec("plate", Parts.Mild with { ThicknessM = thicknessM }, FaceSpec.Rectangle(0.1, 0.08))
            {
                Holes = [hole],
            }
        );

    private static HoleSpec Rocker =>
        new("switch", "face", new(0.05, 0.04), HoleShape.Rectangle(0.0192, 0.013))
        {
            Purpose = "rocker switch 19x13",
            SheetLeastM = 0.00075,
            SheetMostM = 0.002,
        };

    [Theory]
    [InlineData(0.00074, true)]
    [InlineData(0.00075, false)]
    [InlineData(0.002, false)]
    [InlineData(0.00201, true)]
    public void Sheet_outside_what_a_switch_holds_in_is_told(double thicknessM, bool told) =>
        Assert.Equal(
            told,
            Of(thicknessM, Rocker)
                .Findings.Any(f => f.Rule == MetalRules.SheetForCutOut && f.Path == "part.plate.hole.switch")
        );

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void An_opening_from_memory_is_told_and_a_printed_one_is_not(bool memory) =>
        Assert.Equal(
            memory,
            Of(0.0015, Rocker with { IsFromMemory = memory }).Findings.Any(f => f.Rule == MetalRules.CutOutNotRead)
        );
}
