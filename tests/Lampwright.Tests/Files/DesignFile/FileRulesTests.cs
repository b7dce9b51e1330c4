using Lampwright.Files.DesignFile;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class FileRulesTests
{
    private static List<string> Raised(string text, string code, string shop = "") =>
        [.. DesignLoader.Parse(text, "light.toml", _ => shop).Notes.Where(n => n.Code == code).Select(n => n.Path)];

    [Fact]
    public void FIL001_says_a_default_and_not_a_written_value()
    {
        Assert.Contains("place.altitude", Raised("format = 1\n[place]\n", "FIL001"));
        Assert.DoesNotContain("place.altitude", Raised("format = 1\n[place]\naltitude = \"0 m\"\n", "FIL001"));
    }

    [Fact]
    public void FIL002_says_a_table_of_both_files_and_not_one_of_either()
    {
        var both = "format = 1\nshop = \"s\"\n[sheet.a]\nthickness = \"1 mm\"\n";
        Assert.Equal(["sheet.a"], Raised(both, "FIL002", "[sheet.a]\nthickness = \"1 mm\"\n"));
        Assert.Empty(Raised(both, "FIL002", "[sheet.b]\nthickness = \"1 mm\"\n"));
    }

    [Fact]
    public void The_shop_says_how_its_printer_prints_and_the_design_on_what()
    {
        const string shop =
            "[show.templates]\npaper = \"roll\"\nroll = \"914 mm\"\nbar_across = \"149.2 mm\"\n[show]\nlength = \"cm\"\n";
        var alone = DesignLoader.Parse("format = 1\nshop = \"s\"\n", "light.toml", _ => shop);
        Assert.Equal("roll", alone.Design.Show.Templates.Paper);
        Assert.Equal(0.914, alone.Design.Show.Templates.Roll.Nominal, 12);

        const string own = "format = 1\nshop = \"s\"\n[show]\nlength = \"in\"\n[show.templates]\npaper = \"A3\"\n";
        var both = DesignLoader.Parse(own, "light.toml", _ => shop);
        Assert.Empty(both.Problems);
        Assert.Equal("in", both.Design.Show.Length);
        Assert.Equal("A3", both.Design.Show.Templates.Paper);
        Assert.Equal(0.1492, both.Design.Show.Templates.BarAcross!.Nominal, 12);
        Assert.Equal(
            ["show.length", "show.templates.paper"],
            Raised(own, "FIL002", shop).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void FIL003_says_an_override_with_its_reason_and_not_one_that_is_no_override()
    {
        Assert.Equal(
            ["rules.hole_to_edge"],
            Raised("format = 1\n[rules]\nhole_to_edge = { value = \"5 mm\", because = \"tried\" }\n", "FIL003")
        );
        Assert.Empty(Raised("format = 1\n[rules]\nhole_to_edge = { value = \"5 mm\" }\n", "FIL003"));
    }

    [Fact]
    public void FIL004_says_a_named_value_that_nothing_uses()
    {
        Assert.Equal(["given.b"], Raised("format = 1\n[given]\na = \"1 mm\"\nb = \"{2*a}\"\n", "FIL004"));
        Assert.Empty(Raised("format = 1\n[given]\na = \"1 m\"\n[place]\naltitude = \"{2*a}\"\n", "FIL004"));
    }

    [Fact]
    public void FIL005_says_a_table_that_a_station_needs()
    {
        Assert.Contains("subject", Raised("format = 1\n", "FIL005"));
        Assert.DoesNotContain("subject", Raised("format = 1\n[subject]\ndistance = \"1 m\"\n", "FIL005"));
    }
}
