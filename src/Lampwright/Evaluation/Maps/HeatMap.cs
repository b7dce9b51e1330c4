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

        var places = sink.Emitters.Where(e => e.Emitter == parts.Emitter.Name).ToList();
        return new SinkSpec
        {
            AcrossM = across.Nominal,
            AlongM = along.Nominal,
            BaseThicknessM = thick.Nominal,
            ConductivityWPerMK = SinkMaterial.Named(sink.Material)?.ConductivityWPerMK ?? 200,
            FinCount = sink.FinCount,
            FinHeightM = sink.FinHeight?.Nominal ?? 0,
            FinThicknessM = sink.FinThickness?.Nominal ?? 0,
            Footprints =
                places.Count == 0
                    ? [Foot(across.Nominal / 2, along.Nominal / 2)]
                    :
                    [
                        .. places.Select(p =>
                            Foot(p.At.X?.Nominal ?? (across.Nominal / 2), p.At.Y?.Nominal ?? (along.Nominal / 2))
                        ),
                    ],
            Emissivity = sink.Emissivity.Nominal,
            PressurePa = Atmosphere.PressurePa(Math.Clamp(design.Place.Altitude.Nominal, -400, 9000)),
            Fan = Fan(parts.Fan),
            AirLosses = Losses(openings, parts),
            Housed = parts.Fan?.Air.Count > 1,
            HousingConductanceWPerK = WallsWPerK(design, parts, made),
        };

        Footprint Foot(double x, double y) => new(x, y, body.Width.Nominal, body.Height.Nominal);
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

    private static AirLoss[] Losses(IReadOnlyList<AirOpening> openings, LightParts parts)
    {
        var sink = "sink." + parts.Sink!.Name;
        var way = parts.Fan?.Air ?? [];
        var losses = new List<AirLoss>();
        foreach (var id in way.Where(id => id != sink))
        {
            if (openings.FirstOrDefault(o => o.Id == id) is not { } opening)
            {
                continue;
            }

            losses.Add(
                opening.FieldM2 > 0
                    ? AirLoss.PerforatedSheet(
                        opening.Path,
                        opening.FieldM2,
                        Math.Min(1, opening.OpenM2 / opening.FieldM2),
                        opening.HoleM
                    )
                    : AirLoss.Of(opening.Path, 1.5, opening.OpenM2)
            );
        }

        return [.. losses];
    }
}

/// <summary>An opening in a part that air passes.</summary>
/// <param name="Id">Id as the fan's way names it, for example <c>tray.air_out</c>.</param>
/// <param name="Path">Its path in the design file.</param>
/// <param name="OpenM2">Open area, m².</param>
/// <param name="FieldM2">Area of the perforated field round it, m²; 0 for a plain opening.</param>
/// <param name="HoleM">Diameter of one hole of the field, m.</param>
internal sealed record AirOpening(string Id, string Path, double OpenM2, double FieldM2, double HoleM);
