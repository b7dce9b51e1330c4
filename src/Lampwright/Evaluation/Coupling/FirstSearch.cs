using Lampwright.Evaluation.Maps;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Picks the resistors of a chain that the maker has not chosen: wishes in light become wishes in amps, steps does the rest.</summary>
internal static class FirstSearch
{
    // A usual warm junction: the search needs amps before heat is known, and a few kelvin move a step by less than a resistor does.
    private static readonly double WarmK = 338.15;

    // Air round the resistors when the light is warm, and how far a new contact scatters about its typical value to either side
    // (5 to 95 %): common practice, no source.
    private static readonly double WarmAirK = 338.15;
    private static readonly double ContactScatter = 1.64;

    /// <summary>A budget of boxes and no clock: typing stays live on any machine, and the same light has the same chain everywhere.</summary>
    public static int LiveBoxes => 20_000;

    /// <summary>What the search came to; null where there is nothing to search for.</summary>
    public static (ChainSearchSpec Spec, ChainSearchResult Found)? Of(
        Design.Steps steps,
        EmitterFit fit,
        DriverModel driver,
        SenseThreshold threshold,
        LightParts parts,
        double luxPerLm
    ) => Spec(steps, fit, driver, threshold, parts, luxPerLm) is { } spec ? (spec, ChainSearch.Find(spec)) : null;

    private static ChainSearchSpec? Spec(
        Design.Steps steps,
        EmitterFit fit,
        DriverModel driver,
        SenseThreshold threshold,
        LightParts parts,
        double luxPerLm
    ) => Spec(steps, driver, threshold, parts, Wanted(steps, fit.Model, luxPerLm), WarmAirK);

    /// <summary>What the search is told; null where there is nothing to search for.</summary>
    /// <param name="steps">What the design says.</param>
    /// <param name="driver">The driver at nominal.</param>
    /// <param name="threshold">Its sense threshold.</param>
    /// <param name="parts">Which emitter, which driver.</param>
    /// <param name="wanted">Wanted currents in amperes, in the order they were asked.</param>
    /// <param name="airK">Hottest air round the resistors in kelvin.</param>
    public static ChainSearchSpec? Spec(
        Design.Steps steps,
        DriverModel driver,
        SenseThreshold threshold,
        LightParts parts,
        IReadOnlyList<double> wanted,
        double airK
    )
    {
        var network = new ChainNetwork(StepsMap.Chain(steps, StepsMap.Part(steps, threshold.Ohm), []));
        if (wanted.Count == 0 || steps.Switches < 1 || steps.Switches > ChainSpec.MostSwitches)
        {
            return null;
        }

        var kind = Kind(network.Spec.Fixed, steps, airK);
        var series = ESeries.Has(steps.Stock) ? steps.Stock : "E24";
        var arrangement = network.Spec.Arrangement;
        var stock =
            steps.Stock == "drawer"
                ? Drawer(arrangement, steps, driver, wanted, airK)
                : ChainSearchSpec.StockOf(arrangement, series, driver, wanted, kind);
        var contact = steps.ContactTypical;
        return new ChainSearchSpec(
            arrangement,
            wanted,
            steps.Switches,
            stock,
            driver,
            contact.Nominal,
            // With a tap lead one of the two leads is out of the loop.
            network.LeadOhm(ResistorPart.ReferenceK) * (network.Spec.HasTapLead ? 0.5 : 1),
            Math.Min(
                parts.Emitter.CurrentMax?.Nominal ?? double.MaxValue,
                parts.Driver?.Rated?.Nominal ?? double.MaxValue
            )
        )
        {
            OneAfterAnother = steps.IsOneAfterAnother && arrangement != Steps.Arrangement.Selector,

            // With a fixed value in the file the board's own part has come off, and that place is chosen too.
            Fixed = steps.Chosen?.Fixed is null ? kind : null,
            ContactLeastOhm = contact.Nominal / ContactScatter,
            ContactMostOhm = contact.Nominal * ContactScatter,
            ContactBareOhm = 0,
            ThresholdByFixed = threshold.Basis is ThresholdBasis.MeasuredCurrent or ThresholdBasis.MeasuredPair,
            AirMostK = airK,
            SwitchA = network.Spec.ContactMostA,
            BleedOhm = network.Spec.BleedOhm,
            UnsensedLeadOhm = network.Spec.HasTapLead ? network.LeadOhm(ResistorPart.ReferenceK) / 2 : 0,
            FloorOhm = network.Spec.FloorOhm ?? 0,
            FloorTolerance = kind.Tolerance,
            LeadTolerance = StepsMethods.MethodErrors.First(e => e.Name == "steps.lead_resistance").HalfWidth,
            TempcoIsLimit = network.Spec.TempcoIsLimit,
            MostBoxes = LiveBoxes,
            Workers = 1,
            LeastSwitchedOhm = network.Spec.LeastSwitchedOhm,
        }.WithCorner(steps, threshold, parts);
    }

    /// <summary>What each resistor of the chain is like, at the resistance and in the air given.</summary>
    public static StockPart Kind(ResistorPart part, Design.Steps steps, double airK) =>
        new(
            part.Ohm,
            part.AllowedW(airK),
            Math.Clamp(part.Tolerance ?? steps.Part.Tolerance.Nominal, 0, 0.5),
            part.TempcoPerK,
            part.RisePerWattK
        )
        {
            OwnTolerance = part.Tolerance is not null,
        };

    /// <summary>The parts of one position as the search knows them.</summary>
    public static PositionParts Parts(ResistorPart part, Design.Steps steps, double airK) =>
        part.Pair is { } pair
            ? new(pair.Joint, Kind(pair.First, steps, airK), Kind(pair.Second, steps, airK))
            : new(Joint.Single, Kind(part, steps, airK));

    private static IReadOnlyList<StockPart> Drawer(
        Steps.Arrangement arrangement,
        Design.Steps steps,
        DriverModel driver,
        IReadOnlyList<double> wanted,
        double airK
    ) =>
        ChainSearchSpec.StockOf(
            arrangement,
            [
                // What is used up is no part of the stock.
                .. steps
                    .Drawer.Where(p => p.Count is not 0)
                    .Select(p =>
                        Kind(StepsMap.Part(steps, p), steps, airK) with
                        {
                            Count = p.Count,
                            RatingW = p.Rating?.Nominal,
                        }
                    ),
            ],
            driver,
            wanted
        );

    /// <summary>Wanted currents at a usual warm junction, in amperes, in the order they were asked.</summary>
    public static IReadOnlyList<double> Wanted(Design.Steps steps, EmitterModel emitter, double luxPerLm)
    {
        if (steps.Targets is not { } t)
        {
            return [];
        }

        double? For(double share) =>
            t.From is { } from ? emitter.CurrentForFlux(share * emitter.FluxLm(from.Nominal, WarmK), WarmK) : null;
        var amps = t.Kind switch
        {
            Design.TargetKind.Stops => Enumerable
                .Range(0, Math.Clamp(t.Count, 0, 64))
                .Select(k => For(Math.Pow(2, -k * t.EveryStops))),
            Design.TargetKind.Percent => t.List.Select(v => For(v.Nominal)),
            Design.TargetKind.Currents => t.List.Select(v => (double?)v.Nominal),
            _ => luxPerLm > 0 ? t.List.Select(v => emitter.CurrentForFlux(v.Nominal / luxPerLm, WarmK)) : [],
        };
        return [.. amps.OfType<double>().Where(a => a > 0 && double.IsFinite(a))];
    }
}
