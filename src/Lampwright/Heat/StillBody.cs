namespace Lampwright.Heat;

/// <summary>Still air about pins or a stack of plates on heat pipes.</summary>
/// <remarks>
/// Pins, two limits joined by <see cref="Blend.InverseCubes"/>: alone, each is a cylinder in still air, level or upright (Churchill and Chu 1975; between them
/// by the squares of gravity's shares); close together,
/// the air comes to their temperature and its draft drives it against the drag of the bank (<see cref="PinFriction"/>, laminar; derived) or, where it
/// rises along the pins, against that of their walls (f·Re 24, derived). A stack: <see cref="NaturalFilm.Channel"/> between its plates, joined by
/// fourth powers with the upright plate of its outline. Accuracy: <see cref="HeatMethods.StillPins"/>. Checked by: invariant.
/// </remarks>
internal sealed class StillBody
{
    private readonly SinkSpec spec;
    private readonly SinkSurface surface;
    private readonly double crossRayleighPerK;
    private readonly double lengthRayleighPerK;
    private readonly double crossFilm;
    private readonly double lengthFilm;
    private readonly double prandtl;
    private readonly double term;
    private readonly double draftPerK;
    private readonly double share;

    /// <summary>A body with air of one temperature.</summary>
    internal StillBody(in SinkScene scene, in Air film)
    {
        spec = scene.Spec;
        surface = scene.Surface;
        prandtl = film.Prandtl;
        term = scene.PrandtlTerm;
        var (along, up, across) = (scene.Along, scene.Up, scene.Across);
        if (spec.Tower is { } tower)
        {
            ElenbaasPerK = NaturalFilm.Elenbaas(film, 1, surface.GapM, surface.AlongM) * along;
            crossFilm = film.Conductivity / surface.GapM;
            share = Blend.Rising(along);
            var length = Math.Sqrt(tower.AlongM * tower.HeightM);
            lengthRayleighPerK = film.Rayleigh(1, length);
            lengthFilm = film.Conductivity / length;
            return;
        }

        var pins = spec.Pins!;
        crossRayleighPerK = film.Rayleigh(1, pins.DiameterM);
        lengthRayleighPerK = film.Rayleigh(1, pins.HeightM);
        share = 1 - (up * up);
        crossFilm = film.Conductivity / pins.DiameterM;
        lengthFilm = film.Conductivity / pins.HeightM;

        // Weight of warm air against laminar drag; what it carries at the pins' own temperature, W/K for each kelvin of rise.
        double weight = film.Density * Physics.Gravity / film.TemperatureK,
            carried = film.Density * film.SpecificHeat * surface.DiameterM * surface.DiameterM / film.Viscosity,
            plan = surface.FloorM2,
            sideM2 = Math.Max(0, spec.AlongM - (pins.AlongCount * pins.DiameterM)) * pins.HeightM;
        draftPerK =
            weight
            * carried
            * (
                (along * surface.FreeM2 / (90 * surface.Arrangement))
                + (across * sideM2 / (90 * surface.Arrangement))
                + (Math.Abs(up) * plan / 48)
            );
    }

    /// <summary>Elenbaas number of the channels of a stack for each kelvin of rise.</summary>
    internal double ElenbaasPerK { get; }

    /// <summary>Efficiency of pins or plates.</summary>
    /// <param name="riseK">Over the air around, K.</param>
    internal double Efficiency(double riseK) => surface.Efficiency(spec, Film(riseK));

    /// <summary>Heat for each kelvin of rise, W/K.</summary>
    /// <param name="riseK">Over the air around, K, above 0.</param>
    internal double Conductance(double riseK)
    {
        var film = Film(riseK);
        var wall = film * surface.WallM2 * surface.Efficiency(spec, film);
        if (surface.Form == SinkForm.Tower)
        {
            var outline =
                NaturalFilm.VerticalPlateWith(lengthRayleighPerK * riseK, term) * lengthFilm * surface.OutlineM2;
            return Blend.Fourths(share * wall, outline);
        }

        return Blend.InverseCubes(wall + (film * surface.FloorM2), draftPerK * riseK);
    }

    private double Film(double riseK) =>
        surface.Form == SinkForm.Tower
            ? NaturalFilm.Channel(ElenbaasPerK * riseK) * crossFilm
            : (share * NaturalFilm.LevelCylinder(crossRayleighPerK * riseK, prandtl) * crossFilm)
                + ((1 - share) * NaturalFilm.VerticalPlateWith(lengthRayleighPerK * riseK, term) * lengthFilm);
}
