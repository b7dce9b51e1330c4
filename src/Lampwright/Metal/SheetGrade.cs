using Lampwright.Tables;

namespace Lampwright.Metal;

/// <summary>Properties of a grade of sheet. SI units.</summary>
/// <param name="Name">Designation, for example <c>DC01</c>.</param>
/// <param name="DensityKgPerM3">Density.</param>
/// <param name="ElasticModulusPa">Modulus of elasticity.</param>
/// <param name="YieldPa">Yield strength: the least where the standard gives one, else the most.</param>
/// <param name="TensileLeastPa">Least tensile strength.</param>
/// <param name="TensileMostPa">Greatest tensile strength; the least where the standard gives no greatest.</param>
/// <remarks><b>Source</b>: EN 10130, 10025-2, 10088-2, 485-2 (second-hand and memory; see the table's last column).</remarks>
public sealed record SheetGrade(
    string Name,
    double DensityKgPerM3,
    double ElasticModulusPa,
    double YieldPa,
    double TensileLeastPa,
    double TensileMostPa
)
{
    /// <summary>All grades of the table.</summary>
    public static IReadOnlyList<SheetGrade> All { get; } = Load();

    /// <summary>A grade by its designation, spaces and case aside; null where there is none.</summary>
    public static SheetGrade? Find(string name) =>
        All.FirstOrDefault(g =>
            string.Equals(g.Name, name.Replace(" ", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase)
        );

    private static double Or(double cell, double other) => double.IsNaN(cell) ? other : cell;

    private static SheetGrade[] Load()
    {
        var table = TableResource.Read("sheet-grades.csv");
        var grades = new SheetGrade[table.RowCount];
        for (var i = 0; i < grades.Length; i++)
        {
            var least = table.Number(i, "rm_least_MPa");
            grades[i] = new(
                table.Text(i, "grade"),
                table.Number(i, "density_g_cm3") * 1000,
                table.Number(i, "modulus_GPa") * 1e9,
                Or(table.Number(i, "yield_least_MPa"), table.Number(i, "yield_most_MPa")) * 1e6,
                least * 1e6,
                Or(table.Number(i, "rm_most_MPa"), least) * 1e6
            );
        }

        return grades;
    }
}
