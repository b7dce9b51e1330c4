using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Everything the metal station knows of one part.</summary>
/// <param name="Spec">What it was told.</param>
/// <param name="Blank">The blank; null when a stop finding says why there is none.</param>
/// <param name="Folded">The folded part; null when a stop finding says why there is none.</param>
/// <param name="Findings">Findings, in order of their codes and places.</param>
public sealed record PartResult(PartSpec Spec, Blank? Blank, FoldedPart? Folded, IReadOnlyList<Finding> Findings)
{
    /// <summary>Where the zero of the first face lies on the blank, metres (before mirroring).</summary>
    public Vec2 BlankShift { get; init; }

    /// <summary>What can be drawn of it where there is no blank; null where there is one, or where nothing can be drawn.</summary>
    public BlankSketch? Sketch { get; init; }

    /// <summary>A part that can be made: places carried onto the blank, the left-handed one mirrored, findings in their order.</summary>
    internal static PartResult Made(PartSpec told, Blank blank, FoldedPart folded, List<Finding> findings, Vec2 shift)
    {
        Places.Settle(findings, shift, told.Mirrored ? blank.WidthM : null);
        findings.Sort(
            (a, b) =>
                string.CompareOrdinal(a.Code, b.Code) is var c && c != 0 ? c : string.CompareOrdinal(a.Path, b.Path)
        );
        return told.Mirrored
            ? new(told, PartMirror.Of(blank), PartMirror.Of(folded), findings) { BlankShift = shift }
            : new(told, blank, folded, findings) { BlankShift = shift };
    }
}
