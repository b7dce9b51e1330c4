namespace Lampwright.Tables;

/// <summary>What a heat sink is made of.</summary>
/// <param name="Name">Name as the design file writes it.</param>
/// <param name="ConductivityWPerMK">Thermal conductivity near room temperature, W/(m·K).</param>
/// <param name="DensityKgPerM3">Density, kg/m³.</param>
/// <remarks><b>Source</b>: Aluminum Association values in data sheets, Incropera table A.1, Cengel; see the table's last column.</remarks>
public sealed record SinkMaterial(string Name, double ConductivityWPerMK, double DensityKgPerM3)
{
    /// <summary>All materials of the table.</summary>
    public static IReadOnlyList<SinkMaterial> All { get; } = Read();

    /// <summary>A material by its name, case aside; null where there is none.</summary>
    public static SinkMaterial? Named(string name) =>
        All.FirstOrDefault(m => string.Equals(m.Name, name?.Trim(), StringComparison.OrdinalIgnoreCase));

    private static SinkMaterial[] Read()
    {
        var table = TableResource.Read("sink-materials.csv");
        return
        [
            .. Enumerable
                .Range(0, table.RowCount)
                .Select(i => new SinkMaterial(
                    table.Text(i, "material"),
                    table.Number(i, "conductivity_W_mK"),
                    table.Number(i, "density_kg_m3")
                )),
        ];
    }
}
