using Lampwright.Design;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Sheets, brake and folded parts.</summary>
internal static class BindMetal
{
    public static Sheet Sheet(TableReader r) =>
        new(r.Name)
        {
            Material = r.Text("material"),
            Thickness = r.Optional("thickness"),
            Size = r.Size("size"),
            Radius = r.Optional("radius"),
            Bend = Bend(r),
            Emissivity = r.WithDefault("emissivity"),
        };

    public static Brake Brake(TableReader r) =>
        new()
        {
            Length = r.WithDefault("length"),
            LeastFlange = r.WithDefault("least_flange"),
            Closing = r.WithDefault("closing"),
            NoseRadius = r.Optional("nose_radius"),
            NoseBack = r.Optional("nose_back"),
            Capacity = r.Optional("capacity"),
            Shape = new()
            {
                Fingers = r.Has("fingers") ? r.Quantities("fingers") : NotGiven(r, "fingers"),
                FingerHeight = r.WithDefault("finger_height"),
                FingerDepth = r.WithDefault("finger_depth"),
                BeamHeight = r.WithDefault("beam_height"),
                BedDepth = r.WithDefault("bed_depth"),
                ApronDepth = r.WithDefault("apron_depth"),
                ApronThickness = r.WithDefault("apron_thickness"),
                Opening = r.WithDefault("opening"),
                LeastHold = r.WithDefault("least_hold"),
                EndGap = r.WithDefault("end_gap"),
                FingerGap = r.WithDefault("finger_gap"),
                Nose = Section(r, "nose"),
                Clamp = Section(r, "clamp"),
                Bed = Section(r, "bed"),
                Apron = Section(r, "apron"),
            },
        };

    private static IReadOnlyList<Value>? NotGiven(TableReader r, string key)
    {
        // Asked for all the same, so that the schema and the reader keep to one another.
        _ = r.Quantities(key);
        return null;
    }

    private static IReadOnlyList<Spot> Section(TableReader r, string key)
    {
        var corners = r.Spots(key);
        if (corners.Any(c => c.X is null || c.Y is null) || (r.Has(key) && corners.Count < 3))
        {
            r.Context.Wrong(
                r.Node(key)!,
                $"{r.Path}.{key}",
                "is no section",
                "three corners or more, each [x, y] in lengths"
            );
            return [];
        }

        return corners;
    }

    public static Part Part(TableReader r)
    {
        var (face, faceInside) = Face(r);
        var corners = Corners(r.Table("face"));
        var outline = r.Has("face") && face is not null ? r.Table("face").Spots("outline") : [];
        var bracket = BindBends.Bracket(r.Table("bracket"));
        if (bracket is { } shape)
        {
            if (r.Has("face"))
            {
                r.Context.Wrong(r.Node("bracket")!, r.Path + ".bracket", "stands beside face", "one of the two");
            }
            else
            {
                (face, faceInside) = (shape.Face, shape.FaceIsInside);
            }
        }

        var sheet = r.Reference("sheet");
        var mirror = r.Reference("mirror");
        var tube = BindTubes.Tube(r.Table("tube"));
        foreach (var other in (string[])["sheet", "face", "bracket", "panels", "flange", "hem", "joggle"])
        {
            if (r.Has("tube") && r.Has(other))
            {
                r.Context.Wrong(r.Node(other)!, $"{r.Path}.{other}", "stands beside tube", "one of the two");
            }
        }

        if (sheet.Length == 0 && mirror.Length == 0 && !r.Has("tube"))
        {
            r.Context.Wrong(r.Written!, r.Path, "has no sheet", "sheet = \"NAME\" of a table [sheet.NAME]");
        }

        return new Part(r.Name)
        {
            Sheet = sheet,
            Count = r.Count("count", 1),
            Face = face,
            FaceIsInside = faceInside,
            Outline = outline,
            Corners = corners,
            Relief = BindBends.Relief(r.Table("relief")),
            Hems = [.. r.Named("hem").Select(h => BindBends.Hem(h, r.Name)).OfType<Hem>()],
            Joggles = [.. r.Named("joggle").Select(j => BindBends.Joggle(j, r.Name)).OfType<Joggle>()],
            Flanges =
            [
                .. r.Has("face") ? [] : bracket?.Legs ?? [],
                .. r.Named("flange").Select(f => Flange(f, r.Name)).OfType<Flange>(),
            ],
            Holes = BindHoles.Holes(r),
            Seams =
            [
                .. r.Named("seam")
                    .Select(s => new Seam(
                        s.Name,
                        s.References("between", 2, r.Name),
                        s.Text("kind"),
                        s.Optional("gap")
                    )),
            ],
            Panels = Panels(r.Table("panels")),
            Tube = tube,
            Mirror = mirror.Length == 0 ? null : mirror,
            Grain = r.Choice("grain"),
            Live = r.Optional("live"),
            Hands = r.References("hands", null, r.Name),
            Note = r.Text("note"),
        };
    }

    private static Flange? Flange(TableReader r, string part)
    {
        var on = r.Reference("on", part);
        var height = r.Table("height");
        var (inside, outside) = (height.Optional("inside"), height.Optional("outside"));
        OneOfTwo(height, "inside", "outside");
        var angle = r.WithDefault("angle");
        var (start, end, radius) = (r.Optional("start"), r.Optional("end"), r.Optional("radius"));
        var (startSlant, endSlant) = (r.Optional("start_slant"), r.Optional("end_slant"));
        return (outside ?? inside) is { } found
            ? new Flange(r.Name, on, found, outside is null, angle, start, end, radius)
            {
                StartSlant = startSlant,
                EndSlant = endSlant,
            }
            : null;
    }

    private static (Size? Face, bool IsInside) Face(TableReader r)
    {
        var face = r.Table("face");
        var (inside, outside) = (face.Size("inside"), face.Size("outside"));
        if (!face.Has("outline"))
        {
            OneOfTwo(face, "inside", "outside");
        }
        else if (face.Has("inside") || face.Has("outside"))
        {
            face.Context.Wrong(
                face.Node("outline")!,
                face.Path + ".outline",
                $"stands beside {(face.Has("inside") ? "inside" : "outside")}",
                "one of the two"
            );
        }

        return Box(face) is { } box ? (box, false) : (outside ?? inside, outside is null && inside is not null);
    }

    /// <summary>The box round an outline, which stands for it where only its size counts; null without an outline.</summary>
    private static Size? Box(TableReader face)
    {
        var outline = BindOutlines.Corners(face);
        return outline is null ? null : BindOutlines.Box(outline, face.Path + ".outline");
    }

    private static FaceCorners? Corners(TableReader face)
    {
        var (round, mitre) = (face.Optional("round"), face.Optional("mitre"));
        if (round is not null && mitre is not null)
        {
            face.Context.Wrong(face.Node("mitre")!, face.Path + ".mitre", "stands beside round", "one of the two");
        }

        return (round ?? mitre) is { } size ? new FaceCorners(round is not null, size) : null;
    }

    internal static void OneOfTwo(TableReader r, string one, string other)
    {
        if (r.IsThere && r.Has(one) == r.Has(other))
        {
            r.Context.Wrong(
                r.Written!,
                r.Path,
                r.Has(one) ? $"says both {one} and {other}" : $"says neither {one} nor {other}",
                $"one of them, as in {{ {other} = ... }}"
            );
        }
    }

    private static FunnelPanels? Panels(TableReader r)
    {
        var (small, large, depth) = (r.Size("small"), r.Size("large"), r.Optional("depth"));
        var separate = r.Choice("blanks") != "joined";
        var lip = r.Optional("lip");
        var sides = r.Choice("sides") switch
        {
            "six" => 6,
            "eight" => 8,
            _ => 4,
        };
        return small is null || large is null || depth is null
            ? null
            : new FunnelPanels(small, large, depth, separate) { Sides = sides, Lip = lip };
    }

    private static BendMethod Bend(TableReader r)
    {
        var strips = r.Tables("strips").Select(Strip).OfType<TestStrip>().ToList();
        if (r.Node("bend") is not DocScalar scalar)
        {
            var k = r.Table("bend").Optional("k");
            return k is null ? new BendMethod("DIN 6935", null, strips) : new BendMethod("k", k, strips);
        }

        _ = r.Table("bend", scalar).Optional("k");
        switch (scalar.Text)
        {
            case "DIN 6935" or "handbook":
                return new BendMethod(scalar.Text, null, strips);
            case "strips":
                if (strips.Count == 0)
                {
                    r.Context.Wrong(
                        scalar,
                        r.Path + ".bend",
                        "has no strips to go by",
                        "strips = [{ length = ..., legs = [...] }] beside it"
                    );
                }

                return new BendMethod("strips", null, strips);
            default:
                r.Context.Wrong(
                    scalar,
                    r.Path + ".bend",
                    "is no method",
                    "\"DIN 6935\", \"handbook\", \"strips\" or { k = 0.42 }"
                );
                return new BendMethod("DIN 6935", null, strips);
        }
    }

    private static TestStrip? Strip(TableReader r)
    {
        var (length, legs, angle) = (r.Optional("length"), r.Two("legs"), r.WithDefault("angle"));
        return length is null || legs is not { } both ? null : new TestStrip(length, both.First, both.Second, angle);
    }
}
