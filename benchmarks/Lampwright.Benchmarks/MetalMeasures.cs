using System.Globalization;
using System.Text;
using Lampwright.Files.Drawings;
using Lampwright.Files.Opening;
using Lampwright.Files.Packet;
using Lampwright.Files.Packet.Templates;
using Lampwright.Metal;

namespace Lampwright.Benchmarks;

/// <summary>Work of the metal station that has goals of its own. Invented parts.</summary>
internal static class MetalMeasures
{
    private static readonly SheetSpec Mild = new("mild", 0.001, 0.001, BendRule.Din6935, 7850)
    {
        TensileStrengthPa = 340e6,
    };

    /// <summary>A tray with lips on all walls and returns on those: 12 bends; 200 holes in face and walls.</summary>
    public static PartSpec TwelveBends { get; } =
        new("tray", Mild, FaceSpec.Rectangle(0.36, 0.26))
        {
            Flanges =
            [
                .. new[] { "bottom", "right", "top", "left" }.SelectMany(edge =>
                    new FlangeSpec[]
                    {
                        new($"wall_{edge}", $"face.{edge}", 0.08),
                        new($"lip_{edge}", $"wall_{edge}.far", 0.02),
                        new($"return_{edge}", $"lip_{edge}.far", 0.012, Math.PI / 3),
                    }
                ),
            ],
            Holes =
            [
                Grid("vents", "face", 12, 10, 0.02),
                Grid("air_l", "wall_left", 8, 4, 0.012),
                Grid("air_r", "wall_right", 8, 4, 0.012),
                Grid("mount", "wall_top", 8, 2, 0.016),
            ],
        };

    /// <summary>A plate with a staggered field of about so many holes.</summary>
    public static PartSpec Perforated(int holes)
    {
        var side = 0.006 * Math.Sqrt(holes * Math.Sqrt(3) / 2);
        return new("vent", Mild, FaceSpec.Rectangle(side + 0.02, side + 0.02))
        {
            Holes =
            [
                new("field", "face", default, HoleShape.Round(0.004), HoleAnchor.Centre)
                {
                    Pattern = HolePattern.Field(0.006, side, side, staggered: true),
                },
            ],
        };
    }

    /// <summary>Blank, fold and checks; fails where the part is not what the goal speaks of.</summary>
    public static PartResult Fold(PartSpec part, int bends, int leastHoles)
    {
        var result = SheetPart.Of(part);
        return result.Blank is { } blank && blank.Bends.Count == bends && blank.Holes.Count >= leastHoles
            ? result
            : throw new InvalidOperationException(
                $"{part.Name} has {result.Blank?.Bends.Count} bends and {result.Blank?.Holes.Count} holes: {string.Join(" | ", result.Findings.Select(f => f.Message))}"
            );
    }

    /// <summary>Writes the design file of a light with twenty parts beside copies of what it refers to; the caller deletes the folder.</summary>
    public static string LightOfTwentyParts()
    {
        var folder = Directory.CreateTempSubdirectory("lampwright-twenty-").FullName;
        foreach (var file in Directory.GetFiles(Path.GetDirectoryName(Herbarium.File)!))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }

        var path = Path.Combine(folder, Path.GetFileName(Herbarium.File));
        var has = OpenedLight.At(path).Prepare().Nominal().Metal!.Parts.Count;
        var text = new StringBuilder(File.ReadAllText(path)).AppendLine();
        for (var i = has; i < 20; i++)
        {
            var n = (i + 1).ToString(CultureInfo.InvariantCulture);
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $$"""

                [part.box_{{n}}]
                sheet = "mild"
                face  = { outside = ["{{180 + (7 * i)}} mm", "{{120 + (5 * i)}} mm"] }
                """
            );
            foreach (var edge in (string[])["left", "right", "top", "bottom"])
            {
                text.AppendLine(
                    CultureInfo.InvariantCulture,
                    $$"""

                    [part.box_{{n}}.flange.{{edge}}]
                    on     = "face.{{edge}}"
                    height = { outside = "45 mm" }
                    angle  = "90 deg"

                    [part.box_{{n}}.hole.mount_{{edge}}]
                    on  = "{{edge}}"
                    at  = "centre"
                    for = "M4 clearance"
                    grid = { count = [2, 1], pitch = ["60 mm", "0 mm"] }
                    """
                );
            }

            text.AppendLine(
                CultureInfo.InvariantCulture,
                $$"""

                [part.box_{{n}}.hole.vents]
                on    = "face"
                at    = "centre"
                shape = "round 4 mm"
                grid  = { count = [10, 8], pitch = ["8 mm", "8 mm"] }
                """
            );
        }

        File.WriteAllText(path, text.ToString());
        return path;
    }

    /// <summary>From the design file to templates, DXF and SVG of all parts: bytes written.</summary>
    public static long Papers(string path)
    {
        var light = OpenedLight.At(path).Prepare().Nominal();
        var parts = light.Metal!.Parts;
        if (parts.Count != 20)
        {
            throw new InvalidOperationException($"The light has {parts.Count} parts.");
        }

        using var templates = new MemoryStream();
        TemplatesPdf.Write(light, Paper.A4, templates);
        return templates.Length
            + parts.Sum(p => (long)DxfBlank.File(p.Blank).Length + SvgDrawing.File(BlankDrawing.Of(p.Blank)).Length);
    }

    private static HoleSpec Grid(string id, string on, int columns, int rows, double pitch) =>
        new(id, on, default, HoleShape.Round(0.004), HoleAnchor.Centre)
        {
            Pattern = HolePattern.Grid(columns, rows, pitch, pitch),
        };
}
