using Lampwright.Light;

namespace Lampwright.References.Light;

/// <summary>Rows L.F of the reference page light, section 2.</summary>
public class FlickerTests
{
    [Fact]
    public void Low_risk_and_no_effect_at_100_hertz() // L.F-1a, IEEE 1789-2015 (published, second-hand)
    {
        Check.Near(Flicker.LowRiskLimit(100), 0.080, 1e-4, "L.F-1a", $"100 Hz");
        Check.Near(Flicker.NoEffectLimit(100), 0.0333, 1e-4, "L.F-1a", $"100 Hz");
    }

    [Theory]
    [InlineData("L.F-2a", RippleForm.Sine, 1, 0.31831)] // integral (derived)
    [InlineData("L.F-2a", RippleForm.Square, 1, 0.50000)]
    [InlineData("L.F-2a", RippleForm.Triangle, 1, 0.25000)]
    [InlineData("L.F-2a", RippleForm.Sine, 0.2, 0.06366)]
    [InlineData("L.F-2b", RippleForm.Square, 0.2, 0.10000)]
    [InlineData("L.F-2b", RippleForm.Triangle, 0.2, 0.05000)]
    public void Flicker_index_of_a_form(string id, RippleForm form, double modulation, double expected) =>
        Check.Near(Flicker.Index(form, modulation), expected, 1e-5, id, $"{form}, m {modulation}");

    [Fact]
    public void Full_wave_rectified_sine() // L.F-3, integral (derived)
    {
        var samples = Enumerable.Range(0, 100000).Select(i => Math.Abs(Math.Sin(Math.PI * i / 100000))).ToArray();
        var (percent, index) = Flicker.OfSamples(samples);
        Check.Near(percent, 1, 1e-5, "L.F-3", $"rectified sine");
        Check.Near(index, 0.210514, 1e-5, "L.F-3", $"rectified sine");
    }

    [Theory]
    [InlineData("L.F-5a", 0.61, 0.390)] // integral (derived)
    [InlineData("L.F-5a", 0.362, 0.638)]
    [InlineData("L.F-5b", 0.193, 0.807)]
    public void Flicker_index_of_pulses(string id, double duty, double expected) =>
        Check.Near(Flicker.IndexOfPulses(duty), expected, 1e-3, id, $"duty {duty}");

    [Theory]
    [InlineData("L.F-6a", 100, 0.2599)] // formula of IEC TR 63158 (derived)
    [InlineData("L.F-6a", 200, 0.3268)]
    [InlineData("L.F-6b", 120, 0.2713)]
    [InlineData("L.F-6b", 1000, 1.4443)]
    public void Just_visible_amplitude(string id, double frequency, double expected) =>
        Check.Near(StroboscopicVisibility.Threshold(frequency), expected, 1e-4, id, $"{frequency} Hz");

    [Theory]
    [InlineData("L.F-7a", RippleForm.Sine, 0.20, 0.7695)] // formula, components to 2000 Hz (derived)
    [InlineData("L.F-7a", RippleForm.Sine, 1.00, 3.8473)]
    [InlineData("L.F-7a", RippleForm.Square, 1.00, 4.9026)]
    [InlineData("L.F-7a", RippleForm.Sine, 0.2158, 0.8302)]
    public void Stroboscopic_visibility(string id, RippleForm form, double modulation, double expected) =>
        Check.Near(
            StroboscopicVisibility.Of(form, modulation, 100),
            expected,
            1e-3,
            id,
            $"{form} {modulation} at 100 Hz"
        );

    [Theory]
    [InlineData("L.F-8a", 0.4, 0.1040)] // formula (derived)
    [InlineData("L.F-8b", 0.9, 0.2339)]
    public void Largest_sine_for_a_visibility(string id, double visibility, double expected) =>
        Check.Near(StroboscopicVisibility.LargestSine(visibility, 100), expected, 1e-4, id, $"SVM {visibility}");

    [Theory]
    [InlineData("L.F-9a", 200, 1.0 / 50, 0)] // formula, numerically confirmed (derived)
    [InlineData("L.F-9a", 200, 1.0 / 60, 0.200)]
    [InlineData("L.F-9a", 25000, 1.0 / 8000, 0.080)]
    public void Pulses_left_by_an_exposure(string id, double frequency, double shutter, double expected) =>
        Check.Near(
            Flicker.ResidualOfPulses(0.5, frequency, shutter),
            expected,
            1e-3,
            id,
            $"{frequency} Hz, {shutter} s"
        );

    [Fact]
    public void Sine_left_by_an_exposure() => // L.F-10a, formula (derived)
        Check.Near(
            Flicker.ShutterResidual(RippleForm.Sine, 0.216, 100, 1.0 / 60),
            0.0357,
            1e-4,
            "L.F-10a",
            $"sine 21.6 %, 100 Hz, 1/60 s"
        );
}
