using Lampwright.Balance;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Assembling;
using Lampwright.Evaluation.Draws;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out the answer of the station balance.</summary>
internal static class BalanceBuild
{
    public static BalanceAnswer Of(
        IReadOnlyList<TiltRows> tilts,
        IReadOnlyList<ArmRows> arms,
        IReadOnlyList<StandRows> stands,
        Bands bands,
        double[] x,
        double[] nominal
    ) =>
        new(
            [
                .. tilts.Select(t => new TiltAnswer
                {
                    Name = t.Tilt.Name,
                    TiltingMassKg = bands.At(t.First),
                    OffsetMm = bands.At(t.First + 1),
                    WorstMomentNm = bands.At(t.First + 2),
                    WorstAngleDeg = bands.At(t.First + 3),
                    HoldingNm = bands.At(t.First + 4),
                    SafetyFactor = bands.At(t.First + 5),
                    MomentPicture = Picture(t.Spec(x, nominal)),
                }),
            ],
            [.. arms.Select(a => new ArmAnswer(a.Arm.Name, bands.At(a.First), bands.At(a.First + 1)))],
            [.. stands.Select(s => new StandAnswer(s.Stand.Name, bands.At(s.First), bands.At(s.First + 1)))]
        );

    private static double[] Picture(TiltSpec spec) =>
        [.. Enumerable.Range(-18, 37).Select(i => TiltJoint.MomentNm(spec, i * Math.PI / 18))];
}
