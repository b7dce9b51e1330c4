using Lampwright.Geometry;

namespace Lampwright.Files.Packet.Templates;

/// <summary>How a blank is spread over sheets of paper at full size.</summary>
/// <param name="Paper">The paper as it lies.</param>
/// <param name="Columns">Sheets side by side.</param>
/// <param name="Rows">Sheets above each other.</param>
/// <param name="Start">Point of the blank (mm, y up) at the lower left corner of the lower left window.</param>
/// <remarks>
/// Every sheet has a window that shows its piece of the blank; neighbouring windows share a strip of <see cref="OverlapMm"/>, in the
/// middle of which stand the crosses by which the sheets are laid on each other.
/// </remarks>
internal sealed record TileGrid(Paper Paper, int Columns, int Rows, Vec2 Start)
{
    /// <summary>Width of the strip that neighbours share, mm.</summary>
    public static double OverlapMm { get; } = 12;

    /// <summary>Sheets above which a blank is not printed at full size.</summary>
    public static int MostSheets { get; } = 120;

    // Left of the window stands the upright proof bar, below it the level one with the words; printers leave 6 mm white.
    private const double Edge = 7;
    private const double LeftStrip = 11;
    private const double Footer = 33;
    private const double Air = 3;

    public static double WindowLeft => Edge + LeftStrip;

    public static double WindowTop => Edge;

    public double WindowWidth => Paper.WidthMm - WindowLeft - Edge;

    public double WindowHeight => Paper.HeightMm - WindowTop - Edge - Footer;

    public double FooterTop => WindowTop + WindowHeight;

    public static double EdgeMm => Edge;

    private double StepX => WindowWidth - OverlapMm;

    private double StepY => WindowHeight - OverlapMm;

    public int Sheets => Columns * Rows;

    /// <summary>The grid with the fewest sheets; upright where both ways take as many.</summary>
    public static TileGrid For(double widthMm, double heightMm, Paper paper)
    {
        Guard.Positive(widthMm);
        Guard.Positive(heightMm);
        var upright = On(paper.IsRoll ? Cut(heightMm, WindowTop + Edge + Footer) : paper);
        var lying = On((paper.IsRoll ? Cut(widthMm, WindowLeft + Edge) : paper).OnItsSide);
        return
            lying.Sheets < upright.Sheets
            || (paper.IsRoll && lying.Sheets == upright.Sheets && lying.Paper.WidthMm < upright.Paper.HeightMm)
            ? lying
            : upright;

        // A piece of the roll as long as the blank, and long enough for the longest proof bar.
        Paper Cut(double length, double round) =>
            Paper.Roll(paper.WidthMm, Math.Clamp(length + (2 * Air) + round, 320, Paper.LongestRollMm));

        TileGrid On(Paper lies)
        {
            var one = new TileGrid(lies, 1, 1, default);
            var columns = Count(widthMm, one.StepX);
            var rows = Count(heightMm, one.StepY);
            var spareX = (columns * one.StepX) + OverlapMm - widthMm;
            var spareY = (rows * one.StepY) + OverlapMm - heightMm;
            return new(lies, columns, rows, new(-spareX / 2, -spareY / 2));
        }

        static int Count(double length, double step) =>
            (int)Math.Min(1e4, Math.Max(1, Math.Ceiling((length + (2 * Air) - OverlapMm) / step - 1e-9)));
    }

    /// <summary>Point of the blank (mm) at the lower left corner of a window; rows count from the top.</summary>
    public Vec2 Corner(int row, int column) => Start + new Vec2(column * StepX, (Rows - 1 - row) * StepY);

    /// <summary>Carries a point of the blank (mm, y up) to its place on a sheet (mm, y down).</summary>
    public Vec2 OnSheet(int row, int column, Vec2 point)
    {
        var p = point - Corner(row, column);
        return new(WindowLeft + p.X, WindowTop + WindowHeight - p.Y);
    }

    /// <summary>Points of the blank (mm) at which the crosses of a sheet stand; neighbours have them in common.</summary>
    public IEnumerable<Vec2> Crosses(int row, int column)
    {
        var corner = Corner(row, column);
        var inset = OverlapMm + 15;
        foreach (var x in Seams(column, Columns, corner.X, WindowWidth))
        {
            yield return new(x, corner.Y + inset);
            yield return new(x, corner.Y + WindowHeight - inset);
        }

        foreach (var y in Seams(Rows - 1 - row, Rows, corner.Y, WindowHeight))
        {
            yield return new(corner.X + inset, y);
            yield return new(corner.X + WindowWidth - inset, y);
        }
    }

    /// <summary>Name of a sheet: a letter for the row from the top, a number for the column from the left.</summary>
    public static string Name(int row, int column) =>
        string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{(char)('A' + (row % 26))}{(row < 26 ? "" : "'")}{column + 1}"
        );

    private static IEnumerable<double> Seams(int index, int count, double from, double length)
    {
        if (index > 0)
        {
            yield return from + (OverlapMm / 2);
        }

        if (index + 1 < count)
        {
            yield return from + length - (OverlapMm / 2);
        }
    }
}
