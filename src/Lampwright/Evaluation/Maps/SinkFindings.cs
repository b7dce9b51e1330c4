using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Findings;
using Lampwright.Heat;

namespace Lampwright.Evaluation.Maps;

/// <summary>What the design says of a sink and its fans that does not go together.</summary>
internal static class SinkFindings
{
    /// <summary>HEA021, HEA022, HEA024.</summary>
    public static IEnumerable<Finding> Of(LightDesign design, LightParts parts)
    {
        if (parts.Sink is { } sink)
        {
            foreach (var (key, message) in Form(sink, parts.Emitter.Name))
            {
                yield return HeatRules.DataConflict.At($"sink.{sink.Name}.{key}", message);
            }

            foreach (var f in Trials(sink))
            {
                yield return f;
            }

            foreach (var f in OtherFans(design, parts, "sink." + sink.Name))
            {
                yield return f;
            }
        }

        foreach (var f in parts.Fan is { } fan ? AirWay.Findings(fan) : [])
        {
            yield return f;
        }

        var limit = parts.Emitter.JunctionMax?.Nominal ?? CoupledLight.DefaultJunctionMaxK;
        if (HeatFindings.Ambient(design.Place.AmbientMax.Nominal, limit, "place.ambient_max") is { } hot)
        {
            yield return hot;
        }
    }

    private static IEnumerable<(string Key, string Message)> Form(Sink sink, string emitter)
    {
        if (sink.Pins is not null && sink.FinCount > 0)
        {
            yield return ("pins", "It has fins and pins; the pins are computed with, the fins are left out.");
        }

        if (sink.Stack is not null && (sink.Pins is not null || sink.FinCount > 0))
        {
            yield return (
                "stack",
                "It has a stack on heat pipes and fins or pins on its base; with pipes the stack alone is computed with."
            );
        }

        if (sink.Stack is null != sink.Pipes is null)
        {
            yield return sink.Stack is null
                ? ("pipes", "Heat pipes without a stack carry heat nowhere; they are left out.")
                : ("stack", "A stack without pipes has no way for the heat; it is left out.");
        }

        if (sink.FinCount == 1)
        {
            yield return ("fins", "One fin makes no channel; a plain plate is computed with.");
        }

        for (var i = 0; i < sink.Emitters.Count; i++)
        {
            if (sink.Emitters[i].Emitter != emitter && sink.Emitters[i].Heat is null)
            {
                yield return (
                    $"emitters[{i.ToString(CultureInfo.InvariantCulture)}]",
                    $"emitter.{sink.Emitters[i].Emitter} sits on this sink too and has no heat here; it is not counted."
                );
            }
            else if (sink.Emitters[i].Emitter == emitter && sink.Emitters[i].Heat is not null)
            {
                yield return (
                    $"emitters[{i.ToString(CultureInfo.InvariantCulture)}]",
                    "The heat of the light's own emitter is computed; the one given here is left out."
                );
            }
        }
    }

    private static IEnumerable<Finding> Trials(Sink sink)
    {
        var path = $"sink.{sink.Name}.trials";
        var running = sink.Trials.Where(t => !t.FanStopped).Select(t => t.Rise.Nominal / t.Power.Nominal).ToList();
        var stopped = sink.Trials.Where(t => t.FanStopped).Select(t => t.Rise.Nominal / t.Power.Nominal).ToList();
        if (running.Count > 1 && running.Max() > 1.3 * running.Min())
        {
            yield return HeatRules.DataConflict.At(
                path,
                $"With the fan as set they give {Show(running.Min())} to {Show(running.Max())} K/W; a fan's sink keeps its resistance within a tenth or so. The mean is taken.",
                $"{Show(running.Max())} K/W",
                $"{Show(1.3 * running.Min())} K/W"
            );
        }

        if (running.Count > 0 && stopped.Count > 0 && running.Min() > stopped.Max())
        {
            yield return HeatRules.DataConflict.At(
                path,
                $"With the fan as set they give {Show(running.Min())} K/W or more, with the fan stopped {Show(stopped.Max())} K/W or less: mixed up?",
                $"{Show(running.Min())} K/W",
                $"{Show(stopped.Max())} K/W"
            );
        }

        if (sink.Trials.Count > 0 && sink.Measured is not null)
        {
            yield return HeatRules.DataConflict.At(
                $"sink.{sink.Name}.measured",
                "Trials are given as well; these are taken where they cover the state of the fan."
            );
        }
    }

    private static IEnumerable<Finding> OtherFans(LightDesign design, LightParts parts, string sink)
    {
        if (parts.Fan is not { } main)
        {
            yield break;
        }

        foreach (var other in design.Fans.Where(f => f != main && f.Air.Contains(sink, StringComparer.Ordinal)))
        {
            var shared = main.Air.Where(a => other.Air.Contains(a, StringComparer.Ordinal)).ToList();
            var turned = shared.Count > 1 && Place(other, shared[0]) > Place(other, shared[^1]);
            yield return turned
                ? HeatRules.FansOppose.At(
                    $"fan.{other.Name}.air",
                    $"It blows from {shared[^1]} to {shared[0]}, fan.{main.Name} the other way; one of them runs in reverse and is only in the way."
                )
                : HeatRules.DataConflict.At(
                    $"fan.{other.Name}.air",
                    $"It blows through {sink} too; only fan.{main.Name} is computed with, so that the light runs cooler than shown."
                );
        }
    }

    private static int Place(Fan fan, string id) => fan.Air.Select((a, i) => (a, i)).First(x => x.a == id).i;

    private static string Show(double x) => x.ToString("G3", CultureInfo.InvariantCulture);
}
