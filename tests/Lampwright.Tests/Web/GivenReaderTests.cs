using Lampwright.Files.DesignFile;
using Lampwright.Quantities;
using Lampwright.Web.Desk;

namespace Lampwright.Tests.Web;

public sealed class GivenReaderTests
{
    private static readonly IReadOnlyList<GivenTable> Tables = GivenReader.Of(
        DesignText.Parse(
            """
            format = 1
            title = "Small <b>light</b>"

            [emitter.main]
            points = [
              { current = "0.45 A", voltage = "33.6 V", flux = "2300 lm" },
              { current = "0.90 A", voltage = "34.9 V", flux = "4350 lm" },
            ]
            junction_max = "120 degC"

            [driver.main]
            current = { rated = "1.75 A", least = "0.3 A" }
            isolated = "yes"

            [sheet.mild]
            thickness = "1.2 mm"

            [part.tray]
            sheet = "mild"
            face = { inside = ["{2*40 mm}", "80 mm"] }

            [part.tray.flange.wall_l]
            on = "face.left"
            height = { outside = "46 mm" }

            [steps]
            """,
            "small.toml"
        ),
        path => path == "part.tray.face.inside[0]" ? "80 mm" : ""
    );

    [Fact]
    public void Every_written_value_is_a_field_with_its_text_and_line()
    {
        var rated = Field("driver.main.current.rated");
        Assert.Equal(
            ("1.75 A", "current rated", Origin.Given, 12),
            (rated.Text, rated.Label, rated.Origin, rated.Line)
        );
        Assert.Equal("4350 lm", Field("emitter.main.points[1].flux").Text);
    }

    [Fact]
    public void An_expression_says_what_it_comes_to()
    {
        var across = Field("part.tray.face.inside[0]");
        Assert.True(across.IsExpression);
        Assert.Equal("80 mm", across.ComesTo);
        Assert.Equal("", Field("part.tray.face.inside[1]").ComesTo);
    }

    [Fact]
    public void A_key_that_is_not_written_shows_its_default_and_where_it_comes_from()
    {
        var altitude = Field("place.altitude");
        Assert.Equal("", altitude.Text);
        Assert.NotEqual("", altitude.Default);
        Assert.NotEqual("", altitude.DefaultSource);
        Assert.NotEqual("", altitude.Help);
    }

    [Fact]
    public void Named_tables_below_a_table_stand_on_their_own()
    {
        Assert.Contains(Tables, t => t.Path == "part.tray");
        Assert.Contains(Tables, t => t.Path == "part.tray.flange.wall_l");
        Assert.Equal("46 mm", Field("part.tray.flange.wall_l.height.outside").Text);
    }

    [Fact]
    public void A_reference_offers_the_names_there_are() => Assert.Equal(["mild"], Field("part.tray.sheet").Choices);

    [Fact]
    public void No_path_is_shown_twice()
    {
        var paths = Tables.SelectMany(t => t.Fields).Select(f => f.Path).ToList();
        Assert.Equal(paths.Count, paths.Distinct(StringComparer.Ordinal).Count());
    }

    private static GivenField Field(string path) =>
        Tables.SelectMany(t => t.Fields).SingleOrDefault(f => f.Path == path)
        ?? throw new InvalidOperationException(
            $"No field {path} among {string.Join(", ", Tables.SelectMany(t => t.Fields).Select(f => f.Path))}"
        );
}
