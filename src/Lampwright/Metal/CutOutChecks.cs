using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Holds openings for bought things against the sheet they are cut in.</summary>
internal static class CutOutChecks
{
    public static void Check(PartSpec spec, List<PlacedHole> holes, List<Finding> findings)
    {
        foreach (var hole in spec.Holes)
        {
            var path = $"part.{spec.Name}.hole.{hole.Id}";
            var t = spec.Sheet.ThicknessM;
            var (least, most) = (hole.SheetLeastM ?? 0, hole.SheetMostM ?? double.PositiveInfinity);
            if (t < least - 1e-9 || t > most + 1e-9)
            {
                var limit = t < least ? least : most;
                findings.Add(
                    MetalRules
                        .SheetForCutOut.At(
                            path,
                            $"{Capital(hole.Purpose)} in {hole.On} holds in sheet of {Limits(hole)}; this is {Mm.Of(t)}.",
                            Mm.Of(t),
                            Mm.Of(limit)
                        )
                        .On(spec, holes.Find(h => ReferenceEquals(h.Spec, hole)))
                );
            }

            if (hole.IsFromMemory)
            {
                findings.Add(
                    MetalRules
                        .CutOutNotRead.At(
                            path,
                            $"The opening for {hole.Purpose} ({Mm.Of(hole.Shape.LengthM)} × {Mm.Of(hole.Shape.WidthM)}) is the usual one and was not read in its maker's print."
                        )
                        .On(spec, holes.Find(h => ReferenceEquals(h.Spec, hole)))
                );
            }
        }
    }

    private static string Limits(HoleSpec hole) =>
        hole is { SheetLeastM: { } least, SheetMostM: { } most } ? $"{Mm.Of(least)} to {Mm.Of(most)}"
        : hole.SheetMostM is { } only ? $"{Mm.Of(only)} or less"
        : $"{Mm.Of(hole.SheetLeastM ?? 0)} or more";

    private static string Capital(string text) =>
        text.Length == 0 ? "What" : char.ToUpperInvariant(text[0]) + text[1..];
}
