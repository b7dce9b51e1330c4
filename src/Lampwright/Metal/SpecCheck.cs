using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Looks through the numbers of a part before anything is computed with them.</summary>
internal static class SpecCheck
{
    /// <summary>True when all numbers can be computed with; else stop findings say which cannot.</summary>
    public static bool Passes(PartSpec spec, List<Finding> findings)
    {
        var before = findings.Count;
        var (sheet, most) = (spec.Sheet, spec.Limits.LongestM);
        void Need(bool good, string path, string what, double observed)
        {
            if (!good)
            {
                findings.Add(
                    MetalRules.AbsurdSize.At(
                        path,
                        $"{what} is {Mm.Of(observed)}; that cannot be made.",
                        Mm.Of(observed),
                        Mm.Of(most)
                    )
                );
            }
        }

        var part = $"part.{spec.Name}";
        Need(sheet.ThicknessM is > 1e-5 and < 0.05, $"sheet.{sheet.Name}.thickness", "The thickness", sheet.ThicknessM);
        Need(
            sheet.InsideRadiusM is >= 0 and < 0.5,
            $"sheet.{sheet.Name}.radius",
            "The inside radius",
            sheet.InsideRadiusM
        );
        Need(
            sheet.DensityKgPerM3 is > 0 and < 1e5,
            $"sheet.{sheet.Name}.density",
            "The density",
            sheet.DensityKgPerM3 / 1e3
        );
        if (sheet.Rule.Method == BendMethod.KFactor && sheet.Rule.K is not (>= 0 and <= 1))
        {
            findings.Add(
                MetalRules.AbsurdSize.At(
                    $"sheet.{sheet.Name}.bend",
                    "K is the place of the neutral fibre as a share of the thickness: 0 to 1, usually 0.3 to 0.5."
                )
            );
        }

        var strips = sheet.Rule.Strips ?? [];
        if (
            sheet.Rule.Method == BendMethod.Strips
            && (
                strips.Count == 0
                || strips.Any(s => s.AngleRad is not (> 0.1 and < 3.15) || Math.Abs(s.DeductionM) is not < 0.5)
            )
        )
        {
            findings.Add(
                MetalRules.AbsurdSize.At(
                    $"sheet.{sheet.Name}.bend",
                    "Bends by own strips need at least one strip with its angle (6° to 180°) and its deduction."
                )
            );
        }

        var corners = spec.Face.Outline.Corners;
        var (least, furthest) = corners.Count > 1 ? spec.Face.Outline.Box : (default, default);
        var size = Math.Max(furthest.X - least.X, furthest.Y - least.Y);
        var sound =
            corners.Count > 1
            && corners.All(c => double.IsFinite(c.Point.X + c.Point.Y + c.Bulge))
            && corners.Select((c, i) => (corners[(i + 1) % corners.Count].Point - c.Point).Length).All(l => l > 1e-6);
        Need(
            sound && size <= most && spec.Face.Outline.Area > 1e-8,
            $"{part}.face",
            "The face, or one of its edges,",
            sound ? size : double.NaN
        );
        if (sound)
        {
            Crossing(
                spec.Face.Outline,
                $"{part}.face",
                $"The outline of the face of {spec.Name}",
                findings,
                p => new(spec.Name, "face", p, p)
            );
        }

        var relief = spec.Relief;
        Need(
            ((double?[])[relief.HoleDiameterM, relief.NotchWidthM, relief.NotchDepthM, relief.GapM]).All(x =>
                x is null or (>= 0 and < 0.1)
            ),
            $"{part}.relief",
            "A size of the reliefs",
            relief.GapM
        );
        foreach (var flange in spec.Flanges)
        {
            var path = SheetPart.PathOf(spec, flange);
            Need(
                flange.HeightM > 0 && flange.HeightM <= most,
                path + (flange.Making == FlangeMaking.Hem ? ".width" : ".height"),
                $"The height of {flange.Id}",
                flange.HeightM
            );
            Need(
                (flange.InsideRadiusM ?? 0) is >= 0 and < 0.5,
                path + ".radius",
                $"The inside radius of {flange.Id}",
                flange.InsideRadiusM ?? 0
            );
            Need(
                Offset(flange.StartOffsetM, most),
                path + ".start",
                $"The start of {flange.Id}",
                flange.StartOffsetM ?? 0
            );
            Need(Offset(flange.EndOffsetM, most), path + ".end", $"The end of {flange.Id}", flange.EndOffsetM ?? 0);
            Angle(flange, path, findings);
        }

        foreach (var hole in spec.Holes)
        {
            Hole(hole, $"{part}.hole.{hole.Id}", Need, most, findings, p => InFace(spec, hole, p));
        }

        return findings.Count == before;
    }

    private static void Crossing(
        Outline outline,
        string path,
        string what,
        List<Finding> findings,
        Func<Vec2, FindingPlace?> place
    )
    {
        if (Polygon2.SelfCrossing(outline.Points(1e-5)) is { } at)
        {
            findings.Add(
                MetalRules.OutlineCrosses.At(path, $"{what} crosses itself at {Mm.Of(at.X)}, {Mm.Of(at.Y)}.") with
                {
                    Place = place(at),
                }
            );
        }
    }

    /// <summary>Where a point of the first hole of its kind lies in the face; null in a flange, which is not laid flat yet.</summary>
    private static FindingPlace? InFace(PartSpec spec, HoleSpec hole, Vec2 p)
    {
        if (hole.On != "face" || spec.Face.Outline.Corners.Count < 2)
        {
            return null;
        }

        var (least, most) = spec.Face.Outline.Box;
        var centre = (least + most) / 2;
        var zero = new Vec2(
            (hole.AnchorX ?? hole.Anchor) == HoleAnchor.Centre ? centre.X : 0,
            (hole.AnchorY ?? hole.Anchor) == HoleAnchor.Centre ? centre.Y : 0
        );
        var at = zero + hole.At + p.Turned(hole.RotationRad + hole.PatternRotationRad);
        return new(spec.Name, "face", at, at);
    }

    private static bool Offset(double? offset, double most) => offset is null || (offset >= 0 && offset <= most);

    private static void Angle(FlangeSpec flange, string path, List<Finding> findings)
    {
        var angle = Math.Abs(flange.AngleRad);
        if (!(angle > 1e-6 && angle <= Math.PI + 1e-9))
        {
            findings.Add(
                MetalRules.AngleOutOfRange.At(
                    path + ".angle",
                    $"Flange {flange.Id} turns by {Mm.Degrees(flange.AngleRad)}.",
                    Mm.Degrees(flange.AngleRad),
                    "0° to 180°"
                )
            );
        }

        foreach (var slant in (double?[])[flange.StartAngleRad, flange.EndAngleRad])
        {
            if (slant is { } s && !(Math.Abs(s) < 1.48))
            {
                findings.Add(
                    MetalRules.AngleOutOfRange.At(
                        path,
                        $"A side of flange {flange.Id} is slanted by {Mm.Degrees(s)}; less than 85° can be cut.",
                        Mm.Degrees(s),
                        "85°"
                    )
                );
            }
        }
    }

    private static void Hole(
        HoleSpec hole,
        string path,
        Action<bool, string, string, double> need,
        double most,
        List<Finding> findings,
        Func<Vec2, FindingPlace?> place
    )
    {
        var shape = hole.Shape;
        var sized = shape.Kind == HoleShapeKind.Outline || (shape.LengthM > 0 && shape.WidthM > 0);
        if (shape.Kind == HoleShapeKind.Outline)
        {
            if (
                shape.Own is { Corners.Count: > 1 } own
                && own.Corners.All(c => double.IsFinite(c.Point.X + c.Point.Y + c.Bulge))
            )
            {
                var before = findings.Count;
                Crossing(own, path + ".outline", $"The outline of hole {hole.Id}", findings, place);
                if (findings.Count > before)
                {
                    // The area of what crosses itself says nothing.
                    return;
                }
            }
        }

        need(
            sized
                && shape.LengthM <= most
                && shape.WidthM <= most
                && shape.CornerRadiusM >= 0
                && (shape.Kind != HoleShapeKind.Slot || shape.LengthM >= shape.WidthM)
                && (shape.Kind != HoleShapeKind.Outline || SoundOutline(shape.Own)),
            path + (shape.Kind == HoleShapeKind.Outline ? ".outline" : ".shape"),
            $"The shape of hole {hole.Id}",
            shape.LengthM
        );
        need(
            Math.Abs(hole.At.X) <= most && Math.Abs(hole.At.Y) <= most,
            path + ".at",
            $"The place of hole {hole.Id}",
            Math.Abs(hole.At.X) + Math.Abs(hole.At.Y)
        );
        need(
            double.IsFinite(hole.RotationRad + hole.PatternRotationRad),
            path + ".turn",
            $"The turn of hole {hole.Id}",
            double.NaN
        );
        if (hole.Pattern is not { } pattern)
        {
            return;
        }

        var field = pattern.Kind is HolePatternKind.SquareField or HolePatternKind.StaggeredField;
        need(
            double.IsFinite(pattern.PitchM.X + pattern.PitchM.Y)
                && (!field || pattern.PitchM.X > 0)
                && Math.Abs(pattern.PitchM.X) <= most
                && Math.Abs(pattern.PitchM.Y) <= most,
            path + ".pitch",
            $"The pitch of hole {hole.Id}",
            pattern.PitchM.X
        );
        need(
            pattern.Within.X >= 0 && pattern.Within.X <= most && pattern.Within.Y >= 0 && pattern.Within.Y <= most,
            path + ".within",
            $"The field of hole {hole.Id}",
            pattern.Within.X
        );
        need(
            pattern.EdgeM is null || (pattern.EdgeM >= 0 && pattern.EdgeM <= most),
            path + ".field.edge",
            $"The edge of the field of hole {hole.Id}",
            pattern.EdgeM ?? 0
        );
        need(
            Math.Abs(pattern.RingDiameterM) <= most && double.IsFinite(pattern.StartAngleRad),
            path + ".ring",
            $"The ring of hole {hole.Id}",
            pattern.RingDiameterM
        );
        need(
            pattern.PlacesM.All(p => Math.Abs(p.X) <= most && Math.Abs(p.Y) <= most),
            path + ".points",
            $"A place of hole {hole.Id}",
            double.NaN
        );
    }

    private static bool SoundOutline(Outline? outline) =>
        outline is { Corners.Count: > 1 }
        && outline.Corners.All(c => double.IsFinite(c.Point.X + c.Point.Y + c.Bulge))
        && outline.Area > 1e-9;
}
