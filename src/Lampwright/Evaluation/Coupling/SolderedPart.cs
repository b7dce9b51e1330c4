using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>One resistor that is soldered.</summary>
/// <param name="Position">Its position in the chain, 0 is the fixed one.</param>
/// <param name="Part">What it is.</param>
/// <param name="Share">Its share of the position's power.</param>
internal readonly record struct SolderedPart(int Position, ResistorPart Part, double Share)
{
    /// <summary>All of a chain, in the order of the chain.</summary>
    public static IReadOnlyList<SolderedPart> Of(ChainSpec chain)
    {
        var all = new List<SolderedPart>();
        foreach (var (part, k) in chain.Switched.Prepend(chain.Fixed).Select((p, k) => (p, k)))
        {
            if (part.Pair is { } pair)
            {
                all.Add(new(k, pair.First, pair.FirstShare));
                all.Add(new(k, pair.Second, pair.SecondShare));
            }
            else
            {
                all.Add(new(k, part, 1));
            }
        }

        return all;
    }
}
