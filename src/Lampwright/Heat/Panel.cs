namespace Lampwright.Heat;

/// <summary>Which way a warm panel faces.</summary>
public enum PanelFacing
{
    /// <summary>Stands upright.</summary>
    Side,

    /// <summary>Looks up.</summary>
    Up,

    /// <summary>Looks down.</summary>
    Down,
}

/// <summary>A panel that gives heat to the room by natural convection and radiation.</summary>
/// <remarks>
/// Validity: Ra 1e4 to 1e11 (up), 1e5 to 1e10 (down), to 1e12 (side). Source: Churchill and Chu 1975; McAdams, Lloyd and Moran.
/// Accuracy: 15 %. Checked by: printed (Cengel Ex. 9-2, Incropera Ex. 9.2). Closed form: cheap enough for every draw.
/// </remarks>
/// <param name="AreaM2">Area, m², 0 or above.</param>
/// <param name="LengthM">Height of an upright panel; area over perimeter of a level one, m, above 0.</param>
/// <param name="Facing">Which way it faces.</param>
/// <param name="Emissivity">Emissivity, 0 to 1.</param>
public sealed record Panel(double AreaM2, double LengthM, PanelFacing Facing, double Emissivity)
{
    /// <summary>Heat given to the room, W.</summary>
    /// <param name="riseK">Panel over the room, K; below 0 gives 0.</param>
    /// <param name="ambientK">Room, K.</param>
    /// <param name="pressurePa">Pressure of the air, Pa.</param>
    /// <param name="factors">Errors of the methods.</param>
    public double HeatW(double riseK, double ambientK, double pressurePa, HeatFactors factors)
    {
        ArgumentNullException.ThrowIfNull(factors);
        if (!(riseK > 0))
        {
            return 0;
        }

        var film = Air.At(ambientK + riseK / 2, pressurePa);
        return HeatW(riseK, ambientK, film, NaturalFilm.VerticalPlateTerm(film.Prandtl), factors);
    }

    /// <summary>The same with the film's air at hand, for several panels at one temperature.</summary>
    internal double HeatW(double riseK, double ambientK, in Air film, double prandtlTerm, HeatFactors factors)
    {
        var rayleigh = film.Rayleigh(riseK, LengthM);
        var nusselt = Facing switch
        {
            PanelFacing.Up => NaturalFilm.HotFaceUp(rayleigh),
            PanelFacing.Down => NaturalFilm.HotFaceDown(rayleigh),
            _ => NaturalFilm.VerticalPlateWith(rayleigh, prandtlTerm),
        };
        var convected = nusselt * film.Conductivity / LengthM * riseK * factors.PanelFilm;
        var radiated = Emissivity * Radiation.CoefficientBlack(ambientK + riseK, ambientK) * riseK * factors.Emissivity;
        return AreaM2 * (convected + radiated);
    }
}
