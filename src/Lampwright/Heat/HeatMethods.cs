using Lampwright.Tables;

namespace Lampwright.Heat;

/// <summary>The known errors of the methods of this station, named for the draws.</summary>
public static class HeatMethods
{
    /// <summary>Film of forced air in fin channels.</summary>
    public static readonly MethodError ChannelFilm = new(
        "heat.channel_film",
        0.07,
        "root of squares: Teertstra 2000 2.1 % rms, so 3.5 %; VDI Gb and Stephan lie to 5.5 % off; uneven flow from a fan 2 %, common practice"
    );

    /// <summary>Film of air that rises by itself in fin channels and over the sink.</summary>
    public static readonly MethodError NaturalChannelFilm = new(
        "heat.natural_channel_film",
        0.15,
        "Bar-Cohen and Rohsenow 1984 against measurements (memory)"
    );

    /// <summary>Pressure lost in the channels.</summary>
    public static readonly MethodError Friction = new(
        "heat.friction",
        0.15,
        "Muzychka and Yovanovich 2009: 10 %; ends by Kays and London 23 to 34 % of their share"
    );

    /// <summary>Pressure of the fan against its maker's curve.</summary>
    public static readonly MethodError FanPressure = new("heat.fan_pressure", 0.10, "common practice, no source");

    /// <summary>Speed of the fan at a voltage, taken in proportion.</summary>
    public static readonly MethodError FanSpeed = new("heat.fan_speed", 0.06, "common practice, no source");

    /// <summary>Pressure lost in holes, grilles and guards.</summary>
    public static readonly MethodError AirOpenings = new(
        "heat.air_openings",
        0.30,
        "Idelchik diagram 8-1 against Blevins 1984 and low Reynolds numbers in lamp housings"
    );

    /// <summary>Spreading in the base: the series is exact; its metal, its thickness and its even flux are not.</summary>
    public static readonly MethodError Spreading = new(
        "heat.spreading",
        0.18,
        "upper end: heat through nine tenths of the back's side adds 5 %, film that falls along the air 4 %; conductivity by temper 5 % (sink-materials.csv), thickness to EN 755-9 5 % of 3 mm (memory) and what the first two scatter, root of squares, 9 %"
    );

    /// <summary>Contact layer beyond its given thickness and conductivity (voids, boundaries).</summary>
    public static readonly MethodError Interface = new(
        "heat.interface",
        0.25,
        "root of squares: faces of 1 to 5 µm and voids, both upward, to 17 % (Prasher 2006, memory); joints in use against the sheet's conductivity 18 % (Lasance and others 2006, memory)"
    );

    /// <summary>Radiation: emissivity and view of a room that is not black.</summary>
    public static readonly MethodError Emissivity = new(
        "heat.emissivity",
        0.12,
        "spread of the emissivity tables in use"
    );

    /// <summary>Natural convection on the outside of panels.</summary>
    public static readonly MethodError PanelFilm = new(
        "heat.panel_film",
        0.15,
        "Churchill and Chu 1975 and McAdams against room draughts, common practice"
    );

    /// <summary>Films inside a housing.</summary>
    public static readonly MethodError InsideFilm = new("heat.inside_film", 0.30, "common practice, no source");

    /// <summary>Air that enters at the fin tips and leaves at both ends, treated as two halves of channel flow.</summary>
    public static readonly MethodError TipFlow = new(
        "heat.tip_flow",
        0.20,
        "Duan and Muzychka, impingement plate fin sinks: 20 % (memory)"
    );

    /// <summary>Share of the fan's air that passes beside the fins.</summary>
    public static readonly MethodError Bypass = new(
        "heat.bypass",
        0.30,
        "two ducts at one pressure; nothing guides the air before the fins: common practice, no source"
    );

    /// <summary>Heat of a sink in a housing with the fan stopped.</summary>
    /// <remarks>
    /// Walls that its radiation warms hold heat back, sheet that it is screwed to carries heat off; both are left out and of the size of
    /// what is counted.
    /// </remarks>
    public static readonly MethodError HousedStill = new(
        "heat.housed_still",
        0.40,
        "radiation taken as into the room, conduction into the housing left out: common practice, no source"
    );

    /// <summary>Film of forced air across pins.</summary>
    public static readonly MethodError PinFilm = new(
        "heat.pin_film",
        0.25,
        "Zukauskas 1972: 15 % in deep banks; short pins on a base and open tips, common practice"
    );

    /// <summary>Pressure lost across pins.</summary>
    public static readonly MethodError PinFriction = new(
        "heat.pin_friction",
        0.30,
        "Gunter and Shaw 1945: 25 % (memory); open tips, common practice"
    );

    /// <summary>Air that rises by itself through pins or a stack of plates.</summary>
    public static readonly MethodError StillPins = new(
        "heat.still_pins",
        0.35,
        "lone cylinders joined with the draft through the bank: derived; common practice, no source"
    );

    /// <summary>Heat pipes and the plates on them.</summary>
    public static readonly MethodError HeatPipes = new(
        "heat.heat_pipes",
        0.35,
        "one resistance a pipe, evenly heated, tilt and fit left out: common practice, no source"
    );

    /// <summary>All of them, in the order of <see cref="HeatFactors.From"/>.</summary>
    public static readonly IReadOnlyList<MethodError> MethodErrors =
    [
        ChannelFilm,
        NaturalChannelFilm,
        Friction,
        FanPressure,
        FanSpeed,
        AirOpenings,
        Spreading,
        Interface,
        Emissivity,
        PanelFilm,
        InsideFilm,
        TipFlow,
        Bypass,
        HousedStill,
        PinFilm,
        PinFriction,
        StillPins,
        HeatPipes,
    ];

    /// <summary>The errors with those of methods outside their range doubled (common practice).</summary>
    /// <param name="outsideRange">Names of the methods that are used outside their range (<see cref="SinkResult.OutsideRange"/>).</param>
    public static IReadOnlyList<MethodError> Widened(IReadOnlyCollection<string> outsideRange)
    {
        ArgumentNullException.ThrowIfNull(outsideRange);
        return
        [
            .. MethodErrors.Select(e => outsideRange.Contains(e.Name) ? e with { HalfWidth = 2 * e.HalfWidth } : e),
        ];
    }
}
