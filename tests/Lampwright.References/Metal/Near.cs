namespace Lampwright.References.Metal;

/// <summary>Compares with the printed value; the message carries the row and all inputs.</summary>
internal static class Near
{
    public static void Is(double expected, double got, double tolerance, string row) =>
        Assert.True(
            Math.Abs(got - expected) <= tolerance,
            FormattableString.Invariant($"{row}: got {got}, expected {expected} ± {tolerance}")
        );

    public static double Rad(double degrees) => degrees * Math.PI / 180;
}
