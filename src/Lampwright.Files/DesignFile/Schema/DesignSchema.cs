using System.Collections.Frozen;

namespace Lampwright.Files.DesignFile.Schema;

/// <summary>The one list of everything that may stand in a design file; binder, documentation and key help all read it.</summary>
public static class DesignSchema
{
    private static readonly List<SchemaKey> Keys = Build();
    private static readonly FrozenDictionary<string, SchemaKey> ByPattern = Keys.ToFrozenDictionary(
        k => k.Pattern,
        StringComparer.Ordinal
    );
    private static readonly FrozenDictionary<string, string[]> NamesByTable = Keys.GroupBy(k => k.Table)
        .ToFrozenDictionary(g => g.Key, g => g.Select(k => k.Name).ToArray(), StringComparer.Ordinal);

    /// <summary>All keys in the order of the documentation.</summary>
    public static IReadOnlyList<SchemaKey> All => Keys;

    /// <summary>The key of a pattern such as <c>emitter.*.points[].current</c>, or null.</summary>
    public static SchemaKey? OfPattern(string pattern) => ByPattern.GetValueOrDefault(pattern);

    /// <summary>The key of a path such as <c>emitter.main.points[0].current</c>, or null where no such key may stand.</summary>
    public static SchemaKey? OfPath(string path) => PatternOf(path) is { } pattern ? OfPattern(pattern) : null;

    /// <summary>Names that may stand in a table, by its pattern; empty at the top.</summary>
    public static IReadOnlyList<string> NamesIn(string table) => NamesByTable.GetValueOrDefault(table, []);

    /// <summary>The pattern of a path, or null where it leads nowhere.</summary>
    public static string? PatternOf(string path)
    {
        if (Document.DocPath.Split(path) is not { } parts)
        {
            return null;
        }

        var pattern = "";
        var named = false;
        foreach (var part in parts)
        {
            if (part.StartsWith('['))
            {
                pattern += "[]";
                named = false;
                continue;
            }

            pattern =
                named ? pattern + ".*"
                : pattern.Length == 0 ? part
                : pattern + "." + part;
            var key = OfPattern(pattern);
            if (key is null && !named)
            {
                return null;
            }

            named = !named && (key!.Kind == KeyKind.NamedTables || OfPattern(pattern + ".*") is not null);
        }

        return pattern;
    }

    private static List<SchemaKey> Build()
    {
        var keys = new List<SchemaKey>();
        SchemaTop.Add(keys);
        SchemaElectric.Add(keys);
        SchemaSteps.Add(keys);
        SchemaCooling.Add(keys);
        SchemaOptics.Add(keys);
        SchemaMetal.Add(keys);
        SchemaFitUp.Add(keys);
        return keys;
    }
}
