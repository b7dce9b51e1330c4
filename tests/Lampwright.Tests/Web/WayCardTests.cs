using Bunit;
using Lampwright.Evaluation.Answers;
using Lampwright.Steps.Ways;
using Lampwright.Web.Desk;
using Lampwright.Web.Pages;
using Lampwright.Web.Ways;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Lampwright.Tests.Web;

public sealed class WayCardTests : BunitContext
{
    private readonly FakeDesk _desk = new();

    public WayCardTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton<IBoardDesk>(_desk);
        _desk.Show(s => s with { Light = s.Light! with { Ways = SampleWays.All } });
    }

    [Fact]
    public void The_chosen_way_comes_first_then_those_that_work_then_the_rest()
    {
        var kinds = Show<WayList>().FindAll("article.way").Select(c => c.GetAttribute("data-way")).ToList();
        Assert.Equal(SampleWays.All.Count, kinds.Count);
        Assert.Equal(
            [nameof(WayKind.SteppedChain), nameof(WayKind.ShuntResistor), nameof(WayKind.DimmingInput)],
            kinds[..3]
        );
        Assert.Equal(nameof(WayKind.FixedSense), kinds[^1]);
    }

    [Fact]
    public void Each_card_says_its_verdict_in_words_with_a_mark_of_its_own()
    {
        var shown = Show<WayList>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var verdict in Enum.GetValues<Verdict>())
        {
            var way = SampleWays.All.First(w => w.Way.Verdict == verdict).Way;
            var card = shown.Find($"[data-way={way.Kind}]");
            Assert.Contains(
                CardWords.Of(verdict),
                card.QuerySelector(".verdict")!.TextContent,
                StringComparison.Ordinal
            );
            Assert.Contains(way.Reason, card.TextContent, StringComparison.Ordinal);
            Assert.True(seen.Add(card.QuerySelector(".verdictmark")!.InnerHtml), $"{verdict} has the mark of another");
        }
    }

    [Fact]
    public void A_card_gives_the_numbers_that_ways_are_compared_by()
    {
        var card = Card(WayKind.SteppedChain);
        Assert.Contains("36–100", card, StringComparison.Ordinal);
        Assert.Contains("1.5 stops", card, StringComparison.Ordinal);
        Assert.Contains("87\u202f%", card, StringComparison.Ordinal);
        Assert.Contains("4.4\u202fW", card, StringComparison.Ordinal);
        Assert.Contains("opens driveryes", card, StringComparison.Ordinal);
        Assert.Contains("blinksno", card, StringComparison.Ordinal);

        Assert.Contains("20–45 times a second", Card(WayKind.ConverterBehind), StringComparison.Ordinal);
        Assert.Contains("no steady light", Card(WayKind.ConverterBehind), StringComparison.Ordinal);
        Assert.Contains("light not known", Card(WayKind.DimmingInput), StringComparison.Ordinal);
        Assert.Contains("36\u202f% of full", Card(WayKind.FixedSense), StringComparison.Ordinal);
        Assert.Contains("blinksnot known", Card(WayKind.DimmingInput), StringComparison.Ordinal);
        Assert.Contains("never at half", Card(WayKind.FixedSense), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stop_is_told_on_the_card_by_its_title_and_code()
    {
        var card = Show<WayList>().Find($"[data-way={WayKind.FixedSense}] .standing");
        Assert.Contains("Sense part not shown to be on the secondary side", card.TextContent, StringComparison.Ordinal);
        Assert.Contains("STP001", card.TextContent, StringComparison.Ordinal);
        Assert.Empty(Show<WayList>().FindAll($"[data-way={WayKind.SteppedChain}] .standing"));
    }

    [Fact]
    public void Pictures_are_drawn_for_the_opened_card_alone()
    {
        var shown = Show<WayList>();
        Assert.Empty(shown.FindAll(".lw-chart"));
        Button(shown, WayKind.ConverterBehind).Click();
        Assert.Equal("true", Button(shown, WayKind.ConverterBehind).GetAttribute("aria-expanded"));
        Assert.NotEmpty(shown.FindAll($"[data-way={WayKind.ConverterBehind}] .lw-chart"));
        Assert.Contains("runs away", shown.Find(".lw-chart").TextContent, StringComparison.Ordinal);
        Assert.Contains(
            "output capacitor at 46 V <of> 50 V",
            shown.Find(".needs").TextContent,
            StringComparison.Ordinal
        );

        Button(shown, WayKind.SteppedChain).Click();
        Assert.Empty(shown.FindAll($"[data-way={WayKind.ConverterBehind}] .lw-chart"));
        Button(shown, WayKind.SteppedChain).Click();
        Assert.Empty(shown.FindAll(".lw-chart"));
    }

    [Fact]
    public void A_way_that_starts_and_stops_slowly_is_watched_long_enough_to_see_it()
    {
        Assert.Equal(0.1, WayAnswer.WatchedS(null));
        Assert.Equal(0.1, WayAnswer.WatchedS(500));
        Assert.Equal(1.6, WayAnswer.WatchedS(2), 9);
        Assert.Equal(3, WayAnswer.WatchedS(0.1));
        var trips = SampleWays.All.Single(w => w.Way.Kind == WayKind.SelectorOpening);
        var (first, longer) = trips.Course();
        var trace = Assert.IsType<WayTrace>(longer);
        Assert.Equal(0.1, first.TimeS[^1], 6);
        Assert.InRange(trace.TimeS[^1], 1, 3);
        Assert.InRange(TraceStarts(trace), 2, 5);

        static int TraceStarts(WayTrace trace) =>
            Enumerable
                .Range(1, trace.TimeS.Count - 1)
                .Count(i => trace.EmitterA[i - 1] < 0.1 && trace.EmitterA[i] >= 0.1);
    }

    [Theory]
    [InlineData(0.2, 0.5, "every 2.0–5.0 s")]
    [InlineData(0, 0.5, "every 2.0 or more s")]
    [InlineData(12, 12.01, "12 times a second")]
    public void The_rate_is_told_as_people_would_say_it(double least, double most, string words) =>
        Assert.Equal(
            words,
            CardWords.Rate(SampleWays.All[0].Way with { Hiccups = Told.Yes, HiccupHz = new(least, most) })
        );

    [Fact]
    public void The_page_shows_the_ways_where_no_chain_can_be_computed()
    {
        _desk.Show(s => s with { Light = s.Light! with { Steps = null } });
        var page = Show<StepsPage>();
        Assert.Equal(SampleWays.All.Count, page.FindAll("article.way").Count);
        Assert.Contains(
            "2 of 9 ways would work, 1 under a stop",
            page.Find(".wayglance").TextContent,
            StringComparison.Ordinal
        );
    }

    private string Card(WayKind kind) => Show<WayList>().Find($"[data-way={kind}]").TextContent;

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<WayList> shown, WayKind kind) =>
        shown.Find($"[data-way={kind}] button");

    private IRenderedComponent<T> Show<T>()
        where T : IComponent => Render<T>(p => p.AddCascadingValue(new BoardContext(_desk.State, "1111", _ => { })));
}
