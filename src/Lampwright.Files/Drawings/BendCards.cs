using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Metal.Bending;

namespace Lampwright.Files.Drawings;

/// <summary>What stands on the card of a bend, in words; the same in terminal, page and packet.</summary>
/// <param name="Flange">What is bent.</param>
/// <param name="Clamped">What lies under the clamp.</param>
/// <param name="Up">Which side of the sheet is up.</param>
/// <param name="SwingTo">The angle to swing the apron to, with the sign of degrees.</param>
/// <param name="Left">The angle that is to be left, with the sign of degrees.</param>
/// <param name="NoseBackMm">How far the nose stands behind the apron's axis, mm.</param>
/// <param name="Fingers">Widths of the fingers, mm.</param>
/// <param name="Row">How wide the row is and where it begins.</param>
/// <param name="SetLine">How the nose is set on the sheet.</param>
/// <param name="Notes">What else is to be seen to.</param>
public sealed record BendCards(
    string Flange,
    string Clamped,
    string Up,
    string SwingTo,
    string Left,
    double NoseBackMm,
    string Fingers,
    string Row,
    string SetLine,
    IReadOnlyList<string> Notes
)
{
    /// <summary>What no plan knows, for all who bend by one.</summary>
    public static string Unknown =>
        "The plan knows bed, apron, fingers and beam in section. It does not know the brake's end frames, handles, counterweight and stops, where your hands are, nor a long flange that whips: swing the apron slowly, and look along its whole length before each stroke.";

    /// <summary>The card of a stage.</summary>
    /// <param name="part">The part.</param>
    /// <param name="stage">Which stage, from 0.</param>
    public static BendCards Of(PartBending part, int stage)
    {
        ArgumentNullException.ThrowIfNull(part);
        var now = part.Plan.Stages[stage];
        var before = stage > 0 ? part.Plan.Stages[stage - 1] : null;
        var bends = part.Bends(stage);
        var notes = new List<string>();
        if (before?.InsideUp == !now.InsideUp)
        {
            notes.Add("turn the sheet over");
        }

        if (before?.FingersM.SequenceEqual(now.FingersM) == true)
        {
            notes.Add("same fingers");
        }

        if (now.Side == ClampedSide.Flange)
        {
            notes.Add("the flange is clamped, the part swings: keep clear of it");
        }

        if (now.Stroke.AngleRad > Math.PI - 1e-3)
        {
            notes.Add("close as far as it goes, then press flat");
        }

        if (now.OutSideways)
        {
            notes.Add(
                "goes in and comes out sideways, past the end of the brake: a wall is higher than the clamp lifts"
            );
        }

        var unset = bends.Any(b => b.Set is null);
        return new(
            now.Stroke.Name,
            now.Clamped,
            now.InsideUp ? "inside up" : "outside up",
            Degrees(now.Stroke.SwingRad),
            Degrees(now.Stroke.AngleRad),
            now.NoseBackM * 1000,
            BendWords.Fingers(now.FingersM),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{now.FingersM.Sum() * 1000:0.#} of {now.LengthM * 1000:0.#} mm, room {now.LeastM * 1000:0.#} to {Math.Max(now.MostM, now.LeastM) * 1000:0.#}; {Begins(now)}{Spread(now)}"
            ),
            unset ? "no set line: set by the bend's beginning"
                : now.Side == ClampedSide.Flange
                    ? "nose to the outer tangent, its radius towards the part: the flange lies under the clamp"
                : $"nose to the set line of {now.Stroke.Name}, scribed on the {(now.InsideUp ? "inside" : "outside")}",
            notes
        );
    }

    /// <summary>One sentence on a part without order, or on how the order was found.</summary>
    public static string Sum(PartBending part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var plan = part.Plan;
        return plan.Verdict switch
        {
            BendVerdict.Found => string.Create(
                CultureInfo.InvariantCulture,
                $"{plan.Stages.Count} strokes; of {BendWords.Orders(plan.Orders)} orders and sides one with the fewest changes of fingers and side."
            ),
            BendVerdict.None =>
                $"{plan.Part}: no order on this brake. All {BendWords.Orders(plan.Orders)} orders and sides are closed by {plan.States} states of the part.",
            _ => $"{plan.Part}: too many bends to look at all orders; nothing is said.",
        };
    }

    private static string Begins(BendStage stage) =>
        Math.Abs(stage.RowFromM) < 5e-4 ? "begins with the bend"
        : stage.RowFromM > 0
            ? string.Create(CultureInfo.InvariantCulture, $"begins {stage.RowFromM * 1000:0.#} mm inside the bend")
        : string.Create(CultureInfo.InvariantCulture, $"stands {-stage.RowFromM * 1000:0.#} mm over");

    private static string Spread(BendStage stage) =>
        stage.LeastM - stage.FingersM.Sum() is > 5e-5 and var open
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"; spread the fingers by {open * 1000 / (stage.FingersM.Count - 1):0.#} mm between each two"
            )
            : "";

    private static string Degrees(double rad) =>
        (Math.Round(rad * 1800 / Math.PI) / 10).ToString("0.#", CultureInfo.InvariantCulture) + "°";
}
