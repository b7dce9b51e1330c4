using Lampwright.FitUp;
using Lampwright.Geometry;

namespace Lampwright.Tests.FitUp;

/// <summary>Plates and boxes made by hand.</summary>
internal static class Bodies
{
    /// <summary>A grid of holes about a point on the plane z = 0, outward +z.</summary>
    public static PatternSpec Grid(
        string id,
        int columns,
        int rows,
        double pitchX,
        double pitchY,
        Vec3 centre = default,
        double diameter = 0.0045,
        double thickness = 0.0012
    )
    {
        var holes = new List<PatternHole>();
        for (var j = 0; j < rows; j++)
        {
            for (var i = 0; i < columns; i++)
            {
                holes.Add(
                    new(
                        $"{id}[{i + 1},{j + 1}]",
                        centre + new Vec3((i - ((columns - 1) / 2.0)) * pitchX, (j - ((rows - 1) / 2.0)) * pitchY, 0)
                    )
                );
            }
        }

        return new(id, holes, new(0, 0, 1), new(1, 0, 0), diameter, thickness);
    }

    /// <summary>A fan of 92 mm and 25 mm depth, its holes on the back (z = 0, outward −z), zero at a corner.</summary>
    public static BodySpec Fan(double pitch = 0.0825, double diameter = 0.0043) =>
        new(
            "fan.main",
            0.11,
            new(0.046, 0.046, 0.0125),
            [
                Grid("fan.main.mount", 2, 2, pitch, pitch, new(0.046, 0.046, 0), diameter, 0.025) with
                {
                    Outward = new(0, 0, -1),
                    NearSide = "back",
                    FarSide = "front",
                    IsMadeByHand = false,
                },
            ]
        );

    /// <summary>A tray's face of 120 × 110 mm, outside at z = 0.</summary>
    public static BodySpec Tray(params PatternSpec[] more) =>
        new(
            "part.tray",
            0.4,
            new(0.06, 0.055, -0.01),
            [Grid("tray.fan", 2, 2, 0.0825, 0.0825, new(0.06, 0.055, 0)), .. more]
        );

    public static JointSpec FanJoint(double? turn = 0, HoleMarking marking = HoleMarking.DrilledTogether) =>
        new("fan", ["fan.main.mount", "tray.fan"], ["back", "outside"], turn, new("M4", 0.035, true, 1), marking);

    public static FitUpSpec FanOnTray(JointSpec? joint = null, BodySpec? fan = null) =>
        new("part.tray", [Tray(), fan ?? Fan()], [joint ?? FanJoint()]);
}
