using Lampwright.Evaluation.Maps;
using Lampwright.Steps;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Picks the resistors of a chain that the maker has not chosen: wishes in light become wishes in amps, steps does the rest.</summary>
internal static class FirstSearch
{
    // A usual warm junction: the search needs amps before heat is known, and a few kelvin move a step by less than a resistor does.
    private static readonly double WarmK = 338.15;

    public static (double FixedOhm, IReadOnlyList<double> ChainOhm)? Of(
        Design.Steps steps,
        EmitterFit fit,
        DriverModel driver,
        SenseThreshold threshold,
        LightParts parts,
        double luxPerLm
    )
    {
        var wanted = Wanted(steps, fit.Model, luxPerLm);
        if (wanted.Count == 0 || steps.Switches is < 1 or > 10)
        {
            return null;
        }

        var series = ESeries.Has(steps.Stock) ? steps.Stock : "E24";
        var network = new ChainNetwork(StepsMap.Chain(steps, threshold.Ohm, []));
        var (kind, rating) = (network.Spec.Arrangement, steps.Part.Rating.Nominal);
        var stock =
            steps.Stock == "drawer"
                ? ChainSearchSpec.StockOf(kind, steps.Drawer.Select(v => v.Nominal), driver, wanted, rating)
                : ChainSearchSpec.StockOf(kind, series, driver, wanted, rating);
        if (stock.Count == 0)
        {
            return null;
        }

        var spec = new ChainSearchSpec(
            kind,
            wanted,
            steps.Switches,
            stock,
            driver,
            steps.ContactTypical.Nominal,
            network.LeadOhm(298.15),
            Math.Min(
                parts.Emitter.CurrentMax?.Nominal ?? double.MaxValue,
                parts.Driver?.Rated?.Nominal ?? double.MaxValue
            ),
            new StockPart(threshold.Ohm, rating)
        );
        return ChainSearch.Find(spec) is { } found ? (found.Fixed.Ohm, [.. found.Chain.Select(p => p.Ohm)]) : null;
    }

    private static List<double> Wanted(Design.Steps steps, EmitterModel emitter, double luxPerLm)
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
