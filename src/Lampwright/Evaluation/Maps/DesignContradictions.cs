using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation.Assembling;
using Lampwright.Findings;
using Lampwright.Quantities;

namespace Lampwright.Evaluation.Maps;

/// <summary>What a design says twice and not alike, what it says and nothing uses, and parts that nothing says the shape of.</summary>
internal static class DesignContradictions
{
    private static readonly double Same = 1e-6;

    public static IEnumerable<Finding> Of(LightDesign design, IReadOnlyList<Thing> things) =>
        [
            .. design.Parts.SelectMany(p => Part(design, p)),
            .. Steps(design),
            .. Place(design.Place),
            .. design.Drivers.SelectMany(Driver),
            .. design.Fans.SelectMany(Fan),
            .. design.Reflectors.SelectMany(r => Reflector(design, r)),
            .. design.Arms.SelectMany(Arm),
            .. design.Items.Where(i => i.Cutout.Length > 0 && i.Holes.Any(h => h.Id == "cutout")).Select(Cutout),
            .. things.SelectMany(Reach),
        ];

    private static IEnumerable<Finding> Part(LightDesign design, Part part)
    {
        var path = "part." + part.Name;
        var hasShape = part.Face is not null || part.Panels is not null || part.Tube is not null;
        if (part.Mirror is { } name)
        {
            var original = design.Parts.FirstOrDefault(p => p.Name == name);
            if (original is { Mirror: not null } or { Face: null, Tube: null })
            {
                yield return EvaluationRules.PartWithoutShape.At(
                    path + ".mirror",
                    $"Part {part.Name} mirrors {name}, which has no face of its own ({(original.Mirror is null ? "panels and nothing are not mirrored" : "it is a mirror itself")}); the part is left out."
                );
            }

            if (hasShape || part.Flanges.Count > 0 || part.Holes.Count > 0)
            {
                yield return EvaluationRules.Contradiction.At(
                    path + ".mirror",
                    $"Part {part.Name} mirrors {name} and has face, panels, flanges or holes of its own, which count for nothing."
                );
            }
        }
        else if (!hasShape)
        {
            yield return EvaluationRules.PartWithoutShape.At(
                path,
                $"Part {part.Name} has neither face, tube nor panels, and mirrors nothing; it is left out."
            );
        }

        if (part.Panels is { Separate: false })
        {
            yield return EvaluationRules.NotUsed.At(
                path + ".panels.blanks",
                $"The panels of {part.Name} are drawn one by one; blanks = \"joined\" is not made yet."
            );
        }
    }

    private static IEnumerable<Finding> Steps(LightDesign design)
    {
        if (design.Steps is not { } steps)
        {
            yield break;
        }

        if (steps.Chosen is { } chosen && chosen.Chain.Count != steps.Switches)
        {
            yield return EvaluationRules.Contradiction.At(
                "steps.switches",
                $"There are {N(steps.Switches)} switches and {N(chosen.Chain.Count)} chosen resistors; as many switches as resistors are taken.",
                N(steps.Switches),
                N(chosen.Chain.Count)
            );
        }

        if (steps is { Stock: "drawer", Chosen: null } && !steps.Drawer.Any(p => p.Ohm.Nominal > 0 && p.Count is not 0))
        {
            yield return EvaluationRules.Contradiction.At(
                "steps.stock",
                "The resistors are to come from the drawer, and [drawer] has none; nothing is picked."
            );
        }
    }

    private static IEnumerable<Finding> Place(Place place)
    {
        if (place.AmbientMax.Nominal < place.Ambient.Nominal)
        {
            yield return EvaluationRules.Contradiction.At(
                "place.ambient_max",
                $"The highest temperature of the air, {C(place.AmbientMax)}, lies below the usual one, {C(place.Ambient)}.",
                C(place.AmbientMax),
                C(place.Ambient)
            );
        }
    }

    private static IEnumerable<Finding> Driver(Driver driver)
    {
        if (driver.WindowLeast?.Nominal > driver.WindowMost?.Nominal)
        {
            yield return EvaluationRules.Contradiction.At(
                $"driver.{driver.Name}.window",
                "The window's first voltage is its least one, and lies above the second."
            );
        }
    }

    private static IEnumerable<Finding> Fan(Fan fan)
    {
        if (fan.Curve.Count == 0)
        {
            yield return EvaluationRules.NotUsed.At(
                "fan." + fan.Name,
                $"Fan {fan.Name} has no curve of flow and pressure: everything is computed as if it stood still."
            );
        }
    }

    private static IEnumerable<Finding> Reflector(LightDesign design, Reflector reflector)
    {
        if (design.Parts.FirstOrDefault(p => p.Name == reflector.Part) is { Panels: null })
        {
            yield return EvaluationRules.Contradiction.At(
                $"reflector.{reflector.Name}.part",
                $"Part {reflector.Part} is no funnel: it has no panels, so that no reflector is reckoned with."
            );
        }
    }

    private static IEnumerable<Finding> Arm(Arm arm)
    {
        if (2 * arm.Wall?.Nominal > Math.Min(arm.Width.Nominal, arm.Height.Nominal))
        {
            yield return EvaluationRules.Contradiction.At(
                $"arm.{arm.Name}.wall",
                $"Two walls of {Mm(arm.Wall!.Nominal)} do not fit into {Mm(Math.Min(arm.Width.Nominal, arm.Height.Nominal))}."
            );
        }
    }

    private static Finding Cutout(Item item) =>
        EvaluationRules.NotUsed.At(
            $"item.{item.Name}.cutout",
            $"{item.Name} gives its opening itself as holes.cutout, and the standard {item.Cutout} is not used: keep one of the two."
        );

    // A fan is not smaller than the square of its holes: one of the two was misread.
    private static IEnumerable<Finding> Reach(Thing thing)
    {
        if (thing.BoxM is not { } box)
        {
            yield break;
        }

        foreach (var pattern in thing.Body.Patterns)
        {
            var beyond = pattern.Holes.Count(h =>
                h.Centre.X < -Same
                || h.Centre.Y < -Same
                || h.Centre.Z < -Same
                || h.Centre.X > box.X + Same
                || h.Centre.Y > box.Y + Same
                || h.Centre.Z > box.Z + Same
            );
            if (beyond > 0)
            {
                yield return EvaluationRules.Contradiction.At(
                    thing.Body.Id,
                    $"{N(beyond)} of {N(pattern.Holes.Count)} holes of {pattern.Id} lie outside of its box of {Mm(box.X)} × {Mm(box.Y)} × {Mm(box.Z)}."
                );
            }
        }
    }

    private static string N(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Mm(double metres) => (metres * 1000).ToString("0.##", CultureInfo.InvariantCulture) + " mm";

    private static string C(Value kelvin) =>
        (kelvin.Nominal - 273.15).ToString("0.#", CultureInfo.InvariantCulture) + " °C";
}
