using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Heat;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the station heat what the design says of the driver's compartment and the front.</summary>
internal static class BoxMap
{
    // A compartment of which the file says nothing: a painted box of 200 × 80 × 60 mm (common practice, no source).
    private static readonly (double Width, double Height, double Wall) Unknown = (0.2, 0.08, 0.06);
    private static readonly double Painted = 0.9;

    // Acrylic and glass in the thermal infrared (common practice, no source).
    private static readonly double Clear = 0.9;

    public static BoxSpec Of(LightDesign design, LightParts parts, IReadOnlyList<MadePart> made) =>
        new()
        {
            Front = Front(design, parts, made),
            Diffuser = Diffuser(design, parts),
            Compartment = Compartment(design, parts),
            DriverCaseM2 = parts.Driver?.Box is { } b ? Area(b) : 0,
            DriverCaseLengthM = Math.Max(0.005, parts.Driver?.Box?.Depth.Nominal ?? 0.03),
            PressurePa = Atmosphere.PressurePa(Math.Clamp(design.Place.Altitude.Nominal, -400, 9000)),
        };

    private static Panel[] Front(LightDesign design, LightParts parts, IReadOnlyList<MadePart> made)
    {
        var own = made.Where(m => m.Path == "part." + parts.Reflector?.Part).ToList();
        if (own.Count > 0)
        {
            return
            [
                .. own.Select(m => new Panel(
                    m.Blank.AreaM2,
                    Math.Max(0.005, Math.Min(m.Blank.WidthM, m.Blank.HeightM)),
                    PanelFacing.Side,
                    m.Sheet.Emissivity.Nominal
                )),
            ];
        }

        var exit = LightMap.Spec(design, parts) is { } light ? LightMap.Exit(light) : (Width: 0.1, Height: 0.1);
        return [Flat(exit.Width, exit.Height, PanelFacing.Down, Painted)];
    }

    private static Panel? Diffuser(LightDesign design, LightParts parts)
    {
        if (parts.Diffuser?.Size is null || LightMap.Spec(design, parts) is not { } light)
        {
            return null;
        }

        var exit = LightMap.Exit(light);
        return Flat(exit.Width, exit.Height, PanelFacing.Down, Clear);
    }

    // The part that the driver is screwed into, closed by a cover as large as its face.
    private static Panel[] Compartment(LightDesign design, LightParts parts)
    {
        var mounted = "driver." + (parts.Driver?.Name ?? "main") + ".";
        var part = design.Parts.FirstOrDefault(p =>
            p.Holes.Any(h => h.For.StartsWith(mounted, StringComparison.Ordinal))
        );
        var emissivity = MetalMap.SheetOf(design, part)?.Emissivity.Nominal ?? Painted;
        var (w, h, wall) = part?.Face is { } face
            ? (
                face.Width.Nominal,
                face.Height.Nominal,
                part.Flanges.Count > 0 ? part.Flanges.Max(f => f.Height.Nominal) : Unknown.Wall
            )
            : Unknown;
        return
        [
            Flat(w, h, PanelFacing.Up, emissivity),
            new Panel(Math.Max(1e-5, 2 * (w + h) * wall), Math.Max(0.005, wall), PanelFacing.Side, emissivity),
        ];
    }

    private static Panel Flat(double w, double h, PanelFacing facing, double emissivity) =>
        new(Math.Max(1e-5, w * h), Math.Max(0.001, w * h / (2 * (w + h))), facing, emissivity);

    private static double Area(Box b) =>
        2
        * (
            (b.Width.Nominal * b.Height.Nominal)
            + (b.Width.Nominal * b.Depth.Nominal)
            + (b.Height.Nominal * b.Depth.Nominal)
        );
}
