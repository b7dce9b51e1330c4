using Lampwright.Design;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Quantities;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Resistors of the chain: those that are chosen, and those in the drawer.</summary>
internal static class BindChain
{
    private static readonly int MostPositions = 100;
    private static readonly string[] Ways = ["value", "series", "parallel"];

    /// <summary>The chosen chain; null where there is none.</summary>
    public static ChosenChain? Chosen(TableReader r)
    {
        var first = Position(r.TableOrValue("fixed", "value"));
        var chain = new List<ChosenPosition>();
        foreach (var (value, table) in r.ValuesOrTables("chain", MostPositions))
        {
            if (value is not null)
            {
                chain.Add(One(value));
            }
            else if (Position(table!) is { } position)
            {
                chain.Add(position);
            }
        }

        return r.IsThere ? new ChosenChain(first, chain) : null;
    }

    /// <summary>What lies in the drawer.</summary>
    public static IReadOnlyList<DrawerPart> Drawer(TableReader r)
    {
        var parts = new List<DrawerPart>();
        foreach (var (value, table) in r.ValuesOrTables("resistors", ChainSearchSpec.MostStock))
        {
            if (value is not null)
            {
                parts.Add(new(value, null, null));
                continue;
            }

            var (ohm, count, rating) = (table!.Optional("value"), table.Count("count", -1), table.Optional("rating"));
            if (ohm is not null)
            {
                parts.Add(new(ohm, count < 0 ? null : count, rating));
            }
        }

        return parts;
    }

    private static ChosenPosition One(Value value) => new(Joining.One, [value], []);

    private static ChosenPosition? Position(TableReader r)
    {
        var (one, series, parallel) = (r.Optional("value"), r.Two("series"), r.Two("parallel"));
        var ratings = r.OneOrTwoValues("rating");
        var written = Ways.Where(r.Has).ToArray();
        if (r.Written is { } table && written.Length != 1)
        {
            r.Context.Wrong(
                table,
                r.Path,
                written.Length == 0 ? "names no resistor" : $"says {string.Join(" and ", written)} at once",
                "one of value = \"0.15 ohm\", series = [\"0.33 ohm\", \"0.022 ohm\"], parallel = [\"0.33 ohm\", \"0.39 ohm\"]"
            );
            return null;
        }

        var position =
            series is var (a, b) ? new ChosenPosition(Joining.InSeries, [a, b], ratings)
            : parallel is var (c, d) ? new ChosenPosition(Joining.SideBySide, [c, d], ratings)
            : one is not null ? new ChosenPosition(Joining.One, [one], ratings)
            : null;
        if (position is null || position.Parts.Count >= position.Ratings.Count)
        {
            return position;
        }

        r.Context.Wrong(
            r.Node("rating") ?? (DocNode)r.Written!,
            r.Path + ".rating",
            "has two values for one part",
            "one value, as in \"3 W\""
        );
        return position with { Ratings = [position.Ratings[0]] };
    }
}
