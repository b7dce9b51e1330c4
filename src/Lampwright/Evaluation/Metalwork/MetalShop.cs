using Lampwright.Design;
using Lampwright.Evaluation.Maps;
using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Evaluation.Metalwork;

/// <summary>All parts of a design through the station metal, at nominal values.</summary>
internal static class MetalShop
{
    /// <summary>Folds every part; parts that cannot be folded are left out with findings that say why.</summary>
    /// <param name="design">The design.</param>
    /// <param name="patterns">Patterns of bought things.</param>
    /// <param name="sketches">Takes what can be drawn of parts that cannot be made; may be null.</param>
    public static (IReadOnlyList<MadePart> Parts, IReadOnlyList<Finding> Findings) Of(
        LightDesign design,
        HolePatterns patterns,
        List<BlankSketch>? sketches = null
    )
    {
        var parts = new List<MadePart>();
        var findings = new List<Finding>();
        foreach (var part in design.Parts)
        {
            if (MetalMap.SheetOf(design, part) is not { } sheet)
            {
                continue;
            }

            var spec = MetalMap.Sheet(sheet);
            if (part.Panels is { } panels)
            {
                Funnel(design, part, panels, sheet, spec, parts, findings);
            }
            else if (MetalMap.Part(design, part, patterns, spec) is { } told)
            {
                var result = SheetPart.Of(told);
                findings.AddRange(result.Findings);
                if (result.Sketch is { } sketch)
                {
                    sketches?.Add(sketch);
                }

                if (result is { Blank: not null, Folded: not null })
                {
                    parts.Add(new(part.Name, "part." + part.Name, sheet, part.Count, result, Frame.World));
                }
            }
        }

        return (parts, findings);
    }

    private static void Funnel(
        LightDesign design,
        Part part,
        Design.FunnelPanels panels,
        Sheet sheet,
        SheetSpec spec,
        List<MadePart> parts,
        List<Finding> findings
    )
    {
        var told = new PanelsSpec(
            part.Name,
            spec,
            (panels.Small.Width.Nominal, panels.Small.Height.Nominal),
            (panels.Large.Width.Nominal, panels.Large.Height.Nominal),
            panels.Depth.Nominal
        )
        {
            Sides = panels.Sides,
            LipM = panels.Lip?.Nominal,
            Brake = MetalMap.Brake(design.Brake),
            Limits = MetalMap.Limits(design.Rules, spec),
        };
        var result = Lampwright.Metal.FunnelPanels.Of(told);
        findings.AddRange(result.Findings);
        if (panels.Sides != 4 && design.Reflectors.Any(r => r.Part == part.Name))
        {
            findings.Add(
                MetalRules.LightOfRectangle.At(
                    $"part.{part.Name}.panels.sides",
                    $"The light of {part.Name} is computed for four panels between openings of the same area and proportion."
                )
            );
        }

        for (var i = 0; i < result.Panels.Count; i++)
        {
            var panel = result.Panels[i];
            if (panel.Part is not { Blank: not null, Folded: not null })
            {
                continue;
            }

            parts.Add(new(panel.Id, "part." + part.Name, sheet, part.Count, panel.Part, panel.Place));
        }
    }
}
