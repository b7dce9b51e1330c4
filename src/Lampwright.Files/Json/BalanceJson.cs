using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Json;

/// <summary>The answer of the station balance.</summary>
internal static class BalanceJson
{
    public static void Write(JsonOut json, BalanceAnswer balance)
    {
        json.Array(
            "tilts",
            balance.Tilts,
            t =>
            {
                json.Text("name", t.Name);
                json.Predicted("tiltingMassKg", t.TiltingMassKg);
                json.Predicted("offsetMm", t.OffsetMm);
                json.Predicted("worstMomentNm", t.WorstMomentNm);
                json.Predicted("worstAngleDeg", t.WorstAngleDeg);
                json.Predicted("holdingNm", t.HoldingNm);
                json.Predicted("safetyFactor", t.SafetyFactor);
            }
        );
        json.Array(
            "arms",
            balance.Arms,
            a =>
            {
                json.Text("name", a.Name);
                json.Predicted("droopMm", a.DroopMm);
                json.Predicted("stressMPa", a.StressMPa);
            }
        );
        json.Array(
            "stands",
            balance.Stands,
            s =>
            {
                json.Text("name", s.Name);
                json.Predicted("tipsAtDeg", s.TipsAtDeg);
                json.Predicted("footNeededMm", s.FootNeededMm);
            }
        );
    }
}
