namespace Lampwright.Heat.Grid;

/// <summary>A shape laid out in cells, ready to be solved for any heat of its sources.</summary>
internal sealed class GridModel : IDisposable
{
    private readonly GridSpec spec;

    private GridModel(GridSpec spec, GridLevel grid)
    {
        this.spec = spec;
        Grid = grid;
        Cycle = new GridCycle(spec, grid);
    }

    internal GridLevel Grid { get; }

    internal GridCycle Cycle { get; }

    /// <summary>Share of a source's heat that goes into the metal; the rest leaves from the face at once where that has a film.</summary>
    internal double ShareInward
    {
        get
        {
            var inward = 2 * spec.ConductivityWPerMK / Grid.Down.Sizes[0];
            return inward / (inward + spec.Films.AboveWPerM2K);
        }
    }

    /// <summary>Gives the fields back.</summary>
    public void Dispose() => Cycle.Dispose();

    /// <summary>Lays the cells, or tells why not.</summary>
    internal static (GridModel? Model, GridFailure? Failure) Of(GridSpec spec, GridEffort effort)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.InRange(effort.Residual, 1e-12, 1e-4);
        Guard.InRange(effort.MostIterations, 1, 100_000);
        if (GridChecks.Trouble(spec) is { } reason)
        {
            return (null, new(GridTrouble.IllStated, reason, 0, 0, double.NaN, double.NaN));
        }

        var (lengths, fins) = Stretches(spec);
        var heights = spec.Fins.Count > 0 ? new[] { spec.BaseThicknessM, spec.FinHeightM } : [spec.BaseThicknessM];
        var most = effort.MostCells;

        // Counted roughly before anything is laid: a cell a thousand times too small must not take all memory.
        var metal =
            spec.AcrossM * spec.AlongM * spec.BaseThicknessM
            + spec.Fins.Sum(f => f.ThicknessM) * spec.AlongM * spec.FinHeightM;
        var guess = metal / Math.Pow(spec.CellM, 3);
        if (guess > 1.1 * most || spec.AlongM / spec.CellM > most || spec.AcrossM / spec.CellM > most)
        {
            return (null, TooMany(guess, most));
        }

        var grid = new GridLevel(
            spec,
            fins,
            GridAxis.Of(lengths, spec.CellM),
            GridAxis.Of(heights, spec.CellM),
            GridAxis.Even(spec.AlongM, spec.CellM)
        );
        return grid.Cells > most ? (null, TooMany(grid.Cells, most)) : (new GridModel(spec, grid), null);
    }

    /// <summary>Heat that enters the cells of the top layer, W, by row, of sources with the heat given.</summary>
    internal Dictionary<int, double[]> Heat(IReadOnlyList<double> powersW)
    {
        var rows = new Dictionary<int, double[]>();
        for (var s = 0; s < spec.Sources.Count; s++)
        {
            var source = spec.Sources[s];
            if (!(powersW[s] > 0))
            {
                continue;
            }

            var (fromX, toX) = Ends(source.CentreAcrossM, source.WidthM, spec.AcrossM);
            var (fromY, toY) = Ends(source.CentreAlongM, source.DepthM, spec.AlongM);
            var density = ShareInward * powersW[s] / ((toX - fromX) * (toY - fromY));
            for (var i = 0; i < Grid.Across.Count; i++)
            {
                var wide = Grid.Across.Overlap(i, fromX, toX);
                if (!(wide > 0))
                {
                    continue;
                }

                var row = Grid.RowAt(i, 0);
                if (!rows.TryGetValue(row, out var heat))
                {
                    rows.Add(row, heat = new double[Grid.Along.Count]);
                }

                for (var j = 0; j < heat.Length; j++)
                {
                    heat[j] += density * wide * Grid.Along.Overlap(j, fromY, toY);
                }
            }
        }

        return rows;
    }

    /// <summary>Where a source begins and ends, rounding beyond the edge cut off.</summary>
    internal static (double From, double To) Ends(double centre, double size, double side) =>
        (Math.Max(0, centre - size / 2), Math.Min(side, centre + size / 2));

    private static GridFailure TooMany(double cells, long most) =>
        new(
            GridTrouble.TooManyCells,
            string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"The cell asked for makes about {cells:0} cells; {most} are computed at most."
            ),
            (long)Math.Min(cells, 1e18),
            0,
            double.NaN,
            double.NaN
        );

    private static (List<double> Lengths, bool[] Fins) Stretches(GridSpec spec)
    {
        List<double> lengths = [];
        List<bool> fins = [];
        var at = 0.0;
        void Add(double to, bool fin)
        {
            if (to - at > 1e-9)
            {
                lengths.Add(to - at);
                fins.Add(fin);
                at = to;
            }
        }

        foreach (var fin in spec.Fins.OrderBy(f => f.FromM))
        {
            Add(fin.FromM, fin: false);
            Add(Math.Min(fin.FromM + fin.ThicknessM, spec.AcrossM), fin: true);
        }

        Add(spec.AcrossM, fin: false);
        return (lengths, [.. fins]);
    }
}
