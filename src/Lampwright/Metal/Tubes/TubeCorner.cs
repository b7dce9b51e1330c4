namespace Lampwright.Metal;

/// <summary>Outside corner radius of cold-formed square and rectangular tube.</summary>
/// <remarks>
/// As multiples of the wall: 1.6 to 2.4 up to 6 mm, 2.0 to 3.0 up to 10 mm, 2.4 to 3.6 beyond; sections are computed with the middle.
/// <para><b>Validity</b>: welded cold-formed hollow sections of steel. Precision tube and drawn aluminium have smaller radii, which were
/// not read: measure one and give it. <b>Source</b>: EN 10219-2:2006, table 3 (second-hand). <b>Checked by</b>: <i>printed</i>.</para>
/// </remarks>
public static class TubeCorner
{
    /// <summary>Least and largest outside corner radius, metres.</summary>
    /// <param name="wallM">Wall, metres, above 0.</param>
    public static (double LeastM, double MostM) Range(double wallM)
    {
        Guard.Positive(wallM);
        var (least, most) =
            wallM <= 0.006 ? (1.6, 2.4)
            : wallM <= 0.010 ? (2.0, 3.0)
            : (2.4, 3.6);
        return (least * wallM, most * wallM);
    }
}
