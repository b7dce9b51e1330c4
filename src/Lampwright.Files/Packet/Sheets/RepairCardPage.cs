using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;
using Lampwright.Steps.Faults;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>A card for the inside of the lid: what is in there, what a meter shows, and what it looks like when one thing fails.</summary>
internal static class RepairCardPage
{
    private const double Width = 150;
    private const int MostFaults = 14;
    private static readonly Stroke cut = new(Palette.Soft, 0.18, [2, 1.2]);

    public static void Draw(PacketBook book)
    {
        if (book.Evaluation.Steps is not { Build: { Patterns.Count: > 0 } build, Faults.Count: > 0 } steps)
        {
            return;
        }

        var flow = new Flow(book, new("Repair card", Scale: "1:1")).Begun();
        flow.Title("Repair card", "full size; cut along the dashes, for the inside of the lid");
        var (x, top) = (flow.Left, flow.Y);
        var y = top + 6;
        void Line(string text, double size = 2.5, Tint? tint = null, Weight weight = Weight.Regular, double indent = 0)
        {
            foreach (var line in Texts.Lines(PaperInk.Readable(text), Width - 8 - indent, size, weight))
            {
                flow.Ink.Text(line, x + 4 + indent, y, new(size, tint ?? Palette.Ink, Weight: weight));
                y += size * 1.4;
            }
        }

        Line(book.Evaluation.Title, 3.8, weight: Weight.SemiBold);
        y += 1;
        Line(
            "Plug out, wait, measure below 10 V before touching. Supply side by somebody licensed.",
            2.6,
            Palette.Stop,
            Weight.Medium
        );
        Line(
            "Never connect an emitter to a live driver. After any repair: first-power sheet, dummy load first.",
            2.6,
            Palette.Stop,
            Weight.Medium
        );
        y += 1.5;
        Line(
            $"{steps.Arrangement}; threshold {WiringSchedule.Number(steps.SenseThresholdV.Value, 1000, "0")} mV",
            2.8,
            weight: Weight.Medium
        );
        foreach (var r in build.Resistors)
        {
            Line($"{r.Name}  {WiringPage.Ohms(r.Ohm)} Ω  {r.From} to {r.To}", indent: 3);
        }

        y += 1;
        var (bright, dim) = (build.Patterns.MinBy(p => p.Ohm)!, build.Patterns.MaxBy(p => p.Ohm)!);
        Line(
            $"Plug out, LED − to G: {bright.Switches} {Milliohms(bright)}; {dim.Switches} {Milliohms(dim)}.",
            2.6,
            weight: Weight.Medium
        );
        y += 1.5;
        Line("What it looks like when one thing fails", 2.8, weight: Weight.SemiBold);
        foreach (var same in Groups(steps).Take(MostFaults))
        {
            Line($"{same.Key}: {string.Join("; ", same.Select(f => f.What).Distinct())}.", 2.4, indent: 3);
            y += 0.5;
        }

        Line($"state {book.State}", 2, Palette.Soft);
        flow.Ink.Path([(x, top), (x + Width, top), (x + Width, y + 1), (x, y + 1)], true, cut);
        flow.Skip(y - top + 4);
    }

    // What is seen leads to what may be wrong, not the other way round. What the maker gave his word against is the first to look for.
    private static IEnumerable<IGrouping<string, FaultResult>> Groups(StepsAnswer steps) =>
        steps
            .Faults.Where(f => f.Fault.Kind is not (FaultKind.LeadsSwapped or FaultKind.SupplyPulled))
            .GroupBy(f => f.See, StringComparer.Ordinal);

    private static string Milliohms(PatternRow p) =>
        $"{WiringSchedule.Number(p.Ohm, 1000, "0")} mΩ ({WiringSchedule.Number(p.LeastOhm, 1000, "0")} to {WiringSchedule.Number(p.MostOhm, 1000, "0")})";
}
