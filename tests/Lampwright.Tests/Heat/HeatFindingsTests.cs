using System.Globalization;
using Lampwright.Findings;
using Lampwright.Heat;
using static Lampwright.Tests.Heat.HeatSamples;

namespace Lampwright.Tests.Heat;

public sealed class HeatFindingsTests
{
    private static bool Raises(SinkSpec spec, Rule rule) =>
        HeatFindings.Sink(spec, "sink.main", "fan.main").Any(f => f.Rule == rule);

    private static SinkSpec WithCurve(params FanPoint[] points) => Sink with { Fan = Fan with { Curve = points } };

    [Fact]
    public void A_sound_sink_raises_nothing() => Assert.Empty(HeatFindings.Sink(Sink, "sink.main", "fan.main"));

    [Fact]
    public void Junction_over_its_limit_stops_and_at_it_does_not()
    {
        Assert.Equal(HeatRules.JunctionTooHot, HeatFindings.Junction(393.16, 393.15, "p", "hot", "1111")!.Rule);
        Assert.Equal(HeatRules.JunctionMarginSmall, HeatFindings.Junction(393.15, 393.15, "p", "hot", "1111")!.Rule);
    }

    [Fact]
    public void Small_margin_warns_and_ten_kelvin_do_not()
    {
        Assert.Equal(HeatRules.JunctionMarginSmall, HeatFindings.Junction(390.01, 400, "p", "hot", "1111")!.Rule);
        Assert.Null(HeatFindings.Junction(390, 400, "p", "hot", "1111"));
    }

    [Fact]
    public void Surface_over_its_touch_limit_warns()
    {
        // metal for 10 s: 60 °C
        Assert.Equal(HeatRules.SurfaceTooHot, HeatFindings.Surface(333.16, TouchMaterial.Metal, 10, "p", "hot")!.Rule);
        Assert.Null(HeatFindings.Surface(333.14, TouchMaterial.Metal, 10, "p", "hot"));
        Assert.Null(HeatFindings.Surface(333.16, TouchMaterial.Plastic, 10, "p", "hot"));
    }

    [Fact]
    public void Handle_over_the_burn_threshold_stops_and_protects_people()
    {
        // metal for a minute: 51 °C
        var finding = HeatFindings.Handle(324.16, TouchMaterial.Metal, "p", "hot")!;
        Assert.Equal(HeatRules.HandleBurns, finding.Rule);
        Assert.True(finding.Rule is { ProtectsPeople: true, Severity: Severity.Stop });
        Assert.Null(HeatFindings.Handle(324.14, TouchMaterial.Metal, "p", "hot"));
    }

    [Theory]
    [InlineData(0.1013, true)]
    [InlineData(0.1011, false)]
    [InlineData(0.0827, true)]
    [InlineData(0.0829, false)]
    public void Fan_of_another_size_is_noted(double box, bool raises) =>
        Assert.Equal(raises, Raises(Sink with { Fan = Fan with { BoxAcrossM = box } }, HeatRules.FanDoesNotCoverSink));

    [Theory]
    [InlineData(0.101, true)]
    [InlineData(0.099, false)]
    public void Air_beside_the_fins_is_noted_from_a_tenth_on(double share, bool raises) =>
        Assert.Equal(raises, Raises(Sink with { BypassShare = share }, HeatRules.AirBesideFins));

    [Fact]
    public void Shut_opening_stops_and_a_small_one_does_not()
    {
        Assert.True(Raises(Sink with { AirLosses = [AirLoss.Of("v", 1, 0)] }, HeatRules.NoAirPath));
        Assert.True(
            Raises(Sink with { AirLosses = [AirLoss.PerforatedSheet("v", 0.01, 0, 0.004)] }, HeatRules.NoAirPath)
        );
        Assert.False(Raises(Sink with { AirLosses = [AirLoss.Of("v", 1, 1e-6)] }, HeatRules.NoAirPath));
    }

    [Fact]
    public void Rising_curve_warns_and_a_level_one_does_not()
    {
        Assert.True(Raises(WithCurve(new(0, 20), new(0.01, 20.1), new(0.02, 0)), HeatRules.FanCurveRises));
        Assert.False(Raises(WithCurve(new(0, 20), new(0.01, 20), new(0.02, 0)), HeatRules.FanCurveRises));
    }

    [Fact]
    public void Fins_without_a_gap_stop_and_with_a_hair_do_not()
    {
        // 23 fins of 4 mm just fill 92 mm
        Assert.True(Raises(Sink with { FinCount = 23, FinThicknessM = 0.004 }, HeatRules.FinsDoNotFit));
        Assert.False(Raises(Sink with { FinCount = 23, FinThicknessM = 0.00398 }, HeatRules.FinsDoNotFit));
    }

    [Fact]
    public void Method_outside_its_range_is_noted_and_inside_is_not()
    {
        var prepared = SinkModel.Prepare(Sink);
        bool Notes(double ratio)
        {
            var spec = Sink with { Fan = Fan with { VoltageRatio = ratio }, AirLosses = [] };
            var r = prepared.At(spec, 295, true, 40)!;
            return HeatFindings
                .Working(r, "sink.main", "fan.main", "normal")
                .Any(f => f.Rule == HeatRules.OutsideRange);
        }

        Assert.False(Notes(1));
        Assert.True(Notes(0.001));
        Assert.True(Notes(100));
    }

    [Fact]
    public void Natural_convection_is_outside_its_range_from_60_degrees_on()
    {
        var prepared = SinkModel.Prepare(Sink);
        bool Notes(double tilt) =>
            prepared.At(Sink with { ChannelTiltRad = tilt }, 295, false, 40)!.OutsideRange.Count > 0;
        Assert.True(Notes(Math.PI / 3 + 0.01));
        Assert.False(Notes(Math.PI / 3 - 0.01));
    }

    [Fact]
    public void Hot_driver_warns_by_its_maker_or_by_custom()
    {
        Assert.Equal(HeatRules.DriverTooHot, HeatFindings.Driver(343.16, null, "p", "hot")!.Rule);
        Assert.Null(HeatFindings.Driver(343.14, null, "p", "hot"));
        Assert.Null(HeatFindings.Driver(343.16, 358.15, "p", "hot"));
    }

    [Fact]
    public void What_has_no_answer_says_so_and_what_has_one_does_not()
    {
        var shut = Sink with
        {
            Housed = true,
            HousingConductanceWPerK = 0,
            Emissivity = 0,
            AirLosses = [AirLoss.Of("v", 1, 0)],
        };
        Assert.Null(SinkModel.Prepare(shut).At(shut, 295, false, 40));
        Assert.Equal(HeatRules.NotSolved, HeatFindings.NotSolved("sink.main", 40, "fan stopped").Rule);
        Assert.NotNull(SinkModel.Prepare(Sink).At(Sink, 295, false, 40));
    }

    [Fact]
    public void Emitter_over_the_edge_warns_and_flush_with_it_does_not()
    {
        SinkSpec At(double x) => Sink with { Footprints = [new Footprint(x, 0.046, 0.028, 0.028)] };
        Assert.True(Raises(At(0.0139), HeatRules.FootprintOverhangs));
        Assert.False(Raises(At(0.014), HeatRules.FootprintOverhangs));
    }

    [Fact]
    public void Slow_fan_warns_and_at_half_voltage_does_not()
    {
        Assert.True(Raises(Sink with { Fan = Fan with { VoltageRatio = 0.49 } }, HeatRules.FanMayNotStart));
        Assert.False(Raises(Sink with { Fan = Fan with { VoltageRatio = 0.50 } }, HeatRules.FanMayNotStart));
        Assert.False(Raises(Sink with { Fan = Fan with { VoltageRatio = 0 } }, HeatRules.FanMayNotStart));
    }

    [Fact]
    public void Fan_in_its_stall_is_noted_and_right_of_it_is_not()
    {
        bool Stalls(double openM2)
        {
            var spec = WithCurve(new(0, 20), new(0.01, 30), new(0.02, 0)) with
            {
                AirLosses = [AirLoss.Of("v", 1, openM2)],
            };
            var r = SinkModel.Prepare(spec).At(spec, 295, true, 40)!;
            return HeatFindings.Working(r, "sink.main", "fan.main", "normal").Any(f => f.Rule == HeatRules.FanInStall);
        }

        Assert.True(Stalls(5e-4));
        Assert.False(Stalls(5e-3));
    }

    [Fact]
    public void Measured_sink_of_one_fan_state_is_noted_for_the_other()
    {
        var finding = HeatFindings.MeasuredForOneFanState("sink.main.measured", "fan stopped", 8);
        Assert.Equal(HeatRules.MeasuredForOneFanState, finding.Rule);
        Assert.Equal("fan stopped", finding.Scene);
    }

    [Fact]
    public void Points_that_make_no_curve_stop()
    {
        Assert.True(Raises(WithCurve(new FanPoint(0, 20)), HeatRules.FanCurveUnusable));
        Assert.True(Raises(WithCurve(new(0, 20), new(0, 10)), HeatRules.FanCurveUnusable));
        Assert.True(Raises(WithCurve(new(0, 20), new(0.01, double.NaN)), HeatRules.FanCurveUnusable));
        Assert.False(Raises(WithCurve(new(0, 20), new(0.01, 0)), HeatRules.FanCurveUnusable));
    }

    [Fact]
    public void Codes_are_in_order_and_used_once()
    {
        Assert.Equal(
            Enumerable.Range(1, HeatRules.All.Count).Select(i => $"HEA{i:000}"),
            HeatRules.All.Select(r => r.Code)
        );
        Assert.All(HeatRules.All, r => Assert.EndsWith(".", r.Remedy, StringComparison.Ordinal));
    }

    [Fact]
    public void Table_of_touch_limits_is_whole()
    {
        Assert.All(TouchLimits.All, r => Assert.True(r.LowK <= r.HighK, $"{r}"));
        Assert.Null(TouchLimits.LimitK(TouchStandard.BurnThreshold, TouchMaterial.Metal, 30000));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            TouchLimits.LimitK(TouchStandard.Equipment, TouchMaterial.Metal, 0)
        );
    }
}
