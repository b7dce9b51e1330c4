using Lampwright.Files.DesignFile.Document;
using Lampwright.Findings;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>What the reading of a whole file has to say at the end.</summary>
internal static class Remarks
{
    private static readonly (string Table, string Stations)[] Needed =
    [
        ("emitter", "steps, heat and light"),
        ("driver", "steps"),
        ("steps", "steps"),
        ("sink", "heat"),
        ("subject", "light"),
        ("part", "metal and fit-up"),
    ];

    public static IEnumerable<Finding> Of(LoadContext context)
    {
        foreach (var (table, stations) in Needed)
        {
            if (context.Root.Find(table)?.Value is not DocTable { Entries.Count: > 0 })
            {
                yield return FileRules.NothingToCompute.At(
                    table,
                    $"There is no [{table}{(table is "steps" or "subject" ? "" : ".NAME")}]; {stations} cannot be computed without it."
                );
            }
        }

        foreach (var entry in (context.Root.Find("given")?.Value as DocTable)?.Entries ?? [])
        {
            var path = DocPath.Join("given", entry.Name);
            if (!context.Values.Used.Contains(path))
            {
                yield return FileRules.Unused.At(path, $"{path} is used in no expression.");
            }
        }
    }
}
