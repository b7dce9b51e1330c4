namespace Lampwright.Tables;

/// <summary>A metric coarse thread with its drills and the loads of its screws.</summary>
/// <remarks>
/// Profile by ISO 724, clearance holes by ISO 273, tap drills as printed by Carvill, loads by ISO 898-1 (second-hand). Where the loads
/// are not printed (M2, M2.5) they are the stress area times the proof or ultimate stress.
/// <b>Validity</b>: M2 to M10. <b>Checked by</b>: K.TH-M2 to K.TH-M10, <i>printed</i>.
/// </remarks>
/// <param name="Size">Name, for example <c>M4</c>.</param>
/// <param name="DiameterM">Major diameter, metres.</param>
/// <param name="PitchM">Pitch, metres.</param>
/// <param name="TapDrillM">Drill before tapping, metres.</param>
/// <param name="ClearFineM">Clearance hole, fine, metres.</param>
/// <param name="ClearMediumM">Clearance hole, medium, metres.</param>
/// <param name="ClearCoarseM">Clearance hole, coarse, metres.</param>
/// <param name="Proof48N">Proof load of property class 4.8, newtons.</param>
/// <param name="Proof88N">Proof load of property class 8.8, newtons.</param>
/// <param name="Ultimate48N">Least breaking load of class 4.8, newtons.</param>
/// <param name="Ultimate88N">Least breaking load of class 8.8, newtons.</param>
public sealed record MetricThread(
    string Size,
    double DiameterM,
    double PitchM,
    double TapDrillM,
    double ClearFineM,
    double ClearMediumM,
    double ClearCoarseM,
    double Proof48N,
    double Proof88N,
    double Ultimate48N,
    double Ultimate88N
)
{
    // Proof and ultimate stresses of ISO 898-1 in pascal.
    private static readonly (double Proof48, double Proof88, double Ultimate48, double Ultimate88) Stress = (
        310e6,
        580e6,
        420e6,
        800e6
    );

    /// <summary>All threads of the table, small to large.</summary>
    public static IReadOnlyList<MetricThread> All { get; } = Read();

    /// <summary>Pitch diameter d2 = d − 0.649519 P, metres.</summary>
    public double PitchDiameterM => DiameterM - (0.649519 * PitchM);

    /// <summary>Root diameter of the screw d3 = d − 1.226869 P, metres.</summary>
    public double RootDiameterM => DiameterM - (1.226869 * PitchM);

    /// <summary>Minor diameter of the nut D1 = d − 1.082532 P, metres.</summary>
    public double NutMinorDiameterM => DiameterM - (1.082532 * PitchM);

    /// <summary>Stress area As = π/4 ((d2 + d3)/2)², square metres.</summary>
    public double StressAreaM2
    {
        get
        {
            var mean = (PitchDiameterM + RootDiameterM) / 2;
            return Math.PI / 4 * mean * mean;
        }
    }

    /// <summary>The thread that a text such as <c>M6</c> or <c>M6 wing</c> names; null where the table has none.</summary>
    public static MetricThread? Named(string text)
    {
        var size = (text ?? "").Trim().Split(' ', 'x', '×')[0];
        return All.FirstOrDefault(thread => string.Equals(thread.Size, size, StringComparison.OrdinalIgnoreCase));
    }

    private static MetricThread[] Read()
    {
        var table = TableResource.Read("threads.csv");
        var threads = new MetricThread[table.RowCount];
        for (var i = 0; i < threads.Length; i++)
        {
            double Mm(string column) => table.Number(i, column) / 1000;
            double? Printed(string column) =>
                table.Number(i, column) is var load && double.IsFinite(load) ? load : null;
            var bare = new MetricThread(
                table.Text(i, "size"),
                Mm("diameter_mm"),
                Mm("pitch_mm"),
                Mm("tap_drill_mm"),
                Mm("clear_fine_mm"),
                Mm("clear_medium_mm"),
                Mm("clear_coarse_mm"),
                0,
                0,
                0,
                0
            );
            var area = bare.StressAreaM2;
            threads[i] = bare with
            {
                Proof48N = Printed("proof_48_N") ?? (area * Stress.Proof48),
                Proof88N = Printed("proof_88_N") ?? (area * Stress.Proof88),
                Ultimate48N = Printed("ultimate_48_N") ?? (area * Stress.Ultimate48),
                Ultimate88N = Printed("ultimate_88_N") ?? (area * Stress.Ultimate88),
            };
        }

        return threads;
    }
}
