using CsCheck;
using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

/// <summary>Laws that hold for every part, tried on random ones with a fixed seed.</summary>
public sealed class FoldInvariantTests
{
    private static readonly Gen<BendRule> Rules = Gen.OneOf(
        Gen.Const(BendRule.Din6935),
        Gen.Double[0.3, 0.5].Select(BendRule.WithK),
        Gen.Const(BendRule.Handbook(HandbookMetal.Medium)),
        Gen.Const(BendRule.FromStrips(new BendStrip(Math.PI / 2, 0.0028)))
    );

    private static readonly Gen<SheetSpec> Sheets = Gen.Select(
        Gen.Double[0.0005, 0.002],
        Gen.Double[0.0004, 0.003],
        Rules,
        (t, r, rule) => new SheetSpec("any", t, r, rule)
    );

    private static readonly Gen<double?> Offsets = Gen.OneOf<double?>(
        Gen.Const((double?)null),
        Gen.Double[0, 0.02].Select(x => (double?)x)
    );

    private static readonly Gen<double> Angles = Gen.OneOf(Gen.Double[0.4, 2.4], Gen.Double[-2.4, -0.4]);

    private static Gen<FlangeSpec> Flange(string id, string on) =>
        Gen.Select(
            Gen.Double[0.02, 0.05],
            Angles,
            Offsets,
            Offsets,
            Gen.Double[-0.2, 0.3],
            Gen.Bool,
            (h, a, s, e, slant, slanted) =>
                new FlangeSpec(id, on, h, a)
                {
                    StartOffsetM = s,
                    EndOffsetM = e,
                    StartAngleRad = slanted ? slant : null,
                }
        );

    private static Gen<FlangeSpec[]> Some(params (string Id, string On)[] places) =>
        Gen.Select(
            Gen.Int[0, 31],
            Gen.Select(Flange(places[0].Id, places[0].On), Flange(places[1].Id, places[1].On)),
            Gen.Select(Flange(places[2].Id, places[2].On), Flange(places[3].Id, places[3].On)),
            (mask, ab, cd) =>
            {
                FlangeSpec[] all = [ab.Item1, ab.Item2, cd.Item1, cd.Item2];
                return all.Where((_, i) => (mask & (1 << i)) != 0).ToArray();
            }
        );

    private static readonly Gen<PartSpec> AnyPart = Gen.Select(
        Sheets,
        Gen.Select(Gen.Double[0.08, 0.3], Gen.Double[0.08, 0.3]),
        Some(("wall_b", "face.bottom"), ("wall_r", "face.right"), ("wall_t", "face.top"), ("wall_l", "face.left")),
        Some(("lip_b", "wall_b.far"), ("lip_r", "wall_r.far"), ("tab_t", "wall_t.end"), ("tab_l", "wall_l.start")),
        Gen.Enum<DimensionSide>(),
        Gen.OneOf(Gen.Const(CornerRelief.Notch), Gen.Const(CornerRelief.Clear)),
        (sheet, size, walls, lips, side, relief) =>
        {
            var ids = walls.Select(w => w.Id).ToHashSet(StringComparer.Ordinal);
            FlangeSpec[] flanges = [.. walls, .. lips.Where(l => ids.Contains(l.OnEdge.Split('.')[0]))];
            return new PartSpec("any", sheet, FaceSpec.Rectangle(size.Item1, size.Item2, side))
            {
                Flanges = flanges,
                Relief = new(relief),
                Holes =
                [
                    .. flanges
                        .Select(f => f.Id)
                        .Append("face")
                        .Select(on => new HoleSpec(
                            "h_" + on,
                            on,
                            new(0.001, 0.002),
                            HoleShape.Slot(0.005, 0.003),
                            HoleAnchor.Centre
                        )
                        {
                            RotationRad = 0.3,
                            Pattern = HolePattern.Grid(2, 1, 0.008, 0.008),
                        }),
                ],
            };
        }
    );

    [Fact]
    public void Blank_is_made_of_the_flats_and_bends_and_nothing_else() =>
        AnyPart.Sample(
            spec =>
            {
                var result = SheetPart.Of(spec);
                if (result.Blank is not { } blank)
                {
                    return result.Findings.Any(f => f.Severity == Severity.Stop);
                }

                var regions =
                    result.Folded!.Faces.Sum(f => f.Flat.SignedArea) + result.Folded.Bends.Sum(b => b.Zone.SignedArea);
                var sheet = blank.AreaM2 + blank.Holes.Sum(h => h.Outline.Area);
                return Math.Abs(regions - blank.Outline.SignedArea) < 1e-9
                    && Math.Abs(sheet - blank.Outline.Area) < 1e-9
                    && Math.Abs(blank.MassKg - (blank.AreaM2 * spec.Sheet.ThicknessM * spec.Sheet.DensityKgPerM3))
                        < 1e-9;
            },
            seed: "0000KOIKFUr2",
            iter: 300,
            print: Print
        );

    [Fact]
    public void Every_hole_of_the_blank_carried_through_the_bends_lands_where_the_fold_has_it() =>
        AnyPart.Sample(
            spec =>
            {
                var result = SheetPart.Of(spec);
                if (result.Blank is not { } blank)
                {
                    return true;
                }

                return blank
                    .Holes.Zip(result.Folded!.Holes)
                    .All(pair =>
                    {
                        var frame = Carried(spec, result, pair.First.On);
                        var centre = frame.Out(new(pair.First.Centre.X, pair.First.Centre.Y, 0));
                        return string.Equals(pair.First.Id, pair.Second.Id, StringComparison.Ordinal)
                            && (centre - pair.Second.Centre).Length < 1e-9
                            && (frame.Z - pair.Second.Axis).Length < 1e-9;
                    });
            },
            seed: "0000KOIKFUr2",
            iter: 200,
            print: Print
        );

    [Fact]
    public void Nothing_that_leaves_the_station_is_not_a_number() =>
        AnyPart.Sample(
            spec =>
            {
                var result = SheetPart.Of(spec);
                return result.Blank is null
                    || (
                        result.Blank.Outline.Corners.All(c => double.IsFinite(c.Point.X + c.Point.Y + c.Bulge))
                        && double.IsFinite(result.Folded!.CentreOfMass.Length + result.Folded.BoxMost.Length)
                        && result.Findings.All(f =>
                            f.Message.Length > 0 && !f.Message.Contains("NaN", StringComparison.Ordinal)
                        )
                    );
            },
            seed: "0000KOIKFUr2",
            iter: 200,
            print: Print
        );

    private static string Print(PartSpec spec) =>
        $"{spec.Sheet} {spec.Face} {spec.Relief} {string.Join("; ", spec.Flanges)}";

    /// <summary>The plane of the blank bent round one bend after the other, from what the blank alone says.</summary>
    internal static Frame Carried(PartSpec spec, PartResult result, string on)
    {
        var chain = new Stack<BlankBend>();
        while (!string.Equals(on, "face", StringComparison.Ordinal))
        {
            chain.Push(result.Blank!.Bends.First(b => string.Equals(b.Flange, on, StringComparison.Ordinal)));
            on = result.Folded!.Bends.First(b => string.Equals(b.Flange, on, StringComparison.Ordinal)).Parent;
        }

        var shift = result.BlankShift;
        var frame = Frame.World.Moved(new(-shift.X, -shift.Y, 0));
        foreach (var bend in chain)
        {
            var t = bend.InnerTangent;
            var d = (t.B - t.A).Unit;
            var n = new Vec2(-d.Y, d.X);
            if (n.Dot(bend.OuterTangent.A - t.A) < 0)
            {
                n = -n;
            }

            var (d3, n3, z3) = (frame.Direction(new(d.X, d.Y, 0)), frame.Direction(new(n.X, n.Y, 0)), frame.Z);
            var down = bend.Direction == BendDirection.Down;
            var reach = down ? bend.InsideRadiusM + spec.Sheet.ThicknessM : bend.InsideRadiusM;
            var angle = down ? bend.AngleRad : -bend.AngleRad;
            var toAxis = z3 * (down ? -reach : reach);
            var (sin, cos) = Math.SinCos(angle);
            var z4 = (z3 * cos) + (n3 * sin);
            var n4 = (n3 * cos) - (z3 * sin);
            var end = frame.Out(new(t.A.X, t.A.Y, 0)) + toAxis + (z4 * (down ? reach : -reach));

            // The blank's point on the outer tangent beside A goes to `end`; from there on the plane is flat again.
            var at = t.A + (n * bend.AllowanceM);
            var x = (d3 * d.X) + (n4 * n.X);
            var y = (d3 * d.Y) + (n4 * n.Y);
            frame = new Frame(end - (x * at.X) - (y * at.Y), x, y, z4);
        }

        return frame;
    }
}
