using Lampwright.Evaluation;
using Lampwright.Files.Opening;
using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Tests.Evaluations;

/// <summary>The herbarium light: complete, buildable on paper, and all its parts where they belong.</summary>
public class HerbariumTests
{
    private static readonly OpenedLight Opened = OpenedLight.At(
        Path.Combine(Files.DesignFile.DocumentationTests.Root(), "examples", "herbarium", "herbarium.toml")
    );

    private static readonly LightEvaluation Light = Opened.Prepare().WithBands(128);

    [Fact]
    public void It_has_no_problem_and_no_stop()
    {
        Assert.Empty(Opened.Problems.Select(p => p.ToString()));
        Assert.Empty(Light.Findings.Where(f => f.Severity == Severity.Stop).Select(f => f.Message));
    }

    [Fact]
    public void It_has_sixteen_positions_seven_folded_parts_and_two_sheet_materials()
    {
        Assert.Equal(16, Light.Steps!.Combinations.Count);
        Assert.True(Light.Metal!.Parts.Select(p => p.Path).Distinct().Count() >= 7);
        Assert.Equal(2, Light.Metal.Parts.Select(p => p.Material).Distinct().Count());
    }

    [Fact]
    public void Every_part_and_bought_thing_is_placed_and_its_holes_meet_as_drawn()
    {
        Assert.Empty(Light.FitUp!.Unplaced);
        Assert.All(
            Light.FitUp.Joints.SelectMany(j => j.Holes),
            h => Assert.True(h.MissMm.Value < 1e-6, string.Join(" and ", h.Ids))
        );
    }

    [Fact]
    public void Light_leaves_downward_and_the_fins_stand_up()
    {
        var fit = Light.FitUp!.Placements.ToDictionary(p => p.Id, p => p.Frame);
        Assert.Equal(-1, fit["part.funnel"].Z.Z, 1e-9);
        Assert.Equal(1, fit["sink.main"].Z.Z, 1e-9);
        Assert.Equal(-1, fit["part.frame"].Z.Z, 1e-9);
        Assert.Equal(1, fit["part.tray_lid"].Z.Z, 1e-9);
    }

    [Fact]
    public void No_band_is_closer_than_what_is_guessed_allows()
    {
        // Corner light hangs on a diffuser that is never quite Lambertian, the balance point on boxes that nobody weighed in halves.
        var even = Light.Light!.Evenness;
        Assert.InRange((even.High - even.Low) / even.Value, 0.01, 0.1);
        var forward = Light.FitUp!.BalancePointMm.X;
        Assert.InRange(forward.High - forward.Low, 1, 20);
        var stopped = Light.Heat!.Scenes[2].SinkKPerW;
        Assert.InRange(stopped.High / stopped.Low, 1.3, 3);
    }

    [Fact]
    public void The_emitter_looks_through_the_middle_of_the_funnel()
    {
        var fit = Light.FitUp!.Placements.ToDictionary(p => p.Id, p => p.Frame);
        var emitter = fit["emitter.main"].Out(new Vec3(0.014, 0.014, 0));
        var mouth = fit["part.funnel"].Out(default);
        Assert.Equal(mouth.X, emitter.X, 1e-9);
        Assert.Equal(mouth.Y, emitter.Y, 1e-9);
    }

    [Fact]
    public void All_but_yoke_and_column_clamp_tilt()
    {
        var still = Light.FitUp!.Masses.Where(m => m.Id is "part.yoke" or "item.column_clamp").Sum(m => m.MassKg.Value);
        Assert.Equal(Light.FitUp.TotalMassKg.Value - still, Light.Balance!.Tilts[0].TiltingMassKg.Value, 1e-9);
    }

    [Fact]
    public void Readings_stand_beside_their_predictions_and_offer_two_values_to_take_over()
    {
        Assert.All(Light.Readings!.Rows, r => Assert.NotNull(r.Predicted));
        Assert.Equal(
            ["driver.main.sense.measured", "sink.main.measured"],
            Light.Readings.Takeovers.Select(t => t.Path)
        );
    }
}
