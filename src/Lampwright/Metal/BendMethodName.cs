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
            BendMethod.Strips => "own test strips" + Strips(rule.Strips ?? []),
            _ => string.Create(CultureInfo.InvariantCulture, $"K = {rule.K:0.###}"),
        };

    private static string Strips(IReadOnlyList<BendStrip> strips) =>
        string.Concat(
            StripMean
                .Of(strips)
                .Select(
                    (s, i) =>
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"{(i == 0 ? ", deduct" : " and")} {s.DeductionM * 1000:0.00} ± {s.HalfWidthM * 1000:0.00} mm at {s.AngleRad * 180 / Math.PI:0.#}° ({s.Count})"
                        )
                )
        );
}
