using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Light;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the station light what the design says of emitter, reflector, diffuser and subject.</summary>
internal static class LightMap
{
    /// <summary>The station's spec; null when the light-emitting surface is not given.</summary>
    public static LightSpec? Spec(LightDesign design, LightParts parts)
    {
        if (parts.Emitter.Face is not { } face)
        {
            return null;
        }

        var subject = design.Subject ?? new Subject();
        var beam = Math.Clamp(parts.Emitter.Beam.Nominal, 0.02, 3.1);
        return new(
            new(face.Width.Nominal, face.Height.Nominal, parts.Emitter.FaceIsRound, beam),
            Funnel(design, parts.Reflector),
            parts.Diffuser is { Size: { } size } d
                ? new(size.Width.Nominal, size.Height.Nominal, d.Transmittance.Nominal, d.Reflectance.Nominal)
                : null,
            LightSpec.DefaultBaseReflectance,
            new(
                subject.Distance.Nominal,
                subject.Size?.Width.Nominal ?? 0,
                subject.Size?.Height.Nominal ?? 0,
                subject.Iso,
                subject.Shutter.Nominal
            ),
            parts.Emitter.Cct?.Nominal ?? 0,
            new(
                parts.EmitterPath,
                "reflector." + (parts.Reflector?.Name ?? "main"),
                "diffuser." + (parts.Diffuser?.Name ?? "front"),
                "subject",
                parts.DriverPath
            )
        );
    }

    /// <summary>Width and height of the surface the light leaves from, m.</summary>
    public static (double Width, double Height) Exit(LightSpec spec) =>
        spec.Diffuser is { } d && spec.Funnel is { } f
            ? (Math.Min(d.WidthM, f.LargeWidthM), Math.Min(d.HeightM, f.LargeHeightM))
        : spec.Diffuser is { } alone ? (alone.WidthM, alone.HeightM)
        : spec.Funnel is { } open ? (open.LargeWidthM, open.LargeHeightM)
        : (spec.Emitter.WidthM, spec.Emitter.HeightM);

    private static FunnelSpec? Funnel(LightDesign design, Reflector? reflector)
    {
        if (reflector is null)
        {
            return null;
        }

        var panels = design.Parts.FirstOrDefault(p => p.Name == reflector.Part)?.Panels;
        var (small, large, depth) = panels is not null
            ? (panels.Small, panels.Large, panels.Depth)
            : (reflector.Small, reflector.Large, reflector.Depth);
        if (small is null || large is null || depth is null)
        {
            return null;
        }

        var (open, wide) = (SameArea(small, panels?.Sides ?? 4), SameArea(large, panels?.Sides ?? 4));
        return new(
            open.WidthM,
            open.HeightM,
            wide.WidthM,
            wide.HeightM,
            depth.Nominal,
            reflector.Reflectance.Nominal,
            reflector.Specular.Nominal
        );
    }

    /// <summary>The rectangle of the same area and proportion as an opening of six or eight flats: light is computed for four panels.</summary>
    private static (double WidthM, double HeightM) SameArea(Size opening, int sides)
    {
        var (w, h) = (opening.Width.Nominal, opening.Height.Nominal);
        if (sides == 4 || !(w * h > 0))
        {
            return (w, h);
        }

        var area = Metal.FunnelOutline.AreaM2(Metal.FunnelOutline.Distances(sides, w, h));
        var share = Math.Sqrt(Math.Max(0, area) / (w * h));
        return (w * share, h * share);
    }
}
