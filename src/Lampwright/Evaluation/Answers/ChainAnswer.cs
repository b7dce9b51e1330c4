using Lampwright.Findings;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Evaluation.Answers;

/// <summary>The best chain from the maker's stock, with what is proven of it, what else could be taken, and how the light's own chain stands against it.</summary>
/// <remarks>Computed when somebody asks (<see cref="PreparedEvaluation.Chain"/>), from the currents that the settled light needs; errors are worst corners, no percentiles.</remarks>
public sealed record ChainAnswer
{
    /// <summary>What was asked: wanted currents, stock, limits.</summary>
    public required ChainSearchSpec Asked { get; init; }

    /// <summary>Wanted steps in words, in the order of <see cref="ChainSearchSpec.WantedA"/>.</summary>
    public required IReadOnlyList<string> Wanted { get; init; }

    /// <summary>What the search came to: parts of each position, worst error, bound, cases closed; or what is missing.</summary>
    public required ChainSearchResult Best { get; init; }

    /// <summary>The value that would make it much better; null where none would.</summary>
    public ChainMissing? Better { get; init; }

    /// <summary>The best and its runners-up, the least error first: fewer parts, fewer switches, cooler parts, two parts in a position.</summary>
    public IReadOnlyList<ChainOffer> Offers { get; init; } = [];

    /// <summary>The chain that the light is computed with; null where it has none.</summary>
    public UsedChain? Used { get; init; }

    /// <summary>Whether the search was told to go on to its end.</summary>
    public bool ToTheEnd { get; init; }

    /// <summary>What is to be said of it.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>What a chain gives for each wanted step, with the wanted step in words.</summary>
    /// <param name="chain">The best one, a runner-up, or the one that is used.</param>
    public IEnumerable<(string Wanted, WantedStep Gives)> Gives(ChainSearchResult chain)
    {
        ArgumentNullException.ThrowIfNull(chain);
        var sound = Enumerable.Range(0, Asked.WantedA.Count).Where(k => Asked.WantedA[k] is > 0 and < 1e9);
        return sound.Zip(chain.Steps, (k, step) => (k < Wanted.Count ? Wanted[k] : "", step));
    }
}

/// <summary>A chain that could be taken.</summary>
/// <param name="Choice">The chain, with what it was held to.</param>
/// <param name="HottestRiseK">Rise of its hottest part over the air round it, in the position that is worst for it, K.</param>
/// <param name="Words">What sets it apart.</param>
/// <param name="IsUsed">Whether the light is computed with these values.</param>
public sealed record ChainOffer(ChainChoice Choice, double HottestRiseK, string Words, bool IsUsed);

/// <summary>The chain that the light is computed with, by the measures of the search.</summary>
/// <param name="Does">Its parts, its worst error, what it gives for each wanted step.</param>
/// <param name="Breaks">The limit of the search that it breaks, in words; empty where it keeps them all.</param>
/// <param name="IsGiven">Whether the maker has chosen it; else the first search has.</param>
public sealed record UsedChain(ChainSearchResult Does, string Breaks, bool IsGiven)
{
    /// <summary>Whether the limit is kept at stated values and broken in the worst corner.</summary>
    public bool BreaksOnlyAtCorner { get; init; }
}
