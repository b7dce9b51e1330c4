using Lampwright.Findings;
using Lampwright.Heat;

namespace Lampwright.Evaluation.Coupling;

/// <summary>What the fan's way, heat pipes and trials have to say once the light has come to rest.</summary>
internal static class AirFindings
{
    /// <summary>HEA015, HEA023, HEA025, HEA026, HEA027.</summary>
    public static IEnumerable<Finding> Of(CoupledLight light, double[] row, AirStudy air)
    {
        var parts = light.Inputs.Parts;
        if (!light.HasSink)
        {
            yield break;
        }

        var brightest = row[light.Place(Scene.Normal, light.Brightest) + PositionRow.HeatW];
        if (HeatFindings.Heatless(brightest, parts.EmitterPath) is { } none)
        {
            yield return none;
            yield break;
        }

        foreach (var runs in new[] { true, false }.Where(light.Guesses))
        {
            yield return HeatFindings.MeasuredForOneFanState(
                parts.SinkPath + (parts.Sink!.Trials.Count > 0 ? ".trials" : ".measured"),
                Scene.All[runs ? Scene.Normal : Scene.FanStopped].Name,
                runs ? 1 : CoolingDraws.StillOverFanned
            );
        }

        foreach (var s in new[] { Scene.Normal, Scene.AtHighestAmbient })
        {
            var heat = row[light.Place(s, light.Brightest) + PositionRow.HeatW];
            if (
                light.Inputs.Sink?.Nominal.Tower is { } tower
                && HeatFindings.Pipes(tower, heat, parts.SinkPath, Scene.All[s].Name) is { } dry
            )
            {
                yield return dry;
                break;
            }
        }

        var hot = Scene.All[Scene.AtHighestAmbient].Name;
        if (
            parts.Sink?.Wanted is not null
            && air.Opening is var (opening, wanted)
            && HeatFindings.Unreached(opening, air.AmbientK, wanted, parts.SinkPath, hot) is { } shut
        )
        {
            yield return shut;
        }

        // Only where the junction passes its limit can a step be without any voltage that holds it.
        var limitC = air.LimitK - 273.15;
        var over = Enumerable
            .Range(0, light.Positions)
            .Where(i => row[light.Place(Scene.AtHighestAmbient, i) + PositionRow.JunctionC] > limitC)
            .ToList();
        if (air.AsksVoltage && over.Count > 0)
        {
            var lost = over.Where(i => air.LeastV(i) is null).Select(light.Inputs.Network.Switches).ToList();
            if (lost.Count > 0)
            {
                yield return HeatFindings.NoSpeed(
                    lost.Count == 1 ? $"position {lost[0]}" : $"{lost.Count} positions, {lost[0]} among them,",
                    air.RatedV,
                    air.LimitK,
                    "fan." + parts.Fan!.Name,
                    hot
                );
            }
        }
    }
}
