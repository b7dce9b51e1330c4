using CsCheck;
using Lampwright.Light;

namespace Lampwright.Tests.Light;

public class LightMethodsTests
{
    [Fact]
    public void A_lambertian_beam_through_a_rectangle_meets_the_closed_form() =>
        Gen.Select(
                Gen.Double[-0.3, 0.3],
                Gen.Double[0.01, 0.5],
                Gen.Double[-0.3, 0.3],
                Gen.Double[0.01, 0.5],
                Gen.Double[0.05, 2]
            )
            .Sample(
                (x, w, y, h, d) =>
                {
                    // An exponent a hair off 1 takes the integral instead of the closed form.
                    var integral = BeamThroughRectangle.Share(x, x + w, y, y + h, d, 1.00001);
                    var closed = ViewFactors.ElementToRectangle(x, x + w, y, y + h, d);
                    Assert.Equal(closed, integral, 2e-5);
                },
                seed: "0N0XIzNsQ0O2",
                iter: 200
            );

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(4.8)]
    [InlineData(40)]
    public void All_of_a_beam_passes_a_rectangle_without_end(double exponent) =>
        Assert.Equal(1, BeamThroughRectangle.Share(-1e5, 1e5, -1e5, 1e5, 0.1, exponent), 1e-3);

    [Theory]
    [InlineData(60)]
    [InlineData(115)]
    [InlineData(150)]
    public void A_beam_over_the_sphere_is_its_flux(double degrees)
    {
        var m = Emission.BeamExponent(degrees * Math.PI / 180);
        var sum = 0.0;
        var steps = 20000;
        for (var i = 0; i < steps; i++)
        {
            var angle = (i + 0.5) * Math.PI / 2 / steps;
            sum += Emission.RelativeIntensity(m, angle) * 2 * Math.PI * Math.Sin(angle) * Math.PI / 2 / steps;
        }

        Assert.Equal(1, sum * Emission.PeakIntensityPerLumen(m), 1e-5);
        Assert.Equal(0.5, Emission.RelativeIntensity(m, degrees * Math.PI / 360), 1e-12);
    }

    [Fact]
    public void A_rectangle_is_the_sum_of_its_quarters()
    {
        var whole = Illuminance.OfRectangleAt(1, 0.4, 0.2, 0.5, 0.07, -0.03);
        var parts = 0.0;
        foreach (var (x, y) in new[] { (0.1, 0.05), (-0.1, 0.05), (0.1, -0.05), (-0.1, -0.05) })
        {
            parts += Illuminance.OfRectangleAt(1, 0.2, 0.1, 0.5, 0.07 - x, -0.03 - y);
        }

        Assert.Equal(whole, parts, 1e-12);
    }

    [Fact]
    public void Exchange_is_the_same_both_ways_and_grows_with_the_rectangle()
    {
        var there = ViewFactors.CoaxialExchangeM2(0.1, 0.2, 0.3, 0.15, 0.4);
        Assert.Equal(there, ViewFactors.CoaxialExchangeM2(0.3, 0.15, 0.1, 0.2, 0.4), 1e-15);
        Assert.True(there < ViewFactors.CoaxialExchangeM2(0.1, 0.2, 0.31, 0.16, 0.4));
    }

    [Fact]
    public void Four_times_the_lux_is_two_values_more_and_twice_the_aperture()
    {
        Assert.Equal(2, Exposure.ValueAtIso100(4000, 250) - Exposure.ValueAtIso100(1000, 250), 1e-12);
        Assert.Equal(2, Exposure.Aperture(4000, 100, 0.01, 250) / Exposure.Aperture(1000, 100, 0.01, 250), 1e-12);
        Assert.True(double.IsFinite(Exposure.ValueAtIso100(0, 250)));
    }

    [Theory]
    [InlineData(RippleForm.Sine)]
    [InlineData(RippleForm.Square)]
    [InlineData(RippleForm.Triangle)]
    public void An_exposure_leaves_what_averaging_leaves(RippleForm form)
    {
        double Wave(double t)
        {
            var p = t - Math.Floor(t);
            return form switch
            {
                RippleForm.Square => p < 0.5 ? 1 : -1,
                RippleForm.Triangle => 1 - (4 * Math.Abs(p - 0.5)),
                _ => Math.Sin(2 * Math.PI * p),
            };
        }

        foreach (var periods in new[] { 0.3, 0.9, 1.25, 1.6667, 3, 7.4 })
        {
            var worst = 0.0;
            for (var phase = 0; phase < 200; phase++)
            {
                var sum = 0.0;
                for (var i = 0; i < 4000; i++)
                {
                    sum += Wave((phase / 200.0) + ((i + 0.5) * periods / 4000));
                }

                worst = Math.Max(worst, Math.Abs(sum / 4000));
            }

            Assert.Equal(worst * 0.4, Flicker.ShutterResidual(form, 0.4, 100, periods / 100), 1e-3);
        }
    }

    [Fact]
    public void Limits_of_flicker_change_at_their_frequencies()
    {
        Assert.Equal(0.00025 * 89.9, Flicker.LowRiskLimit(89.9), 1e-12);
        Assert.Equal(0.0008 * 90, Flicker.LowRiskLimit(90), 1e-12);
        Assert.Equal(1, Flicker.LowRiskLimit(1250), 1e-12);
        Assert.Equal(double.PositiveInfinity, Flicker.LowRiskLimit(1251));
        Assert.Equal(double.PositiveInfinity, Flicker.NoEffectLimit(3001));
        Assert.Equal(0, StroboscopicVisibility.Of(RippleForm.Square, 1, 2001));
    }

    [Theory]
    [InlineData(2350, 4000)]
    [InlineData(2350.1, 1850)]
    [InlineData(5750, 650)]
    [InlineData(5751, 500)]
    [InlineData(20000, 500)]
    public void Blue_light_table_is_read_by_its_rows(double cct, double lux) =>
        Assert.Equal(lux, BlueLight.ThresholdLux(cct));

    [Fact]
    public void Bad_arguments_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Emission.BeamExponent(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Emission.BeamExponent(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Flicker.Index(RippleForm.Sine, 1.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => Exposure.Aperture(1, 0, 1, 250));
        Assert.Throws<ArgumentOutOfRangeException>(() => Illuminance.OnAxisOfDisc(1, 0.1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Flicker.OfSamples([0, 0, 0]));
    }
}
