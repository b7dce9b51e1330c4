using Lampwright.Evaluation.Answers;
using Lampwright.Geometry;

namespace Lampwright.Files.Json;

/// <summary>The answer of the station fit-up.</summary>
internal static class FitUpJson
{
    public static void Write(JsonOut json, FitUpAnswer fit)
    {
        json.Predicted("totalMassKg", fit.TotalMassKg);
        json.Predicteds("balancePointMm", [fit.BalancePointMm.X, fit.BalancePointMm.Y, fit.BalancePointMm.Z]);
        json.Array(
            "masses",
            fit.Masses,
            m =>
            {
                json.Text("id", m.Id);
                json.Count("count", m.Count);
                json.Predicted("massKg", m.IsKnown ? m.MassKg : null);
                json.Flag("isKnown", m.IsKnown);
            }
        );
        json.Array("joints", fit.Joints, j => Joint(json, j));
        json.Array("placements", fit.Placements, p => Placement(json, p));
        json.Texts("unplaced", fit.Unplaced);
    }

    private static void Joint(JsonOut json, JointAnswer joint)
    {
        json.Text("name", joint.Name);
        json.Texts("stack", joint.Stack);
        json.Text("screw", joint.Screw);
        json.Predicted("gripMm", joint.GripMm);
        json.Predicted("engagedMm", joint.EngagedMm);
        json.Predicted("sparesMm", joint.SparesMm);
        json.Array(
            "holes",
            joint.Holes,
            h =>
            {
                json.Texts("ids", h.Ids);
                json.Predicted("missMm", h.MissMm);
                json.Predicted("allowsMm", h.AllowsMm);
            }
        );
    }

    private static void Placement(JsonOut json, Placement placement)
    {
        json.Text("id", placement.Id);
        Vector("originMm", placement.Frame.Origin * 1000);
        Vector("xAxis", placement.Frame.X);
        Vector("yAxis", placement.Frame.Y);
        if (placement.BoxM is { } box)
        {
            Vector("boxMm", box * 1000);
        }
        else
        {
            json.Null("boxMm");
        }

        void Vector(string name, Vec3 v) =>
            json.Plains(name, Math.Round(v.X, 9), Math.Round(v.Y, 9), Math.Round(v.Z, 9));
    }
}
