namespace Lampwright.Balance;

/// <summary>
/// A cross-section of folded sheet: straight legs and bends of one thickness, bent at right angles or any other, by its mid-line.
/// </summary>
/// <remarks>
/// Starts at the origin along +x; each bend turns left (positive angle) or right. A leg's area and moments are those of its rectangle, a bend's those of
/// its ring sector, exact. <b>Source</b>: integration (line constants of the AISI manual are its thin limit: 1.57 R, 0.637 R, 0.149 R³).
/// <b>Validity</b>: bending about the horizontal axis through the centroid (not the principal one), sheet that does not buckle. <b>Checked by</b>: K.N5, K.N6, K.N8.
/// </remarks>
public sealed class FoldedSection
{
    private readonly double thickness;
    private readonly double innerRadius;
    private double x;
    private double y;
    private double heading;
    private double area;
    private double firstX;
    private double firstY;
    private double secondX; // ∫y² dA about the x axis
    private double least = double.PositiveInfinity;
    private double most = double.NegativeInfinity;

    /// <summary>Begins a section.</summary>
    /// <param name="thicknessM">Thickness of the sheet, metres, above 0.</param>
    /// <param name="innerRadiusM">Inner radius of all bends, metres, 0 or more.</param>
    public FoldedSection(double thicknessM, double innerRadiusM)
    {
        thickness = Guard.Positive(thicknessM);
        innerRadius = Guard.InRange(innerRadiusM, 0, 10);
    }

    /// <summary>Area, square metres.</summary>
    public double AreaM2 => area;

    /// <summary>Centroid from the start of the mid-line, metres.</summary>
    public (double XM, double YM) Centroid => area > 0 ? (firstX / area, firstY / area) : (0, 0);

    /// <summary>Lowest and highest fibre, metres.</summary>
    public (double LeastM, double MostM) Fibres => (least, most);

    /// <summary>The section in bending about the horizontal axis through its centroid.</summary>
    public Section Bending
    {
        get
        {
            var centre = Centroid.YM;
            var second = secondX - (area * centre * centre);
            return new(area, second, second / Math.Max(most - centre, centre - least));
        }
    }

    /// <summary>Adds a straight leg.</summary>
    /// <param name="lengthM">Length of its straight part, metres, above 0.</param>
    public FoldedSection Leg(double lengthM)
    {
        var length = Guard.Positive(lengthM);
        var (sine, cosine) = Math.SinCos(heading);
        var (cx, cy) = (x + (length / 2 * cosine), y + (length / 2 * sine));
        var piece = length * thickness;
        var own = piece / 12 * ((length * length * sine * sine) + (thickness * thickness * cosine * cosine));
        Add(piece, cx, cy, own);
        foreach (var end in (ReadOnlySpan<double>)[0, length])
        {
            var at = y + (end * sine);
            Reach(at - (thickness / 2 * Math.Abs(cosine)), at + (thickness / 2 * Math.Abs(cosine)));
        }

        (x, y) = (x + (length * cosine), y + (length * sine));
        return this;
    }

    /// <summary>Adds a bend.</summary>
    /// <param name="angleRad">Angle turned, radians, left positive, between −π and π and not 0.</param>
    public FoldedSection Bend(double angleRad)
    {
        var turn = Math.Abs(Guard.InRange(angleRad, -Math.PI, Math.PI));
        var side = Math.Sign(angleRad);
        var (inner, outer) = (innerRadius, innerRadius + thickness);
        var middle = innerRadius + (thickness / 2);
        var (sine, cosine) = Math.SinCos(heading);
        var (cx, cy) = (x - (side * middle * sine), y + (side * middle * cosine));
        // The sector from the centre of the bend, symmetric about the direction half way.
        var half = turn / 2;
        var direction = heading - (side * Math.PI / 2) + (side * half);
        var piece = half * ((outer * outer) - (inner * inner));
        var away = 2 * Math.Sin(half) / (3 * half) * (Cube(outer) - Cube(inner)) / ((outer * outer) - (inner * inner));
        var quarter = (Fourth(outer) - Fourth(inner)) / 4;
        var (ds, dc) = Math.SinCos(direction);
        // About the sector's own axes through the bend's centre: along and across its direction.
        var across = quarter * (half - (Math.Sin(turn) / 2));
        var along = quarter * (half + (Math.Sin(turn) / 2));
        var aboutCentre = (along * ds * ds) + (across * dc * dc);
        var own = aboutCentre - (piece * away * away * ds * ds);
        Add(piece, cx + (away * dc), cy + (away * ds), own);
        for (var i = 0; i <= 32; i++)
        {
            var at = Math.Sin(direction - half + (turn * i / 32));
            Reach(cy + (Math.Min(at * outer, at * inner)), cy + (Math.Max(at * outer, at * inner)));
        }

        heading += angleRad;
        var (endSine, endCosine) = Math.SinCos(heading);
        (x, y) = (cx + (side * middle * endSine), cy - (side * middle * endCosine));
        return this;
    }

    private void Add(double piece, double cx, double cy, double own)
    {
        area += piece;
        firstX += piece * cx;
        firstY += piece * cy;
        secondX += own + (piece * cy * cy);
    }

    private void Reach(double low, double high) => (least, most) = (Math.Min(least, low), Math.Max(most, high));

    private static double Cube(double r) => r * r * r;

    private static double Fourth(double r) => r * r * r * r;
}
