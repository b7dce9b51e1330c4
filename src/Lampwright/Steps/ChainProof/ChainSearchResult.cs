namespace Lampwright.Steps.ChainProof;

/// <summary>How far a search is.</summary>
/// <param name="Boxes">Boxes of chains looked at.</param>
/// <param name="Share">Share of the numbered parts that are done, 0 to 1.</param>
/// <param name="BestError">Worst error of the best chain so far; infinite where there is none yet.</param>
/// <param name="Bound">No chain is better than this.</param>
/// <param name="Of">Which search it is, in words; empty for the best chain itself.</param>
public sealed record ChainProgress(long Boxes, double Share, double BestError, double Bound, string Of = "")
{
    /// <summary>How much better a chain could still be, as a worst error.</summary>
    public double Gap => BestError - Bound;
}

/// <summary>A wanted current and the combination that meets it best.</summary>
/// <param name="WantedA">Wanted current in amperes.</param>
/// <param name="Switches">The combination, in the order of the chain, 1 = closed.</param>
/// <param name="CurrentA">Its nominal current in amperes.</param>
/// <param name="Error">Relative difference at nominal.</param>
/// <param name="LowA">Its current at the low end of everything, in amperes; the nominal one for a search at nominal values.</param>
/// <param name="HighA">Its current at the high end of everything, in amperes.</param>
public sealed record WantedStep(
    double WantedA,
    string Switches,
    double CurrentA,
    double Error,
    double LowA,
    double HighA
)
{
    /// <summary>Greatest relative difference over its range.</summary>
    public double WorstError => Math.Max(0, Math.Max((HighA / WantedA) - 1, 1 - (LowA / WantedA)));
}

/// <summary>What of a stock a search has left aside.</summary>
/// <param name="Unusable">Parts without a sound resistance, rating or count: zero ohm, rating of zero, not a number.</param>
/// <param name="Beyond">Parts over <see cref="ChainSearchSpec.MostStock"/>.</param>
/// <param name="NotJoined">True when two parts were allowed in a position but the stock is too large for it.</param>
public sealed record ChainTold(int Unusable, int Beyond, bool NotJoined);

/// <summary>Which limit leaves no chain.</summary>
public enum ChainLimit
{
    /// <summary>Nothing is wanted, or no wanted current is a number above zero.</summary>
    NothingWanted,

    /// <summary>There is no usable part.</summary>
    NoStock,

    /// <summary>More steps are wanted than switches thrown one after another give.</summary>
    TooFewSwitches,

    /// <summary>Every chain exceeds the greatest current: the resistors are too small.</summary>
    MostCurrent,

    /// <summary>Every chain falls below the least current: the resistors are too great.</summary>
    LeastCurrent,

    /// <summary>Every chain overloads a part.</summary>
    Power,

    /// <summary>The drawer has too few of a part.</summary>
    Counts,

    /// <summary>Each limit alone can be kept, all together cannot, or the search ended before one was found.</summary>
    Together,
}

/// <summary>What a stock lacks.</summary>
/// <param name="Limit">Which limit leaves no chain; null where there is one and a better value would help.</param>
/// <param name="WantedA">Wanted current that is concerned, in amperes.</param>
/// <param name="Position">Position whose value would help, 0 is the fixed one; null where none is named.</param>
/// <param name="Ohm">Resistance that would help, in ohm, or the least or greatest that is needed; null where none is named.</param>
/// <param name="AllowedW">Power such a part must be allowed to carry, in watts; null where none is named.</param>
/// <param name="Error">Worst error with it; null where none is computed.</param>
/// <param name="Words">One sentence.</param>
public sealed record ChainMissing(
    ChainLimit? Limit,
    double? WantedA,
    int? Position,
    double? Ohm,
    double? AllowedW,
    double? Error,
    string Words
);

/// <summary>What a search for a chain came to.</summary>
/// <param name="Parts">What is soldered in each position: the fixed one first, then the switched ones in the order of the chain; empty where there is no chain.</param>
/// <param name="WorstError">Worst relative error of the objective; infinite where there is no chain.</param>
/// <param name="NominalError">Worst relative error at nominal values.</param>
/// <param name="Proven">True when all chains are closed: none is better than <paramref name="Bound"/>, or none keeps the limits.</param>
/// <param name="Bound">No chain has a worst error below this; for a proven one a billionth below its own.</param>
/// <param name="CasesClosed">How many boxes of chains were looked at.</param>
/// <param name="Steps">Each wanted current with the combination that meets it best, in the order they were asked.</param>
/// <param name="MostLoad">Greatest share of its allowed power that any part carries.</param>
/// <param name="Missing">What is missing where there is no chain; null where there is one (see <see cref="ChainLack.Better"/>).</param>
/// <param name="Told">What of the stock was left aside.</param>
/// <param name="Certificate">The proof, where it was asked for.</param>
public sealed record ChainSearchResult(
    IReadOnlyList<PositionParts> Parts,
    double WorstError,
    double NominalError,
    bool Proven,
    double Bound,
    long CasesClosed,
    IReadOnlyList<WantedStep> Steps,
    double MostLoad,
    ChainMissing? Missing,
    ChainTold Told,
    ChainCertificate? Certificate
)
{
    /// <summary>Whether a chain was found.</summary>
    public bool Found => Parts.Count > 0;

    /// <summary>Resistances of the positions at 25 °C, the fixed one first, in ohm.</summary>
    public IReadOnlyList<double> Ohms => [.. Parts.Select(p => p.Ohm)];

    /// <summary>How much better a chain could still be, as a worst error; 0 where it is proven.</summary>
    public double Gap => Proven || !Found ? 0 : WorstError - Bound;

    /// <summary>Count of soldered parts.</summary>
    public int PartCount => Parts.Sum(p => p.Count);

    /// <summary>What they cost together.</summary>
    public double Price => Parts.Sum(p => p.Price);

    internal static ChainSearchResult Of(
        ChainModel model,
        ChainTold told,
        int[] at,
        bool proven,
        double bound,
        long boxes,
        ChainCertificate? certificate
    )
    {
        var parts = new ChainPicks(model, new(model)).Of(at)!;
        return Judged(model, told, parts, at, proven, bound, boxes, certificate);
    }

    /// <summary>What is to be said of given parts, whether or not they keep the limits.</summary>
    internal static ChainSearchResult Judged(
        ChainModel model,
        ChainTold told,
        PositionParts[] parts,
        int[] at,
        bool proven,
        double bound,
        long boxes,
        ChainCertificate? certificate
    )
    {
        var limits = new ChainLimits(model);
        var error = new ChainError(model);
        var nominal = new NominalChain(model.Spec, parts);
        var steps = new WantedStep[model.Wanted.Length];
        var found = error.Steps(at);
        for (var t = 0; t < found.Length; t++)
        {
            var (c, low, high) = found[t];
            var amps = nominal.CurrentA(c);
            steps[t] = new(model.Wanted[t], nominal.Switches(c), amps, (amps / model.Wanted[t]) - 1, low, high);
        }

        return new(
            parts,
            error.Of(at),
            nominal.WorstError(model),
            proven,
            bound,
            boxes,
            [.. model.Order.Select((asked, t) => (asked, t)).OrderBy(p => p.asked).Select(p => steps[p.t])],
            parts.Select((p, k) => limits.Power(at, k) / p.AllowedW).Max(),
            null,
            told,
            certificate
        );
    }

    internal static ChainSearchResult None(
        ChainTold told,
        bool proven,
        long boxes,
        ChainMissing missing,
        ChainCertificate? certificate
    ) => new([], double.PositiveInfinity, double.PositiveInfinity, proven, 0, boxes, [], 0, missing, told, certificate);
}
