using Lampwright.Evaluation.Answers;
using Lampwright.Web.Desk;

namespace Lampwright.Web.Fold;

/// <summary>Leads from an id that was picked in a picture of a part to the table that gives it.</summary>
internal static class PickedPath
{
    /// <summary>The table of the hole, flange, hem, joggle, leg or face that an id names; that of the part where it is none of these.</summary>
    /// <param name="state">What is given.</param>
    /// <param name="part">The part that is shown; null for none.</param>
    /// <param name="id">Permanent id: <c>tray.face</c>, <c>tray.wall_l.far</c>, <c>tray.side_a.vents[3,2]</c>.</param>
    public static string Of(BoardState state, PartAnswer? part, string id)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (part is null)
        {
            return "part";
        }

        var rest = id.StartsWith(part.Name + ".", StringComparison.Ordinal) ? id[(part.Name.Length + 1)..] : "";
        var words = rest.Split('[')[0].Split('/')[0].Split('.', StringSplitOptions.RemoveEmptyEntries);
        var tables = state.Given.Select(t => t.Path).ToHashSet(StringComparer.Ordinal);
        bool Has(string path) =>
            tables.Contains(path)
            || state.Given.Any(t => t.Fields.Any(f => f.Path.StartsWith(path + ".", StringComparison.Ordinal)));

        // A hole lies in a flat: its own name follows that of the flat. An edge has the name of an edge there, which a flange may share.
        if (words.Length > 1 && Hole(part, words) is { Length: > 0 } hole)
        {
            for (var name = hole; name.Length > 0; name = name[..Math.Max(0, name.LastIndexOf('.'))])
            {
                if (Has($"{part.Path}.hole.{name}"))
                {
                    return $"{part.Path}.hole.{name}";
                }
            }
        }

        var flat = words.Length > 0 ? words[0] : "";
        var step = flat.EndsWith("_step", StringComparison.Ordinal) ? flat[..^"_step".Length] : flat;
        string[] ways =
        [
            $"{part.Path}.flange.{flat}",
            $"{part.Path}.hem.{flat}",
            $"{part.Path}.joggle.{flat}",
            $"{part.Path}.joggle.{step}",
            flat is "leg_a" or "leg_b" || flat == "face" && !Has(part.Path + ".face") ? $"{part.Path}.bracket" : "",
            flat == "face" ? $"{part.Path}.face" : "",
        ];
        return Array.Find(ways, w => w.Length > 0 && Has(w)) ?? part.Path;
    }

    /// <summary>Name of the hole that an id names; empty for an edge or a flat.</summary>
    private static string Hole(PartAnswer part, string[] words)
    {
        var name = string.Join('.', words[1..]);
        return part.Blank.Holes.Any(h => h.On == words[0] && h.Hole == name) ? name : "";
    }
}
