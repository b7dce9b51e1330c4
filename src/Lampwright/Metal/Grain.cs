namespace Lampwright.Metal;

/// <summary>How a bend lies to the rolling direction of the sheet.</summary>
public static class Grain
{
    /// <summary>True when a bend runs along the rolling direction (within 45°), where sheet cracks sooner; false when not known.</summary>
    /// <param name="bend">The bend on the blank.</param>
    /// <param name="grainAlongX">Rolling direction along x of the blank (true), along its y (false), not known (null).</param>
    public static bool IsAlong(BlankBend bend, bool? grainAlongX)
    {
        ArgumentNullException.ThrowIfNull(bend);
        var way = bend.CentreLine.B - bend.CentreLine.A;
        return grainAlongX is { } x && (x ? Math.Abs(way.X) > Math.Abs(way.Y) : Math.Abs(way.Y) > Math.Abs(way.X));
    }
}
