using Lampwright.Design;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Evaluation.Metalwork;

/// <summary>A part that could be folded and laid flat.</summary>
/// <param name="Name">Its name; of a funnel's panel that of the panel.</param>
/// <param name="Path">Path of its table in the design file.</param>
/// <param name="Sheet">The sheet of the design it is cut from.</param>
/// <param name="Count">How many are made.</param>
/// <param name="Result">What the station metal made of it; blank and fold are there.</param>
/// <param name="Place">Its frame in that of the whole part (of the funnel, for a panel).</param>
internal sealed record MadePart(string Name, string Path, Sheet Sheet, int Count, PartResult Result, Frame Place)
{
    /// <summary>The blank.</summary>
    public Blank Blank => Result.Blank!;

    /// <summary>The fold.</summary>
    public FoldedPart Folded => Result.Folded!;
}
