using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>Sheets, brake and folded parts.</summary>
internal static class SchemaMetal
{
    public static void Add(List<SchemaKey> keys)
    {
        Stock(new SchemaList(keys, "", "metal", inShop: true));
        Part(new SchemaList(keys, "", "metal"));
    }

    private static void Stock(SchemaList top)
    {
        var sheet = top.Table("sheet", "Sheet stock.", kind: KeyKind.NamedTables);
        sheet
            .Text(
                "material",
                "Its material, by name.",
                @default: "DC01",
                source: "plain steel sheet; common practice, no source"
            )
            .Length("thickness", "0.1 mm", "10 mm", "Thickness.", required: true)
            .Length(
                "size",
                "10 mm",
                "10 m",
                "Length and width of a whole sheet.",
                kind: KeyKind.TwoQuantities,
                absent: "large enough"
            )
            .Length("radius", "0 mm", "100 mm", "Inside radius as the brake makes it.", absent: "the thickness")
            .Other(
                "bend",
                KeyKind.Table,
                "How blanks are computed: \"DIN 6935\", \"handbook\", \"strips\", or a table with k.",
                absent: "DIN 6935",
                example: "\"DIN 6935\""
            );
        new SchemaList(sheet.Keys, "sheet.*.bend", "metal", inShop: true).Quantity(
            "k",
            Dimension.None,
            "0.2",
            "0.6",
            "Neutral fibre as a share of the thickness.",
            absent: "the method's own"
        );
        sheet
            .Table(
                "strips",
                "Test strips that the maker bent once each, for bend = \"strips\".",
                kind: KeyKind.ListOfTables,
                absent: "none"
            )
            .Length("length", "5 mm", "2 m", "Length before bending.", required: true)
            .Length(
                "legs",
                "1 mm",
                "2 m",
                "Both legs after bending, outside.",
                required: true,
                kind: KeyKind.TwoQuantities
            )
            .Quantity(
                "angle",
                Dimension.Angle,
                "1 deg",
                "180 deg",
                "Angle turned.",
                @default: "90 deg",
                source: "a square bend"
            );
        sheet.Quantity(
            "emissivity",
            Dimension.None,
            "0.01",
            "1",
            "Emissivity of the finished surface.",
            @default: "0.9 ± 0.05",
            source: "painted sheet; common practice, no source"
        );

        var brake = top.Table("brake", "The brake.");
        brake
            .Length(
                "length",
                "50 mm",
                "10 m",
                "Longest bend.",
                @default: "1 m",
                source: "a hand brake; common practice, no source"
            )
            .Length(
                "least_flange",
                "0.5 mm",
                "500 mm",
                "Shortest flange that it holds, outside.",
                @default: "8 mm",
                source: "common practice, no source"
            )
            .Quantity(
                "closing",
                Dimension.Angle,
                "10 deg",
                "180 deg",
                "Largest angle it turns.",
                @default: "120 deg",
                source: "common practice, no source"
            )
            .Length(
                "nose_radius",
                "0 mm",
                "50 mm",
                "Radius of the nose of its clamp, from which the set lines follow.",
                absent: "the inside radius of each bend"
            )
            .Length(
                "nose_back",
                "0 mm",
                "50 mm",
                "How far the foremost edge of the nose is set behind the apron's axis.",
                absent: "set for each bend as its sheet says"
            )
            .Length(
                "capacity",
                "0.1 mm",
                "10 mm",
                "Thickest mild steel (340 MPa) it bends over its whole length.",
                absent: "not checked"
            );
        SchemaBrake.Shape(brake);
    }

    private static void Part(SchemaList top)
    {
        var part = top.Table(
            "part",
            "Folded parts: a face with a tree of flanges, panels of a funnel, or the mirror of another.",
            kind: KeyKind.NamedTables
        );
        part.Refers(
                "sheet",
                "sheet",
                "The sheet it is cut from.",
                absent: "that of the part it mirrors; a tube has none"
            )
            .Count("count", 1, 1000, "How many are made.", absent: "1");
        part.Table(
                "face",
                "The face: width and height, inside or outside of its flanges.",
                absent: "panels or mirror are used"
            )
            .Length("inside", "1 mm", "10 m", "Size inside.", kind: KeyKind.TwoQuantities, absent: "outside is used")
            .Length("outside", "1 mm", "10 m", "Size outside.", kind: KeyKind.TwoQuantities, absent: "inside is used")
            .Length(
                "outline",
                "-10 m",
                "10 m",
                "Corners of a face that is no rectangle (a trapezoid, a cut-off corner), counter-clockwise seen on the outside, to the outside of its bends; its edges are e1, e2 … from the first corner on.",
                kind: KeyKind.Places,
                absent: "inside or outside is used",
                example: "[[\"0 mm\", \"0 mm\"], [\"80 mm\", \"0 mm\"], [\"60 mm\", \"50 mm\"], [\"20 mm\", \"50 mm\"]]"
            )
            .Length("round", "0.1 mm", "1 m", "Radius of the corners that no flange touches.", absent: "sharp")
            .Length(
                "mitre",
                "0.1 mm",
                "1 m",
                "Leg by which the corners that no flange touches are cut off.",
                absent: "sharp"
            );
        SchemaTubes.Tube(part);
        SchemaBends.Bracket(part);
        SchemaBends.Relief(part);
        SchemaBends.Hems(part);
        SchemaBends.Joggles(part);
        var flange = part.Table(
            "flange",
            "Flanges, each on a free edge of the face or of another flange.",
            kind: KeyKind.NamedTables,
            absent: "none"
        );
        flange.Refers("on", "edge", "The edge it stands on.", required: true, example: "face.left");
        flange
            .Table("height", "Its height, inside or outside.", required: true)
            .Length("inside", "0.1 mm", "5 m", "Height inside.", absent: "outside is used")
            .Length("outside", "0.1 mm", "5 m", "Height outside.", absent: "inside is used");
        flange
            .Quantity(
                "angle",
                Dimension.Angle,
                "-180 deg",
                "180 deg",
                "Angle turned from flat; positive folds away from the outside.",
                @default: "90 deg",
                source: "a square bend"
            )
            .Length("start", "0 mm", "10 m", "Distance of its start from the start of the edge.", absent: "0 mm")
            .Length("end", "0 mm", "10 m", "Distance of its end from the end of the edge.", absent: "0 mm")
            .Length("radius", "0 mm", "100 mm", "Inside radius.", absent: "the sheet's")
            .Quantity(
                "start_slant",
                Dimension.Angle,
                "-80 deg",
                "80 deg",
                "Slant of its start; positive narrows it towards far.",
                absent: "square, mitred where lips would meet"
            )
            .Quantity(
                "end_slant",
                Dimension.Angle,
                "-80 deg",
                "80 deg",
                "Slant of its end; positive narrows it towards far.",
                absent: "square, mitred where lips would meet"
            );
        SchemaHoles.Holes(part);
        part.Table("seam", "Edges that meet when folded and are joined.", kind: KeyKind.NamedTables, absent: "none")
            .Refers(
                "between",
                "edge",
                "The two edges.",
                required: true,
                kind: KeyKind.References,
                example: "[\"wall_l.start\", \"wall_t.end\"]"
            )
            .Text(
                "kind",
                "Kind of joint.",
                @default: "outside corner",
                source: "common practice, no source",
                example: "outside corner"
            )
            .Length("gap", "0 mm", "20 mm", "Gap left for the weld.", absent: "0 mm");
        part.Table("panels", "A funnel of four, six or eight flat panels between two openings.", absent: "face is used")
            .Length(
                "small",
                "1 mm",
                "5 m",
                "Small opening, inside, across its flats: right to left (of six panels across each slanted pair) and bottom to top; of six and eight regular where both are equal.",
                required: true,
                kind: KeyKind.TwoQuantities
            )
            .Length(
                "large",
                "1 mm",
                "5 m",
                "Large opening, inside, likewise.",
                required: true,
                kind: KeyKind.TwoQuantities
            )
            .Length("depth", "1 mm", "5 m", "Distance between the openings.", required: true)
            .Choice("sides", ["four", "six", "eight"], "How many panels go round.", absent: "four")
            .Length(
                "lip",
                "2 mm",
                "200 mm",
                "Width of a lip at the end of each panel, bent to lie under its neighbour for the weld.",
                absent: "none, the corners stay open outside for the weld"
            )
            .Choice("blanks", ["separate", "joined"], "Each panel its own blank, or all in one.", absent: "separate");
        part.Choice(
                "grain",
                ["x", "y"],
                "Rolling direction of the sheet along x or y of the face; of a mirrored part that of the other.",
                absent: "not known"
            )
            .Length(
                "live",
                "0 mm",
                "2 m",
                "Least distance from its openings to live parts behind them; openings are then held against finger and wire.",
                absent: "no live parts behind it"
            )
            .Refers(
                "hands",
                "edge",
                "Edges where hands go.",
                kind: KeyKind.References,
                absent: "none",
                example: "[\"wall_l.far\"]"
            );
        part.Refers("mirror", "part", "The part this one mirrors.", absent: "none")
            .Text("note", "What the maker notes beside it.", absent: "nothing");
    }
}
