using Lampwright.Design;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Items, joints, assembly, tilt, arm and stand.</summary>
internal static class BindFitUp
{
    public static Item Item(TableReader r) =>
        new(r.Name)
        {
            Box = r.Box("box"),
            Mass = r.Optional("mass"),
            Cutout = r.Choice("cutout"),
            Holes = BindHoles.Patterns(r),
            Note = r.Text("note"),
        };

    public static Joint Joint(TableReader r) =>
        new(r.Name)
        {
            Stack = r.References("stack", null),
            Sides = r.Texts("sides"),
            Turn = r.Optional("turn"),
            Screw = Screw(r.Table("screw")),
            Marked = r.Choice("marked") switch
            {
                "by hand" => Marking.ByHand,
                "centre punched" => Marking.CentrePunched,
                "drilled together" => Marking.DrilledTogether,
                _ => Marking.ByTemplate,
            },
        };

    public static Assembly? Assembly(TableReader r)
    {
        if (!r.IsThere)
        {
            return null;
        }

        var (part, gravity) = (r.Reference("fixed"), r.Choice("gravity"));
        return part.Length == 0 ? null : new Assembly(part, gravity);
    }

    public static Tilt Tilt(TableReader r) =>
        new(r.Name)
        {
            Between = r.References("between", 2),
            Screws = r.Count("screws", 2),
            Screw = r.Text("screw"),
            Torque = r.WithDefault("torque"),
            Faces = r.Count("faces", 2),
            Washer = Washer(r),
            Friction = r.WithDefault("friction"),
        };

    public static Arm? Arm(TableReader r)
    {
        var (length, width, height) = (r.Optional("length"), r.Optional("width"), r.Optional("height"));
        var (wall, material) = (r.Optional("wall"), r.Text("material"));
        return length is null || width is null || height is null
            ? null
            : new Arm(r.Name, length, width, height, wall, material);
    }

    public static Stand? Stand(TableReader r)
    {
        var (height, foot) = (r.Optional("height"), r.Optional("foot"));
        var (mass, offset) = (r.Optional("mass"), r.WithDefault("offset"));
        return height is null || foot is null || mass is null ? null : new Stand(r.Name, height, foot, mass, offset);
    }

    private static Screw? Screw(TableReader r)
    {
        var (size, length) = (r.Text("size"), r.Optional("length"));
        var (nut, washers) = (r.Flag("nut"), r.Count("washers", 0));
        return length is null || size.Length == 0 ? null : new Screw(size, length, nut, washers);
    }

    private static Size? Washer(TableReader r)
    {
        var washer = r.Size("washer");
        if (washer is not null && washer.Width.Nominal >= washer.Height.Nominal)
        {
            r.Context.Wrong(
                r.Node("washer")!,
                r.Path + ".washer",
                "has an outer diameter no larger than the inner",
                "inner, then outer diameter"
            );
            return null;
        }

        return washer;
    }
}
