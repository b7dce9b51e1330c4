namespace Lampwright.Heat;

/// <summary>One draw of the errors of this station's methods: a factor on each, 1 at nominal.</summary>
public sealed record HeatFactors
{
    /// <summary>All methods at their word.</summary>
    public static readonly HeatFactors Nominal = new();

    /// <summary>On the film of forced air in fin channels.</summary>
    public double ChannelFilm { get; init; } = 1;

    /// <summary>On the film of air that rises by itself over the sink.</summary>
    public double NaturalChannelFilm { get; init; } = 1;

    /// <summary>On the pressure lost in the channels.</summary>
    public double Friction { get; init; } = 1;

    /// <summary>On the pressure of the fan.</summary>
    public double FanPressure { get; init; } = 1;

    /// <summary>On the speed of the fan.</summary>
    public double FanSpeed { get; init; } = 1;

    /// <summary>On the pressure lost in openings.</summary>
    public double AirOpenings { get; init; } = 1;

    /// <summary>On the spreading part of the base's resistance.</summary>
    public double Spreading { get; init; } = 1;

    /// <summary>On the resistance of contact layers.</summary>
    public double Interface { get; init; } = 1;

    /// <summary>On radiated heat.</summary>
    public double Emissivity { get; init; } = 1;

    /// <summary>On natural convection outside panels.</summary>
    public double PanelFilm { get; init; } = 1;

    /// <summary>On the films inside a housing.</summary>
    public double InsideFilm { get; init; } = 1;

    /// <summary>On the film where air enters at the fin tips.</summary>
    public double TipFlow { get; init; } = 1;

    /// <summary>On the share of air that passes beside the fins.</summary>
    public double Bypass { get; init; } = 1;

    /// <summary>On all heat that a sink in a housing gives off with the fan stopped.</summary>
    public double HousedStill { get; init; } = 1;

    /// <summary>On the film of forced air across pins.</summary>
    public double PinFilm { get; init; } = 1;

    /// <summary>On the pressure lost across pins.</summary>
    public double PinFriction { get; init; } = 1;

    /// <summary>On the heat that still air takes from pins or a stack of plates.</summary>
    public double StillPins { get; init; } = 1;

    /// <summary>On the resistance of heat pipes.</summary>
    public double HeatPipes { get; init; } = 1;

    /// <summary>Factors in the order of <see cref="HeatMethods.MethodErrors"/>.</summary>
    /// <param name="factors">One factor per error, above 0.</param>
    /// <exception cref="ArgumentException">Not one per error.</exception>
    public static HeatFactors From(ReadOnlySpan<double> factors)
    {
        if (factors.Length != HeatMethods.MethodErrors.Count)
        {
            throw new ArgumentException("One factor per method error is wanted.", nameof(factors));
        }

        foreach (var factor in factors)
        {
            Guard.Positive(factor);
        }

        return new HeatFactors
        {
            ChannelFilm = factors[0],
            NaturalChannelFilm = factors[1],
            Friction = factors[2],
            FanPressure = factors[3],
            FanSpeed = factors[4],
            AirOpenings = factors[5],
            Spreading = factors[6],
            Interface = factors[7],
            Emissivity = factors[8],
            PanelFilm = factors[9],
            InsideFilm = factors[10],
            TipFlow = factors[11],
            Bypass = factors[12],
            HousedStill = factors[13],
            PinFilm = factors[14],
            PinFriction = factors[15],
            StillPins = factors[16],
            HeatPipes = factors[17],
        };
    }
}
