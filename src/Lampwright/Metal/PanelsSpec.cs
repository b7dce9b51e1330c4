namespace Lampwright.Metal;

/// <summary>A rectangular funnel of four flat trapezoids. Metres.</summary>
/// <param name="Name">Name of the part, for example <c>funnel</c>; the panels are called <c>bottom right top left</c>.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="Small">Small opening: width along x, height along y.</param>
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
);
