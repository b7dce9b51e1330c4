using Lampwright.Evaluation.Boxes;
using Lampwright.Heat.Network;
using Lampwright.Heat.Time;

namespace Lampwright.Tests.Heat.Network;

public sealed class LightNetworkTests
{
    private static IReadOnlyList<double> Rest(LightNetworkSpec spec) =>
        LightNetwork.Of(spec).Network.Steady().Result!.Kelvin;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Its_base_is_where_the_sinks_own_curve_says(bool fanRuns)
    {
        var spec = NetworkSamples.Light(fanRuns) with { EmitterWPerK = 0, CurveHoldsSeats = true };
        var light = LightNetwork.Of(spec);
        var rest = light.Network.Steady().Result!;
        Assert.InRange(rest.BalanceError, -1e-6, 1e-6);
        Assert.Equal(spec.Sink.BaseRiseK(40), rest.Kelvin[light.Base] - 300, 1e-3);
        Assert.Equal(40 * 0.42, rest.Kelvin[light.Junction] - rest.Kelvin[light.Base], 1e-6);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Sheet_under_the_sink_cools_it_beside_the_sinks_own_faces(bool fanRuns)
    {
        var spec = NetworkSamples.Light(fanRuns) with { EmitterWPerK = 0 };
        var light = LightNetwork.Of(spec);
        var rest = light.Network.Steady().Result!;
        var rise = rest.Kelvin[light.Base] - rest.Kelvin[light.Room];
        var seat = light.SeatW(rest.Kelvin);
        Assert.InRange(seat, 0.1, 39);
        Assert.Equal(spec.Sink.BaseRiseK(40 - seat), rise, 1e-3);
        Assert.True(rise < spec.Sink.BaseRiseK(40));
        Assert.InRange(rest.BalanceError, -1e-6, 1e-6);

        // The better the joint, the more it takes.
        var before = 0.0;
        foreach (var contact in new[] { 0.01, 0.1, 1, 10, 1000 })
        {
            var other = LightNetwork.Of(spec with { Seats = [new(0, contact, 0)] });
            var more = other.SeatW(other.Network.Steady().Result!.Kelvin);
            Assert.True(more > before);
            before = more;
        }
    }

    [Fact]
    public void A_resistor_stands_over_its_air_by_its_own_loss_and_gives_it_all_to_it()
    {
        var spec = NetworkSamples.Light(true);
        var light = LightNetwork.Of(spec);
        var kelvin = light.Network.Steady().Result!.Kelvin;
        foreach (var (resistor, node) in spec.Resistors.Zip(light.Resistors))
        {
            Assert.Equal(resistor.Name, light.Network.Nodes[node].Name);
            Assert.Equal(resistor.HeatW * resistor.KPerW, kelvin[node] - kelvin[light.CompartmentAir], 1e-6);
        }

        var idle = Rest(spec with { Resistors = [.. spec.Resistors.Select(r => r with { HeatW = 0 })] });
        Assert.True(kelvin[light.CompartmentAir] > idle[light.CompartmentAir] + 0.5);
        Assert.True(kelvin[light.Driver] > idle[light.Driver] + 0.4);
    }

    // What the draws and the loop read of the network is the network itself, solved anew at other heats.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_point_with_its_slopes_is_the_network_nearby(bool fanRuns)
    {
        var spec = NetworkSamples.Light(fanRuns) with { EmitterWPerK = 0 };
        var light = LightNetwork.Of(spec);
        var rest = light.Network.Steady().Result!.Kelvin;
        int[] nodes = [light.CompartmentAir, light.Driver, light.Panels[4], light.Diffuser];
        var heat = new HousingHeat(40, 7, 0.8, 3, 2);
        var point = HousingPoint.Of(light, rest, heat, nodes)!;
        for (var n = 0; n < nodes.Length; n++)
        {
            Assert.Equal(rest[nodes[n]] - 300, point.RiseK(n, heat), 1e-9);
        }

        foreach (
            var other in new[]
            {
                heat with
                {
                    EmitterW = 46,
                },
                heat with
                {
                    DriverW = 8.4,
                },
                heat with
                {
                    ChainW = 0.5,
                },
                heat with
                {
                    ReflectorW = 3.5,
                },
                heat with
                {
                    DiffuserW = 1.7,
                },
                new(34, 6, 1, 2.6, 2.3),
            }
        )
        {
            var then = Rest(
                spec with
                {
                    EmitterW = other.EmitterW,
                    DriverW = other.DriverW,
                    ReflectorW = other.ReflectorW,
                    DiffuserW = other.DiffuserW,
                    Resistors = [.. spec.Resistors.Select(r => r with { HeatW = r.HeatW * other.ChainW / 0.8 })],
                }
            );
            for (var n = 0; n < nodes.Length; n++)
            {
                var moved = Math.Abs(then[nodes[n]] - rest[nodes[n]]);
                Assert.True(
                    Math.Abs(then[nodes[n]] - 300 - point.RiseK(n, other)) <= 0.01 + (0.04 * moved),
                    $"{other}, node {n}: {then[nodes[n]] - 300} against {point.RiseK(n, other)}"
                );
            }
        }
    }

    [Fact]
    public void Nothing_jumps_when_the_fan_slows_to_rest()
    {
        var last = Slow(0.39);
        for (var volts = 0.39; volts > 1e-3; volts *= 0.99)
        {
            var now = Slow(volts);
            for (var i = 0; i < now.Count; i++)
            {
                Assert.True(Math.Abs(now[i] - last[i]) < 2, $"at {volts:F4} node {i} jumps from {last[i]} to {now[i]}");
            }

            last = now;
        }

        // The last step, from a breath of air to none, must be small.
        var breath = Rest(NetworkSamples.Light(true, volts: 1e-4) with { RadiatedShare = 0.3, WallFilmWPerM2K = 0 });
        var still = Rest(NetworkSamples.Light(false) with { RadiatedShare = 0.3 });
        Assert.All(breath.Zip(still), p => Assert.Equal(p.Second, p.First, 0.5));

        static IReadOnlyList<double> Slow(double volts) =>
            Rest(NetworkSamples.Light(true, volts: volts) with { RadiatedShare = 0.3, WallFilmWPerM2K = 12 * volts });
    }

    [Fact]
    public void More_fan_is_cooler()
    {
        var before = double.PositiveInfinity;
        foreach (var volts in new[] { 0.2, 0.4, 0.6, 0.8, 1.0 })
        {
            var hottest = Rest(NetworkSamples.Light(true, volts: volts)).Max();
            Assert.True(hottest < before);
            before = hottest;
        }
    }

    [Fact]
    public void The_drivers_heat_stays_in_its_compartment_and_absorbed_light_in_the_front()
    {
        var spec = NetworkSamples.Light(true) with { Bridges = [], Seats = [] };
        var light = LightNetwork.Of(spec);
        var all = light.Network.Steady().Result!.Kelvin;
        var idle = Rest(spec with { DriverW = 0, Resistors = [.. spec.Resistors.Select(r => r with { HeatW = 0 })] });
        var dark = Rest(spec with { ReflectorW = 0, DiffuserW = 0 });
        Assert.True(all[light.Driver] > idle[light.Driver] + 5);
        Assert.Equal(idle[light.Panels[4]], all[light.Panels[4]], 1e-6);
        Assert.True(all[light.Reflector] > dark[light.Reflector] + 2);
        Assert.True(all[light.Diffuser] > dark[light.Diffuser] + 1);
        Assert.Equal(dark[light.Panels[2]], all[light.Panels[2]], 1e-6);
    }

    [Fact]
    public void Sheet_and_joints_warm_the_neighbours()
    {
        var spec = NetworkSamples.Light(true);
        var light = LightNetwork.Of(spec);
        var joined = light.Network.Steady().Result!.Kelvin;
        var parted = Rest(spec with { Bridges = [], Seats = [] });
        Assert.True(joined[light.Panels[0]] > parted[light.Panels[0]] + 0.5);
        Assert.True(joined[light.Panels[4]] > parted[light.Panels[4]] + 0.5);
    }

    // Grashof's number goes with the square of the pressure and the film with its fourth root (Churchill and Chu's laminar limit): every closed
    // room of the light warms when the air thins, and the film between driver and its air by the square root.
    [Fact]
    public void Thin_air_weakens_the_films_inside_all_three_rooms()
    {
        var low = LightNetwork.Of(NetworkSamples.Light(true));
        var high = LightNetwork.Of(NetworkSamples.Light(true) with { PressurePa = 101325 / 4.0 });
        var checkedFilms = 0;
        foreach (var air in new[] { low.ChannelAir, low.CompartmentAir, low.FrontAir })
        {
            Assert.True(air >= 0);
            var pairs = low
                .Network.Links.Zip(high.Network.Links)
                .Where(l => l.First is AirFilm f && (f.From == air || f.To == air));
            foreach (var (thick, thin) in pairs)
            {
                checkedFilms++;
                Assert.Equal(0.5, ((AirFilm)thin).NaturalWPerK54 / ((AirFilm)thick).NaturalWPerK54, 1e-9);
            }
        }

        Assert.True(checkedFilms > 5);
    }

    [Fact]
    public void An_error_that_gives_no_answer_at_one_end_is_taken_from_the_other_and_one_that_gives_none_is_named()
    {
        var spec = NetworkSamples.Light(true);
        var rest = Rest(spec);
        IReadOnlyList<double>? Up(NetworkFactors f) => f.Contact > 1 ? null : Rest(spec with { Factors = f });
        IReadOnlyList<double>? Never(NetworkFactors f) => f.Contact == 1 ? Rest(spec with { Factors = f }) : null;
        var all = CourseBand.Halves(true, rest, f => Rest(spec with { Factors = f }));
        var other = CourseBand.Halves(true, rest, Up);
        var without = CourseBand.Halves(true, rest, Never);
        double Part(IReadOnlyList<double> halves, int i) =>
            Math.Sqrt((halves[i] * halves[i]) - (without[i] * without[i]));
        var k = Enumerable.Range(0, rest.Count).MaxBy(i => Part(all, i));
        Assert.True(Part(all, k) > 0.05);
        Assert.InRange(Part(other, k) / Part(all, k), 0.5, 2);
        Assert.Empty(CourseBand.Unsolved(true, f => Up(f) is not null));
        var named = CourseBand.Unsolved(true, f => Never(f) is not null);
        Assert.Equal([NetworkFactors.ContactError.Name], named);
        var finding = BoxFindings.LeftOut("sink.main", named)!;
        Assert.Equal(BoxRules.BandLeavesOut, finding.Rule);
        Assert.Contains("heat.contact", finding.Message, StringComparison.Ordinal);
        Assert.Null(BoxFindings.LeftOut("sink.main", []));
    }

    // Errors one at a time, added by squares, against all of them drawn together.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Bands_hold_what_draws_of_all_errors_together_give(bool fanRuns)
    {
        var spec = NetworkSamples.Light(fanRuns);
        var rest = Rest(spec);
        var halves = CourseBand.Halves(fanRuns, rest, f => Rest(spec with { Factors = f }));
        var chance = new Random(5);
        var draws = new double[rest.Count][];
        const int Count = 400;
        for (var i = 0; i < draws.Length; i++)
        {
            draws[i] = new double[Count];
        }

        for (var d = 0; d < Count; d++)
        {
            var factors = NetworkFactors.Nominal;
            foreach (var (error, with) in NetworkFactors.All(fanRuns))
            {
                var normal =
                    Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
                factors = with(factors, Math.Exp(Math.Log(1 + error.HalfWidth) * normal / 1.645));
            }

            var drawn = Rest(spec with { Factors = factors });
            for (var i = 0; i < drawn.Count; i++)
            {
                draws[i][d] = drawn[i];
            }
        }

        for (var i = 1; i < rest.Count; i++)
        {
            Array.Sort(draws[i]);
            var half = (draws[i][(int)(0.95 * Count)] - draws[i][(int)(0.05 * Count)]) / 2;
            Assert.True(halves[i] / half is > 0.8 and < 1.3, $"node {i}: {halves[i]} against {half}");
        }
    }
}
