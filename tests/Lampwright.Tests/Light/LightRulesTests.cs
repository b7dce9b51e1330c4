using Lampwright.Findings;
using Lampwright.Light;

namespace Lampwright.Tests.Light;

/// <summary>Each rule is raised just outside its limit and silent just inside.</summary>
public class LightRulesTests
{
    private static readonly double Degree = Math.PI / 180;

    private static readonly LightSpec Calm = new(
        new EmitterFace(0.022, 0.022, true, 115 * Degree),
        new FunnelSpec(0.044, 0.044, 0.28, 0.18, 0.15, 0.62, 0.15),
        new DiffuserSpec(0.28, 0.18, 0.62, 0.30),
        0.5,
        new SubjectSpec(2, 0.3, 0.45, 100, 1.0 / 60),
        4000,
        new LightPaths()
    );

    private static bool Raises(
        Rule rule,
        LightSpec spec,
        double lumen = 100,
        RippleSpec? ripple = null,
        LightLimits? limits = null
    )
    {
        var model = LightModel.Prepare(spec);
        var findings = LightFindings.Of(model, model.Result(spec.Nominal), lumen, ripple, limits);
        Assert.All(
            findings,
            f => Assert.False(string.IsNullOrWhiteSpace(f.Message) || string.IsNullOrWhiteSpace(f.Path))
        );
        return findings.Any(f => f.Rule == rule);
    }

    private static LightSpec At(double distance) => Calm with { Subject = Calm.Subject with { DistanceM = distance } };

    [Fact]
    public void A_calm_light_raises_nothing()
    {
        var model = LightModel.Prepare(Calm);
        Assert.Empty(LightFindings.Of(model, model.Result(Calm.Nominal), 100, null));
    }

    [Fact]
    public void Subject_near()
    {
        var far = 5 * Math.Sqrt((0.28 * 0.28) + (0.18 * 0.18));
        Assert.True(Raises(LightRules.SubjectNear, At(far - 0.001)));
        Assert.False(Raises(LightRules.SubjectNear, At(far + 0.001)));
    }

    [Fact]
    public void Flicker_above_the_low_risk_line()
    {
        Assert.True(Raises(LightRules.FlickerRisk, Calm, ripple: new RippleSpec(0.0801, 100)));
        Assert.False(Raises(LightRules.FlickerRisk, Calm, ripple: new RippleSpec(0.0799, 100)));
    }

    [Fact]
    public void Bands_at_the_exposure_time()
    {
        // 1/60 s of a 100 Hz sine leaves sinc(5/3) = 0.1654 of it.
        var limit = 0.03 / Flicker.ShutterResidual(RippleForm.Sine, 1, 100, 1.0 / 60);
        Assert.True(Raises(LightRules.ShutterBands, Calm, ripple: new RippleSpec(limit * 1.001, 100)));
        Assert.False(Raises(LightRules.ShutterBands, Calm, ripple: new RippleSpec(limit * 0.999, 100)));
        var whole = Calm with { Subject = Calm.Subject with { ShutterS = 0.02 } };
        Assert.False(Raises(LightRules.ShutterBands, whole, ripple: new RippleSpec(1, 100)));
    }

    [Fact]
    public void Stroboscopic_visibility()
    {
        var limit = StroboscopicVisibility.LargestSine(0.4, 100);
        Assert.True(Raises(LightRules.Stroboscopic, Calm, ripple: new RippleSpec(limit * 1.001, 100)));
        Assert.False(Raises(LightRules.Stroboscopic, Calm, ripple: new RippleSpec(limit * 0.999, 100)));
    }

    [Fact]
    public void Looking_in_from_near_and_at_work()
    {
        var perLumen = LightModel.Prepare(Calm).Result(Calm.Nominal).AxisCdPerLm;
        double Lumen(double care) => care * care * BlueLight.ThresholdLux(4000) / perLumen;
        Assert.True(Raises(LightRules.LookingIn, Calm, Lumen(0.201)));
        Assert.False(Raises(LightRules.LookingIn, Calm, Lumen(0.199)));
        Assert.True(Raises(LightRules.LookingInAtWork, Calm, Lumen(2.001)));
        Assert.False(Raises(LightRules.LookingInAtWork, Calm, Lumen(1.999)));
        Assert.False(Raises(LightRules.LookingIn, Calm with { CctK = 0 }, Lumen(1)));
    }

    [Fact]
    public void Uneven_subject()
    {
        var evenness = LightModel.Prepare(Calm).Result(Calm.Nominal).Evenness;
        Assert.True(Raises(LightRules.Uneven, Calm, limits: new LightLimits(EvennessLeast: evenness + 1e-6)));
        Assert.False(Raises(LightRules.Uneven, Calm, limits: new LightLimits(EvennessLeast: evenness - 1e-6)));
    }

    [Fact]
    public void More_light_than_falls_on_a_surface()
    {
        LightSpec Panel(double pass, double give) => Calm with { Diffuser = new DiffuserSpec(0.28, 0.18, pass, give) };
        LightSpec Wall(double reflectance, double mirrored) =>
            Calm with
            {
                Funnel = Calm.Funnel! with { WallReflectance = reflectance, SpecularShare = mirrored },
            };
        Assert.True(Raises(LightRules.MoreThanAll, Panel(0.7, 0.301)));
        Assert.False(Raises(LightRules.MoreThanAll, Panel(0.7, 0.3)));
        Assert.True(Raises(LightRules.MoreThanAll, Wall(1.01, 0)));
        Assert.True(Raises(LightRules.MoreThanAll, Wall(0.6, -0.01)));
        Assert.False(Raises(LightRules.MoreThanAll, Wall(1, 1)));
    }

    [Fact]
    public void Opening_that_covers_the_emitter()
    {
        LightSpec Opening(double size) =>
            Calm with
            {
                Funnel = Calm.Funnel! with { SmallWidthM = size, SmallHeightM = size },
            };
        Assert.True(Raises(LightRules.OpeningCoversEmitter, Opening(0.0219)));
        Assert.False(Raises(LightRules.OpeningCoversEmitter, Opening(0.0221)));
    }

    [Fact]
    public void Diffuser_that_leaves_a_gap()
    {
        Assert.True(
            Raises(LightRules.DiffuserTooSmall, Calm with { Diffuser = new DiffuserSpec(0.279, 0.18, 0.62, 0.30) })
        );
        Assert.False(
            Raises(LightRules.DiffuserTooSmall, Calm with { Diffuser = new DiffuserSpec(0.281, 0.18, 0.62, 0.30) })
        );
    }

    [Fact]
    public void Diffuser_alone()
    {
        Assert.True(Raises(LightRules.DiffuserAlone, Calm with { Funnel = null }));
        Assert.False(Raises(LightRules.DiffuserAlone, Calm));
    }

    [Fact]
    public void Open_mirror()
    {
        LightSpec Open(double mirrored) =>
            Calm with
            {
                Diffuser = null,
                Funnel = Calm.Funnel! with { SpecularShare = mirrored },
            };
        Assert.True(Raises(LightRules.OpenMirror, Open(0.31)));
        Assert.False(Raises(LightRules.OpenMirror, Open(0.29)));
    }

    [Fact]
    public void Colour_outside_the_table()
    {
        Assert.True(Raises(LightRules.ColourOutsideTable, Calm with { CctK = 8001 }));
        Assert.False(Raises(LightRules.ColourOutsideTable, Calm with { CctK = 8000 }));
    }

    [Fact]
    public void Narrow_funnel()
    {
        LightSpec Mouth(double height) => Calm with { Funnel = Calm.Funnel! with { LargeHeightM = height } };
        Assert.True(Raises(LightRules.FunnelNarrow, Mouth(0.28 / 4.01)));
        Assert.False(Raises(LightRules.FunnelNarrow, Mouth(0.28 / 3.99)));
    }

    [Fact]
    public void Every_rule_is_numbered_once() =>
        Assert.Equal(
            Enumerable.Range(1, LightRules.All.Count).Select(i => $"LIT{i:000}"),
            LightRules.All.Select(r => r.Code)
        );
}
