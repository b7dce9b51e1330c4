using System.Globalization;
using Lampwright.Design;
using Lampwright.Heat;
using Lampwright.Quantities;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Coupling;

/// <summary>One step at one input that a maker can change, with what it costs elsewhere.</summary>
/// <param name="Path">Path of the value in the design file.</param>
/// <param name="Step">The change in words.</param>
/// <param name="Cost">What it costs, in words.</param>
/// <param name="Inputs">The light with the change.</param>
/// <param name="MassKg">Mass that it adds, kg; negative is lighter.</param>
/// <param name="NoiseDb">Noise that it adds, dB.</param>
internal sealed record HeatChange(
    string Path,
    string Step,
    string Cost,
    CoupledInputs Inputs,
    double MassKg = 0,
    double NoiseDb = 0
)
{
    // Steps of a size that a shop can take: a tenth, a volt, a millimetre, two fins; paint and anodising give about this (Tables, emissivities).
    private static readonly double Share = 0.1;
    private static readonly double FanStepV = 1;
    private static readonly double BaseStepM = 1e-3;
    private static readonly int FinStep = 2;
    private static readonly int LeastFins = 2;
    private static readonly double LeastGapM = 1e-3;
    private static readonly double Painted = 0.9;
    private static readonly double WorthPainting = 0.8;

    /// <summary>All changes that this light leaves open.</summary>
    public static IEnumerable<HeatChange> Of(CoupledInputs light)
    {
        foreach (var change in Layer(light).Concat(Fan(light)))
        {
            yield return change;
        }

        // A measured sink is what it is: nothing that its sizes say is computed with.
        if (light.Sink is not { } sink || light.Parts.Sink is not { IsMeasured: false } given)
        {
            yield break;
        }

        foreach (var change in Sink(light, sink.Nominal, given))
        {
            yield return change;
        }
    }

    /// <summary>The light with its fan at another voltage; null where that changes nothing: without a fan, or with a sink that was measured.</summary>
    /// <param name="light">The light.</param>
    /// <param name="volts">Voltage, V, above 0.</param>
    public static CoupledInputs? FanAt(CoupledInputs light, double volts) =>
        light.Parts.Fan is { Rated: { Nominal: > 0 } rated } fan
        && light.Sink?.Nominal is { Fan: { } spec } sink
        && light.Parts.Sink is not { IsMeasured: true }
            ? Prepared(
                light with
                {
                    Parts = light.Parts with { Fan = fan with { RunAt = Value.Exact(volts, fan.RunAt?.Path ?? "") } },
                },
                sink with
                {
                    Fan = spec with { VoltageRatio = volts / rated.Nominal },
                }
            )
            : null;

    private static IEnumerable<HeatChange> Layer(CoupledInputs light)
    {
        if (light.Parts.Interface is not { } layer)
        {
            yield break;
        }

        var path = "interface." + layer.Name;
        var (thickness, conductivity) = (layer.Thickness.Nominal, layer.Conductivity.Nominal);
        if (thickness > 0)
        {
            yield return new(
                path + ".thickness",
                Words("thinner by a tenth: {0:0.###} to {1:0.###} mm", thickness * 1e3, thickness * (1 - Share) * 1e3),
                "more pressure, flatter faces",
                With(light, layer with { Thickness = Value.Exact(thickness * (1 - Share), layer.Thickness.Path) })
            );
        }

        yield return new(
            path + ".conductivity",
            Words("a tenth better: {0:0.##} to {1:0.##} W/(m·K)", conductivity, conductivity * (1 + Share)),
            "a dearer compound",
            With(light, layer with { Conductivity = Value.Exact(conductivity * (1 + Share), layer.Conductivity.Path) })
        );
    }

    private static IEnumerable<HeatChange> Fan(CoupledInputs light)
    {
        if (
            light.Parts.Fan is not { Rated: { Nominal: > 0 } rated } fan
            || light.Sink?.Nominal is not { Fan: { } spec } sink
            || light.Parts.Sink is { IsMeasured: true }
        )
        {
            yield break;
        }

        var at = fan.RunAt?.Nominal ?? rated.Nominal;
        var to = Math.Min(at + FanStepV, rated.Nominal);
        if (to > at + 0.05 && FanAt(light, to) is { } quicker)
        {
            var faster = spec with { VoltageRatio = to / rated.Nominal };
            var was = spec with { VoltageRatio = at / rated.Nominal };
            yield return new(
                $"fan.{fan.Name}.run_at",
                Words("faster: {0:0.##} to {1:0.##} V", at, to),
                "noise, dust",
                quicker,
                NoiseDb: was.SpeedRatio > 0 ? FanLaws.NoiseDifferenceDb(faster.SpeedRatio / was.SpeedRatio) : 0
            );
        }

        if (sink.AirLosses.Any(l => l.OpenM2 > 0 || l.Branches.Any(b => b.OpenM2 > 0)))
        {
            yield return new(
                $"fan.{fan.Name}.air",
                "a tenth more open area in every opening",
                "holes to drill, light that leaks",
                Prepared(light, sink with { AirLosses = [.. sink.AirLosses.Select(l => l.Opened(1 + Share))] })
            );
        }
    }

    private static IEnumerable<HeatChange> Sink(CoupledInputs light, SinkSpec sink, Sink given)
    {
        var path = "sink." + given.Name;
        var density = SinkMaterial.Named(given.Material)?.DensityKgPerM3 ?? 2700;
        yield return new(
            path + ".base",
            Words(
                "base thicker: {0:0.#} to {1:0.#} mm",
                sink.BaseThicknessM * 1e3,
                (sink.BaseThicknessM + BaseStepM) * 1e3
            ),
            "mass, longer screws",
            Prepared(light, sink with { BaseThicknessM = sink.BaseThicknessM + BaseStepM }),
            density * sink.AcrossM * sink.AlongM * BaseStepM
        );
        if (sink.Form == SinkForm.Fins)
        {
            // A sink may have fins too many as well as too few: both ways are solved, what does not help is left out.
            foreach (var step in (int[])[FinStep, -FinStep])
            {
                var other = sink with { FinCount = sink.FinCount + step };
                if (other.FinCount < LeastFins || other.GapM < LeastGapM)
                {
                    continue;
                }

                yield return new(
                    path + ".fins.count",
                    Words(
                        step > 0 ? "two fins more: {0:0} to {1:0}" : "two fins fewer: {0:0} to {1:0}",
                        sink.FinCount,
                        other.FinCount
                    ),
                    step > 0 ? "mass, dust in narrower gaps" : "a sink of another pitch",
                    Prepared(light, other),
                    density * step * sink.FinHeightM * sink.FinThicknessM * sink.AlongM
                );
            }

            var higher = sink with { FinHeightM = sink.FinHeightM * (1 + Share) };
            yield return new(
                path + ".fins.height",
                Words("fins higher by a tenth: {0:0.#} to {1:0.#} mm", sink.FinHeightM * 1e3, higher.FinHeightM * 1e3),
                "mass, room behind the sink",
                Prepared(light, higher),
                density * sink.FinCount * Share * sink.FinHeightM * sink.FinThicknessM * sink.AlongM
            );
        }

        if (given.Emissivity.Nominal < WorthPainting)
        {
            yield return new(
                path + ".emissivity",
                Words("anodised or painted thinly: emissivity {0:0.##} to {1:0.##}", given.Emissivity.Nominal, Painted),
                "a finish; none under the emitter",
                Prepared(
                    light with
                    {
                        Parts = light.Parts with
                        {
                            Sink = given with { Emissivity = Value.Exact(Painted, given.Emissivity.Path) },
                        },
                    },
                    sink with
                    {
                        Emissivity = Painted,
                    }
                )
            );
        }
    }

    private static CoupledInputs With(CoupledInputs light, ThermalInterface layer) =>
        light with
        {
            Parts = light.Parts with { Interface = layer },
        };

    /// <summary>The light with another sink; how much air passes beside it is found anew.</summary>
    private static CoupledInputs Prepared(CoupledInputs light, SinkSpec sink)
    {
        var ambient = Math.Clamp(light.Design.Place.Ambient.Nominal, 200, 400);
        var ducted = light.Duct is { } duct
            ? sink with
            {
                BypassShare = Bypass.Share(sink, duct.AcrossM, duct.HeightM, ambient),
            }
            : sink;
        return light with { Sink = SinkModel.Prepare(ducted) };
    }

    private static string Words(string format, params object[] numbers) =>
        string.Format(CultureInfo.InvariantCulture, format, numbers);
}
