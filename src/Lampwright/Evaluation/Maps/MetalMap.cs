using Lampwright.Design;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the station metal what the design says of its parts.</summary>
internal static class MetalMap
{
    /// <summary>Most holes of a grid or ring that are placed one by one; more is left to Metal, which refuses it with a finding.</summary>
    public static int MostPlaces => 10_000;

    /// <summary>A part's spec; null for a part that has no face of its own and nothing to mirror.</summary>
    /// <param name="design">The design.</param>
    /// <param name="part">The part.</param>
    /// <param name="patterns">Patterns of bought things.</param>
    /// <param name="sheet">Its sheet, nominal or of a draw.</param>
    public static PartSpec? Part(LightDesign design, Part part, HolePatterns patterns, SheetSpec sheet)
    {
        if (part.Mirror is { } original)
        {
            var of = design.Parts.FirstOrDefault(p => p.Name == original);
            return of is null || of.Mirror is not null ? null
                : Part(design, of with { Name = part.Name }, patterns, sheet) is { } spec
                    ? spec with
                    {
                        Mirrored = !spec.Mirrored,
                    }
                : null;
        }

        if (part.Face is null && part.Tube is null)
        {
            return null;
        }

        var face = part.Face is { } size ? BentMap.Face(part, size) : FaceSpec.Rectangle(1, 1);
        return new PartSpec(part.Name, sheet, face)
        {
            Tube = part.Tube is { } tube ? TubeMap.Of(tube) : null,
            Flanges = BentMap.Flanges(part),
            Joggles = BentMap.Joggles(part),
            Relief = BentMap.Relief(part.Relief),
            Holes = [.. CutOuts.Of(part).Select(h => Hole(h, patterns)).OfType<HoleSpec>()],
            Seams =
            [
                .. part
                    .Seams.Where(s => s.Between.Count == 2)
                    .Select(s => new SeamSpec(s.Id, s.Between[0], s.Between[1], s.Kind, s.Gap?.Nominal ?? 0)),
            ],
            Brake = Brake(design.Brake),
            Limits = Limits(design.Rules, sheet),
            GrainAlongX = part.Grain switch
            {
                "x" => true,
                "y" => false,
                _ => null,
            },
            LiveBehindM = part.Live?.Nominal,
            HandEdges = part.Hands,
        };
    }

    /// <summary>A sheet's spec.</summary>
    public static SheetSpec Sheet(Design.Sheet sheet)
    {
        var grade = SheetGrade.Find(sheet.Material);
        return new(
            sheet.Name,
            sheet.Thickness?.Nominal ?? 0.001,
            sheet.Radius?.Nominal ?? sheet.Thickness?.Nominal ?? 0.001,
            Rule(sheet),
            grade?.DensityKgPerM3 ?? 7850
        )
        {
            Material = sheet.Material,
            ElasticModulusPa = grade?.ElasticModulusPa ?? 0,
            YieldPa = Known(grade?.YieldPa),
            TensileStrengthPa = Known(grade?.TensileMostPa),
            SheetSizeM = sheet.Size is { } s ? (s.Width.Nominal, s.Height.Nominal) : null,
        };
    }

    /// <summary>The sheet a part is cut from: its own, else that of the part it mirrors; null when neither is known.</summary>
    public static Design.Sheet? SheetOf(LightDesign design, Part? part)
    {
        var own = part is { Mirror: { } mirrored } ? design.Parts.FirstOrDefault(p => p.Name == mirrored) : part;
        if (own?.Tube is { } tube)
        {
            return TubeMap.Stock(own, tube);
        }

        var name = part is { Sheet.Length: 0, Mirror: { } original }
            ? design.Parts.FirstOrDefault(p => p.Name == original)?.Sheet
            : part?.Sheet;
        return design.Sheets.FirstOrDefault(s => s.Name == name);
    }

    /// <summary>Squared standard uncertainty of a reading: that of its own limits, else of ±0.1 mm (JCGM 100:2008, 4.3.7).</summary>
    private static double Square(Quantities.Value reading) =>
        Math.Pow(reading.HalfWidth > 0 ? reading.HalfWidth : 0.0001, 2) / 3;

    private static double Known(double? value) => value is { } v && double.IsFinite(v) ? v : 0;

    private static BendRule Rule(Design.Sheet sheet) =>
        sheet.Bend.Method switch
        {
            "k" when sheet.Bend.K is { } k => BendRule.WithK(k.Nominal),
            "handbook" => BendRule.Handbook(HandbookMetal.Medium),
            "strips" when sheet.Bend.Strips.Count > 0 => BendRule.FromStrips([
                .. sheet.Bend.Strips.Select(s => new BendStrip(
                    s.Angle.Nominal,
                    s.LegA.Nominal + s.LegB.Nominal - s.Length.Nominal
                )
                {
                    ReadingM = Math.Sqrt(Square(s.LegA) + Square(s.LegB) + Square(s.Length)),
                }),
            ]),
            _ => BendRule.Din6935,
        };

    private static HoleSpec? Hole(Hole hole, HolePatterns patterns)
    {
        if (patterns.Of(hole) is not { } of)
        {
            return null;
        }

        var standard = patterns.Standard(hole);
        var turn = hole.Turn?.Nominal ?? 0;
        var at = new Vec2(hole.At?.X?.Nominal ?? 0, hole.At?.Y?.Nominal ?? 0);
        return new HoleSpec(hole.Id, hole.On, at, of.Shape)
        {
            AnchorX = hole.At?.X is null ? HoleAnchor.Centre : HoleAnchor.Datum,
            AnchorY = hole.At?.Y is null ? HoleAnchor.Centre : HoleAnchor.Datum,
            PatternRotationRad = turn,
            Pattern = Pattern(of.Layout),
            Purpose = of.Purpose,
            IsFilled = patterns.Fills(hole),
            SheetLeastM = standard?.SheetLeastM,
            SheetMostM = standard?.SheetMostM,
            LiveBehindM = hole.Live?.Nominal,
            IsFromMemory = standard is { IsPublished: false },
        };
    }

    private static Metal.HolePattern? Pattern(HoleLayout? layout) =>
        layout switch
        {
            GridLayout g => Metal.HolePattern.Grid(g.CountX, g.CountY, g.PitchX.Nominal, g.PitchY.Nominal),
            RingLayout r => Metal.HolePattern.Ring(r.Count, r.Diameter.Nominal),
            FieldLayout f => Metal.HolePattern.Field(
                f.Pitch.Nominal,
                f.Within.Width.Nominal,
                f.Within.Height.Nominal,
                f.Staggered
            ) with
            {
                EdgeM = f.Edge?.Nominal,
            },
            PointsLayout p => Metal.HolePattern.Points([
                .. p.Points.Select(s => new Vec2(s.X?.Nominal ?? 0, s.Y?.Nominal ?? 0)),
            ]),
            _ => null,
        };

    /// <summary>The brake.</summary>
    public static BrakeSpec Brake(Brake brake) =>
        new()
        {
            LengthM = brake.Length.Nominal,
            LeastFlangeM = brake.LeastFlange.Nominal,
            ClosingAngleRad = brake.Closing.Nominal,
            MildThicknessM = brake.Capacity?.Nominal,
            NoseRadiusM = brake.NoseRadius?.Nominal,
            NoseBackM = brake.NoseBack?.Nominal,
        };

    /// <summary>Rules of thumb, the maker's own where given.</summary>
    public static MetalLimits Limits(IReadOnlyList<RuleOverride> rules, SheetSpec sheet)
    {
        double? Of(string name) =>
            rules.FirstOrDefault(r => r.Name == name) is { } rule
                ? rule.Formula?.ForSheet(sheet.ThicknessM, sheet.InsideRadiusM) ?? rule.Value.Nominal
                : null;

        var usual = new MetalLimits();
        return new MetalLimits
        {
            LeastFlangeM = Of("least_flange"),
            HoleToBendM = Of("hole_to_bend"),
            LargeHoleToBendM = Of("large_hole_to_bend"),
            HoleToEdgeM = Of("hole_to_edge"),
            WebM = Of("hole_to_hole"),
            LeastRadiusM = Of("least_radius"),
            LeastDrillM = Of("least_drill") ?? usual.LeastDrillM,
            LeastFileM = Of("least_file") ?? usual.LeastFileM,
            StepM = Of("step_height") ?? usual.StepM,
        };
    }
}
