namespace Lampwright.Heat;

/// <summary>What the fan's air takes from a sink at one temperature of its fins.</summary>
internal readonly record struct ForcedState(
    double Conductance,
    double Flow,
    double Velocity,
    double Film,
    double Efficiency,
    double ReStar,
    double ReDiameter
);

/// <summary>Heat that the fan's air takes, by the form of the sink.</summary>
internal static class SinkForced
{
    /// <summary>The state at a flow; nothing at none.</summary>
    /// <param name="scene">The draw in its scene.</param>
    /// <param name="warm">Air half way between sink and room.</param>
    /// <param name="flow">Flow of the fan, m³/s of cool air.</param>
    internal static ForcedState At(in SinkScene scene, in Air warm, double flow) =>
        flow <= 0
            ? default
            : scene.Surface.Form switch
            {
                SinkForm.Plate => OverPlate(scene, warm, flow),
                SinkForm.Pins => AcrossPins(scene, warm, flow),
                _ => InChannels(scene, warm, flow),
            };

    private static ForcedState InChannels(in SinkScene scene, in Air warm, double flow)
    {
        var spec = scene.Spec;
        var surface = scene.Surface;
        var velocity = scene.Path.ChannelVelocity(flow, scene.Cool, warm);
        var reStar = ChannelFilm.ReStar(velocity, surface.GapM, surface.FlowLengthM, warm.KinematicViscosity);
        var reDiameter = velocity * surface.DiameterM / warm.KinematicViscosity;
        var nusselt = TurbulentChannel.Joined(
            ChannelFilm.Nusselt(reStar, warm.Prandtl),
            reStar,
            reDiameter,
            surface.GapM / surface.DiameterM,
            warm.Prandtl
        );
        var film =
            nusselt
            * warm.Conductivity
            / surface.GapM
            * spec.Factors.ChannelFilm
            * (spec.Entry == AirEntry.Tips && surface.Form == SinkForm.Fins ? spec.Factors.TipFlow : 1);
        var efficiency = surface.Efficiency(spec, film);
        var conductance = film * (surface.FloorM2 + (surface.WallM2 * efficiency));
        return new ForcedState(conductance, flow, velocity, film, efficiency, reStar, reDiameter);
    }

    private static ForcedState AcrossPins(in SinkScene scene, in Air warm, double flow)
    {
        var spec = scene.Spec;
        var surface = scene.Surface;
        var pins = spec.Pins!;
        var velocity = scene.Path.ChannelVelocity(flow, scene.Cool, warm);
        var re = velocity * pins.DiameterM / warm.KinematicViscosity;
        var pitches = pins.PitchAcrossM(spec.AcrossM) / pins.PitchAlongM(spec.AlongM);
        var film =
            PinFilm.Nusselt(re, warm.Prandtl, pins.Staggered, pitches, pins.AlongCount)
            * warm.Conductivity
            / pins.DiameterM
            * spec.Factors.PinFilm;
        var efficiency = surface.Efficiency(spec, film);
        var capacity = velocity * surface.FreeM2 * warm.Density * warm.SpecificHeat;
        var taken = film * (surface.FloorM2 + (surface.WallM2 * efficiency));

        // From the mean difference of temperatures to that at the inlet, which the heat is counted on.
        var conductance = capacity > 0 ? capacity * (1 - Math.Exp(-taken / capacity)) : 0;
        return new ForcedState(conductance, flow, velocity, film, efficiency, 0, re);
    }

    private static ForcedState OverPlate(in SinkScene scene, in Air warm, double flow)
    {
        var spec = scene.Spec;
        var fan = spec.Fan!;
        var area = fan.BoxAcrossM * fan.BoxAlongM;
        var plate = spec.AcrossM * spec.AlongM;
        var velocity = flow / (area > 0 ? area : plate);
        var re = velocity * spec.AlongM / warm.KinematicViscosity;
        var film = ForcedPlate.Nusselt(re, warm.Prandtl) * warm.Conductivity / spec.AlongM * spec.Factors.ChannelFilm;

        // Air cannot take more than warming all of it to the plate's temperature.
        var capacity = flow * scene.Cool.Density * scene.Cool.SpecificHeat;
        return new ForcedState(Blend.InverseCubes(film * plate, capacity), flow, velocity, film, 1, 0, 0);
    }
}
