namespace Lampwright.Metal;

/// <summary>Rules of thumb of sheet work as numbers; the maker may override each of them.</summary>
/// <remarks>Multiples are of the thickness T unless said otherwise; R is the inside radius. Source: common practice, no source.</remarks>
public sealed record MetalLimits
{
    /// <summary>Shortest flange, outside, in metres; null takes 4 T + R.</summary>
    public double? LeastFlangeM { get; init; }

    /// <summary>Small hole's edge to the bend tangent, metres; null takes 2 T + R.</summary>
    public double? HoleToBendM { get; init; }

    /// <summary>Large hole's or slot's edge to the bend tangent, metres; null takes 2.5 T + R.</summary>
    public double? LargeHoleToBendM { get; init; }

    /// <summary>A round hole above this many thicknesses counts as large.</summary>
    public double LargeHoleThicknesses { get; init; } = 10;

    /// <summary>Hole's edge to the sheet's edge, metres, good; null takes 2 T.</summary>
    public double? HoleToEdgeM { get; init; }

    /// <summary>Hole's edge to the sheet's edge, metres, at the very least; null takes 1 T.</summary>
    public double? HoleToEdgeLeastM { get; init; }

    /// <summary>Web between two holes, metres; null takes 1 T.</summary>
    public double? WebM { get; init; }

    /// <summary>Smallest hole, metres; null takes 1 T.</summary>
    public double? LeastHoleM { get; init; }

    /// <summary>Least inside radius, metres; null takes the row of DIN 6935.</summary>
    public double? LeastRadiusM { get; init; }

    /// <summary>Smallest hole that a drill held by hand makes without breaking, metres.</summary>
    public double LeastDrillM { get; init; } = 0.0015;

    /// <summary>Narrowest slot or cut-out that a file enters, metres.</summary>
    public double LeastFileM { get; init; } = 0.003;

    /// <summary>Largest hole of a twist drill in a hand drill, metres; above it a step drill is wanted.</summary>
    public double TwistDrillM { get; init; } = 0.013;

    /// <summary>Largest hole of a step drill, metres; above it a hole saw or a file is wanted.</summary>
    public double StepDrillM { get; init; } = 0.040;

    /// <summary>Height of a step of a step drill, metres: thickest sheet that it goes through in one step.</summary>
    public double StepM { get; init; } = 0.004;

    /// <summary>Most holes that one part is computed with.</summary>
    public int MostHoles { get; init; } = 50_000;

    /// <summary>Longest dimension that is believed, metres.</summary>
    public double LongestM { get; init; } = 20;
}
