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
            Current = r.Optional("current"),
            Air = r.References("air", null),
            Holes = BindHoles.Patterns(r),
        };

    private static EmitterPlace? Place(TableReader r)
    {
        var emitter = r.Reference("emitter");
        var at = r.Spot("at");
        return emitter.Length == 0 ? null : new EmitterPlace(emitter, at ?? new Spot(null, null));
    }
}
