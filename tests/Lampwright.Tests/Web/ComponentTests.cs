using Bunit;
using Lampwright.Web.Desk;
using Lampwright.Web.Fields;
using Lampwright.Web.Ledger;
using Lampwright.Web.Pages;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Lampwright.Tests.Web;

public sealed class ComponentTests : BunitContext
{
    private readonly FakeDesk _desk = new();

    public ComponentTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton<IBoardDesk>(_desk);
    }

    [Fact]
    public void The_ledger_has_a_row_for_each_position_brightest_first()
    {
        var rows = Show<LightLedger>().FindAll("tbody tr");
        Assert.Equal(16, rows.Count);
        Assert.Equal("1111", rows[0].GetAttribute("data-switches"));
        Assert.Equal("0000", rows[15].GetAttribute("data-switches"));
    }

    [Fact]
    public void Names_with_markup_are_text()
    {
        var shown = Show<GivenTables>(p => p.Add(t => t.Kinds, ["item"]));
        Assert.Contains("<b>inlet</b>", shown.Find("h3").TextContent, StringComparison.Ordinal);
        Assert.Empty(shown.FindAll("b"));
    }

    [Fact]
    public void A_refused_text_stays_in_its_field_with_the_reason()
    {
        var shown = Show<GivenTables>(p => p.Add(t => t.Kinds, ["place"]));
        shown.Find("[id='given:place.ambient']").Change("21,5 degC");
        shown.WaitForAssertion(() =>
            Assert.Contains("decimal comma", shown.Find(".error").TextContent, StringComparison.Ordinal)
        );
        Assert.Equal("21,5 degC", shown.Find("[id='given:place.ambient']").GetAttribute("value"));
        Assert.False(_desk.State.IsUnsaved);
    }

    [Fact]
    public void A_page_without_answers_says_what_it_needs()
    {
        _desk.Show(s => s with { Light = s.Light! with { Heat = null } });
        Assert.Contains("does not say enough", Show<HeatPage>().Markup, StringComparison.Ordinal);
    }

    private IRenderedComponent<T> Show<T>(Action<ComponentParameterCollectionBuilder<T>>? parameters = null)
        where T : IComponent =>
        Render<T>(p =>
        {
            p.AddCascadingValue(new BoardContext(_desk.State, "1111", _ => { }));
            parameters?.Invoke(p);
        });
}
