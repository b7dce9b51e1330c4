using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>One resistor that is soldered.</summary>
/// <param name="Position">Its position in the chain, 0 is the fixed one.</param>
/// <param name="Part">What it is.</param>
/// <param name="Share">Its share of the position's power.</param>
internal readonly record struct SolderedPart(int Position, ResistorPart Part, double Share)
{
    /// <summary>Name of one of them: R and its position, and a or b where two share it.</summary>
    public static string Name(IReadOnlyList<SolderedPart> all, int i)
    {
        var k = all[i].Position;
        var twin =
            i > 0 && all[i - 1].Position == k ? "b"
            : i + 1 < all.Count && all[i + 1].Position == k ? "a"
            : "";
        return $"R{k}{twin}";
    }

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
