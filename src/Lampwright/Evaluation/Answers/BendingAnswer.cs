using Lampwright.Findings;
using Lampwright.Metal;
using Lampwright.Metal.Bending;

namespace Lampwright.Evaluation.Answers;

/// <summary>In which order the parts are bent on the brake.</summary>
/// <param name="Machine">The brake in section; null where it is not told well enough.</param>
/// <param name="IsDescribed">False where a usual brake stands in for the shop's own.</param>
/// <param name="Parts">Every part with a bend.</param>
/// <param name="Findings">What is to be said of it.</param>
public sealed record BendingAnswer(
    BrakeMachine? Machine,
    bool IsDescribed,
    IReadOnlyList<PartBending> Parts,
    IReadOnlyList<Finding> Findings
);

/// <summary>The order of one part.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Path">Its table in the design file.</param>
/// <param name="Machine">The brake it is planned on.</param>
/// <param name="Plan">The order, or the proof that there is none.</param>
/// <param name="Folded">The part.</param>
/// <param name="Blank">Its blank, with the set lines.</param>
public sealed record PartBending(
    string Name,
    string Path,
    BrakeMachine Machine,
    BendPlan Plan,
    FoldedPart Folded,
    Blank Blank
)
{
    /// <summary>Machine and part in section at the end of a stage.</summary>
    /// <param name="stage">Which, from 0.</param>
    /// <param name="share">How far the bend is made, 0 to 1.</param>
    public StageSection Section(int stage, double share = 1) => StageSection.Of(Folded, Machine, Plan, stage, share);

    /// <summary>The bends of a stage as the blank has them.</summary>
    /// <param name="stage">Which, from 0.</param>
    public IReadOnlyList<BlankBend> Bends(int stage) =>
        [
            .. Plan.Stages[stage]
                .Stroke.Bends.Select(b => Folded.Bends[b].Id)
                .Select(id => Blank.Bends.First(b => b.Id == id)),
        ];
}
