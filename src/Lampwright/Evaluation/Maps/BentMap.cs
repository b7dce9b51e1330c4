using Lampwright.Design;
using Lampwright.Geometry;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the station metal of the face of a part and of what is bent on it.</summary>
internal static class BentMap
{
    /// <summary>The first face.</summary>
    public static Metal.FaceSpec Face(Part part, Size face)
    {
        var side = part.FaceIsInside ? Metal.DimensionSide.Inside : Metal.DimensionSide.Outside;
        var spec =
            part.Outline.Count == 0
                ? Metal.FaceSpec.Rectangle(face.Width.Nominal, face.Height.Nominal, side)
                : new Metal.FaceSpec(
                    new Outline([.. part.Outline.Select(s => new Corner(new(s.X?.Nominal ?? 0, s.Y?.Nominal ?? 0)))])
                );
        if (part.Corners is not { } corners)
        {
            return spec;
        }

        var bent = part
            .Flanges.Select(f => f.On)
            .Concat(part.Hems.Select(h => h.On))
            .Concat(part.Joggles.Select(j => j.On))
            .Where(on => on.StartsWith("face.", StringComparison.Ordinal))
            .Select(on => on["face.".Length..])
            .ToHashSet(StringComparer.Ordinal);
        return spec with
        {
            Outline = Metal.FaceCornerCut.Of(spec.Outline, corners.Size.Nominal, corners.IsRound, bent),
        };
    }

    /// <summary>Flanges, then hems.</summary>
    public static IReadOnlyList<Metal.FlangeSpec> Flanges(Part part) =>
        [.. part.Flanges.Select(Flange), .. part.Hems.Select(Hem)];

    /// <summary>Joggles.</summary>
    public static IReadOnlyList<Metal.JoggleSpec> Joggles(Part part) =>
        [
            .. part.Joggles.Select(j => new Metal.JoggleSpec(j.Id, j.On, j.Lap.Nominal)
            {
                OffsetM = j.Offset?.Nominal,
                AngleRad = j.Angle?.Nominal,
                Outwards = j.IsOutside,
                StartOffsetM = j.Start?.Nominal,
                EndOffsetM = j.End?.Nominal,
            }),
        ];

    /// <summary>Reliefs; those of the rules where none are given.</summary>
    public static Metal.ReliefSpec Relief(Relief? relief)
    {
        if (relief is null)
        {
            return new();
        }

        var usual = new Metal.ReliefSpec();
        return new Metal.ReliefSpec(
            relief.Corner switch
            {
                "clear" => Metal.CornerRelief.Clear,
                "hole" => Metal.CornerRelief.Hole,
                "slit" => Metal.CornerRelief.Slit,
                "overlap" => Metal.CornerRelief.Overlap,
                _ => Metal.CornerRelief.Notch,
            }
        )
        {
            HoleDiameterM = relief.Hole?.Nominal,
            NotchWidthM = relief.Width?.Nominal,
            NotchDepthM = relief.Depth?.Nominal,
            GapM = relief.Gap?.Nominal ?? usual.GapM,
        };
    }

    private static Metal.FlangeSpec Flange(Flange f) =>
        new(
            f.Id,
            f.On,
            f.Height.Nominal,
            f.Angle.Nominal,
            f.HeightIsInside ? Metal.DimensionSide.Inside : Metal.DimensionSide.Outside
        )
        {
            StartOffsetM = f.Start?.Nominal,
            EndOffsetM = f.End?.Nominal,
            InsideRadiusM = f.Radius?.Nominal,
            StartAngleRad = f.StartSlant?.Nominal,
            EndAngleRad = f.EndSlant?.Nominal,
        };

    private static Metal.FlangeSpec Hem(Hem h) =>
        Metal.Hem.Of(h.Id, h.On, h.Width.Nominal, h.IsOutside) with
        {
            StartOffsetM = h.Start?.Nominal,
            EndOffsetM = h.End?.Nominal,
        };
}
