namespace Lampwright.Metal;

/// <summary>Section of a square or rectangular tube with round corners: metal, second moments, length round it.</summary>
/// <param name="WidthM">Outside width, metres.</param>
/// <param name="HeightM">Outside height, metres.</param>
/// <param name="WallM">Wall, metres.</param>
/// <param name="CornerM">Outside corner radius, metres; inside it is less by the wall, 0 at least.</param>
/// <remarks>
/// A rectangle with round corners less the one inside it. <b>Validity</b>: wall under half of the smaller side, corner up to half of it.
/// <para><b>Source</b>: geometry; EN 10219-2:2006 computes its tables with outside 2.0 T and inside 1.0 T up to T = 6 mm.
/// <b>Checked by</b>: <i>printed</i> (rows of EN 10219-2, from memory), <i>invariant</i>.</para>
/// </remarks>
public sealed record TubeSection(double WidthM, double HeightM, double WallM, double CornerM)
{
    /// <summary>Area of metal, m².</summary>
    public double AreaM2 => Filled(WidthM, HeightM, CornerM) - Filled(InnerWidthM, InnerHeightM, InnerCornerM);

    /// <summary>Second moment of area against bending across the width (distances along the width), m⁴.</summary>
    public double AcrossWidthM4 => Second(HeightM, WidthM, CornerM) - Second(InnerHeightM, InnerWidthM, InnerCornerM);

    /// <summary>Second moment of area against bending across the height, m⁴.</summary>
    public double AcrossHeightM4 => Second(WidthM, HeightM, CornerM) - Second(InnerWidthM, InnerHeightM, InnerCornerM);

    /// <summary>Length round the outside, metres: that of the wrap.</summary>
    public double RoundM => (2 * (WidthM + HeightM)) - ((8 - (2 * Math.PI)) * CornerM);

    private double InnerWidthM => WidthM - (2 * WallM);

    private double InnerHeightM => HeightM - (2 * WallM);

    private double InnerCornerM => Math.Max(0, CornerM - WallM);

    private static double Filled(double w, double h, double r) => (w * h) - ((4 - Math.PI) * r * r);

    /// <summary>Of a rectangle of width w and height h about the middle of h; the corners lack a square less a quarter circle each.</summary>
    private static double Second(double w, double h, double r)
    {
        var c = (h / 2) - r;
        var square = r * (Math.Pow(h / 2, 3) - Math.Pow(c, 3)) / 3;
        var quarter = (c * c * Math.PI * r * r / 4) + (2 * c * r * r * r / 3) + (Math.PI * Math.Pow(r, 4) / 16);
        return (w * h * h * h / 12) - (4 * (square - quarter));
    }
}
