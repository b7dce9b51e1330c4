using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Edits;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class ChainEditTests
{
    private static readonly PositionParts[] Three =
    [
        new(Joint.Single, Part(0.195)),
        new(Joint.Single, Part(0.0091)),
        new(Joint.Parallel, Part(1.3), Part(0.18)),
        new(Joint.Series, Part(0.33), Part(0.011)),
    ];

    [Fact]
    public void What_is_written_comes_to_the_ohms_of_the_chain()
    {
        var text = Of("[steps]\nswitches = 3\n");
        var edited = ChainEdit.Take(text, Three, withFixed: true, switches: 3);
        Assert.True(edited.IsDone, edited.Refusal);
        var chosen = DesignLoader.Parse(edited.Text, _ => null).Design.Steps!.Chosen!;
        Assert.Equal(0.195, chosen.Fixed!.Nominal, 12);
        Assert.Equal(
            Three.Skip(1).Select(p => p.Ohm),
            chosen.Chain.Select(v => v.Nominal),
            (a, b) => Math.Abs(a - b) < 1e-12
        );
    }

    [Fact]
    public void Comments_and_everything_else_stay_and_the_count_of_switches_follows()
    {
        const string before =
            "[steps]\nswitches = 4   # toggles\nchosen = { chain = [\"1 ohm\", \"2 ohm\", \"3 ohm\", \"4 ohm\"] } # mine\n# end\n";
        var edited = ChainEdit.Take(Of(before), [.. Three.Take(2)], withFixed: false, switches: 4);
        Assert.Equal(
            "[steps]\nswitches = 1   # toggles\nchosen = { chain = [\"0.0091 ohm\"] } # mine\n# end\n",
            edited.Text.Text
        );
        Assert.Equal(edited.Text.Text, Splice.Apply(before, edited.Splices));
    }

    [Fact]
    public void The_boards_own_part_is_not_written()
    {
        var edited = ChainEdit.Take(Of("[steps]\nswitches = 3\n"), Three, withFixed: false, switches: 3);
        Assert.DoesNotContain("fixed", edited.Text.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_of_its_own_is_edited_key_by_key()
    {
        var edited = ChainEdit.Take(
            Of("[steps]\nswitches = 1\n\n[steps.chosen]\nchain = [\"1 ohm\"]\n"),
            [.. Three.Take(2)],
            withFixed: false,
            switches: 1
        );
        Assert.EndsWith("[steps.chosen]\nchain = [\"0.0091 ohm\"]\n", edited.Text.Text, StringComparison.Ordinal);
    }

    private static DesignText Of(string text) => DesignText.Parse(text, "light.toml");

    private static StockPart Part(double ohm) => new(ohm, 3);
}
