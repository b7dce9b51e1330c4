using Lampwright.Heat.Network;
using Lampwright.Heat.Time;

namespace Lampwright.Tests.Heat.Network;

public sealed class ThermalNetworkTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 200)];

    [Fact]
    public void Two_resistances_in_a_row_by_hand()
    {
        var network = new ThermalNetwork(
            [new("room", 0, 300), new("sink", 10), new("junction", 1)],
            [new Conduction(2, 1, 4), new Conduction(1, 0, 0.5)],
            [new NetworkSource(2, 20)]
        );
        var rest = network.Steady().Result!;
        Assert.Equal(340, rest.Kelvin[1], 1e-6);
        Assert.Equal(345, rest.Kelvin[2], 1e-6);
        Assert.Equal(20, rest.LeavesW, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Heat_in_is_heat_out_and_more_heat_or_a_warmer_room_is_nowhere_cooler(int number)
    {
        var rest = NetworkSamples.Random(number).Steady().Result!;
        Assert.InRange(rest.BalanceError, -1e-6, 1e-6);
        var more = NetworkSamples.Random(number, more: 1).Steady().Result!;
        var warmer = NetworkSamples.Random(number, warmer: 7).Steady().Result!;
        for (var i = 0; i < rest.Kelvin.Count; i++)
        {
            Assert.True(more.Kelvin[i] >= rest.Kelvin[i] - 1e-6, $"more heat, {i}");
            Assert.True(warmer.Kelvin[i] >= rest.Kelvin[i] - 1e-6, $"warmer room, {i}");
        }
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Every_course_ends_at_rest(int number)
    {
        var network = NetworkSamples.Random(number);
        var rest = network.Steady().Result!;
        var course = NetworkTransient.Follow(network, [.. network.Nodes.Select(n => n.FixedK ?? 300)], 1e6);
        Assert.False(course.Stopped);
        var most = rest.Kelvin.Max(k => Math.Abs(k - 300));
        for (var i = 0; i < rest.Kelvin.Count; i++)
        {
            Assert.Equal(rest.Kelvin[i], course.EndK[i], 2e-3 * most);
        }
    }

    [Fact]
    public void Heat_that_is_kept_is_heat_that_is_stored()
    {
        var network = LightNetwork.Of(NetworkSamples.Light(fanRuns: true)).Network;
        var course = NetworkTransient.Follow(network, [.. network.Nodes.Select(_ => 300.0)], 900, 1e-6);
        double kept = 0,
            last = Kept(0);
        const double Step = 0.05;
        for (var t = Step; t <= 900 + 1e-9; t += Step)
        {
            var now = Kept(t);
            kept += 0.5 * Step * (last + now);
            last = now;
        }

        var stored = network.Nodes.Select((n, i) => n.CapacityJPerK * (course.KelvinAt(i, 900) - 300)).Sum();
        Assert.Equal(1, kept / stored, 2e-3);

        double Kept(double t)
        {
            double[] at = [.. network.Nodes.Select((_, i) => course.KelvinAt(i, t))];
            var heats = network.LinkHeatsW(at);
            var out_ = network.Links.Select((l, k) => (l.To == 0 ? heats[k] : 0) - (l.From == 0 ? heats[k] : 0)).Sum();
            return network.SourceW(at) - out_;
        }
    }

    [Fact]
    public void What_comes_to_no_rest_says_where_it_stood()
    {
        // Heat that grows faster with temperature than the way lets it go.
        var network = new ThermalNetwork(
            [new("room", 0, 300), new("runaway", 1)],
            [new Conduction(1, 0, 1)],
            [new NetworkSource(1, 10, 2, 300)]
        );
        var solve = network.Steady([300, 350]);
        Assert.Null(solve.Result);
        Assert.Equal("runaway", solve.WorstNode);
        var alone = new ThermalNetwork([new("room", 0, 300), new("alone", 1)], [], [new NetworkSource(1, 10)]).Steady();
        Assert.Null(alone.Result);
        Assert.Equal("alone", alone.WorstNode);
        Assert.Equal(10, alone.ResidualW, 1e-9);
    }

    [Fact]
    public void A_link_to_nowhere_is_refused()
    {
        Assert.Throws<ArgumentException>(() =>
            new ThermalNetwork([new("room", 0, 300)], [new Conduction(0, 3, 1)], [])
        );
        Assert.Throws<ArgumentException>(() => new ThermalNetwork([new("node", 1)], [], []));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new ThermalNetwork([new("room", 0, 300), new("bad", double.NaN)], [], [])
        );
    }

    [Fact]
    public void Slopes_are_those_of_the_heats()
    {
        var sink = NetworkSamples.Light(true).Sink;
        NetworkLink[] links =
        [
            new Conduction(0, 1, 2),
            new AirFilm(0, 1, 0.4),
            new AirFilm(0, 1, 0.4, 0.7),
            new RadiationLink(0, 1, 0.1),
            new PanelFace(0, 1, new Lampwright.Heat.Panel(0.05, 0.1, Lampwright.Heat.PanelFacing.Side, 0.9)),
            new AirStream(0, 1, 1, 0.5, 0.3),
            new SinkHeat(0, 1, 0, 1, sink, 0.7),
            new SinkHeat(0, 1, 0, 1, sink, 0.7, 1.1, 0.9),
            new SinkHeat(0, 1, 0, 1, sink, 1, 1.1, 0.9, true),
        ];
        foreach (var link in links)
        {
            foreach (var hot in new[] { 301.0, 315, 360 })
            {
                var at = link.At(hot, 300);
                var by = (link.At(hot + 0.01, 300).W - link.At(hot - 0.01, 300).W) / 0.02;
                Assert.True(Math.Abs(by / at.ByHot - 1) < 0.03, $"{link.GetType().Name} at {hot}: {by} {at.ByHot}");
                Assert.True(at.W > 0 && at.ByHot > 0 && at.ByCold < 0);
            }
        }
    }

    [Fact]
    public void Panels_colder_than_the_room_take_in_what_the_turned_panel_gives()
    {
        Lampwright.Heat.Panel Of(Lampwright.Heat.PanelFacing f) => new(0.1, 0.1, f, 0);
        var cold = new PanelFace(0, 1, Of(Lampwright.Heat.PanelFacing.Up)).At(290, 300).W;
        var warm = new PanelFace(0, 1, Of(Lampwright.Heat.PanelFacing.Down)).At(300, 290).W;
        Assert.Equal(-warm, cold, 1e-9);
    }
}
