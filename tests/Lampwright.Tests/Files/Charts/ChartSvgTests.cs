using System.Globalization;
using System.Xml.Linq;
using Lampwright.Files.Charts;
using Lampwright.Tests.Files.Fixtures;

namespace Lampwright.Tests.Files.Charts;

public sealed class ChartSvgTests
{
    private static IEnumerable<Chart> All(int switches = 4)
    {
        var light = SampleLight.Evaluation(switches);
        return new[]
        {
            StepCharts.Light(light),
            StepCharts.Current(light),
            StepCharts.Stops(light),
            StepCharts.Junction(light),
            HeatCharts.Staircase(light),
            HeatCharts.FanCurve(light),
            LightCharts.Subject(light),
            BalanceCharts.TiltMoment(light.Balance!.Tilts[0]),
        }.Select(c => c ?? throw new InvalidOperationException("A chart is missing."));
    }

    [Fact]
    public void Every_chart_is_well_formed_and_stays_inside_its_picture()
    {
        foreach (var chart in All())
        {
            var svg = XElement.Parse(ChartSvg.Of(chart, 720, 360));
            foreach (var rectangle in svg.Elements().Where(e => e.Name.LocalName is "line"))
            {
                foreach (var key in new[] { "x1", "x2" })
                {
                    var x = double.Parse(rectangle.Attribute(key)!.Value, CultureInfo.InvariantCulture);
                    Assert.InRange(x, -0.01, 720.01);
                }
            }
        }
    }

    [Fact]
    public void Every_position_tells_its_number_and_its_band_when_pointed_at()
    {
        var light = SampleLight.Evaluation();
        var svg = XElement.Parse(ChartSvg.Of(StepCharts.Light(light)!));
        var readouts = svg.Elements().Where(e => (string?)e.Attribute("class") == "lw-readout").ToList();
        Assert.Equal(16, readouts.Count);
        var first = light.Steps!.Combinations[0];
        Assert.Equal(first.Switches, readouts[0].Attribute("data-x")!.Value);
        Assert.Equal(
            first.LuxAtSubject.Low,
            double.Parse(readouts[0].Attribute("data-low")!.Value, CultureInfo.InvariantCulture)
        );
    }

    [Fact]
    public void Positions_stand_in_the_order_of_their_light()
    {
        var dots = (DotLayer)StepCharts.Light(SampleLight.Evaluation())!.Layers[0];
        Assert.Equal(dots.Points.Select(p => p.Y.Value).OrderDescending(), dots.Points.Select(p => p.Y.Value));
    }

    [Fact]
    public void Map_of_the_subject_keeps_its_shape_and_its_corners()
    {
        var light = SampleLight.Evaluation();
        var cells = (CellsLayer)LightCharts.Subject(light)!.Layers[0];
        var picture = light.Light!.SubjectPicture;
        Assert.Equal((picture[0][0], picture[^1][^1]), (cells.Rows[0][0], cells.Rows[^1][^1]));
        Assert.Equal(1, cells.Rows[cells.Rows.Count / 2][cells.Rows[0].Count / 2]);
    }

    [Fact]
    public void Names_with_markup_are_text()
    {
        var tilt = SampleLight.Evaluation().Balance!.Tilts[0];
        var svg = ChartSvg.Of(
            BalanceCharts.TiltMoment(
                new()
                {
                    Name = "<script>\"&",
                    TiltingMassKg = tilt.TiltingMassKg,
                    OffsetMm = tilt.OffsetMm,
                    WorstMomentNm = tilt.WorstMomentNm,
                    WorstAngleDeg = tilt.WorstAngleDeg,
                    HoldingNm = tilt.HoldingNm,
                    SafetyFactor = tilt.SafetyFactor,
                    MomentPicture = tilt.MomentPicture,
                }
            )
        );
        Assert.DoesNotContain("<script", svg);
        Assert.Contains("Tilt joint <script>\"&", XElement.Parse(svg).Value);
    }

    [Fact]
    public void A_light_of_two_positions_and_one_of_sixty_four_are_drawn()
    {
        foreach (var switches in new[] { 1, 6 })
        {
            foreach (var chart in All(switches))
            {
                Assert.DoesNotContain("NaN", ChartSvg.Of(chart, 320, 240));
            }
        }
    }

    [Fact]
    public void Without_answers_there_is_no_chart()
    {
        var nothing = new global::Lampwright.Evaluation.LightEvaluation { Title = "", Draws = 0 };
        Assert.Null(StepCharts.Light(nothing));
        Assert.Null(StepCharts.Junction(nothing));
        Assert.Null(HeatCharts.Staircase(nothing));
        Assert.Null(HeatCharts.FanCurve(nothing));
        Assert.Null(LightCharts.Subject(nothing));
    }
}
