using Lampwright.Design;
using Lampwright.Quantities;

namespace Lampwright.Tests.Evaluations;

/// <summary>A small whole light, written in records, for tests that do not want to read a file. Invented.</summary>
internal static class SampleLight
{
    public static LightDesign Design { get; } =
        new()
        {
            Title = "Sample",
            Place = new()
            {
                Ambient = V(294.15, 3, "place.ambient"),
                AmbientMax = V(305.15, 0, "place.ambient_max"),
                Altitude = V(100, 0, "place.altitude"),
            },
            Emitters =
            [
                new("main")
                {
                    Points =
                    [
                        Point(0.35, 33.1, 1870),
                        Point(0.70, 34.5, 3560),
                        Point(1.40, 36.9, 6600),
                        Point(1.80, 38.1, 8150),
                    ],
                    VoltageSlope = V(-0.018, 0.0054, "emitter.main.voltage_slope"),
                    FluxHot = new(V(358.15), V(0.9, 0, "emitter.main.flux_hot.factor")),
                    CurrentMax = V(2),
                    JunctionMax = V(393.15),
                    JunctionToCase = V(0.28, 0.042, "emitter.main.junction_to_case"),
                    Body = new(V(0.028), V(0.028)),
                    Face = new(V(0.022), V(0.022)),
                    FaceIsRound = true,
                    Beam = V(115 * Math.PI / 180, 0, "emitter.main.beam"),
                    Cct = V(4000),
                },
            ],
            Drivers =
            [
                new("main")
                {
                    Rated = V(1.75),
                    Least = V(0.25),
                    WindowLeast = V(24),
                    WindowMost = V(42),
                    Efficiency = V(0.89, 0.02, "driver.main.efficiency"),
                    Sense = new(
                        ["R39", "R39"],
                        null,
                        V(1.74, 0.0348, "driver.main.sense.measured.at"),
                        SenseSide.Secondary,
                        SenseCurrent.Smooth
                    ),
                    Isolated = Known.Yes,
                    RippleDepth = V(0.05, 0.02, "driver.main.ripple.depth"),
                    RippleFrequency = V(100),
                    Box = new(V(0.13), V(0.042), V(0.032)),
                    Mass = V(0.26),
                },
            ],
            Steps = new()
            {
                Switches = 4,
                Targets = new(TargetKind.Stops, V(1.4), 0.5, 5, []),
                Chosen = new(null, [One(0.12), One(0.16), One(0.24), One(0.36)]),
                LeadLength = V(0.12, 0, "steps.lead.length"),
            },
            Interfaces =
            [
                new(
                    "main",
                    ["emitter.main", "sink.main"],
                    V(60e-6, 30e-6, "interface.main.thickness"),
                    V(3, 0.45, "interface.main.conductivity")
                ),
            ],
            Sinks =
            [
                new("main")
                {
                    Across = V(0.07),
                    Along = V(0.1),
                    BaseThickness = V(0.006),
                    FinCount = 16,
                    FinHeight = V(0.048),
                    FinThickness = V(0.001),
                    Emitters = [new("main", new(V(0.035), V(0.05)))],
                },
            ],
            Fans =
            [
                new("main")
                {
                    Box = new(V(0.06), V(0.06), V(0.025)),
                    Mass = V(0.078),
                    Curve =
                    [
                        new(V(0), V(42)),
                        new(V(12 / 3600.0), V(30)),
                        new(V(24 / 3600.0), V(17)),
                        new(V(36 / 3600.0), V(0)),
                    ],
                    Rated = V(12),
                    RunAt = V(10, 0, "fan.main.run_at"),
                    Air = ["tray.air_in", "sink.main", "tray.air_out"],
                },
            ],
            Reflectors =
            [
                new("main")
                {
                    Small = new(V(0.046), V(0.046)),
                    Large = new(V(0.268), V(0.168)),
                    Depth = V(0.072),
                    Reflectance = V(0.62, 0.05, "reflector.main.reflectance"),
                    Specular = V(0.15, 0.1, "reflector.main.specular"),
                },
            ],
            Diffusers =
            [
                new("front")
                {
                    Size = new(V(0.268), V(0.168)),
                    Transmittance = V(0.62, 0.04, "diffuser.front.transmittance"),
                    Reflectance = V(0.3, 0.04, "diffuser.front.reflectance"),
                },
            ],
            Subject = new() { Distance = V(0.55, 0, "subject.distance"), Size = new(V(0.29), V(0.43)) },
            Sheets =
            [
                new("mild")
                {
                    Thickness = V(0.0012, 0.00006, "sheet.mild.thickness"),
                    Radius = V(0.0016, 0.0003, "sheet.mild.radius"),
                },
            ],
            Parts =
            [
                new("tray")
                {
                    Sheet = "mild",
                    Face = new(V(0.15), V(0.074)),
                    FaceIsInside = true,
                    Flanges =
                    [
                        Wall("fan_end", "left"),
                        Wall("vent_end", "right"),
                        Wall("a", "top"),
                        Wall("b", "bottom"),
                    ],
                    Holes =
                    [
                        new("air_in", "fan_end")
                        {
                            At = new(null, V(0.032)),
                            Shape = new(HoleKind.Round, V(0.054), V(0.054), null),
                        },
                        new("air_out", "vent_end")
                        {
                            At = new(null, V(0.032)),
                            Shape = new(HoleKind.Round, V(0.005), V(0.005), null),
                            Layout = new FieldLayout(V(0.007), true, new(V(0.058), V(0.046))),
                        },
                    ],
                },
            ],
        };

    private static Flange Wall(string id, string edge) =>
        new(id, "face." + edge, V(0.062), true, V(Math.PI / 2), null, null, null);

    private static EmitterPoint Point(double amps, double volts, double lumens) => new(V(amps), V(volts), V(lumens));

    private static ChosenPosition One(double ohm) => new(Joining.One, [V(ohm)], []);

    private static Value V(double nominal, double halfWidth = 0, string path = "") =>
        new(nominal, halfWidth, Origin.Given, path);
}
