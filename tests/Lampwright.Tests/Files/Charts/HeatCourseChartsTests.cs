using System.Xml.Linq;
using Lampwright.Design;
using Lampwright.Files.Charts;
using Lampwright.Tests.Files.Fixtures;

namespace Lampwright.Tests.Files.Charts;

public sealed class HeatCourseChartsTests
{
    [Fact]
    public void A_course_tells_the_numbers_of_the_answer_with_their_bands()
    {
        var line = SampleBox.Box.WarmUp.Lines[0];
        var course = Assert.Single(HeatCourseCharts.WarmUp(SampleBox.Box)!.Layers.OfType<CourseLayer>());
        Assert.Equal(SampleBox.Box.WarmUp.TimesS.Select(s => s / 60), course.Points.Select(p => p.X));
        Assert.Equal(line.ValueC, course.Points.Select(p => p.Y.Value));
        Assert.Equal(line.LowC, course.Points.Select(p => p.Y.Low));
        Assert.Equal(line.HighC, course.Points.Select(p => p.Y.High));
        var svg = XElement.Parse(ChartSvg.Of(HeatCourseCharts.WarmUp(SampleBox.Box)!));
        var told = svg.Elements().First(e => (string?)e.Attribute("class") == "lw-readout");
        Assert.Equal("21", told.Attribute("data-low")!.Value);
        Assert.Equal("23", told.Attribute("data-high")!.Value);
    }

    [Fact]
    public void A_stopped_fan_shows_the_limit_of_the_junction_and_when_it_is_passed()
    {
        var chart = HeatCourseCharts.FanStop(SampleBox.Box, new Show { Temperature = "degF" })!;
        Assert.Equal(248, Assert.Single(chart.Layers.OfType<LevelLayer>()).Level, 9);
        var moment = Assert.Single(Assert.Single(chart.Layers.OfType<MomentLayer>()).Moments);
        Assert.Equal(640 / 60.0, moment.X, 9);
        Assert.StartsWith("11 min", moment.Words, StringComparison.Ordinal);
        Assert.Null(HeatCourseCharts.FanStop(SampleBox.Box with { FanStop = null }));
        Assert.Null(HeatCourseCharts.WarmUp(null));
    }

    [Theory]
    [InlineData(119, "119 s")]
    [InlineData(344, "5.7 min")]
    [InlineData(1900, "32 min")]
    [InlineData(9000, "2.5 h")]
    public void Times_are_written_as_people_say_them(double seconds, string text) =>
        Assert.Equal(text, HeatText.Time(seconds));

    [Fact]
    public void The_reason_of_a_cut_out_says_when_nothing_would_be_harmed()
    {
        var place = SampleBox.Box.CutOuts[0];
        Assert.Contains("opens after 5.7 min", HeatText.Why(place, TemperatureUnit.Celsius), StringComparison.Ordinal);
        Assert.Contains(
            "none is needed",
            HeatText.Why(place with { MostC = null }, TemperatureUnit.Celsius),
            StringComparison.Ordinal
        );
        Assert.Null(HeatText.Advised(SampleBox.Box with { CutOuts = [place with { SettingC = null }] }));
    }
}
