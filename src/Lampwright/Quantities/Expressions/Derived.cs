using System.Collections.Immutable;

namespace Lampwright.Quantities;

/// <summary>What one named value contributes to the spread of a value that is computed from it.</summary>
/// <param name="Source">Path of the value whose spread it is.</param>
/// <param name="Part">Slope times half-width, in SI units of the result; the sign is kept, so that what cancels does cancel.</param>
public readonly record struct SpreadPart(string Source, double Part);

/// <summary>A computed value: nominal, and where its spread comes from.</summary>
/// <remarks>
/// <b>Source</b>: JCGM 100:2008, 5.1.2: independent inputs combine as the root of the sum of the squares of slope times spread,
/// to first order. A value that enters twice enters with the sum of its slopes. <b>Validity</b>: spreads small against the value.
/// <b>Checked by</b>: invariant (<c>a - a</c> has no spread) and hand cases.
/// </remarks>
public sealed class Derived
{
    private static readonly int MostParts = 64;

    internal Derived(double si, Dimension dimension, ImmutableArray<SpreadPart> parts = default)
    {
        Nominal = new Quantity(si, dimension);
        Parts = parts.IsDefault ? [] : parts;
    }

    /// <summary>The nominal value.</summary>
    public Quantity Nominal { get; }

    /// <summary>What contributes to the spread, in the order of the paths.</summary>
    public ImmutableArray<SpreadPart> Parts { get; }

    /// <summary>Half of the spread, in SI units.</summary>
    public double HalfWidth
    {
        get
        {
            if (Parts.Length == 1)
            {
                return Math.Abs(Parts[0].Part);
            }

            var sum = 0.0;
            foreach (var part in Parts)
            {
                sum += part.Part * part.Part;
            }

            return Math.Sqrt(sum);
        }
    }

    /// <summary>A stated value as the start of computations.</summary>
    /// <param name="stated">Value and spread.</param>
    /// <param name="path">Its path, which names the spread.</param>
    public static Derived From(Stated stated, string path) =>
        new(stated.Si, stated.Dimension, stated.HalfWidth > 0 ? [new SpreadPart(path, stated.HalfWidth)] : []);

    /// <summary>The same value with a spread of its own on top of what it inherits.</summary>
    internal Derived With(double halfWidth, string path) =>
        new(Nominal.Si, Nominal.Dimension, Merge(Parts, 1, [new SpreadPart(path, halfWidth)], 1));

    internal Derived Scaled(double si, Dimension dimension, double slope) =>
        new(si, dimension, Merge(Parts, slope, [], 0));

    internal static Derived Of(double si, Dimension dimension, Derived a, double slopeA, Derived b, double slopeB) =>
        new(si, dimension, Merge(a.Parts, slopeA, b.Parts, slopeB));

    private static ImmutableArray<SpreadPart> Merge(
        ImmutableArray<SpreadPart> a,
        double slopeA,
        ImmutableArray<SpreadPart> b,
        double slopeB
    )
    {
        if (a.Length + b.Length == 0)
        {
            return [];
        }

        var merged = ImmutableArray.CreateBuilder<SpreadPart>(a.Length + b.Length);
        for (int i = 0, j = 0; i < a.Length || j < b.Length; )
        {
            var order =
                i == a.Length ? 1
                : j == b.Length ? -1
                : string.CompareOrdinal(a[i].Source, b[j].Source);
            var part = (order <= 0 ? a[i].Part * slopeA : 0) + (order >= 0 ? b[j].Part * slopeB : 0);
            var source = order <= 0 ? a[i].Source : b[j].Source;
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
            if (part != 0 && double.IsFinite(part))
            {
                merged.Add(new SpreadPart(source, part));
            }
        }

        return merged.Count <= MostParts ? merged.ToImmutable() : Collapse(merged);
    }

    /// <summary>A value over very many named values keeps its spread but no longer tells what it is made of.</summary>
    private static ImmutableArray<SpreadPart> Collapse(IEnumerable<SpreadPart> parts)
    {
        var sum = Math.Sqrt(parts.Sum(p => p.Part * p.Part));
        return [new SpreadPart("(many)", sum)];
    }
}
