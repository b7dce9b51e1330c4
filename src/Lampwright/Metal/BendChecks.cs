using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Holds bends, sheet and brake against the rules.</summary>
internal static class BendChecks
{
    /// <summary>Strength that a brake's rating for mild steel speaks of (common practice, no source).</summary>
    private static double RatedStrengthPa => 340e6;

    public static void Check(PartSpec spec, List<Panel> panels, Blank blank, List<Finding> findings)
    {
        Sheet(spec, blank, findings);
        Relief(spec, panels, findings);
        foreach (var panel in panels)
        {
            if (!panel.IsFlange)
            {
                continue;
            }

            var path = SheetPart.PathOf(spec, panel);
            switch (panel.Spec!.Making)
            {
                case FlangeMaking.Hem:
                    Hem.Check(spec, panel, path, findings);
                    Height(spec, panel, path, findings);
                    break;
                case FlangeMaking.Joggle:
                    Joggle.Check(spec, panel, path, findings);
                    Radius(spec, panel, path, blank, findings);
                    break;
                default:
                    Height(spec, panel, path, findings);
                    Radius(spec, panel, path, blank, findings);
                    break;
            }

            Brake(spec, panel, path, blank, findings);
            if (panel.Bend!.K is not (>= 0.2 and <= 0.6))
            {
                findings.Add(
                    MetalRules
                        .ImplausibleK.At(
                            path,
                            string.Create(
                                CultureInfo.InvariantCulture,
                                $"The allowance of {panel.Id} puts the neutral fibre at {panel.Bend.K:0.00} of the thickness."
                            ),
                            panel.Bend.K.ToString("0.00", CultureInfo.InvariantCulture),
                            "0.2 to 0.6"
                        )
                        .OnBend(spec, panel)
                );
            }
        }
    }

    /// <summary>A relief of the maker's own size that is too small to keep the sheet from tearing.</summary>
    private static void Relief(PartSpec spec, List<Panel> panels, List<Finding> findings)
    {
        var t = spec.Sheet.ThicknessM;
        var radius = panels.Where(p => p.IsFlange).Select(p => p.Bend!.InsideRadiusM).DefaultIfEmpty(0).Max();
        void Small(string key, double? given, double least)
        {
            if (given < least - 1e-9)
            {
                findings.Add(
                    MetalRules.SmallRelief.At(
                        $"part.{spec.Name}.relief.{key}",
                        $"The {key} of the reliefs of {spec.Name} is {Mm.Of(given.Value)}; {Mm.Of(least)} is wanted.",
                        Mm.Of(given.Value),
                        Mm.Of(least)
                    )
                );
            }
        }

        Small("width", spec.Relief.Kind == CornerRelief.Slit ? null : spec.Relief.NotchWidthM, t);
        Small("depth", spec.Relief.NotchDepthM, radius + t);
        Small("hole", spec.Relief.HoleDiameterM, radius);
    }

    private static void Sheet(PartSpec spec, Blank blank, List<Finding> findings)
    {
        if (spec.Sheet.SheetSizeM is not { } size)
        {
            return;
        }

        var (w, h) = (blank.WidthM, blank.HeightM);
        var fits = (w <= size.WidthM && h <= size.HeightM) || (h <= size.WidthM && w <= size.HeightM);
        if (!fits)
        {
            findings.Add(
                MetalRules.LargerThanSheet.At(
                    $"part.{spec.Name}",
                    $"The blank of {spec.Name} is {Mm.Of(w)} × {Mm.Of(h)}; the sheet is {Mm.Of(size.WidthM)} × {Mm.Of(size.HeightM)}.",
                    $"{Mm.Of(w)} × {Mm.Of(h)}",
                    $"{Mm.Of(size.WidthM)} × {Mm.Of(size.HeightM)}"
                )
            );
        }
    }

    private static void Height(PartSpec spec, Panel panel, string path, List<Finding> findings)
    {
        var t = spec.Sheet.ThicknessM;
        var least = spec.Limits.LeastFlangeM ?? ((4 * t) + panel.Bend!.InsideRadiusM);
        if (spec.Brake.LeastFlangeM is { } brake)
        {
            least = Math.Max(least, brake);
        }

        if (panel.Height < least - 1e-9)
        {
            findings.Add(
                MetalRules
                    .ShortFlange.At(
                        path + (panel.Spec!.Making == FlangeMaking.Hem ? ".width" : ".height"),
                        $"Flange {panel.Id} is {Mm.Of(panel.Height)} high outside; the brake needs {Mm.Of(least)}.",
                        Mm.Of(panel.Height),
                        Mm.Of(least)
                    )
                    .OnHeight(spec, panel)
            );
        }
    }

    private static void Radius(PartSpec spec, Panel panel, string path, Blank blank, List<Finding> findings)
    {
        var bend = panel.Bend!;
        var along = Grain.IsAlong(blank.Bends[panel.Index - 1], spec.GrainAlongX);
        var least =
            spec.Limits.LeastRadiusM
            ?? (
                spec.Sheet.TensileStrengthPa > 0
                    ? LeastRadius.Din6935(spec.Sheet.ThicknessM, spec.Sheet.TensileStrengthPa, bend.AngleRad, along)
                    : null
            );
        if (least is { } limit && bend.InsideRadiusM < limit - 1e-9)
        {
            findings.Add(
                MetalRules
                    .SmallRadius.At(
                        path,
                        $"The bend of {panel.Id} has an inside radius of {Mm.Of(bend.InsideRadiusM)}; "
                            + $"{Mm.Of(spec.Sheet.ThicknessM)} of this sheet wants {Mm.Of(limit)} or more{(along ? " along its rolling direction" : "")}.",
                        Mm.Of(bend.InsideRadiusM),
                        Mm.Of(limit)
                    )
                    .OnBend(spec, panel)
            );
        }
    }

    private static void Brake(PartSpec spec, Panel panel, string path, Blank blank, List<Finding> findings)
    {
        var (brake, bend) = (spec.Brake, panel.Bend!);
        var closes = panel.Spec!.Making != FlangeMaking.Hem;
        if (closes && brake.ClosingAngleRad is { } closing && bend.AngleRad > closing + 1e-9)
        {
            findings.Add(
                MetalRules
                    .BeyondBrake.At(
                        path + ".angle",
                        $"Flange {panel.Id} turns by {Mm.Degrees(bend.AngleRad)}; the brake closes to {Mm.Degrees(closing)}.",
                        Mm.Degrees(bend.AngleRad),
                        Mm.Degrees(closing)
                    )
                    .OnBend(spec, panel)
            );
        }

        var length = blank.Bends[panel.Index - 1].CentreLine.LengthM;
        if (brake.LengthM is { } longest && length > longest + 1e-9)
        {
            findings.Add(
                MetalRules
                    .LongerThanBrake.At(
                        path,
                        $"The bend of {panel.Id} is {Mm.Of(length)} long; the brake takes {Mm.Of(longest)}.",
                        Mm.Of(length),
                        Mm.Of(longest)
                    )
                    .OnBend(spec, panel)
            );
        }

        if (brake.MildThicknessM is { } mild && spec.Sheet.TensileStrengthPa > 0)
        {
            var limit = mild * BrakeForce.Derating(RatedStrengthPa, spec.Sheet.TensileStrengthPa);
            if (spec.Sheet.ThicknessM > limit + 1e-9)
            {
                findings.Add(
                    MetalRules
                        .TooStrongForBrake.At(
                            path,
                            $"The brake bends {Mm.Of(mild)} of mild steel over its length, of this sheet {Mm.Of(limit)}; "
                                + $"{panel.Id} is {Mm.Of(spec.Sheet.ThicknessM)} thick.",
                            Mm.Of(spec.Sheet.ThicknessM),
                            Mm.Of(limit)
                        )
                        .OnBend(spec, panel)
                );
            }
        }
    }
}
