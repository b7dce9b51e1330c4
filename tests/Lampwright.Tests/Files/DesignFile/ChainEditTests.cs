using Lampwright.Design;
using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Edits;
using Lampwright.Steps.ChainProof;
using Joint = Lampwright.Steps.ChainProof.Joint;

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
        Assert.Equal(0.195, chosen.Fixed!.Parts[0].Nominal, 12);
        Assert.Equal([Joining.One, Joining.SideBySide, Joining.InSeries], chosen.Chain.Select(p => p.Joining));
        Assert.Equal(
            Three.Skip(1).SelectMany(p => new[] { p.First, p.Second }).OfType<StockPart>().Select(p => p.Ohm),
            chosen.Chain.SelectMany(p => p.Parts).Select(v => v.Nominal),
            (a, b) => Math.Abs(a - b) < 1e-12
        );
    }

    [Fact]
    public void Own_rating_and_tolerance_of_a_part_are_written_too()
    {
        StockPart own = Part(0.33) with { RatingW = 3, Tolerance = 0.05, OwnTolerance = true };
        PositionParts[] parts =
        [
            new(Joint.Single, Part(0.195)),
            new(Joint.Series, own, Part(0.011) with { RatingW = 0.5 }),
            new(Joint.Single, own),
        ];
        var edited = ChainEdit.Take(Of("[steps]\nswitches = 2\n"), parts, withFixed: false, switches: 2);
        var chain = DesignLoader.Parse(edited.Text, _ => null).Design.Steps!.Chosen!.Chain;
        Assert.Equal([3, 0.5], chain[0].Ratings.Select(v => v.Nominal));
        Assert.Equal(0.0165, chain[0].Parts[0].HalfWidth, 9);
        Assert.Equal(0, chain[0].Parts[1].HalfWidth);
        Assert.Equal([3], chain[1].Ratings.Select(v => v.Nominal));
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
