using System.Globalization;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Tables;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>All ids that one place of a design may use to name another.</summary>
internal sealed class ThingIds
{
    private static readonly string[] Bought = ["emitter", "driver", "sink", "fan", "diffuser", "item"];
    private static readonly string[] FaceEdges = ["left", "right", "top", "bottom"];
    private static readonly string[] FlangeEdges = ["root", "far", "start", "end"];
    private static readonly string[] BracketLegs = ["leg_a", "leg_b"];
    private static readonly string[] TubeSides = ["top", "back", "bottom"];
    private readonly DocTable _root;
    private readonly HashSet<string> _things = new(StringComparer.Ordinal);
    private readonly HashSet<string> _patterns = new(StringComparer.Ordinal);

    public ThingIds(DocTable root)
    {
        _root = root;
        foreach (var kind in Bought.Append("reflector"))
        {
            foreach (var name in Names(kind))
            {
                Bodies(kind, name);
            }
        }

        foreach (var part in Names("part"))
        {
            _things.Add(part);
            _things.Add("part." + part);
            foreach (var (hole, value) in Inner(part, "hole"))
            {
                _things.Add($"{part}.{hole}");
                _things.Add($"part.{part}.hole.{hole}");
                if (HasScrews(value as DocTable))
                {
                    _things.Add($"{part}.{hole}.screws");
                }
            }

            if (((_root.Find("part")!.Value as DocTable)?.Find(part)?.Value as DocTable)?.Find("panels") is not null)
            {
                // The two openings of a funnel can be joined like holes.
                _things.Add($"{part}.small");
                _things.Add($"{part}.large");
            }
        }
    }

    /// <summary>Names of the tables of a kind.</summary>
    public IEnumerable<string> Names(string kind) =>
        (_root.Find(kind)?.Value as DocTable)?.Entries.Where(e => e.Value is DocTable).Select(e => e.Name) ?? [];

    /// <summary>What a reference may say, by what it refers to.</summary>
    /// <param name="to">A kind of table, or <c>thing</c>, <c>pattern</c>, <c>body</c>, <c>panel</c>, <c>edge</c>.</param>
    /// <param name="part">The part it stands in, for panels and edges.</param>
    public IEnumerable<string> Accepted(string to, string? part) =>
        to switch
        {
            "thing" => _things,
            "pattern" => _patterns,
            "body" => Names("part").Concat(Names("item")),
            "panel" => part is null ? [] : Flanges(part).Prepend("face"),
            "edge" => part is null
                ? []
                : FaceEdges
                    .Concat(Inner(part, "tube").Any() ? FlangeEdges : [])
                    .Concat(OutlineEdges(part))
                    .Select(e => "face." + e)
                    .Concat(Flanges(part).SelectMany(f => FlangeEdges.Select(e => $"{f}.{e}"))),
            _ => Names(to),
        };

    /// <summary>True where a reference names something that is there.</summary>
    public bool IsKnown(string to, string? part, string name) =>
        to switch
        {
            "thing" => _things.Contains(Whole(name)),
            "pattern" => _patterns.Contains(name) || IsScrew(name),
            _ => Accepted(to, part).Contains(name, StringComparer.Ordinal),
        };

    /// <summary>The pattern of a member of it: <c>sink_tray.vents[3,2]</c> belongs to <c>sink_tray.vents</c>.</summary>
    private static string Whole(string name) =>
        name.EndsWith(']') && name.IndexOf('[', StringComparison.Ordinal) is var open and > 0 ? name[..open] : name;

    /// <summary>The nearest known name to a wrong one.</summary>
    public string? Nearest(string to, string? part, string name) => Quantities.Nearest.Of(name, Accepted(to, part));

    /// <summary>True for a screw such as <c>M4 tap</c>, which names no table.</summary>
    internal static bool IsScrew(string text) => text.Length > 1 && text[0] is 'M' or '#' && char.IsAsciiDigit(text[1]);

    private void Bodies(string kind, string name)
    {
        _things.Add($"{kind}.{name}");
        if (kind == "item")
        {
            _things.Add(name);
        }

        var table = (_root.Find(kind)!.Value as DocTable)?.Find(name)?.Value as DocTable;
        foreach (var pattern in (table?.Find("holes")?.Value as DocTable)?.Entries ?? [])
        {
            Pattern($"{kind}.{name}.{pattern.Name}");
            if (kind == "item")
            {
                Pattern($"{name}.{pattern.Name}");
            }
        }

        if (table?.Find("cutout") is not null)
        {
            Pattern($"{kind}.{name}.cutout");
            Pattern($"{name}.cutout");
            if (HasScrews(table))
            {
                Pattern($"{kind}.{name}.screws");
                Pattern($"{name}.screws");
            }
        }
    }

    private static bool HasScrews(DocTable? table) =>
        table?.Find("cutout")?.Value is DocScalar cutout && StandardCutOut.Named(cutout.Text) is { Screws.Count: > 0 };

    private void Pattern(string id)
    {
        _things.Add(id);
        _patterns.Add(id);
    }

    private IEnumerable<string> Flanges(string part) =>
        [
            .. Inner(part, "flange").Select(f => f.Name),
            .. Inner(part, "hem").Select(h => h.Name),
            .. Inner(part, "joggle").SelectMany(j => (string[])[j.Name, j.Name + "_step"]),
            .. Inner(part, "bracket").Any() ? BracketLegs : [],
            .. Inner(part, "tube").Any() ? TubeSides : [],
        ];

    private IEnumerable<string> OutlineEdges(string part) =>
        Inner(part, "face").FirstOrDefault(k => k.Name == "outline").Value is DocArray outline
            ? outline.Items.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"e{i + 1}"))
            : [];

    private IEnumerable<(string Name, DocNode? Value)> Inner(string part, string kind)
    {
        // A mirrored part has the ids of the part it mirrors; a mirror of a mirror is followed a few times only.
        for (var turns = 0; turns < 4; turns++)
        {
            var table = (_root.Find("part")?.Value as DocTable)?.Find(part)?.Value as DocTable;
            if (table?.Find("mirror")?.Value is not DocScalar mirror)
            {
                return (table?.Find(kind)?.Value as DocTable)?.Entries.Select(e => (e.Name, (DocNode?)e.Value)) ?? [];
            }

            part = mirror.Text;
        }

        return [];
    }
}
