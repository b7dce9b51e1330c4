using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>One panel of a funnel.</summary>
/// <param name="Id">Permanent id: <c>funnel.bottom</c>.</param>
/// <param name="Part">The flat part: blank, holes and mass.</param>
/// <param name="Place">Its frame in the frame of the funnel.</param>
/// <param name="LeanRad">Angle between the panel and the funnel's axis, radians.</param>
public sealed record PanelResult(string Id, PartResult Part, Frame Place, double LeanRad);

/// <summary>A funnel of four panels.</summary>
/// <param name="Panels">The panels <c>bottom right top left</c>; empty when a stop finding says why.</param>
/// <param name="CornerRad">Inside angle between neighbouring panels, radians; equal at all four corners.</param>
/// <param name="CornerLengthM">Length of each corner seam, metres.</param>
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
/// The funnel's frame: z along the axis, small opening centred in the plane z = 0, large opening at z = depth. Each panel is cut square, so
/// that its inside face is the trapezoid of the inside openings and the seams stay open outside for the weld. Each panel's frame has its
/// outside outward. Exact geometry. <b>Checked by</b>: hand case and invariant (neighbours share their corner line).
/// </remarks>
public static class FunnelPanels
{
    /// <summary>The four panels.</summary>
    public static PanelsResult Of(PanelsSpec spec)
    {
        var numbers = (double[])
            [spec.Small.WidthM, spec.Small.HeightM, spec.Large.WidthM, spec.Large.HeightM, spec.DepthM];
        if (
            !numbers.All(n => n is > 1e-4 and < 20)
            || spec.Sheet.ThicknessM is not (> 1e-5 and < 0.05)
            || spec.Large.WidthM < spec.Small.WidthM
            || spec.Large.HeightM < spec.Small.HeightM
        )
        {
            return Stopped(
                MetalRules.AbsurdSize.At(
                    $"part.{spec.Name}.panels",
                    $"A funnel from {Mm.Of(numbers[0])} × {Mm.Of(numbers[1])} to {Mm.Of(numbers[2])} × {Mm.Of(numbers[3])} "
                        + $"over {Mm.Of(spec.DepthM)} cannot be made; the large opening must not be smaller than the small one."
                )
            );
        }

        // Panels that face along x lean by the widths, those that face along y by the heights.
        var (leanX, slantX) = Lean(spec.Large.WidthM - spec.Small.WidthM, spec.DepthM);
        var (leanY, slantY) = Lean(spec.Large.HeightM - spec.Small.HeightM, spec.DepthM);
        var wall = spec.Side == DimensionSide.Outside ? 2 * spec.Sheet.ThicknessM : 0;
        var small = (X: spec.Small.WidthM - (wall / Math.Cos(leanX)), Y: spec.Small.HeightM - (wall / Math.Cos(leanY)));
        var large = (X: spec.Large.WidthM - (wall / Math.Cos(leanX)), Y: spec.Large.HeightM - (wall / Math.Cos(leanY)));
        if (small.X <= 0 || small.Y <= 0)
        {
            return Stopped(
                MetalRules.AbsurdSize.At(
                    $"part.{spec.Name}.panels",
                    "The sheet is thicker than the small opening is wide."
                )
            );
        }

        var z = new Vec3(0, 0, 1);
        PanelResult[] panels =
        [
            Make(spec, "bottom", new(0, -1, 0), z, small.X, large.X, small.Y, leanY, slantY),
            Make(spec, "right", new(1, 0, 0), z, small.Y, large.Y, small.X, leanX, slantX),
            Make(spec, "top", new(0, 1, 0), z, small.X, large.X, small.Y, leanY, slantY),
            Make(spec, "left", new(-1, 0, 0), z, small.Y, large.Y, small.X, leanX, slantX),
        ];
        var mass = panels.Sum(p => p.Part.Blank?.MassKg ?? 0);
        var moment = panels.Aggregate(
            default(Vec3),
            (sum, p) => sum + (p.Part.Folded is { } f ? p.Place.Out(f.CentreOfMass) * f.MassKg : default)
        );
        var between = panels[0].Place.Z.Dot(panels[1].Place.Z);
        var run = new Vec3((large.X - small.X) / 2, (large.Y - small.Y) / 2, spec.DepthM);
        return new(
            panels,
            Math.PI - Math.Acos(Math.Clamp(between, -1, 1)),
            run.Length,
            mass,
            mass > 0 ? moment / mass : default,
            [.. panels.SelectMany(p => p.Part.Findings)]
        );
    }

    private static PanelsResult Stopped(Finding finding) => new([], 0, 0, 0, default, [finding]);

    private static (double LeanRad, double Slant) Lean(double difference, double depth) =>
        (Math.Atan2(difference / 2, depth), Math.Sqrt((difference * difference / 4) + (depth * depth)));

    private static PanelResult Make(
        PanelsSpec spec,
        string id,
        Vec3 facing,
        Vec3 axis,
        double small,
        double large,
        double across,
        double lean,
        double slant
    )
    {
        var part = SheetPart.Of(
            new PartSpec(
                $"{spec.Name}.{id}",
                spec.Sheet,
                new(
                    new([
                        new(new((large - small) / 2, 0), 0, "small"),
                        new(new((large + small) / 2, 0), 0, "end"),
                        new(new(large, slant), 0, "large"),
                        new(new(0, slant), 0, "start"),
                    ])
                )
            )
        );

        // y runs up the panel from the small opening; the inside skin lies a thickness below the frame.
        var (sin, cos) = Math.SinCos(lean);
        var y = (axis * cos) + (facing * sin);
        var outward = (facing * cos) - (axis * sin);
        var x = y.Cross(outward);
        var middle = (facing * (across / 2)) + (outward * spec.Sheet.ThicknessM);
        return new($"{spec.Name}.{id}", part, new(middle - (x * (large / 2)), x, y, outward), lean);
    }
}
