using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Coupling;
using Lampwright.Findings;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Evaluation.Chains;

/// <summary>Asks for the best chain of a light that has come to rest: its own wanted currents, its own warm air.</summary>
internal static class BestChain
{
    private static readonly double ZeroC = 273.15;

    // Any search that can be proven in a lifetime ends long before.
    private static readonly long AllBoxes = 1_000_000_000_000;

    /// <summary>The answer; null where nothing is wanted or nothing can be switched.</summary>
    /// <param name="light">The light at rest.</param>
    /// <param name="row">Its nominal row.</param>
    /// <param name="toTheEnd">Whether to go on until it is proven; else the live budget ends it.</param>
    /// <param name="withOffers">Whether runners-up are searched for too.</param>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="stop">Ends it with the best so far.</param>
    /// <param name="early">Told the best chain with what is proven of it, before the runners-up are searched for.</param>
    public static ChainAnswer? Of(
        CoupledLight light,
        double[] row,
        bool toTheEnd,
        bool withOffers,
        IProgress<ChainProgress>? progress,
        CancellationToken stop,
        IProgress<ChainAnswer>? early = null
    )
    {
        var inputs = light.Inputs;
        var airK = Enumerable
            .Range(0, light.Positions)
            .Max(i => row[light.Place(Scene.AtHighestAmbient, i) + PositionRow.CompartmentC] + ZeroC);
        double[] wanted = [.. Enumerable.Range(0, light.Wanted.Count).Select(k => row[light.WantedPlace(k)])];
        var asked = FirstSearch.Spec(
            inputs.Steps,
            inputs.Driver,
            inputs.Threshold,
            inputs.Parts,
            wanted,
            Math.Max(airK, ResistorPart.ReferenceK)
        );
        if (asked is null)
        {
            return null;
        }

        asked = asked with
        {
            MostBoxes = toTheEnd ? AllBoxes : asked.MostBoxes,
            Workers = toTheEnd ? 2 : asked.Workers,
        };
        var best = ChainSearch.Find(asked, progress, stop);
        var used = Used(inputs, asked);
        var answer = new ChainAnswer
        {
            Asked = asked,
            Wanted = [.. Enumerable.Range(0, light.Wanted.Count).Select(light.Wanted.Words)],
            Best = best,
            Better = ChainLack.Better(asked, best),
            Used = used,
            ToTheEnd = toTheEnd,
            Findings =
            [
                .. ChainRules.Searched(asked, best, "steps"),
                .. stop.IsCancellationRequested ? [] : ChainRules.Refused(asked, best, "steps"),
                .. Corner(used),
            ],
        };
        if (!withOffers || stop.IsCancellationRequested)
        {
            return answer;
        }

        early?.Report(answer);
        return answer with { Offers = ChainOffers.Of(asked, best, used, toTheEnd, progress, stop) };
    }

    private static UsedChain? Used(CoupledInputs inputs, ChainSearchSpec asked)
    {
        var network = inputs.Network.Spec;
        if (network.Switched.Count == 0 || network.Switched.Count > ChainSpec.MostSwitches)
        {
            return null;
        }

        var air = asked.AirMostK ?? asked.AirK;
        PositionParts[] parts =
        [
            .. new[] { network.Fixed }.Concat(network.Switched).Select(p => FirstSearch.Parts(p, inputs.Steps, air)),
        ];
        if (!parts.All(p => p.First.Usable && p.Second is null or { Usable: true }))
        {
            return null;
        }

        var (does, breaks) = ChainCheck.Of(asked with { Switches = network.Switched.Count }, parts);
        return new(does, Words(breaks, asked), inputs.Steps.Chosen is not null)
        {
            BreaksOnlyAtCorner = breaks is ClosedBy.CornerCurrent or ClosedBy.CornerLeast or ClosedBy.CornerPower,
        };
    }

    private static IEnumerable<Finding> Corner(UsedChain? used)
    {
        if (used is { BreaksOnlyAtCorner: true, IsGiven: true })
        {
            yield return ChainRules.BreaksAtCorner.At(
                "steps.chosen",
                $"With tolerances, temperature and contacts at their worst, {used.Breaks}."
            );
        }
    }

    private static string Words(ClosedBy? breaks, ChainSearchSpec asked)
    {
        static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
        return breaks switch
        {
            null => "",
            ClosedBy.MostCurrent => Text($"its brightest position gives more than {asked.MostA:0.###} A"),
            ClosedBy.CornerCurrent => Text(
                $"its brightest position can give more than {asked.CornerMostA ?? asked.SwitchA:0.###} A"
            ),
            ClosedBy.LeastCurrent => Text($"its dimmest position gives less than {asked.LeastA:0.###} A"),
            ClosedBy.CornerLeast => Text($"its dimmest position can give less than {asked.CornerLeastA:0.###} A"),
            ClosedBy.CornerPower => "a part can carry more than it may in the warm box",
            _ => "a part carries more than it may in the warm box",
        };
    }
}
