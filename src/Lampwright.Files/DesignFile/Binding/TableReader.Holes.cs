using Lampwright.Design;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Holes: shapes, layouts, references.</summary>
internal sealed partial class TableReader
{
    private static readonly string ShapesAccepted =
        "\"round 4.3 mm\", \"slot 10 mm x 4.3 mm\" or \"rectangle 20 mm x 10 mm\", with \"r 2 mm\" behind for round corners";

    private static readonly double SmallestHole = 0.2e-3;
    private static readonly double LargestHole = 5;
    private static readonly double LeastPitch = 0.5e-3;
    private static readonly double MostFieldHoles = 20_000;

    /// <summary>A shape of a hole.</summary>
    public HoleShape? Shape(string key)
    {
        _ = Rule(key);
        var node = table?.Find(key)?.Value;
        if (node is null)
        {
            return null;
        }

        if (node is not DocScalar { Kind: ScalarKind.Text } scalar)
        {
            context.Wrong(node, Join(key), "is no shape", ShapesAccepted);
            return null;
        }

        var (word, rest) = FirstWord(scalar.Text);
        HoleKind? kind = word switch
        {
            "round" => HoleKind.Round,
            "slot" => HoleKind.Slot,
            "rectangle" or "rect" or "square" => HoleKind.Rectangle,
            _ => null,
        };
        if (kind is null)
        {
            context.Wrong(
                scalar,
                Join(key),
                $"starts with '{QuantityError.Shown(word)}', which is no shape",
                ShapesAccepted
            );
            return null;
        }

        return kind == HoleKind.Round || word == "square"
            ? OneSize(kind.Value, scalar, rest)
            : TwoSizes(kind.Value, scalar, rest);
    }

    /// <summary>How many holes and where; null for a single one.</summary>
    public (HoleLayout? Layout, HoleShape? FieldShape) Layout()
    {
        string[] all = ["grid", "ring", "field", "points"];
        var written = all.Where(Has).ToList();
        if (written.Count > 1)
        {
            context.Wrong(
                table!.Find(written[1])!.Value,
                Join(written[1]),
                $"stands beside {written[0]}",
                $"one of {string.Join(", ", all)}"
            );
        }

        return written.FirstOrDefault() switch
        {
            "grid" => (Grid(Table("grid")), null),
            "ring" => (Ring(Table("ring")), null),
            "field" => Field(Table("field")),
            "points" => Spots("points") is { Count: > 0 } spots ? (new PointsLayout(spots), null) : default,
            _ => default,
        };
    }

    /// <summary>A reference to something that must be there; empty where it is absent.</summary>
    public string Reference(string key, string? part = null)
    {
        var rule = Rule(key);
        var text = Text(key);
        if (text.Length > 0 && table?.Find(key)?.Value is DocScalar scalar)
        {
            Check(scalar, Join(key), rule.RefersTo, part, text);
        }

        return text;
    }

    /// <summary>References to things that must be there.</summary>
    public IReadOnlyList<string> References(string key, int? count, string? part = null)
    {
        var rule = Rule(key);
        var texts = Texts(key);
        if (table?.Find(key)?.Value is not DocArray array)
        {
            return texts;
        }

        if (count is { } wanted && array.Items.Count != wanted)
        {
            context.Wrong(
                array,
                Join(key),
                $"names {array.Items.Count} things",
                $"{wanted} of them, as in {Schema.KeyExamples.Of(rule)}"
            );
        }

        if (array.Items.Count == 0 && string.Equals(key, "air", StringComparison.Ordinal))
        {
            // An empty way would be taken for no way told, which is free air onto the sink: the opposite of what it says.
            context.Wrong(
                array,
                Join(key),
                "names nothing that the air passes",
                $"what it passes, in order, as in {Schema.KeyExamples.Of(rule)}; without the key it passes the sink alone"
            );
        }

        for (var i = 0; i < Math.Min(array.Items.Count, MostItems); i++)
        {
            if (array.Items[i] is DocScalar { Kind: ScalarKind.Text } scalar)
            {
                Check(scalar, DocPath.Item(Join(key), i), rule.RefersTo, part, scalar.Text);
            }
        }

        return texts;
    }

    private void Check(DocScalar scalar, string at, string to, string? part, string name)
    {
        if (context.Ids.IsKnown(to, part, name))
        {
            return;
        }

        var near = context.Ids.Nearest(to, part, name);
        var owner = name.LastIndexOf('.') is var dot and > 0 ? name[..(dot + 1)] : "\0";
        var some = context
            .Ids.Accepted(to, part)
            .OrderByDescending(id => id.StartsWith(owner, StringComparison.Ordinal))
            .ThenBy(id => id, StringComparer.Ordinal)
            .Take(8)
            .ToList();
        var accepted =
            near is not null ? near
            : some.Count > 0 ? string.Join(", ", some)
            : $"nothing yet: there is no [{to}.NAME]";
        var shown = QuantityError.Shown(name);
        context.Problem(
            scalar,
            scalar.Start,
            at,
            shown,
            accepted,
            near is null
                ? $"{at}: '{shown}' names nothing. Accepted: {accepted}."
                : $"{at}: '{shown}' names nothing. Did you mean {near}?"
        );
    }

    private static GridLayout? Grid(TableReader grid)
    {
        var count = grid.TwoCounts("count");
        var pitch = grid.OneOrTwo("pitch");
        if (!grid.Has("pitch"))
        {
            grid.MissingIfRequired(grid.Rule("pitch"), "pitch");
        }

        if (count is not { } c || pitch is not { } p)
        {
            return null;
        }

        // One row has no pitch; whatever stands there does not matter.
        if ((c.X > 1 && p.Size.Width.Nominal < LeastPitch) || (c.Y > 1 && p.Size.Height.Nominal < LeastPitch))
        {
            grid.Context.Wrong(
                grid.Node("pitch")!,
                grid.Path + ".pitch",
                "puts holes on top of each other",
                "at least 0.5 mm wherever there is more than one"
            );
            return null;
        }

        return new GridLayout(c.X, c.Y, p.Size.Width, p.Size.Height);
    }

    private static RingLayout? Ring(TableReader ring)
    {
        var count = ring.Count("count", 0);
        return ring.Optional("diameter") is { } diameter && count > 0 ? new RingLayout(count, diameter) : null;
    }

    private (HoleLayout?, HoleShape?) Field(TableReader field)
    {
        var shape = field.Shape("shape");
        var pitch = field.Optional("pitch");
        var staggered = field.Choice("layout") != "square";
        var edge = field.Optional("edge");
        if (field.Size("within") is not { } within || pitch is null)
        {
            return (null, shape);
        }

        var holes = within.Width.Nominal * within.Height.Nominal / (pitch.Nominal * pitch.Nominal);
        if (holes > MostFieldHoles)
        {
            context.Wrong(
                table!.Find("field")!.Value,
                field.Path,
                $"has about {holes:0} holes",
                $"at most {MostFieldHoles:0}: a wider pitch or a smaller field"
            );
            return (null, shape);
        }

        return (new FieldLayout(pitch, staggered, within) { Edge = edge }, shape);
    }

    private HoleShape? OneSize(HoleKind kind, DocScalar scalar, string text) =>
        Length(scalar, text, "diameter") is { } size ? new HoleShape(kind, size, size, null) : null;

    private HoleShape? TwoSizes(HoleKind kind, DocScalar scalar, string text)
    {
        Value? corner = null;
        var round = text.IndexOf(" r ", StringComparison.Ordinal);
        if (round >= 0 && kind == HoleKind.Rectangle)
        {
            corner = Length(scalar, text[(round + 3)..], "corner", 0);
            if (corner is null)
            {
                return null;
            }

            text = text[..round];
        }

        // Braces may hold an x of their own (max); the sign between the sizes stands outside of them.
        var by = 0;
        for (var depth = 0; by < text.Length && (depth > 0 || text[by] is not ('x' or '×')); by++)
        {
            depth +=
                text[by] == '{' ? 1
                : text[by] == '}' ? -1
                : 0;
        }

        if (by >= text.Length)
        {
            context.Wrong(scalar, Join("shape"), "has one size", ShapesAccepted);
            return null;
        }

        var width = Length(scalar, text[..by], "width");
        var height = Length(scalar, text[(by + 1)..], "height");
        return width is null || height is null ? null : new HoleShape(kind, width, height, corner);
    }

    private Value? Length(DocScalar scalar, string text, string what, double? least = null)
    {
        var at = DocPath.Join(Join("shape"), what);
        var value = context.Values.Resolve(new NamedText(at, text.Trim()));
        var error = value.Error;
        if (error is null && value.Value!.Nominal.Dimension != Dimension.Length)
        {
            error = QuantityText.WrongDimension(text, value.Value.Nominal.Dimension, Dimension.Length);
        }

        if (error is not null)
        {
            var place = scalar.Text.IndexOf(text, StringComparison.Ordinal);
            context.Problem(
                scalar,
                scalar.PlaceOf(Math.Max(0, place)),
                Join("shape"),
                error.Found,
                ShapesAccepted,
                $"{Join("shape")}: {error.Message} Accepted: {ShapesAccepted}."
            );
            return null;
        }

        var si = value.Value!.Nominal.Si;
        if (si < (least ?? SmallestHole) || si > LargestHole)
        {
            context.Wrong(
                scalar,
                Join("shape"),
                $"has a {what} of {ShowAs.Metric.Show(si, Dimension.Length)}",
                "0.2 mm to 5 m"
            );
            return null;
        }

        var origin = ExpressionText.IsExpression(text) ? Origin.Computed : Origin.Given;
        return new Value(si, value.Value.HalfWidth, origin, at);
    }

    private static (string Word, string After) FirstWord(string text)
    {
        var trimmed = text.Trim();
        var blank = trimmed.IndexOf(' ', StringComparison.Ordinal);
        return blank < 0 ? (trimmed, "") : (trimmed[..blank], trimmed[(blank + 1)..]);
    }
}
