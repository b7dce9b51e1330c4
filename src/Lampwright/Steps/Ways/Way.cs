namespace Lampwright.Steps.Ways;

/// <summary>Yes, no, or not to be known from what is given.</summary>
public enum Told
{
    /// <summary>What is given does not tell.</summary>
    Unknown,

    /// <summary>No.</summary>
    No,

    /// <summary>Yes.</summary>
    Yes,
}

/// <summary>What is to be thought of a way, worst first.</summary>
public enum Verdict
{
    /// <summary>A stop that protects people stands against it.</summary>
    Stop,

    /// <summary>It does not dim, blinks, or stresses a part beyond its limit.</summary>
    DoesNotWork,

    /// <summary>Something has to be known or measured first.</summary>
    AskFirst,

    /// <summary>It works with a drawback that the reason names.</summary>
    WithDrawback,

    /// <summary>It works.</summary>
    Works,
}

/// <summary>One way of dimming, judged for this supply, driver and emitter.</summary>
public sealed record Way
{
    /// <summary>Which way.</summary>
    public required WayKind Kind { get; init; }

    /// <summary>Its name in the maker's words.</summary>
    public required string Name { get; init; }

    /// <summary>Whether the light it gives is held against supply, warmth and the emitter's spread.</summary>
    public required Told Regulates { get; init; }

    /// <summary>Whether the light blinks or flickers so that an eye or a camera sees it.</summary>
    public required Told Blinks { get; init; }

    /// <summary>How often it starts and stops, in hertz; null where it does not or where the rate is unknown (see <see cref="Hiccups"/>).</summary>
    public Extent? HiccupHz { get; init; }

    /// <summary>Whether it starts and stops again and again.</summary>
    public required Told Hiccups { get; init; }

    /// <summary>Light it reaches as shares of the light the driver gives as it is (its measured current, else the rated), least and most; null where it gives no steady light.</summary>
    public Extent? LightShare { get; init; }

    /// <summary>Emitter currents it reaches, in amperes; null where it gives no steady light.</summary>
    public Extent? CurrentA { get; init; }

    /// <summary>Power in the emitter over power from the supply at half of the light; null where it never gets there.</summary>
    public double? EfficiencyAtHalf { get; init; }

    /// <summary>Heat at half of the light outside of emitter and driver (resistor, converter, switch), in watts; null where it never gets there.</summary>
    public double? AddedHeatAtHalfW { get; init; }

    /// <summary>All heat at half of the light but the emitter's, in watts: driver and added parts; null where it never gets there.</summary>
    public double? HeatAtHalfW { get; init; }

    /// <summary>What it stresses, each with its number; may be empty.</summary>
    public required IReadOnlyList<string> Stresses { get; init; }

    /// <summary>Whether the driver has to be opened.</summary>
    public required bool OpensDriver { get; init; }

    /// <summary>What it needs in safety; may be empty.</summary>
    public required IReadOnlyList<string> Safety { get; init; }

    /// <summary>Codes of the stops that stand against it; empty where there are none.</summary>
    public required IReadOnlyList<string> Stops { get; init; }

    /// <summary>What is to be thought of it.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Why, in one sentence with numbers that a maker understands.</summary>
    public required string Reason { get; init; }

    /// <summary>Where source and load meet; drawn only when asked for.</summary>
    public required OperatingPicture Picture { get; init; }

    /// <summary>The circuit that the time simulation runs.</summary>
    public required WayCircuit Circuit { get; init; }
}
