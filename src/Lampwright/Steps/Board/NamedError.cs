namespace Lampwright.Steps.Board;

/// <summary>Which variable of the draws carries an error.</summary>
public enum CarriedBy
{
    /// <summary><c>steps.sense_threshold</c>.</summary>
    Threshold,

    /// <summary>The spread that is given with the value itself.</summary>
    Value,

    /// <summary><c>steps.sense_law</c>: it is nothing where the current was found and grows from there.</summary>
    Law,
}

/// <summary>One error of a sense threshold by name.</summary>
/// <param name="Name">What may be off, in the maker's words.</param>
/// <param name="HalfWidth">Half-width of its 5 to 95 % band as a share of the threshold, 0 or more.</param>
/// <param name="By">What carries it in the draws.</param>
/// <param name="Source">Where the figure comes from.</param>
public sealed record NamedError(string Name, double HalfWidth, CarriedBy By, string Source)
{
    /// <summary>Half-width of a 5 to 95 % band of equally likely values between limits: 0.9 of the limit (derived).</summary>
    public static double OfLimit(double limit) => 0.9 * limit;

    /// <summary>The limit of equally likely values whose 5 to 95 % band has this half-width.</summary>
    public static double LimitOf(double halfWidth) => halfWidth / 0.9;

    /// <summary>Half-width of independent errors together: the root of the sum of squares (JCGM 100:2008, 5.1.2).</summary>
    public static double Joint(IEnumerable<NamedError> errors)
    {
        ArgumentNullException.ThrowIfNull(errors);
        return Math.Sqrt(errors.Sum(e => e.HalfWidth * e.HalfWidth));
    }
}
