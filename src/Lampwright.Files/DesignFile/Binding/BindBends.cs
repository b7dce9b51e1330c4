using Lampwright.Design;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Reliefs, hems, joggles and the short forms of brackets.</summary>
internal static class BindBends
{
    public static Relief? Relief(TableReader r)
    {
        var corner = r.Choice("corner");
        var (hole, width, depth, gap) = (
            r.Optional("hole"),
            r.Optional("width"),
            r.Optional("depth"),
            r.Optional("gap")
        );
        return r.IsThere ? new Relief(corner.Length == 0 ? "notch" : corner, hole, width, depth, gap) : null;
    }

    public static Hem? Hem(TableReader r, string part)
    {
        var on = r.Reference("on", part);
        var (width, start, end) = (r.Optional("width"), r.Optional("start"), r.Optional("end"));
        var outside = r.Choice("side") == "outside";
        return width is null ? null : new Hem(r.Name, on, width, outside, start, end);
    }

    public static Joggle? Joggle(TableReader r, string part)
    {
        var on = r.Reference("on", part);
        var (lap, offset, angle) = (r.Optional("lap"), r.Optional("offset"), r.Optional("angle"));
        var (start, end) = (r.Optional("start"), r.Optional("end"));
        var outside = r.Choice("side") == "outside";
        return lap is null ? null : new Joggle(r.Name, on, lap, offset, angle, outside, start, end);
    }

    /// <summary>A bracket written out as the face and flanges that it is short for; null where none is given.</summary>
    public static (Size Face, bool FaceIsInside, IReadOnlyList<Flange> Legs)? Bracket(TableReader r)
    {
        var shape = r.Choice("shape");
        var length = r.Optional("length");
        var (web, legs) = (r.Table("web"), r.Table("legs"));
        var (webInside, webOutside) = (web.Optional("inside"), web.Optional("outside"));
        var (legsInside, legsOutside) = (legs.OneOrTwo("inside"), legs.OneOrTwo("outside"));
        if (!r.IsThere)
        {
            return null;
        }

        BindMetal.OneOfTwo(web, "inside", "outside");
        BindMetal.OneOfTwo(legs, "inside", "outside");
        if (
            length is null
            || (webOutside ?? webInside) is not { } width
            || (legsOutside ?? legsInside) is not { } heights
        )
        {
            return null;
        }

        Flange Leg(string id, string edge, Value height, double turn) =>
            new(
                id,
                edge,
                height,
                legsOutside is null,
                new Value(turn, 0, Origin.Computed, $"{r.Path}.shape"),
                null,
                null,
                null
            );
        var a = Leg("leg_a", "face.left", heights.Size.Width, Math.PI / 2);
        var b = Leg("leg_b", "face.right", heights.Size.Height, shape == "Z" ? -Math.PI / 2 : Math.PI / 2);
        return (new Size(width, length), webOutside is null, shape == "L" ? [a] : [a, b]);
    }
}
