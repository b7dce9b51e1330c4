using CsCheck;
using Lampwright.Steps;

namespace Lampwright.Tests.Steps;

public class EmitterTests
{
    private static readonly EmitterSpec Three = new(
        [new(0.45, 33.6, 2300), new(0.90, 34.9, 4350), new(1.80, 37.2, 7900)],
        VoltageSlopePerK: -18e-3,
        FluxHot: new(358.15, 0.90)
    );

    [Fact]
    public void Three_points_are_met_exactly_in_voltage()
    {
        var fit = EmitterFit.From(Three);
        Assert.Equal(FitKind.Points, fit.Kind);
        Assert.All(fit.VoltageResidualsV, r => Assert.True(Math.Abs(r) < 1e-9, $"{r} V"));
        Assert.All(fit.FluxResiduals, r => Assert.True(Math.Abs(r) < 0.01, $"{r}"));
        Assert.Empty(fit.Findings);
    }

    [Fact]
    public void Hot_factor_and_slope_hold_where_they_were_given()
    {
        var m = EmitterFit.From(Three).Model;
        Assert.Equal(0.90, m.FluxLm(0.9, 358.15) / m.FluxLm(0.9, 298.15), 9);
        Assert.Equal(-18e-3 * 60, m.VoltageV(0.9, 358.15) - m.VoltageV(0.9, 298.15), 9);
    }

    [Fact]
    public void Points_made_from_a_model_give_the_model_back()
    {
        Gen.Select(Gen.Double[0.02, 1], Gen.Double[2, 40], Gen.Double[0.05, 5], Gen.Double[0, 1])
            .Sample(
                (log, offset, ohm, bend) =>
                {
                    double V(double i) => (log * Math.Log(i)) + offset + (ohm * i);
                    double F(double i) => 4000 * i / (1 + (bend * i));
                    var points = new[] { 0.3, 0.5, 0.9, 1.4, 2.0 }
                        .Where(i => V(i) > 0)
                        .Select(i => new EmitterPoint(i, V(i), F(i)))
                        .ToArray();
                    if (points.Length < 3)
                    {
                        return;
                    }

                    var m = EmitterFit.From(new(points)).Model;
                    Assert.True(Math.Abs(m.LogV - log) < 1e-6, $"{log} {offset} {ohm}: {m}");
                    Assert.True(Math.Abs(m.SeriesOhm - ohm) < 1e-6, $"{log} {offset} {ohm}: {m}");
                    Assert.True(Math.Abs((m.FluxLm(1, 298.15) / F(1)) - 1) < 1e-6, $"{bend}: {m}");
                },
                seed: "0000lampst01"
            );
    }

    [Fact]
    public void Two_points_lie_between_chord_and_logarithm()
    {
        var fit = EmitterFit.From(new([new(0.35, 3.30), new(1.50, 3.85)]));
        var v = fit.Model.VoltageV(1.0, 298.15);
        var chord = 3.30 + (0.55 * 0.65 / 1.15);
        var log = 3.30 + (0.55 * Math.Log(1 / 0.35) / Math.Log(1.5 / 0.35));
        Assert.InRange(v, chord, log);
        Assert.Equal(3.30, fit.Model.VoltageV(0.35, 298.15), 9);
        Assert.Equal(3.85, fit.Model.VoltageV(1.50, 298.15), 9);
        Assert.Equal(FitKind.TwoPoints, fit.Kind);
    }

    [Fact]
    public void Fewer_points_mean_wider_errors()
    {
        var three = EmitterFit.From(Three).MethodErrors;
        var two = EmitterFit.From(Three with { Points = [Three.Points[0], Three.Points[2]] }).MethodErrors;
        var one = EmitterFit.From(Three with { Points = [Three.Points[1]] }).MethodErrors;
        Assert.Equal(EmitterFactors.Count, three.Count);
        Assert.True(three[1].HalfWidth < two[1].HalfWidth && two[1].HalfWidth < one[1].HalfWidth);
        Assert.True(three[4].HalfWidth < two[4].HalfWidth && two[4].HalfWidth < one[4].HalfWidth);
        Assert.Equal(three.Select(e => e.Name), one.Select(e => e.Name));
    }

    [Fact]
    public void Rated_range_becomes_the_width()
    {
        var fit = EmitterFit.From(new([], Rated: new(30, 36, 1, 4000)));
        Assert.Equal(33, fit.Model.VoltageV(1, 298.15), 9);
        Assert.Equal(0.9 * 3 / 33, fit.MethodErrors[0].HalfWidth, 9);
    }

    [Fact]
    public void Factors_of_one_change_nothing_and_each_turns_its_own_quantity()
    {
        var m = EmitterFit.From(Three).Model;
        Assert.Equal(m.VoltageV(0.7, 330), m.With(EmitterFactors.Nominal).VoltageV(0.7, 330), 12);
        Assert.Equal(m.FluxLm(0.7, 330), m.With(EmitterFactors.Nominal).FluxLm(0.7, 330), 9);
        var n = EmitterFactors.Nominal;
        Assert.Equal(1.02 * m.VoltageV(0.7, 298.15), m.With(n with { Voltage = 1.02 }).VoltageV(0.7, 298.15), 9);
        Assert.Equal(m.VoltageV(1.8, 298.15), m.With(n with { Dynamic = 1.3 }).VoltageV(1.8, 298.15), 9);
        Assert.Equal(1.3 * m.DynamicResistanceOhm(0.9), m.With(n with { Dynamic = 1.3 }).DynamicResistanceOhm(0.9), 9);
        Assert.Equal(1.1 * m.FluxLm(0.7, 330), m.With(n with { Flux = 1.1 }).FluxLm(0.7, 330), 9);
        Assert.Equal(m.FluxLm(1.8, 298.15), m.With(n with { Droop = 1.5, Hot = 2 }).FluxLm(1.8, 298.15), 9);
        Assert.Equal(m.VoltageV(0.7, 298.15) + 0.5, m.With(n with { OffsetV = 0.5 }).VoltageV(0.7, 298.15), 9);
    }

    [Fact]
    public void Error_grows_beyond_the_points_only()
    {
        var m = EmitterFit.From(Three).Model;
        var w = m.With(EmitterFactors.Nominal with { VoltageBeyond = 1.02, FluxBeyond = 0.94 });
        Assert.Equal(m.VoltageV(0.45, 298.15), w.VoltageV(0.45, 298.15), 9);
        Assert.Equal(1.02, w.VoltageV(0.45 / Math.E, 298.15) / m.VoltageV(0.45 / Math.E, 298.15), 9);
        Assert.Equal(0.94, w.FluxLm(0.45 / Math.E, 298.15) / m.FluxLm(0.45 / Math.E, 298.15), 9);
    }

    [Theory]
    [InlineData(FluxForm.Saturating, 0.3)]
    [InlineData(FluxForm.Power, 0.7)]
    public void Current_for_flux_is_the_inverse(FluxForm form, double shape)
    {
        var m = EmitterFit.From(Three).Model with { FluxForm = form, FluxShape = shape };
        foreach (var i in new[] { 0.05, 0.5, 1.9 })
        {
            Assert.Equal(i, m.CurrentForFlux(m.FluxLm(i, 340), 340)!.Value, 9);
        }

        Assert.Equal(0, m.CurrentForFlux(0, 340));
    }

    [Fact]
    public void Flux_that_saturation_never_reaches_has_no_current() =>
        Assert.Null(EmitterFit.From(Three).Model.CurrentForFlux(1e9, 298.15));

    [Theory]
    [InlineData(34.0, 35.0, 37.0)] // bends upward
    [InlineData(36.0, 35.0, 34.0)] // falls
    [InlineData(33.0, 35.0, 35.05)] // steeper than a logarithm
    public void Unphysical_points_are_held_to_physics_and_told(double a, double b, double c)
    {
        var fit = EmitterFit.From(new([new(0.5, a, 100), new(1.0, b, 190), new(1.5, c, 270)]));
        Assert.True(fit.Model.LogV >= 0 && fit.Model.SeriesOhm >= 0, $"{fit.Model}");
        Assert.Contains(fit.Findings, f => f.Rule == StepsRules.UnphysicalPoints);
    }

    [Theory]
    [InlineData(100, 210, 330)] // faster than the current
    [InlineData(100, 90, 80)] // falls
    public void Unphysical_flux_is_told(double a, double b, double c)
    {
        var fit = EmitterFit.From(new([new(0.5, 34, a), new(1.0, 35, b), new(1.5, 35.7, c)]));
        Assert.Contains(fit.Findings, f => f.Rule == StepsRules.UnphysicalPoints);
        Assert.True(double.IsFinite(fit.Model.FluxLm(0.2, 300)) && fit.Model.FluxLm(0.2, 300) >= 0);
    }

    [Fact]
    public void Unusable_points_are_left_out_and_told()
    {
        var fit = EmitterFit.From(Three with { Points = [.. Three.Points, new(0, 30), new(1, double.NaN)] });
        Assert.Equal(2, fit.Findings.Count(f => f.Rule == StepsRules.UnphysicalPoints));
        Assert.Equal(EmitterFit.From(Three).Model, fit.Model);
    }

    [Fact]
    public void Any_current_and_temperature_give_numbers()
    {
        var m = EmitterFit.From(Three).Model;
        foreach (var i in new[] { double.NegativeInfinity, -1, 0, 1e-12, 1, 1e6 })
        foreach (var t in new[] { 0.0, 300, 1e5 })
        {
            Assert.True(double.IsFinite(m.VoltageV(i, t)) && m.VoltageV(i, t) >= 0, $"{i} A {t} K");
            Assert.True(double.IsFinite(m.FluxLm(i, t)) && m.FluxLm(i, t) >= 0, $"{i} A {t} K");
        }
    }

    [Fact]
    public void Nothing_known_is_the_callers_bug() =>
        Assert.Throws<ArgumentException>(() => EmitterFit.From(new EmitterSpec([])));
}
