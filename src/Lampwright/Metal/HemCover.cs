using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Holes that a hem folds over.</summary>
internal static class HemCover
{
    public static void Check(PartSpec spec, List<Panel> panels, List<PlacedHole> holes, List<Finding> findings)
    {
        foreach (var hem in panels.Where(p => p.Spec?.Making == FlangeMaking.Hem))
        {
            var told = new HashSet<string>(StringComparer.Ordinal);
            foreach (var hole in holes.Where(h => h.Panel == hem.Parent && Covers(hem, h) && told.Add(h.Spec.Id)))
            {
                findings.Add(
                    MetalRules
                        .HoleUnderHem.At(
                            $"part.{spec.Name}.hole.{hole.Spec.Id}",
                            $"Hem {hem.Id} is {Mm.Of(hem.Height)} wide and folds over hole {hole.Spec.Id}{hole.Member}.",
                            Mm.Of(hole.Outline.Points(1e-5).Min(p => Depth(hem, p))),
                            Mm.Of(hem.Height)
                        )
                        .On(spec, hole)
                );
            }
        }
    }

    /// <summary>True where a point of the hole's rim lies less far from the fold than the hem reaches, beside its root.</summary>
    private static bool Covers(Panel hem, PlacedHole hole) =>
        hole
            .Outline.Points(1e-5)
            .Any(p =>
            {
                var along = (p - hem.RootStart).Dot(-hem.OnEdge!.Along);
                return along > 0 && along < hem.RootLength && Depth(hem, p) < hem.Height - 1e-9;
            });

    /// <summary>How far a point of the parent lies from the outside of the fold.</summary>
    private static double Depth(Panel hem, Geometry.Vec2 p) => (hem.RootStart - p).Dot(hem.OnEdge!.Outward);
}
