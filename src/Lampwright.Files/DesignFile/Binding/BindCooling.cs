using Lampwright.Design;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Interfaces, sinks and fans.</summary>
internal static class BindCooling
{
    public static ThermalInterface? Interface(TableReader r)
    {
        var between = r.References("between", 2);
        var (thickness, conductivity) = (r.Optional("thickness"), r.Optional("conductivity"));
        return thickness is null || conductivity is null || between.Count != 2
            ? null
            : new ThermalInterface(r.Name, between, thickness, conductivity);
    }

    public static Sink Sink(TableReader r)
    {
        var plate = r.Table("base");
        var fins = r.Table("fins");
        return new Sink(r.Name)
        {
            Material = r.Text("material"),
            Across = plate.Optional("across"),
            Along = plate.Optional("along"),
            BaseThickness = plate.Optional("thickness"),
            FinCount = fins.Count("count", 0),
            FinHeight = fins.Optional("height"),
            FinThickness = fins.Optional("thickness"),
            Pins = Pins(r),
            Pipes = Pipes(r),
            Stack = Stack(r),
            Trials = [.. r.Tables("trials").Select(Trial).OfType<SinkTrial>()],
            Wanted = r.Optional("wanted"),
            Emissivity = r.WithDefault("emissivity"),
            Emitters = [.. r.Tables("emitters").Select(Place).OfType<EmitterPlace>()],
            Measured = r.Optional("measured"),
            Mass = r.Optional("mass"),
            Holes = BindHoles.Patterns(r),
        };
    }

    public static Fan Fan(TableReader r) =>
        new(r.Name)
        {
            Box = r.Box("box"),
            Mass = r.Optional("mass"),
            Curve = r.Curve("curve"),
            Rated = r.Optional("rated"),
            RunAt = r.Optional("run_at"),
            StartsAt = r.Optional("starts_at"),
            Losses = [.. r.Tables("losses").Select(Loss)],
            Beside = r.References("beside", null),
            Current = r.Optional("current"),
            Air = r.References("air", null),
            Holes = BindHoles.Patterns(r),
        };

    public static CutOut CutOut(TableReader r) =>
        new(r.Name)
        {
            Place = r.Text("place"),
            Opens = r.Optional("opens"),
            Lag = r.Optional("lag"),
            In = r.Choice("in"),
        };

    private static EmitterPlace? Place(TableReader r)
    {
        var emitter = r.Reference("emitter");
        var at = r.Spot("at");
        var heat = r.Optional("heat");
        return emitter.Length == 0 ? null : new EmitterPlace(emitter, at ?? new Spot(null, null), heat);
    }

    private static SinkPins? Pins(TableReader sink)
    {
        var r = sink.Table("pins");
        var (across, along) = (r.Count("across", 0), r.Count("along", 0));
        var (diameter, height) = (r.Optional("diameter"), r.Optional("height"));
        var staggered = r.Choice("rows") == "staggered";
        return sink.Node("pins") is null || diameter is null || height is null || across < 1 || along < 1
            ? null
            : new SinkPins(across, along, diameter, height, staggered);
    }

    private static SinkPipes? Pipes(TableReader sink)
    {
        var r = sink.Table("pipes");
        var (count, diameter) = (r.Count("count", 0), r.Optional("diameter"));
        var (resistance, carries) = (r.WithDefault("resistance"), r.Optional("carries"));
        return sink.Node("pipes") is null || diameter is null || count < 1
            ? null
            : new SinkPipes(count, diameter, resistance, carries);
    }

    private static SinkStack? Stack(TableReader sink)
    {
        var r = sink.Table("stack");
        var count = r.Count("count", 0);
        var (across, along) = (r.Optional("across"), r.Optional("along"));
        var (thickness, gap) = (r.Optional("thickness"), r.Optional("gap"));
        return across is null || along is null || thickness is null || gap is null || count < 2
            ? null
            : new SinkStack(count, across, along, thickness, gap);
    }

    private static SinkTrial? Trial(TableReader r)
    {
        var (power, rise) = (r.Optional("power"), r.Optional("rise"));
        var stopped = r.Choice("fan") == "stopped";
        return power is null || rise is null ? null : new SinkTrial(power, rise, stopped);
    }

    private static FanLoss Loss(TableReader r) =>
        new(
            r.Choice("kind"),
            r.OneOrTwo("size")?.Size,
            r.Optional("open"),
            r.Optional("slot"),
            r.Optional("pressure"),
            r.Optional("flow"),
            r.Path
        );
}
