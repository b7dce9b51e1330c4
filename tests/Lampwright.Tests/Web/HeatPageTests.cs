using Bunit;
using Lampwright.Evaluation.Answers;
using Lampwright.Tests.Files.Fixtures;
using Lampwright.Web.Desk;
using Lampwright.Web.Pages;
using Microsoft.Extensions.DependencyInjection;

namespace Lampwright.Tests.Web;

public sealed class HeatPageTests : BunitContext
{
    private readonly FakeDesk _desk = new();

    public HeatPageTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton<IBoardDesk>(_desk);
    }

    [Fact]
    public void The_cut_out_is_told_first_with_setting_tolerance_place_and_reason()
    {
        var page = Show(SampleBox.Box);
        Assert.Equal("Thermal cut-out", page.Find(".comes > section h3").TextContent);
        Assert.Equal("75\u202f°C", page.Find(".cutout .setting .v").TextContent);
        var text = page.Find(".cutout").TextContent;
        Assert.Contains("± 5 K", text, StringComparison.Ordinal);
        Assert.Contains("sink base", text, StringComparison.Ordinal);
        Assert.Contains("60 °C or more never trips", text, StringComparison.Ordinal);
        Assert.Contains("driver's input and nothing else", text, StringComparison.Ordinal);
        Assert.Contains("protects", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_setting_protects_the_page_says_so_and_shows_none()
    {
        var none = SampleBox.Box.CutOuts[0] with { SettingC = null, Best = false };
        var page = Show(SampleBox.Box with { CutOuts = [none] });
        Assert.Empty(page.FindAll(".cutout .setting"));
        Assert.Contains("No place", page.Find(".cutout .bad").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_fan_nothing_is_said_of_its_stop()
    {
        var page = Show(SampleBox.Box with { FanStop = null, CutOuts = [], Played = [] });
        Assert.Empty(page.FindAll(".fanstop"));
        Assert.Empty(page.FindAll(".cutout .setting"));
        Assert.Equal(2, page.FindAll(".overtime .chart").Count);
    }

    [Fact]
    public void A_skin_above_its_limit_is_marked()
    {
        BoxScene Scene(double celsius) =>
            new("hot", 32, [new("tray.face", "skin", Evaluation.Predicted.Sharp(celsius), 60, 0, 10)]);
        Assert.Equal("bad", Show(SampleBox.Box with { Scenes = [Scene(60.1)] }).Find(".skins tbody td").ClassName);
        Assert.Empty(Show(SampleBox.Box with { Scenes = [Scene(59.9)] }).FindAll(".skins .bad"));
    }

    [Fact]
    public void The_answer_over_time_is_found_when_the_page_is_shown_and_not_before()
    {
        var asked = 0;
        var heat = _desk.State.Light!.Heat! with
        {
            Air = new(() =>
            {
                asked++;
                return null;
            }),
        };
        _desk.Show(s => s with { Light = s.Light! with { Heat = heat } });
        Assert.Equal(0, asked);
        Render<HeatPage>(p => p.AddCascadingValue(new BoardContext(_desk.State, "1111", _ => { })))
            .WaitForAssertion(() => Assert.Equal(1, asked));
    }

    private IRenderedComponent<HeatPage> Show(BoxAnswer box)
    {
        _desk.Show(s => s with { Light = s.Light! with { Heat = s.Light.Heat! with { Box = box } } });
        var page = Render<HeatPage>(p => p.AddCascadingValue(new BoardContext(_desk.State, "1111", _ => { })));
        page.WaitForElement(".cutout");
        return page;
    }
}
