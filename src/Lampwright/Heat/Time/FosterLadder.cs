namespace Lampwright.Heat.Time;

/// <summary>One term of a Foster fit or one rung of a Cauer ladder.</summary>
/// <param name="KPerW">Resistance, K/W, above 0.</param>
/// <param name="Second">Time constant, s (Foster), or heat capacity, J/K (Cauer), above 0.</param>
public readonly record struct LadderTerm(double KPerW, double Second);

/// <summary>A transient thermal impedance as its maker fits it, and the ladder of nodes it stands for.</summary>
/// <remarks>
/// A Foster fit has no physical nodes and may not be chained with a sink; the Cauer ladder may.
/// Source: JESD51-14 (ladders; memory); continued fraction of Z(s). Checked by: derived row H.LD-11, printed inputs H.LD-07.
/// </remarks>
public static class FosterLadder
{
    /// <summary>Rise for each watt a time after heat sets in, K/W: ΣR·(1 - exp(-t/τ)).</summary>
    /// <param name="terms">Resistances and time constants.</param>
    /// <param name="timeS">Time, s, 0 or above.</param>
    public static double ImpedanceKPerW(ReadOnlySpan<LadderTerm> terms, double timeS)
    {
        var sum = 0.0;
        foreach (var t in terms)
        {
            sum += t.KPerW * (1 - Math.Exp(-Guard.InRange(timeS, 0, 1e12) / Guard.Positive(t.Second)));
        }

        return sum;
    }

    /// <summary>Highest rise for each watt of heat that comes and goes for ever, K/W: ΣR·(1 - exp(-t_on/τ))/(1 - exp(-T/τ)).</summary>
    /// <param name="terms">Resistances and time constants.</param>
    /// <param name="onS">Time with heat, s, above 0.</param>
    /// <param name="periodS">Period, s, not below <paramref name="onS"/>.</param>
    public static double PeriodicKPerW(ReadOnlySpan<LadderTerm> terms, double onS, double periodS)
    {
        Guard.Positive(onS);
        Guard.InRange(periodS, onS, 1e12);
        var sum = 0.0;
        foreach (var t in terms)
        {
            sum += t.KPerW * (1 - Math.Exp(-onS / Guard.Positive(t.Second))) / (1 - Math.Exp(-periodS / t.Second));
        }

        return sum;
    }

    /// <summary>The ladder C₁ ∥ (R₁ + C₂ ∥ (R₂ + …)) of the same impedance: rungs from the heat inwards.</summary>
    /// <param name="terms">Resistances and time constants, each constant different; at most 12.</param>
    public static IReadOnlyList<LadderTerm> Cauer(ReadOnlySpan<LadderTerm> terms)
    {
        Guard.InRange(terms.Length, 1, 12);

        // Z = N/D with D = Π(1 + s·τ); coefficients by rising power of s.
        double[] numerator = [0];
        double[] denominator = [1];
        foreach (var t in terms)
        {
            Guard.Positive(t.KPerW);
            double[] factor = [1, Guard.Positive(t.Second)];
            numerator = Sum(Product(numerator, factor), Product(denominator, [t.KPerW]));
            denominator = Product(denominator, factor);
        }

        var rungs = new List<LadderTerm>();
        for (var k = terms.Length; k >= 1; k--)
        {
            // D has degree k, N degree k - 1.
            var capacity = denominator[k] / numerator[k - 1];
            var rest = new double[k];
            for (var i = 0; i < k; i++)
            {
                rest[i] = denominator[i] - (i > 0 ? capacity * numerator[i - 1] : 0);
            }

            var resistance = numerator[k - 1] / rest[k - 1];
            rungs.Add(new(resistance, capacity));
            var next = new double[Math.Max(1, k - 1)];
            for (var i = 0; i < k - 1; i++)
            {
                next[i] = numerator[i] - (resistance * rest[i]);
            }

            (numerator, denominator) = (next, rest);
        }

        return rungs;
    }

    private static double[] Product(double[] a, double[] b)
    {
        var p = new double[a.Length + b.Length - 1];
        for (var i = 0; i < a.Length; i++)
        {
            for (var j = 0; j < b.Length; j++)
            {
                p[i + j] += a[i] * b[j];
            }
        }

        return p;
    }

    private static double[] Sum(double[] a, double[] b)
    {
        var s = new double[Math.Max(a.Length, b.Length)];
        for (var i = 0; i < s.Length; i++)
        {
            s[i] = (i < a.Length ? a[i] : 0) + (i < b.Length ? b[i] : 0);
        }

        return s;
    }
}
