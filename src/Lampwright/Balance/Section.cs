namespace Lampwright.Balance;

/// <summary>What a cross-section does in bending.</summary>
/// <param name="AreaM2">Area, square metres.</param>
/// <param name="SecondMomentM4">Second moment of area about the horizontal axis through the centroid, m⁴.</param>
/// <param name="ModulusM3">Least section modulus about that axis, m³.</param>
public readonly record struct Section(double AreaM2, double SecondMomentM4, double ModulusM3)
{
    /// <summary>A solid bar.</summary>
    /// <param name="widthM">Width, metres, above 0.</param>
    /// <param name="heightM">Height in the plane of bending, metres, above 0.</param>
    public static Section Bar(double widthM, double heightM) =>
        new(
            Guard.Positive(widthM) * Guard.Positive(heightM),
            widthM * heightM * heightM * heightM / 12,
            widthM * heightM * heightM / 6
        );

    /// <summary>A rectangular tube; with a wall of half the width or height a solid bar.</summary>
    /// <param name="widthM">Outer width, metres, above 0.</param>
    /// <param name="heightM">Outer height in the plane of bending, metres, above 0.</param>
    /// <param name="wallM">Wall, metres, above 0.</param>
    public static Section Tube(double widthM, double heightM, double wallM)
    {
        var outer = Bar(widthM, heightM);
        var (w, h) = (widthM - (2 * Guard.Positive(wallM)), heightM - (2 * wallM));
        if (w <= 0 || h <= 0)
        {
            return outer;
        }

        var second = outer.SecondMomentM4 - (w * h * h * h / 12);
        return new(outer.AreaM2 - (w * h), second, second / (heightM / 2));
    }

    /// <summary>A round tube; with a wall of half the diameter a solid rod.</summary>
    /// <param name="diameterM">Outer diameter, metres, above 0.</param>
    /// <param name="wallM">Wall, metres, above 0.</param>
    public static Section RoundTube(double diameterM, double wallM)
    {
        var inner = Math.Max(Guard.Positive(diameterM) - (2 * Guard.Positive(wallM)), 0);
        var second = Math.PI / 64 * ((diameterM * diameterM * diameterM * diameterM) - (inner * inner * inner * inner));
        return new(Math.PI / 4 * ((diameterM * diameterM) - (inner * inner)), second, second / (diameterM / 2));
    }
}
