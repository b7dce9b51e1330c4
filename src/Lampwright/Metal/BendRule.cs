namespace Lampwright.Metal;

/// <summary>Which published method gives the length that a bend uses up.</summary>
public enum BendMethod
{
    /// <summary>Neutral fibre at K times the thickness, K given by the maker.</summary>
    KFactor,

    /// <summary>DIN 6935: k from the ratio of radius and thickness.</summary>
    Din6935,

    /// <summary>Machinery's Handbook, equations 32 to 34: three groups of metals.</summary>
    Handbook,

    /// <summary>The maker's own bent test strips.</summary>
    Strips,
}

/// <summary>The three groups of metals of Machinery's Handbook, equations 32 to 34.</summary>
public enum HandbookMetal
{
    /// <summary>Soft brass and soft copper: 0.55 T + 1.57 R.</summary>
    Soft,

    /// <summary>Half-hard copper and brass, soft steel, aluminium: 0.64 T + 1.57 R.</summary>
    Medium,

    /// <summary>Bronze, hard copper, cold-rolled and spring steel: 0.71 T + 1.57 R.</summary>
    Hard,
}

/// <summary>One test strip: bent once, measured outside, compared with its length before.</summary>
/// <param name="AngleRad">Angle turned from flat, radians, above 0 and at most π.</param>
/// <param name="DeductionM">Sum of the outside legs less the flat length, metres.</param>
public sealed record BendStrip(double AngleRad, double DeductionM)
{
    /// <summary>Standard uncertainty of the deduction from the readings of its three lengths, metres; by default ±0.1 mm in each.</summary>
    public double ReadingM { get; init; } = 0.0001;
}

/// <summary>How the maker wants bends to be allowed for.</summary>
/// <param name="Method">The method.</param>
/// <param name="K">Neutral fibre as a share of the thickness from the inside, 0 to 1; used by <see cref="BendMethod.KFactor"/> only.</param>
/// <param name="Metal">Group of metals; used by <see cref="BendMethod.Handbook"/> only.</param>
/// <param name="Strips">Test strips; used by <see cref="BendMethod.Strips"/> only.</param>
public sealed record BendRule(
    BendMethod Method,
    double K = 0.44,
    HandbookMetal Metal = HandbookMetal.Medium,
    IReadOnlyList<BendStrip>? Strips = null
)
{
    /// <summary>DIN 6935.</summary>
    public static BendRule Din6935 { get; } = new(BendMethod.Din6935);

    /// <summary>A fixed K.</summary>
    public static BendRule WithK(double k) => new(BendMethod.KFactor, k);

    /// <summary>Machinery's Handbook for a group of metals.</summary>
    public static BendRule Handbook(HandbookMetal metal) => new(BendMethod.Handbook, Metal: metal);

    /// <summary>The maker's own strips.</summary>
    public static BendRule FromStrips(params IReadOnlyList<BendStrip> strips) => new(BendMethod.Strips, Strips: strips);
}
