using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Edits;
using Lampwright.Files.Opening;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;
using Lampwright.Tests.House;

namespace Lampwright.Tests.Evaluations;

/// <summary>Two parts in one position, from the file to what is soldered.</summary>
public sealed class PairedPositionTests
{
    private static readonly string Text = Repository.Text("examples/herbarium/herbarium.toml");

    [Fact]
    public void Each_part_of_a_pair_has_its_own_power_rating_and_temperature()
    {
        var steps = Light("{ series = [\"0.15 ohm\", \"0.01 ohm\"], rating = [\"3 W\", \"0.5 W\"] }").Nominal().Steps!;
        var r2 = steps.Parts[2];
        Assert.Equal(0.16, r2.ResistanceOhm, 12);
        Assert.Equal(["R2a", "R2b"], r2.Soldered().Select(p => p.Name));
        Assert.Equal([3, 0.5], r2.Soldered().Select(p => p.RatingW));
        Assert.Equal(15, r2.Pair[0].MostW.Value / r2.Pair[1].MostW.Value, 9);

        // 0.5 W over a sixteenth of the power is 8 W, 3 W over fifteen sixteenths is less: the first comes to its limit first.
        Assert.Equal(3.2, r2.RatingW, 9);
        Assert.Equal(r2.MostW.Value, r2.Pair.Sum(p => p.MostW.Value), 9);
        Assert.True(r2.Pair[0].HottestC.Value > r2.Pair[1].HottestC.Value);
        Assert.Equal(r2.Pair[0].HottestC.Value, r2.HottestC.Value, 9);
    }

    [Fact]
    public void A_pair_side_by_side_shares_the_power_by_the_other_ones_resistance()
    {
        var r2 = Light("{ parallel = [\"0.2 ohm\", \"0.8 ohm\"] }").Nominal().Steps!.Parts[2];
        Assert.Equal(0.16, r2.ResistanceOhm, 12);
        Assert.Equal(4, r2.Pair[0].MostW.Value / r2.Pair[1].MostW.Value, 9);
        Assert.Equal("R2 = R2a ∥ R2b", r2.Label);
    }

    [Fact]
    public void A_pair_scatters_less_than_one_part_of_the_same_tolerance()
    {
        double Width(string position)
        {
            var open = Light(position)
                .WithBands(256)
                .Steps!.Combinations.Single(c => c.Switches == "1011")
                .ResistanceOhm;
            return (open.High - open.Low) / open.Value;
        }

        Assert.True(
            Width("{ series = [\"0.08 ohm ± 20 %\", \"0.08 ohm ± 20 %\"] }") < Width("\"0.16 ohm ± 20 %\"") * 0.9
        );
        Assert.True(Width("\"0.16 ohm ± 20 %\"") > Width("\"0.16 ohm\"") * 1.5);
    }

    [Fact]
    public void Every_part_of_a_pair_may_fail_by_itself_and_is_soldered_by_itself()
    {
        var steps = Light("{ series = [\"0.15 ohm\", \"0.01 ohm\"] }").Nominal().Steps!;
        double Amps(string what) => steps.Faults.Single(f => f.What == what).CurrentA;
        double alone = steps.Faults.Single(f => f.What == "R2b short").SoundA;
        Assert.True(Amps("R2a short") > Amps("R2b short") && Amps("R2b short") > alone);
        Assert.True(Amps("R2a open") < 1e-6 && Amps("R2b open") < 1e-6);
        Assert.DoesNotContain(steps.Faults, f => f.What == "R2 open");
        var rows = steps.Build!.Resistors.Where(r => r.Name.StartsWith("R2", StringComparison.Ordinal)).ToArray();
        Assert.Equal([0.15, 0.01], rows.Select(r => r.Ohm));
        Assert.Equal(rows[0].To, rows[1].From);

        var beside = Light("{ parallel = [\"0.2 ohm\", \"0.8 ohm\"] }").Nominal().Steps!;
        var fault = beside.Faults.Single(f => f.What == "R2a open");
        Assert.True(fault.CurrentA < fault.SoundA && fault.CurrentA > 0.1);
    }

    [Theory]
    [InlineData(
        "{ series = [\"0.1 ohm\", \"0.2 ohm\"], parallel = [\"0.1 ohm\", \"0.2 ohm\"] }",
        "steps.chosen.chain[1]"
    )]
    [InlineData("{ }", "steps.chosen.chain[1]")]
    [InlineData("{ value = \"0.1 ohm\", rating = [\"1 W\", \"2 W\"] }", "steps.chosen.chain[1].rating")]
    [InlineData("{ series = [\"0.1 ohm\"] }", "steps.chosen.chain[1].series")]
    [InlineData("{ serial = [\"0.1 ohm\", \"0.1 ohm\"] }", "steps.chosen.chain[1].serial")]
    [InlineData("{ series = [\"0.1 ohm\", \"0.2 V\"] }", "steps.chosen.chain[1].series[1]")]
    public void A_position_that_cannot_be_meant_is_told_with_its_line(string position, string path)
    {
        var loaded = DesignLoader.Parse(With(position), "light.toml", Beside);
        var problem = Assert.Single(loaded.Problems, p => p.Path == path);
        Assert.True(problem.Line > 1 && problem.Accepted.Length > 0, problem.Message);
    }

    [Fact]
    public void An_offer_with_two_parts_in_a_position_that_is_taken_over_is_the_chain_that_was_offered()
    {
        var asked = With("\"0.16 ohm\"").Replace("switches    = 4", "switches    = 2", StringComparison.Ordinal);
        asked = asked.Replace("\"0.24 ohm\", \"0.36 ohm\"", "", StringComparison.Ordinal);
        var before = Open(asked).Chain(false, true, null, CancellationToken.None)!;
        var offer = before.Offers.First(o => o.Choice.Found.Parts.Any(p => p.Second is not null));
        var edited = ChainEdit.Take(
            DesignText.Parse(asked, "light.toml"),
            offer.Choice.Found.Parts,
            withFixed: before.Asked.Fixed is null,
            switches: 2
        );
        Assert.True(edited.IsDone, edited.Refusal);
        var after = Open(edited.Text.Text).Chain(false, false, null, CancellationToken.None)!;
        Assert.Equal("", after.Used!.Breaks);
        Assert.Equal(offer.Choice.Found.Parts.Select(p => p.Words), after.Used.Does.Parts.Select(p => p.Words));
        Assert.Equal(offer.Choice.Found.WorstError, after.Used.Does.WorstError, 3);
    }

    [Theory]
    [InlineData(Joint.Series, 0.1, 0.03, 3, 0.25)]
    [InlineData(Joint.Parallel, 0.5, 0.15, 1, 3)]
    [InlineData(Joint.Series, 0.2, 0.2, 0.5, 0.5)]
    public void A_pair_drifts_as_its_two_parts_solved_apart(
        Joint joint,
        double a,
        double b,
        double ratingA,
        double ratingB
    )
    {
        // Knee at 25 °C, 400 ppm/K: enough to see the heat.
        ResistorPart Part(double ohm, double rating) => new(ohm, 400e-6, rating, 298.15, 398.15);
        var pair = ResistorPart.Of(joint, Part(a, ratingA), Part(b, ratingB));
        var network = new ChainNetwork(new(Arrangement.SeriesChain, Part(0.2, 1e6), [pair], 0));
        var driver = new DriverModel(0.5, 0.2, 0, 0.9);
        var amps = new double[2];
        network.Operate(new ChainDraw { Driver = driver, AirK = 298.15 }, amps, [], []);

        // The two parts by their own currents and their own heat, by repetition.
        var (i, ra, rb) = (amps[1], a, b);
        for (var n = 0; n < 100; n++)
        {
            var (wa, wb) =
                joint == Joint.Series
                    ? (i * i * ra, i * i * rb)
                    : (Math.Pow(i * rb / (ra + rb), 2) * ra, Math.Pow(i * ra / (ra + rb), 2) * rb);
            ra = a * (1 + (400e-6 * wa * 100 / ratingA));
            rb = b * (1 + (400e-6 * wb * 100 / ratingB));
            i = 0.5 / (0.2 + (joint == Joint.Series ? ra + rb : ra * rb / (ra + rb)));
        }

        var cold = 0.5 / (0.2 + pair.Ohm);
        Assert.True(Math.Abs(i - cold) > 1e-4, "the heat is not seen");
        Assert.InRange(amps[1] - i, -0.03 * Math.Abs(i - cold), 0.03 * Math.Abs(i - cold));
    }

    private static string With(string second) => Text.Replace("\"0.16 ohm\"", second, StringComparison.Ordinal);

    private static PreparedEvaluation Light(string second) => Open(With(second));

    private static PreparedEvaluation Open(string text) =>
        OpenedLight.Of(DesignLoader.Parse(text, "light.toml", Beside), Beside).Prepare();

    private static string Beside(string name) => Repository.Text($"examples/herbarium/{name}");
}
