namespace Lampwright.Steps.Faults;

/// <summary>What pulses do to a fuse: their I²t against the I²t that melts it, in A²s.</summary>
/// <remarks>
/// <b>Validity</b>: pulses at least 10 s apart; between the numbers of pulses logarithmic, held at the ends.
/// <b>Source</b>: Littelfuse, Fuseology, chart 2 (shares) and chart 1 (shapes; the integrals are derived). <b>Checked by</b>: printed.
/// </remarks>
public static class FusePulse
{
    private static readonly (double Pulses, double Share)[] Endured =
    [
        (100, 0.48),
        (1e3, 0.38),
        (1e4, 0.29),
        (1e5, 0.22),
    ];

    /// <summary>Share of the melting I²t that each of so many pulses may have.</summary>
    /// <param name="pulses">How often; above 0.</param>
    public static double ShareEndured(double pulses)
    {
        Guard.Positive(pulses);
        for (var i = 1; i < Endured.Length; i++)
        {
            var (low, high) = (Endured[i - 1], Endured[i]);
            if (pulses <= high.Pulses || i == Endured.Length - 1)
            {
                var part = Math.Clamp(Math.Log(pulses / low.Pulses) / Math.Log(high.Pulses / low.Pulses), 0, 1);
                return low.Share + ((high.Share - low.Share) * part);
            }
        }

        return Endured[^1].Share;
    }

    /// <summary>I²t of half a sine: ½·peak²·time, A²s.</summary>
    /// <param name="peakA">Peak, A.</param>
    /// <param name="timeS">How long it lasts, s.</param>
    public static double HalfSineA2s(double peakA, double timeS) => peakA * peakA * timeS / 2;
}
