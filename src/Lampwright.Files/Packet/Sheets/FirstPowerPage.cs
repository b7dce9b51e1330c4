using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Steps.Faults;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The sheet for the first power: what a meter shows with the plug out, a dummy load, then the emitter.</summary>
internal static class FirstPowerPage
{
    private const string byDrop =
        "Power, dimmest position. Millivolts across the fixed resistor give the amps: table below. Then one position brighter at a time.";

    // Across branches stands the threshold, whatever flows.
    private const string byMeter =
        "Power, dimmest position, a meter in the dummy load's lead for the amps. Then one position brighter at a time.";

    private const string byLooseLead =
        "Pull each lead of the chain once with the plug out, power, look: the current is none or small, never more than in the brightest position. Plug out before it goes back.";

    // A trial must not be the fault that kills the driver.
    private const string byTug =
        "Tug at each lead of the chain and at each lug, plug out. No lead is pulled off for a trial under power here: emitter or driver is not sure to bear it (single faults).";

    private static readonly string[] order =
    [
        "Plug out, capacitors measured below 10 V. Emitter off, its pair unplugged at the driver.",
        "No continuity from any lead of the chain to earth, to the supply side, or to either lead of the emitter.",
        "Diode test at the emitter's pair: it conducts one way only, plus to LED +.",
        "Milliohms from LED − to G in every position of the table below, four wires or the meter's leads zeroed. Out of its range: stop and look.",
        "Where potting was taken out: insulation and the path of its heat are restored, checked, and written down here: ______________________",
        "Dummy load before the emitter: power resistors of the volts and amps of the dimmest position, across LED + and LED −. Clear of everything, it gets hot.",
        byDrop,
        byLooseLead,
        "Plug out, wait, measure below 10 V. Only now the emitter in place of the dummy load. Never connect an emitter to a live driver: what its output holds goes through it at once.",
        "Emitter, dimmest position, diffuser on, a thermometer on the sink. Then the test sheet.",
    ];

    // What the file says cannot happen and no meter shows: somebody has to have looked.
    private const string byKind =
        "Looked at, since the stop against it is left out on your word: every resistor is metal strip, metal film or wirewound, none carbon, none bridged by solder. Kind: ______________";

    private const string byWay =
        "Looked at, since the stop against it is left out on your word: the emitter's pair has a way of its own, touches no lead of the chain when pulled, and its plug fits nowhere else.";

    // Where no loose lead was played nothing is known of it.
    private static bool BearsLooseLead(StepsAnswer steps)
    {
        var loose = steps
            .Faults.Where(f => f is { Fault.Kind: FaultKind.LeadBroken, Standing: FaultStanding.Counts })
            .ToList();
        return loose.Count > 0
            && loose.TrueForAll(f => f is { Emitter: Survival.Yes, Driver: Survival.Yes, Resistors: Survival.Yes });
    }

    private static IEnumerable<string> Lines(StepsAnswer steps)
    {
        foreach (var (line, i) in order.Select((l, i) => (l, i)))
        {
            yield return line == byDrop && steps.Build!.Fixed.Count == 0 ? byMeter
            : line == byLooseLead && !BearsLooseLead(steps) ? byTug
            : line;
            if (i != 1)
            {
                continue;
            }

            var onWord = steps.Faults.Where(f => f.Standing == FaultStanding.Excluded).ToList();
            if (onWord.Exists(f => f.Fault.Kind == FaultKind.ResistorShort))
            {
                yield return byKind;
            }

            if (onWord.Exists(f => f.Fault.Kind is FaultKind.LeadsTouch or FaultKind.LeadsSwapped))
            {
                yield return byWay;
            }
        }
    }

    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Steps is not { Build.Patterns.Count: > 0 } steps)
        {
            return;
        }

        var flow = new Flow(book, new("First power")).Begun();
        flow.Title("First power", "in this order; tick each line");
        foreach (var (text, i) in Lines(steps).Select((l, i) => (l, i)))
        {
            flow.Need(9);
            flow.Ink.Box(flow.Left, flow.Y + 0.7, 2.8, 2.8, new(Palette.Ink, 0.18));
            flow.Paragraph(
                $"{(i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)}  {text}",
                2.8,
                indent: 5
            );
            flow.Skip(0.5);
        }

        Patterns(flow, steps);
        Fixed(flow, steps);
        flow.Paragraph(
            "Supply side, earth and fuse by the local code, by somebody licensed where the law asks for one. A driver that was opened has lost its maker's approval.",
            2.8,
            Palette.Stop,
            Weight.Medium
        );
    }

    private static void Patterns(Flow flow, StepsAnswer steps)
    {
        flow.Head("Plug out: milliohms from LED − to G, by position", "by tolerance and contacts; write what it shows");
        var build = steps.Build!;
        var wide = Math.Max(22, 6 + (steps.Combinations[0].Switches.Length * 2.4));
        var table = new Table(
            [
                new("switches", "", wide),
                new("expect", "mΩ", 20, 16),
                new("least", "mΩ", 20, 15),
                new("most", "mΩ", 20, 15),
                new("", "", 23),
                new("amps", "A", 19, 13),
                new("fixed", "mV", 21, 15),
                new("", "", 22),
            ],
            build.Patterns.Count > 16 ? 4.6 : 5.8,
            2.9
        );
        table.Draw(
            flow,
            [
                .. build.Patterns.Select(p =>
                    (IReadOnlyList<Cell>)
                        [
                            new(p.Switches, Weight: Weight.SemiBold),
                            ((Cell)WiringSchedule.Number(p.Ohm, 1000, "0")).Strong,
                            WiringSchedule.Number(p.LeastOhm, 1000, "0"),
                            WiringSchedule.Number(p.MostOhm, 1000, "0"),
                            "",
                            WiringSchedule.Number(p.CurrentA, 1, "0.000"),
                            WiringSchedule.Number(p.FixedV, 1000, "0.0"),
                            "",
                        ]
                ),
            ],
            (ink, _, left, y) =>
            {
                foreach (var x in new[] { left + wide + 60, left + wide + 60 + 23 + 40 })
                {
                    ink.Box(x, y - (table.RowHeight / 2) - 0.3, 21, table.RowHeight - 1.2, new(Palette.Ink, 0.18));
                }
            }
        );
    }

    private static void Fixed(Flow flow, StepsAnswer steps)
    {
        if (steps.Build!.Fixed is not { Count: > 0 } rows)
        {
            return;
        }

        var what = steps.Arrangement == "parallel branches" ? "floor" : "fixed resistor";
        flow.Head($"Millivolts across the {what} against amps");
        const int across = 8;
        for (var i = 0; i < rows.Count; i += across)
        {
            flow.Need(10);
            for (var k = i; k < Math.Min(i + across, rows.Count); k++)
            {
                var x = flow.Left + ((k - i) * 21.5);
                flow.Ink.Text(
                    $"{WiringSchedule.Number(rows[k].CurrentA, 1, "0.###")} A",
                    x,
                    flow.Y + 3,
                    new(2.6, Palette.Soft)
                );
                flow.Ink.Text(
                    $"{WiringSchedule.Number(rows[k].FixedV, 1000, "0.0")} mV",
                    x,
                    flow.Y + 7,
                    new(3.1, Palette.Ink, Weight: Weight.Medium)
                );
            }

            flow.Skip(9.5);
        }

        flow.Skip(1);
    }
}
