using Lampwright.Steps;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md section 2 and light.md section 1.</summary>
public class EmitterRows
{
    private static EmitterSpec K2 =>
        new([new(0.35, 3.30), new(0.70, 3.50), new(1.00, 3.65), new(1.50, 3.85)], VoltageSlopePerK: -2.8e-3);

    private static EmitterSpec Lz1 => new([new(1.0, 3.6, 190), new(1.5, 3.8, 240)], VoltageSlopePerK: -2.8e-3);

    // E.L-1a, published: Lumileds DS60 (10/07) p. 6, tables 4 and 5; tolerance 5 mV.
    [Theory]
    [InlineData(0.35, 3.30)]
    [InlineData(0.70, 3.50)]
    [InlineData(1.00, 3.65)]
    [InlineData(1.50, 3.85)]
    public void Fit_returns_the_makers_points(double amps, double volts)
    {
        var v = EmitterFit.From(K2).Model.VoltageV(amps, 298.15);
        Assert.True(Math.Abs(v - volts) <= 0.005, $"I {amps} A: {v} V, table {volts} V");
    }

    // E.L-1a, published: Rd 0.45 ohm, without the current it belongs to; it must be the curve's own at some printed point's current.
    [Fact]
    public void Printed_dynamic_resistance_lies_on_the_curve()
    {
        var m = EmitterFit.From(K2).Model;
        Assert.InRange(0.45, m.DynamicResistanceOhm(1.50), m.DynamicResistanceOhm(0.70));
    }

    // E.L-1b, derived: straight line through the four points of E.L-1a; tolerance 1e-4.
    [Fact]
    public void Straight_line_through_the_makers_points()
    {
        var line = LeastSquares.Solve(
            [
                [1, 1, 1, 1],
                [0.35, 0.70, 1.00, 1.50],
            ],
            [3.30, 3.50, 3.65, 3.85]
        )!;
        Assert.True(Math.Abs(line[0] - 3.1527) <= 1e-4, $"Vd {line[0]} V, expected 3.1527 V");
        Assert.True(Math.Abs(line[1] - 0.4759) <= 1e-4, $"Rd {line[1]} ohm, expected 0.4759 ohm");
    }

    // E.L-1c, derived: least squares; the same four voltages from a general-purpose circuit simulator.
    [Theory]
    [InlineData("nVt", 0.14901, 1e-4)]
    [InlineData("Is", 1.6844e-10, 1e-12)]
    [InlineData("Rs", 0.29176, 1e-4)]
    public void Fit_is_the_least_squares_one(string what, double expected, double tolerance)
    {
        var m = EmitterFit.From(K2).Model;
        var got = what switch
        {
            "nVt" => m.LogV,
            "Is" => Math.Exp(-m.OffsetV / m.LogV),
            _ => m.SeriesOhm,
        };
        Assert.True(Math.Abs(got - expected) <= tolerance, $"{what}: {got}, expected {expected}");
    }

    // E.L-1c, derived: model minus data, in mV.
    [Theory]
    [InlineData(0, -0.96)]
    [InlineData(1, +4.44)]
    [InlineData(2, -4.89)]
    [InlineData(3, +1.41)]
    public void Residuals_are_those_of_least_squares(int point, double milliVolts)
    {
        var got = 1000 * EmitterFit.From(K2).VoltageResidualsV[point];
        Assert.True(Math.Abs(got - milliVolts) <= 0.1, $"point {point}: {got} mV, expected {milliVolts} mV");
    }

    // E.L-1d, derived: rdyn = nVt/I + Rs.
    [Theory]
    [InlineData(0.70, 0.5046)]
    [InlineData(1.50, 0.3911)]
    public void Dynamic_resistance(double amps, double ohm)
    {
        var got = EmitterFit.From(K2).Model.DynamicResistanceOhm(amps);
        Assert.True(Math.Abs(got - ohm) <= 1e-3, $"I {amps} A: {got} ohm, expected {ohm} ohm");
    }

    // E.L-4, published: Khanna, Fundamentals of Solid-State Lighting, ch. 14, eq. 14.1-14.3.
    [Theory]
    [InlineData(298.15, 3.0, 0.90)]
    [InlineData(398.15, 2.7, 0.81)]
    public void Hot_junction_takes_less_power(double junctionK, double volts, double watts)
    {
        var m = EmitterFit.From(new([new(0.3, 3.0)], VoltageSlopePerK: -3e-3)).Model;
        var v = m.VoltageV(0.3, junctionK);
        Assert.True(Math.Abs(v - volts) < 1e-9, $"Tj {junctionK} K: {v} V, expected {volts} V");
        Assert.True(Math.Abs((v * 0.3) - watts) < 1e-9, $"Tj {junctionK} K: {v * 0.3} W, expected {watts} W");
    }

    // E.L-6, published: Lumileds DS133 p. 5 table 3, DS144 p. 4, DS107 p. 4: white -1.0 to -3.0 mV/K per die of about 3 V,
    // and -19 to -34 mV/K for a 12-die array of 36 V. The default must lie inside.
    [Theory]
    [InlineData(3.0, -3.0, -1.0)]
    [InlineData(36.0, -34, -19)]
    [InlineData(6.0, -4, -2)] // 2835 part of 6 V
    [InlineData(9.0, -6, -3)] // 2835 part of 9 V
    public void Default_slope_is_one_of_the_makers(double volts, double least, double most)
    {
        var slope = 1000 * EmitterFit.From(new([], Rated: new(volts, volts, 1, 100))).Model.SlopeVPerK;
        Assert.True(slope >= least && slope <= most, $"{volts} V: {slope} mV/K, makers {least} to {most}");
    }

    // E.L-7, published: ITECH IT8731 electronic load manual p. 58.
    [Theory]
    [InlineData(36, 1, 28.8, 7.2)]
    public void Stand_in_for_a_rated_emitter(double volts, double amps, double vd, double rd)
    {
        var m = EmitterFit.From(new([], Rated: new(volts, volts, amps))).Model;
        Assert.True(Math.Abs(m.OffsetV - vd) < 1e-12 && Math.Abs(m.SeriesOhm - rd) < 1e-12, $"{m}");
    }

    // L.L-3a, derived from LedEngin LZ1-00NW05 data sheet, tables 6 and 7.
    [Theory]
    [InlineData("ratio", 1.2632, 1e-4)]
    [InlineData("k", 0.5762, 1e-4)]
    public void Flux_in_power_form(string what, double expected, double tolerance)
    {
        var m = EmitterFit.From(Lz1).Model;
        var ratio = m.FluxLm(1.5, 298.15) / m.FluxLm(1.0, 298.15);
        var got = what == "ratio" ? ratio : Math.Log(ratio) / Math.Log(1.5);
        Assert.True(Math.Abs(got - expected) <= tolerance, $"{what}: {got}, expected {expected}");
    }

    // L.L-3b, derived: saturating form with I0 = 1 A.
    [Fact]
    public void Flux_in_saturating_form()
    {
        var m = EmitterFit.From(Lz1).Model;

        // The fit scales by its highest point; referred to 1 A the same curve has s1 = s·(1 A)/I0.
        var s = m.FluxShape / m.FluxRefA;
        Assert.Equal(FluxForm.Saturating, m.FluxForm);
        Assert.True(Math.Abs(s - 0.600) <= 1e-3, $"s {s}, expected 0.600");
    }

    // L.L-3c, derived: efficacy.
    [Theory]
    [InlineData(1.0, 52.78)]
    [InlineData(1.5, 42.11)]
    public void Efficacy_falls_with_current(double amps, double lmPerW)
    {
        var m = EmitterFit.From(Lz1).Model;
        var got = m.FluxLm(amps, 298.15) / (amps * m.VoltageV(amps, 298.15));
        Assert.True(Math.Abs(got - lmPerW) <= 0.01, $"I {amps} A: {got} lm/W, expected {lmPerW}");
    }

    // L.L-5a, published: LG Innotek COB application note rev. 0.3, sec. 2.1.7 p. 14: hot/cold about 0.90.
    // L.L-5b, L.L-5c, derived: T0 over 60 K.
    [Theory]
    [InlineData(0.90, 569)]
    [InlineData(0.88, 469)]
    public void Thermal_roll_off(double factor, double t0)
    {
        var got = 1 / EmitterFit.DecayPerK(new(358.15, factor), 298.15);
        Assert.True(Math.Abs(got - t0) <= 1, $"factor {factor}: T0 {got} K, expected {t0} K");
        Assert.True(Math.Abs(EmitterDefaults.Hot.Factor - 0.90) <= 0.02, $"default {EmitterDefaults.Hot}");
    }
}
