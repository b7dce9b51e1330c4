using System.Globalization;

namespace Lampwright.Steps.ChainProof;

/// <summary>A kind of resistor that may be taken.</summary>
/// <param name="Ohm">Resistance at 25 °C in ohm; above 0.</param>
/// <param name="AllowedW">Power it may carry where it will sit, in watts: its rating derated by the air round it; above 0.</param>
/// <param name="Tolerance">Greatest relative deviation of its resistance, 0 to below 1.</param>
/// <param name="TempcoPerK">Temperature coefficient in 1/K.</param>
/// <param name="RisePerWattK">Its own rise over the air for each watt, in K/W; ≥ 0.</param>
/// <param name="Count">How many there are; null for as many as wanted.</param>
/// <param name="Price">What one costs, in any currency; 1 where it is not known, so that parts are counted.</param>
public sealed record StockPart(
    double Ohm,
    double AllowedW,
    double Tolerance = 0,
    double TempcoPerK = 0,
    double RisePerWattK = 0,
    int? Count = null,
    double Price = 1
)
{
    /// <summary>Its rated power in watts; null for that of all parts of the chain.</summary>
    public double? RatingW { get; init; }

    /// <summary>Whether the tolerance is the part's own and not that of all parts of the chain.</summary>
    public bool OwnTolerance { get; init; }

    /// <summary>Whether a search can take it: all figures sound, resistance, rating and count above zero.</summary>
    public bool Usable =>
        Ohm is > 0 and < 1e9
        && AllowedW > 0
        && Tolerance is >= 0 and < 0.9
        && Math.Abs(TempcoPerK) < 0.01
        && RisePerWattK is >= 0 and < 1e6
        && Count is not <= 0
        && Price is >= 0 and < 1e12;
}

/// <summary>How the parts of one position are joined.</summary>
public enum Joint
{
    /// <summary>One part.</summary>
    Single,

    /// <summary>Two parts one after the other.</summary>
    Series,

    /// <summary>Two parts side by side.</summary>
    Parallel,
}

/// <summary>What is soldered in one position of a chain: one part, or two that share the power.</summary>
/// <param name="Joint">How they are joined.</param>
/// <param name="First">The part, or the first of two.</param>
/// <param name="Second">The second of two, null for one.</param>
public sealed record PositionParts(Joint Joint, StockPart First, StockPart? Second = null)
{
    /// <summary>Resistance at 25 °C in ohm.</summary>
    public double Ohm =>
        Second is null ? First.Ohm
        : Joint == Joint.Series ? First.Ohm + Second.Ohm
        : First.Ohm * Second.Ohm / (First.Ohm + Second.Ohm);

    /// <summary>Share of the position's power that the first part carries: a/(a + b) in series, b/(a + b) side by side.</summary>
    public double FirstShare =>
        Second is null ? 1 : (Joint == Joint.Series ? First.Ohm : Second.Ohm) / (First.Ohm + Second.Ohm);

    /// <summary>Power the position may carry, in watts: where the first of its parts comes to its own limit.</summary>
    public double AllowedW =>
        Second is null ? First.AllowedW : Math.Min(First.AllowedW / FirstShare, Second.AllowedW / (1 - FirstShare));

    /// <summary>How many parts.</summary>
    public int Count => Second is null ? 1 : 2;

    /// <summary>What they cost together.</summary>
    public double Price => First.Price + (Second?.Price ?? 0);

    /// <summary>The values in ohm, joined by + in series and | side by side.</summary>
    public string Words =>
        Second is null ? Text(First.Ohm) : Text(First.Ohm) + (Joint == Joint.Series ? "+" : "|") + Text(Second.Ohm);

    private static string Text(double ohm) => ohm.ToString("0.#########", CultureInfo.InvariantCulture);
}
