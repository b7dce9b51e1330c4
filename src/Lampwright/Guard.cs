using System.Globalization;
using System.Runtime.CompilerServices;

namespace Lampwright;

/// <summary>The one range guard of the core. It catches a caller's bug, never a maker's mistake: those are findings.</summary>
/// <remarks>NaN fails every guard. The message carries the name, the value and the range that is accepted.</remarks>
public static class Guard
{
    /// <summary>Returns the value when it lies in the closed range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value lies outside, or is not a number.</exception>
    public static double InRange(
        double value,
        double least,
        double most,
        [CallerArgumentExpression(nameof(value))] string name = ""
    ) =>
        value >= least && value <= most
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                string.Create(CultureInfo.InvariantCulture, $"{name} = {value} is not between {least} and {most}.")
            );

    /// <summary>Returns the value when it is finite and above zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero, negative, infinite or not a number.</exception>
    public static double Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value > 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                string.Create(CultureInfo.InvariantCulture, $"{name} = {value} is not above zero.")
            );

    /// <summary>Returns the value when it is finite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is infinite or not a number.</exception>
    public static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                string.Create(CultureInfo.InvariantCulture, $"{name} = {value} is not a finite number.")
            );
}
