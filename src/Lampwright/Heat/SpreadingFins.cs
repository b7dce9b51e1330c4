namespace Lampwright.Heat;

/// <summary>Straight fins under a base as the waves of the spreading series feel them: a film of its own for every wave along the fins.</summary>
/// <remarks>
/// A fin whose root follows cos(δy) carries heat along itself as well as away from the base: its temperature obeys
/// θ'' = (2h/(kt) + δ²)·θ down its height, so that its root takes k·µ·tanh(µH)·θ with µ² = 2h/(kt) + δ². For δ = 0 that is the fin
/// efficiency of Gardner; for short waves the fin is a far better conductor than an even film says. Waves across the fins find no
/// such way. The heat that goes into fins has to gather under their roots first: a strip on a channel as wide as the pitch.
/// Validity: fins along the whole base, of the base's own metal, adiabatic tips; many fins, or a base about as thick as half of the pitch.
/// Source: derived (Fourier's law in the fin with a wave along its root; Gardner 1945 is its limit); gathering: Yovanovich, strip in a channel,
/// (1/π)·ln(1/sin(πε/2)) (from memory). Accuracy: 1 % of the rises of the grid (docs/heat.md).
/// Checked by: solver (the grid), invariant (δ = 0 gives the even film back). Closed form.
/// </remarks>
internal sealed class SpreadingFins
{
    private static readonly int Steps = 60;

    private readonly double share;
    private readonly double thicknessM;
    private readonly double heightM;
    private readonly double gatherM;

    /// <summary>Fins under a base.</summary>
    /// <param name="acrossM">Side of the base across the fins, m.</param>
    /// <param name="count">Number of fins, 2 or more.</param>
    /// <param name="thicknessM">Thickness of a fin, m, above 0.</param>
    /// <param name="heightM">Height of a fin, m, above 0.</param>
    internal SpreadingFins(double acrossM, int count, double thicknessM, double heightM)
    {
        share = Math.Clamp(count * thicknessM / acrossM, 1e-6, 1);
        (this.thicknessM, this.heightM) = (thicknessM, heightM);
        gatherM = acrossM / count / Math.PI * -Math.Log(Math.Sin(Math.PI / 2 * share));
    }

    /// <summary>Film over conductivity that each wave along the fins feels, 1/m, from that of the even wave.</summary>
    /// <param name="evenPerM">Film over conductivity over the base's outline, 1/m, above 0, finite.</param>
    /// <param name="alongPerM">Waves along the fins, 1/m, 0 or above.</param>
    /// <param name="into">Takes the films.</param>
    internal void Films(double evenPerM, ReadOnlySpan<double> alongPerM, Span<double> into)
    {
        var face = Face(evenPerM);
        for (var n = 0; n < into.Length; n++)
        {
            into[n] = alongPerM[n] <= 0 ? evenPerM : Math.Max(evenPerM, Of(face, alongPerM[n]));
        }
    }

    /// <summary>Film of a wave with the film on the faces of fins and base at hand.</summary>
    private double Of(double facePerM, double alongPerM)
    {
        var mu = Math.Sqrt(2 * facePerM / thicknessM + alongPerM * alongPerM);
        var root = share * mu * Math.Tanh(mu * heightM);
        return (1 - share) * facePerM + root / (1 + root * gatherM);
    }

    /// <summary>Film on the faces that gives the even wave its film: the outline's film grows with it, so it is bracketed and halved.</summary>
    private double Face(double evenPerM)
    {
        double least = 0,
            most = evenPerM / Math.Max(1 - share, 1e-6);
        if (Of(most, 0) < evenPerM)
        {
            return most;
        }

        for (var i = 0; i < Steps; i++)
        {
            var middle = (least + most) / 2;
            (least, most) = Of(middle, 0) < evenPerM ? (middle, most) : (least, middle);
        }

        return (least + most) / 2;
    }
}
