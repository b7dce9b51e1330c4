using System.Globalization;
using System.Xml.Linq;
using Lampwright.Files.Charts;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Files.Charts;

public sealed class WayChartTests
{
    [Fact]
    public void A_crossing_that_stays_is_filled_and_one_that_does_not_is_an_open_ring()
    {
        var chart = Operating();
        var pins = chart.Layers.OfType<PinLayer>().ToList();
        Assert.Equal(17.14, Assert.Single(pins.Single(p => p.IsOpen).Pins).X);
        Assert.Equal(46, Assert.Single(pins.Single(p => !p.IsOpen).Pins).X);

        var svg = XElement.Parse(ChartSvg.Of(chart));
        var circles = svg.Elements().Where(e => e.Name.LocalName == "circle").ToList();
        Assert.Equal(4, circles.Count); // one of each kind beside its name, one at its crossing
        Assert.Equal(2, circles.Count(c => c.Attribute("fill")!.Value == Palette.Paper.Css));
        Assert.Contains("held by the clamp", svg.Value, StringComparison.Ordinal);
        Assert.Contains("46.0 V, 0.652 A", svg.Value, StringComparison.Ordinal);
        Assert.Contains("46.0 V, 0.652 A", chart.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_that_runs_away_at_low_voltage_leaves_the_crossings_in_sight_and_ends_at_the_frame()
    {
        var chart = Operating();
        Assert.InRange(chart.Y.Most!.Value, 1.75 * 1.2, 1.75 * 2);
        Assert.InRange(chart.X.Most!.Value, 46, 70);
        foreach (var path in Paths(chart))
        {
            Assert.All(path, p => Assert.InRange(p.Y, -0.01, 360.01));
            Assert.All(path, p => Assert.InRange(p.X, -0.01, 720.01));
        }
    }

    [Fact]
    public void Where_nothing_crosses_the_picture_says_so()
    {
        var chart = OperatingChart.Of(WayPictures.ConstantPower(watts: 200), [], "none")!;
        Assert.Empty(chart.Layers.OfType<PinLayer>());
        Assert.Contains("do not cross", chart.Says, StringComparison.Ordinal);
        Assert.Contains(
            "runs away from each",
            OperatingChart.Of(WayPictures.ConstantPower(), [WayPictures.Crossings[0]], "")!.Says,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Infinite_currents_are_drawn_to_the_frame()
    {
        IReadOnlyList<OperatingLine> lines =
        [
            new("source", [0, 10, 20], [2, 2, 2]),
            new("load", [0, 10, 20], [double.PositiveInfinity, 2, 1]),
        ];
        var svg = ChartSvg.Of(OperatingChart.Of(lines, [new(10, 2, false, "meets")], "t")!);
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_that_is_switched_off_under_a_voltage_is_not_joined_across_the_jump()
    {
        IReadOnlyList<OperatingLine> lines =
        [
            new("source", [0, 10, 20, 30], [2, 2, 2, 2]),
            new("load", [0, 10, 10, 30], [0, 0, 3, 1]),
        ];
        var chart = OperatingChart.Of(lines, [], "t")!;
        Assert.Equal(3, Paths(chart).Count()); // the source, and the load on either side
    }

    [Fact]
    public void Words_of_a_crossing_stand_beside_the_lines()
    {
        var room = new LabelRoom(0, 0, 400, 200);
        room.TakeLine([(190, 190), (200, 100), (240, 0)], 6);
        var (left, top) = room.Beside(200, 100, 90, 30, 8);
        Assert.True(left + 90 <= 200 || top >= 100, $"{left}, {top}");
    }

    [Fact]
    public void Words_of_crossings_keep_clear_of_each_other()
    {
        var room = new LabelRoom(0, 0, 400, 200);
        var first = room.Beside(200, 100, 90, 30, 8);
        var second = room.Beside(204, 102, 90, 30, 8);
        var third = room.Beside(202, 98, 90, 30, 8);
        Assert.False(Overlap(first, second) || Overlap(first, third) || Overlap(second, third));

        static bool Overlap((double Left, double Top) a, (double Left, double Top) b) =>
            Math.Abs(a.Left - b.Left) < 90 - 1e-9 && Math.Abs(a.Top - b.Top) < 30 - 1e-9;
    }

    [Fact]
    public void Blinking_is_seen_as_light_that_falls_to_zero_and_comes_back()
    {
        var chart = TraceChart.Of(WayPictures.Blinking(40, 0.5))!;
        var light = chart.Layers.OfType<AreaLayer>().Single().Points;
        Assert.Equal(4, Enumerable.Range(1, light.Count - 1).Count(i => light[i - 1].Y == 0 && light[i].Y == 100));
        Assert.Contains("40 times a second", chart.Says, StringComparison.Ordinal);
        var moments = chart.Layers.OfType<MomentLayer>().Single().Moments;
        Assert.Equal(8, moments.Count);
        Assert.Equal(["starts", "stops for want of voltage"], moments.Select(m => m.Words).Where(w => w.Length > 0));
    }

    [Theory]
    [InlineData(100_000, 12_345)]
    [InlineData(100_000, 99_999)]
    [InlineData(100_000, 0)]
    [InlineData(3_000, 1_501)]
    public void No_pulse_is_lost_however_many_points_there_are(int points, int at)
    {
        var trace = WayPictures.OneFlash(points, at);
        var chart = TraceChart.Of(trace)!;
        var light = chart.Layers.OfType<AreaLayer>().Single().Points;
        Assert.True(light.Count <= 4 * 240, $"{light.Count} points");
        var flash = Assert.Single(light, p => p.Y == 100);
        Assert.Equal(trace.TimeS[at] * 1000, flash.X, 9);
        Assert.Contains(chart.Layers.OfType<TellLayer>().Single().Tells, t => t.High == 100);
    }

    [Fact]
    public void Each_pulse_of_a_fast_chopper_is_drawn_in_the_closer_picture()
    {
        Assert.Null(TraceChart.Close(WayPictures.Blinking(40, 0.5)));
        var close = TraceChart.Close(WayPictures.Blinking(2000, 0.3))!;
        var light = close.Layers.OfType<AreaLayer>().Single().Points;
        Assert.InRange(Enumerable.Range(1, light.Count - 1).Count(i => light[i - 1].Y == 0 && light[i].Y == 100), 5, 7);
    }

    [Fact]
    public void A_stretch_without_a_point_of_its_own_still_tells_its_number()
    {
        var tells = TraceChart.Of(WayPictures.Of([0, 0.1], [0, 1], null))!.Layers.OfType<TellLayer>().Single().Tells;
        Assert.Equal(48, tells.Count);
        Assert.Equal(50, tells[24].Low, 6);
    }

    [Fact]
    public void Both_axes_hold_their_own_numbers_and_the_picture_is_well_formed()
    {
        foreach (var (width, height) in new[] { (720, 360), (420, 330) })
        {
            var svg = XElement.Parse(ChartSvg.Of(TraceChart.Of(WayPictures.Blinking(40, 0.5))!, width, height));
            Assert.Contains("Light, % of set", svg.Value, StringComparison.Ordinal);
            Assert.Contains("Current, A", svg.Value, StringComparison.Ordinal);
            Assert.Equal(48, svg.Elements().Count(e => (string?)e.Attribute("class") == "lw-readout"));
        }
    }

    private static Chart Operating() =>
        OperatingChart.Of(WayPictures.ConstantPower(), WayPictures.Crossings, "step-down converter")!;

    private static IEnumerable<List<(double X, double Y)>> Paths(Chart chart) =>
        XElement
            .Parse(ChartSvg.Of(chart))
            .Elements()
            .Where(e => e.Name.LocalName == "path")
            .Select(e => e.Attribute("d")!.Value.TrimStart('M').TrimEnd('Z').Split(' '))
            .Select(n => n.Chunk(2).Select(p => (Number(p[0]), Number(p[1]))).ToList());

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
