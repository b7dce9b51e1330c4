using Lampwright.Heat;
using Lampwright.Heat.Network;

namespace Lampwright.Tests.Heat.Network;

/// <summary>Networks for the tests: random ones, and a light of invented sizes.</summary>
internal static class NetworkSamples
{
    /// <summary>A light in a tray with a driver's box beside it.</summary>
    internal static LightNetworkSpec Light(bool fanRuns, double ambientK = 300, double volts = 1)
    {
        var spec = HeatSamples.Sink with { Housed = true, Fan = HeatSamples.Fan with { VoltageRatio = volts } };
        var sink = SinkModel.Prepare(spec).Curve(spec, ambientK, fanRuns);
        NetworkPanel Of(string name, double area, PanelFacing facing, PanelZone zone) =>
            new(name, new Panel(area, 0.05, facing, 0.9), area, 3500 * area, zone);
        return new()
        {
            AmbientK = ambientK,
            Sink = sink,
            RadiatedShare = fanRuns ? 0.05 : 0.4,
            FinWPerK = 30,
            BaseJPerK = 120,
            FinJPerK = 140,
            EmitterW = 40,
            EmitterWPerK = 0.05,
            JunctionAtK = 340,
            JunctionKPerW = 0.3,
            CaseKPerW = 0.12,
            JunctionJPerK = 0.4,
            CaseJPerK = 7,
            DriverW = 7,
            DriverCaseM2 = 0.022,
            DriverJPerK = 260,
            Resistors = [new("R0", 0.6, 40, 0.5), new("R1", 0.2, 60, 0.3)],
            ReflectorW = 3,
            ReflectorM2 = 0.08,
            ReflectorJPerK = 300,
            DiffuserW = 2,
            Diffuser = new Panel(0.05, 0.05, PanelFacing.Down, 0.9),
            DiffuserJPerK = 280,
            FanWPerK = sink.FlowM3PerS * 1180,
            WallFilmWPerM2K = fanRuns ? 12 : 0,
            DraftWPerK32 = 0.2,
            Panels =
            [
                Of("tray.face", 0.012, PanelFacing.Side, PanelZone.Channel),
                Of("tray.wall", 0.03, PanelFacing.Side, PanelZone.Channel),
                Of("box.face", 0.02, PanelFacing.Up, PanelZone.Compartment),
                Of("box.wall", 0.04, PanelFacing.Side, PanelZone.Compartment),
                Of("hood.face", 0.07, PanelFacing.Up, PanelZone.Front),
                Of("hood.wall", 0.06, PanelFacing.Side, PanelZone.Front),
            ],
            Bridges =
            [
                new(0, 1, 0.4, false),
                new(2, 3, 0.3, false),
                new(4, 5, 0.5, false),
                new(0, 4, 2, true),
                new(3, 4, 1, true),
            ],
            Seats = [new(0, 6, 0.8)],
        };
    }

    /// <summary>A random network whose every node finds a way to the room.</summary>
    internal static ThermalNetwork Random(int number, double more = 0, double warmer = 0)
    {
        var chance = new Random(number);
        double Between(double a, double b) => a * Math.Pow(b / a, chance.NextDouble());
        var count = chance.Next(3, 14);
        var nodes = new List<NetworkNode> { new("room", 0, 250 + (80 * chance.NextDouble()) + warmer) };
        var links = new List<NetworkLink>();
        var sources = new List<NetworkSource>();
        for (var i = 1; i <= count; i++)
        {
            nodes.Add(new($"node {i}", chance.Next(6) == 0 ? 0 : Between(0.5, 500)));
            links.Add(Link(i, chance.Next(0, i)));
            if (chance.Next(2) == 0)
            {
                links.Add(Link(i, chance.Next(0, i)));
            }

            if (chance.Next(3) == 0 || i == 1)
            {
                sources.Add(new(i, Between(0.1, 60) + more));
            }
        }

        return new(nodes, links, sources);

        NetworkLink Link(int a, int b) =>
            chance.Next(5) switch
            {
                0 => new AirFilm(a, b, Between(0.02, 2), chance.Next(2) == 0 ? Between(0.05, 3) : 0),
                1 => new RadiationLink(a, b, Between(1e-3, 0.2)),
                2 => new PanelFace(
                    a,
                    0,
                    new Panel(Between(2e-3, 0.2), Between(0.02, 0.3), (PanelFacing)chance.Next(3), chance.NextDouble())
                ),
                3 => new AirStream(a, 0, 0, Between(0.01, 10), chance.Next(2) == 0 ? Between(0.05, 1) : 0),
                _ => new Conduction(a, b, Between(0.05, 20)),
            };
    }
}
