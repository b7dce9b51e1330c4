using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Json;

/// <summary>The answer of the station light.</summary>
internal static class LightJson
{
    public static void Write(JsonOut json, LightAnswer light)
    {
        json.Predicted("efficiency", light.Efficiency);
        json.Predicted("reflectorAbsorbs", light.ReflectorAbsorbs);
        json.Predicted("diffuserAbsorbs", light.DiffuserAbsorbs);
        json.Predicted("fluxOutLm", light.FluxOutLm);
        json.Predicted("axisCd", light.AxisCd);
        json.Predicted("luxAtSubject", light.LuxAtSubject);
        json.Predicted("evenness", light.Evenness);
        json.Predicted("inverseSquareError", light.InverseSquareError);
        json.Predicted("ev", light.Ev);
        json.Predicted("aperture", light.Aperture);
        json.Predicted("percentFlicker", light.PercentFlicker);
        json.Predicted("shutterResidual", light.ShutterResidual);
        json.Predicted("careDistanceM", light.CareDistanceM);
        json.Plains("exitM", light.ExitM.Width, light.ExitM.Height);
    }
}
