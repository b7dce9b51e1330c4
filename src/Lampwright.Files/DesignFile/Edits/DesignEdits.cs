using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;

namespace Lampwright.Files.DesignFile.Edits;

/// <summary>Edits of a design file as splices of its text: comments, order, spacing, line ends and byte order mark all stay.</summary>
/// <remarks>Every edit reads its outcome again; one that would leave a file with more faults as TOML than it had is refused with the reason.</remarks>
public static class DesignEdits
{
    /// <summary>Sets a value: over what stands there, a value or an expression, or as a new key in the sensible place.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">The path, for example <c>driver.main.current.rated</c> or <c>emitter.main.points[0].flux</c>.</param>
    /// <param name="value">
    /// The value as the maker types it, <c>1.2 mm</c>; it is written in quotes unless the key takes a bare number, true or false, and a
    /// number, true or false was typed.
    /// </param>
    public static EditResult Set(DesignText text, string path, string value) =>
        SetRaw(text, path, Written(text, path, value));

    /// <summary>Sets a value that is already written as TOML, for example a list or a table in braces.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">The path.</param>
    /// <param name="toml">The value as TOML.</param>
    public static EditResult SetRaw(DesignText text, string path, string toml)
    {
        if (DocPath.Find(text.Root, path) is { } found)
        {
            return found.Value is DocTable { IsInline: false } or DocArray { IsOfHeaders: true }
                ? Refused(text, $"{path} is a table; its keys are set one by one")
                : Done(text, [new Splice(found.Value.Start, found.Value.Length, toml)], path);
        }

        return Insertion.Of(text, path, toml, out var refusal) is { } splice
            ? Done(text, [splice], path)
            : Refused(text, refusal!);
    }

    /// <summary>Adds an empty table, for example <c>fan.second</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">Its path.</param>
    public static EditResult AddTable(DesignText text, string path)
    {
        if (DocPath.Find(text.Root, path) is not null)
        {
            return Refused(text, $"{path} is there already");
        }

        if (DocPath.Split(path) is not { } parts || parts.Any(p => p.StartsWith('[')))
        {
            return Refused(text, $"'{path}' is no path of a table");
        }

        return Done(text, [Insertion.Table(text, parts, null)], path);
    }

    /// <summary>Deletes a key or a table with all that is in it, and the line it leaves empty.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">Its path.</param>
    public static EditResult Delete(DesignText text, string path) =>
        DocPath.Find(text.Root, path) is null ? Refused(text, $"There is no {path}")
        : Deletion.Of(text, path, out var refusal) is { } splices ? Done(text, splices, null)
        : Refused(text, refusal!);

    /// <summary>Renames a named table and everything that refers to it: headers, references, expressions.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">Its path, for example <c>part.sink_tray</c> or <c>given.gap</c>.</param>
    /// <param name="name">Its new name.</param>
    public static EditResult Rename(DesignText text, string path, string name) =>
        Renaming.Of(text, path, name, out var refusal) is { } splices
            ? Done(text, splices, null)
            : Refused(text, refusal!);

    /// <summary>Replaces the whole text, for an edit by hand; refused where it is no TOML.</summary>
    /// <param name="text">The text.</param>
    /// <param name="whole">The new text.</param>
    public static EditResult Replace(DesignText text, string whole) =>
        Done(text, [new Splice(0, text.Text.Length, whole)], null);

    internal static EditResult Refused(DesignText text, string why) => new(text, [], why);

    private static EditResult Done(DesignText text, IReadOnlyList<Splice> splices, string? path)
    {
        var after = DesignText.Parse(Splice.Apply(text.Text, splices), text.FileName);
        if (after.Problems.Count > text.Problems.Count)
        {
            // A file that is broken elsewhere may still be edited; only a new fault counts.
            var problem =
                after.Problems.FirstOrDefault(p => !text.Problems.Any(old => old.Message == p.Message))
                ?? after.Problems[0];
            return Refused(text, $"The file could not be read any more: line {problem.Line}: {problem.Message}");
        }

        // A value such as `1 = 2` or one with a line break may be TOML and yet land elsewhere.
        return path is not null && DocPath.Find(after.Root, path) is null
            ? Refused(text, $"'{path}' cannot be set so")
            : new EditResult(after, splices, null);
    }

    private static string Written(DesignText text, string path, string value)
    {
        var typed = value.Trim();
        var key = DesignSchema.OfPath(path);
        var old = DocPath.Find(text.Root, path)?.Value as DocScalar;
        var bare =
            key?.Kind is KeyKind.Flag
            || (key?.Kind is KeyKind.Count or KeyKind.TwoCounts or KeyKind.Quantity && key.Dimension.IsNone)
            || key?.Name is "every"
            || (key is null && old is { Kind: not ScalarKind.Text });
        return bare && IsBareValue(typed) ? typed : DocPath.Quoted(typed);
    }

    private static bool IsBareValue(string typed)
    {
        if (typed is "true" or "false")
        {
            return true;
        }

        // What TOML takes as a number: no leading zero, digits on both sides of the point.
        var digits = typed.AsSpan().TrimStart('-');
        if (digits.IsEmpty || typed.AsSpan().IndexOfAnyExcept("-0123456789.") >= 0 || digits.Contains('-'))
        {
            return false;
        }

        var point = digits.IndexOf('.');
        var whole = point < 0 ? digits : digits[..point];
        return whole.Length > 0
            && (whole.Length == 1 || whole[0] != '0')
            && whole.Length < 16
            && (point < 0 || (point < digits.Length - 1 && !digits[(point + 1)..].Contains('.')));
    }
}
