using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Files.Drawings;

/// <summary>Blanks made by hand, so that the writers are tested apart from the station that computes blanks.</summary>
internal static class SampleBlanks
{
    /// <summary>A plate of 60 × 40 mm with a slot, a round hole and rounded corners; areas known by formula.</summary>
    public static Blank Plate(string name = "plate")
    {
        var outline = Outline.Rectangle(new(0.030, 0.020), 0.060, 0.040, 0.005);
        return Of(
            name,
            outline,
            [
                Hole($"{name}.face.slot", "slot", Outline.Slot(new(0.030, 0.028), 0.026, 0.006), new(0.030, 0.028), 0),
                Round($"{name}.face.mount", "mount", new(0.015, 0.012), 0.0043, "M4 clearance"),
            ],
            []
        );
    }

    /// <summary>A tray: four walls of 40 mm with notched corners, two lips, a fan's opening, vents, mounting holes.</summary>
    public static Blank Tray()
    {
        const double wall = 0.040;
        const double lip = 0.014;
        var (w, h) = (0.120, 0.110);
        // x from the left: lip, wall, face, wall, lip; y: wall, face, wall.
        double[] x = [0, lip, lip + wall, lip + wall + w, lip + wall + w + wall, lip + wall + w + wall + lip];
        double[] y = [0, wall, wall + h, wall + h + wall];
        var outline = new Outline([
            new(new(x[2], y[0])),
            new(new(x[3], y[0])),
            new(new(x[3], y[1])),
            new(new(x[4], y[1])),
            new(new(x[5], y[1] + 0.006)),
            new(new(x[5], y[2] - 0.006)),
            new(new(x[4], y[2])),
            new(new(x[3], y[2])),
            new(new(x[3], y[3])),
            new(new(x[2], y[3])),
            new(new(x[2], y[2])),
            new(new(x[1], y[2])),
            new(new(x[0], y[2] - 0.006)),
            new(new(x[0], y[1] + 0.006)),
            new(new(x[1], y[1])),
            new(new(x[2], y[1])),
        ]);
        var holes = new List<BlankHole>();
        var middle = new Vec2((x[2] + x[3]) / 2, (y[1] + y[2]) / 2);
        holes.Add(Round("tray.face.outlet", "outlet", middle, 0.086, ""));
        foreach (var (i, j) in (ReadOnlySpan<(int, int)>)[(0, 0), (1, 0), (0, 1), (1, 1)])
        {
            var at = middle + new Vec2((i - 0.5) * 0.0825, (j - 0.5) * 0.0825);
            holes.Add(Round($"tray.face.fan[{i + 1},{j + 1}]", "fan", at, 0.0045, "fan.main.mount"));
        }

        for (var row = 0; row < 4; row++)
        {
            for (var column = 0; column < 10; column++)
            {
                var at = new Vec2(lip + 0.010 + (row * 0.0052), y[1] + 0.027 + (column * 0.006) + (row % 2 * 0.003));
                holes.Add(
                    Round($"tray.wall_l.vents[{row + 1},{column + 1}]", "vents", at, 0.004, "") with
                    {
                        On = "wall_l",
                    }
                );
            }
        }

        var slot = Outline
            .Slot(default, 0.016, 0.005)
            .Moved(p => p.Turned(Math.PI / 2) + new Vec2(x[3] + 0.020, middle.Y));
        holes.Add(Hole("tray.wall_r.pivot", "pivot", slot, new(x[3] + 0.020, middle.Y), 0) with { On = "wall_r" });
        holes.Add(
            Hole(
                "tray.wall_b.inlet",
                "inlet",
                Outline.Rectangle(new(middle.X - 0.02, 0.018), 0.0275, 0.020, 0.003),
                new(middle.X - 0.02, 0.018),
                0
            ) with
            {
                On = "wall_b",
                Purpose = "item.inlet.cutout",
            }
        );
        return Of(
            "tray",
            outline,
            holes,
            [
                Bend("wall_b", new(x[2], y[1]), new(x[3], y[1])),
                Bend("wall_t", new(x[3], y[2]), new(x[2], y[2])),
                Bend("wall_l", new(x[2], y[2]), new(x[2], y[1])),
                Bend("wall_r", new(x[3], y[1]), new(x[3], y[2])),
                Bend("lip_l", new(x[1], y[2]), new(x[1], y[1])),
                Bend("lip_r", new(x[4], y[1]), new(x[4], y[2]), BendDirection.Up),
            ]
        );
    }

    public static BlankHole Round(string id, string hole, Vec2 at, double diameter, string purpose) =>
        new(id, hole, "face", Outline.Circle(at, diameter / 2), at, diameter, purpose);

    public static BlankHole Hole(string id, string hole, Outline outline, Vec2 at, double diameter) =>
        new(id, hole, "face", outline, at, diameter, "");

    public static Blank Of(
        string name,
        Outline outline,
        IReadOnlyList<BlankHole> holes,
        IReadOnlyList<BlankBend> bends,
        double thickness = 0.0012
    )
    {
        var (least, most) = outline.Box;
        var area = outline.Area - holes.Sum(h => h.Outline.Area);
        return new(
            name,
            "mild",
            thickness,
            outline,
            holes,
            bends,
            most.X - least.X,
            most.Y - least.Y,
            area,
            area * thickness * 7850,
            outline.Perimeter + holes.Sum(h => h.Outline.Perimeter),
            "DIN 6935"
        );
    }

    private static BlankBend Bend(string flange, Vec2 a, Vec2 b, BendDirection direction = BendDirection.Down)
    {
        var off = (b - a).Unit.Left * 0.0015;
        return new(
            "tray." + flange,
            flange,
            new(a, b),
            new(a + off, b + off),
            new(a - off, b - off),
            Math.PI / 2,
            direction,
            0.0015,
            0.003,
            0.0024,
            0.0027
        );
    }
}
