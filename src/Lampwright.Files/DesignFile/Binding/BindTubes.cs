using Lampwright.Design;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Tubes cut to length.</summary>
internal static class BindTubes
{
    public static Tube? Tube(TableReader r)
    {
        var (size, wall, length) = (r.Size("size"), r.Optional("wall"), r.Optional("length"));
        var (corner, material) = (r.Optional("corner"), r.Text("material"));
        var (start, end) = (End(r.Table("start")), End(r.Table("end")));
        return size is null || wall is null || length is null
            ? null
            : new Tube(size, wall, length, corner, material) { Start = start, End = end };
    }

    private static TubeEnd? End(TableReader r)
    {
        var (angle, on) = (r.Optional("angle"), r.Choice("on"));
        return angle is null ? null : new TubeEnd(angle, on == "top");
    }
}
