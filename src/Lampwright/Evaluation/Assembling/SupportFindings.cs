using Lampwright.Balance;
using Lampwright.Design;
using Lampwright.Findings;
using Lampwright.Metal;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Assembling;

/// <summary>What the station balance has to say of tilt joints, arms and stands at nominal values.</summary>
internal static class SupportFindings
{
    public static IEnumerable<Finding> Of(
        LightDesign design,
        IReadOnlyList<TiltRows> tilts,
        IReadOnlyList<ArmRows> arms,
        IReadOnlyList<StandRows> stands,
        double[] x,
        double[] row
    )
    {
        foreach (var t in design.Tilts)
        {
            var path = "tilt." + t.Name;
            if (t.Washer is { } w && BalanceFindings.OfFaces(path, w.Width.Nominal, w.Height.Nominal) is { } impossible)
            {
                yield return impossible;
            }
            else if (tilts.All(r => r.Tilt.Name != t.Name))
            {
                yield return EvaluationRules.TiltNotComputed.At(
                    path,
                    $"The tilt joint {t.Name} can't be judged: its axis is not placed, its washer is not given, or '{t.Screw}' is no screw of the table."
                );
            }
        }

        foreach (var t in tilts)
        {
            var spec = t.Spec(x, row);
            var wing = t.Tilt.Screw.Contains("wing", StringComparison.OrdinalIgnoreCase);
            var proof = MetricThread.Named(t.Tilt.Screw)?.Proof48N ?? 0;
            foreach (var f in BalanceFindings.OfTilt("tilt." + t.Tilt.Name, spec, TiltJoint.Result(spec), wing, proof))
            {
                yield return f;
            }
        }

        foreach (var s in stands)
        {
            var spec = s.Spec(row);
            foreach (var f in BalanceFindings.OfStand("stand." + s.Stand.Name, spec, Stability.Result(spec)))
            {
                yield return f;
            }
        }

        foreach (var a in arms)
        {
            var spec = a.Spec(x, row);
            var yield_ = SheetGrade.Find(a.Arm.Material)?.YieldPa ?? 0;
            foreach (var f in BalanceFindings.OfArm("arm." + a.Arm.Name, spec, Balance.Arm.Result(spec), yield_))
            {
                yield return f;
            }
        }
    }
}
