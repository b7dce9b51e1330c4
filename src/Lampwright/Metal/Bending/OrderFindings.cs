using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Metal.Bending;

/// <summary>What is to be said of a part's order of bending.</summary>
public static class OrderFindings
{
    private static readonly int MostNamed = 3;

    /// <summary>The findings of a plan; none where there is an order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="path">Path of the part in the design file.</param>
    /// <param name="machine">The brake it was looked for on.</param>
    /// <param name="isDescribed">False where a usual brake stood in for the shop's own.</param>
    public static IEnumerable<Finding> Of(BendPlan plan, string path, BrakeMachine machine, bool isDescribed)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(machine);
        if (plan.Verdict == BendVerdict.TooMany)
        {
            yield return MetalRules.TooManyBends.At(
                path,
                $"{plan.Part} has more bends than all orders can be looked at; nothing is said of its order."
            );
        }
        else if (plan.Verdict == BendVerdict.None)
        {
            var stuck = string.Join("; ", plan.Blocked.Take(MostNamed).Select(Stuck));
            var rest = plan.Blocked.Count > MostNamed ? $"; {plan.Blocked.Count - MostNamed} more" : "";
            var made = plan.Made.Count > 0 ? $"With {string.Join(", ", plan.Made)} made, " : "From the flat blank, ";
            var free = string.Join(
                "; ",
                plan.Freeings.OrderByDescending(f => f.FingerFromM > 0).Take(MostNamed).Select(BendWords.Of)
            );
            var rule = isDescribed ? MetalRules.NoBendOrder : MetalRules.NoBendOrderUsual;
            yield return rule.At(
                path,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"No order bends {plan.Part} on {(isDescribed ? "this" : "a usual")} brake. {made}{stuck}{rest}. All {BendWords.Orders(plan.Orders)} orders and sides are closed by {plan.States} states; it holds for {Model(machine)}. {(free.Length > 0 ? $"Tried and freed by: {free}." : "No one bend left out frees it.")}{Higher(plan)}"
                ),
                $"{plan.Made.Count} of {plan.Made.Count + plan.Blocked.Count} bends",
                "all"
            );
        }
    }

    private static string Stuck(Blocked blocked) =>
        blocked.FromFlange is { } flange && BendWords.Of(flange) != BendWords.Of(blocked.FromParent)
            ? $"{blocked.Stroke.Name} cannot be: {BendWords.Of(blocked.FromParent)}, and with {blocked.Stroke.Name} clamped {BendWords.Of(flange)}"
            : $"{blocked.Stroke.Name} cannot be: {BendWords.Of(blocked.FromParent)}";

    private static string Higher(BendPlan plan) =>
        plan.Blocked.Any(b => b.FromParent.Obstacle == Obstacle.Clamp)
            ? " What meets the clamp is higher than the fingers: higher fingers, or a lower wall, clear it."
            : "";

    private static string Model(BrakeMachine machine) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"an apron that turns about the surface of the bed, closing to {Mm.Degrees(machine.ClosingRad)}, {machine.FingerWidthsM.Count} fingers {Mm.Of(machine.Finger.Max(p => p.Y))} high"
        );
}
