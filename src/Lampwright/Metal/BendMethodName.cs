using System.Globalization;

namespace Lampwright.Metal;

/// <summary>Bend methods in words, for drawings.</summary>
internal static class BendMethodName
{
    public static string Of(BendRule rule) =>
        rule.Method switch
        {
            BendMethod.Din6935 => "DIN 6935",
            BendMethod.Handbook => "Machinery's Handbook",
            BendMethod.Strips => "own test strips",
            _ => string.Create(CultureInfo.InvariantCulture, $"K = {rule.K:0.###}"),
        };
}
