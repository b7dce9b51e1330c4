namespace Lampwright.Heat.Grid;

/// <summary>Heat that turns round the inner edge at a fin's root: how much more passes than between even cells.</summary>
/// <remarks>
/// <para>Metal fills three quarters round the edge, so the temperature there goes as r^⅔·cos(⅔θ), θ from the free face of the base, and its gradient is
/// not bounded. A difference between middles of cells takes that flow too small, by 2^⅓ with square cells. The factor makes both faces that meet
/// at the edge exact for it. Without it the greatest rise of a finned sink falls with less than the square of the cell.</para>
/// Validity: free faces nearly without heat over a cell (h·cell/k much below 1), the same metal on both sides of the root.
/// Source: singular solution at a re-entrant corner, Strang and Fix, An Analysis of the Finite Element Method, 1973, ch. 8 (form from memory; the factor is
/// derived here). Checked by: refinement of a finned sink, solver (CalculiX).
/// </remarks>
internal static class FinRoot
{
    /// <summary>Factor on the link between the cell of the base over the gap and that over the fin.</summary>
    /// <param name="gapCell">Width of the cell over the gap, m.</param>
    /// <param name="finCell">Width of the cell over the fin, m.</param>
    /// <param name="baseCell">Height of both, m.</param>
    internal static double Across(double gapCell, double finCell, double baseCell)
    {
        var even = baseCell / ((gapCell + finCell) / 2);
        return Factor(baseCell, even * (Rise(-gapCell / 2, baseCell / 2) - Rise(finCell / 2, baseCell / 2)));
    }

    /// <summary>Factor on the link between the cell of the base over the fin and the fin's first cell.</summary>
    /// <param name="finCell">Width of both, m.</param>
    /// <param name="baseCell">Height of the base's cell, m.</param>
    /// <param name="firstCell">Height of the fin's cell, m.</param>
    internal static double Down(double finCell, double baseCell, double firstCell)
    {
        var even = finCell / ((baseCell + firstCell) / 2);
        return Factor(finCell, even * (Rise(finCell / 2, baseCell / 2) - Rise(finCell / 2, -firstCell / 2)));
    }

    /// <summary>Flow through a face that begins at the edge over what the difference of two cells gives; both faces lie where sin(⅔θ) is the same.</summary>
    private static double Factor(double face, double difference) =>
        Math.Clamp(Math.Sin(Math.PI / 3) * Math.Pow(face, 2.0 / 3) / difference, 1, 1.6);

    /// <summary>r^⅔·cos(⅔θ) at x towards the fin and z upward from the edge.</summary>
    private static double Rise(double x, double z)
    {
        var angle = Math.Atan2(z, -x);
        return Math.Pow(x * x + z * z, 1.0 / 3) * Math.Cos(2.0 / 3 * (angle < 0 ? angle + 2 * Math.PI : angle));
    }
}
