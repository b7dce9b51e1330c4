using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Assembling;
using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Build;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Evaluation.Metalwork;
using Lampwright.FitUp;

namespace Lampwright.Evaluation.Sections;

/// <summary>Lays out the section of the light and finds its temperatures at any position and scene.</summary>
/// <param name="design">The design.</param>
/// <param name="made">Its folded parts.</param>
/// <param name="fitUp">Where everything lies.</param>
/// <param name="things">Everything it is put together from.</param>
/// <param name="box">The light as a network.</param>
internal sealed class SectionBuild(
    LightDesign design,
    IReadOnlyList<MadePart> made,
    FitUpResult fitUp,
    IReadOnlyList<Thing> things,
    BoxStudy box
)
{
    private static readonly string Slowed = "fan slowed";

    private static readonly double SlowerV = 0.05;

    /// <summary>The answer; null where the sizes of the sink are not given or the network found no rest.</summary>
    /// <param name="full">The box at the brightest position, with its bands.</param>
    /// <param name="air">What is known of the fan.</param>
    public SectionAnswer? Of(Func<BoxAnswer?> full, Func<AirAnswer?> air)
    {
        if (box.Normal is not { Kelvin: not null } state)
        {
            return null;
        }

        var nodes = state.Light.Network.Nodes.Select(n => n.Name);
        var cuts = new LightSections(design, box.Light.Inputs.Parts, made, fitUp, things, box.Map.Sheet, nodes).Cuts();
        if (cuts.Count == 0)
        {
            return null;
        }

        double? Slow(string switches) =>
            air() is { RunsAtV: { } runs } a
            && a.FanSteps.FirstOrDefault(s => s.Switches == switches) is { IsSafe: true, LeastV: { } least }
            && Math.Max(least.High, a.FloorV ?? 0) is var volts
            && volts < runs - SlowerV
                ? volts
                : null;
        return new()
        {
            Cuts = cuts,
            Scenes = box.HasFan ? ["normal", "hot", Slowed, "fan stopped", "fan stopped, hot"] : ["normal", "hot"],
            Slow = Slow,
            Find = (switches, scene) => Find(switches, scene, full, Slow),
        };
    }

    private BoxScene? Find(string switches, string scene, Func<BoxAnswer?> full, Func<string, double?> slow)
    {
        var positions = Enumerable.Range(0, box.Light.Positions);
        if (
            positions.Where(i => box.Light.Inputs.Network.Switches(i) == switches).Select(i => (int?)i).FirstOrDefault()
            is not { } position
        )
        {
            return null;
        }

        if (position == box.Light.Brightest && full()?.Scenes.FirstOrDefault(s => s.Name == scene) is { } banded)
        {
            return banded;
        }

        if (scene == Slowed)
        {
            return slow(switches) is { } volts && WithFanAt(volts) is { } slower
                ? Laid(slower, slower.State(Scene.AtHighestAmbient, true, Slowed, position))
                : null;
        }

        return Laid(
            box,
            scene switch
            {
                "normal" => box.State(Scene.Normal, box.HasFan, scene, position),
                "hot" => box.State(Scene.AtHighestAmbient, box.HasFan, scene, position),
                "fan stopped" when box.HasFan => box.State(Scene.FanStopped, false, scene, position),
                "fan stopped, hot" when box.HasFan => box.State(Scene.AtHighestAmbient, false, scene, position),
                _ => null,
            }
        );
    }

    private BoxStudy? WithFanAt(double volts)
    {
        if (HeatChange.FanAt(box.Light.Inputs, volts) is not { } inputs)
        {
            return null;
        }

        var (variables, outputs) = (new Variables(), new Outputs());
        var light = new CoupledLight(inputs, variables, outputs);
        var (x, row) = (variables.Nominal(), new double[outputs.Count]);
        light.Decide(x, row);
        return new(light, inputs.Map, x, row);
    }

    private static BoxScene? Laid(BoxStudy study, BoxState? state) =>
        state is { Kelvin: not null } ? BoxBuild.SceneOf(study, state, study.NominalBands, 0) : null;
}
