using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;
using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>The chain as a circuit: driver, emitter, sense path with its resistors and switches.</summary>
/// <remarks>Symbols after IEC 60617: resistor as a box, make contact, light-emitting diode, protective earth.</remarks>
internal sealed class ChainSchematic(PaperInk ink, StepsAnswer steps, string lead)
{
    private static readonly Stroke wire = new(Palette.Ink, 0.35);
    private static readonly Stroke symbol = new(Palette.Ink, 0.5);
    private static readonly Stroke plate = new(Palette.Flow, 0.25, [2.4, 1.2]);
    private static readonly TextStyle small = new(2.4, Palette.Soft);
    private static readonly TextStyle name = new(3, Palette.Ink, Weight: Weight.SemiBold);

    private int Switches => Math.Max(0, steps.Parts.Count - 1);

    /// <summary>Draws into a box of the given width and gives the height that was used.</summary>
    public double Draw(double x, double y, double width)
    {
        var rows = steps.Arrangement == "series chain" ? 1 : Switches;
        var height = Math.Max(67, 34 + (rows * 13));
        var (driverRight, padA, padB) = (x + 34, y + 33.0, y + height - 8);
        Driver(x, y, driverRight, padA, padB, height);
        Emitter(driverRight, y + 7, x + width);
        if (steps.Arrangement == "series chain")
        {
            Series(driverRight, padA, padB, x + width);
        }
        else
        {
            Branches(driverRight, padA, padB, x + width, steps.Arrangement == "selector");
        }

        return height + 3;
    }

    private void Driver(double x, double y, double right, double padA, double padB, double height)
    {
        ink.Box(x, y, right - x, height, symbol);
        ink.Text("driver", x + 3, y + 6, name);
        ink.Text("supply", x + 3, y + height - 4, small);
        Pad(right, y + 7, "LED +");
        Pad(right, y + 19, "LED −");
        Pad(right, padA, "sense A");
        Pad(right, padB, "sense B");
        ink.Text(
            string.Create(CultureInfo.InvariantCulture, $"{ChartText.Fixed(steps.SenseThresholdV.Value * 1000, 0)} mV"),
            right - 3,
            (padA + padB) / 2,
            new(3.4, Palette.Ink, Anchor.End, Weight.Medium)
        );
        ink.Text("over A–B", right - 3, ((padA + padB) / 2) + 4, small with { Anchor = Anchor.End });
    }

    private void Pad(double x, double y, string text)
    {
        ink.Circle(x, y, 0.9, wire, Palette.Paper);
        ink.Text(text, x - 2.2, y + 0.9, small with { Anchor = Anchor.End, Tint = Palette.Ink });
    }

    private void Emitter(double from, double y, double right)
    {
        var x = Math.Min(from + 70, right - 20);
        var (top, bottom) = (y, y + 12);
        Wire((from + 0.9, top), (x, top), (x, top + 3.5));
        Wire((x, bottom - 3.5), (x, bottom), (from + 0.9, bottom));
        ink.Path([(x - 3, top + 3.5), (x + 3, top + 3.5), (x, bottom - 3.5)], true, symbol);
        ink.Line(x - 3, bottom - 3.5, x + 3, bottom - 3.5, symbol);
        foreach (var shift in new[] { 0.0, 2.2 })
        {
            var (ax, ay) = (x + 4 + shift, top + 5.4);
            ink.Line(ax, ay, ax + 3, ay - 3, new(Palette.Light, 0.35));
            ink.Path([(ax + 3, ay - 3), (ax + 1.6, ay - 2.6), (ax + 2.6, ay - 1.6)], true, null, Palette.Light);
        }

        if (steps.Combinations.Count > 0)
        {
            var (amps, volts) = (steps.Combinations[0].CurrentA.Value, steps.Combinations[0].VoltageV.Value);
            ink.Text("emitter", x + 12, top + 5, name);
            ink.Text($"all closed: {ChartText.Number(amps)} A at {ChartText.Number(volts)} V", x + 12, top + 9, small);
        }
    }

    private void Series(double from, double padA, double padB, double right)
    {
        var end = right - 4;
        var start = from + 6;
        var cell = Math.Min(32, (end - start) / (Switches + 1));
        Wire((from + 0.9, padA), (start, padA));
        Resistor(steps.Parts[0], start, padA, cell);
        ink.Text(
            "stays on the board",
            start + (cell / 2),
            padA + 5.4,
            small with
            {
                Anchor = Anchor.Middle,
                Size = 2.1,
            }
        );
        var x = start + cell;
        var (boxLeft, boxTop) = (x - 1.2, padA - 10);
        for (var i = 1; i <= Switches; i++)
        {
            var low = padA + 11;
            Resistor(steps.Parts[i], x, padA, cell);
            Wire((x + (cell * 0.1), padA), (x + (cell * 0.1), low), (x + (cell * 0.34), low));
            Wire((x + (cell * 0.66), low), (x + (cell * 0.9), low), (x + (cell * 0.9), padA));
            Contact(x + (cell * 0.34), x + (cell * 0.66), low);
            ink.Text(S(i), x + (cell / 2), low + 4, name with { Anchor = Anchor.Middle });
            Dot(x + (cell * 0.1), padA);
            Dot(x + (cell * 0.9), padA);
            x += cell;
        }

        Wire((x, padA), (x + 1.5, padA), (x + 1.5, padB), (from + 0.9, padB));
        if (Switches > 0)
        {
            ink.Path([(boxLeft, boxTop), (x + 0.4, boxTop), (x + 0.4, padA + 17), (boxLeft, padA + 17)], true, plate);
            ink.Text($"switch plate: {lead}", boxLeft, padA + 20.5, small with { Tint = Palette.Flow });
        }
    }

    private void Branches(double from, double padA, double padB, double right, bool isSelector)
    {
        var (left, end) = (from + 14, Math.Min(right - 6, from + 96));
        var pitch = Math.Min(13, (padB - padA) / Math.Max(1, Switches));
        Wire((from + 0.9, padA), (left, padA), (left, padA + (pitch * Switches)));
        Wire((end, padA), (end, padB), (from + 0.9, padB));
        for (var i = 0; i <= Switches; i++)
        {
            var y = padA + (i * pitch);
            var middle = (left + end) / 2;
            Resistor(steps.Parts[i], left, y, middle - left);
            if (i == 0)
            {
                Wire((middle, y), (end, y));
            }
            else
            {
                Wire((middle, y), (middle + 8, y));
                Contact(middle + 8, middle + 18, y);
                Wire((middle + 18, y), (end, y));
                ink.Text(
                    isSelector ? $"position {i.ToString(CultureInfo.InvariantCulture)}" : S(i),
                    middle + 21,
                    y - 1.4,
                    name
                );
            }
        }

        var word = isSelector ? "one of the contacts at a time" : "each with its switch";
        ink.Text($"switch plate ({word}): {lead}", left, padB + 4.5, small with { Tint = Palette.Flow });
    }

    private void Resistor(ChainPart part, double x, double y, double cell)
    {
        var (half, middle) = (Math.Min(5, cell * 0.22), x + (cell / 2));
        Body(part, x, y, cell, half);
        var size = Math.Min(3, cell * 0.16);
        ink.Text(part.Name, middle, y - 5.8, name with { Anchor = Anchor.Middle, Size = Math.Max(2.2, size) });
        ink.Text($"{Values(part)} Ω", middle, y - 2.7, new(Math.Max(2.1, size), Palette.Ink, Anchor.Middle));
    }

    // The sign for side by side is in few typefaces.
    private static string Values(ChainPart part)
    {
        var sign = Typeface.Has(part.JoinedBy) ? part.JoinedBy : "||";
        return string.Join($" {sign} ", part.Soldered().Select(p => WiringPage.Ohms(p.ResistanceOhm)));
    }

    // Two parts in one position are two boxes, as they are soldered: one after the other, or one above the other between the same two ends.
    private void Body(ChainPart part, double x, double y, double cell, double half)
    {
        var (left, right, end) = (x + (cell / 2) - half, x + (cell / 2) + half, x + cell);
        void Box(double from, double to, double at, double high) =>
            ink.Box(from, at - (high / 2), to - from, high, symbol, Palette.Paper);
        if (part.Pair.Count < 2)
        {
            Wire((x, y), (left, y));
            Box(left, right, y, 3.4);
            Wire((right, y), (end, y));
        }
        else if (part.Joined == "series")
        {
            var gap = half * 0.2;
            Wire((x, y), (left, y));
            Box(left, left + half - gap, y, 3.4);
            Wire((left + half - gap, y), (left + half + gap, y));
            Box(left + half + gap, right, y, 3.4);
            Wire((right, y), (end, y));
        }
        else
        {
            var (fork, join) = (left - (cell * 0.06), right + (cell * 0.06));
            Wire((x, y), (fork, y));
            Wire((join, y), (end, y));
            foreach (var at in new[] { y - 1.1, y + 1.9 })
            {
                Wire((fork, y), (fork, at), (left, at));
                Box(left, right, at, 1.9);
                Wire((right, at), (join, at), (join, y));
            }
        }
    }

    /// <summary>A make contact, drawn open.</summary>
    private void Contact(double from, double to, double y)
    {
        ink.Circle(from, y, 0.5, null, Palette.Ink);
        ink.Circle(to, y, 0.5, null, Palette.Ink);
        ink.Line(from, y, to - 0.6, y - ((to - from) * 0.38), symbol);
    }

    private void Dot(double x, double y) => ink.Circle(x, y, 0.6, null, Palette.Ink);

    private void Wire(params (double X, double Y)[] points) => ink.Path(points, false, wire);

    private static string S(int i) => string.Create(CultureInfo.InvariantCulture, $"S{i}");
}
