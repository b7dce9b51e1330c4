namespace Lampwright.Heat;

/// <summary>Air that rises by itself over a sink, free in the room or through the openings of a housing.</summary>
/// <remarks>
/// Channels by <see cref="NaturalFilm.Channel"/> with gravity along them; a level sink falls back on the horizontal plate of its outline
/// (hot face up), joined by fourth powers, so that nothing jumps with the tilt. Outer fin faces as vertical plates.
/// Validity: tilt to 60°; beyond, the error is doubled.
/// </remarks>
internal static class SinkNatural
{
    /// <summary>Heat given to the air, W; in a housing the air inside is warmer than the room.</summary>
    internal static double HousedW(in SinkScene scene, double rise, out double elenbaas, out double efficiency)
    {
        if (!scene.Spec.Housed)
        {
            return FreeW(scene, rise, scene.Cool.TemperatureK, out elenbaas, out efficiency);
        }

        var found = Root.Between(new HousingBalance(scene, rise), 0, rise, 1e-9 * rise);
        return FreeW(scene, rise - found.X, scene.AmbientK + found.X, out elenbaas, out efficiency);
    }

    /// <summary>Heat given to air of one temperature, W.</summary>
    /// <param name="scene">The draw in its scene.</param>
    /// <param name="riseOverAir">Base over that air, K.</param>
    /// <param name="airK">Temperature of that air, K.</param>
    /// <param name="elenbaas">Elenbaas number of the channels.</param>
    /// <param name="efficiency">Efficiency of the fins.</param>
    internal static double FreeW(
        in SinkScene scene,
        double riseOverAir,
        double airK,
        out double elenbaas,
        out double efficiency
    )
    {
        elenbaas = 0;
        efficiency = 1;
        if (riseOverAir <= 0)
        {
            return 0;
        }

        var spec = scene.Spec;
        var film = Air.At(airK + riseOverAir / 2, spec.PressurePa);
        var along = Math.Max(0, Math.Cos(spec.ChannelTiltRad));
        double plan = spec.AcrossM * spec.AlongM,
            length = plan / (2 * (spec.AcrossM + spec.AlongM));
        var levelFilm = NaturalFilm.HotFaceUp(film.Rayleigh(riseOverAir, length)) * film.Conductivity / length;
        var plateFilm =
            NaturalFilm.VerticalPlateWith(film.Rayleigh(riseOverAir, spec.AlongM) * along, scene.PrandtlTerm)
            * film.Conductivity
            / spec.AlongM;
        double conductance;
        if (spec.FinCount < 2)
        {
            conductance = Blend.Fourths(plateFilm, levelFilm * Math.Sin(spec.ChannelTiltRad)) * plan;
        }
        else
        {
            elenbaas = NaturalFilm.Elenbaas(film, riseOverAir, scene.GapM, spec.AlongM) * along;
            var channelFilm = NaturalFilm.Channel(elenbaas) * film.Conductivity / scene.GapM;
            efficiency = Fin.PlateEfficiency(channelFilm, spec.ConductivityWPerMK, spec.FinThicknessM, spec.FinHeightM);
            var channels =
                channelFilm * (spec.FinCount - 1) * spec.AlongM * (scene.GapM + 2 * spec.FinHeightM * efficiency);
            conductance = Blend.Fourths(channels, levelFilm * plan) + plateFilm * 2 * spec.FinHeightM * spec.AlongM;
        }

        return conductance * riseOverAir * spec.Factors.NaturalChannelFilm;
    }

    /// <summary>Heat that leaves a housing whose air is warmer than the room: by the draft through its openings and through its walls.</summary>
    private static double LeavesHousingW(in SinkScene scene, double airRise)
    {
        var path = scene.Path;
        var cool = scene.Cool;
        var draftPa = cool.Density * Physics.Gravity * scene.Spec.DraftHeightM * airRise / (scene.AmbientK + airRise);
        double a = 0.5 * cool.Density * path.QuadraticPerM4 * path.OpeningFactor,
            b = cool.Viscosity * path.LaminarPerM3 * path.OpeningFactor;
        var flow = DraftFlow(a, b, draftPa);
        return (flow * cool.Density * cool.SpecificHeat + scene.Spec.HousingConductanceWPerK) * airRise;
    }

    /// <summary>Flow at which a·Q² + b·Q equals a pressure.</summary>
    private static double DraftFlow(double a, double b, double pressure)
    {
        if (!double.IsFinite(a) || !double.IsFinite(b) || pressure <= 0)
        {
            return 0;
        }

        var denominator = b + Math.Sqrt(b * b + 4 * a * pressure);
        return denominator > 0 ? 2 * pressure / denominator : 1e3;
    }

    private readonly struct HousingBalance(SinkScene scene, double rise) : IScalarFunction
    {
        /// <inheritdoc/>
        public double At(double x) =>
            LeavesHousingW(scene, x) - FreeW(scene, rise - x, scene.AmbientK + x, out _, out _);
    }
}
