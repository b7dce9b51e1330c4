using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Steps.ChainProof;
using Lampwright.Steps.Faults;
using Lampwright.Web.Show;

namespace Lampwright.Web.Chain;

/// <summary>How the page speaks of chains.</summary>
public static class ChainWords
{
    /// <summary>A resistance as it is bought: as many figures as it has, four at most.</summary>
    public static string Ohm(double ohm)
    {
        var decimals = Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Max(ohm, 1e-9))), 0, 9);
        return Math.Round(ohm, decimals).ToString("0.#########", CultureInfo.InvariantCulture);
    }

    /// <summary>What is soldered in a position.</summary>
    public static string Part(PositionParts part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Second is not { } second ? Ohm(part.First.Ohm)
            : part.Joint == Joint.Series ? $"{Ohm(part.First.Ohm)}+{Ohm(second.Ohm)}"
            : $"{Ohm(part.First.Ohm)}∥{Ohm(second.Ohm)}";
    }

    /// <summary>What tells an offer from every other: its values.</summary>
    public static string Key(ChainOffer offer)
    {
        ArgumentNullException.ThrowIfNull(offer);
        return string.Join(' ', offer.Choice.Found.Parts.Select(p => p.Words));
    }

    /// <summary>An error as a percentage.</summary>
    public static string Percent(double share) => Numbers.Percent(share, 2);

    /// <summary>A count with thin spaces between thousands.</summary>
    public static string Count(long count) => count.ToString("#,##0", Thousands);

    /// <summary>What the error is weighed against.</summary>
    public static string Of(TradeOffAxis axis) =>
        axis switch
        {
            TradeOffAxis.Load => "heat in the parts",
            TradeOffAxis.Switches => "switches",
            _ => "parts",
        };

    /// <summary>Whether two chains have the same values, in whatever order.</summary>
    public static bool AreSame(ChainSearchResult one, ChainSearchResult other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one.Ohms.Order().Select(Ohm).SequenceEqual(other.Ohms.Order().Select(Ohm), StringComparer.Ordinal);
    }

    /// <summary>How the light's own chain stands against the best.</summary>
    public static string Used(ChainAnswer chain, UsedChain used)
    {
        ArgumentNullException.ThrowIfNull(chain);
        ArgumentNullException.ThrowIfNull(used);
        var name = used.IsGiven ? "The chain chosen in the file" : "The chain that the light is computed with";
        return used.Breaks.Length > 0 ? $"{name} is outside of the limits: {used.Breaks}."
            : !chain.Best.Found ? $"{name} has a worst error of {Percent(used.Does.WorstError)}."
            : AreSame(chain.Best, used.Does) ? $"{name} is the best one."
            : $"{name} has a worst error of {Percent(used.Does.WorstError)} against {Percent(chain.Best.WorstError)} of the best.";
    }

    /// <summary>What a closed toggle does in an arrangement.</summary>
    public static string Closed(string arrangement) =>
        arrangement switch
        {
            "parallel branches" => "the toggle that puts its resistor beside the fixed one",
            "selector" => "the position that is chosen",
            _ => "the toggle that by-passes its resistor",
        };

    /// <summary>Whether something survives.</summary>
    public static string Of(Survival survival) =>
        survival switch
        {
            Survival.Yes => "yes",
            Survival.No => "no",
            _ => "not known",
        };

    private static readonly NumberFormatInfo Thousands = new() { NumberGroupSeparator = "\u2009" };
}
