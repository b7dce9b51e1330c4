using Lampwright.Steps;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md section 3.</summary>
public class DriverRows
{
    private static DriverModel Linear(double volts) => new(volts, 0.2, 0, 0.9);

    [Theory]
    [InlineData(0.2, 0.20, 1.000, 0.001)] // E.D-1a, Diodes Inc. DS31992 rev. 8-2 p. 17, published
    [InlineData(0.2, 0.56, 0.357, 0.001)] // E.D-1a
    [InlineData(0.198, 0.56, 0.3536, 0.007)] // E.D-8, MAX16804 data sheet note 3, published
    public void Current_of_a_linear_sense(double volts, double ohm, double amps, double tolerance)
    {
        var got = Linear(volts).CurrentA(ohm);
        Assert.True(Math.Abs(got - amps) <= tolerance, $"{volts} V over {ohm} ohm: {got} A, expected {amps} A");
    }

    [Theory]
    [InlineData(0.35, 0.623)] // E.D-2a, derived from Diodes Inc. DS32165 rev. 5-2 p. 18 eq. 10
    [InlineData(1.0, 0.218)] // E.D-2a
    [InlineData(0.7, 0.311)] // E.D-2b
    public void Sense_resistance_for_a_current(double amps, double ohm)
    {
        var got = Linear(0.218).SenseOhm(amps);
        Assert.True(Math.Abs(got - ohm) <= 0.001, $"{amps} A: {got} ohm, expected {ohm} ohm");
    }

    // Published thresholds that a reading of a board must call plausible: E.D-1a, E.D-2a, E.D-3 (TI SNVS602J p. 10 eq. 2),
    // E.D-6 (TI SNVS574E p. 41), E.D-8, E.D-9a.
    [Theory]
    [InlineData(0.200)]
    [InlineData(0.218)]
    [InlineData(1.24 / 5)]
    [InlineData(0.100)]
    [InlineData(0.198)]
    [InlineData(0.432 * 0.74)]
    public void Published_threshold_is_plausible(double volts) =>
        Assert.Equal(ThresholdLikelihood.Plausible, SenseThreshold.Judge(volts).Likelihood);

    // Common practice, no source: about 2.1 A through 0.18 ohm.
    [Theory]
    [InlineData("R18")]
    public void Two_amps_through_0_18_ohm_is_plausible(string mark)
    {
        var t = SenseThreshold.From(new(2.1, null, null, null, 0.9, new([mark])));
        Assert.Equal(ThresholdLikelihood.Plausible, t.Likelihood);
        Assert.True(Math.Abs(t.VoltageV!.Value - 0.378) < 1e-9, $"{t}");
    }

    // E.D-4, published: TI AN-1954, SNVA391D p. 8; E.D-6, published: TI SNVS574E p. 41.
    [Theory]
    [InlineData("Iavg", 1.02, 0.005)]
    [InlineData("Rext", 248e3, 0.005)]
    [InlineData("high side", 1.0, 1e-9)]
    [InlineData("sense V", 0.100, 1e-9)]
    public void Peak_and_high_side_control(string what, double expected, double relative)
    {
        var average = ControllerFormulas.PeakBuckAverageA(0.248, 0.2, 0.444);
        var got = what switch
        {
            "Iavg" => average,
            "Rext" => ControllerFormulas.ThresholdResistorOhm(average, 0.444, 0.2, 1e-6),
            "high side" => ControllerFormulas.HighSideCurrentA(1.24, 1000, 0.1, 12400),
            _ => ControllerFormulas.HighSideCurrentA(1.24, 1000, 0.1, 12400) * 0.1,
        };
        Assert.True(Math.Abs(got - expected) <= relative * expected, $"{what}: {got}, expected {expected}");
    }

    // E.D-5a, E.D-5b, published: TI AN-1953, SNVA390D p. 7 eq. 18-30; tolerance 0.5 %.
    [Theory]
    [InlineData("duty", 0.902)]
    [InlineData("switch A", 1.35)]
    [InlineData("diode A", 0.147)]
    [InlineData("diode W", 0.110)]
    [InlineData("switch rms A", 1.43)]
    [InlineData("switch W", 0.387)]
    public void Buck_stage(string what, double expected)
    {
        var d = ControllerFormulas.BuckDuty(42, 0.97, 48);
        var rms = ControllerFormulas.BuckSwitchRmsA(1.5, d, 0.308);
        var got = what switch
        {
            "duty" => d,
            "switch A" => d * 1.5,
            "diode A" => (1 - d) * 1.5,
            "diode W" => (1 - d) * 1.5 * 0.75,
            "switch rms A" => rms,
            _ => rms * rms * 0.190,
        };
        Assert.True(Math.Abs(got - expected) <= 0.005 * expected, $"{what}: {got}, expected {expected}");
    }

    // E.D-9a, published: TI SLUSBL5A, CS pin text; E.D-9b, memory: form of the equation.
    [Fact]
    public void Primary_side_sense()
    {
        var efficiency = 1 - 0.05 - 0.035 - 0.005;
        var got = ControllerFormulas.PrimarySenseOhm(0.432 * 0.74, 15, 2.1, efficiency);
        Assert.True(Math.Abs((0.432 * 0.74) - 0.3197) <= 1e-4);
        Assert.True(Math.Abs(got - 1.089) <= 1e-3, $"{got} ohm, expected 1.089 ohm");
    }

    // E.D-10a, E.D-10b, derived: offsets of ST DocID10124 rev. 2 table 5 on a 200 mV sense.
    [Theory]
    [InlineData(0.002, 0.01)]
    [InlineData(0.004, 0.02)]
    [InlineData(0.005, 0.025)]
    public void Offset_becomes_current_error(double offset, double error)
    {
        var got = ControllerFormulas.OffsetError(offset, 0.2);
        Assert.True(Math.Abs(got - error) < 1e-12, $"{offset} V: {got}, expected {error}");

        // The same as a driver whose threshold is off by that much.
        var current = Linear(0.2 + offset).CurrentA(0.2) / Linear(0.2).CurrentA(0.2);
        Assert.True(Math.Abs(current - 1 - error) < 1e-12, $"{offset} V: {current - 1}, expected {error}");
    }

    // E.D-11a, derived: I0 1 A, Rd 7.2 ohm, 50 Hz mains; Vpp = 2·m·Rd·I0; tolerance 1e-3.
    [Theory]
    [InlineData(1000e-6, 0.2158, 3.108, 0.7842, 1.2158)]
    [InlineData(2200e-6, 0.1000, 1.440, 0.9000, 1.1000)]
    public void Ripple_of_the_mains_in_closed_form(double farad, double depth, double volts, double least, double most)
    {
        var m = ControllerFormulas.LineRippleDepth(50, 7.2, farad);
        foreach (
            var (got, expected) in ((double, double)[])[(m, depth), (2 * m * 7.2, volts), (1 - m, least), (1 + m, most)]
        )
        {
            Assert.True(Math.Abs(got - expected) <= 1e-3, $"{farad} F: {got}, expected {expected}");
        }
    }
}
