using Lampwright.Tables;

namespace Lampwright.Metal;

/// <summary>How far a finger or a wire reaches through an opening. Metres.</summary>
/// <remarks>
/// <b>Validity</b>: plain openings in thin sheet, nothing in front of them; smaller of the two sizes of an opening is what lets a probe in.
/// <b>Source</b>: test finger 12 × 80 mm with a stop face of 50 × 20 mm, wire 1.0 × 100 mm: IEC 60529 and IEC 61032 (second-hand; length of the
/// wire from memory). Below 12 mm, where the test finger does not go in but its tip does: distances of ISO 13857, table 4 (memory).
/// <b>Checked by</b>: printed (rows of both).
/// </remarks>
public static class ProbeReach
{
    private static readonly (double To, double Slot, double Square, double Round)[] Rows = Load();

    /// <summary>Diameter of the jointed test finger.</summary>
    public static double FingerM { get; } = 0.012;

    /// <summary>Length of the test finger before its stop face.</summary>
    public static double FingerLengthM { get; } = 0.080;

    /// <summary>Size of the stop face: an opening that lets it pass lets a hand pass.</summary>
    public static (double LongM, double ShortM) StopFace { get; } = (0.050, 0.020);

    /// <summary>Diameter of the test wire.</summary>
    public static double WireM { get; } = 0.001;

    /// <summary>Length of the test wire.</summary>
    public static double WireLengthM { get; } = 0.100;

    /// <summary>How far a finger, or an arm, reaches through an opening; 0 where nothing enters.</summary>
    /// <param name="shape">Shape of the opening.</param>
    public static double Finger(HoleShape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        var (shorter, longer) = Sizes(shape);
        var probe =
            shorter < FingerM - 1e-9 ? 0
            : shorter >= StopFace.ShortM - 1e-9 && longer >= StopFace.LongM - 1e-9 ? Rows[^1].Slot
            : FingerLengthM;
        return Math.Max(probe, Table(shape, shorter, longer));
    }

    /// <summary>How far the test wire reaches: 100 mm through 1.0 mm and more, else 0.</summary>
    /// <param name="shape">Shape of the opening.</param>
    public static double Wire(HoleShape shape) => Sizes(shape).Shorter >= WireM - 1e-9 ? WireLengthM : 0;

    private static double Table(HoleShape shape, double shorter, double longer)
    {
        var row = Array.FindIndex(Rows, r => shorter <= r.To + 1e-9);
        if (row < 0)
        {
            return Rows[^1].Slot;
        }

        return shape.Kind == HoleShapeKind.Round ? Rows[row].Round
            : longer > 1.5 * shorter ? Rows[row].Slot
            : Rows[row].Square;
    }

    private static (double Shorter, double Longer) Sizes(HoleShape shape) =>
        (Math.Min(shape.LengthM, shape.WidthM), Math.Max(shape.LengthM, shape.WidthM));

    private static (double, double, double, double)[] Load()
    {
        var table = TableResource.Read("finger-reach.csv");
        var rows = new (double, double, double, double)[table.RowCount];
        for (var i = 0; i < rows.Length; i++)
        {
            double Of(string column) => table.Number(i, column) / 1000;
            rows[i] = (Of("to_mm"), Of("slot_mm"), Of("square_mm"), Of("round_mm"));
        }

        return rows;
    }
}
