using System.Globalization;
using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The chain: its circuit, its parts, and every wire from where to where.</summary>
internal static class WiringPage
{
    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Steps is not { Parts.Count: > 0 } steps)
        {
            return;
        }

        var flow = new Flow(book, new("Wiring of the chain")).Begun();
        flow.Title(
            "Wiring of the chain",
            $"{steps.Arrangement}, values {(steps.ChosenBy == "given" ? "as given" : "by the first search")}"
        );
        flow.Skip(1);
        flow.Skip(new ChainSchematic(flow.Ink, steps, Lead(book.Design.Steps)).Draw(flow.Left, flow.Y, flow.Width));
        Resistors(flow, book, steps);
        Wires(flow, book, steps);
        WiringSchedule.Draw(flow, steps);
        flow.Paragraph(
            "Wires leave the driver's sense parts only on the isolated output side. The supply side is wired by the local code, by somebody licensed where the law asks for one.",
            2.8,
            Palette.Stop,
            Fonts.Weight.Medium
        );
    }

    /// <summary>Ohms to three figures, as they are printed on a part.</summary>
    internal static string Ohms(double ohm) => ohm.ToString("0.###", CultureInfo.InvariantCulture);

    private static void Resistors(Flow flow, PacketBook book, StepsAnswer steps)
    {
        flow.Head("Resistors");
        var unit = book.Units.Temperature.Sign;
        new Table(
            [
                new("part", "", 14),
                new("value", "Ω", 20, 14),
                new("rated", "W", 18, 11),
                new("takes at most", "W", 38, 15),
                new("may take there", "W", 38, 15),
                new("gets", unit, 40, 14),
            ],
            5.6,
            3.1
        ).Draw(
            flow,
            [
                .. steps
                    .Parts.SelectMany(p => p.Soldered())
                    .Select(p =>
                        (IReadOnlyList<Cell>)
                            [
                                ((Cell)p.Name).Strong,
                                ((Cell)Ohms(p.ResistanceOhm)).Strong,
                                p.RatingW.ToString("0.##", CultureInfo.InvariantCulture),
                                Cell.Of(p.MostW, 2) with
                                {
                                    Tint = p.MostW.Value > p.DeratedW.Value ? Palette.Stop : null,
                                },
                                Cell.Of(p.DeratedW, 2),
                                book.Units.Degrees(p.HottestC),
                            ]
                    ),
            ]
        );
    }

    private static void Wires(Flow flow, PacketBook book, StepsAnswer steps)
    {
        var rows = new List<IReadOnlyList<Cell>>();
        var lead = Lead(book.Design.Steps);
        void Row(string from, string to, string what) =>
            rows.Add([(rows.Count + 1).ToString(CultureInfo.InvariantCulture), from, to, what, "□"]);

        if (steps.Build is { } build)
        {
            foreach (var l in build.Leads.Where(l => !l.Name.StartsWith("LED", StringComparison.Ordinal)))
            {
                Row(l.From, l.To, l.Name == "tap" ? "lead tap, to the sense input" : $"lead {l.Name}, {lead}");
            }

            foreach (var r in build.Resistors)
            {
                Row(r.From, r.To, $"{r.Name} {Ohms(r.Ohm)} Ω{(r.OnBoard ? ", on the driver's board" : "")}");
            }

            foreach (var c in build.Contacts)
            {
                Row(
                    c.From,
                    c.To,
                    steps.Arrangement == "series chain" ? $"{c.Name}, closed by-passes R{c.Name[1..]}" : c.Name
                );
            }
        }

        Row("driver, LED +", "emitter +", "");
        Row("driver, LED −", "emitter −", "");
        foreach (var fan in book.Design.Fans)
        {
            var volts = fan.RunAt is { } at
                ? string.Create(CultureInfo.InvariantCulture, $"runs at {at.Nominal:0.#} V")
                : "";
            Row($"supply of fan {fan.Name}", $"fan {fan.Name}", volts);
        }

        if (book.Design.Place.Supply is not { Kind: SupplyKind.Dc })
        {
            Row("protective earth of the supply", "every metal part that can be touched", "own screw, toothed washer");
        }

        flow.Paragraph(
            "Nodes: board LED − is sense A, board G is sense B, board M the pad behind the part that stays on the board, board S the sense input; plate P and plate Q are the ends of the chain, plate 1, 2 … what lies between.",
            2.5,
            Palette.Soft
        );
        flow.Head("Wires", $"leads to the plate and back {ChartText.WithBand(steps.LeadOhm.In(1000), "mΩ")}");
        new Table(
            [new("", "", 6), new("from", "", 44), new("to", "", 54), new("what", "", 58), new("done", "", 8)],
            4.8,
            2.8
        ).Draw(flow, rows);
    }

    private static string Lead(Design.Steps? steps) =>
        steps is null
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $"leads {steps.LeadLength.Nominal:0.##} m, {steps.LeadArea.Nominal * 1e6:0.##} mm²"
            );
}
