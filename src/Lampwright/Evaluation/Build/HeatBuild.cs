using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Evaluation.Sections;
using Lampwright.Heat;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out the answer of the station heat.</summary>
internal static class HeatBuild
{
    public static HeatAnswer Of(
        CoupledLight light,
        Bands bands,
        SinkResult? working,
        AirStudy air,
        BoxStudy? box,
        double[] nominal,
        SectionBuild? section
    )
    {
        var order = StepsBuild.Order(light, bands).ToList();
        Lazy<AirAnswer?> airAnswer = new(() => AirBuild.Of(light, bands, air));
        Lazy<BoxAnswer?>? boxAnswer = box is null ? null : new(() => BoxBuild.Of(box, bands));
        return new HeatAnswer
        {
            SinkFrom = light.IsTried ? "measured" : "computed",
            Air = airAnswer,
            BoxWhenAsked = boxAnswer,
            Section = new(() => section?.Of(() => boxAnswer?.Value, () => airAnswer.Value)),
            Advice = new(() => HeatStudy.Of(light, nominal)),
            Scenes = [.. Scene.All.Select((scene, s) => SceneOf(light, bands, scene, s, order))],
            Staircase =
            [
                Step("junction", "case", CommonRow.JunctionToCaseK, "resistance from the emitter's data sheet"),
                Step("case", "sink under the emitter", CommonRow.InterfaceK, "layer between emitter and sink"),
                Step("sink under the emitter", "sink", CommonRow.SpreadingK, SpreadingMethod(light)),
                Step("sink", "room", CommonRow.SinkToAirK, SinkMethod(light)),
            ],
            Fan = working is { FanLine.Count: > 0, PathLine.Count: > 0 }
                ? new FanPicture(
                    [.. working.FanLine.Select(p => p.FlowM3PerS * 3600)],
                    [.. working.FanLine.Select(p => p.PressurePa)],
                    [.. working.PathLine.Select(p => p.PressurePa)]
                )
                : null,
        };

        HeatStep Step(string from, string to, int number, string method) =>
            new(from, to, bands.At(light.CommonPlace(number)), method);
    }

    private static string SpreadingMethod(CoupledLight light) =>
        light.Inputs.Sink is { } sink
            ? "spreading in the base: " + sink.SpreadingMethod
            : "within the measured resistance";

    private static string SinkMethod(CoupledLight light) =>
        light.Inputs.Parts switch
        {
            { Sink.IsMeasured: true } => "the measured resistance of the sink",
            { Sink: { Pipes: not null, Stack: not null }, Fan: null } =>
                "heat pipes, plates in air that nothing drives, radiation",
            { Sink: { Pipes: not null, Stack: not null } } => "heat pipes, plates in the fan's air, radiation",
            { Sink.Pins: not null, Fan: null } => "pins in air that nothing drives, and radiation",
            { Sink.Pins: not null } => "pins in the fan's air, and radiation",
            { Fan: null } => "fins in air that nothing drives, and radiation",
            _ => "fins in the fan's air, and radiation",
        };

    private static HeatScene SceneOf(CoupledLight light, Bands bands, Scene scene, int s, IReadOnlyList<int> order) =>
        new(
            scene.Name,
            bands.At(light.ScenePlace(s, SceneRow.AmbientC)),
            scene.FanRuns && light.Inputs.Parts.Fan is not null,
            bands.At(light.ScenePlace(s, SceneRow.FlowM3PerH)),
            bands.At(light.ScenePlace(s, SceneRow.PressurePa)),
            bands.At(light.ScenePlace(s, SceneRow.SinkKPerW)),
            [
                .. order.Select(i =>
                {
                    var row = light.Place(s, i);
                    return new HeatPoint
                    {
                        Switches = light.Inputs.Network.Switches(i),
                        HeatW = bands.At(row + PositionRow.HeatW),
                        JunctionC = bands.At(row + PositionRow.JunctionC),
                        CaseC = bands.At(row + PositionRow.CaseC),
                        SinkC = bands.At(row + PositionRow.SinkC),
                        DriverC = bands.At(row + PositionRow.DriverC),
                        CompartmentC = bands.At(row + PositionRow.CompartmentC),
                        FrontC = bands.At(row + PositionRow.FrontC),
                    };
                }),
            ]
        );
}
