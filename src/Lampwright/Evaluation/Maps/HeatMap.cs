using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Heat;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the station heat what the design says of sink, fan and the air's way.</summary>
internal static class HeatMap
{
    // Two films of still air with radiation, some 8 W/(m²·K) each (common practice, no source; its error is heat.inside_film's).
    private static readonly double StillWallsWPerM2K = 4;

    /// <summary>The sink's spec; null when its sizes are not all given.</summary>
    public static SinkSpec? Sink(
        LightDesign design,
        LightParts parts,
        IReadOnlyList<AirOpening> openings,
        IReadOnlyList<MadePart> made
    )
    {
        if (
            parts.Sink is not { Across: { } across, Along: { } along, BaseThickness: { } thick } sink
            || parts.Emitter.Body is not { } body
        )
        {
            return null;
        }

        var fins = sink is { Pins: null, Stack: null };
        return new SinkSpec
        {
            AcrossM = across.Nominal,
            AlongM = along.Nominal,
            BaseThicknessM = thick.Nominal,
            ConductivityWPerMK = SinkMaterial.Named(sink.Material)?.ConductivityWPerMK ?? 200,
            FinCount = fins ? sink.FinCount : 0,
            FinHeightM = fins ? sink.FinHeight?.Nominal ?? 0 : 0,
            FinThicknessM = fins ? sink.FinThickness?.Nominal ?? 0 : 0,
            Pins = sink is { Pins: { } pins, Stack: null }
                ? new PinArray(pins.Across, pins.Along, pins.Diameter.Nominal, pins.Height.Nominal, pins.Staggered)
                : null,
            Tower = Tower(sink),
            Footprints = Footprints(design, parts, sink, body, across.Nominal, along.Nominal),
            Emissivity = sink.Emissivity.Nominal,
            PressurePa = Atmosphere.PressurePa(Math.Clamp(design.Place.Altitude.Nominal, -400, 9000)),
            Fan = Fan(parts.Fan),
            AirLosses = AirWay.Losses(openings, parts),
            Housed = parts.Fan?.Air.Count > 1,
            HousingConductanceWPerK = WallsWPerK(design, parts, made),
        };
    }

    private static HeatPipeTower? Tower(Sink sink) =>
        sink is not { Pipes: { } pipes, Stack: { } stack }
            ? null
            : new HeatPipeTower(
                pipes.Count,
                pipes.Diameter.Nominal,
                pipes.Resistance.Nominal,
                pipes.Carries?.Nominal,
                stack.Count,
                stack.Across.Nominal,
                stack.Along.Nominal,
                stack.Thickness.Nominal,
                stack.Gap.Nominal
            );

    private static Footprint[] Footprints(
        LightDesign design,
        LightParts parts,
        Sink sink,
        Size body,
        double across,
        double along
    )
    {
        Footprint Foot(EmitterPlace? place, Size size, double otherW) =>
            new(
                place?.At.X?.Nominal ?? (across / 2),
                place?.At.Y?.Nominal ?? (along / 2),
                size.Width.Nominal,
                size.Height.Nominal,
                1,
                otherW
            );
        var own = sink.Emitters.Where(e => e.Emitter == parts.Emitter.Name).ToList();
        return
        [
            .. own.Count == 0 ? [Foot(null, body, 0)] : own.Select(p => Foot(p, body, 0)),
            .. sink
                .Emitters.Where(e => e.Emitter != parts.Emitter.Name && e.Heat is { Nominal: > 0 })
                .Select(e =>
                    Foot(e, design.Emitters.FirstOrDefault(d => d.Name == e.Emitter)?.Body ?? body, e.Heat!.Nominal)
                ),
        ];
    }

    /// <summary>The fan's spec; null when there is none or its curve is missing.</summary>
    public static FanSpec? Fan(Fan? fan) =>
        fan is not { Curve.Count: > 0 }
            ? null
            : new FanSpec
            {
                Curve = [.. fan.Curve.Select(p => new Heat.FanPoint(p.Flow.Nominal, p.Pressure.Nominal))],
                VoltageRatio =
                    fan is { RunAt: { } at, Rated: { } rated } && rated.Nominal > 0 ? at.Nominal / rated.Nominal : 1,
                StartRatio = fan is { StartsAt: { } start, Rated: { Nominal: > 0 } full }
                    ? start.Nominal / full.Nominal
                    : 0,
                BoxAcrossM = fan.Box?.Width.Nominal ?? 0,
                BoxAlongM = fan.Box?.Height.Nominal ?? 0,
            };

    // Walls of the part that the fan's air passes, closed by a cover as large as its face: still air inside and outside, in a row.
    private static double? WallsWPerK(LightDesign design, LightParts parts, IReadOnlyList<MadePart> made)
    {
        var names = (parts.Fan?.Air ?? []).Select(id => id.Split('.')[0]).ToHashSet(StringComparer.Ordinal);
        var walls = made.Where(m => names.Contains(m.Name)).ToList();
        return walls.Count == 0
            ? null
            : StillWallsWPerM2K
                * walls.Sum(m =>
                    m.Blank.AreaM2
                    + (
                        design.Parts.First(p => p.Name == m.Name).Face is { } face
                            ? face.Width.Nominal * face.Height.Nominal
                            : 0
                    )
                );
    }
}

/// <summary>An opening in a part that air passes.</summary>
/// <param name="Id">Id as the fan's way names it, for example <c>tray.air_out</c>.</param>
/// <param name="Path">Its path in the design file.</param>
/// <param name="OpenM2">Open area, m².</param>
/// <param name="FieldM2">Area of the perforated field round it, m²; 0 for a plain opening.</param>
/// <param name="HoleM">Diameter of one hole of the field, m.</param>
internal sealed record AirOpening(string Id, string Path, double OpenM2, double FieldM2, double HoleM);
