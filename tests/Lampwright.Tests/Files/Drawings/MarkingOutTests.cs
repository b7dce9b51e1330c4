using Lampwright.Files.Drawings;
using Lampwright.Files.Packet;
using Lampwright.Metal;
using Lampwright.Tests.Files.Fixtures;
using Lampwright.Tests.Metal;

namespace Lampwright.Tests.Files.Drawings;

public sealed class MarkingOutTests
{
    [Fact]
    public void Corners_bends_set_lines_and_holes_come_from_two_edges()
    {
        var sheet = Parts.Mild with { Material = "DC01" };
        var points = MarkingOut.Of(SheetPart.Of(Parts.Box(120, 80, 30, sheet)).Blank!);
        Assert.Equal(12, points.Count(p => p.Kind == "corner"));
        Assert.Equal(4, points.Count(p => p.Kind == "bend"));
        Assert.Equal(4, points.Count(p => p.Kind == "set line"));
        Assert.All(points, p => Assert.True(p.AtMm.X >= -1e-9 && p.AtMm.Y >= -1e-9));

        // M.E1: tangents of the left wall at 27 and 30.122, so the middle lies at 28.561.
        var left = points.Single(p => p is { Kind: "bend", Id: "wall_l" });
        Assert.Equal(28.561, left.AtMm.X, 3);
        Assert.Equal(28.561, left.ToMm!.Value.X, 3);
        Assert.Equal("90° down, bend to 90.9°", left.What);
        var set = points.Single(p => p is { Kind: "set line", Id: "wall_l" });
        Assert.Equal(30.122 - 1.5, set.AtMm.X, 3);
    }

    [Fact]
    public void List_has_a_row_a_point_and_a_point_for_the_decimal()
    {
        using var writer = new StringWriter();
        MarkingOutCsv.Write(SampleLight.Evaluation(), writer);
        var lines = writer.ToString().TrimEnd().Split('\n');
        var expected = SampleLight.Evaluation().Metal!.Parts.Sum(p => MarkingOut.Of(p.Blank).Count);
        Assert.Equal(expected + 1, lines.Length);
        Assert.Equal("part,kind,id,x_mm,y_mm,x2_mm,y2_mm,what", lines[0]);
        Assert.Contains(
            lines,
            l => l.StartsWith("tray,hole,\"tray.fan[1,1]\",64.75,18.75,,,", StringComparison.Ordinal)
        );
    }
}
