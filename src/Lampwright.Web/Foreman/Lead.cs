using Lampwright.Findings;
using Lampwright.Web.Desk;
using Lampwright.Web.Layout;

namespace Lampwright.Web.Foreman;

/// <summary>Leads from a path in the design file to the page and the field it is given in.</summary>
public static class Lead
{
    /// <summary>The word for a severity.</summary>
    public static string Word(Severity severity) =>
        severity switch
        {
            Severity.Stop => "stop",
            Severity.Warn => "warn",
            _ => "note",
        };

    /// <summary>Id of a field's input on the page.</summary>
    public static string FieldId(string path) => "given:" + path;

    /// <summary>The field that a path speaks of: itself, the first below it, or the first of the nearest table above.</summary>
    public static string Field(BoardState state, string path)
    {
        var fields = state.Given.SelectMany(t => t.Fields).Select(f => f.Path).ToList();
        for (var at = path; at.Length > 0; at = Parent(at))
        {
            var here = at;
            if (!at.Contains('.', StringComparison.Ordinal) && state.Given.All(t => t.Path != here))
            {
                // Only the kind is left, such as part: the first part is not the one that was meant.
                return "";
            }

            var found =
                fields.Find(f => f == here)
                ?? fields.Find(f =>
                    f.StartsWith(here, StringComparison.Ordinal)
                    && f.Length > here.Length
                    && f[here.Length] is '.' or '['
                );
            if (found is not null)
            {
                return found;
            }
        }

        return "";
    }

    /// <summary>Address of the page and field that a path leads to, relative to the board.</summary>
    public static string Href(BoardState state, string path)
    {
        var page = Stations.Of(path).Href;
        var field = Field(state, path);
        var query = new List<string>();
        if (path.StartsWith("part.", StringComparison.Ordinal) && path.Split('.', 3) is [_, var part, ..])
        {
            query.Add("part=" + Uri.EscapeDataString(part));
        }

        if (field.Length > 0)
        {
            query.Add("field=" + Uri.EscapeDataString(field));
        }

        return query.Count == 0 ? page : page + "?" + string.Join('&', query);
    }

    private static string Parent(string path)
    {
        var cut = path.LastIndexOfAny(['.', '[']);
        return cut < 0 ? "" : path[..cut];
    }
}
