using Lampwright.Design;
using Lampwright.Findings;
using Lampwright.Quantities;

namespace Lampwright.Evaluation.Maps;

/// <summary>Names in a design that nothing carries, and holes that nothing says the shape of.</summary>
internal static class DesignFindings
{
    public static IEnumerable<Finding> Of(LightDesign design, HolePatterns patterns)
    {
        foreach (var part in design.Parts)
        {
            if (part.Mirror is { } original)
            {
                if (Unknown(design.Parts.Select(p => p.Name), original, $"part.{part.Name}.mirror", "part") is { } f)
                {
                    yield return f;
                }
            }
            else if (
                part.Tube is null
                && Unknown(design.Sheets.Select(s => s.Name), part.Sheet, $"part.{part.Name}.sheet", "sheet") is { } f
            )
            {
                yield return f;
            }

            foreach (var hole in part.Holes.Where(h => patterns.Of(h) is null))
            {
                yield return EvaluationRules.HoleWithoutShape.At(
                    $"part.{part.Name}.hole.{hole.Id}",
                    hole.For.Length > 0
                        ? $"Hole {hole.Id} is for '{hole.For}', which is no pattern of a bought thing and no screw."
                        : $"Nothing says what hole {hole.Id} is."
                );
            }
        }

        if (
            design.Steps is { } steps
            && design.Emitters.Count > 0
            && Unknown(design.Emitters.Select(e => e.Name), steps.Emitter, "steps.emitter", "emitter") is { } emitter
        )
        {
            yield return emitter;
        }

        if (
            design.Steps is { } by
            && design.Drivers.Count > 0
            && Unknown(design.Drivers.Select(d => d.Name), by.Driver, "steps.driver", "driver") is { } driver
        )
        {
            yield return driver;
        }
    }

    private static Finding? Unknown(IEnumerable<string> known, string name, string path, string kind)
    {
        var all = known.ToList();
        if (name.Length == 0 || all.Contains(name))
        {
            return null;
        }

        var near = Nearest.Of(name, all);
        return EvaluationRules.UnknownName.At(
            path,
            $"There is no {kind} '{name}'{(near is null ? "." : $"; did you mean '{near}'?")}",
            name
        );
    }
}
