namespace Lampwright.Heat;

/// <summary>Heat that still air takes from a sink, alone or behind the openings of a housing.</summary>
/// <remarks>
/// Gravity is parted along the channels, up out of the face and across the channels; each part drives its own flow, and the flows are joined by
/// fourth powers, so that nothing jumps with the tilt; on a plain plate by eighth powers, since there the larger of them is what was measured
/// (Raithby and Hollands, in Handbook of Heat Transfer, ch. 4; from memory). Along: <see cref="NaturalFilm.Channel"/>. Up and down: the horizontal plate of
/// the outline. Across, where the walls stop the air, and where the channels are too narrow: the upright plate of the outline. Outer fin faces as
/// upright plates, as long as the channels or as high as the fins, by the squares of gravity's shares. Edges of the base all round as an upright plate as
/// long as the base: never too much, as lower faces take more.
/// Air properties are those half way between the sink and the room; in a housing this is a few kelvin low.
/// Validity: channels within 60° of the upright; beyond, the channels' part fades to nothing at level and the error is doubled.
/// Checked by: printed (the order of the tilts in Bilitzky 1986), invariant.
/// </remarks>
internal readonly struct SinkNatural
{
    private readonly SinkSpec spec;
    private readonly StillBody? body;
    private readonly double elenbaasPerK;
    private readonly double channelPerNusselt;
    private readonly double wallPerNusselt;
    private readonly double finTerm;
    private readonly double levelRayleighPerK;
    private readonly double levelPerNusselt;
    private readonly double acrossRayleighPerK;
    private readonly double acrossPerNusselt;
    private readonly double plateRayleighPerK;
    private readonly double platePerNusselt;
    private readonly double frontPerNusselt;
    private readonly double outerRayleighPerK;
    private readonly double outerPerNusselt;
    private readonly double edgesRayleighPerK;
    private readonly double edgesPerNusselt;
    private readonly double plateTerm;
    private readonly bool faceUp;

    /// <summary>The sink with air of one temperature.</summary>
    /// <param name="scene">The draw in its scene.</param>
    /// <param name="film">Air half way between sink and room.</param>
    internal SinkNatural(in SinkScene scene, in Air film)
    {
        spec = scene.Spec;
        var surface = scene.Surface;
        var (along, up, across) = (scene.Along, scene.Up, scene.Across);
        if (surface.Form is SinkForm.Pins or SinkForm.Tower)
        {
            body = new StillBody(scene, film);
            elenbaasPerK = body.ElenbaasPerK;
            return;
        }

        double plan = spec.AcrossM * spec.AlongM,
            length = plan / (2 * (spec.AcrossM + spec.AlongM));
        faceUp = up >= 0;
        levelRayleighPerK = film.Rayleigh(1, length) * Math.Abs(up);
        levelPerNusselt = film.Conductivity / length * plan;
        acrossRayleighPerK = film.Rayleigh(1, spec.AcrossM) * across;
        acrossPerNusselt = film.Conductivity / spec.AcrossM * plan * across;
        plateRayleighPerK = film.Rayleigh(1, spec.AlongM) * along;
        plateTerm = scene.PrandtlTerm;
        var plateFilm = film.Conductivity / spec.AlongM;
        edgesRayleighPerK = film.Rayleigh(1, spec.AlongM);
        edgesPerNusselt = plateFilm * spec.EdgesM2;
        if (surface.Form == SinkForm.Plate)
        {
            platePerNusselt = plateFilm * plan * along;
            return;
        }

        platePerNusselt = plateFilm * 2 * spec.FinHeightM * spec.AlongM * along * along;
        outerRayleighPerK = film.Rayleigh(1, spec.FinHeightM);
        outerPerNusselt = film.Conductivity * 2 * spec.AlongM * (1 - (along * along));
        frontPerNusselt = plateFilm * plan * along;
        elenbaasPerK = NaturalFilm.Elenbaas(film, 1, surface.GapM, spec.AlongM) * along;
        var channelFilm = film.Conductivity / surface.GapM;
        var rising = Blend.Rising(along);
        channelPerNusselt = channelFilm * surface.FloorM2 * rising;
        wallPerNusselt = channelFilm * surface.WallM2 * rising;
        finTerm = 2 * channelFilm / (spec.ConductivityWPerMK * spec.FinThicknessM) * spec.FinHeightM * spec.FinHeightM;
    }

    /// <summary>Elenbaas number of the channels; 0 where there are none.</summary>
    /// <param name="riseK">Sink over the air around it, K.</param>
    internal double Elenbaas(double riseK) => elenbaasPerK * riseK;

    /// <summary>Efficiency of the fins under the channel's film.</summary>
    /// <param name="riseK">Sink over the air around it, K.</param>
    internal double Efficiency(double riseK) =>
        body?.Efficiency(riseK) ?? Fin.Efficiency(Math.Sqrt(finTerm * NaturalFilm.Channel(elenbaasPerK * riseK)));

    /// <summary>Heat given to air of one temperature, W.</summary>
    /// <param name="riseK">Sink over that air, K.</param>
    internal double FreeW(double riseK)
    {
        if (riseK <= 0)
        {
            return 0;
        }

        if (body is not null)
        {
            return body.Conductance(riseK) * riseK * spec.Factors.StillPins;
        }

        // What gravity has no share in is left out; at a share of nothing all of these are nothing, so that leaving them out makes no jump.
        var rayleigh = levelRayleighPerK * riseK;
        var level =
            rayleigh <= 0
                ? 0
                : (faceUp ? NaturalFilm.HotFaceUp(rayleigh) : NaturalFilm.HotFaceDown(rayleigh)) * levelPerNusselt;
        var sideways = Plate(acrossRayleighPerK, acrossPerNusselt, riseK);
        var upright = plateRayleighPerK > 0 ? NaturalFilm.VerticalPlateWith(plateRayleighPerK * riseK, plateTerm) : 0;
        var plate = upright * platePerNusselt;
        var edges = Plate(edgesRayleighPerK, edgesPerNusselt, riseK);
        double conductance;
        if (spec.FinCount < 2)
        {
            conductance = Blend.Eighths(Blend.Eighths(plate, level), sideways) + edges;
        }
        else
        {
            var nusselt = NaturalFilm.Channel(elenbaasPerK * riseK);
            var efficiency = Fin.Efficiency(Math.Sqrt(finTerm * nusselt));
            var channels = nusselt * (channelPerNusselt + (wallPerNusselt * efficiency));
            var front = Blend.Fourths(sideways, upright * frontPerNusselt);
            var outer = Plate(outerRayleighPerK, outerPerNusselt, riseK);
            conductance = Blend.Fourths(Blend.Fourths(channels, level), front) + plate + outer + edges;
        }

        return conductance * riseK * spec.Factors.NaturalChannelFilm;
    }

    private double Plate(double rayleighPerK, double perNusselt, double riseK) =>
        perNusselt > 0 ? NaturalFilm.VerticalPlateWith(rayleighPerK * riseK, plateTerm) * perNusselt : 0;

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
