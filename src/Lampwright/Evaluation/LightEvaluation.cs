using Lampwright.Evaluation.Answers;
using Lampwright.Findings;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Evaluation;

/// <summary>Everything known about a design: the answers of the eight stations, with bands, and what a foreman would say of it.</summary>
/// <remarks>A station that the design does not say enough for is absent; a finding or a problem of the file says what is missing.</remarks>
public sealed record LightEvaluation
{
    /// <summary>Title of the light.</summary>
    public required string Title { get; init; }

    /// <summary>Count of draws behind the bands; 0 while only the nominal result is there.</summary>
    public required int Draws { get; init; }

    /// <summary>Which resistors and switches give which brightness.</summary>
    public StepsAnswer? Steps { get; init; }

    /// <summary>What each way of dimming would do, in the order they are compared; empty where emitter or driver is not known.</summary>
    /// <remarks>Stands apart from <see cref="Steps"/>: it is needed most where no chain can be computed.</remarks>
    public IReadOnlyList<WayAnswer> Ways { get; init; } = [];

    /// <summary>What the driver's board tells of its sense circuit; null without a driver.</summary>
    public BoardAnswer? Board { get; init; }

    /// <summary>How hot everything gets.</summary>
    public HeatAnswer? Heat { get; init; }

    /// <summary>How much light leaves and what lands on the subject.</summary>
    public LightAnswer? Light { get; init; }

    /// <summary>The folded parts and their blanks.</summary>
    public MetalAnswer? Metal { get; init; }

    /// <summary>Whether the parts meet, what the light weighs and where it balances.</summary>
    public FitUpAnswer? FitUp { get; init; }

    /// <summary>Whether joints, arms and stands hold.</summary>
    public BalanceAnswer? Balance { get; init; }

    /// <summary>What was measured, beside what was predicted.</summary>
    public ReadingsAnswer? Readings { get; init; }

    /// <summary>All findings, stops first, then in the order of the stations.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Which uncertain inputs matter most for the results a maker looks at first.</summary>
    public IReadOnlyList<Influence> Influences { get; init; } = [];

    /// <summary>True when a finding says not to build or power it.</summary>
    public bool HasStop => Findings.Any(f => f.Severity == Severity.Stop);

    /// <summary>The same with the best chain in it: what was said of an earlier search gives way to what is said of this one.</summary>
    /// <param name="chain">The best chain; null leaves everything as it is.</param>
    public LightEvaluation WithChain(ChainAnswer? chain)
    {
        if (chain is null || Steps is null)
        {
            return this;
        }

        // What is wrong with the wanted steps themselves is said whoever searches.
        bool IsOld(Finding f) => ChainRules.All.Contains(f.Rule) && f.Rule != ChainRules.OutOfOrder;
        return this with
        {
            Steps = Steps with { Chain = chain },
            Findings =
            [
                .. Findings.Where(f => !IsOld(f)).Concat(chain.Findings).Distinct().OrderByDescending(f => f.Severity),
            ],
        };
    }
}

/// <summary>How much of a result's spread comes from one uncertain input.</summary>
/// <param name="Result">The result, for example <c>junction, hot, brightest</c>.</param>
/// <param name="Variable">Path of the input in the design file, or the name of a method's error.</param>
/// <param name="Share">Share of the variance (squared rank correlation), 0 to 1.</param>
/// <param name="Direction">+1 when the result grows with the input, -1 when it falls.</param>
public sealed record Influence(string Result, string Variable, double Share, int Direction);
