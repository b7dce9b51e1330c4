using System.Globalization;
using Lampwright.Design;

namespace Lampwright.Evaluation.Coupling;

/// <summary>The steps of light that the maker wants, and the current that gives each in this light.</summary>
internal sealed class WantedSteps
{
    private readonly Targets? _targets;

    public WantedSteps(Targets? targets)
    {
        _targets = targets;
        Count = targets is null
            ? 0
            : Math.Clamp(targets.Kind == TargetKind.Stops ? targets.Count : targets.List.Count, 0, 64);
    }

    /// <summary>Count of wanted steps.</summary>
    public int Count { get; }

    /// <summary>The wanted step in words.</summary>
    public string Words(int k) =>
        _targets is not { } t
            ? ""
            : t.Kind switch
            {
                TargetKind.Stops => k == 0
                    ? string.Create(CultureInfo.InvariantCulture, $"full ({t.From?.Nominal ?? 0:0.###} A)")
                    : string.Create(CultureInfo.InvariantCulture, $"−{k * t.EveryStops:0.##} stops"),
                TargetKind.Currents => string.Create(CultureInfo.InvariantCulture, $"{t.List[k].Nominal:0.###} A"),
                TargetKind.Percent => string.Create(CultureInfo.InvariantCulture, $"{t.List[k].Nominal * 100:0.##} %"),
                _ => string.Create(CultureInfo.InvariantCulture, $"{t.List[k].Nominal:0} lx"),
            };

    /// <summary>Flux of the bare emitter that shares and stops are counted from, lm.</summary>
    /// <param name="circuit">The light in the scene normal.</param>
    /// <param name="brightestLm">Flux at the brightest position, which counts when no current is named.</param>
    public double FullLm(in Circuit circuit, double brightestLm) =>
        _targets?.From is { } from ? FluxAt(circuit, from.Nominal) : brightestLm;

    /// <summary>Flux of the bare emitter that the step asks for, lm; for a list of currents the flux at that current.</summary>
    /// <param name="circuit">The light in the scene normal.</param>
    /// <param name="k">Which step.</param>
    /// <param name="luxPerLm">Illuminance at the subject for each lumen of the bare emitter.</param>
    /// <param name="fullLm">What shares and stops are counted from.</param>
    public double FluxLm(in Circuit circuit, int k, double luxPerLm, double fullLm) =>
        _targets is not { } t
            ? 0
            : t.Kind switch
            {
                TargetKind.Stops => fullLm * Math.Pow(2, -k * t.EveryStops),
                TargetKind.Percent => fullLm * t.List[k].Nominal,
                TargetKind.Currents => FluxAt(circuit, t.List[k].Nominal),
                _ => luxPerLm > 0 ? t.List[k].Nominal / luxPerLm : 0,
            };

    /// <summary>Current that gives a flux once the light is warm, A; by secant steps on the coupled loop.</summary>
    public static double CurrentFor(in Circuit circuit, double fluxLm)
    {
        if (!(fluxLm > 0) || !double.IsFinite(fluxLm))
        {
            return 0;
        }

        // The junction moves little from guess to guess, so the emitter's own curve at the junction just found is all but the answer.
        var junction = circuit.AmbientK + 30;
        var current = circuit.Emitter.CurrentForFlux(fluxLm, junction) ?? circuit.Emitter.ToA;
        for (var pass = 0; pass < 12; pass++)
        {
            (junction, var flux) = OperatingPoints.LightAt(circuit, current, junction);
            if (Math.Abs(flux - fluxLm) < 1e-6 * fluxLm)
            {
                break;
            }

            current =
                circuit.Emitter.FluxBeyond == 0 && circuit.Emitter.CurrentForFlux(fluxLm, junction) is { } next
                    ? next
                    : current * Math.Clamp(fluxLm / Math.Max(flux, 1e-9), 0.25, 4);
        }

        return current;
    }

    private static double FluxAt(in Circuit circuit, double currentA) =>
        OperatingPoints.LightAt(circuit, currentA, circuit.AmbientK + 30).FluxLm;
}
