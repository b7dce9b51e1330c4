using System.Globalization;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.Charts;

namespace Lampwright.Files.Packet.Sheets;

/// <summary>What to cut, from which sheet, and what else has to lie on the bench.</summary>
internal static class CutListPage
{
    public static void Draw(PacketBook book)
    {
        var parts = book.Evaluation.Metal?.Parts ?? [];
        if (parts.Count == 0 && book.Evaluation.FitUp is null)
        {
            return;
        }

        var flow = new Flow(book, new("Cut list")).Begun();
        flow.Title("Cut list", "blanks as they are sheared, before bending");
        foreach (var sheet in parts.GroupBy(p => (p.Sheet, p.Material, p.ThicknessMm)))
        {
            Sheet(flow, book, [.. sheet]);
        }

        Screws(flow, book);
        Things(flow, book);
    }

    private static void Sheet(Flow flow, PacketBook book, IReadOnlyList<PartAnswer> parts)
    {
        var area = parts.Sum(p => p.Count * p.Blank.WidthM * p.Blank.HeightM);
        flow.Head(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{parts[0].Sheet}: {parts[0].Material}, {parts[0].ThicknessMm:0.##} mm"
            ),
            string.Create(
                CultureInfo.InvariantCulture,
                $"boxes of all blanks together {area:0.000} m², without the waste between them"
            )
        );
        var unit = book.Units.LengthSign;
        var table = new Table(
            [
                new("part", "", 38),
                new("make", "", 11, 7),
                new("width", unit, 30, 14),
                new("height", unit, 30, 14),
                new("bends", "", 12, 8),
                new("holes", "", 13, 8),
                new("mass of one", "g", 26, 14),
            ],
            6.5,
            3.3
        );
        table.Draw(
            flow,
            [
                .. parts.Select(p =>
                    (IReadOnlyList<Cell>)
                        [
                            ((Cell)p.Name).Strong,
                            p.Count.ToString(CultureInfo.InvariantCulture),
                            book.Units.Length(p.BlankWidthMm).Strong,
                            book.Units.Length(p.BlankHeightMm).Strong,
                            p.Blank.Bends.Count.ToString(CultureInfo.InvariantCulture),
                            p.Blank.Holes.Count.ToString(CultureInfo.InvariantCulture),
                            Cell.Of(p.MassKg.In(1000), 0),
                        ]
                ),
            ]
        );
    }

    private static void Screws(Flow flow, PacketBook book)
    {
        var screws = (book.Evaluation.FitUp?.Joints ?? [])
            .Where(j => j.Screw.Length > 0)
            .GroupBy(j => j.Screw, StringComparer.Ordinal)
            .Select(g =>
                (
                    Screw: g.Key,
                    Count: g.Sum(j => Math.Max(1, j.Holes.Count)),
                    For: string.Join(", ", g.Select(j => j.Name))
                )
            )
            .OrderBy(s => s.Screw, StringComparer.Ordinal)
            .ToList();
        if (screws.Count == 0)
        {
            return;
        }

        flow.Head("Screws");
        new Table([new("pieces", "", 16, 10), new("screw", "", 44), new("joints", "", 100)], 5.4, 3.1).Draw(
            flow,
            [
                .. screws.Select(s =>
                    (IReadOnlyList<Cell>)[((Cell)s.Count.ToString(CultureInfo.InvariantCulture)).Strong, s.Screw, s.For]
                ),
            ]
        );
    }

    private static void Things(Flow flow, PacketBook book)
    {
        if (book.Evaluation.FitUp is not { } fit)
        {
            return;
        }

        flow.Head("Everything and its weight", $"together {ChartText.WithBand(fit.TotalMassKg, "kg")}");
        new Table([new("thing", "", 76), new("pieces", "", 18, 10), new("mass together", "g", 40, 16)], 5, 2.9).Draw(
            flow,
            [
                .. fit.Masses.Select(m =>
                    (IReadOnlyList<Cell>)
                        [
                            m.Id,
                            m.Count.ToString(CultureInfo.InvariantCulture),
                            m.IsKnown
                                ? Cell.Of(m.MassKg.In(1000), m.MassKg.Value < 0.01 ? 1 : 0)
                                : new Cell("not known", Tint: Palette.Warn),
                        ]
                ),
            ]
        );
    }
}
