namespace Lampwright.Heat.Network;

/// <summary>A way of heat between two nodes of a <see cref="ThermalNetwork"/>.</summary>
/// <remarks>
/// What leaves the first enters the second, so that no link can lose heat. The law may look at other nodes than those it joins: heat
/// that a fan's air takes from a sink hangs on the base and the room and ends up in the air.
/// </remarks>
/// <param name="From">Index of the node the heat leaves.</param>
/// <param name="To">Index of the node it enters.</param>
public abstract record NetworkLink(int From, int To)
{
    /// <summary>Node whose temperature drives the heat; <see cref="From"/> where nothing else is said.</summary>
    internal virtual int Hot => From;

    /// <summary>Node against which it is driven; <see cref="To"/> where nothing else is said.</summary>
    internal virtual int Cold => To;

    /// <summary>Heat at two temperatures, W, and its slopes over both, W/K.</summary>
    /// <param name="hotK">Temperature of the driving node, K.</param>
    /// <param name="coldK">Temperature of the node driven against, K.</param>
    internal abstract LinkHeat At(double hotK, double coldK);
}

/// <summary>Heat of a link and its slopes.</summary>
/// <param name="W">Heat, W.</param>
/// <param name="ByHot">Slope over the driving temperature, W/K.</param>
/// <param name="ByCold">Slope over the other, W/K.</param>
internal readonly record struct LinkHeat(double W, double ByHot, double ByCold);

/// <summary>Conduction, or any constant conductance: G·(T₁ - T₂).</summary>
/// <param name="From">First node.</param>
/// <param name="To">Second node.</param>
/// <param name="WPerK">Conductance, W/K, 0 or above.</param>
public sealed record Conduction(int From, int To, double WPerK) : NetworkLink(From, To)
{
    /// <inheritdoc/>
    internal override LinkHeat At(double hotK, double coldK) => new(WPerK * (hotK - coldK), WPerK, -WPerK);
}

/// <summary>A film of still or driven air: ((c·|ΔT|^¼)³ + G³)^⅓·ΔT.</summary>
/// <remarks>
/// Natural and forced films join by cubes (Churchill 1977), so that nothing jumps when the air slows to rest. Within a hundredth of a
/// kelvin of no difference the film is held finite.
/// </remarks>
/// <param name="From">First node.</param>
/// <param name="To">Second node.</param>
/// <param name="NaturalWPerK54">c = 1.42·A/L^¼ (Holman, simplified, memory), W/K^(5/4), 0 or above.</param>
/// <param name="ForcedWPerK">Conductance of the driven film, W/K, 0 or above.</param>
public sealed record AirFilm(int From, int To, double NaturalWPerK54, double ForcedWPerK = 0) : NetworkLink(From, To)
{
    private static readonly double LeastK2 = 1e-4;

    /// <inheritdoc/>
    internal override LinkHeat At(double hotK, double coldK)
    {
        var d = hotK - coldK;
        var square = (d * d) + LeastK2;
        var natural = NaturalWPerK54 * Math.Sqrt(Math.Sqrt(Math.Sqrt(square)));
        if (ForcedWPerK <= 0)
        {
            var slope = natural * (1 + (0.25 * d * d / square));
            return new(natural * d, slope, -slope);
        }

        var cubes = (natural * natural * natural) + (ForcedWPerK * ForcedWPerK * ForcedWPerK);
        var film = Math.Cbrt(cubes);
        var bend = natural * natural * natural / cubes * 0.25 * d * d / square;
        var by = film * (1 + bend);
        return new(film * d, by, -by);
    }
}

/// <summary>Radiation between two surfaces: σ·A·(T₁⁴ - T₂⁴).</summary>
/// <param name="From">First node.</param>
/// <param name="To">Second node.</param>
/// <param name="AreaM2">Area times view factor and emissivities, m², 0 or above.</param>
public sealed record RadiationLink(int From, int To, double AreaM2) : NetworkLink(From, To)
{
    /// <inheritdoc/>
    internal override LinkHeat At(double hotK, double coldK)
    {
        var (h, c) = (hotK * hotK, coldK * coldK);
        var g = Physics.StefanBoltzmann * AreaM2;
        return new(g * (h + c) * (hotK + coldK) * (hotK - coldK), 4 * g * h * hotK, -4 * g * c * coldK);
    }
}

/// <summary>A panel's outer face in the air of the room, by the films of <see cref="Panel"/>; radiation with it.</summary>
/// <param name="From">The panel.</param>
/// <param name="To">The room.</param>
/// <param name="Panel">Its size, facing and emissivity.</param>
/// <param name="PressurePa">Pressure of the air, Pa.</param>
/// <param name="FilmFactor">Error of the film, 1 at nominal.</param>
/// <param name="EmissivityFactor">Error of the radiation, 1 at nominal.</param>
public sealed record PanelFace(
    int From,
    int To,
    Panel Panel,
    double PressurePa = 101325,
    double FilmFactor = 1,
    double EmissivityFactor = 1
) : NetworkLink(From, To)
{
    private static readonly double LeastK2 = 1e-4;

    /// <inheritdoc/>
    internal override LinkHeat At(double hotK, double coldK)
    {
        // A panel colder than the room works the other way round: cold looking up is as warm looking down.
        var d = hotK - coldK;
        var rise = Math.Sqrt((d * d) + LeastK2);
        var film = Air.At(0.5 * (hotK + coldK), PressurePa);
        var rayleigh = film.Rayleigh(rise, Panel.LengthM);
        var (nusselt, power) = Nusselt(rayleigh, d >= 0, film.Prandtl);
        var convective = Panel.AreaM2 * nusselt * film.Conductivity / Panel.LengthM * FilmFactor;
        var bend = convective * (1 + (power * d * d / (rise * rise)));
        var radiated = Panel.Emissivity * EmissivityFactor * Panel.AreaM2 * Physics.StefanBoltzmann;
        var (h, c) = (hotK * hotK, coldK * coldK);
        return new(
            (convective + (radiated * (h + c) * (hotK + coldK))) * d,
            bend + (4 * radiated * h * hotK),
            -bend - (4 * radiated * c * coldK)
        );
    }

    private (double Nusselt, double Power) Nusselt(double rayleigh, bool hot, double prandtl)
    {
        if (Panel.Facing == PanelFacing.Side)
        {
            var root = NaturalFilm.VerticalPlateWith(rayleigh, NaturalFilm.VerticalPlateTerm(prandtl));
            return (root, (Math.Sqrt(root) - 0.825) / (3 * Math.Sqrt(root)));
        }

        return Panel.Facing == PanelFacing.Up == hot
            ? (NaturalFilm.HotFaceUp(rayleigh), rayleigh > 4.7e6 ? 1.0 / 3 : 0.25)
            : (NaturalFilm.HotFaceDown(rayleigh), 0.25);
    }
}

/// <summary>Air that carries heat off: W·(T - T_room), driven by a fan, by its own draft, or by both.</summary>
/// <remarks>
/// Fan and draft join by cubes, as the films do. Draft through openings: Q = A·√(2·g·H·ΔT/(K·T)) (stack flow of the ideal gas).
/// </remarks>
/// <param name="From">The air the stream leaves.</param>
/// <param name="To">Where it goes: the room, or the next compartment.</param>
/// <param name="Room">The room, against which the heat of air counts.</param>
/// <param name="FanWPerK">Heat capacity of the fan's stream, W/K, 0 or above.</param>
/// <param name="DraftWPerK32">Heat capacity of the draft at 1 K, W/K^(3/2), 0 or above.</param>
public sealed record AirStream(int From, int To, int Room, double FanWPerK, double DraftWPerK32 = 0)
    : NetworkLink(From, To)
{
    private static readonly double LeastK2 = 1e-4;

    /// <inheritdoc/>
    internal override int Cold => Room;

    /// <inheritdoc/>
    internal override LinkHeat At(double hotK, double coldK)
    {
        var d = hotK - coldK;
        if (DraftWPerK32 <= 0)
        {
            return new(FanWPerK * d, FanWPerK, -FanWPerK);
        }

        // Air colder than the room sinks out as well as warmer air rises.
        var square = (d * d) + LeastK2;
        var draft = DraftWPerK32 * Math.Sqrt(Math.Sqrt(square));
        var cubes = (draft * draft * draft) + (FanWPerK * FanWPerK * FanWPerK);
        var capacity = Math.Cbrt(cubes);
        var slope = capacity * (1 + (draft * draft * draft / cubes * 0.5 * d * d / square));
        return new(capacity * d, slope, -slope);
    }
}

/// <summary>A share of the heat that a sink gives off at a temperature of its base, as its curve says.</summary>
/// <remarks>
/// <para>Sheet that the sink is screwed to takes its part of that heat, as the second of two ways side by side: Q·G·ΔT/(Q + G·ΔT) of all,
/// never more than all; the air and the walls round the fins share the rest. The base is not counted cooler for it, which is on the safe
/// side.</para>
/// Source: two conductances in parallel. Checked by: invariant.
/// </remarks>
/// <param name="From">Node the heat leaves: the fins.</param>
/// <param name="To">Node it enters: the air round them, a wall, the sheet, the room.</param>
/// <param name="Base">The base, which drives it.</param>
/// <param name="Room">The room, which the curve counts from.</param>
/// <param name="Curve">Rise of the sink over its heat in this scene.</param>
/// <param name="Share">Share of the heat that takes this way, 0 to 1, of what the sheet leaves; of the sheet's where <paramref name="IsSeat"/>.</param>
/// <param name="ResistanceFactor">Error of the sink's resistance, 1 at nominal.</param>
/// <param name="SeatWPerK">From the base through joint and sheet to the room, W/K, 0 or above.</param>
/// <param name="IsSeat">True for the sheet's part, false for what it leaves.</param>
public sealed record SinkHeat(
    int From,
    int To,
    int Base,
    int Room,
    SinkCurve Curve,
    double Share = 1,
    double ResistanceFactor = 1,
    double SeatWPerK = 0,
    bool IsSeat = false
) : NetworkLink(From, To)
{
    /// <inheritdoc/>
    internal override int Hot => Base;

    /// <inheritdoc/>
    internal override int Cold => Room;

    /// <inheritdoc/>
    internal override LinkHeat At(double hotK, double coldK)
    {
        var d = hotK - coldK;
        var (q, by) = Curve.HeatW(d / ResistanceFactor);
        by /= ResistanceFactor;
        var seat = SeatWPerK * d;
        if (SeatWPerK <= 0 || Math.Abs(q + seat) < 1e-12)
        {
            return IsSeat ? default : new(Share * q, Share * by, -Share * by);
        }

        // Both grow with the rise from zero, so that their quotient has no pole.
        var sum = q + seat;
        var taken = q * seat / sum;
        var takenBy = ((by * seat * seat) + (SeatWPerK * q * q)) / (sum * sum);
        var (w, slope) = IsSeat ? (taken, takenBy) : (q - taken, by - takenBy);
        return new(Share * w, Share * slope, -Share * slope);
    }
}
