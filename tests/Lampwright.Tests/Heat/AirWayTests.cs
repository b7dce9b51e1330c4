using CsCheck;
using Lampwright.Heat;
using static Lampwright.Tests.Heat.HeatSamples;

namespace Lampwright.Tests.Heat;

/// <summary>Losses one behind another and side by side, openings for a temperature, fans over their voltage.</summary>
public sealed class AirWayTests
{
    private const string Seed = "0002Pz9hhT41";
    private static readonly Air Room = Air.At(295, 101325);

    [Fact]
    public void Flows_side_by_side_add_at_one_pressure() =>
        Law.Holds(
            Gen.Select(
                Gen.Double[1e3, 1e9],
                Gen.Double[0, 1e8],
                Gen.Double[1e3, 1e9],
                Gen.Double[0, 1e8],
                Gen.Double[1e-5, 0.1]
            ),
            Seed,
            500,
            c =>
            {
                var (ka, ba, kb, bb, flow) = c;
                AirLoss a = new("a", ka, ba),
                    b = new("b", kb, bb);
                var pressure = AirLoss.SideBySide([a, b]).LossPa(flow, Room);

                // By halving: the flow of each at that pressure.
                double FlowOf(AirLoss loss)
                {
                    double low = 0,
                        high = flow * 2;
                    for (var i = 0; i < 200; i++)
                    {
                        var middle = (low + high) / 2;
                        (low, high) = loss.LossPa(middle, Room) < pressure ? (middle, high) : (low, middle);
                    }

                    return low;
                }

                Assert.Equal(flow, FlowOf(a) + FlowOf(b), 1e-9 * flow);
            }
        );

    [Fact]
    public void Two_equal_openings_side_by_side_cost_a_quarter()
    {
        var one = AirLoss.Hole("a", 1e-3);
        Assert.Equal(one.LossPa(0.01, Room) / 4, AirLoss.SideBySide([one, one]).LossPa(0.01, Room), 1e-9);
        var shut = AirLoss.Hole("b", 0);
        Assert.Equal(one.LossPa(0.01, Room), AirLoss.SideBySide([one, shut]).LossPa(0.01, Room));
        Assert.Equal(double.PositiveInfinity, AirLoss.SideBySide([shut, shut]).LossPa(0.01, Room));
        Assert.Equal(0, AirLoss.SideBySide([one, one]).LossPa(0, Room));
    }

    [Fact]
    public void A_second_opening_beside_the_first_cools()
    {
        var one = AirLoss.PerforatedSheet("left", 0.06 * 0.024, 0.4, 0.004);
        double Rise(params AirLoss[] losses)
        {
            var spec = Sink with { AirLosses = losses };
            return SinkModel.Prepare(spec).At(spec, 295, true, 40)!.BaseRiseK;
        }

        Assert.True(Rise(AirLoss.SideBySide([one, one])) < Rise(one));
        Assert.True(Rise(one, one) > Rise(one));
    }

    [Fact]
    public void Losses_add_up_to_the_pressure_of_the_fan_and_the_costliest_comes_first()
    {
        foreach (var spec in new[] { Sink, SinkFormTests.Pins, SinkFormTests.Tower })
        {
            var r = SinkModel.Prepare(spec).At(spec, 295, true, 40)!;
            Assert.Equal(r.PressurePa, r.Losses.Sum(l => l.PressurePa), 1e-6 * r.PressurePa);
            Assert.Equal(r.Losses.OrderByDescending(l => l.PressurePa), r.Losses);
            Assert.Equal(r.ChannelLossPa, r.Losses.Single(l => l.Path.Length == 0).PressurePa, 1e-9);
            Assert.Equal(3, r.Losses.Count);
        }

        Assert.Empty(SinkModel.Prepare(Sink).At(Sink, 295, false, 40)!.Losses);
    }

    [Fact]
    public void An_opening_for_a_temperature_gives_that_temperature()
    {
        var prepared = SinkModel.Prepare(Sink);
        var now = prepared.Curve(Sink, 295, true).BaseRiseK(40);
        foreach (var wanted in new[] { now * 0.97, now, now * 1.5 })
        {
            var opening = OpeningAdvice.For(prepared, 295, 40, wanted)!;
            Assert.True(opening.IsReached, $"{wanted}");
            Assert.Equal(wanted, opening.BaseRiseK, 1e-3 * wanted);
            var spec = Sink with { AirLosses = [.. Sink.AirLosses.Select(l => l.Opened(opening.Times))] };
            Assert.Equal(wanted, SinkModel.Prepare(spec).At(spec, 295, true, 40)!.BaseRiseK, 5e-3 * wanted);
        }

        Assert.Equal(1, OpeningAdvice.For(prepared, 295, 40, now)!.Times, 1e-3);
        Assert.False(OpeningAdvice.For(prepared, 295, 40, now / 3)!.IsReached);
        Assert.Null(OpeningAdvice.For(SinkModel.Prepare(Sink with { Fan = null }), 295, 40, now));
        Assert.Null(
            OpeningAdvice.For(
                SinkModel.Prepare(Sink with { AirLosses = [AirLoss.WireGuard("g", 0.006, 0.8)] }),
                295,
                40,
                now
            )
        );
    }

    [Fact]
    public void What_has_a_size_of_its_own_is_not_opened()
    {
        var guard = AirLoss.WireGuard("guard", 0.006, 0.8);
        Assert.Same(guard, guard.Opened(3));
        var hole = AirLoss.Hole("hole", 1e-3);
        Assert.Equal(hole.LossPa(0.01, Room) / 9, hole.Opened(3).LossPa(0.01, Room), 1e-9);
        Assert.Equal(2e-3, AirLoss.SideBySide([hole, guard]).Opened(2).OpenM2, 1e-12);
    }

    [Fact]
    public void A_filter_takes_what_its_maker_says_and_half_at_half_the_flow()
    {
        var filter = AirLoss.Filter("filter", 20, 40.0 / 3600);
        var air = Air.At(293.15, 101325);
        Assert.Equal(20, filter.LossPa(40.0 / 3600, air), 1e-9);
        Assert.Equal(10, filter.LossPa(20.0 / 3600, air), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => AirLoss.Filter("f", 0, 1));
    }

    [Fact]
    public void The_least_voltage_holds_the_rise_and_a_little_less_does_not()
    {
        var prepared = SinkModel.Prepare(Sink);
        var ladder = FanLadder.Of(prepared, 305, 0.3, 1)!;
        double Rise(double ratio) =>
            prepared.Curve(Sink with { Fan = Fan with { VoltageRatio = ratio } }, 305, fanRuns: true).SourceRiseK(60);
        foreach (var at in new[] { 0.35, 0.5, 0.72, 0.95 })
        {
            var least = ladder.LeastRatio(60, Rise(at))!.Value;
            Assert.Equal(at, least, 0.01 * at);
        }

        Assert.Equal(0.3, ladder.LeastRatio(60, Rise(0.2))!.Value, 1e-9);
        Assert.Null(ladder.LeastRatio(60, 0.9 * Rise(1)));
        Assert.True(ladder.LeastRatio(65, Rise(0.5)) > ladder.LeastRatio(60, Rise(0.5)));
        Assert.Null(FanLadder.Of(SinkModel.Prepare(Sink with { Fan = null }), 305, 0.3, 1));
    }

    [Fact]
    public void A_fan_below_its_start_stands_and_just_above_turns()
    {
        var spec = Sink with { Fan = Fan with { StartRatio = 0.4, VoltageRatio = 0.39 } };
        var prepared = SinkModel.Prepare(spec);
        var still = prepared.At(spec, 295, true, 30)!;
        Assert.Equal(0, still.FlowM3PerS);
        Assert.Equal(prepared.At(spec, 295, false, 30)!.BaseRiseK, still.BaseRiseK, 1e-9);
        Assert.True(
            prepared.At(spec with { Fan = spec.Fan! with { VoltageRatio = 0.41 } }, 295, true, 30)!.FlowM3PerS > 0
        );
        Assert.Contains(HeatFindings.Sink(spec, "sink.a", "fan.a"), f => f.Rule == HeatRules.FanMayNotStart);
        var turning = spec with { Fan = spec.Fan! with { VoltageRatio = 0.41 } };
        Assert.DoesNotContain(HeatFindings.Sink(turning, "sink.a", "fan.a"), f => f.Rule == HeatRules.FanMayNotStart);
    }

    [Fact]
    public void Half_the_speed_is_fifteen_decibels_less()
    {
        Assert.Equal(-15.05, FanLaws.NoiseDifferenceDb(0.5), 0.01);
        Assert.Equal(0, FanLaws.NoiseDifferenceDb(1), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => FanLaws.NoiseDifferenceDb(0));
    }

    [Fact]
    public void Films_and_friction_of_pins_and_ducts_never_jump()
    {
        void Smooth(Func<double, double> of, double from, double to)
        {
            for (var re = from; re < to; re *= 1.001)
            {
                var step = of(re * 1.001) / of(re);
                Assert.True(step is > 0.99 and < 1.01, $"Re {re}: {step}");
            }
        }

        Smooth(re => PinFilm.Nusselt(re, 0.7, false, 1, 5), 1, 1e5);
        Smooth(re => PinFilm.Nusselt(re, 0.7, true, 1, 5), 1, 1e5);
        Smooth(PinFriction.HalfFactor, 1, 1e5);
        Smooth(re => ForcedPlate.Nusselt(re, 0.7), 1e3, 1e7);
        Smooth(
            re => ChannelFriction.LossPa(Room, re * Room.KinematicViscosity / 0.01, 0.006, 0.03, 0.1, 0.2),
            100,
            1e5
        );
    }
}
