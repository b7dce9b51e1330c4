using Lampwright.Design;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Hole patterns of bought things and holes of parts.</summary>
internal static class BindHoles
{
    public static IReadOnlyList<HolePattern> Patterns(TableReader thing) =>
        [
            .. thing
                .Named("holes")
                .Select(r =>
                {
                    var shape = r.Shape("shape");
                    var (layout, fieldShape) = r.Layout();
                    var on = r.Choice("on");
                    return new HolePattern(
                        r.Name,
                        shape ?? fieldShape,
                        r.Text("for"),
                        layout,
                        r.Spot("at"),
                        on.Length == 0 ? "back" : on,
                        r.Optional("through")
                    );
                }),
        ];

    public static IReadOnlyList<Hole> Holes(TableReader part) =>
        [
            .. part.Named("hole")
                .Select(r =>
                {
                    var on = r.Reference("on", part.Name);
                    var shape = BindOutlines.Cut(r) ?? r.Shape("shape");
                    var receives = r.Reference("for");
                    var (layout, fieldShape) = r.Layout();
                    var cutout = r.Choice("cutout");
                    if (
                        shape is null
                        && fieldShape is null
                        && receives.Length == 0
                        && !r.Has("shape")
                        && !r.Has("outline")
                        && !r.Has("field")
                        && !r.Has("cutout")
                    )
                    {
                        r.Context.Wrong(
                            r.Written!,
                            r.Path,
                            "has neither shape, outline, cutout nor for",
                            "shape = \"round 4.3 mm\" or for = \"fan.main.mount\""
                        );
                    }

                    var own =
                        r.Has("outline") ? "outline"
                        : r.Has("shape") ? "shape"
                        : "for";
                    if (cutout.Length > 0 && (own != "for" || receives.Length > 0))
                    {
                        r.Context.Wrong(
                            r.Node("cutout")!,
                            r.Path + ".cutout",
                            $"stands beside {own}",
                            "one of cutout, shape, outline and for"
                        );
                        cutout = "";
                    }

                    return new Hole(r.Name, on)
                    {
                        At = r.Spot("at"),
                        Shape = shape ?? fieldShape,
                        For = receives,
                        CutOut = cutout,
                        Layout = layout,
                        Turn = r.Optional("turn"),
                        Live = r.Optional("live"),
                    };
                }),
        ];
}
