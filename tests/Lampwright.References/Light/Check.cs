using System.Globalization;

namespace Lampwright.References;

/// <summary>One comparison with a published row; the failure text carries all that is needed to find the row again.</summary>
internal static class Check
{
    public static void Near(double actual, double expected, double tolerance, string row, FormattableString inputs) =>
        Assert.True(
            Math.Abs(actual - expected) <= tolerance,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{row}: {actual:R} instead of {expected:R} ± {tolerance:R} for {inputs.ToString(CultureInfo.InvariantCulture)}"
            )
        );
}
