using System.Globalization;
using Lampwright.Heat.Network;
using Lampwright.Heat.Time;
using Lampwright.References.WholeLight;

namespace Lampwright.References.Heat.Network;

/// <summary>Networks beside scipy on the same networks (network.py in this folder): rest and course within 0.1 % of the rise.</summary>
public sealed class NetworkSolverTests
{
    private static readonly double[] Times = [1, 10, 60, 300, 1200, 3600, 14400];

    // A light in small: junction, case, base, fins, channel air, two walls, driver, its air, its lid, two resistors of the chain.
    private static IReadOnlyList<NetworkNode> Light { get; } =
    [
        new("room", 0, 305.15),
        new("junction", 0.4),
        new("case", 6),
        new("base", 110),
        new("fins", 180),
        new("channel air", 1),
        new("tray", 95),
        new("lid", 60),
        new("driver", 240),
        new("compartment air", 1.2),
        new("driver lid", 130),
        new("R0", 1.5),
        new("R1", 0.4),
    ];

    private static IReadOnlyList<NetworkLink> Ways(double fan) =>
        [
            new Conduction(1, 2, 3.4),
            new Conduction(2, 3, 12),
            new Conduction(3, 4, 25),
            new AirFilm(4, 5, 0.9, fan > 0 ? 4.0 : 0),
            new RadiationLink(4, 6, 0.012),
            new RadiationLink(4, 7, 0.006),
            new AirFilm(5, 6, 0.05),
            new AirFilm(5, 7, 0.03),
            new AirStream(5, 0, 0, fan, 0.15),
            new Conduction(3, 6, 0.6),
            new Conduction(6, 7, 0.4),
            new AirFilm(6, 0, 0.1),
            new RadiationLink(6, 0, 0.025),
            new AirFilm(7, 0, 0.06),
            new RadiationLink(7, 0, 0.014),
            new AirFilm(8, 9, 0.08),
            new RadiationLink(8, 10, 0.014),
            new AirFilm(9, 10, 0.12),
            new AirFilm(10, 0, 0.15),
            new RadiationLink(10, 0, 0.04),
            new Conduction(6, 10, 0.3),
            new Conduction(11, 9, 1 / 28.3),
            new Conduction(12, 9, 1 / 80.0),
        ];

    private static IReadOnlyList<NetworkSource> Heats { get; } =
    [new(1, 38, 0.06, 330), new(8, 6.2), new(11, 0.7), new(12, 0.2)];

    [Theory]
    [InlineData(9.0)]
    [InlineData(0.3)]
    [InlineData(0.0)]
    public async Task Agrees_with_scipy(double fan)
    {
        var links = Ways(fan);
        var network = new ThermalNetwork(Light, links, Heats);
        var rest = network.Steady().Result!;
        var course = NetworkTransient.Follow(network, [.. Light.Select(n => n.FixedK ?? 305.15)], Times[^1]);
        var other = await SecondSolver.SolveAsync(
            new
            {
                nodes = Light.Select(n => new { capacity = n.CapacityJPerK, @fixed = n.FixedK }),
                links = links.Select(Written),
                sources = Heats.Select(s => new
                {
                    node = s.Node,
                    w = s.HeatW,
                    slope = s.WPerK,
                    at = s.AtK,
                }),
                start = 305.15,
                times = Times,
            },
            "Heat",
            "Network",
            "network.py"
        );
        Assert.True(other.GetProperty("ok").GetBoolean() && other.GetProperty("keeps").GetDouble() < 1e-6);
        var most = rest.Kelvin.Max() - 305.15;
        for (var i = 1; i < Light.Count; i++)
        {
            var at = other.GetProperty("rest")[i - 1].GetDouble() - 305.15;
            Check.Relative("rest " + Light[i].Name, at, rest.Kelvin[i] - 305.15, 1e-3, $"fan {fan} W/K");
            for (var k = 0; k < Times.Length; k++)
            {
                var then = other.GetProperty("course")[k][i - 1].GetDouble() - 305.15;
                var ours = course.KelvinAt(i, Times[k]) - 305.15;
                var inputs = string.Create(CultureInfo.InvariantCulture, $"fan {fan} W/K, {Times[k]} s");
                Check.Absolute("course " + Light[i].Name, then, ours, 1e-3 * most, inputs);
            }
        }
    }

    private static object Written(NetworkLink link) =>
        link switch
        {
            Conduction c => new
            {
                kind = "conduction",
                from = c.From,
                to = c.To,
                g = c.WPerK,
            },
            AirFilm f => new
            {
                kind = "film",
                from = f.From,
                to = f.To,
                c = f.NaturalWPerK54,
                g = f.ForcedWPerK,
            },
            RadiationLink r => new
            {
                kind = "radiation",
                from = r.From,
                to = r.To,
                area = r.AreaM2,
            },
            AirStream s => new
            {
                kind = "stream",
                from = s.From,
                to = s.To,
                room = s.Room,
                fan = s.FanWPerK,
                draft = s.DraftWPerK32,
            },
            _ => throw new NotSupportedException(link.ToString()),
        };
}
