using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.Packet;
using Lampwright.Steps.Faults;
using Lampwright.Tests.Files.Fixtures;
using UglyToad.PdfPig;

namespace Lampwright.Tests.Files.Packet;

public sealed class PacketPdfTests
{
    [Fact]
    public void Cover_shows_every_switch_position_the_stop_and_the_cautions_that_apply()
    {
        var (design, light) = (SampleLight.Design(), SampleLight.Evaluation());
        var cover = Pages(design, light)[0];
        foreach (var position in light.Steps!.Combinations)
        {
            Assert.Contains(position.Switches, cover, StringComparison.Ordinal);
        }

        Assert.Contains("STOP:donotbuildorpowerthis", cover, StringComparison.Ordinal);
        foreach (var caution in Cautions.For(design, light))
        {
            Assert.Contains(Packed(caution.Title), cover, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Soldering_first_power_and_repair_stand_on_sheets_of_their_own()
    {
        var light = Wired();
        var pages = Pages(SampleLight.Design(), light);
        var build = light.Steps!.Build!;
        var first = pages.Single(p => p.Contains("tickeachline", StringComparison.Ordinal));
        Assert.All(
            build.Patterns,
            p =>
            {
                Assert.Contains(p.Switches, first, StringComparison.Ordinal);
                Assert.Contains(
                    (p.Ohm * 1000).ToString("0", CultureInfo.InvariantCulture),
                    first,
                    StringComparison.Ordinal
                );
            }
        );
        Assert.Contains("Neverconnectanemittertoalivedriver", first, StringComparison.Ordinal);
        var wiring = string.Concat(pages.Where(p => p.Contains("Wiringofthechain", StringComparison.Ordinal)));
        Assert.All(build.Leads, l => Assert.Contains(Packed(l.From + l.To), wiring, StringComparison.Ordinal));
        Assert.All(build.Resistors, r => Assert.Contains(Packed(r.Mounting), wiring, StringComparison.Ordinal));
        Assert.Contains("Fuse:", wiring, StringComparison.Ordinal);
        var card = pages.Single(p => p.Contains("fortheinsideofthelid", StringComparison.Ordinal));
        Assert.Contains("leadoutbroken", card, StringComparison.Ordinal);
        var labels = pages.Single(p =>
            p.Contains("Labels", StringComparison.Ordinal) && p.Contains("toggles", StringComparison.Ordinal)
        );
        Assert.Contains("%stopsA", labels, StringComparison.Ordinal);
    }

    [Fact]
    public void First_power_asks_for_no_trial_that_something_is_not_sure_to_bear_and_ticks_what_was_taken_on_word()
    {
        var light = Wired();
        var faults = light.Steps!.Faults;
        string First(Func<FaultResult, FaultResult> change) =>
            Pages(SampleLight.Design(), light with { Steps = light.Steps with { Faults = [.. faults.Select(change)] } })
                .Single(p => p.Contains("tickeachline", StringComparison.Ordinal));
        var fine = First(f =>
            f with
            {
                Emitter = Survival.Yes,
                Driver = Survival.Yes,
                Resistors = Survival.Yes,
                Standing = f.Standing == FaultStanding.Excluded ? FaultStanding.ByConstruction : f.Standing,
            }
        );
        Assert.Contains("Pulleachleadofthechainonce", fine, StringComparison.Ordinal);
        Assert.DoesNotContain("onyourword", fine, StringComparison.Ordinal);
        var risky = First(f =>
            f.Fault.Kind switch
            {
                FaultKind.LeadBroken => f with { Driver = Survival.Unknown, Standing = FaultStanding.Counts },
                FaultKind.ResistorShort => f with { Standing = FaultStanding.Excluded },
                _ => f,
            }
        );
        Assert.DoesNotContain("Pulleachleadofthechainonce", risky, StringComparison.Ordinal);
        Assert.Contains("Noleadispulledoffforatrial", risky, StringComparison.Ordinal);
        Assert.Contains("onyourword", risky, StringComparison.Ordinal);
    }

    [Fact]
    public void No_sheet_says_how_to_wire_or_what_to_measure_while_the_board_forbids_wires()
    {
        string[] titles =
        [
            "Wiringofthechain",
            "Thebestchain",
            "tickeachline",
            "Testsheet",
            "fortheinsideofthelid",
            "Millivoltsacross",
            "plateP",
        ];
        var wired = string.Concat(Pages(SampleLight.Design(), Wired()));
        Assert.Contains(titles[0], wired, StringComparison.Ordinal);
        Assert.Contains(titles[2], wired, StringComparison.Ordinal);
        var stopped = string.Concat(Pages(SampleLight.Design(), SampleLight.Evaluation()));
        Assert.All(titles, title => Assert.DoesNotContain(title, stopped, StringComparison.Ordinal));
        Assert.Contains("STOP:donotbuildorpowerthis", stopped, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_part_has_a_sheet_with_its_size()
    {
        var pages = Pages(SampleLight.Design(), SampleLight.Evaluation());
        foreach (var (part, size) in new[] { ("tray", "212.0"), ("plate", "90.0"), ("long", "430.0") })
        {
            Assert.Contains(
                pages,
                p => p.StartsWith(part, StringComparison.Ordinal) && p.Contains(size, StringComparison.Ordinal)
            );
        }
    }

    [Theory]
    [InlineData("Drillandtaplist", "M4tap:drill3.3mm")]
    [InlineData("Wiringofthechain", "0.306V|306mV")]
    [InlineData("Testsheet", "fanstopped")]
    [InlineData("Labels", "withoutthefan")]
    [InlineData("Charts", "Evennessoverthesubject")]
    [InlineData("Cutlist", "M4×35")]
    [InlineData("Jointsandscrews", "fan.main.mount→tray.fan")]
    [InlineData("Findings", "Findoutwhichsidethesensepartison")]
    public void Sheet_is_there_with_what_it_is_for(string title, string content)
    {
        var pages = Pages(SampleLight.Design(), Wired());
        Assert.Contains(
            pages,
            p =>
                p.Contains(title, StringComparison.Ordinal)
                && content.Split('|').Any(c => p.Contains(c, StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Every_sheet_counts_all_sheets()
    {
        var pages = Pages(SampleLight.Design(), SampleLight.Evaluation());
        for (var i = 0; i < pages.Count; i++)
        {
            Assert.Contains($"{i + 1}/{pages.Count}", pages[i], StringComparison.Ordinal);
            Assert.Contains("state0000-1111", pages[i], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Inches_and_degrees_Fahrenheit_are_shown_where_they_are_asked_for()
    {
        var pages = Pages(SampleLight.Design("Letter", "in", "degF"), SampleLight.Evaluation());
        Assert.Contains("°F", pages[0], StringComparison.Ordinal);
        Assert.Contains(pages, p => p.Contains("8.346", StringComparison.Ordinal));
    }

    [Fact]
    public void A_light_of_which_nothing_is_known_has_a_cover_with_cautions()
    {
        var pages = Pages(new LightDesign(), new LightEvaluation { Title = "", Draws = 0 });
        Assert.Single(pages);
        Assert.Contains("Mains", pages[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    public void Few_and_many_switches_fit(int switches)
    {
        var light = SampleLight.Evaluation(switches);
        var text = string.Concat(Pages(SampleLight.Design(), light));
        foreach (var position in light.Steps!.Combinations)
        {
            Assert.Contains(position.Switches, text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("parallel branches")]
    [InlineData("selector")]
    public void Other_arrangements_have_their_circuit(string arrangement)
    {
        var light = Wired();
        light = light with { Steps = light.Steps! with { Arrangement = arrangement } };
        Assert.Contains(
            Pages(SampleLight.Design(), light),
            p => p.Contains(Packed(arrangement), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Signs_that_the_typeface_lacks_and_endless_names_do_no_harm()
    {
        var light = SampleLight.Evaluation() with { Title = "漢字 \u0001 " + new string('W', 4000) };
        Assert.Contains("??", Pages(SampleLight.Design(), light)[0], StringComparison.Ordinal);
    }

    private static LightEvaluation Wired() => SampleLight.Evaluation() with { Board = SampleBoard.Cleared };

    private static List<string> Pages(LightDesign design, LightEvaluation light)
    {
        using var stream = new MemoryStream();
        PacketPdf.Write(design, light, "0000-1111", stream);
        using var pdf = PdfDocument.Open(stream.ToArray());
        return [.. pdf.GetPages().Select(p => Packed(p.Text))];
    }

    /// <summary>Text without its spaces: where a reader of PDF sees one is a matter of taste.</summary>
    private static string Packed(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
