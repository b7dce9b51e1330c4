using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Steps.Faults;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>Leads with their resistance and heat, how each resistor is mounted, what each switch bears, where the taps go, the fuse.</summary>
internal static class WiringSchedule
{
    public static void Draw(Flow flow, StepsAnswer steps)
    {
        if (steps.Build is not { } build)
        {
            return;
        }

        Leads(flow, build);
        Mounting(flow, build);
        Contacts(flow, build);
        flow.Head("Taps, bleed, fuse");
        flow.Paragraph(build.Taps, 2.8);
        if (build.Bleed is { } bleed)
        {
            var what = bleed.Given
                ? "Across the leads on the board:"
                : "Offered, across the leads on the board (steps.bleed):";
            flow.Skip(0.8);
            flow.Paragraph($"{what} {WiringPage.Ohms(bleed.Ohm)} Ω. {bleed.Words}", 2.8);
        }

        if (build.FloorOhm is { } floor)
        {
            flow.Skip(0.8);
            flow.Paragraph(
                $"A floor in series with all branches on the board takes at least {WiringPage.Ohms(floor)} Ω.",
                2.8
            );
        }

        if (steps.Fuse is { } fuse)
        {
            flow.Skip(0.8);
            flow.Paragraph("Fuse: " + fuse.Words, 2.8);
        }

        flow.Skip(2);
    }

    private static void Leads(Flow flow, ChainBuild build)
    {
        flow.Head("Leads by their nodes", "warm, at the brightest position");
        new Table(
            [
                new("lead", "", 13),
                new("from", "", 25),
                new("to", "", 21),
                new("length", "m", 14, 12),
                new("area", "mm²", 16, 13),
                new("", "mΩ", 14, 12),
                new("drop", "mV", 16, 13),
                new("heat", "mW", 16, 13),
                new("counts", "", 16),
                new("done", "", 9),
            ],
            4.8,
            2.6
        ).Draw(
            flow,
            [
                .. build.Leads.Select(l =>
                    (IReadOnlyList<Cell>)
                        [
                            ((Cell)l.Name).Strong,
                            l.From,
                            l.To,
                            Number(l.LengthM, 1, "0.##"),
                            Number(l.AreaMm2, 1, "0.##"),
                            Number(l.Ohm, 1000, "0.0"),
                            Number(l.DropV, 1000, "0.0"),
                            Number(l.HeatW, 1000, "0"),
                            l.InLoop ? "in loop" : "",
                            "□",
                        ]
                ),
            ]
        );
        foreach (var same in build.Leads.GroupBy(l => l.Words, StringComparer.Ordinal))
        {
            flow.Paragraph($"{string.Join(", ", same.Select(l => l.Name))}: {same.Key}.", 2.5, Palette.Soft);
        }
    }

    private static void Mounting(Flow flow, ChainBuild build)
    {
        flow.Head("How the resistors are mounted");
        new Table(
            [
                new("part", "", 16),
                new("from", "", 24),
                new("to", "", 20),
                new("value", "Ω", 16, 14),
                new("rise", "K", 14, 11),
                new("mounting", "", 78),
            ],
            4.8,
            2.6
        ).Draw(
            flow,
            [
                .. build.Resistors.Select(r =>
                    (IReadOnlyList<Cell>)
                        [
                            ((Cell)r.Name).Strong,
                            r.From,
                            r.To,
                            ((Cell)WiringPage.Ohms(r.Ohm)).Strong,
                            Number(r.RiseK, 1, "0"),
                            r.Mounting,
                        ]
                ),
            ]
        );
    }

    private static void Contacts(Flow flow, ChainBuild build)
    {
        if (build.Contacts.Count == 0)
        {
            return;
        }

        flow.Head("What the switches bear");
        new Table(
            [
                new("switch", "", 16),
                new("from", "", 24),
                new("to", "", 20),
                new("closed", "A", 20, 13),
                new("open", "mV", 20, 13),
                new("rated", "A", 20, 13),
            ],
            4.8,
            2.6
        ).Draw(
            flow,
            [
                .. build.Contacts.Select(c =>
                    (IReadOnlyList<Cell>)
                        [
                            ((Cell)c.Name).Strong,
                            c.From,
                            c.To,
                            Number(c.MostA, 1, "0.00"),
                            Number(c.OpenV, 1000, "0"),
                            Number(c.RatedA, 1, "0.##"),
                        ]
                ),
            ]
        );
        flow.Paragraph("Contacts are " + build.Contacts.MinBy(c => c.OpenV)!.Words + ".", 2.5, Palette.Soft);
    }

    /// <summary>A number with its decimals, or a dash.</summary>
    internal static string Number(double? value, double factor, string format) =>
        value is { } known ? (known * factor).ToString(format, CultureInfo.InvariantCulture) : "–";
}
