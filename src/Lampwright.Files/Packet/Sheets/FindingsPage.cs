using System.Globalization;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Findings;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>What a foreman would say of the design, in full, and what the predictions hang on most.</summary>
internal static class FindingsPage
{
    public static void Draw(PacketBook book)
    {
        var findings = book.Evaluation.Findings;
        if (findings.Count == 0 && book.Evaluation.Influences.Count == 0)
        {
            return;
        }

        var flow = new Flow(book, new("Findings")).Begun();
        flow.Title("Findings");
        foreach (var rule in findings.GroupBy(f => f.Code, StringComparer.Ordinal))
        {
            One(flow, [.. rule]);
        }

        Influences(flow, book);
    }

    /// <summary>A small flag with the severity.</summary>
    public static void Tag(PaperInk ink, Severity severity, double x, double y)
    {
        var tint = TintOf(severity);
        ink.Box(
            x,
            y - 2.7,
            10.5,
            3.6,
            severity == Severity.Note ? new(tint, 0.2) : null,
            severity == Severity.Note ? null : tint
        );
        var text = severity.ToString().ToUpperInvariant();
        ink.Text(
            text,
            x + 5.25,
            y,
            new(2.4, severity == Severity.Note ? tint : Palette.Paper, Anchor.Middle, Weight.SemiBold)
        );
    }

    private static Tint TintOf(Severity severity) =>
        severity switch
        {
            Severity.Stop => Palette.Stop,
            Severity.Warn => Palette.Warn,
            _ => Palette.Soft,
        };

    /// <summary>A rule with all places where it is broken.</summary>
    private static void One(Flow flow, IReadOnlyList<Finding> findings)
    {
        var rule = findings[0].Rule;
        flow.Need(18);
        flow.Skip(4);
        Tag(flow.Ink, rule.Severity, flow.Left, flow.Y);
        flow.Ink.Text(
            Texts.Fitting(PaperInk.Readable(rule.Title), flow.Width - 32, 3.2, Weight.SemiBold),
            flow.Left + 13,
            flow.Y,
            new(3.2, Palette.Ink, Weight: Weight.SemiBold)
        );
        flow.Ink.Text(rule.Code, flow.Left + flow.Width, flow.Y, new(2.6, Palette.Soft, Anchor.End));
        flow.Skip(1.2);
        flow.Paragraph($"Do: {rule.Remedy}", 3, Palette.Hold, Weight.Medium, 13);
        foreach (var finding in findings)
        {
            var scene = finding.Scene.Length == 0 ? "" : $" ({finding.Scene})";
            flow.Skip(0.5);
            flow.Paragraph($"{finding.Message}{scene}", 3, indent: 13);
            if (!finding.Message.Contains(finding.Path, StringComparison.Ordinal))
            {
                flow.Paragraph(finding.Path, 2.3, Palette.Soft, indent: 13);
            }
        }

        flow.Paragraph($"Source: {rule.Source}", 2.3, Palette.Soft, indent: 13);
        flow.Skip(2.4);
    }

    private static void Influences(Flow flow, PacketBook book)
    {
        if (book.Evaluation.Influences.Count == 0)
        {
            return;
        }

        flow.Head("What the predictions hang on most", "share of the spread that one uncertain value causes");
        foreach (var result in book.Evaluation.Influences.GroupBy(i => i.Result, StringComparer.Ordinal))
        {
            var parts = result
                .OrderByDescending(i => i.Share)
                .Take(6)
                .Select(i =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{(i.Direction < 0 ? "↓" : "↑")} {i.Variable} {i.Share * 100:0} %"
                    )
                );
            flow.Need(12);
            flow.Paragraph(result.Key, 2.9, weight: Weight.Medium);
            flow.Paragraph(string.Join("   ", parts), 2.7, Palette.Soft, indent: 4);
            flow.Skip(1);
        }
    }
}
