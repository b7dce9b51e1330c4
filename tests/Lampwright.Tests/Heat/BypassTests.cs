using Lampwright.Heat;
using static Lampwright.Tests.Heat.HeatSamples;

namespace Lampwright.Tests.Heat;

public sealed class BypassTests
{
    private static readonly double Tall = Sink.BaseThicknessM + Sink.FinHeightM;

    private static double Share(double besideM, double overM) =>
        Bypass.Share(Sink, Sink.AcrossM + (2 * besideM), Tall + overM, 294);

    [Fact]
    public void Fins_that_fill_their_duct_leave_no_way_beside_them() => Assert.Equal(0, Share(0, 0));

    [Fact]
    public void More_room_beside_the_fins_takes_more_of_the_air()
    {
        double[] shares = [Share(0, 0.001), Share(0, 0.005), Share(0, 0.012), Share(0.005, 0.012), Share(0.05, 0.1)];
        Assert.Equal(shares.Order(), shares);
        Assert.InRange(shares[0], 1e-6, 0.1);
        Assert.InRange(shares[^1], 0.6, 0.9);
    }

    [Fact]
    public void A_way_like_the_channels_takes_its_share_of_the_area()
    {
        // As high over the tips as the gaps are wide: nearly as one more channel lying across, which loses more at its ends.
        var over = Sink.GapM;
        var free = Sink.AcrossM * over / ((Sink.AcrossM * over) + ((Sink.FinCount - 1) * Sink.GapM * Sink.FinHeightM));
        Assert.InRange(Share(0, over), 0.35 * free, free);
    }

    [Fact]
    public void No_fan_no_fins_and_air_from_the_tips_have_no_bypass()
    {
        Assert.Equal(0, Bypass.Share(Sink with { Fan = null }, 1, 1, 294));
        Assert.Equal(0, Bypass.Share(Sink with { FinCount = 0 }, 1, 1, 294));
        Assert.Equal(0, Bypass.Share(Sink with { Entry = AirEntry.Tips }, 1, 1, 294));
    }

    [Fact]
    public void Air_beside_the_fins_warms_the_sink_and_its_error_widens_it()
    {
        var prepared = SinkModel.Prepare(Sink with { BypassShare = 0.3 });
        double Rise(SinkSpec spec) => prepared.At(spec, 294, true, 40)!.BaseRiseK;
        var nominal = Rise(prepared.Nominal);
        Assert.True(nominal > Rise(Sink));
        Assert.True(Rise(prepared.Nominal with { Factors = new HeatFactors { Bypass = 1.3 } }) > nominal);
        Assert.True(Rise(prepared.Nominal with { Factors = new HeatFactors { Bypass = 0.7 } }) < nominal);
    }

    [Fact]
    public void A_stopped_fan_in_a_housing_has_a_band_of_its_own_and_a_running_one_has_not()
    {
        var prepared = SinkModel.Prepare(Sink with { Housed = true });
        double Rise(bool runs, double factor) =>
            prepared
                .At(prepared.Nominal with { Factors = new HeatFactors { HousedStill = factor } }, 294, runs, 20)!
                .BaseRiseK;
        Assert.True(Rise(false, 0.7) > 1.15 * Rise(false, 1));
        Assert.Equal(Rise(true, 1), Rise(true, 0.7), 1e-9);
    }

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(0.1, 0)]
    [InlineData(double.NaN, 0.1)]
    public void A_duct_without_a_section_is_refused(double across, double height) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Bypass.Share(Sink, across, height, 294));
}
