namespace Lampwright.Heat.Grid;

/// <summary>A base plate, with or without straight fins below it, as the grid solver is told.</summary>
/// <remarks>
/// Frame: x across the fins from 0 to <see cref="AcrossM"/>, y along them from 0 to <see cref="AlongM"/>, the sources on the top face.
/// Everything is told as rises over the ambient, so the ambient itself is not needed.
/// </remarks>
public sealed record GridSpec
{
    /// <summary>Side of the base across the fins, m, above 0.</summary>
    public required double AcrossM { get; init; }

    /// <summary>Side of the base along the fins, m, above 0.</summary>
    public required double AlongM { get; init; }

    /// <summary>Thickness of the base, m, above 0.</summary>
    public required double BaseThicknessM { get; init; }

    /// <summary>Conductivity of the base, W/(m·K), above 0.</summary>
    public required double ConductivityWPerMK { get; init; }

    /// <summary>Conductivity of the fins, W/(m·K), above 0; that of the base where null.</summary>
    public double? FinConductivityWPerMK { get; init; }

    /// <summary>Fins on the lower face, from x = 0 on, none overlapping; none for a plain plate.</summary>
    public IReadOnlyList<GridFin> Fins { get; init; } = [];

    /// <summary>Height of the fins below the base, m; above 0 where there are fins.</summary>
    public double FinHeightM { get; init; }

    /// <summary>Film coefficients on the faces.</summary>
    public required GridFilms Films { get; init; }

    /// <summary>Sources on the top face, at least one, inside it.</summary>
    public required IReadOnlyList<GridSource> Sources { get; init; }

    /// <summary>Size of a cell that is aimed at, m, above 0. Every face of the shape falls on a face of a cell, so cells come out near it.</summary>
    public double CellM { get; init; } = 1e-3;

    /// <summary>Heat of all sources, W.</summary>
    public double PowerW => Sources.Sum(s => s.PowerW);

    /// <summary>Fins of one thickness at one pitch, the first from x = <paramref name="fromM"/> on, as many as fit.</summary>
    /// <param name="acrossM">Side of the base across the fins, m.</param>
    /// <param name="thicknessM">Thickness of a fin, m.</param>
    /// <param name="pitchM">From one fin to the next, m.</param>
    /// <param name="fromM">Where the first begins, m.</param>
    public static IReadOnlyList<GridFin> EvenFins(double acrossM, double thicknessM, double pitchM, double fromM = 0)
    {
        Guard.Positive(acrossM);
        Guard.Positive(thicknessM);
        Guard.InRange(pitchM, thicknessM, double.MaxValue);
        Guard.InRange(fromM, 0, acrossM);
        List<GridFin> fins = [];
        while (fromM + fins.Count * pitchM + thicknessM <= acrossM * (1 + 1e-9))
        {
            fins.Add(new(fromM + fins.Count * pitchM, thicknessM));
        }

        return fins;
    }
}

/// <summary>A straight fin that runs along the whole base.</summary>
/// <param name="FromM">Where it begins, m from the edge x = 0.</param>
/// <param name="ThicknessM">Its thickness, m, above 0.</param>
public sealed record GridFin(double FromM, double ThicknessM);

/// <summary>A rectangle on the top face through which heat enters evenly.</summary>
/// <param name="CentreAcrossM">Centre, m from the edge x = 0.</param>
/// <param name="CentreAlongM">Centre, m from the edge y = 0.</param>
/// <param name="WidthM">Size across the fins, m, above 0.</param>
/// <param name="DepthM">Size along the fins, m, above 0.</param>
/// <param name="PowerW">Heat that enters, W, not below 0.</param>
public sealed record GridSource(double CentreAcrossM, double CentreAlongM, double WidthM, double DepthM, double PowerW);

/// <summary>Film coefficients, W/(m²·K), from 0 (no heat passes) on.</summary>
public sealed record GridFilms
{
    /// <summary>Lower face of the base: all of it on a plain plate, between the fins on a sink.</summary>
    public double BelowWPerM2K { get; init; }

    /// <summary>Faces of fins that look into a gap.</summary>
    public double FinSidesWPerM2K { get; init; }

    /// <summary>Tips of the fins.</summary>
    public double FinTipsWPerM2K { get; init; }

    /// <summary>Top face, under the sources too.</summary>
    public double AboveWPerM2K { get; init; }

    /// <summary>Outer faces at x = 0 and x = across, of the base and of a fin that ends flush with it.</summary>
    public double AcrossEdgesWPerM2K { get; init; }

    /// <summary>Outer faces at y = 0 and y = along, of the base and of the fins.</summary>
    public double AlongEdgesWPerM2K { get; init; }
}
