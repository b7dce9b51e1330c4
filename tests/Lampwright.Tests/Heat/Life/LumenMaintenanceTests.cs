using Lampwright.Heat.Life;

namespace Lampwright.Tests.Heat.Life;

public sealed class LumenMaintenanceTests
{
    private static MaintenanceTest Test(double caseC, double last = 6000, int samples = 20, double alpha = 3e-6) =>
        new(
            caseC + 273.15,
            [.. Enumerable.Range(0, (int)(last / 1000) + 1).Select(i => 1000.0 * i)],
            [.. Enumerable.Range(0, (int)(last / 1000) + 1).Select(i => 1.01 * Math.Exp(-alpha * 1000 * i))],
            samples
        );

    [Theory]
    [InlineData(6000, true)]
    [InlineData(5000, false)]
    public void A_test_must_be_long_enough(double last, bool claimed) =>
        Assert.Equal(claimed, LumenMaintenance.Claim([Test(85, last)], 350).ReportedH is not null);

    [Theory]
    [InlineData(10, true)]
    [InlineData(9, false)]
    public void A_test_must_have_units_enough(int samples, bool claimed) =>
        Assert.Equal(claimed, LumenMaintenance.Claim([Test(85, samples: samples)], 350).ReportedH is not null);

    [Theory]
    [InlineData(85, true)]
    [InlineData(85.1, false)]
    public void Nothing_is_claimed_hotter_than_the_hottest_test(double caseC, bool claimed) =>
        Assert.Equal(
            claimed,
            LumenMaintenance.Claim([Test(55), Test(85, alpha: 6e-6)], caseC + 273.15).ReportedH is not null
        );

    [Fact]
    public void Cooler_than_the_coolest_test_counts_as_that_test()
    {
        var claim = LumenMaintenance.Claim([Test(55)], 300);
        Assert.Equal(3e-6, claim.Fit!.AlphaPerH, 1e-10);
        Assert.Equal(36000, claim.CapH);
        Assert.Equal(33000, LumenMaintenance.Claim([Test(55, samples: 12)], 300).CapH);
    }

    [Fact]
    public void Between_two_tests_the_decay_lies_between_theirs()
    {
        var claim = LumenMaintenance.Claim([Test(55), Test(85, alpha: 6e-6)], 343.15);
        Assert.InRange(claim.Fit!.AlphaPerH, 3e-6, 6e-6);
        Assert.Null(claim.ShareAt(claim.CapH + 1));
        Assert.True(claim.ShareAt(20000) < claim.ShareAt(10000));
    }

    [Fact]
    public void Flux_that_grows_is_told_as_the_cap()
    {
        var claim = LumenMaintenance.Claim([Test(55, alpha: -1e-6)], 320);
        Assert.True(claim.IsCapped);
        Assert.Equal(36000, claim.ReportedH);
    }

    [Fact]
    public void Long_tests_count_their_last_half()
    {
        double[] hours = [.. Enumerable.Range(0, 13).Select(i => 1000.0 * i)];
        double Share(double h) => h <= 5900 ? 1 : Math.Exp(-1e-5 * (h - 5900));
        var fit = LumenMaintenance.Fit(new(328, hours, [.. hours.Select(Share)], 20))!;
        Assert.Equal(1e-5, fit.AlphaPerH, 1e-7);
    }
}
