using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Holds bends against the nose of the brake's clamp, the grain of the sheet, and rows of holes that would bend instead.</summary>
internal static class NoseChecks
{
    public static void Check(
        PartSpec spec,
        List<Panel> panels,
        List<PlacedHole> holes,
        Blank blank,
        List<Finding> findings
    )
    {
        Grain(spec, panels, blank, findings);
        var byPanel = holes.ToLookup(h => h.Panel);
        foreach (var panel in panels.Where(p => p.Spec is { Making: FlangeMaking.Brake }))
        {
            var path = $"part.{spec.Name}.flange.{panel.Id}";
            var bend = blank.Bends[panel.Index - 1];
            Nose(spec, panel, path, findings);
            if (WeakRow.Of(panel, [.. byPanel[panel]], bend.CentreLine.LengthM) is { } row)
            {
                findings.Add(
                    MetalRules
                        .WeakRowOfHoles.At(
                            path,
                            string.Create(
                                CultureInfo.InvariantCulture,
                                $"In the row of {row.Member}, {Mm.Of(row.DistanceM)} from the bend of {panel.Id}, {row.Left:0 %} of the metal is left; bending asks {row.Asked:0 %} of it there."
                            ),
                            string.Create(CultureInfo.InvariantCulture, $"{row.Left:0 %}"),
                            string.Create(CultureInfo.InvariantCulture, $"{row.Asked:0 %}")
                        )
                        .On(
                            spec,
                            panel,
                            new(0, row.DistanceM + panel.Bend!.SetbackM),
                            new(panel.RootLength, row.DistanceM + panel.Bend.SetbackM)
                        )
                );
            }
        }
    }

    private static void Nose(PartSpec spec, Panel panel, string path, List<Finding> findings)
    {
        var (brake, bend) = (spec.Brake, panel.Bend!);
        if (brake.NoseRadiusM is not { } nose)
        {
            return;
        }

        if (bend.InsideRadiusM < nose - 1e-9)
        {
            findings.Add(
                MetalRules
                    .NoseMakesAnotherRadius.At(
                        path,
                        $"The bend of {panel.Id} has an inside radius of {Mm.Of(bend.InsideRadiusM)}; the nose of the clamp has {Mm.Of(nose)}.",
                        Mm.Of(bend.InsideRadiusM),
                        Mm.Of(nose)
                    )
                    .OnBend(spec, panel)
            );
            return;
        }

        // The flange lies on the apron and the radius follows from the nose's place only about a square bend.
        var isSquare = Math.Abs(bend.AngleRad - (Math.PI / 2)) < 0.18;
        if (brake.NoseBackM is not { } back || !isSquare)
        {
            return;
        }

        var made = SetLine.RadiusMade(bend.AngleRad, back, spec.Sheet.ThicknessM, nose);
        if (Math.Abs(made - bend.InsideRadiusM) > Math.Max(0.0003, 0.3 * bend.InsideRadiusM) + 1e-9)
        {
            findings.Add(
                MetalRules
                    .NoseMakesAnotherRadius.At(
                        path,
                        $"A nose {Mm.Of(back)} behind the apron's axis makes an inside radius of about {Mm.Of(made)}; the blank counts on {Mm.Of(bend.InsideRadiusM)} at {panel.Id}.",
                        Mm.Of(made),
                        Mm.Of(bend.InsideRadiusM)
                    )
                    .OnBend(spec, panel)
            );
        }
    }

    /// <summary>One finding a part: the blank is laid once for all its bends.</summary>
    private static void Grain(PartSpec spec, List<Panel> panels, Blank blank, List<Finding> findings)
    {
        if (spec.GrainAlongX is not null || spec.Limits.LeastRadiusM is not null || spec.Sheet.TensileStrengthPa <= 0)
        {
            return;
        }

        double? Least(BlankBend bend, bool along) =>
            LeastRadius.Din6935(spec.Sheet.ThicknessM, spec.Sheet.TensileStrengthPa, bend.AngleRad, along);
        var tight = panels
            .Where(p => p.Spec is { Making: FlangeMaking.Brake })
            .Select(p => blank.Bends[p.Index - 1])
            .Where(b => Least(b, false) <= b.InsideRadiusM + 1e-9 && Least(b, true) > b.InsideRadiusM + 1e-9)
            .ToList();
        if (tight.Count == 0)
        {
            return;
        }

        var worst = tight.MaxBy(b => Least(b, true)! - b.InsideRadiusM)!;
        var both = tight.Exists(b => Metal.Grain.IsAlong(b, true)) && tight.Exists(b => Metal.Grain.IsAlong(b, false));
        findings.Add(
            MetalRules
                .BendAcrossGrain.At(
                    $"part.{spec.Name}",
                    $"An inside radius of {Mm.Of(worst.InsideRadiusM)} is enough across the rolling direction, along it {Mm.Of(Least(worst, true)!.Value)} is wanted: {string.Join(", ", tight.Select(b => b.Flange))}."
                        + (both ? " They run both ways, so some lie along it: bend a strip along it first." : ""),
                    Mm.Of(worst.InsideRadiusM),
                    Mm.Of(Least(worst, true)!.Value)
                )
                .OnBend(spec, panels.First(p => p.Id == worst.Flange))
        );
    }
}
