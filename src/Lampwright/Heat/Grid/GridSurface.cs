namespace Lampwright.Heat.Grid;

/// <summary>The top face above the cells, and sections, from rises of the cells.</summary>
/// <remarks>
/// A cell knows the rise of its middle. The face lies half a cell above; its rise follows from a parabola that has the cell's flux at its
/// upper and lower faces: T_s = T + dz/(8k)·(3·q_top + q_bottom), of second order like the cells.
/// </remarks>
internal sealed class GridSurface
{
    private readonly GridLevel grid;
    private readonly GridSpec spec;
    private readonly double[] face;

    internal GridSurface(GridSpec spec, GridModel model, double[] x, Dictionary<int, double[]> heat)
    {
        (this.spec, grid) = (spec, model.Grid);
        var (across, along) = (grid.Across, grid.Along);
        face = new double[across.Count * along.Count];
        var dz = grid.Down.Sizes[0];
        var perFlux = dz / (8 * spec.ConductivityWPerMK);
        for (var i = 0; i < across.Count; i++)
        {
            var row = grid.RowAt(i, 0);
            var r = grid.Balances[row];
            var area = across.Sizes[i] * along.Sizes[0];
            heat.TryGetValue(row, out var heats);
            int at = Start(row),
                below = Start(r.DownRow);
            for (var j = 0; j < along.Count; j++)
            {
                var own = x[at + j];
                var down = r.Down * (own - x[below + j]) + r.Below * own;
                var enters = (heats?[j] ?? 0) / model.ShareInward;
                face[i * along.Count + j] =
                    (own + perFlux * (3 * enters + down) / area) / (1 + 3 * perFlux * spec.Films.AboveWPerM2K);
            }
        }
    }

    /// <summary>The greatest rise of the face and where it is: the summit of parabolas through the greatest cell and its neighbours.</summary>
    internal (double RiseK, double AcrossM, double AlongM) Summit()
    {
        var (most, ny) = (0, grid.Along.Count);
        for (var at = 1; at < face.Length; at++)
        {
            most = face[at] > face[most] ? at : most;
        }

        var (i, j) = (most / ny, most % ny);
        double Cell(int a, int b) => face[Math.Clamp(a, 0, grid.Across.Count - 1) * ny + Math.Clamp(b, 0, ny - 1)];
        var even =
            i > 0
            && i < grid.Across.Count - 1
            && Math.Abs(grid.Across.Sizes[i - 1] / grid.Across.Sizes[i] - 1) < 1e-9
            && Math.Abs(grid.Across.Sizes[i + 1] / grid.Across.Sizes[i] - 1) < 1e-9;
        var (riseX, offX) = even ? Top(Cell(i - 1, j), face[most], Cell(i + 1, j)) : (0, 0);
        var (riseY, offY) = Top(Cell(i, j - 1), face[most], Cell(i, j + 1));
        return (
            face[most] + riseX + riseY,
            grid.Across.Centres[i] + offX * grid.Across.Sizes[i],
            grid.Along.Centres[j] + offY * grid.Along.Sizes[j]
        );
    }

    internal double RiseAt(double acrossM, double alongM)
    {
        Guard.InRange(acrossM, 0, spec.AcrossM);
        Guard.InRange(alongM, 0, spec.AlongM);
        var (i, u) = Place(grid.Across.Centres, acrossM);
        var (j, v) = Place(grid.Along.Centres, alongM);
        var ny = grid.Along.Count;
        double Cell(int a, int b) => face[Math.Min(a, grid.Across.Count - 1) * ny + Math.Min(b, ny - 1)];
        return (1 - u) * ((1 - v) * Cell(i, j) + v * Cell(i, j + 1))
            + u * ((1 - v) * Cell(i + 1, j) + v * Cell(i + 1, j + 1));
    }

    internal double Mean(double centreAcross, double centreAlong, double width, double depth)
    {
        var (fromX, toX) = GridModel.Ends(centreAcross, Guard.Positive(width), spec.AcrossM);
        var (fromY, toY) = GridModel.Ends(centreAlong, Guard.Positive(depth), spec.AlongM);
        var (sum, area) = (0.0, 0.0);
        for (var i = 0; i < grid.Across.Count; i++)
        {
            var wide = grid.Across.Overlap(i, fromX, toX);
            for (var j = 0; wide > 0 && j < grid.Along.Count; j++)
            {
                var part = wide * grid.Along.Overlap(j, fromY, toY);
                (sum, area) = (sum + part * face[i * grid.Along.Count + j], area + part);
            }
        }

        return sum / area;
    }

    internal GridSection Section(double[] x, double alongM)
    {
        Guard.InRange(alongM, 0, spec.AlongM);
        var (j, v) = Place(grid.Along.Centres, alongM);
        var next = Math.Min(j + 1, grid.Along.Count - 1);
        var rises = new double[grid.Across.Count * grid.Down.Count];
        for (var k = 0; k < grid.Down.Count; k++)
        {
            for (var i = 0; i < grid.Across.Count; i++)
            {
                var row = grid.RowAt(i, k);
                rises[k * grid.Across.Count + i] =
                    row < 0 ? double.NaN : (1 - v) * x[Start(row) + j] + v * x[Start(row) + next];
            }
        }

        return new GridSection(Edges(grid.Across), Edges(grid.Down), rises);
    }

    private static double[] Edges(GridAxis axis)
    {
        var edges = new double[axis.Count + 1];
        for (var i = 0; i < axis.Count; i++)
        {
            edges[i + 1] = edges[i] + axis.Sizes[i];
        }

        return edges;
    }

    /// <summary>Cell below a place and the part of the way to the next middle; level beyond the outermost middles.</summary>
    private static (int Cell, double Part) Place(double[] centres, double at)
    {
        var found = Array.BinarySearch(centres, at);
        var upper = found >= 0 ? found : ~found;
        return found >= 0 ? (found, 0)
            : upper == 0 ? (0, 0)
            : upper == centres.Length ? (centres.Length - 1, 0)
            : (upper - 1, (at - centres[upper - 1]) / (centres[upper] - centres[upper - 1]));
    }

    /// <summary>How far the summit of the parabola through three even points lies above the middle one, and where.</summary>
    private static (double Rise, double Offset) Top(double before, double middle, double after)
    {
        var bend = before + after - 2 * middle;
        var slope = (after - before) / 2;
        return bend < 0 ? (-slope * slope / (2 * bend), -slope / bend) : (0, 0);
    }

    private int Start(int row) => GridLevel.Pad + row * grid.Pitch;
}
