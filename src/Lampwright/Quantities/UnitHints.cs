using System.Collections.Frozen;

namespace Lampwright.Quantities;

/// <summary>What to say of a name that is no unit. Only on the way of an error.</summary>
internal static class UnitHints
{
    private static readonly FrozenDictionary<string, string> Known = new Dictionary<string, string>(
        StringComparer.Ordinal
    )
    {
        ["C"] = "degC for a temperature",
        ["mK"] = "m*K for metre times kelvin, as in W/(m*K)",
        ["R"] = "ohm",
        ["mR"] = "mohm",
        ["Ohm"] = "ohm",
        ["mOhm"] = "mohm",
        ["sqmm"] = "mm2",
        ["qmm"] = "mm2",
        ["cbm"] = "m3",
        ["ccm"] = "cm3",
        ["mmWS"] = "mmH2O",
        ["f"] = "a shutter or aperture without the letter",
        ["x"] = "one value for each side, as in [\"28 mm\", \"28 mm\"]",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The error for an unknown name, with the nearest known one.</summary>
    public static QuantityError Unknown(int offset, ReadOnlySpan<char> name)
    {
        var text = name.ToString();
        if (text.Length == 0)
        {
            return QuantityError.At(offset, name, "a unit is missing", "");
        }

        if (char.IsAsciiDigit(text[0]) || text[0] is '.' or ',')
        {
            return QuantityError.At(
                offset,
                name,
                "one number and then its unit, as in 12 mm",
                "stands where a unit should"
            );
        }

        var accepted = Known.TryGetValue(text, out var hint) ? hint : Nearest.Of(text, UnitTable.Spellings);
        return QuantityError.At(
            offset,
            name,
            accepted is null ? "a unit such as mm, in, A, ohm, W, degC, K/W or lm" : $"write {accepted}",
            "is not a unit"
        );
    }
}
