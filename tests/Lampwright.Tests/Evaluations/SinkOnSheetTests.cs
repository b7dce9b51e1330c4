using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Coupling;
using Lampwright.Files.DesignFile;
using Lampwright.Files.Opening;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>Where much heat leaves over the contact of sink and sheet, the maker is told that this contact is a guess.</summary>
public class SinkOnSheetTests
{
    [Theory]
    [InlineData(-0.1, false)]
    [InlineData(0.2499, false)]
    [InlineData(0.25, true)]
    [InlineData(0.9, true)]
    public void A_quarter_of_the_heat_is_worth_saying(double share, bool told) =>
        Assert.Equal(told ? "HEA046" : null, CoupledFindings.BySheet("sink.main", share, "hot")?.Rule.Code);

    [Fact]
    public void It_is_told_with_the_fan_stopped_until_that_state_was_measured()
    {
        var text = Repository.Text("examples/puppet-theatre/puppet-theatre.toml");
        var finding = Assert.Single(Told(text));
        Assert.Equal("fan stopped", finding.Scene);

        // Rises as a maker would find them, which hold what the sheet takes.
        var measured = text.Replace(
            "[sink.main]\n",
            "[sink.main]\ntrials = [{ power = \"30 W\", rise = \"20 K\" }, { power = \"20 W\", rise = \"35 K\", fan = \"stopped\" }]\n",
            StringComparison.Ordinal
        );
        Assert.NotEqual(text, measured);
        Assert.Empty(Told(measured));
    }

    /// <summary>The tray lies on the sink and the hood on the tray, from whichever end the stack is written.</summary>
    [Theory]
    [InlineData("hood.sink tray.sink sink.main.mount")]
    [InlineData("sink.main.mount tray.sink hood.sink")]
    public void The_sheet_next_to_the_sink_takes_its_heat_whichever_way_the_stack_is_written(string stack) =>
        Assert.Equal(["tray.sink", "hood.sink"], SheetPanelsMap.FromSink(stack.Split(' '), "sink.main"));

    private static Lampwright.Findings.Finding[] Told(string text)
    {
        static string Near(string name) => Repository.Text("examples/puppet-theatre/" + name);
        var opened = OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Near), Near);
        return [.. opened.Prepare().Nominal().Findings.Where(f => f.Rule.Code == "HEA046")];
    }
}
