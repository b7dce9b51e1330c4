using Lampwright.Heat.Network;
using Lampwright.Heat.Time;

namespace Lampwright.References.Heat;

/// <summary>Lumps that warm and cool: rows H.TR and H.LD, each followed by the network's own transient.</summary>
public sealed class TransientTests
{
    private static HeatCourse Lump(
        double capacity,
        double startK,
        double untilS,
        double tolerance,
        Func<int, IReadOnlyList<NetworkLink>> links,
        params NetworkNode[] others
    )
    {
        var network = new ThermalNetwork([.. others, new NetworkNode("lump", capacity)], links(others.Length), []);
        return NetworkTransient.Follow(network, [.. others.Select(o => o.FixedK!.Value), startK], untilS, tolerance);
    }

    // Incropera Ex. 5.1 p. 261: the bead of a thermocouple. [published, second-hand]
    [Fact]
    public void Bead_of_a_thermocouple_warms()
    {
        const double D = 7.06e-4;
        var (area, mass) = (Math.PI * D * D, 8500 * Math.PI / 6 * D * D * D);
        var course = Lump(
            mass * 400,
            298.15,
            20,
            1e-6,
            i => [new Conduction(i, 0, 400 * area)],
            new NetworkNode("gas", 0, 473.15)
        );
        Check.Relative("H.TR-01", 5.2, course.FirstS(1, 472.15)!.Value, 0.01, "25 to 199 degC in gas of 200 degC");
    }

    // Inputs of Incropera Ex. 5.2 p. 265: the same bead, walls at 400 °C, emissivity 0.9. [derived]
    [Fact]
    public void Bead_sees_hotter_walls()
    {
        const double D = 7.06e-4;
        var (area, mass) = (Math.PI * D * D, 8500 * Math.PI / 6 * D * D * D);
        var course = Lump(
            mass * 400,
            298.15,
            60,
            1e-6,
            i => [new Conduction(i, 0, 400 * area), new RadiationLink(i, 1, 0.9 * area)],
            new NetworkNode("gas", 0, 473.15),
            new NetworkNode("walls", 0, 673.15)
        );
        var steady = course.EndK[2];
        Check.Absolute("H.TR-02", 218.7 + 273.15, steady, 0.3, "h 400, gas 200, walls 400 degC, eps 0.9");
        Check.Relative("H.TR-02", 4.99, course.FirstS(2, steady - 1)!.Value, 0.02, "time to within 1 K");
    }

    // Cengel Ex. 4-1. [published, second-hand]
    [Fact]
    public void Small_sphere_follows_in_ten_seconds()
    {
        const double D = 1e-3;
        var (area, mass) = (Math.PI * D * D, 8500 * Math.PI / 6 * D * D * D);
        var course = Lump(
            mass * 320,
            400,
            30,
            1e-6,
            i => [new Conduction(i, 0, 210 * area)],
            new NetworkNode("gas", 0, 300)
        );
        Check.Relative("H.TR-04", 10, course.FirstS(1, 301, rising: false)!.Value, 0.01, "99 % of the change");
    }

    // Cengel Ex. 4-2: Bi 0.89, so that one lump is not valid there, as the book says; the arithmetic is. [memory]
    [Fact]
    public void Cylinder_cools_overnight()
    {
        const double R = 0.15,
            L = 1.7;
        var (area, mass) = (2 * Math.PI * R * (L + R), 996 * Math.PI * R * R * L);
        var course = Lump(
            mass * 4178,
            310.15,
            1e5,
            1e-6,
            i => [new Conduction(i, 0, 8 * area)],
            new NetworkNode("room", 0, 293.15)
        );
        Check.Relative(
            "H.TR-05",
            12.2 * 3600,
            course.FirstS(1, 298.15, false)!.Value,
            0.005,
            "h 8, 37 to 25 in 20 degC"
        );
    }

    // Lienhard Ex. 2.9 p. 77: a resistor on a board. [published, second-hand]
    [Fact]
    public void Resistor_settles()
    {
        var capacity = 2000 * 700 * Math.PI / 4 * 0.0036 * 0.0036 * 0.010;
        var g = 18.44 * 1.33e-4;
        var network = new ThermalNetwork(
            [new("room", 0, 308.15), new("resistor", capacity)],
            [new Conduction(1, 0, g)],
            [new NetworkSource(1, 0.1)]
        );
        var course = NetworkTransient.Follow(network, [308.15, 308.15], 1000, 1e-6);
        var all = 0.1 / g;
        Check.Relative("H.TR-08", 174, course.FirstS(1, 308.15 + (0.95 * all))!.Value, 0.002, "95 % of the rise");
    }

    // HTH eq. 3.286 p. 231: h = C·dT^(1/4). [derived]
    [Fact]
    public void Natural_convection_alone()
    {
        var course = Lump(
            900,
            350,
            3600,
            1e-8,
            i => [new AirFilm(i, 0, 5 * 0.1 / Math.Pow(50, 0.25))],
            new NetworkNode("room", 0, 300)
        );
        Check.Relative("H.TR-10", 9.876543, course.EndK[1] - 300, 2e-6, "theta 50 K, h 5, A 0.1 m2, 900 J/K, 3600 s");
    }

    // HTH eq. 3.284 p. 231: constant h and radiation, both to 0 K. [derived]
    [Fact]
    public void Convection_and_radiation_to_nothing()
    {
        const double Sigma = 5.670374419e-8;
        var course = Lump(
            100,
            500,
            15,
            1e-9,
            i => [new Conduction(i, 0, 10), new RadiationLink(i, 0, 1)],
            new NetworkNode("void", 0, 0)
        );
        var (g, t) = (Sigma * 500 * 500 * 500 / 10, Math.Pow(course.EndK[1] / 500, 3));
        var left = Math.Log((1 + (g * t)) / ((1 + g) * t)) / 3;
        Check.Relative("H.TR-11", 1.5, left, 1e-6, "h 10, Ti 500 K, hAt/(rho V c) 1.5");
    }

    // Inputs of Sugandhi Ex. 3.2: a thyristor with heat that comes and goes. [derived]
    [Fact]
    public void Heat_that_comes_and_goes()
    {
        // The sink as a node, played until it repeats itself; the number is that of the geometric series of its cycles.
        double sink = 0;
        for (var k = 0; k < 30; k++)
        {
            sink = Sink(Sink(sink, 325, 60), 0, 187.5);
        }

        Check.Absolute("H.LD-07", 0.05044, Sink(sink, 325, 60) / 325, 5e-6, "0.12 K/W, 140 s, 60 s of 247.5 s");

        static double Sink(double rise, double heat, double time)
        {
            var network = new ThermalNetwork(
                [new("air", 0, 300), new("sink", 140 / 0.12)],
                [new Conduction(1, 0, 1 / 0.12)],
                [new NetworkSource(1, heat)]
            );
            return NetworkTransient.Follow(network, [300, 300 + rise], time, 1e-8).EndK[1] - 300;
        }
    }
}
