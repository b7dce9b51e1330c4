namespace Lampwright.Heat.Grid;

/// <summary>The balance of every cell of one grid: rows of cells along the fins, all cells of a row alike.</summary>
/// <remarks>
/// <para>The shape is the same in every section across the fins. So one set of coefficients serves a whole row along them, only rows of metal are
/// kept, and the air between fins has no cells at all: nothing is computed there and nothing can leak through.</para>
/// <para>Finite volumes: heat between two cells is area over the sum of their half resistances; a film is in series with half a cell.</para>
/// </remarks>
internal sealed class GridLevel
{
    private readonly int[] rowOf;
    private readonly bool oneMetal;

    internal GridLevel(GridSpec spec, bool[] finStretch, GridAxis across, GridAxis down, GridAxis along)
    {
        (Across, Down, Along) = (across, down, along);
        FinStretch = finStretch;

        // Two metals bend the edge's solution: left as it is, within the accuracy told.
        oneMetal = (spec.FinConductivityWPerMK ?? spec.ConductivityWPerMK) / spec.ConductivityWPerMK is > 0.7 and < 1.4;
        BaseLayers = down.Stretch.Count(s => s == 0);
        rowOf = new int[across.Count * down.Count];
        Array.Fill(rowOf, -1);
        for (var i = 0; i < across.Count; i++)
        {
            for (var k = 0; k < down.Count; k++)
            {
                if (k < BaseLayers || finStretch[across.Stretch[i]])
                {
                    rowOf[i * down.Count + k] = Rows++;
                }
            }
        }

        Places = new (int, int)[Rows];
        for (var at = 0; at < rowOf.Length; at++)
        {
            if (rowOf[at] >= 0)
            {
                Places[rowOf[at]] = (at / down.Count, at % down.Count);
            }
        }

        Balances = [.. Places.Select((p, row) => Balance(spec, row, p.I, p.K))];
        Pitch = Pad + (along.Count + 7) / 8 * 8;
    }

    /// <summary>Cells across the fins.</summary>
    internal GridAxis Across { get; }

    /// <summary>Cells from the top face downward; the first stretch is the base.</summary>
    internal GridAxis Down { get; }

    /// <summary>Cells along the fins.</summary>
    internal GridAxis Along { get; }

    /// <summary>Which stretches across carry a fin.</summary>
    internal bool[] FinStretch { get; }

    /// <summary>Layers of cells in the base.</summary>
    internal int BaseLayers { get; }

    /// <summary>Rows of metal.</summary>
    internal int Rows { get; }

    /// <summary>Place of each row: cell across, layer.</summary>
    internal (int I, int K)[] Places { get; }

    /// <summary>The balance that all cells of a row share.</summary>
    internal RowBalance[] Balances { get; }

    /// <summary>Room before the first cell of a row: its last number is the cell beyond the edge.</summary>
    internal static int Pad => 8;

    /// <summary>Numbers from row to row.</summary>
    internal int Pitch { get; }

    /// <summary>Length of an array that holds all rows; passes may read, never use, a few numbers behind the last.</summary>
    internal int Length => Rows * Pitch + 5 * Pad;

    /// <summary>Cells of metal.</summary>
    internal long Cells => (long)Rows * Along.Count;

    /// <summary>The row at a place, -1 in the air.</summary>
    internal int RowAt(int i, int k) => rowOf[i * Down.Count + k];

    private bool IsFin(int i) => FinStretch[Across.Stretch[i]];

    /// <summary>Factor on the link between two cells of a layer: above 1 in the lowest layer of the base, between a fin and a gap.</summary>
    private double RootAcross(int one, int other, int k)
    {
        if (k != BaseLayers - 1 || !oneMetal || IsFin(one) == IsFin(other))
        {
            return 1;
        }

        var (fin, gap) = IsFin(one) ? (one, other) : (other, one);
        return Shared(fin, FinRoot.Across(Across.Sizes[gap], Across.Sizes[fin], Down.Sizes[k]));
    }

    /// <summary>Factor on the link between two layers: above 1 from the base into a cell at the side of a fin.</summary>
    private double RootDown(int i, int upper) =>
        upper == BaseLayers - 1 && oneMetal && Edges(i) > 0
            ? Shared(i, FinRoot.Down(Across.Sizes[i], Down.Sizes[upper], Down.Sizes[upper + 1]))
            : 1;

    /// <summary>A fin one cell wide has two edges that disturb each other: half of the factor.</summary>
    private double Shared(int fin, double factor) => Edges(fin) == 2 ? (1 + factor) / 2 : factor;

    private int Edges(int i) => (i > 0 && !IsFin(i - 1) ? 1 : 0) + (i + 1 < Across.Count && !IsFin(i + 1) ? 1 : 0);

    private RowBalance Balance(GridSpec spec, int row, int i, int k)
    {
        double Conductivity(int layer) =>
            layer < BaseLayers ? spec.ConductivityWPerMK : spec.FinConductivityWPerMK ?? spec.ConductivityWPerMK;
        double dx = Across.Sizes[i],
            dz = Down.Sizes[k],
            dy = Along.Sizes[0],
            own = Conductivity(k);
        var inBase = k < BaseLayers;
        double Film(double area, double film, double size) => film > 0 ? area / (1 / film + size / 2 / own) : 0;
        (int Row, double Link, double Film) Beside(int other, bool outside)
        {
            var neighbour = outside ? -1 : RowAt(other, k);
            if (neighbour >= 0)
            {
                return (neighbour, RootAcross(i, other, k) * dy * dz / ((dx + Across.Sizes[other]) / 2 / own), 0);
            }

            var film = outside ? spec.Films.AcrossEdgesWPerM2K : spec.Films.FinSidesWPerM2K;
            return (row, 0, Film(dy * dz, film, dx));
        }

        (int Row, double Link) Over(int other)
        {
            var neighbour = other < 0 || other >= Down.Count ? -1 : RowAt(i, other);
            return neighbour >= 0
                ? (
                    neighbour,
                    RootDown(i, Math.Min(k, other))
                        * dx
                        * dy
                        / (dz / 2 / own + Down.Sizes[other] / 2 / Conductivity(other))
                )
                : (row, 0);
        }

        var left = Beside(i - 1, i == 0);
        var right = Beside(i + 1, i == Across.Count - 1);
        var up = Over(k - 1);
        var down = Over(k + 1);
        var above = k == 0 ? Film(dx * dy, spec.Films.AboveWPerM2K, dz) : 0;
        var below = down.Link > 0 ? 0 : Film(dx * dy, inBase ? spec.Films.BelowWPerM2K : spec.Films.FinTipsWPerM2K, dz);
        var end = Film(dx * dz, spec.Films.AlongEdgesWPerM2K, dy);
        var along = Along.Count > 1 ? dx * dz * own / dy : 0;
        var film = left.Film + right.Film + above + below;
        return new RowBalance
        {
            LeftRow = left.Row,
            RightRow = right.Row,
            UpRow = up.Row,
            DownRow = down.Row,
            Left = left.Link,
            Right = right.Link,
            Up = up.Link,
            Down = down.Link,
            Along = along,
            Film = Along.Count > 1 ? film : film + 2 * end,
            Below = below,
            End = Along.Count > 1 ? end : 0,
        };
    }
}

/// <summary>What binds each cell of a row to its neighbours and to the air, W/K.</summary>
internal readonly record struct RowBalance
{
    internal int LeftRow { get; init; }

    internal int RightRow { get; init; }

    internal int UpRow { get; init; }

    internal int DownRow { get; init; }

    internal double Left { get; init; }

    internal double Right { get; init; }

    internal double Up { get; init; }

    internal double Down { get; init; }

    /// <summary>To each neighbour in the row.</summary>
    internal double Along { get; init; }

    /// <summary>To the air, of every cell.</summary>
    internal double Film { get; init; }

    /// <summary>Of that, through the lower face.</summary>
    internal double Below { get; init; }

    /// <summary>To the air, of the first and last cell more.</summary>
    internal double End { get; init; }

    /// <summary>Sum of what leaves a cell per kelvin, the cells beyond the ends counted as if they were there.</summary>
    internal double Diagonal => Left + Right + Up + Down + 2 * Along + Film;

    /// <summary>The cell beyond an end as a part of the last one: 1 where no heat passes the end.</summary>
    internal double Beyond => Along > 0 ? 1 - End / Along : 0;
}
