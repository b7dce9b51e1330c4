using Lampwright.Files.Charts;
using Lampwright.Files.Drawings;
using Lampwright.Files.Opening;
using Lampwright.Metal;
using Lampwright.Metal.Bending;

namespace Lampwright.Benchmarks;

/// <summary>Orders of bending that have goals of their own. Invented parts and brake.</summary>
internal static class BendMeasures
{
    /// <summary>A box whose walls have lips outwards and rims down: twelve bends.</summary>
    public static PartSpec Hat { get; } =
        new("hat", new("mild", 0.001, 0.001, BendRule.Din6935, 7850), FaceSpec.Rectangle(0.2, 0.16))
        {
            Flanges =
            [
                .. new[] { "bottom", "right", "top", "left" }.SelectMany(edge =>
                    new FlangeSpec[]
                    {
                        new($"wall_{edge}", $"face.{edge}", 0.04),
                        new($"lip_{edge}", $"wall_{edge}.far", 0.016, -Math.PI / 2),
                        new($"rim_{edge}", $"lip_{edge}.far", 0.012, -Math.PI / 2),
                    }
                ),
            ],
        };

    /// <summary>The order on a brake with eight fingers; fails where the verdict is not the wanted one.</summary>
    /// <param name="part">The part.</param>
    /// <param name="isFree">True for slender fingers that leave an order, false for a brake on which none exists.</param>
    public static BendPlan Plan(FoldedPart part, bool isFree)
    {
        var (finger, clamp, bed, apron) = BrakeMachine.Sections(
            2.356,
            0.06,
            isFree ? 0.012 : 0.05,
            isFree ? 0.008 : 0.05,
            0.2,
            0.012,
            isFree ? 0.008 : 0.03
        );
        var plan = BendOrder.Of(
            part,
            new()
            {
                LengthM = 0.6,
                ClosingRad = 2.356,
                FingerWidthsM = [0.02, 0.025, 0.03, 0.04, 0.05, 0.075, 0.1, 0.15],
                Finger = finger,
                Clamp = clamp,
                Bed = bed,
                Apron = apron,
                OpeningM = 0.03,
                LeastHoldM = 0.006,
            }
        );
        return (plan.Verdict == BendVerdict.Found) == isFree
            ? plan
            : throw new InvalidOperationException(
                $"{plan.Verdict} after {plan.States} states: {string.Join("; ", plan.Blocked.Select(b => b.Stroke.Name + " " + BendWords.Of(b.FromParent)))}"
            );
    }

    /// <summary>From the design file to the words and pictures of every bend of a light with twenty parts: signs written.</summary>
    public static long Cards(string path)
    {
        var light = OpenedLight.At(path).Prepare().Nominal();
        var bending = light.Metal!.Bending.Value;
        var signs = 0L;
        foreach (var part in bending.Parts)
        {
            for (var i = 0; i < part.Plan.Stages.Count; i++)
            {
                signs += BendCards.Of(part, i).Row.Length + BendPicture.Svg(part, i).Length;
            }
        }

        return light.Metal.Parts.Count == 20
            ? signs
            : throw new InvalidOperationException($"The light has {light.Metal.Parts.Count} parts.");
    }
}
