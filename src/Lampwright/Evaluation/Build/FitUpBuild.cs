using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Assembling;
using Lampwright.Evaluation.Draws;
using Lampwright.FitUp;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out the answer of the station fit-up.</summary>
internal static class FitUpBuild
{
    public static FitUpAnswer Of(AssemblyRows rows, Bands bands) =>
        new()
        {
            Placements =
            [
                .. rows.Result.Placed.Select(p => new Placement(
                    p.Id,
                    p.Frame,
                    rows.Things.First(t => t.Body.Id == p.Id).BoxM
                )),
            ],
            Unplaced = rows.Result.Unplaced,
            Joints = [.. rows.Result.Joints.Select(j => Joint(j, rows, bands))],
            TotalMassKg = bands.At(rows.Total),
            BalancePointMm = new(bands.At(rows.Total + 1), bands.At(rows.Total + 2), bands.At(rows.Total + 3)),
            Masses =
            [
                .. rows.Things.Select(
                    (t, i) => new MassLine(t.Body.Id, t.Count, bands.At(rows.First + i), t.Body.MassKg is not null)
                ),
            ],
        };

    private static JointAnswer Joint(JointResult joint, AssemblyRows rows, Bands bands)
    {
        var reach = rows.Reach(joint.Spec.Name);
        Predicted? Of(int number) => reach < 0 ? null : bands.At(reach + number);
        return new(
            joint.Spec.Name,
            joint.Spec.Stack,
            [
                .. joint.Holes.Select(
                    (h, i) =>
                        new JointHole(h.Ids, bands.At(rows.Miss(joint.Spec.Name, i)), Predicted.Sharp(h.AllowsM * 1000))
                ),
            ],
            joint.Spec.Screw is { } s
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"{s.Size} × {s.LengthM * 1000:0.#}{(s.HasNut ? ", nut" : "")}{(s.Washers > 0 ? $", {s.Washers} washer{(s.Washers > 1 ? "s" : "")}" : "")}"
                )
                : "",
            Of(0),
            Of(1),
            Of(2)
        );
    }
}
