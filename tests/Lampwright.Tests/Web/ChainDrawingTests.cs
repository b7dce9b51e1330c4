using Bunit;
using Lampwright.Evaluation.Answers;
using Lampwright.Web.Show;
using FileLight = Lampwright.Tests.Files.Fixtures.SampleLight;

namespace Lampwright.Tests.Web;

/// <summary>The schematic of the chain on the page.</summary>
public sealed class ChainDrawingTests : BunitContext
{
    [Theory]
    [InlineData("series")]
    [InlineData("parallel")]
    public void Two_parts_in_a_position_are_two_boxes_with_both_values(string joined)
    {
        var steps = FileLight.Evaluation().Steps!;
        ChainPart[] parts =
        [
            .. steps.Parts.Select((p, i) => i == 1 ? p with { Joined = joined } : p with { Joined = "", Pair = [] }),
        ];
        var answer = steps with { Parts = parts };
        var shown = Render<ChainDrawing>(ps =>
            ps.Add(d => d.Answer, answer).Add(d => d.Now, answer.Combinations[0]).Add(d => d.Flip, _ => { })
        );
        Assert.Equal(2, parts[1].Pair.Count);
        Assert.Equal(parts.Length + 1, shown.FindAll("rect.resistor").Count);
        Assert.Contains(parts[1].JoinedBy, shown.FindAll("g.part")[1].TextContent, StringComparison.Ordinal);
    }
}
