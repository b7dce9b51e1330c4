using Lampwright.Evaluation.Answers;
using Lampwright.Metal.Bending;

namespace Lampwright.Files.Json;

/// <summary>The order of bending of each part, or what stands against one.</summary>
internal static class BendingJson
{
    public static void Write(JsonOut json, BendingAnswer bending) =>
        json.Object(
            "bending",
            () =>
            {
                json.Flag("isOwnBrake", bending.IsDescribed);
                json.Array("parts", bending.Parts, p => Part(json, p.Plan));
            }
        );

    private static void Part(JsonOut json, BendPlan plan)
    {
        json.Text("name", plan.Part);
        json.Text(
            "verdict",
            plan.Verdict switch
            {
                BendVerdict.Found => "order",
                BendVerdict.None => "none",
                _ => "tooMany",
            }
        );
        json.Array("strokes", plan.Stages, s => Stage(json, s));
        json.Texts("pressed", plan.Pressed.Order(StringComparer.Ordinal));
        json.Texts("made", plan.Made);
        json.Array(
            "blocked",
            plan.Blocked,
            b =>
            {
                json.Text("bend", b.Stroke.Name);
                json.Text("why", BendWords.Of(b.FromParent));
                json.Text("whyFromFlange", b.FromFlange is { } flange ? BendWords.Of(flange) : null);
            }
        );
        json.Texts("freedBy", plan.Freeings.Select(BendWords.Of));
    }

    private static void Stage(JsonOut json, BendStage stage)
    {
        json.Text("bend", stage.Stroke.Name);
        json.Text("clamped", stage.Clamped);
        json.Text("up", stage.InsideUp ? "inside" : "outside");
        json.Plain("swingToDeg", stage.Stroke.SwingRad * 180 / Math.PI);
        json.Plain("noseBackMm", stage.NoseBackM * 1000);
        json.Plains("fingersMm", [.. stage.FingersM.Select(f => f * 1000)]);
        json.Plain("lengthMm", stage.LengthM * 1000);
        json.Plain("rowFromMm", stage.RowFromM * 1000);
        json.Flag("isSideways", stage.OutSideways);
    }
}
