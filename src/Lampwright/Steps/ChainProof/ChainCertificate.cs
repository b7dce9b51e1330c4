namespace Lampwright.Steps.ChainProof;

/// <summary>Why no chain of a box is better than the best.</summary>
public enum ClosedBy
{
    /// <summary>A wanted current that no combination comes near enough to; which one is told beside.</summary>
    Target,

    /// <summary>Every chain gives more than the greatest current.</summary>
    MostCurrent,

    /// <summary>Every chain gives less than the least current.</summary>
    LeastCurrent,

    /// <summary>Every chain exceeds the greatest current of the worst corner.</summary>
    CornerCurrent,

    /// <summary>Every chain falls below the least current in the worst corner.</summary>
    CornerLeast,

    /// <summary>In every chain one part is over its allowed power in the worst corner.</summary>
    CornerPower,

    /// <summary>What is decided of the chain, once its positions ascend, takes more parts of a kind than there are.</summary>
    Count,

    /// <summary>In every chain one part is over its allowed power.</summary>
    Power,

    /// <summary>No chain of the box ascends; the same parts in another order are looked at elsewhere.</summary>
    Order,

    /// <summary>One chain, computed: not better, or more parts of a kind than there are.</summary>
    Computed,
}

/// <summary>What was done to a box.</summary>
public enum CaseStep
{
    /// <summary>Halved: values up to the index, then those above it.</summary>
    Halved,

    /// <summary>Values up to the index were closed and the rest goes on.</summary>
    CutBelow,

    /// <summary>Values from the index on were closed and the rest goes on.</summary>
    CutAbove,

    /// <summary>Closed as a whole.</summary>
    Closed,
}

/// <summary>One line of a proof.</summary>
/// <param name="Step">What was done to the box at hand.</param>
/// <param name="Position">Which position was halved or cut, 0 is the fixed one; 0 where the whole was closed.</param>
/// <param name="Index">At which value: the last one below, or the first one above.</param>
/// <param name="By">Why what was closed is closed.</param>
/// <param name="Target">Which wanted current, brightest first, where that is the reason.</param>
public readonly record struct ProofLine(CaseStep Step, int Position, int Index, ClosedBy By, int Target);

/// <summary>A proof that no chain is better: how all chains were divided into boxes, and why each box holds none that is.</summary>
/// <remarks>
/// Begin with the box of all values. Each line says what is done to the box at hand: <see cref="CaseStep.Halved"/> leaves two, the lower
/// at hand and the upper to come after it; a cut closes a part of it and leaves the rest at hand; <see cref="CaseStep.Closed"/> closes it, and
/// the next one waiting is at hand. When the lines end, none may be waiting. A checker needs nothing of the search: only Ohm's law at
/// the ends of each closed box.
/// </remarks>
/// <param name="FixedValues">Values of the fixed position, ascending, each with the ways to make it.</param>
/// <param name="SwitchedValues">Values of the switched positions, ascending.</param>
/// <param name="Lines">The proof.</param>
public sealed record ChainCertificate(
    IReadOnlyList<IReadOnlyList<PositionParts>> FixedValues,
    IReadOnlyList<IReadOnlyList<PositionParts>> SwitchedValues,
    IReadOnlyList<ProofLine> Lines
);
