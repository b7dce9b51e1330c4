namespace Lampwright.Metal;

/// <summary>A funnel of four, six or eight flat panels. Metres.</summary>
/// <param name="Name">Name of the part, for example <c>funnel</c>; its panels are called as in <see cref="FunnelOutline"/>.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="Small">Small opening: across the flats along x and along y (<see cref="FunnelOutline"/>).</param>
/// <param name="Large">Large opening.</param>
/// <param name="DepthM">From opening to opening.</param>
/// <param name="Side">Whether the openings are measured inside or outside the sheet.</param>
public sealed record PanelsSpec(
    string Name,
    SheetSpec Sheet,
    (double WidthM, double HeightM) Small,
    (double WidthM, double HeightM) Large,
    double DepthM,
    DimensionSide Side = DimensionSide.Inside
)
{
    /// <summary>How many panels: 4, 6 or 8.</summary>
    public int Sides { get; init; } = 4;

    /// <summary>The brake that bends the lips.</summary>
    public BrakeSpec Brake { get; init; } = new();

    /// <summary>Rules of thumb that the checks use.</summary>
    public MetalLimits Limits { get; init; } = new();

    /// <summary>Width of a lip at the end of each panel, which lies under its neighbour for the weld, metres; null leaves the corners open for an outside weld.</summary>
    public double? LipM { get; init; }
}
