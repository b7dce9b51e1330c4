using CsCheck;
using Lampwright.Heat;
using static Lampwright.Tests.Heat.HeatSamples;

namespace Lampwright.Tests.Heat;

public sealed class SinkTests
{
    private const string Seed = "0000KxQ3VJh4";
    private static readonly PreparedSink Prepared = SinkModel.Prepare(Sink);

    private static readonly Gen<SinkSpec> AnySink =
        from across in Gen.Double[0.04, 0.2]
        from along in Gen.Double[0.04, 0.2]
        from fins in Gen.Int[0, 25]
        from share in Gen.Double[0.1, 0.8]
        from height in Gen.Double[0.01, 0.06]
        from voltage in Gen.Double[0.3, 1.2]
        from tips in Gen.Bool
        from tilt in Gen.Double[0, Math.PI / 2]
        from housed in Gen.Bool
        select Sink with
        {
            AcrossM = across,
            AlongM = along,
            FinCount = fins,
            FinHeightM = height,
            FinThicknessM = Math.Max(1e-4, across * share / Math.Max(1, fins)),
            Footprints = [new Footprint(across / 2, along / 2, 0.02, 0.02)],
            Fan = Fan with { VoltageRatio = voltage },
            Entry = tips ? AirEntry.Tips : AirEntry.Ends,
            ChannelTiltRad = tilt,
            Housed = housed,
            DraftHeightM = housed ? 0.05 : 0,
            HousingConductanceWPerK = 0.2,
        };

    [Fact]
    public void Energy_balance_closes_on_any_sink() =>
        Law.Holds(
            Gen.Select(AnySink, Gen.Double[1, 200], Gen.Double[250, 320], Gen.Bool),
            Seed,
            120,
            c =>
            {
                var (spec, heat, ambient, runs) = c;
                var result = SinkModel.Prepare(spec).At(spec, ambient, runs, heat);
                Assert.NotNull(result);
                Assert.True(Math.Abs(result.BalanceError) < 1e-6, $"{result.BalanceError} {spec}");
                Assert.True(Math.Abs(result.ConvectedW + result.RadiatedW - heat) < 1e-6 * heat, $"{result} {spec}");
            }
        );

    [Fact]
    public void Curve_follows_the_exact_solution_on_any_sink() =>
        Law.Holds(
            Gen.Select(AnySink, Gen.Double[0.05, 1], Gen.Bool),
            Seed,
            120,
            c =>
            {
                var (spec, share, runs) = c;
                var prepared = SinkModel.Prepare(spec);
                var curve = prepared.Curve(spec, 295, runs);
                var full = prepared.At(spec, 295, runs, 20)!;
                var heat = share * 20 * Math.Min(8, 120 / full.BaseRiseK);
                var exact = prepared.At(spec, 295, runs, heat)!;
                Assert.True(
                    Math.Abs(curve.BaseRiseK(heat) - exact.BaseRiseK) < 0.1 + 3e-3 * exact.BaseRiseK,
                    $"heat {heat} curve {curve.BaseRiseK(heat)} exact {exact.BaseRiseK} {spec}"
                );
                Assert.True(
                    Math.Abs(curve.SourceRiseK(heat) - exact.SourceRiseK[0]) < 0.1 + 3e-3 * exact.SourceRiseK[0],
                    $"heat {heat} curve {curve.SourceRiseK(heat)} exact {exact.SourceRiseK[0]} {spec}"
                );
            }
        );

    [Fact]
    public void Rise_grows_with_heat_on_any_sink() =>
        Law.Holds(
            Gen.Select(AnySink, Gen.Double[0.1, 150], Gen.Double[1.01, 2], Gen.Bool),
            Seed,
            120,
            c =>
            {
                var (spec, heat, more, runs) = c;
                var curve = SinkModel.Prepare(spec).Curve(spec, 295, runs);
                Assert.True(curve.SourceRiseK(heat * more) > curve.SourceRiseK(heat), $"{heat} {more} {spec}");
            }
        );

    [Fact]
    public void Rise_falls_as_the_fan_turns_faster()
    {
        var before = double.PositiveInfinity;
        for (var ratio = 0.0; ratio <= 1.3; ratio += 0.05)
        {
            var spec = Sink with { Fan = Fan with { VoltageRatio = ratio } };
            var rise = Prepared.At(spec, 295, true, 60)!.SourceRiseK[0];
            Assert.True(rise < before * (1 + 1e-9), $"voltage ratio {ratio}: {rise} K after {before} K");
            before = rise;
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(1.2)]
    public void Nothing_jumps_when_the_fan_slows_to_zero(double tilt)
    {
        var stopped = Prepared.At(Sink with { ChannelTiltRad = tilt }, 295, false, 30)!.BaseRiseK;
        double Slow(double ratio) =>
            Prepared
                .At(Sink with { ChannelTiltRad = tilt, Fan = Fan with { VoltageRatio = ratio } }, 295, true, 30)!
                .BaseRiseK;
        Assert.True(Math.Abs(Slow(1e-3) / stopped - 1) < 1e-3, $"{Slow(1e-3)} K against {stopped} K");
        Assert.Equal(stopped, Slow(0), 1e-9 * stopped);
        for (var ratio = 0.002; ratio < 0.5; ratio += 0.002)
        {
            Assert.True(Math.Abs(Slow(ratio + 0.002) / Slow(ratio) - 1) < 0.08, $"jump at voltage ratio {ratio}");
        }
    }

    [Fact]
    public void Rise_doubles_with_heat_where_a_fan_does_the_work()
    {
        var curve = Prepared.Curve(Sink with { Emissivity = 0 }, 295, fanRuns: true);
        Assert.Equal(2, curve.BaseRiseK(60) / curve.BaseRiseK(30), 0.03);
    }

    [Fact]
    public void Stopped_fan_is_far_hotter_than_a_running_one()
    {
        var running = Prepared.At(Sink, 295, true, 40)!;
        var stopped = Prepared.At(Sink, 295, false, 40)!;
        Assert.InRange(running.BaseRiseK, 5, 30);
        Assert.True(stopped.BaseRiseK > 3 * running.BaseRiseK, $"{stopped.BaseRiseK} against {running.BaseRiseK}");
        Assert.Equal(0, stopped.FlowM3PerS);
    }

    [Fact]
    public void Air_takes_up_the_heat_that_it_carries()
    {
        var r = Prepared.At(Sink with { Emissivity = 0 }, 295, true, 40)!;
        var air = Air.At(295, 101325);
        Assert.Equal(40, r.FlowM3PerS * air.Density * air.SpecificHeat * r.AirRiseK, 1e-6);
        Assert.True(r.AirRiseK < r.BaseRiseK);
    }

    [Fact]
    public void Fan_and_path_meet_at_the_same_pressure()
    {
        var r = Prepared.At(Sink, 295, true, 40)!;
        var factor = Math.Pow(10.0 / 12, 2) * Air.At(295, 101325).Density / 1.2;
        var fan = factor * new FanCurve(Fan.Curve).PressurePa(r.FlowM3PerS / (10.0 / 12));
        Assert.Equal(fan, r.PressurePa, 1e-5 * fan);
        Assert.InRange(r.ChannelLossPa, 0, r.PressurePa);
    }

    [Fact]
    public void Two_fans_side_by_side_give_more_flow_than_one()
    {
        double Flow(int count, bool series) =>
            Prepared.At(Sink with { Fan = Fan with { Count = count, InSeries = series } }, 295, true, 40)!.FlowM3PerS;
        Assert.True(Flow(2, series: false) > Flow(1, series: false));
        Assert.True(Flow(2, series: true) > Flow(1, series: true));
    }

    [Fact]
    public void Thin_air_at_altitude_cools_less()
    {
        double Rise(double altitude) =>
            Prepared.At(Sink with { PressurePa = Atmosphere.PressurePa(altitude) }, 295, true, 40)!.BaseRiseK;
        Assert.True(Rise(2500) > 1.05 * Rise(0));
    }

    [Fact]
    public void Upright_channels_beat_level_ones()
    {
        double Rise(double tilt) => Prepared.At(Sink with { ChannelTiltRad = tilt }, 295, false, 15)!.BaseRiseK;
        Assert.True(Rise(0) < Rise(1));
        Assert.True(Rise(1) < Rise(Math.PI / 2));
    }

    [Fact]
    public void Housing_makes_a_stopped_sink_hotter()
    {
        var free = Prepared.At(Sink, 295, false, 15)!.BaseRiseK;
        var housed = Sink with { Housed = true, DraftHeightM = 0.05, HousingConductanceWPerK = 0.3 };
        Assert.True(Prepared.At(housed, 295, false, 15)!.BaseRiseK > free + 1);
        var shut = housed with { AirLosses = [AirLoss.Of("vents", 1, 0)], HousingConductanceWPerK = 0, Emissivity = 0 };
        Assert.Null(Prepared.At(shut, 295, false, 15));
        Assert.True(double.IsFinite(Prepared.Curve(shut, 295, fanRuns: false).SourceRiseK(15)));
    }

    [Fact]
    public void Emitter_off_centre_runs_hotter()
    {
        var off = Sink with { Footprints = [new Footprint(0.016, 0.016, 0.028, 0.028)] };
        var centred = Prepared.At(Sink, 295, true, 40)!;
        var shifted = SinkModel.Prepare(off).At(off, 295, true, 40)!;
        Assert.Equal(centred.BaseRiseK, shifted.BaseRiseK, 1e-9);
        Assert.True(shifted.SourceRiseK[0] > centred.SourceRiseK[0] + 0.5);
        Assert.True(centred.SourcePeakRiseK[0] > centred.SourceRiseK[0]);
    }

    [Fact]
    public void Two_emitters_with_half_the_heat_each_are_cooler_than_one()
    {
        var two = Sink with
        {
            Footprints =
            [
                new Footprint(0.023, 0.046, 0.028, 0.028, 0.5),
                new Footprint(0.069, 0.046, 0.028, 0.028, 0.5),
            ],
        };
        var r = SinkModel.Prepare(two).At(two, 295, true, 40)!;
        Assert.Equal(r.SourceRiseK[0], r.SourceRiseK[1], 1e-6);
        Assert.True(r.SourceRiseK[0] < Prepared.At(Sink, 295, true, 40)!.SourceRiseK[0]);
    }

    [Fact]
    public void Only_the_ratio_of_the_shares_counts()
    {
        SinkSpec Two(double share) =>
            Sink with
            {
                Footprints =
                [
                    new Footprint(0.023, 0.046, 0.028, 0.028, share),
                    new Footprint(0.069, 0.046, 0.028, 0.028, share),
                ],
            };
        var halves = SinkModel.Prepare(Two(0.5)).At(Two(0.5), 295, true, 40)!.SourceRiseK[0];
        Assert.Equal(halves, SinkModel.Prepare(Two(1)).At(Two(1), 295, true, 40)!.SourceRiseK[0], 1e-9);
    }

    [Fact]
    public void Housed_sink_of_which_nothing_more_is_said_still_gets_rid_of_its_heat()
    {
        var free = Prepared.At(Sink, 295, false, 15)!.BaseRiseK;
        var housed = Prepared.At(Sink with { Housed = true }, 295, false, 15)!.BaseRiseK;
        Assert.InRange(housed, free, 4 * free);
    }

    [Fact]
    public void Guess_of_a_housing_is_carried_by_the_inside_film()
    {
        double Rise(double film) =>
            Prepared
                .Curve(
                    Sink with
                    {
                        Housed = true,
                        Factors = new HeatFactors { InsideFilm = film },
                    },
                    295,
                    fanRuns: false
                )
                .SourceRiseK(15);
        Assert.True(Rise(0.7) > Rise(1) && Rise(1) > Rise(1.3));
    }

    [Fact]
    public void Method_factors_move_what_they_name()
    {
        double Rise(HeatFactors f) => Prepared.Curve(Sink with { Factors = f }, 295, fanRuns: true).SourceRiseK(40);
        var nominal = Rise(HeatFactors.Nominal);
        Assert.True(Rise(new HeatFactors { ChannelFilm = 1.1 }) < nominal);
        Assert.True(Rise(new HeatFactors { Friction = 1.2 }) > nominal);
        Assert.True(Rise(new HeatFactors { FanPressure = 1.1 }) < nominal);
        Assert.True(Rise(new HeatFactors { FanSpeed = 0.9 }) > nominal);
        Assert.True(Rise(new HeatFactors { AirOpenings = 1.3 }) > nominal);
        Assert.True(Rise(new HeatFactors { Spreading = 1.1 }) > nominal);
    }

    [Fact]
    public void Factors_stand_in_the_order_of_the_errors()
    {
        double[] values = [.. Enumerable.Range(1, HeatMethods.MethodErrors.Count).Select(i => (double)i)];
        var factors = HeatFactors.From(values);
        for (var i = 0; i < values.Length; i++)
        {
            // heat.channel_film -> ChannelFilm
            var name = string.Concat(
                HeatMethods
                    .MethodErrors[i]
                    .Name["heat.".Length..]
                    .Split('_')
                    .Select(w => char.ToUpperInvariant(w[0]) + w[1..])
            );
            Assert.Equal(values[i], (double)typeof(HeatFactors).GetProperty(name)!.GetValue(factors)!);
        }

        Assert.Throws<ArgumentException>(() => HeatFactors.From([1, 1]));
    }

    [Fact]
    public void Widened_errors_are_doubled_and_no_others()
    {
        var widened = HeatMethods.Widened([HeatMethods.ChannelFilm.Name]);
        Assert.Equal(2 * HeatMethods.ChannelFilm.HalfWidth, widened[0].HalfWidth);
        Assert.Equal(HeatMethods.NaturalChannelFilm.HalfWidth, widened[1].HalfWidth);
    }

    [Fact]
    public void Measured_sink_keeps_its_resistance_with_a_fan_and_softens_without()
    {
        var fan = SinkCurve.Measured(0.5);
        Assert.Equal(10, fan.SourceRiseK(20), 1e-6);
        Assert.Equal(40, fan.SourceRiseK(80), 1e-6);
        var still = SinkCurve.Measured(2, measuredAtW: 20);
        Assert.Equal(40, still.SourceRiseK(20), 0.05);
        Assert.Equal(2 * 10 * Math.Pow(0.5, -0.2), still.SourceRiseK(10), 0.05);
        Assert.Throws<ArgumentOutOfRangeException>(() => SinkCurve.Measured(0));
    }

    [Fact]
    public void A_sink_that_cannot_be_is_refused()
    {
        Assert.False(SinkModel.IsUsable(Sink with { FinCount = 200 }));
        Assert.Throws<ArgumentException>(() => SinkModel.Prepare(Sink with { FinCount = 200 }));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            SinkModel.Prepare(Sink with { AcrossM = double.NaN, FinCount = 0 })
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => Prepared.At(Sink, double.NaN, true, 40));
        Assert.Throws<ArgumentOutOfRangeException>(() => Prepared.At(Sink, 295, true, -1));
    }
}
