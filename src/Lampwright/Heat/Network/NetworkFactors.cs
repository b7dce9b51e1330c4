using Lampwright.Tables;

namespace Lampwright.Heat.Network;

/// <summary>One set of errors of a light's network: a factor on each, 1 at nominal.</summary>
public sealed record NetworkFactors
{
    /// <summary>All at their word.</summary>
    public static readonly NetworkFactors Nominal = new();

    /// <summary>On the resistance of the sink.</summary>
    public double SinkResistance { get; init; } = 1;

    /// <summary>On the heat of the emitter.</summary>
    public double EmitterHeat { get; init; } = 1;

    /// <summary>On the losses of driver and chain.</summary>
    public double DriverHeat { get; init; } = 1;

    /// <summary>On the resistors' own rise over their air.</summary>
    public double ResistorRise { get; init; } = 1;

    /// <summary>On the light absorbed in reflector and diffuser.</summary>
    public double AbsorbedLight { get; init; } = 1;

    /// <summary>On the films outside.</summary>
    public double PanelFilm { get; init; } = 1;

    /// <summary>On the films inside.</summary>
    public double InsideFilm { get; init; } = 1;

    /// <summary>On radiated heat.</summary>
    public double Emissivity { get; init; } = 1;

    /// <summary>On conduction through joints.</summary>
    public double Contact { get; init; } = 1;

    /// <summary>On the flow of air.</summary>
    public double AirFlow { get; init; } = 1;

    /// <summary>On all heat capacities.</summary>
    public double Capacity { get; init; } = 1;

    /// <summary>Conduction through screwed joints: nobody knows how sheets touch.</summary>
    public static readonly MethodError ContactError = new(
        "heat.contact",
        1,
        "a gap of half or twice the tenth of a millimetre that is taken: common practice, no source"
    );

    /// <summary>Heat capacities, from masses that are mostly computed.</summary>
    public static readonly MethodError CapacityError = new("heat.capacity", 0.10, "common practice, no source");

    /// <summary>Flow of air through a housing.</summary>
    public static readonly MethodError AirFlowError = new("heat.channel_flow", 0.15, "common practice, no source");

    /// <summary>Sink with the fan running: films, friction and fan together.</summary>
    public static readonly MethodError SinkError = new(
        "heat.sink_resistance",
        0.12,
        "root of the sum of squares of channel film, friction, openings, fan pressure and speed, each times its share"
    );

    /// <summary>Sink in a housing with the fan stopped.</summary>
    public static readonly MethodError StillSinkError = new(
        "heat.sink_resistance_still",
        0.30,
        "heat.housed_still: common practice, no source"
    );

    /// <summary>Heat of the emitter at its current.</summary>
    public static readonly MethodError EmitterHeatError = new(
        "heat.emitter_heat",
        0.06,
        "spread of current, voltage and efficacy in a usual light, common practice"
    );

    /// <summary>Losses of driver and chain.</summary>
    public static readonly MethodError DriverHeatError = new(
        "heat.driver_loss",
        0.20,
        "two points of efficiency at 0.9, common practice"
    );

    /// <summary>The resistors' own rise over their air.</summary>
    public static readonly MethodError ResistorRiseError = new(
        "heat.resistor_rise",
        0.30,
        "slope of the derating line; mounting decides the rest: common practice, no source"
    );

    /// <summary>Light absorbed in reflector and diffuser.</summary>
    public static readonly MethodError AbsorbedLightError = new(
        "heat.absorbed_light",
        0.15,
        "spread of reflectances, common practice"
    );

    /// <summary>The errors that act on a network, each with how it is set; the sink's depends on whether its fan runs.</summary>
    /// <param name="fanRuns">Whether the fan runs.</param>
    public static IReadOnlyList<(MethodError Error, Func<NetworkFactors, double, NetworkFactors> With)> All(
        bool fanRuns
    ) =>
        [
            (fanRuns ? SinkError : StillSinkError, (f, x) => f with { SinkResistance = x }),
            (EmitterHeatError, (f, x) => f with { EmitterHeat = x }),
            (DriverHeatError, (f, x) => f with { DriverHeat = x }),
            (ResistorRiseError, (f, x) => f with { ResistorRise = x }),
            (AbsorbedLightError, (f, x) => f with { AbsorbedLight = x }),
            (HeatMethods.PanelFilm, (f, x) => f with { PanelFilm = x }),
            (HeatMethods.InsideFilm, (f, x) => f with { InsideFilm = x }),
            (HeatMethods.Emissivity, (f, x) => f with { Emissivity = x }),
            (ContactError, (f, x) => f with { Contact = x }),
            (AirFlowError, (f, x) => f with { AirFlow = x }),
            (CapacityError, (f, x) => f with { Capacity = x }),
        ];
}
