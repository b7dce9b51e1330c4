using Lampwright.Design;

namespace Lampwright.Evaluation.Coupling;

/// <summary>The things of a design that make one light: which emitter on which sink, fed by which driver, cooled by which fan.</summary>
/// <param name="Emitter">The emitter.</param>
/// <param name="Driver">The driver.</param>
/// <param name="Sink">The sink the emitter sits on; null when the design has none.</param>
/// <param name="Fan">The fan whose air passes the sink; null when there is none.</param>
/// <param name="Interface">What lies between emitter and sink; null when the design does not say.</param>
/// <param name="Reflector">The reflector; null when there is none.</param>
/// <param name="Diffuser">The diffuser; null when there is none.</param>
internal sealed record LightParts(
    Emitter Emitter,
    Driver? Driver,
    Sink? Sink,
    Fan? Fan,
    ThermalInterface? Interface,
    Reflector? Reflector,
    Diffuser? Diffuser
)
{
    /// <summary>Finds them; null when the design has no emitter that can be computed with.</summary>
    public static LightParts? Of(LightDesign design)
    {
        var named = design.Steps?.Emitter;
        var emitter = design.Emitters.FirstOrDefault(e => e.Name == named) ?? design.Emitters.FirstOrDefault();
        if (emitter is null || (emitter.Points.Count == 0 && emitter.Rated is null))
        {
            return null;
        }

        var driver = DriverOf(design);
        var sink =
            design.Sinks.FirstOrDefault(s => s.Emitters.Any(e => e.Emitter == emitter.Name))
            ?? design.Sinks.FirstOrDefault();
        var fan = sink is null
            ? null
            : design.Fans.FirstOrDefault(f => f.Air.Contains("sink." + sink.Name))
                ?? design.Fans.FirstOrDefault(f => f.Air.Count == 0);
        var layer = design.Interfaces.FirstOrDefault(i =>
            i.Between.Contains("emitter." + emitter.Name) && (sink is null || i.Between.Contains("sink." + sink.Name))
        );
        return new(
            emitter,
            driver,
            sink,
            fan,
            layer,
            design.Reflectors.FirstOrDefault(),
            design.Diffusers.FirstOrDefault()
        );
    }

    /// <summary>The driver of the light; null when the design has none.</summary>
    public static Driver? DriverOf(LightDesign design) =>
        design.Drivers.FirstOrDefault(d => d.Name == design.Steps?.Driver) ?? design.Drivers.FirstOrDefault();

    /// <summary>Path of the emitter's table.</summary>
    public string EmitterPath => "emitter." + Emitter.Name;

    /// <summary>Path of the driver's table.</summary>
    public string DriverPath => "driver." + (Driver?.Name ?? "main");

    /// <summary>Path of the sink's table.</summary>
    public string SinkPath => "sink." + (Sink?.Name ?? "main");
}
