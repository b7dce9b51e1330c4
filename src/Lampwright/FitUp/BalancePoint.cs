using Lampwright.Geometry;

namespace Lampwright.FitUp;

/// <summary>Mass of several bodies and the point about which they balance.</summary>
/// <remarks>A weighted mean, exact for rigid bodies; runs per draw without allocation.</remarks>
public static class BalancePoint
{
    /// <summary>Total mass in kg and the balance point in the frame of the centres, metres; the zero point for no mass.</summary>
    /// <param name="massesKg">Masses, kg, each 0 or more.</param>
    /// <param name="centres">Placed centres of mass, metres, in the same order.</param>
    /// <exception cref="ArgumentException">The two differ in count.</exception>
    public static (double MassKg, Vec3 Centre) Of(ReadOnlySpan<double> massesKg, ReadOnlySpan<Vec3> centres)
    {
        if (massesKg.Length != centres.Length)
        {
            throw new ArgumentException(
                $"There are {massesKg.Length} masses and {centres.Length} centres.",
                nameof(centres)
            );
        }

        var (mass, x, y, z) = (0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < massesKg.Length; i++)
        {
            var m = massesKg[i];
            mass += m;
            x += m * centres[i].X;
            y += m * centres[i].Y;
            z += m * centres[i].Z;
        }

        return mass > 0 ? (mass, new(x / mass, y / mass, z / mass)) : (0, default);
    }
}
