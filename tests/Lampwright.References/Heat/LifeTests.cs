using Lampwright.Heat.Life;

namespace Lampwright.References.Heat;

/// <summary>Lumen maintenance: rows L.T and L.LD of the projection method. All derived from its formulas.</summary>
public sealed class LifeTests
{
    private static MaintenanceFit Fit(double b, double alpha, double caseC = 55, double duration = 6000) =>
        new(b, alpha, caseC + 273.15, duration, 20);

    [Theory]
    [InlineData("L.T-1", 1, 2e-6, 0.7, 178337)]
    [InlineData("L.T-1", 1, 2e-6, 0.9, 52680)]
    [InlineData("L.T-2a", 1.02, 4.5e-6, 0.7, 83662)]
    [InlineData("L.T-2b", 0.985, 1.1e-5, 0.7, 31051)]
    public void Hours_to_a_share(string id, double b, double alpha, double share, double hours) =>
        Check.Absolute(
            id,
            hours,
            LumenMaintenance.HoursTo(Fit(b, alpha), share),
            1,
            $"B {b}, alpha {alpha}, share {share}"
        );

    [Fact]
    public void Between_two_temperatures()
    {
        const string Inputs = "55 degC 2e-6, 1.01; 85 degC 4e-6, 0.99; wanted 70 degC";
        var fit = LumenMaintenance.Between(Fit(1.01, 2e-6), Fit(0.99, 4e-6, 85), 343.15)!;
        Check.Relative("L.T-3", 2.8716e-6, fit.AlphaPerH, 5e-4, Inputs);
        Check.Relative("L.T-3", 0.99995, fit.B, 5e-4, Inputs);
        Check.Relative("L.T-3", 124190, LumenMaintenance.HoursTo(fit, 0.7), 5e-4, Inputs);
        var kelvin = Math.Log(2e-6 / 4e-6) / ((1 / 358.15) - (1 / 328.15));
        Check.Relative("L.T-3", 2715.45, kelvin, 5e-4, Inputs);
        Check.Relative("L.T-3", 0.2340, kelvin * LumenMaintenance.BoltzmannEvPerK, 5e-4, Inputs);
    }

    // The readings lie on the curve, so that the fit must find it again and the told hours must stop at the cap.
    [Fact]
    public void Told_hours_stop_at_the_cap()
    {
        double[] hours = [0, 1000, 2000, 3000, 4000, 5000, 6000];
        var test = new MaintenanceTest(328.15, hours, [.. hours.Select(h => 1.01 * Math.Exp(-2e-6 * h))], 20);
        var claim = LumenMaintenance.Claim([test], 328.15);
        Check.Absolute("L.LD-08", 183313, claim.CalculatedH, 1, "B 1.01, alpha 2e-6, D 6000 h");
        Assert.Equal(36000, claim.ReportedH);
        Assert.True(claim.IsCapped);
    }
}
