namespace Lampwright.Metal;

/// <summary>Open share of perforated fields.</summary>
/// <remarks><b>Validity</b>: endless field of round holes d ≤ p. <b>Source</b>: geometry; DIN 24041. <b>Checked by</b>: printed (M.Q1, M.Q2).</remarks>
public static class Perforation
{
    /// <summary>Open area at 60° stagger: π/(2√3) (d/p)².</summary>
    public static double StaggeredShare(double diameter, double pitch) =>
        Math.PI / (2 * Math.Sqrt(3)) * Math.Pow(diameter / Guard.Positive(pitch), 2);

    /// <summary>Open area on a square grid: π/4 (d/p)².</summary>
    public static double SquareShare(double diameter, double pitch) =>
        Math.PI / 4 * Math.Pow(diameter / Guard.Positive(pitch), 2);

    /// <summary>Holes per area at 60° stagger: 2/(√3 p²).</summary>
    public static double StaggeredHolesPerArea(double pitch) => 2 / (Math.Sqrt(3) * pitch * pitch);
}
