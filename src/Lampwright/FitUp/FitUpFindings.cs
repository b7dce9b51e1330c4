using Lampwright.Findings;

namespace Lampwright.FitUp;

/// <summary>What a foreman would say of the bodies and of joints before anything is placed.</summary>
internal static class FitUpFindings
{
    /// <summary>The body the others are placed from: the one told, else the first.</summary>
    public static string FixedBody(FitUpSpec spec, List<Finding> findings)
    {
        if (spec.Bodies.Any(b => string.Equals(b.Id, spec.Fixed, StringComparison.Ordinal)))
        {
            return spec.Fixed;
        }

        var first = spec.Bodies[0].Id;
        findings.Add(
            FitUpRules.FixedMissing.At(
                "assembly.fixed",
                $"There is no '{spec.Fixed}'; the others are placed from '{first}'.",
                spec.Fixed
            )
        );
        return first;
    }

    // Those of the same part or thing lead the list: the name is mostly wrong in its last word.
    private static IEnumerable<string> OwnFirst(string pattern, List<string> known)
    {
        var owner = pattern.LastIndexOf('.') is var dot and > 0 ? pattern[..(dot + 1)] : "\0";
        return known.OrderByDescending(k => k.StartsWith(owner, StringComparison.Ordinal));
    }

    /// <summary>Whether the stack of a joint can be followed.</summary>
    public static bool OfStack(JointSpec joint, List<string> missing, List<string> known, List<Finding> findings)
    {
        foreach (var pattern in missing)
        {
            findings.Add(
                FitUpRules.PatternMissing.At(
                    joint.Path + ".stack",
                    $"'{pattern}' has no holes. There are: {string.Join(", ", OwnFirst(pattern, known).Take(12))}{(known.Count > 12 ? " …" : "")}.",
                    pattern
                )
            );
        }

        if (joint.Stack.Count < 2)
        {
            findings.Add(
                FitUpRules.JointOfOne.At(
                    joint.Path + ".stack",
                    $"The joint '{joint.Name}' names {joint.Stack.Count} patterns."
                )
            );
        }

        return missing.Count == 0 && joint.Stack.Count >= 2;
    }

    /// <summary>Whether the patterns can be matched.</summary>
    public static bool OfCounts(JointSpec joint, List<PatternSpec> patterns, List<Finding> findings)
    {
        var counts = patterns.ConvertAll(p => p.Holes.Count);
        var isTooMany = counts.Max() > PlaneFit.MostHoles;
        if (isTooMany || counts.Distinct().Count() > 1)
        {
            var text = string.Join(", ", patterns.Select(p => Text.Of($"{p.Id} has {p.Holes.Count}")));
            findings.Add(
                FitUpRules.CountsDiffer.At(
                    joint.Path + ".stack",
                    isTooMany ? $"Too many holes to match: {text}." : $"Counts differ: {text}."
                )
            );
        }

        return !isTooMany;
    }

    /// <summary>For each pattern whether its far side is the one that touches.</summary>
    public static bool[] Sides(JointSpec joint, List<PatternSpec> patterns, List<Finding> findings)
    {
        var far = new bool[patterns.Count];
        for (var i = 0; i < patterns.Count; i++)
        {
            var (p, word) = (patterns[i], i < joint.Sides.Count ? joint.Sides[i] : "");
            if (word.Length == 0)
            {
                findings.Add(
                    FitUpRules.TakenByDefault.At(
                        joint.Path + ".sides",
                        $"{p.Id} is taken to touch with its {p.NearSide}."
                    )
                );
            }
            else if (JointLayers.IsFarSide(p, word) is { } isFar)
            {
                far[i] = isFar;
            }
            else
            {
                findings.Add(
                    FitUpRules.SideUnknown.At(
                        joint.Path + ".sides",
                        $"{p.Id} has no side '{word}'; it has {p.NearSide} and {p.FarSide}. It is taken to touch with its {p.NearSide}.",
                        word
                    )
                );
            }
        }

        return far;
    }

    /// <summary>Findings of a body.</summary>
    public static void OfBody(BodySpec body, bool isPlaced, List<Finding> findings)
    {
        var path = body.Path.Length > 0 ? body.Path : body.Id;
        if (!isPlaced)
        {
            findings.Add(
                FitUpRules.Unplaced.At(
                    path,
                    $"No joint reaches '{body.Id}': it is weighed, but it is in no picture and in no balance."
                )
            );
        }

        if (body.MassKg is null)
        {
            findings.Add(
                FitUpRules.MassUnknown.At(
                    path + ".mass",
                    $"The mass of '{body.Id}' is not known and counts as nothing."
                )
            );
        }
    }
}
