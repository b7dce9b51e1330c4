using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Draws;
using Lampwright.Heat;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Finds which limit is nearest and what one step at each input would do: the coupled light is solved again with each. At nominal values.</summary>
/// <remarks>
/// The hot scene counts, at the brightest position. No formula is bent into a slope: each change runs the same road, with a sink prepared anew (about a
/// millisecond each). Laid when it is first asked for.
/// </remarks>
internal static class HeatStudy
{
    private static readonly double ZeroC = 273.15;

    // Hands touch the front to aim it, as in the findings.
    private static readonly double TouchS = 5;

    // Less than this nobody would notice or could measure, K.
    private static readonly double LeastK = 0.05;

    /// <summary>Limits and helps; null without a sink or any limit.</summary>
    /// <param name="light">The light.</param>
    /// <param name="row">Its nominal row.</param>
    public static HeatAdvice? Of(CoupledLight light, double[] row)
    {
        var limits = Limits(light, row).OrderBy(l => l.MarginK).ToList();
        if (limits.Count == 0)
        {
            return null;
        }

        var nearest = limits[0];
        var helps = HeatChange
            .Of(light.Inputs)
            .Select(c => Help(light, row, c, nearest))
            .Append(Dimmer(light, row, nearest))
            .OfType<HeatHelp>()
            .Where(Cools)
            // Less than a tenth of a kelvin at the limit is nothing; then the junction says what is worth doing.
            .OrderBy(h => Math.Round(h.LimitK, 1))
            .ThenBy(h => h.JunctionK)
            .ThenBy(h => h.Path, StringComparer.Ordinal);
        return new(limits, [.. helps]);
    }

    /// <summary>A help makes the nearest limit or the junction cooler and neither of them hotter; a step without an answer is none.</summary>
    private static bool Cools(HeatHelp help) =>
        help is { LimitK: var limit, JunctionK: var junction }
        && limit < LeastK
        && junction < LeastK
        && Math.Min(limit, junction) < -LeastK;

    private static IEnumerable<HeatLimit> Limits(CoupledLight light, double[] row)
    {
        if (!light.HasSink)
        {
            yield break;
        }

        var parts = light.Inputs.Parts;
        var scene = Scene.All[Scene.AtHighestAmbient].Name;
        double At(int number) => row[light.Place(Scene.AtHighestAmbient, light.Brightest) + number];
        var junction = (parts.Emitter.JunctionMax?.Nominal ?? CoupledLight.DefaultJunctionMaxK) - ZeroC;
        yield return new("junction", scene, parts.EmitterPath + ".junction_max", At(PositionRow.JunctionC), junction);
        if (parts.Driver is { } driver)
        {
            yield return new(
                "driver",
                scene,
                parts.DriverPath + ".case_max",
                At(PositionRow.DriverC),
                (driver.CaseMax?.Nominal ?? HeatFindings.DriverCaseMaxK) - ZeroC
            );
        }

        if (parts.Diffuser is { TemperatureMax: { } bears } diffuser)
        {
            yield return new(
                "diffuser",
                scene,
                $"diffuser.{diffuser.Name}.temperature_max",
                At(PositionRow.FrontC),
                bears.Nominal - ZeroC
            );
        }

        if (TouchLimits.LimitK(TouchStandard.Equipment, TouchMaterial.Metal, TouchS) is { } touch)
        {
            var front = parts.Reflector is { } r ? "reflector." + r.Name : parts.SinkPath;
            yield return new("front", scene, front, At(PositionRow.FrontC), touch - ZeroC);
            if (!IsHoused(light))
            {
                yield return new("sink", scene, parts.SinkPath, At(PositionRow.SinkC), touch - ZeroC);
            }
        }
    }

    private static HeatHelp Help(CoupledLight light, double[] row, HeatChange change, HeatLimit nearest)
    {
        var outputs = new Outputs();
        var variables = new Variables();
        var changed = new CoupledLight(change.Inputs, variables, outputs);
        var then = new double[outputs.Count];
        changed.Decide(variables.Nominal(), then);
        return Between(
            change.Path,
            change.Step,
            change.Cost,
            nearest,
            (light, row, light.Brightest),
            (changed, then, changed.Brightest)
        ) with
        {
            MassKg = change.MassKg,
            NoiseDb = change.NoiseDb,
        };
    }

    /// <summary>The next dimmer switch position in place of the brightest; null where there is but one.</summary>
    private static HeatHelp? Dimmer(CoupledLight light, double[] row, HeatLimit nearest)
    {
        double Current(int i) => row[light.Place(Scene.AtHighestAmbient, i) + PositionRow.CurrentA];
        var full = Current(light.Brightest);
        var next = Enumerable
            .Range(0, light.Positions)
            .Where(i => Current(i) < 0.999 * full)
            .OrderByDescending(Current)
            .Select(i => (int?)i)
            .FirstOrDefault();
        return next is not { } dimmer
            ? null
            : Between(
                "steps.switches",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"one step dimmer at most: position {light.Inputs.Network.Switches(dimmer)}, {full:0.###} to {Current(dimmer):0.###} A"
                ),
                "light",
                nearest,
                (light, row, light.Brightest),
                (light, row, dimmer)
            );
    }

    private static HeatHelp Between(
        string path,
        string step,
        string cost,
        HeatLimit nearest,
        (CoupledLight Light, double[] Row, int Position) was,
        (CoupledLight Light, double[] Row, int Position) then
    )
    {
        double Change(Func<(CoupledLight Light, double[] Row, int Position), double> of) => of(then) - of(was);
        return new(
            path,
            step,
            Change(l => At(l, nearest.What)),
            Change(l => At(l, "junction")),
            Change(Skin),
            0,
            0,
            Math.Log2(Light(then) / Light(was)),
            cost
        );
    }

    private static double At(in (CoupledLight Light, double[] Row, int Position) l, string what) =>
        l.Row[
            l.Light.Place(Scene.AtHighestAmbient, l.Position)
                + what switch
                {
                    "junction" => PositionRow.JunctionC,
                    "driver" => PositionRow.DriverC,
                    "sink" => PositionRow.SinkC,
                    _ => PositionRow.FrontC,
                }
        ];

    private static double Skin((CoupledLight Light, double[] Row, int Position) l) =>
        IsHoused(l.Light) ? At(l, "front") : Math.Max(At(l, "front"), At(l, "sink"));

    private static double Light((CoupledLight Light, double[] Row, int Position) l) =>
        Math.Max(1e-9, l.Row[l.Light.Place(Scene.Normal, l.Position) + PositionRow.FluxLm]);

    // A sink whose air passes openings of parts stands behind these; any other can be touched.
    private static bool IsHoused(CoupledLight light) => light.Inputs.Parts.Fan is { Air.Count: > 1 };
}
