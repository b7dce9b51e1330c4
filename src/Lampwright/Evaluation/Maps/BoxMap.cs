using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Metalwork;

namespace Lampwright.Evaluation.Maps;

/// <summary>Sizes of the driver's compartment, the driver and the front, from parts and bought things.</summary>
internal static class BoxMap
{
    // A compartment of which the file says nothing: a box of 200 × 80 × 60 mm (common practice, no source).
    private static readonly double UnknownCompartmentM2 = 0.066;
    private static readonly double UnknownDriverM2 = 0.020;

    public static BoxSizes Of(LightDesign design, LightParts parts, IReadOnlyList<MadePart> made)
    {
        var mounted = "driver." + (parts.Driver?.Name ?? "main") + ".";
        var houses = design.Parts.FirstOrDefault(p =>
            p.Holes.Any(h => h.For.StartsWith(mounted, StringComparison.Ordinal))
        );
        var compartment = houses is null ? 0 : made.Where(m => m.Name == houses.Name).Sum(m => m.Blank.AreaM2);

        // A cover closes it: as large as the face it covers.
        compartment += houses?.Face is { } face ? face.Width.Nominal * face.Height.Nominal : 0;
        var front = LightMap.Spec(design, parts) is { } light
            ? LightMap.Exit(light).Width * LightMap.Exit(light).Height
            : 0;
        var funnel = parts.Reflector?.Part is { } name
            ? made.Where(m => m.Path == "part." + name).Sum(m => m.Blank.AreaM2)
            : 0;
        var sheet = houses is null ? null : design.Sheets.FirstOrDefault(s => s.Name == houses.Sheet);
        return new(
            compartment > 0 ? compartment : UnknownCompartmentM2,
            parts.Driver?.Box is { } b ? Area(b) : UnknownDriverM2,
            Math.Max(front + funnel, 1e-3),
            sheet?.Emissivity ?? Quantities.Value.Exact(0.8, "boxes.emissivity")
        );
    }

    private static double Area(Box b) =>
        2
        * (
            (b.Width.Nominal * b.Height.Nominal)
            + (b.Width.Nominal * b.Depth.Nominal)
            + (b.Height.Nominal * b.Depth.Nominal)
        );
}
