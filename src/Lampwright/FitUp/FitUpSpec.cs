namespace Lampwright.FitUp;

/// <summary>What the station is told: bodies, joints, the body from which the others are placed.</summary>
/// <param name="Fixed">Id of the body that stands still; its frame is that of every placement.</param>
/// <param name="Bodies">All bodies, in the order in which they are shown.</param>
/// <param name="Joints">All joints, in the order of the file.</param>
public sealed record FitUpSpec(string Fixed, IReadOnlyList<BodySpec> Bodies, IReadOnlyList<JointSpec> Joints)
{
    /// <summary>Rules of thumb as numbers.</summary>
    public FitUpLimits Limits { get; init; } = new();
}

/// <summary>Rules of thumb of fitting as numbers; the maker may override each. Metres unless said otherwise.</summary>
/// <remarks>
/// The scatter of a hole is the root mean square of its place along one axis, after punching and drilling. Source of all of them:
/// common practice, no source.
/// </remarks>
public sealed record FitUpLimits
{
    /// <summary>Scatter of a hole punched through a printed template.</summary>
    public double TemplateRmsM { get; init; } = 0.15e-3;

    /// <summary>Scatter of a hole measured and scribed by hand.</summary>
    public double ByHandRmsM { get; init; } = 0.25e-3;

    /// <summary>Scatter of a hole punched through the mating part, against that part's hole.</summary>
    public double CentrePunchedRmsM { get; init; } = 0.12e-3;

    /// <summary>Scatter of two holes drilled in one, against each other.</summary>
    public double DrilledTogetherRmsM { get; init; } = 0.03e-3;

    /// <summary>Scatter of a hole of a bought thing.</summary>
    public double BoughtRmsM { get; init; } = 0.05e-3;

    /// <summary>Miss that a joint without a screw allows.</summary>
    public double WithoutScrewM { get; init; } = 1e-3;

    /// <summary>Miss or gap from which two ways of placing a body are called contradictory.</summary>
    public double ContradictionM { get; init; } = 2e-3;

    /// <summary>Angle between the axes of two patterns from which they are called contradictory, radians.</summary>
    public double ContradictionRad { get; init; } = Math.PI / 180;

    /// <summary>Full threads that a tapped hole should have.</summary>
    public double LeastThreads { get; init; } = 3;

    /// <summary>Length that a screw may stand out before it is in the way, in screw diameters.</summary>
    public double MostOutDiameters { get; init; } = 2.5;
}
