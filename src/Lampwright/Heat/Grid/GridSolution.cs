namespace Lampwright.Heat.Grid;

/// <summary>Rises over the ambient that a grid found, K.</summary>
public sealed record GridSolution
{
    private readonly GridSurface surface;

    internal GridSolution(GridSurface surface) => this.surface = surface;

    /// <summary>Greatest rise, K: on the top face, within a source.</summary>
    public required double MaxRiseK { get; init; }

    /// <summary>Where it is, m from the edge x = 0.</summary>
    public required double MaxAcrossM { get; init; }

    /// <summary>Where it is, m from the edge y = 0.</summary>
    public required double MaxAlongM { get; init; }

    /// <summary>Rises at the sources, in their order.</summary>
    public required IReadOnlyList<GridSourceRise> Sources { get; init; }

    /// <summary>Cells of metal.</summary>
    public required long Cells { get; init; }

    /// <summary>Iterations that were needed.</summary>
    public required int Iterations { get; init; }

    /// <summary>What is left unbalanced, as part of what enters (root of squares over cells).</summary>
    public required double Residual { get; init; }

    /// <summary>Heat of the sources, W.</summary>
    public required double PowerW { get; init; }

    /// <summary>Heat that leaves through the films, W, summed over all faces of cells.</summary>
    public required double HeatOutW { get; init; }

    /// <summary>Heat that does not come out, as part of the power; below 1e-6 by construction.</summary>
    public double BalanceError => (PowerW - HeatOutW) / PowerW;

    /// <summary>Grids that were used, finest first: cells across, down, along.</summary>
    public required IReadOnlyList<(int Across, int Down, int Along)> Grids { get; init; }

    /// <summary>The sections asked for.</summary>
    public required IReadOnlyList<GridSection> Sections { get; init; }

    /// <summary>Rise of a point of the top face, K: linear between cells.</summary>
    /// <param name="acrossM">m from the edge x = 0, within the base.</param>
    /// <param name="alongM">m from the edge y = 0, within the base.</param>
    public double RiseAt(double acrossM, double alongM) => surface.RiseAt(acrossM, alongM);

    /// <summary>Mean rise over a rectangle of the top face, K.</summary>
    /// <param name="area">The rectangle, within the base; its share is not used.</param>
    public double MeanRise(Footprint area)
    {
        ArgumentNullException.ThrowIfNull(area);
        return surface.Mean(area.CentreAcrossM, area.CentreAlongM, area.WidthM, area.DepthM);
    }
}

/// <summary>Rises at one source.</summary>
/// <param name="MeanK">Mean over the source, K.</param>
/// <param name="CentreK">At its centre, K.</param>
public sealed record GridSourceRise(double MeanK, double CentreK);

/// <summary>A section through a sink, across its fins.</summary>
/// <param name="AcrossM">Edges of the cells across, m, one more than cells.</param>
/// <param name="DownM">Edges of the cells below the top face, m, one more than cells.</param>
/// <param name="RisesK">Rises of the cells, K, NaN in the air; row by row from the top, as many as cells across in each.</param>
public sealed record GridSection(
    IReadOnlyList<double> AcrossM,
    IReadOnlyList<double> DownM,
    IReadOnlyList<double> RisesK
);
