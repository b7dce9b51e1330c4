using Bunit;
using Lampwright.Steps;
using Lampwright.Steps.Board;
using Lampwright.Web.Desk;
using Lampwright.Web.Ways;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Lampwright.Tests.Web;

public sealed class BoardViewTests : BunitContext
{
    private static readonly DriverSpec Known = new(
        1.75,
        0.25,
        24,
        42,
        0.89,
        new(["R39", "R39"], MeasuredA: 1.74, Side: SenseSide.Secondary, Carries: SenseCarries.Smooth),
        Isolation.Yes,
        Path: "driver.main"
    );

    private readonly FakeDesk _desk = new();

    public BoardViewTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton<IBoardDesk>(_desk);
    }

    [Fact]
    public void Marks_lead_to_the_threshold_with_its_band_and_whether_it_is_plausible()
    {
        var reading = Show(Known).Find(".reading");
        Assert.Equal(["R39", "R39"], reading.QuerySelectorAll(".chip").Select(c => c.TextContent));
        Assert.Contains("0.195\u202fΩ", reading.TextContent, StringComparison.Ordinal);
        Assert.Contains("1.74\u202fA measured", reading.TextContent, StringComparison.Ordinal);
        Assert.Contains("339\u202fmV", reading.TextContent, StringComparison.Ordinal); // 0.195 Ω · 1.74 A
        Assert.Matches("[0-9]{3}–[0-9]{3}", reading.QuerySelector(".threshold small")!.TextContent);
        Assert.Contains("✓ plausible", reading.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_threshold_that_no_driver_has_is_told_by_word_and_mark()
    {
        var reading = Show(Known with { Sense = Known.Sense with { Marks = ["4R7"] } }).Find(".reading");
        Assert.Contains("✕ hardly a threshold", reading.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_three_questions_stand_with_the_answers_of_the_file_as_fields()
    {
        var shown = Show(Known);
        Assert.Equal("secondary", Field(shown, "driver.main.sense.side").GetAttribute("value"));
        Assert.Equal("yes", Field(shown, "driver.main.isolated").GetAttribute("value"));
        Assert.Equal("smooth", Field(shown, "driver.main.sense.carries").GetAttribute("value"));
        Assert.Empty(shown.FindAll(".findings .stop"));
    }

    [Fact]
    public void Changing_an_answer_writes_it_into_the_file()
    {
        Field(Show(Known), "driver.main.isolated").Change("unknown");
        Assert.Contains("driver.main.isolated = \"unknown\"", _desk.State.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Isolation.No, SenseSide.Secondary, SenseCarries.Smooth, "STP002")]
    [InlineData(Isolation.Unknown, SenseSide.Secondary, SenseCarries.Smooth, "STP002")]
    [InlineData(Isolation.Yes, SenseSide.Primary, SenseCarries.Smooth, "STP001")]
    [InlineData(Isolation.Yes, SenseSide.Unknown, SenseCarries.Smooth, "STP001")]
    [InlineData(Isolation.Yes, SenseSide.Secondary, SenseCarries.Pulsed, "STP003")]
    [InlineData(Isolation.Yes, SenseSide.Secondary, SenseCarries.Unknown, "STP003")]
    public void A_bad_or_missing_answer_shows_its_stop_at_the_question_and_below(
        Isolation isolated,
        SenseSide side,
        SenseCarries carries,
        string code
    )
    {
        var shown = Show(
            Known with
            {
                Isolated = isolated,
                Sense = Known.Sense with { Side = side, Carries = carries },
            }
        );
        Assert.Contains(
            $"stop {code}",
            Assert.Single(shown.FindAll(".asking.stands")).TextContent,
            StringComparison.Ordinal
        );
        var stop = Assert.Single(shown.FindAll(".findings .stop"));
        Assert.Contains(code, stop.TextContent, StringComparison.Ordinal);
        Assert.Contains("nothing but knowing better lifts it", stop.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("no stop stands", shown.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void It_always_defers_to_licensed_practice()
    {
        Assert.Contains("licensed", Show(Known).Find(".boardreading").TextContent, StringComparison.Ordinal);
        Assert.Contains(
            "licensed",
            Show(Known with { Isolated = Isolation.No }).Find(".boardreading").TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Ids_of_its_fields_are_its_own_so_that_links_still_lead_to_what_is_given()
    {
        var ids = Show(Known).FindAll("[id]").Select(e => e.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.DoesNotContain(ids, id => id!.StartsWith("given:", StringComparison.Ordinal));
    }

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<BoardView> shown, string path) =>
        shown.Find($"[id='asked:{path}']");

    private IRenderedComponent<BoardView> Show(DriverSpec driver) =>
        Render<BoardView>(p =>
            p.AddCascadingValue(new BoardContext(_desk.State, "1111", _ => { }))
                .Add(b => b.Answer, new() { Reading = BoardReading.Of(driver) })
        );
}
