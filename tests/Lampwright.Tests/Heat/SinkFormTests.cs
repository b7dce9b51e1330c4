using CsCheck;
using Lampwright.Heat;
using static Lampwright.Tests.Heat.HeatSamples;

namespace Lampwright.Tests.Heat;

/// <summary>The laws that every form of sink keeps: fins, pins in line and staggered, a stack on heat pipes, a plain plate.</summary>
public sealed class SinkFormTests
{
    private const string Seed = "0001QwLm7ab2";

    internal static readonly SinkSpec Pins = Sink with
    {
        FinCount = 0,
        Pins = new PinArray(12, 12, 0.003, 0.03, Staggered: false),
    };

    internal static readonly SinkSpec Tower = Sink with
    {
        FinCount = 0,
        Tower = new HeatPipeTower(6, 0.006, 0.4, 40, 40, 0.092, 0.045, 0.0004, 0.0019),
    };

    internal static readonly SinkSpec Plate = Sink with { FinCount = 0 };

    private static readonly Gen<SinkSpec> AnyForm =
        from form in Gen.Int[0, 4]
        from across in Gen.Double[0.04, 0.2]
        from along in Gen.Double[0.04, 0.2]
        from count in Gen.Int[2, 20]
        from rows in Gen.Int[1, 20]
        from share in Gen.Double[0.1, 0.7]
        from height in Gen.Double[0.005, 0.06]
        from voltage in Gen.Double[0.2, 1.2]
        from tilt in Gen.Double[0, Math.PI / 2]
        from up in Gen.Double[-1, 1]
        from other in Gen.Double[-20, 20]
        select Of(form, across, along, count, rows, share, height) with
        {
            AcrossM = across,
            AlongM = along,
            Footprints =
            [
                new Footprint(across / 3, along / 2, 0.02, 0.02),
                .. other > 0
                    ? [new Footprint(2 * across / 3, along / 3, 0.01, 0.01, 1, other)]
                    : Array.Empty<Footprint>(),
            ],
            Fan = Fan with { VoltageRatio = voltage },
            ChannelTiltRad = tilt,
            FaceUp = up,
        };

    private static SinkSpec Of(
        int form,
        double across,
        double along,
        int count,
        int rows,
        double share,
        double height
    ) =>
        form switch
        {
            0 => Plate,
            1 => Sink with { FinCount = count, FinHeightM = height, FinThicknessM = across * share / count },
            2 or 3 => Plate with
            {
                Pins = new PinArray(
                    count,
                    rows,
                    Math.Min(across / count, along / rows) * share,
                    height,
                    Staggered: form == 3
                ),
            },
            _ => Plate with
            {
                Tower = new HeatPipeTower(4, 0.006, 0.3, null, count, across, along, 0.0005, 0.01 * share),
            },
        };

    [Fact]
    public void Energy_balance_closes_on_any_form() =>
        Law.Holds(
            Gen.Select(AnyForm, Gen.Double[1, 200], Gen.Double[250, 320], Gen.Bool),
            Seed,
            400,
            c =>
            {
                var (spec, heat, ambient, runs) = c;
                var r = SinkModel.Prepare(spec).At(spec, ambient, runs, heat);
                Assert.NotNull(r);
                var all = heat + spec.Footprints.Sum(f => f.OtherW);
                Assert.True(Math.Abs(r.ConvectedW + r.RadiatedW - all) < 1e-6 * all, $"{r} {spec}");
                Assert.Equal(all, r.HeatW, 1e-9 * all);
            }
        );

    [Fact]
    public void Curve_follows_the_exact_solution_on_any_form() =>
        Law.Holds(
            Gen.Select(AnyForm, Gen.Double[0.1, 1], Gen.Bool),
            Seed,
            200,
            c =>
            {
                var (spec, share, runs) = c;
                var prepared = SinkModel.Prepare(spec);
                var full = prepared.At(spec, 295, runs, 20)!;
                var heat = share * 20 * Math.Min(5, 100 / full.BaseRiseK);
                var exact = prepared.At(spec, 295, runs, heat)!;
                if (exact.RootRiseK > 150)
                {
                    return;
                }

                var curve = prepared.Curve(spec, 295, runs);
                Assert.True(
                    Math.Abs(curve.SourceRiseK(heat) - exact.SourceRiseK[0]) < 0.1 + (5e-3 * exact.SourceRiseK[0]),
                    $"heat {heat} curve {curve.SourceRiseK(heat)} exact {exact.SourceRiseK[0]} {spec}"
                );
            }
        );

    [Fact]
    public void More_fan_never_warms_any_form() =>
        Law.Holds(
            Gen.Select(AnyForm, Gen.Double[1.01, 2]),
            Seed,
            300,
            c =>
            {
                var (spec, more) = c;
                var fan = spec.Fan! with { VoltageRatio = spec.Fan!.VoltageRatio * more };
                var prepared = SinkModel.Prepare(spec);
                var before = prepared.At(spec, 295, true, 30)!.BaseRiseK;
                var after = prepared.At(spec with { Fan = fan }, 295, true, 30)!.BaseRiseK;
                Assert.True(after <= before * (1 + 1e-6), $"{before} K, then {after} K; {spec}");
            }
        );

    [Fact]
    public void More_ambient_and_more_heat_never_cool_any_form() =>
        Law.Holds(
            Gen.Select(AnyForm, Gen.Double[1, 60], Gen.Double[1, 30], Gen.Bool),
            Seed,
            300,
            c =>
            {
                var (spec, heat, warmer, runs) = c;
                var prepared = SinkModel.Prepare(spec);
                double Base(double ambient, double watts) =>
                    ambient + prepared.At(spec, ambient, runs, watts)!.BaseRiseK;
                Assert.True(Base(295 + warmer, heat) > Base(295, heat), $"{warmer} {spec}");
                Assert.True(Base(295, heat + warmer) > Base(295, heat), $"{warmer} {spec}");
            }
        );

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Nothing_jumps_when_the_fan_slows_to_zero_or_air_turns_turbulent(int form)
    {
        var spec = Of(form, 0.092, 0.092, 12, 12, 0.3, 0.03);
        var prepared = SinkModel.Prepare(spec);
        double Rise(double ratio) =>
            prepared.At(spec with { Fan = Fan with { VoltageRatio = ratio } }, 295, true, 30)!.BaseRiseK;
        var stopped = prepared.At(spec, 295, false, 30)!.BaseRiseK;
        Assert.Equal(stopped, Rise(0), 1e-9 * stopped);
        Assert.Equal(stopped, Rise(1e-3), 2e-3 * stopped);

        // To a hundred times rated speed: the air goes through every regime on the way.
        var before = Rise(0.01);
        for (var ratio = 0.01; ratio < 100; ratio *= 1.02)
        {
            var here = Rise(ratio * 1.02);
            Assert.InRange(here / before, 0.93, 1 + 1e-6);
            before = here;
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Nothing_jumps_as_it_is_tilted(int form)
    {
        var spec = Of(form, 0.092, 0.092, 12, 12, 0.3, 0.03);
        var prepared = SinkModel.Prepare(spec);
        var before = 0.0;
        for (var i = 0; i <= 720; i++)
        {
            // A turn of the base from upright by level, face up, to upright, to face down.
            var angle = i * Math.PI / 360;
            var rise = prepared
                .At(
                    spec with
                    {
                        ChannelTiltRad = Math.Acos(Math.Abs(Math.Cos(angle))),
                        FaceUp = Math.Sin(angle),
                    },
                    295,
                    false,
                    15
                )!
                .BaseRiseK;
            if (i > 0)
            {
                Assert.True(Math.Abs((rise / before) - 1) < 0.05, $"{i / 2.0} degrees: {before} K, then {rise} K");
            }

            before = rise;
        }
    }

    [Fact]
    public void Face_down_runs_hotter_than_face_up()
    {
        double Rise(double up) =>
            SinkModel
                .Prepare(Plate)
                .At(Plate with { ChannelTiltRad = Math.PI / 2, FaceUp = up }, 295, false, 3)!
                .BaseRiseK;
        Assert.True(Rise(-1) > 1.2 * Rise(1));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void More_pins_cool_better_within_reason(bool staggered)
    {
        double Rise(int count)
        {
            var spec = Pins with { Pins = new PinArray(count, count, 0.003, 0.03, staggered) };
            return SinkModel.Prepare(spec).At(spec, 295, true, 40)!.BaseRiseK;
        }

        Assert.True(Rise(8) < Rise(4));
        Assert.True(Rise(12) < Rise(8));
    }

    [Fact]
    public void Forms_stand_in_the_order_that_a_shop_knows()
    {
        static double Rise(SinkSpec spec) => SinkModel.Prepare(spec).At(spec, 295, true, 40)!.BaseRiseK;
        Assert.True(Rise(Tower) < Rise(Plate));
        Assert.True(Rise(Sink) < Rise(Plate));
        Assert.True(Rise(Pins) < Rise(Plate));
        Assert.InRange(Rise(Pins) / Rise(Sink), 0.6, 2.5);
    }

    [Fact]
    public void Better_heat_pipes_cool_the_base_and_not_the_plates()
    {
        var worse = Tower with { Tower = Tower.Tower! with { PipeKPerW = 0.8 } };
        var (a, b) = (
            SinkModel.Prepare(Tower).At(Tower, 295, true, 60)!,
            SinkModel.Prepare(worse).At(worse, 295, true, 60)!
        );
        Assert.Equal(60 * 0.4 / 6, b.BaseRiseK - a.BaseRiseK, 1e-6);
        Assert.Equal(a.RootRiseK, b.RootRiseK, 1e-6);
        Assert.Equal(60 * 0.4 / 6, a.BaseRiseK - a.RootRiseK, 1e-6);
    }

    [Fact]
    public void Errors_of_pins_and_pipes_move_what_they_name()
    {
        static double Rise(SinkSpec spec, HeatFactors f, bool runs = true) =>
            SinkModel.Prepare(spec).Curve(spec with { Factors = f }, 295, runs).SourceRiseK(40);
        Assert.True(Rise(Pins, new() { PinFilm = 1.2 }) < Rise(Pins, new()));
        Assert.True(Rise(Pins, new() { PinFriction = 1.3 }) > Rise(Pins, new()));
        Assert.True(Rise(Pins, new() { StillPins = 1.3 }, runs: false) < Rise(Pins, new(), runs: false));
        Assert.True(Rise(Tower, new() { HeatPipes = 1.3 }) > Rise(Tower, new()));
    }

    [Fact]
    public void Another_emitter_warms_the_first_by_superposition()
    {
        Footprint first = new(0.03, 0.046, 0.02, 0.02),
            second = new(0.07, 0.03, 0.02, 0.02, 1, 25);
        var both = Pins with { Footprints = [first, second], Emissivity = 0 };
        var r = SinkModel.Prepare(both).At(both, 295, true, 40)!;

        // The same by hand: self and mutual rises over one film.
        var film = 65 / (r.BaseRiseK * both.AcrossM * both.AlongM);
        double By(Footprint source) =>
            new Spreading(
                both.AcrossM,
                both.AlongM,
                both.BaseThicknessM,
                [source with { Share = 1 }],
                first
            ).ResistanceKPerW(both.ConductivityWPerMK, film);
        Assert.Equal((40 * By(first)) + (25 * By(second)), r.SourceRiseK[0], 1e-3 * r.SourceRiseK[0]);
        Assert.Equal(65, r.HeatW, 1e-9);
        var curve = SinkModel.Prepare(both).Curve(both, 295, true);
        Assert.Equal(r.SourceRiseK[0], curve.SourceRiseK(40), 3e-3 * r.SourceRiseK[0]);
        Assert.True(curve.SourceRiseK(0) > 1, "the other emitter alone warms it");
    }

    [Fact]
    public void Hottest_of_several_seats_is_told()
    {
        var two = Sink with { Footprints = [new(0.046, 0.046, 0.02, 0.02), new(0.012, 0.012, 0.02, 0.02)] };
        var curve = SinkModel.Prepare(two).Curve(two, 295, true);
        Assert.Equal(curve.SourceRiseK(40, 1), curve.HottestRiseK(40));
        Assert.True(curve.HottestRiseK(40) > curve.SourceRiseK(40, 0));
    }

    [Fact]
    public void Pins_and_stacks_that_leave_no_gap_are_refused()
    {
        Assert.False(SinkModel.IsUsable(Pins with { Pins = new PinArray(40, 4, 0.003, 0.03, false) }));
        Assert.False(SinkModel.IsUsable(Pins with { Pins = new PinArray(4, 40, 0.003, 0.03, false) }));
        Assert.True(SinkModel.IsUsable(Pins with { Pins = new PinArray(1, 1, 0.003, 0.03, true) }));
        Assert.False(SinkModel.IsUsable(Tower with { Tower = Tower.Tower! with { GapM = 0 } }));
        Assert.False(SinkModel.IsUsable(Tower with { Tower = Tower.Tower! with { Plates = 1 } }));
    }

    [Fact]
    public void A_sink_tried_at_two_heats_goes_through_both()
    {
        var curve = SinkCurve.Power(2 / Math.Pow(10, 0.8) * 10, 0.8);
        Assert.Equal(20, curve.SourceRiseK(10), 0.02);
        Assert.Equal(20 * Math.Pow(4, 0.8), curve.SourceRiseK(40), 0.1);
        Assert.Throws<ArgumentOutOfRangeException>(() => SinkCurve.Power(1, 1.2));
    }
}
