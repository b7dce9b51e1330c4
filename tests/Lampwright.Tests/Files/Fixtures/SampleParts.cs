using Lampwright.Evaluation.Answers;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Files.Fixtures;

/// <summary>Blanks drawn by hand: a tray with two walls, a vent field and a fan hole; a plate; a part longer than any sheet of paper.</summary>
internal static class SampleParts
{
    private static readonly double t = 0.0012;

    public static PartAnswer Tray()
    {
        var outline = new Outline([
            new(Mm(0, 0)),
            new(Mm(212, 0), 0, "wall_r.far"),
            new(Mm(212, 120)),
            new(Mm(0, 120), 0, "wall_l.far"),
        ]);
        var holes = new List<BlankHole>
        {
            Round("tray.outlet", "outlet", "face", 106, 60, 86, ""),
            Round("tray.fan[1,1]", "fan", "face", 64.75, 18.75, 4.3, "M4 clearance, fan.main.mount"),
            Round("tray.fan[2,1]", "fan", "face", 147.25, 18.75, 4.3, "M4 clearance, fan.main.mount"),
            Round("tray.fan[1,2]", "fan", "face", 64.75, 101.25, 4.3, "M4 clearance, fan.main.mount"),
            Round("tray.fan[2,2]", "fan", "face", 147.25, 101.25, 4.3, "M4 clearance, fan.main.mount"),
            Round("tray.earth", "earth", "wall_r", 195, 20, 3.3, "M4 tap"),
            new(
                "tray.switch",
                "switch",
                "wall_r",
                Outline.Rectangle(Mm(192, 60), 0.013, 0.019, 0.001),
                Mm(192, 60),
                0,
                "cut-out of a rocker switch"
            ),
        };
        for (var row = 0; row < 12; row++)
        {
            for (var column = 0; column < 3; column++)
            {
                holes.Add(
                    Round(
                        $"tray.vents[{column + 1},{row + 1}]",
                        "vents",
                        "wall_l",
                        12 + (8 * column),
                        16 + (8 * row),
                        4,
                        ""
                    )
                );
            }
        }

        return Part(
            "tray",
            "part.tray",
            212,
            120,
            outline,
            holes,
            [Bend("wall_l", 44, 0, 120, false), Bend("wall_r", 170, 0, 120, true)]
        );
    }

    public static PartAnswer Plate() =>
        Part(
            "plate",
            "part.plate",
            90,
            60,
            Outline.Rectangle(Mm(45, 30), 0.09, 0.06, 0.006),
            [
                Round("plate.a", "a", "face", 10, 10, 5, "M5 clearance"),
                Round("plate.b", "b", "face", 80, 10, 5, "M5 clearance"),
                new("plate.slot", "slot", "face", Outline.Slot(Mm(45, 40), 0.02, 0.006), Mm(45, 40), 0, "slides"),
            ],
            [],
            count: 2
        );

    /// <summary>Longer and wider than a sheet of A4, with holes 300.0 mm apart across the joints of the paper.</summary>
    public static PartAnswer Long() =>
        Part(
            "long",
            "part.long",
            430,
            330,
            Outline.Rectangle(Mm(215, 165), 0.43, 0.33),
            [
                Round("long.a", "a", "face", 40, 40, 8, "M8 clearance"),
                Round("long.b", "b", "face", 340, 280, 8, "M8 clearance"),
            ],
            [Bend("lip", 400, 0, 330, false)]
        );

    private static PartAnswer Part(
        string name,
        string path,
        double width,
        double height,
        Outline outline,
        IReadOnlyList<BlankHole> holes,
        IReadOnlyList<BlankBend> bends,
        int count = 1
    )
    {
        var area = outline.Area - holes.Sum(h => h.Outline.Area);
        var mass = area * t * 7850;
        return new()
        {
            Name = name,
            Path = path,
            Sheet = "mild",
            Material = "DC01",
            ThicknessMm = t * 1e3,
            Count = count,
            BlankWidthMm = new(width, width - 0.2, width + 0.2),
            BlankHeightMm = new(height, height - 0.1, height + 0.1),
            AreaMm2 = SampleLight.About(area * 1e6, 0.002),
            MassKg = SampleLight.About(mass, 0.05),
            Blank = new(
                name,
                "mild",
                t,
                outline,
                holes,
                [.. bends.Select(b => b with { Id = $"{name}.{b.Flange}" })],
                width / 1e3,
                height / 1e3,
                area,
                mass,
                outline.Perimeter + holes.Sum(h => h.Outline.Perimeter),
                "DIN 6935"
            ),
            Folded = new(
                name,
                t,
                [],
                [],
                [
                    .. holes.Select(h => new FoldedHole(
                        h.Id,
                        h.Hole,
                        "",
                        h.On,
                        new(h.Centre.X, h.Centre.Y, 0),
                        new(0, 0, 1),
                        h.Outline,
                        h.Centre,
                        h.DiameterM,
                        h.Purpose
                    )),
                ],
                [],
                mass,
                default,
                default,
                new(width / 1e3, height / 1e3, 0.05),
                area * t
            ),
            Solid = new(() => Body(name, width / 1e3, height / 1e3)),
        };
    }

    private static SceneBody Body(string name, double w, double h) =>
        new(
            name,
            name,
            [
                new(
                    $"{name}.face.outside",
                    [new(0, 0, 0), new(w, 0, 0), new(w, h, 0), new(0, h, 0)],
                    [new(0, 0, 1), new(0, 0, 1), new(0, 0, 1), new(0, 0, 1)],
                    [0, 1, 2, 0, 2, 3]
                ),
            ],
            [new($"{name}.face.rim", [new(0, 0, 0), new(w, 0, 0), new(w, h, 0), new(0, h, 0), new(0, 0, 0)])],
            Frame.World
        );

    private static BlankHole Round(string id, string hole, string on, double x, double y, double d, string purpose) =>
        new(id, hole, on, Outline.Circle(Mm(x, y), d / 2e3), Mm(x, y), d / 1e3, purpose);

    private static BlankBend Bend(string flange, double x, double from, double to, bool up)
    {
        Segment At(double dx) => new(Mm(x + dx, from), Mm(x + dx, to));
        return new(
            "",
            flange,
            At(0),
            At(-1.6),
            At(1.6),
            Math.PI / 2,
            up ? BendDirection.Up : BendDirection.Down,
            0.0015,
            0.0032,
            0.0022,
            0.0027
        );
    }

    private static Vec2 Mm(double x, double y) => new(x / 1e3, y / 1e3);
}
