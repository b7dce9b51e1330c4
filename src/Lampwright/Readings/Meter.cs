using Lampwright.Tables;

namespace Lampwright.Readings;

/// <summary>What is known of a meter for one kind of reading.</summary>
/// <param name="Kind">Kind of meter, for example <c>phone</c>.</param>
/// <param name="Factor">What its readings are multiplied by, above 0.</param>
/// <param name="FactorHalfWidth">Half-width of that factor (rectangular limits), 0 or more.</param>
/// <param name="OffsetHalfWidth">Half-width of what may be added to a reading, in SI units, 0 or more.</param>
/// <param name="Calibrated">True when it was compared with a better one.</param>
/// <param name="Least">Least reading of the calibrated span, SI; minus infinity where none is told.</param>
/// <param name="Most">Greatest reading of the calibrated span, SI; infinity where none is told.</param>
public sealed record Meter(
    string Kind,
    double Factor,
    double FactorHalfWidth,
    double OffsetHalfWidth = 0,
    bool Calibrated = false,
    double Least = double.NegativeInfinity,
    double Most = double.PositiveInfinity
)
{
    /// <summary>The value a reading stands for, with its uncertainty.</summary>
    /// <param name="reading">What the meter showed, SI.</param>
    public Estimate Corrected(double reading)
    {
        var byFactor = Guard.Finite(reading) * Guard.InRange(FactorHalfWidth, 0, 100);
        var (a, b) = (byFactor / Math.Sqrt(3), Guard.InRange(OffsetHalfWidth, 0, double.MaxValue) / Math.Sqrt(3));
        return new(reading * Guard.Positive(Factor), Math.Sqrt((a * a) + (b * b)));
    }

    /// <summary>True when a reading lies in the calibrated span.</summary>
    /// <param name="reading">What the meter showed, SI.</param>
    public bool Spans(double reading) => reading >= Least && reading <= Most;

    /// <summary>
    /// What a meter of a kind may be off by when nothing else is told (Tables/meters.csv; common practice, no source). An unknown kind
    /// is taken as the poorest of its readings.
    /// </summary>
    /// <param name="kind">Kind of meter.</param>
    /// <param name="what">What it reads.</param>
    public static Meter Usual(string kind, ReadingKind what)
    {
        var found = UsualMeters
            .Rows.Where(r => string.Equals(r.What, what.ToString(), StringComparison.OrdinalIgnoreCase))
            .ToArray();
        var row = found.FirstOrDefault(r => string.Equals(r.Kind, kind, StringComparison.OrdinalIgnoreCase));
        row = row.Kind is null ? found.MaxBy(r => (r.Relative, r.Absolute)) : row;
        return new(kind ?? "", 1, row.Relative, row.Absolute);
    }
}
