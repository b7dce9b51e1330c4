using Lampwright.Metal.Bending;

namespace Lampwright.Tests.Metal.Bending;

/// <summary>Invented brakes.</summary>
internal static class Brakes
{
    public static BrakeMachine Of(double fingerHeight = 0.06, params double[] fingers)
    {
        var closing = 2.356;
        var (finger, clamp, bed, apron) = BrakeMachine.Sections(closing, fingerHeight, 0.05, 0.05, 0.2, 0.06, 0.03);
        return new()
        {
            LengthM = 0.6,
            ClosingRad = closing,
            FingerWidthsM = fingers.Length > 0 ? fingers : [0.02, 0.025, 0.03, 0.04, 0.05, 0.075, 0.1, 0.15],
            Finger = finger,
            Clamp = clamp,
            Bed = bed,
            Apron = apron,
            OpeningM = 0.03,
            LeastHoldM = 0.006,
        };
    }
}
