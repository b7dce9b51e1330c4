using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>A rule of thumb that <c>[rules]</c> may override.</summary>
/// <param name="Name">Its name in the file.</param>
/// <param name="Dimension">Dimension of its value.</param>
/// <param name="Meaning">What it limits, and what holds where it is not overridden.</param>
public sealed record RuleName(string Name, Dimension Dimension, string Meaning);

/// <summary>All rules of thumb that a maker may override; a test holds the list against what the evaluation asks for.</summary>
public static class RuleNames
{
    /// <summary>The rules in the order of the documentation.</summary>
    public static IReadOnlyList<RuleName> All { get; } =
    [
        new(
            "least_flange",
            Dimension.Length,
            "Shortest flange, outside; otherwise 4 thicknesses and the inside radius."
        ),
        new(
            "hole_to_bend",
            Dimension.Length,
            "Edge of a small hole to the bend; otherwise 2 thicknesses and the inside radius."
        ),
        new(
            "large_hole_to_bend",
            Dimension.Length,
            "Edge of a large hole or slot to the bend; otherwise 2.5 thicknesses and the inside radius."
        ),
        new("hole_to_edge", Dimension.Length, "Edge of a hole to the edge of the sheet; otherwise 2 thicknesses."),
        new("hole_to_hole", Dimension.Length, "Web between two holes; otherwise 1 thickness."),
        new("least_radius", Dimension.Length, "Least inside radius; otherwise by DIN 6935."),
        new("least_drill", Dimension.Length, "Smallest hole by a drill held by hand; otherwise 1.5 mm."),
        new("least_file", Dimension.Length, "Narrowest slot or cut-out that is filed; otherwise 3 mm."),
        new("step_height", Dimension.Length, "Height of the steps of the step drill; otherwise 4 mm."),
    ];

    /// <summary>The rule of a name, or null.</summary>
    public static RuleName? Find(string name) => All.FirstOrDefault(r => r.Name == name);
}
