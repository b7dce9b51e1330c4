using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Rules of the order of bending on a brake.</summary>
public static partial class MetalRules
{
    /// <summary>A part that no order bends on the brake that is described.</summary>
    public static readonly Rule NoBendOrder = new(
        "MET057",
        "The bends of a part have an order on this brake",
        Severity.Warn,
        "Do what the finding says would free it, or change the part; a brake that is described by more than its heights can be told by its section.",
        "derived: all orders looked at (docs/metal-shop.md); fingers between standing walls: US Navy aviation structural training manual, chapter 13"
    );

    /// <summary>A part that no order bends on a brake as is usual, where the shop's own is not described.</summary>
    public static readonly Rule NoBendOrderUsual = new(
        "MET058",
        "The bends of a part have an order on a usual hand brake",
        Severity.Note,
        "Write the fingers and heights of your brake under [brake]; then the order is looked for on it.",
        "derived: all orders looked at (docs/metal-shop.md), on a brake of common practice, no source"
    );

    /// <summary>A section of the brake that is none.</summary>
    public static readonly Rule BrakeSectionWrong = new(
        "MET059",
        "The sections of the brake are outlines that do not cross themselves",
        Severity.Warn,
        "Give the corners in the order in which one goes round the section.",
        "derived"
    );

    /// <summary>A brake without fingers.</summary>
    public static readonly Rule NoFingers = new(
        "MET060",
        "A brake has something that clamps",
        Severity.Warn,
        "List the widths of its fingers; a clamp in one piece is one finger as long as the brake. Left out, a usual set stands in.",
        "common practice, no source"
    );

    /// <summary>More bends than are searched through.</summary>
    public static readonly Rule TooManyBends = new(
        "MET061",
        "The bends of a part are few enough to look at all their orders",
        Severity.Note,
        "Make it of two parts; up to 20 strokes of the apron are searched through. Nothing is said of its order.",
        "derived (two to the power of its bends states are looked at)"
    );

    private static IReadOnlyList<Rule> Order =>
        [NoBendOrder, NoBendOrderUsual, BrakeSectionWrong, NoFingers, TooManyBends];
}
