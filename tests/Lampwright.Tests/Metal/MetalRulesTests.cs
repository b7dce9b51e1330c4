using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

/// <summary>Each rule raised once, and once just inside its limit.</summary>
public sealed class MetalRulesTests
{
    private static readonly double Degree = Math.PI / 180;

    private static PartSpec Plate(params HoleSpec[] holes) =>
        new("p", Parts.Mild, FaceSpec.Rectangle(0.1, 0.08)) { Holes = holes };

    private static PartSpec Bent(FlangeSpec flange, SheetSpec? sheet = null) =>
        new("p", sheet ?? Parts.Mild, FaceSpec.Rectangle(0.1, 0.08)) { Flanges = [flange] };

    private static HoleSpec Round(double xMm, double yMm, double dMm, string id = "h", string on = "face") =>
        new(id, on, new(xMm / 1000, yMm / 1000), HoleShape.Round(dMm / 1000));

    private static void Raises(Rule rule, PartSpec spec, PartSpec inside)
    {
        var found = SheetPart.Of(spec).Findings;
        Assert.True(
            found.Any(f => f.Rule == rule),
            $"{rule.Code} was not raised; there were: {string.Join(" | ", found.Select(f => f.Code + " " + f.Message))}"
        );
        var near = SheetPart.Of(inside).Findings;
        Assert.True(near.All(f => f.Rule != rule), string.Join(" | ", near.Select(f => f.Code + " " + f.Message)));
        Assert.All(
            found,
            f =>
                Assert.StartsWith(
                    "part.",
                    f.Path.Replace("sheet.", "part.", StringComparison.Ordinal),
                    StringComparison.Ordinal
                )
        );
    }

    [Theory]
    [InlineData("face.middle")]
    [InlineData("nowhere.far")]
    public void A_flange_needs_an_edge_that_exists(string on) =>
        Raises(MetalRules.UnknownEdge, Bent(new("a", on, 0.02)), Bent(new("a", "face.left", 0.02)));

    [Fact]
    public void A_flange_cannot_stand_on_the_root_of_another() =>
        Raises(
            MetalRules.UnknownEdge,
            Bent(new("a", "face.left", 0.02)) with
            {
                Flanges = [new("a", "face.left", 0.02), new("b", "a.root", 0.02)],
            },
            Bent(new("a", "face.left", 0.02)) with
            {
                Flanges = [new("a", "face.left", 0.02), new("b", "a.far", 0.02)],
            }
        );

    [Fact]
    public void An_edge_is_used_up_by_its_flange() =>
        Raises(
            MetalRules.EdgeUsedUp,
            Plate() with
            {
                Flanges = [new("a", "face.left", 0.02), new("b", "face.left", 0.02)],
            },
            Plate() with
            {
                Flanges =
                [
                    new("a", "face.left", 0.02) { EndOffsetM = 0.05 },
                    new("b", "face.left", 0.02) { StartOffsetM = 0.05 },
                ],
            }
        );

    [Theory]
    [InlineData(0)]
    [InlineData(181)]
    [InlineData(-200)]
    [InlineData(double.NaN)]
    public void A_bend_turns_between_0_and_180_degrees(double degrees) =>
        Raises(
            MetalRules.AngleOutOfRange,
            Bent(new("a", "face.left", 0.02, degrees * Degree)),
            Bent(new("a", "face.left", 0.02, 180 * Degree))
        );

    [Fact]
    public void A_bend_does_not_go_beyond_the_brake()
    {
        var brake = new BrakeSpec { ClosingAngleRad = 120 * Degree };
        Raises(
            MetalRules.BeyondBrake,
            Bent(new("a", "face.left", 0.02, 121 * Degree)) with
            {
                Brake = brake,
            },
            Bent(new("a", "face.left", 0.02, 120 * Degree)) with
            {
                Brake = brake,
            }
        );
    }

    [Fact]
    public void Something_flat_is_left_of_a_flange() =>
        Raises(MetalRules.FlangeWithoutFlat, Bent(new("a", "face.left", 0.0029)), Bent(new("a", "face.left", 0.0031)));

    [Fact]
    public void A_flange_is_not_shorter_than_the_brake_holds() =>
        Raises(MetalRules.ShortFlange, Bent(new("a", "face.left", 0.0074)), Bent(new("a", "face.left", 0.0075)));

    [Fact]
    public void A_radius_is_not_below_the_standards()
    {
        var sheet = Parts.Mild with { TensileStrengthPa = 340e6 };
        Raises(
            MetalRules.SmallRadius,
            Bent(new("a", "face.left", 0.02), sheet with { InsideRadiusM = 0.0015 }),
            Bent(new("a", "face.left", 0.02), sheet with { InsideRadiusM = 0.0016 })
        );
    }

    [Fact]
    public void A_hole_keeps_away_from_a_bend()
    {
        // Tangent at 3 mm; 2 T + R = 4.5 mm to the edge of a 4 mm hole.
        var bent = Bent(new("a", "face.left", 0.02));
        Raises(
            MetalRules.HoleNearBend,
            bent with
            {
                Holes = [Round(9.4, 40, 4)],
            },
            bent with
            {
                Holes = [Round(9.5, 40, 4)],
            }
        );
    }

    [Fact]
    public void A_hole_lies_not_in_a_bend()
    {
        var bent = Bent(new("a", "face.left", 0.02));
        Raises(
            MetalRules.HoleInBend,
            bent with
            {
                Holes = [Round(4.9, 40, 4)],
            },
            bent with
            {
                Holes = [Round(5.1, 40, 4)],
            }
        );
    }

    [Theory]
    [InlineData(-20, 40)]
    [InlineData(1, 40)]
    [InlineData(500, 500)]
    public void A_hole_lies_inside_its_face(double x, double y) =>
        Raises(MetalRules.HoleOutside, Plate(Round(x, y, 4)), Plate(Round(2.1, 40, 4)));

    [Fact]
    public void A_slot_lies_inside_its_face() =>
        Raises(
            MetalRules.HoleOutside,
            Plate(new HoleSpec("h", "face", new(0.095, 0.04), HoleShape.Slot(0.012, 0.004))),
            Plate(new HoleSpec("h", "face", new(0.0938, 0.04), HoleShape.Slot(0.012, 0.004)))
        );

    [Fact]
    public void A_hole_on_a_face_that_is_not_there_is_told() =>
        Raises(MetalRules.HoleOutside, Plate(Round(20, 40, 4, on: "lid")), Plate(Round(20, 40, 4)));

    [Fact]
    public void A_hole_leaves_a_thickness_to_the_edge() =>
        Raises(MetalRules.HoleAtEdge, Plate(Round(3.4, 40, 4)), Plate(Round(3.5, 40, 4)));

    [Fact]
    public void A_hole_leaves_two_thicknesses_to_the_edge() =>
        Raises(MetalRules.HoleNearEdge, Plate(Round(4.9, 40, 4)), Plate(Round(5, 40, 4)));

    [Fact]
    public void Holes_leave_a_web() =>
        Raises(
            MetalRules.ThinWeb,
            Plate(Round(20, 40, 4), Round(25.4, 40, 4, "g")),
            Plate(Round(20, 40, 4), Round(25.5, 40, 4, "g"))
        );

    [Fact]
    public void Holes_do_not_run_into_each_other() =>
        Raises(
            MetalRules.HolesOverlap,
            Plate(Round(20, 40, 4), new HoleSpec("g", "face", new(0.024, 0.04), HoleShape.Rectangle(0.006, 0.006))),
            Plate(Round(20, 40, 4), new HoleSpec("g", "face", new(0.0255, 0.04), HoleShape.Rectangle(0.006, 0.006)))
        );

    [Fact]
    public void A_hole_is_not_smaller_than_the_sheet_is_thick() =>
        Raises(MetalRules.SmallHole, Plate(Round(20, 40, 1.4)), Plate(Round(20, 40, 1.5)));

    [Fact]
    public void A_million_holes_are_refused_at_once()
    {
        HoleSpec Field(double pitch) =>
            new("h", "face", default, HoleShape.Round(0.00002), HoleAnchor.Centre)
            {
                Pattern = HolePattern.Field(pitch, 0.09, 0.07, staggered: false),
            };
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Raises(MetalRules.TooManyHoles, Plate(Field(0.00004)), Plate(Field(0.004)));
        Assert.True(clock.ElapsedMilliseconds < 2000);
        Assert.Contains(
            SheetPart
                .Of(
                    Plate(
                        new HoleSpec("h", "face", default, HoleShape.Round(0.004))
                        {
                            Pattern = HolePattern.Grid(int.MaxValue, int.MaxValue, 1e-9, 1e-9),
                        }
                    )
                )
                .Findings,
            f => f.Rule == MetalRules.TooManyHoles
        );
    }

    [Fact]
    public void A_blank_does_not_overlap_itself()
    {
        // A tab on the side of a wall reaches over its neighbour when laid flat.
        PartSpec With(double offsetMm) =>
            Parts.Box(120, 80, 30) with
            {
                Flanges =
                [
                    .. Parts.Box(120, 80, 30).Flanges,
                    new("tab", "wall_b.start", 0.02) { EndOffsetM = 0.004, StartOffsetM = offsetMm / 1000 },
                ],
            };
        var wide = With(4) with
        {
            Flanges =
            [
                .. With(4)
                    .Flanges.Select(f => f.Id == "wall_r" ? f with { StartAngleRad = -0.6, EndAngleRad = -0.6 } : f),
            ],
        };
        Raises(MetalRules.BlankOverlaps, wide, With(4));
    }

    [Fact]
    public void Folded_flanges_do_not_cut_through_one_another()
    {
        var u = new PartSpec("p", Parts.Mild, FaceSpec.Rectangle(0.04, 0.1));
        Raises(
            MetalRules.FoldCollides,
            u with
            {
                Flanges = [new("a", "face.left", 0.06, 130 * Degree), new("b", "face.right", 0.06, 130 * Degree)],
            },
            u with
            {
                Flanges = [new("a", "face.left", 0.06, 90 * Degree), new("b", "face.right", 0.06, 90 * Degree)],
            }
        );
    }

    [Fact]
    public void Lips_that_are_not_mitred_collide_and_mitred_ones_do_not()
    {
        var square = Parts.Tray() with
        {
            Flanges =
            [
                .. Parts
                    .Tray()
                    .Flanges.Select(f =>
                        f.Id.StartsWith("lip", StringComparison.Ordinal)
                            ? f with
                            {
                                StartAngleRad = 0,
                                EndAngleRad = 0,
                            }
                            : f
                    ),
            ],
        };
        Raises(MetalRules.FoldCollides, square, Parts.Tray());
    }

    [Fact]
    public void A_blank_fits_on_its_sheet()
    {
        PartSpec On(double w, double h) => Plate() with { Sheet = Parts.Mild with { SheetSizeM = (w, h) } };
        Raises(MetalRules.LargerThanSheet, On(0.0999, 0.08), On(0.08, 0.1));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(1e300)]
    [InlineData(0)]
    [InlineData(-1)]
    public void Absurd_numbers_are_refused(double thickness) =>
        Raises(MetalRules.AbsurdSize, Plate() with { Sheet = Parts.Mild with { ThicknessM = thickness } }, Plate());

    [Fact]
    public void Absurd_faces_holes_and_rules_are_refused()
    {
        Raises(
            MetalRules.AbsurdSize,
            Plate() with
            {
                Face = FaceSpec.Rectangle(double.PositiveInfinity, 0.1),
            },
            Plate()
        );
        Raises(MetalRules.AbsurdSize, Plate() with { Face = new(new Outline([])) }, Plate());
        Raises(MetalRules.AbsurdSize, Plate(Round(double.NaN, 1, 4)), Plate());
        Raises(MetalRules.AbsurdSize, Plate(Round(20, 40, -4)), Plate());
        Raises(MetalRules.AbsurdSize, Plate() with { Sheet = Parts.Mild with { Rule = BendRule.WithK(7) } }, Plate());
        Raises(
            MetalRules.AbsurdSize,
            Plate() with
            {
                Sheet = Parts.Mild with { Rule = BendRule.FromStrips() },
            },
            Plate()
        );
        Raises(MetalRules.AbsurdSize, Bent(new("a", "face.left", double.NaN)), Plate());
    }

    [Fact]
    public void A_bend_is_not_longer_than_the_brake()
    {
        PartSpec On(double length) => Bent(new("a", "face.left", 0.02)) with { Brake = new() { LengthM = length } };
        Raises(MetalRules.LongerThanBrake, On(0.0799), On(0.08));
    }

    [Fact]
    public void Strong_sheet_is_too_much_for_the_brake()
    {
        PartSpec Of(double rm) =>
            Bent(new("a", "face.left", 0.02), Parts.Mild with { TensileStrengthPa = rm, InsideRadiusM = 0.003 }) with
            {
                Brake = new() { MildThicknessM = 0.002 },
            };
        Raises(MetalRules.TooStrongForBrake, Of(610e6), Of(600e6));
    }

    [Fact]
    public void A_strip_gives_a_believable_K()
    {
        PartSpec By(double deductionMm) =>
            Bent(
                new("a", "face.left", 0.02),
                Parts.Mild with
                {
                    Rule = BendRule.FromStrips(new BendStrip(Math.PI / 2, deductionMm / 1000)),
                }
            );
        Raises(MetalRules.ImplausibleK, By(3.4), By(2.82));
    }

    [Fact]
    public void Corner_edges_that_press_are_noted_and_cleared()
    {
        var tight = Parts.Box(120, 80, 30, Parts.Mild with { Rule = BendRule.WithK(0.5) });
        Raises(MetalRules.CornerTouches, tight, tight with { Relief = new(CornerRelief.Clear) });
    }

    [Fact]
    public void Edges_of_a_seam_meet()
    {
        PartSpec Seam(string a, string b) => Parts.Box(120, 80, 30) with { Seams = [new("s", a, b)] };
        Raises(MetalRules.SeamOpen, Seam("wall_l.end", "wall_r.start"), Seam("wall_l.start", "wall_b.end"));
        Raises(MetalRules.SeamOpen, Seam("wall_l.end", "wall_x.start"), Seam("wall_b.start", "wall_r.end"));
    }

    [Fact]
    public void Bends_leave_something_flat_between_them()
    {
        PartSpec Wide(double mm) =>
            new("p", Parts.Mild, FaceSpec.Rectangle(mm / 1000, 0.08))
            {
                Flanges = [new("a", "face.left", 0.02), new("b", "face.right", 0.02)],
            };
        Raises(MetalRules.BendUsesUpEdge, Wide(5.9), Wide(6.1));
    }
}
