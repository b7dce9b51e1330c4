namespace Lampwright.Tables;

/// <summary>How a material conducts and stores heat.</summary>
/// <param name="Name">Name in the table.</param>
/// <param name="ConductivityWPerMK">Conductivity, W/(m·K).</param>
/// <param name="DensityKgPerM3">Density, kg/m³.</param>
/// <param name="SpecificHeatJPerKgK">Specific heat, J/(kg·K).</param>
/// <remarks>
/// <b>Validity</b>: 250 to 400 K. <b>Source</b>: Incropera table A.1, Cengel, data sheets; see the table's last column. The driver's row
/// is a potted mixture by common practice.
/// </remarks>
public sealed record HeatMaterial(
    string Name,
    double ConductivityWPerMK,
    double DensityKgPerM3,
    double SpecificHeatJPerKgK
)
{
    /// <summary>All materials of the table.</summary>
    public static IReadOnlyList<HeatMaterial> All { get; } = Read();

    /// <summary>A material by its name in the table.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static HeatMaterial Named(string name) => All.First(m => m.Name == name);

    /// <summary>The material of a grade of sheet or of a sink's alloy, by how its name begins; steel where nothing else fits.</summary>
    public static HeatMaterial OfGrade(string grade)
    {
        ArgumentNullException.ThrowIfNull(grade);
        bool Starts(string with) => grade.StartsWith(with, StringComparison.OrdinalIgnoreCase);
        return Named(
            Starts("copper") ? "copper"
            : Starts("aluminium die-cast") ? "aluminium die-cast"
            : Starts("5754") ? "aluminium 5754"
            : Starts("aluminium") || Starts("6") ? "aluminium"
            : Starts("1.43") || Starts("1.44") ? "stainless"
            : Starts("S") && !Starts("steel") ? "structural steel"
            : "steel"
        );
    }

    private static HeatMaterial[] Read()
    {
        var table = TableResource.Read("heat-capacities.csv");
        return
        [
            .. Enumerable
                .Range(0, table.RowCount)
                .Select(i => new HeatMaterial(
                    table.Text(i, "material"),
                    table.Number(i, "conductivity_W_mK"),
                    table.Number(i, "density_kg_m3"),
                    table.Number(i, "specific_heat_J_kgK")
                )),
        ];
    }
}
