using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

/// <summary>Invented parts that several tests use. Millimetres in, metres out.</summary>
internal static class Parts
{
    public static SheetSpec Mild { get; } = new("mild", 0.0015, 0.0015, BendRule.Din6935);

    public static PartSpec Box(double w, double h, double d, SheetSpec? sheet = null, double angle = Math.PI / 2) =>
        new("box", sheet ?? Mild, FaceSpec.Rectangle(w / 1000, h / 1000))
        {
            Flanges =
            [
                new("wall_b", "face.bottom", d / 1000, angle),
                new("wall_r", "face.right", d / 1000, angle),
                new("wall_t", "face.top", d / 1000, angle),
                new("wall_l", "face.left", d / 1000, angle),
            ],
        };

    /// <summary>A box with lips turned in on all walls.</summary>
    public static PartSpec Tray(double lip = 14)
    {
        var box = Box(120, 80, 30);
        return box with
        {
            Name = "tray",
            Flanges =
            [
                .. box.Flanges,
                new("lip_b", "wall_b.far", lip / 1000),
                new("lip_r", "wall_r.far", lip / 1000),
                new("lip_t", "wall_t.far", lip / 1000),
                new("lip_l", "wall_l.far", lip / 1000),
            ],
        };
    }
}
