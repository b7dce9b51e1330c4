namespace Lampwright.Heat;

/// <summary>Air that rises by itself over a sink, free in the room or through the openings of a housing.</summary>
/// <remarks>
/// Channels by <see cref="NaturalFilm.Channel"/> with gravity along them; a level sink falls back on the horizontal plate of its outline
/// (hot face up), joined by fourth powers, so that nothing jumps with the tilt. Outer fin faces as vertical plates.
/// Air properties are those half way between the sink and the room; in a housing this is a few kelvin low.
/// Validity: tilt to 60°; beyond, the error is doubled.
/// </remarks>
internal readonly struct SinkNatural
{
    private readonly SinkSpec spec;
    private readonly double elenbaasPerK;
    private readonly double channelPerNusselt;
    private readonly double wallPerNusselt;
    private readonly double finTerm;
    private readonly double levelRayleighPerK;
    private readonly double levelPerNusselt;
    private readonly double plateRayleighPerK;
    private readonly double platePerNusselt;
    private readonly double plateTerm;

    /// <summary>The sink with air of one temperature.</summary>
    /// <param name="scene">The draw in its scene.</param>
    /// <param name="film">Air half way between sink and room.</param>
    internal SinkNatural(in SinkScene scene, in Air film)
    {
        spec = scene.Spec;
        var along = Math.Max(0, Math.Cos(spec.ChannelTiltRad));
        double plan = spec.AcrossM * spec.AlongM,
            length = plan / (2 * (spec.AcrossM + spec.AlongM));
        levelRayleighPerK = film.Rayleigh(1, length);
        levelPerNusselt = film.Conductivity / length * plan;
        plateRayleighPerK = film.Rayleigh(1, spec.AlongM) * along;
        plateTerm = scene.PrandtlTerm;
        var plateFilm = film.Conductivity / spec.AlongM;
        if (spec.FinCount < 2)
        {
            platePerNusselt = plateFilm * plan;
            levelPerNusselt *= Math.Sin(spec.ChannelTiltRad);
            return;
        }

        platePerNusselt = plateFilm * 2 * spec.FinHeightM * spec.AlongM;
        elenbaasPerK = NaturalFilm.Elenbaas(film, 1, scene.GapM, spec.AlongM) * along;
        var channelFilm = film.Conductivity / scene.GapM;
        channelPerNusselt = channelFilm * (spec.FinCount - 1) * spec.AlongM * scene.GapM;
        wallPerNusselt = channelFilm * (spec.FinCount - 1) * spec.AlongM * 2 * spec.FinHeightM;
        finTerm = 2 * channelFilm / (spec.ConductivityWPerMK * spec.FinThicknessM) * spec.FinHeightM * spec.FinHeightM;
    }

    /// <summary>Elenbaas number of the channels.</summary>
    /// <param name="riseK">Sink over the air around it, K.</param>
    internal double Elenbaas(double riseK) => elenbaasPerK * riseK;

    /// <summary>Efficiency of the fins under the channel's film.</summary>
    /// <param name="riseK">Sink over the air around it, K.</param>
    internal double Efficiency(double riseK) =>
        Fin.Efficiency(Math.Sqrt(finTerm * NaturalFilm.Channel(elenbaasPerK * riseK)));

    /// <summary>Heat given to air of one temperature, W.</summary>
    /// <param name="riseK">Sink over that air, K.</param>
    internal double FreeW(double riseK)
    {
        if (riseK <= 0)
        {
            return 0;
        }

        var level = NaturalFilm.HotFaceUp(levelRayleighPerK * riseK) * levelPerNusselt;
        var plate = NaturalFilm.VerticalPlateWith(plateRayleighPerK * riseK, plateTerm) * platePerNusselt;
        double conductance;
        if (spec.FinCount < 2)
        {
            conductance = Blend.Fourths(plate, level);
        }
        else
        {
            var nusselt = NaturalFilm.Channel(elenbaasPerK * riseK);
            var efficiency = Fin.Efficiency(Math.Sqrt(finTerm * nusselt));
            var channels = nusselt * (channelPerNusselt + wallPerNusselt * efficiency);
            conductance = Blend.Fourths(channels, level) + plate;
        }

        return conductance * riseK * spec.Factors.NaturalChannelFilm;
    }

    /// <summary>Heat given to the air of a housing, which is warmer than the room, W.</summary>
    /// <param name="scene">The draw in its scene.</param>
    /// <param name="riseK">Sink over the room, K.</param>
    /// <param name="overAirK">Sink over the air around it, K.</param>
    internal double HousedW(in SinkScene scene, double riseK, out double overAirK)
    {
        if (!spec.Housed)
        {
            overAirK = riseK;
            return FreeW(riseK);
        }

        HousingBalance balance = new(this, new Housing(scene), riseK);
        var found = Root.Between(ref balance, 0, riseK, 1e-9 * riseK);
        overAirK = riseK - found.X;
        return FreeW(overAirK);
    }

    private readonly struct HousingBalance(SinkNatural sink, Housing housing, double riseK) : IScalarFunction
    {
        /// <inheritdoc/>
        public double At(double x) => housing.LeavesW(x) - sink.FreeW(riseK - x);
    }
}
