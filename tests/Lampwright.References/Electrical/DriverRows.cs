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

    // E.D-10a, E.D-10b, derived: offsets of ST DocID10124 rev. 2 table 5 on a 200 mV sense.
    [Theory]
    [InlineData(0.002, 0.01)]
    [InlineData(0.004, 0.02)]
    [InlineData(0.005, 0.025)]
    public void Offset_becomes_current_error(double offset, double error)
    {
        // A driver whose threshold is off by that much.
        var current = Linear(0.2 + offset).CurrentA(0.2) / Linear(0.2).CurrentA(0.2);
        Assert.True(Math.Abs(current - 1 - error) < 1e-12, $"{offset} V: {current - 1}, expected {error}");
    }
}
