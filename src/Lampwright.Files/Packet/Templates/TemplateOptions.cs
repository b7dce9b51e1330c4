using Lampwright.Design;
using Lampwright.Metal;

namespace Lampwright.Files.Packet.Templates;

/// <summary>How templates are printed.</summary>
/// <param name="Paper">Their paper, upright; of a roll its width counts.</param>
public sealed record TemplateOptions(Paper Paper)
{
    /// <summary>What is printed longer than drawn along the short side of the paper: printed length over measured length of its bar.</summary>
    public double Across { get; init; } = 1;

    /// <summary>The same along the long side.</summary>
    public double Along { get; init; } = 1;

    /// <summary>Which faces get a template: <c>both</c>, <c>outside</c> or <c>inside</c>.</summary>
    public string Faces { get; init; } = "both";

    /// <summary>A printer that is further off than this (3 %) fits to the page instead of printing at 100 %; that is not corrected.</summary>
    public static double FurthestOff { get; } = 0.03;

    /// <summary>True when both corrections are such as a printer needs that prints at 100 %.</summary>
    public bool IsCorrectable => Math.Abs(Across - 1) <= FurthestOff && Math.Abs(Along - 1) <= FurthestOff;

    /// <summary>True when something is corrected.</summary>
    public bool IsStretched => IsCorrectable && (Across != 1 || Along != 1);

    /// <summary>The options that a design asks for.</summary>
    /// <param name="show">How the design wants to be shown.</param>
    public static TemplateOptions Of(Show show)
    {
        ArgumentNullException.ThrowIfNull(show);
        var wanted = show.Templates;
        var paper = wanted.Paper switch
        {
            "" => Paper.Of(show.Paper),
            "roll" => Paper.Roll(wanted.Roll.Nominal * 1000, 2 * wanted.Roll.Nominal * 1000),
            var name => Paper.Of(name),
        };
        var (across, along) = (ProofBars.LengthMm(paper.WidthMm), ProofBars.LengthMm(paper.HeightMm));
        return new(paper)
        {
            Across = wanted.BarAcross is { } a ? across / (a.Nominal * 1000) : 1,
            Along = wanted.BarAlong is { } b ? along / (b.Nominal * 1000) : 1,
            Faces = wanted.Faces,
        };
    }

    /// <summary>Whether a template of the outside of a part is printed.</summary>
    internal bool ShowsOutside => Faces != "inside";

    /// <summary>Whether a template of the inside is printed: always when only that is asked for, else where a set line lies there.</summary>
    internal bool ShowsInside(Blank blank) =>
        Faces == "inside" || (Faces != "outside" && blank.Bends.Any(b => b.Set is { OnInside: true }));

    /// <summary>Stretches a page as its printer needs it.</summary>
    internal void Stretch(PaperInk ink, Paper page)
    {
        if (IsStretched)
        {
            var (x, y) = page.Lies ? (Along, Across) : (Across, Along);
            ink.Stretch(x, y, page.WidthMm / 2, page.HeightMm / 2);
        }
    }
}
