using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Heat;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out what is said of the fan's air.</summary>
/// <remarks>
/// The bands of voltage and opening are not drawn: they are those of the hottest junction and of the base, carried over by taking the sink's whole
/// rise so many times larger or smaller.
/// </remarks>
internal static class AirBuild
{
    private static readonly double ZeroC = 273.15;

    public static AirAnswer? Of(CoupledLight light, Bands bands, AirStudy air)
    {
        if (light.Inputs.Parts.Fan is null || light.Inputs.Sink is not { } sink)
        {
            return null;
        }

        var losses = sink
            .Nominal.AirLosses.Select((l, k) => new AirLossAt(l.Path, bands.At(light.LossPlace(k))))
            .ToList();
        if (sink.Nominal.Form != SinkForm.Plate)
        {
            losses.Add(new(light.Inputs.Parts.SinkPath, bands.At(light.LossPlace(losses.Count))));
        }

        return new(
            [.. losses.Where(l => l.PressurePa.Value > 0).OrderByDescending(l => l.PressurePa.Value)],
            air.RatedV > 0 ? air.RunsAtV : null,
            air.RatedV > 0 ? air.FloorRatio * air.RatedV : null,
            air.AsksVoltage ? [.. StepsBuild.Order(light, bands).Select(i => Step(light, bands, air, i))] : [],
            Opening(light, bands, air)
        );
    }

    private static FanStep Step(CoupledLight light, Bands bands, AirStudy air, int position)
    {
        var switches = light.Inputs.Network.Switches(position);
        if (air.LeastV(position) is not { } least)
        {
            return new(switches, null, false, null);
        }

        var (cool, warm) = Margins(light, bands, position, PositionRow.JunctionC);
        var safe = air.LeastV(position, warm);
        var volts = new Predicted(
            least,
            Math.Min(least, air.LeastV(position, cool) ?? least),
            Math.Max(least, safe ?? Math.Max(air.RatedV, air.RunsAtV))
        );
        double Noise(double volt) => FanLaws.NoiseDifferenceDb(volt / air.RunsAtV);
        return new(
            switches,
            volts,
            safe is not null,
            air.RunsAtV > 0 ? new Predicted(Noise(volts.Value), Noise(volts.Low), Noise(volts.High)) : null
        );
    }

    private static OpeningForTemperature? Opening(CoupledLight light, Bands bands, AirStudy air)
    {
        if (air.Opening is not var (opening, wantedK))
        {
            return null;
        }

        var (cool, warm) = Margins(light, bands, light.Brightest, PositionRow.SinkC);
        var (low, high) = (air.OpeningFor(wantedK, cool)?.Times, air.OpeningFor(wantedK, warm)?.Times);
        var times = new Predicted(
            opening.Times,
            Math.Min(opening.Times, low ?? opening.Times),
            Math.Max(opening.Times, high ?? opening.Times)
        );
        double Base(double margin) => air.AmbientK + (opening.BaseRiseK * margin) - ZeroC;
        return new(
            wantedK - ZeroC,
            times,
            opening.IsReached,
            new(Base(1), Math.Min(Base(1), Base(cool)), Math.Max(Base(1), Base(warm))),
            [
                .. light
                    .Inputs.Sink!.Nominal.AirLosses.SelectMany(l => l.Branches.Count > 0 ? l.Branches : [l])
                    .Where(l => l.OpenM2 > 0)
                    .Select(l => new OpeningArea(l.Path, l.OpenM2 * 1e4, times.In(l.OpenM2 * 1e4))),
            ]
        );
    }

    /// <summary>Rise over the hottest day's air at the lower and the upper end of its band, over the nominal one.</summary>
    private static (double Cool, double Warm) Margins(CoupledLight light, Bands bands, int position, int number)
    {
        var ambient = bands.At(light.ScenePlace(Scene.AtHighestAmbient, SceneRow.AmbientC)).Value;
        var hot = bands.At(light.Place(Scene.AtHighestAmbient, position) + number);
        var nominal = hot.Value - ambient;
        return nominal > 0
            ? (Math.Clamp((hot.Low - ambient) / nominal, 0.1, 1), Math.Max(1, (hot.High - ambient) / nominal))
            : (1, 1);
    }
}
