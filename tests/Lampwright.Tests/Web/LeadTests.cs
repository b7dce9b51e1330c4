using Lampwright.Quantities;
using Lampwright.Web.Desk;
using Lampwright.Web.Foreman;

namespace Lampwright.Tests.Web;

public sealed class LeadTests
{
    private static readonly BoardState State = new()
    {
        Version = 1,
        FileName = "light.toml",
        Text = "",
        Given =
        [
            Table("place", "place.ambient", "place.ambient_max"),
            Table("driver.main", "driver.main.current.rated", "driver.main.isolated"),
            Table("part.sink_tray", "part.sink_tray.sheet", "part.sink_tray.face.inside[0]"),
            Table("part.sink_tray.hole.vents", "part.sink_tray.hole.vents.on"),
        ],
    };

    [Theory]
    [InlineData("place.ambient_max", "heat?field=place.ambient_max")]
    [InlineData("driver.main.current", "steps?field=driver.main.current.rated")]
    [InlineData("driver.main.sense.side", "steps?field=driver.main.current.rated")]
    [InlineData("part.sink_tray.hole.vents[3,2]", "metal?part=sink_tray&field=part.sink_tray.hole.vents.on")]
    [InlineData("part.sink_tray.face", "metal?part=sink_tray&field=part.sink_tray.face.inside%5B0%5D")]
    [InlineData("part.lid", "metal?part=lid")]
    [InlineData("place.ambient_ma", "heat?field=place.ambient")]
    [InlineData("nothing.of.the.kind", "packet")]
    [InlineData("", "packet")]
    public void A_path_leads_to_its_page_and_nearest_field(string path, string href) =>
        Assert.Equal(href, Lead.Href(State, path));

    private static GivenTable Table(string path, params string[] fields) =>
        new(path, [.. fields.Select(f => new GivenField(f, f, "x", Origin.Given))]);
}
