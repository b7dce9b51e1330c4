using Lampwright.Design;
using Lampwright.Quantities;

namespace Lampwright.References.WholeLight;

/// <summary>What a light gives, as plain numbers for the second solver. Nothing here is a result.</summary>
internal static class WholeLightInputs
{
    // References, heat.md section 7 (aluminium 6063) and electrical.md E.W-1 (0.75 mm², class 5); the rest is what docs/ name as stand-ins.
    private static readonly double Aluminium6063 = 209;
    private static readonly double LeadOhmPerMetre = 0.0260;
    private static readonly double BaseReflectance = 0.5;

    public static object Of(LightDesign d)
    {
        var (e, drv, steps) = (d.Emitters.Single(), d.Drivers.Single(), d.Steps!);
        var (sink, fan, layer) = (d.Sinks.Single(), d.Fans.Single(), d.Interfaces.Single());
        var tray = d.Parts.Single(p => p.Name == "tray");
        var funnel = d.Parts.Single(p => p.Panels is not null).Panels!;
        var (reflector, diffuser) = (d.Reflectors.Single(), d.Diffusers.Single());
        Assert.Equal("aluminium 6063", sink.Material);
        Assert.Equal(0.75e-6, steps.LeadArea.Nominal, 1e-12);
        return new
        {
            place = new
            {
                altitude_m = d.Place.Altitude.Nominal,
                scenes_k = new { normal = d.Place.Ambient.Nominal, hot = d.Place.AmbientMax.Nominal },
            },
            emitter = new
            {
                points = e.Points.Select(p => Numbers(p.Current, p.Voltage, p.Flux)),
                reference_k = e.Reference.Nominal,
                voltage_slope_v_per_k = e.VoltageSlope!.Nominal,
                flux_hot_at_k = e.FluxHot!.At.Nominal,
                flux_hot_factor = e.FluxHot.Factor.Nominal,
                junction_to_case_k_per_w = e.JunctionToCase!.Nominal,
                radiation_lm_per_w = e.RadiationEfficacy.Nominal,
            },
            driver = new
            {
                marks = drv.Sense!.Marks,
                measured_a = drv.Sense.MeasuredAt!.Nominal,
                efficiency = drv.Efficiency.Nominal,
            },
            chain = new
            {
                ohms = Numbers([.. steps.Chosen!.Chain.Select(p => p.Parts[0])]),
                contact_ohm = steps.ContactTypical.Nominal,
                lead_length_m = steps.LeadLength.Nominal,
                lead_ohm_per_m = LeadOhmPerMetre,
                // A coefficient without a spread of its own is a limit to either side: nominally nothing.
                tempco_per_k = steps.Part.Tempco.HalfWidth > 0 ? steps.Part.Tempco.Nominal : 0,
                rating_w = steps.Part.Rating.Nominal,
                full_to_k = steps.Part.FullTo.Nominal,
                zero_at_k = steps.Part.ZeroAt.Nominal,
            },
            @interface = new { thickness_m = layer.Thickness.Nominal, conductivity = layer.Conductivity.Nominal },
            sink = new
            {
                conductivity = Aluminium6063,
                across_m = sink.Across!.Nominal,
                along_m = sink.Along!.Nominal,
                base_m = sink.BaseThickness!.Nominal,
                fins = sink.FinCount,
                fin_height_m = sink.FinHeight!.Nominal,
                fin_thickness_m = sink.FinThickness!.Nominal,
                emissivity = sink.Emissivity.Nominal,
                source_m = Numbers(e.Body!.Width, e.Body.Height),
                source_at_m = Numbers(sink.Emitters.Single().At.X!, sink.Emitters.Single().At.Y!),
                // The tray is given inside, the sink lies along it on its face.
                duct_m = Numbers(tray.Face!.Height, tray.Flanges[0].Height),
            },
            fan = new
            {
                curve = fan.Curve.Select(p => Numbers(p.Flow, p.Pressure)),
                rated_v = fan.Rated!.Nominal,
                run_at_v = fan.RunAt!.Nominal,
            },
            openings = fan
                .Air.Where(id => id.StartsWith("tray.", StringComparison.Ordinal))
                .Select(id => Opening(tray.Holes.Single(h => "tray." + h.Id == id))),
            optics = new
            {
                small_m = Numbers(funnel.Small.Width, funnel.Small.Height),
                large_m = Numbers(funnel.Large.Width, funnel.Large.Height),
                depth_m = funnel.Depth.Nominal,
                beam_rad = e.Beam.Nominal,
                face_m = e.Face!.Width.Nominal,
                transmittance = diffuser.Transmittance.Nominal,
                diffuser_reflectance = diffuser.Reflectance.Nominal,
                wall_reflectance = reflector.Reflectance.Nominal,
                specular = reflector.Specular.Nominal,
                base_reflectance = BaseReflectance,
            },
        };
    }

    private static object Opening(Hole hole) =>
        hole.Layout is FieldLayout field
            ? new
            {
                kind = "field",
                hole_m = hole.Shape!.Width.Nominal,
                pitch_m = field.Pitch.Nominal,
                within_m = Numbers(field.Within.Width, field.Within.Height),
            }
            : new { kind = "round", hole_m = hole.Shape!.Width.Nominal };

    private static double[] Numbers(params Value[] values) => [.. values.Select(v => v.Nominal)];
}
