using Lampwright.Heat;

namespace Lampwright.References.Heat;

/// <summary>Sheet round a warm patch against printed and limiting values.</summary>
public sealed class SheetFinTests
{
    // Incropera Ex. 3.10, aluminium cylinder with annular fins 6 mm thick and 20 mm long, k 186, h 50 (published, second-hand): 0.9786 by
    // Bessel functions, 0.95 off the chart. The fin as sheet round a patch: both sides together, rim with half a thickness added.
    [Fact]
    public void The_fins_of_a_cylinder_as_printed()
    {
        var (inner, rim) = (0.025, 0.048);
        var patch = Math.PI * inner * inner;
        var rest = Math.PI * ((rim * rim) - (inner * inner));
        var ours = SheetFin.ConductanceWPerK(186, 0.006, patch, rest, 2 * 50);
        Check.Relative("H.FN-03", 0.9786, ours / (2 * 50 * rest), 1e-4, "k 186, t 6 mm, h 50");
    }

    [Fact]
    public void Good_metal_is_even_and_sheet_without_end_is_a_long_fin()
    {
        var even = SheetFin.ConductanceWPerK(1e6, 0.002, 0.005, 0.03, 10);
        Check.Relative("even sheet, h·A", 0.3, even, 1e-3, "k 1e6");

        // A patch of ten metres: its rim is straight, and a straight fin without end passes √(h·k·t) a metre.
        var (along, h) = (50 * 0.001, 10.0);
        var wide = SheetFin.ConductanceWPerK(50, 0.001, Math.PI * 100, 1e4, h);
        Check.Relative("straight fin without end", 2 * Math.PI * 10 * Math.Sqrt(h * along), wide, 5e-3, "r 10 m");
    }

    // A sheet of 300 × 300 mm in a film of 10 W/(m²·K), a thick patch of 70 × 70 mm in its middle, by differences on a plane grid.
    [Theory]
    [InlineData(50, 0.001)]
    [InlineData(50, 0.002)]
    [InlineData(150, 0.0015)]
    public void A_square_sheet_on_the_grid(double conductivity, double thickness)
    {
        const double Sheet = 0.3,
            Patch = 0.07,
            Film = 10;

        var theirs = SquareSheet(conductivity * thickness, Film, Sheet, Patch);
        var ours = SheetFin.ConductanceWPerK(
            conductivity,
            thickness,
            Patch * Patch,
            (Sheet * Sheet) - (Patch * Patch),
            Film
        );
        Check.Relative("square sheet by differences", theirs, ours, 0.05, $"k {conductivity}, t {thickness}");
    }

    // Steady heat from a square patch held at 1 K through a square sheet, cells of 2.5 mm, Gauss and Seidel with over-relaxation.
    private static double SquareSheet(double along, double film, double side, double patch)
    {
        const double Cell = 0.0025;
        var count = (int)Math.Round(side / Cell);
        var (low, high) = ((int)Math.Round((side - patch) / 2 / Cell), (int)Math.Round((side + patch) / 2 / Cell));
        bool Held(int i, int j) => i >= low && i < high && j >= low && j < high;
        var t = new double[count, count];
        for (var pass = 0; pass < 4000; pass++)
        {
            var worst = 0.0;
            for (var i = 0; i < count; i++)
            {
                for (var j = 0; j < count; j++)
                {
                    if (Held(i, j))
                    {
                        t[i, j] = 1;
                        continue;
                    }

                    var (sum, weight) = (0.0, film * Cell * Cell / along);
                    foreach (var (a, b) in new[] { (i - 1, j), (i + 1, j), (i, j - 1), (i, j + 1) })
                    {
                        if (a >= 0 && b >= 0 && a < count && b < count)
                        {
                            // The patch's edge lies on the face of a cell, half a cell away.
                            var g = Held(a, b) ? 2.0 : 1;
                            sum += g * t[a, b];
                            weight += g;
                        }
                    }

                    var next = t[i, j] + (1.9 * ((sum / weight) - t[i, j]));
                    worst = Math.Max(worst, Math.Abs(next - t[i, j]));
                    t[i, j] = next;
                }
            }

            if (worst < 1e-9)
            {
                break;
            }
        }

        var heat = 0.0;
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
            {
                heat += Held(i, j) ? 0 : film * Cell * Cell * t[i, j];
            }
        }

        return heat;
    }
}
