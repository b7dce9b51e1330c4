using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>One panel of a funnel.</summary>
/// <param name="Id">Permanent id: <c>funnel.bottom</c>.</param>
/// <param name="Part">The flat part: blank, holes and mass.</param>
/// <param name="Place">Its frame in the frame of the funnel.</param>
/// <param name="LeanRad">Angle between the panel and the funnel's axis, radians.</param>
/// <param name="BendRad">Angle turned from this panel to the next, radians: what a lip or a bend between them is bent by.</param>
public sealed record PanelResult(string Id, PartResult Part, Frame Place, double LeanRad, double BendRad);

/// <summary>A funnel of separate panels.</summary>
/// <param name="Panels">The panels from the bottom round; empty when a stop finding says why.</param>
/// <param name="CornerRad">Inside angle between the first panel and the next, radians; of four panels equal at all corners.</param>
/// <param name="CornerLengthM">Length of the corner seam between these two, metres.</param>
/// <param name="MassKg">Mass of all panels.</param>
/// <param name="CentreOfMass">Centre of mass in the funnel's frame.</param>
/// <param name="Findings">Findings.</param>
public sealed record PanelsResult(
    IReadOnlyList<PanelResult> Panels,
    double CornerRad,
    double CornerLengthM,
    double MassKg,
    Vec3 CentreOfMass,
    IReadOnlyList<Finding> Findings
);

/// <summary>Computes funnels of separate panels that are welded along their corners.</summary>
/// <remarks>
/// The funnel's frame: z along the axis, small opening centred in the plane z = 0, large opening at z = depth. Each panel's frame has its outside
/// outward. Without lips each panel is cut square, so that its inside face is that of the inside openings and the seams stay open outside for the weld.
/// With lips the start of each panel runs to the outside corner and lies over the lip of the one before, whose outside stands back by
/// (T + gap) / sin β from that corner.
/// <para>Between panels that lean by a and b and face δ apart: cos β = cos a · cos b · cos δ + sin a · sin b; for equal panels sin(β/2) = cos a · sin(π/n).</para>
/// <para><b>Source</b>: geometry. <b>Checked by</b>: <i>printed</i> (compound mitre angles, from memory; octahedron), <i>invariant</i> (neighbours share their
/// corner line).</para>
/// </remarks>
public static class FunnelPanels
{
    /// <summary>A lip ends this much before the openings, at least, so that it stays under its neighbour where the two lean unequally.</summary>
    private static double LipShortM => 0.003;

    private static double LipSlantRad => 5 * Math.PI / 180;

    /// <summary>The panels.</summary>
    /// <param name="spec">The funnel. Any numbers: absurd ones become findings.</param>
    public static PanelsResult Of(PanelsSpec spec)
    {
        var names = FunnelOutline.Names(spec.Sides);
        var numbers = (double[])
            [
                spec.Small.WidthM,
                spec.Small.HeightM,
                spec.Large.WidthM,
                spec.Large.HeightM,
                spec.DepthM,
                spec.LipM ?? 0.01,
            ];
        if (
            names.Count == 0
            || !numbers.All(n => n is > 1e-4 and < 20)
            || spec.Sheet.ThicknessM is not (> 1e-5 and < 0.05)
        )
        {
            return Stopped(spec);
        }

        var small = FunnelOutline.Distances(spec.Sides, spec.Small.WidthM, spec.Small.HeightM).ToArray();
        var large = FunnelOutline.Distances(spec.Sides, spec.Large.WidthM, spec.Large.HeightM).ToArray();
        var leans = small.Zip(large, (d, e) => Math.Atan2(e - d, spec.DepthM)).ToArray();
        if (small.Zip(large).Any(p => p.Second < p.First - 1e-12))
        {
            return Stopped(spec);
        }

        if (spec.Side == DimensionSide.Outside)
        {
            for (var i = 0; i < names.Count; i++)
            {
                small[i] -= spec.Sheet.ThicknessM / Math.Cos(leans[i]);
                large[i] -= spec.Sheet.ThicknessM / Math.Cos(leans[i]);
            }
        }

        foreach (var outline in (double[][])[small, large])
        {
            if (
                outline
                    .Select((d, i) => (Out: d, Reach: FunnelOutline.Reach(outline, i)))
                    .Any(s => !(s.Out > 0) || !(s.Reach.ToM - s.Reach.FromM > 1e-6))
            )
            {
                return Stopped(spec);
            }
        }

        var bends = leans.Select((a, i) => Bend(a, leans[(i + 1) % leans.Length], leans.Length)).ToArray();
        var panels = names.Select((id, i) => Make(spec, id, i, small, large, leans, bends)).ToList();
        var mass = panels.Sum(p => p.Part.Blank?.MassKg ?? 0);
        var moment = panels.Aggregate(
            default(Vec3),
            (sum, p) => sum + (p.Part.Folded is { } f ? p.Place.Out(f.CentreOfMass) * f.MassKg : default)
        );
        var path = $"part.{spec.Name}.";
        return new(
            panels,
            Math.PI - bends[0],
            Run(small, large, 0, spec.DepthM).Length,
            mass,
            mass > 0 ? moment / mass : default,
            [
                .. panels
                    .SelectMany(p => p.Part.Findings)
                    .Select(f =>
                        f.Path.Contains(".flange.lip", StringComparison.Ordinal)
                            ? f with
                            {
                                Path = path + "panels.lip",
                            }
                            : f
                    ),
            ]
        );
    }

    /// <summary>The angle turned between neighbouring panels of the given leans, radians.</summary>
    /// <param name="leanRad">Lean of one, radians.</param>
    /// <param name="nextRad">Lean of the next, radians.</param>
    /// <param name="sides">How many panels go round.</param>
    public static double Bend(double leanRad, double nextRad, int sides) =>
        Math.Acos(
            Math.Clamp(
                (Math.Cos(leanRad) * Math.Cos(nextRad) * Math.Cos(2 * Math.PI / sides))
                    + (Math.Sin(leanRad) * Math.Sin(nextRad)),
                -1,
                1
            )
        );

    /// <summary>From the small corner after a side to the large one, in the funnel's frame.</summary>
    private static Vec3 Run(double[] small, double[] large, int side, double depth)
    {
        var (sin, cos) = Math.SinCos(Facing(small.Length, side));
        var (along, outward) = (
            FunnelOutline.Reach(large, side).ToM - FunnelOutline.Reach(small, side).ToM,
            large[side] - small[side]
        );
        return new((outward * cos) - (along * sin), (outward * sin) + (along * cos), depth);
    }

    private static double Facing(int sides, int side) => (2 * Math.PI * side / sides) - (Math.PI / 2);

    private static PanelsResult Stopped(PanelsSpec spec) =>
        new(
            [],
            0,
            0,
            0,
            default,
            [
                MetalRules.AbsurdSize.At(
                    $"part.{spec.Name}.panels",
                    $"A funnel of {spec.Sides} panels from {Mm.Of(spec.Small.WidthM)} × {Mm.Of(spec.Small.HeightM)} to {Mm.Of(spec.Large.WidthM)} × {Mm.Of(spec.Large.HeightM)} "
                        + $"over {Mm.Of(spec.DepthM)} cannot be made; no flat of the large opening may be nearer to the axis than that of the small one, "
                        + "each opening must have all its flats, and the sheet must be thinner than it is wide."
                ),
            ]
        );

    private static PanelResult Make(
        PanelsSpec spec,
        string id,
        int side,
        double[] small,
        double[] large,
        double[] leans,
        double[] bends
    )
    {
        var (n, t, lean) = (small.Length, spec.Sheet.ThicknessM, leans[side]);
        var slant = Math.Sqrt(Math.Pow(large[side] - small[side], 2) + (spec.DepthM * spec.DepthM));
        var (a, b) = (FunnelOutline.Reach(small, side), FunnelOutline.Reach(large, side));
        double[] x = [a.FromM, a.ToM, b.ToM, b.FromM];
        IReadOnlyList<FlangeSpec> flanges = [];
        if (spec.LipM is { } lip)
        {
            var (bend, before) = (bends[side], bends[(side + n - 1) % n]);
            var gap = new ReliefSpec().GapM;
            var (atEnd, atStart) = (
                Math.Sqrt(1 + Math.Pow((x[2] - x[1]) / slant, 2)),
                Math.Sqrt(1 + Math.Pow((x[3] - x[0]) / slant, 2))
            );
            var end = atEnd * ((t * Math.Tan(bend / 2)) - ((t + gap) / Math.Sin(bend)));
            var start = atStart * t * Math.Tan(before / 2);
            x = [x[0] - start, x[1] + end, x[2] + end, x[3] - start];
            var next = (side + 1) % n;
            var (p, q) = (FunnelOutline.Reach(small, next).FromM, FunnelOutline.Reach(large, next).FromM);
            var widens = Math.Atan2(
                p - q,
                Math.Sqrt(Math.Pow(large[next] - small[next], 2) + (spec.DepthM * spec.DepthM))
            );

            // The notch beside the lip must not come out of a slanted opening.
            var tilt = Math.Abs(x[2] - x[1]) / slant;
            var shorter = Math.Max(2 * t, LipShortM) + (2 * (spec.Sheet.InsideRadiusM + t) * tilt);
            flanges =
            [
                new("lip", "face.end", lip, bend)
                {
                    StartOffsetM = shorter,
                    EndOffsetM = shorter,
                    StartAngleRad = Math.Max(0, widens) + LipSlantRad,
                    EndAngleRad = Math.Max(0, -widens) + LipSlantRad,
                },
            ];
        }

        var least = Math.Min(x[0], x[3]);
        var part = SheetPart.Of(
            new PartSpec(
                $"{spec.Name}.{id}",
                spec.Sheet,
                new(
                    new([
                        new(new(x[0] - least, 0), 0, "small"),
                        new(new(x[1] - least, 0), 0, "end"),
                        new(new(x[2] - least, slant), 0, "large"),
                        new(new(x[3] - least, slant), 0, "start"),
                    ])
                )
            )
            {
                Flanges = flanges,
                Brake = spec.Brake,
                Limits = spec.Limits,
            }
        );

        // y runs up the panel from the small opening; the inside skin lies a thickness below the frame.
        var (s, c) = Math.SinCos(Facing(n, side));
        var (facing, axis) = (new Vec3(c, s, 0), new Vec3(0, 0, 1));
        var (sin, cos) = Math.SinCos(lean);
        var y = (axis * cos) + (facing * sin);
        var outward = (facing * cos) - (axis * sin);
        var along = y.Cross(outward);
        var middle = (facing * small[side]) + (outward * t);
        return new($"{spec.Name}.{id}", part, new(middle + (along * least), along, y, outward), lean, bends[side]);
    }
}
