using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Maps;
using Lampwright.Findings;
using Lampwright.Metal;
using Lampwright.Metal.Bending;

namespace Lampwright.Evaluation.Metalwork;

/// <summary>The orders in which the parts of a light are bent.</summary>
internal static class BendPlans
{
    /// <summary>Plans every part that is bent; a tube comes with its corners.</summary>
    public static BendingAnswer Of(LightDesign design, IReadOnlyList<MadePart> parts)
    {
        var findings = new List<Finding>();
        var bent = parts.Where(p => p.Folded is { Bends.Count: > 0, IsTube: false }).ToList();
        var isDescribed = BrakeMap.IsDescribed(design.Brake);
        if (bent.Count == 0 || BrakeMap.Of(design.Brake, findings) is not { } machine)
        {
            return new(null, isDescribed, [], bent.Count == 0 ? [] : findings);
        }

        var plans = new List<PartBending>();
        foreach (var part in bent)
        {
            var plan = BendOrder.Of(part.Folded, machine, Pressed(part.Result.Spec), b => SwingTo(part.Blank, b));
            plans.Add(new(part.Name, part.Path, machine, plan, part.Folded, part.Blank));
            findings.AddRange(OrderFindings.Of(plan, part.Path, machine, isDescribed));
        }

        return new(machine, isDescribed, plans, findings);
    }

    /// <summary>With springback, where the sheet's source has a row for it.</summary>
    private static double SwingTo(Blank blank, FoldedBend bend)
    {
        var wanted = Math.Abs(bend.AngleRad);
        return blank.Bends.FirstOrDefault(b => b.Id == bend.Id)?.BendToRad ?? wanted;
    }

    /// <summary>A joggle is set between two bars, not bent on the brake.</summary>
    private static HashSet<string> Pressed(PartSpec spec) =>
        [
            .. spec.Joggles.SelectMany(j => (string[])[j.Id, j.Id + "_step"]),
            .. spec.Flanges.Where(f => f.Making == FlangeMaking.Joggle).Select(f => f.Id),
        ];
}
