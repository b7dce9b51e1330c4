using Lampwright.Findings;

namespace Lampwright.Files.Drawings;

/// <summary>What a finding comes to in the few words that have room beside its place.</summary>
public static class FindingWords
{
    private static readonly Dictionary<string, string> words = new(StringComparer.Ordinal)
    {
        ["MET002"] = "edge taken twice",
        ["MET004"] = "beyond the brake",
        ["MET005"] = "no flat left",
        ["MET006"] = "flange too short",
        ["MET007"] = "radius too small",
        ["MET008"] = "hole near bend",
        ["MET009"] = "hole in bend",
        ["MET010"] = "hole outside",
        ["MET011"] = "hole at edge",
        ["MET012"] = "hole near edge",
        ["MET013"] = "thin web",
        ["MET014"] = "holes overlap",
        ["MET015"] = "small hole",
        ["MET017"] = "blank overlaps",
        ["MET018"] = "folds into another",
        ["MET021"] = "longer than brake",
        ["MET022"] = "too strong for brake",
        ["MET023"] = "odd allowance",
        ["MET024"] = "corner presses",
        ["MET025"] = "seam stays open",
        ["MET026"] = "edge used up",
        ["MET031"] = "sheet does not suit",
        ["MET032"] = "size from memory",
        ["MET033"] = "hem may crack",
        ["MET034"] = "press between bars",
        ["MET036"] = "outline crosses",
        ["MET038"] = "under the hem",
        ["MET039"] = "nose makes other radius",
        ["MET040"] = "mind the grain",
        ["MET041"] = "finger reaches live",
        ["MET042"] = "wire reaches live",
        ["MET043"] = "sharp edge",
        ["MET044"] = "row bends first",
        ["MET045"] = "hard by hand",
        ["MET046"] = "holes left out",
    };

    /// <summary>Few words for a finding; the title of its rule where there are none.</summary>
    public static string Of(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return words.GetValueOrDefault(finding.Code, finding.Rule.Title);
    }

    /// <summary>Code and few words, as they stand beside the place.</summary>
    public static string Beside(Finding finding) => finding.Code + " " + Of(finding);

    /// <summary>One line for a legend: code, few words, what was seen and what is wanted.</summary>
    public static string Line(Finding finding)
    {
        var numbers =
            finding.Observed.Length == 0 ? ""
            : finding.Limit.Length == 0 ? ": " + finding.Observed
            : $": {finding.Observed}, limit {finding.Limit}";
        return Beside(finding) + numbers + Whose(finding);
    }

    /// <summary>The hole, flange or edge that a finding speaks of, by its name in the part.</summary>
    private static string Whose(Finding finding)
    {
        var words = finding.Path.Split('.');
        return words.Length > 3 && words[0] == "part" ? ", " + words[3] : "";
    }

    /// <summary>The codes that have words of their own.</summary>
    internal static IEnumerable<string> Codes => words.Keys;
}
