using System.Globalization;
using Lampwright.Metal;
using Lampwright.Tables;

namespace Lampwright.References.Metal;

/// <summary>Whole printed tables, typed from their sources, row by row.</summary>
public sealed class WholeTableRows
{
    // DIN 6935:1975, smallest inside radius, up to 120°, across the rolling direction: published, second-hand. s over, to: Rm to 390, 490, 640.
    private const string Radii = """
        0 1 1 1.2 1.6
        1 1.5 1.6 2 2.5
        1.5 2.5 2.5 3 4
        2.5 3 3 4 5
        3 4 5 5 6
        4 5 6 8 8
        5 6 8 10 10
        6 7 10 12 12
        7 8 12 16 16
        8 10 16 20 20
        """;

    // Tabellenbuch Metall, kR by r2/s; row values published, heads memory.
    private const string Springs = """
        DC04 .99 .99 .99 .98 .97 .97 .96 .94 .91 .87 .83
        DC01 .99 .99 .99 .97 .96 .96 .93 .90 .85 .77 .66
        18_8 .99 .98 .97 .95 .93 .89 .84 .76 .63 - -
        Al99 .99 .99 .99 .99 .98 .98 .97 .97 .96 .95 .93
        AlSiMgMn .98 .98 .97 .96 .95 .93 .90 .86 .82 .76 .72
        """;

    private static readonly double[] Heads = [1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100];

    // EN 10131:2006 table 1 (Rp < 260), EN 10259, EN 485-4 group I; normal tolerance of three (two) classes of width: published, second-hand.
    private const string Tolerances = """
        steel 0.40 0.60 0.03 0.04 0.05
        steel 0.60 0.80 0.04 0.05 0.06
        steel 0.80 1.00 0.05 0.06 0.07
        steel 1.00 1.20 0.06 0.07 0.08
        steel 1.20 1.60 0.08 0.09 0.10
        steel 1.60 2.00 0.10 0.11 0.12
        steel 2.00 2.50 0.12 0.13 0.14
        steel 2.50 3.00 0.15 0.15 0.16
        stainless 0.8 1.0 0.055 0.06 0.06
        stainless 1.0 1.2 0.06 0.07 0.07
        stainless 1.2 1.5 0.07 0.08 0.08
        stainless 1.5 2.0 0.08 0.09 0.10
        stainless 2.0 2.5 0.09 0.10 0.11
        aluminium 0.8 1.0 0.04 0.06 -
        aluminium 1.0 1.2 0.04 0.07 -
        aluminium 1.2 1.5 0.05 0.09 -
        aluminium 1.5 1.8 0.06 0.10 -
        aluminium 1.8 2.0 0.06 0.11 -
        aluminium 2.5 3.0 0.08 0.13 -
        """;

    private static IEnumerable<string[]> Lines(string table) =>
        table
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(l => l.Split(' '));

    private static double N(string word) => double.Parse(word, CultureInfo.InvariantCulture);

    [Fact]
    public void Least_radii_of_every_row_column_and_direction()
    {
        List<string[]> rows = [.. Lines(Radii)];
        Assert.Equal(10, rows.Count);
        for (var i = 0; i < rows.Count; i++)
        {
            var thicker = rows[Math.Min(i + 1, rows.Count - 1)];
            foreach (var (column, rm) in ((int, double)[])[(2, 390), (3, 490), (4, 640)])
            {
                foreach (var s in (double[])[N(rows[i][0]) + 0.01, N(rows[i][1])])
                {
                    double? Of(double angle, bool along) =>
                        LeastRadius.Din6935(s / 1e3, rm * 1e6, Near.Rad(angle), along) * 1e3;
                    Near.Is(N(rows[i][column]), Of(90, false)!.Value, 1e-9, $"DIN 6935 s {s}, Rm {rm}, across");
                    Near.Is(N(thicker[column]), Of(90, true)!.Value, 1e-9, $"DIN 6935 s {s}, Rm {rm}, along");
                    Near.Is(N(thicker[column]), Of(135, false)!.Value, 1e-9, $"DIN 6935 s {s}, Rm {rm}, turned 135°");
                }
            }
        }
    }

    [Fact]
    public void Springback_factor_of_every_metal_and_head()
    {
        var seen = 0;
        foreach (var line in Lines(Springs))
        {
            for (var i = 0; i < Heads.Length; i++)
            {
                var factor = Springback.Factor(line[0], Heads[i]);
                if (line[i + 1] == "-")
                {
                    Assert.Null(factor);
                    continue;
                }

                Near.Is(N(line[i + 1]), factor!.Value, 1e-12, $"kR {line[0]}, r/s {Heads[i]}");
                seen++;
            }
        }

        Assert.Equal(53, seen);
    }

    // Warning beside the table, derived: the elastic form gives these factors back with a flow stress of 307-370 MPa (DC01, r/s 10 to 100)
    // and 870-1020 MPa (18-8, r/s 10 to 40), far above the nominal yield.
    [Theory]
    [InlineData("DC01", 10, 100, 210e3, 307, 370)]
    [InlineData("18_8", 10, 40, 200e3, 870, 1020)]
    public void Flow_stress_that_the_factors_speak_of(
        string metal,
        double from,
        double to,
        double modulus,
        double least,
        double most
    )
    {
        foreach (var ratio in Heads.Where(h => h >= from && h <= to))
        {
            // kR = ((2 Ri/T) + 1)/((2 Rf/T) + 1); r2 is the radius that is left, so Ri = kR (r2 + s/2) - s/2.
            var kR = Springback.Factor(metal, ratio)!.Value;
            var tool = Springback.ToolRadius(ratio, 1, kR);
            var (low, high) = (1.0, 3000.0);
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                (low, high) =
                    Springback.ElasticRatio(tool, 1, middle, modulus) > tool / ratio ? (middle, high) : (low, middle);
            }

            // The printed factor is rounded to a hundredth: half a digit either way moves the stress by about a sixth at small ratios.
            Assert.True(
                low > least * 0.85 && low < most * 1.15,
                FormattableString.Invariant($"{metal}, r/s {ratio}: {low} MPa, expected {least} to {most}")
            );
        }
    }

    [Fact]
    public void Thickness_tolerance_of_every_class()
    {
        var table = TableResource.Read("sheet-thickness.csv");
        List<string[]> rows = [.. Lines(Tolerances)];
        Assert.Equal(rows.Count, table.RowCount);
        foreach (var row in rows)
        {
            var at = Enumerable
                .Range(0, table.RowCount)
                .Single(i => table.Text(i, "metal") == row[0] && Math.Abs(table.Number(i, "to_mm") - N(row[2])) < 1e-9);
            var name = string.Join(' ', row);
            Near.Is(N(row[1]), table.Number(at, "over_mm"), 1e-9, name);
            Near.Is(N(row[3]), table.Number(at, "narrow_mm"), 1e-9, name);
            Near.Is(N(row[4]), table.Number(at, "middle_mm"), 1e-9, name);
            Assert.True(
                row[5] == "-"
                    ? double.IsNaN(table.Number(at, "wide_mm"))
                    : Math.Abs(table.Number(at, "wide_mm") - N(row[5])) < 1e-9,
                name
            );
            var inside = (N(row[1]) + N(row[2])) / 2e3;
            Near.Is(N(row[3]), ThicknessTolerance.HalfWidthM(row[0], inside)!.Value * 1e3, 1e-9, name);
        }
    }

    // Sheet properties: density, E, Re or Rp0.2 (least, else most), Rm least and most; DC01 strengths and DC04 published, second-hand, rest memory.
    [Theory]
    [InlineData("DC01", 7.85, 210, 280, 270, 410)]
    [InlineData("DC04", 7.85, 210, 240, 270, 370)]
    [InlineData("S235JR", 7.85, 210, 235, 360, 510)]
    [InlineData("1.4301", 7.9, 200, 230, 540, 750)]
    [InlineData("5754-H111", 2.67, 70, 80, 190, 240)]
    [InlineData("5754-H22", 2.67, 70, 130, 220, 270)]
    [InlineData("6082-T6", 2.70, 70, 260, 310, 310)]
    public void Properties_of_every_grade(
        string grade,
        double density,
        double modulus,
        double yield,
        double least,
        double most
    )
    {
        var found = SheetGrade.Find(grade)!;
        Near.Is(density, found.DensityKgPerM3 / 1e3, 1e-9, $"{grade} density");
        Near.Is(modulus, found.ElasticModulusPa / 1e9, 1e-9, $"{grade} E");
        Near.Is(yield, found.YieldPa / 1e6, 1e-6, $"{grade} yield");
        Near.Is(least, found.TensileLeastPa / 1e6, 1e-6, $"{grade} least Rm");
        Near.Is(most, found.TensileMostPa / 1e6, 1e-6, $"{grade} greatest Rm");
    }

    // Chapter 7, geometry: square grid π/4 (d/p)², 45° stagger the same with the nearest pitch; at 60° π/(2√3) = 0.906900.
    [Fact]
    public void Open_shares_of_touching_holes()
    {
        Near.Is(0.906900, Perforation.StaggeredShare(1, 1), 5e-7, "60° stagger, d = p");
        Near.Is(0.7854, Perforation.SquareShare(1, 1), 5e-5, "square grid, d = p");
    }

    // Warning 1 of the page: DIN's k counts on half the thickness, K = k/2.
    [Theory]
    [InlineData(1.5, 1.5)]
    [InlineData(6, 5)]
    [InlineData(12, 2)]
    public void Factor_of_Din_is_twice_K(double r, double s)
    {
        var bend = BendFigures.Of(BendRule.Din6935, Math.PI / 2, r / 1e3, s / 1e3);
        Near.Is(BendAllowance.DinFactor(r, s) / 2, bend.K, 1e-12, $"K of r {r}, s {s}");
    }
}
