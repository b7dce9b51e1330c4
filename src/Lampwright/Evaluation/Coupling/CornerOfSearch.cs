using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Limits that a chain must keep when everything is off to its worst side: emitter, driver, parts, switches.</summary>
internal static class CornerOfSearch
{
    /// <summary>The question with the limits of the worst corner.</summary>
    /// <param name="asked">The question.</param>
    /// <param name="steps">What the design says.</param>
    /// <param name="threshold">The driver's threshold: its error moves all currents, and what can hurt the emitter counts it.</param>
    /// <param name="parts">Which emitter, which driver.</param>
    public static ChainSearchSpec WithCorner(
        this ChainSearchSpec asked,
        Design.Steps steps,
        SenseThreshold threshold,
        LightParts parts
    )
    {
        var off = threshold.CornerShare;
        var offset = asked.Driver.OffsetA;

        // The error of the threshold is none of the search's: the limit takes it up instead. A limit that is given with a spread counts at its worse end.
        var emitter = parts.Emitter.CurrentMax is { } most
            ? ((Math.Max(0, most.Nominal - most.HalfWidth) + offset) / (1 + off)) - offset
            : double.PositiveInfinity;
        var dimmest = asked.WantedA.Where(a => a is > 0 and < 1e9).DefaultIfEmpty(0).Min();
        var given = parts.Driver?.Least is { Nominal: > 0 } l && l.Nominal < dimmest ? l : null;
        var brightest = Math.Min(emitter, Driver(asked, parts));
        return asked with
        {
            CornerLimits = true,
            ContactWornOhm = Math.Max(steps.ContactMost.Nominal, steps.ContactTypical.Nominal),
            CornerMostA = brightest is > 0 and < 1e9 ? brightest : null,
            LeastA = given?.Nominal,
            CornerLeastA = given is { } a ? ((a.Nominal + a.HalfWidth + offset) / (1 - off)) - offset : null,
        };
    }

    // A driver bears what its own part on the board makes of it at that part's own end: a chain behind that part only dims. Where the part is
    // chosen anew, the rating holds, with what its label grants.
    private static double Driver(ChainSearchSpec asked, LightParts parts)
    {
        if (parts.Driver?.Rated is not { } rated)
        {
            return double.PositiveInfinity;
        }

        var label = rated.Nominal + Math.Abs(rated.HalfWidth);
        return asked.Fixed is { } stays
            ? Math.Max(label, asked.Driver.CurrentA(Corners(asked, stays) + asked.FloorOhm))
            : label;
    }

    private static double Corners(ChainSearchSpec asked, StockPart part) =>
        part.Ohm * (1 - part.Tolerance) * (1 - (Math.Abs(part.TempcoPerK) * ((asked.AirMostK ?? asked.AirK) - 200)));
}
