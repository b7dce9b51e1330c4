namespace Lampwright.Steps.ChainProof;

/// <summary>The current that the parts of a position may carry, squared.</summary>
/// <remarks>
/// At stated values I² = P/R, with the shares of a pair. In the worst corner a part is as great as tolerance, air and its own heat at its
/// limit (rise times allowed power) can make it: I² = P/Rhigh for one part and for each of two in series. Of two side by side a carries
/// I²·a·b²/(a + b)², most for b at its greatest and a as near to that as its range lets it come.
/// <b>Source</b>: Ohm's law, derived. <b>Checked by</b>: invariant (a grid over the ranges of both parts).
/// </remarks>
internal static class PartBears
{
    /// <summary>Square of the greatest current, A².</summary>
    public static double Of(ChainSearchSpec spec, PositionParts parts)
    {
        if (!spec.LimitsAtCorner)
        {
            return parts.AllowedW / parts.Ohm;
        }

        var (a, b) = (parts.First, parts.Second);
        return b is null ? a.AllowedW / Ends(spec, a).Most
            : parts.Joint == Joint.Series ? Math.Min(a.AllowedW / Ends(spec, a).Most, b.AllowedW / Ends(spec, b).Most)
            : Math.Min(Beside(spec, a, b), Beside(spec, b, a));
    }

    private static double Beside(ChainSearchSpec spec, StockPart part, StockPart other)
    {
        var ((least, most), y) = (Ends(spec, part), Ends(spec, other).Most);
        var x = Math.Clamp(y, least, most);
        return part.AllowedW * (x + y) * (x + y) / (x * y * y);
    }

    private static (double Least, double Most) Ends(ChainSearchSpec spec, StockPart part)
    {
        var corners = Corners.Of(spec, new(Joint.Single, part));
        var drift = part.RisePerWattK * part.AllowedW * part.TempcoPerK;
        var (down, up) = spec.TempcoIsLimit
            ? (-Math.Abs(drift), Math.Abs(drift))
            : (Math.Min(0, drift), Math.Max(0, drift));

        // The bound keeps absurd inputs from turning a resistance negative.
        return (corners.Low * Math.Max(0.5, 1 + down), corners.High * Math.Min(2, 1 + up));
    }
}
