namespace Lampwright.Steps.Board;

/// <summary>The current at a sense resistance, with what is to be said of the law there.</summary>
/// <param name="Ohm">Sense resistance in ohm.</param>
/// <param name="CurrentA">Current by the law, in amperes; 0 where the law gives none.</param>
/// <param name="LeastA">Lower end of the 5 to 95 % band, in amperes.</param>
/// <param name="MostA">Upper end, in amperes.</param>
/// <param name="FactorBeyond">How far the resistance lies beyond what is known, as a factor; 1 inside.</param>
/// <param name="HasEnded">True where the law does not hold any more: under its least current.</param>
/// <param name="Words">Empty, or what to bear in mind.</param>
public sealed record BoardCurrent(
    double Ohm,
    double CurrentA,
    double LeastA,
    double MostA,
    double FactorBeyond,
    bool HasEnded,
    string Words
)
{
    /// <summary>True where the law is used beyond its known points.</summary>
    public bool IsExtrapolated => FactorBeyond > 1.0000001;
}
