using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Metal.Fields;

/// <summary>Whether a flange folds along a row of its holes before it folds at its bend.</summary>
/// <remarks>
/// The apron lifts the flange by its far edge, so the moment falls in a straight line from the bend's tangent to there. A row at distance d of a flat of height L
/// sees 1 - d/L of it and carries, plastically, as much of the full section's moment as it has metal left: it folds first where less is left than that.
/// <para><b>Validity</b>: ductile sheet, hole sides square to the sheet, parent clamped up to the bend. The far edge is the longest lever there is; an apron that
/// takes hold further in is kinder.</para>
/// <para><b>Source</b>: derived (plastic moment S T² / 4 per width). <b>Checked by</b>: hand case on either side of the limit.</para>
/// </remarks>
internal static class HoleRows
{
    public static void Check(PartSpec spec, Panel panel, List<HoleCore> holes, List<Finding> findings)
    {
        if (!panel.IsFlange)
        {
            return;
        }

        var setback = panel.Bend!.SetbackM;
        var height = panel.Height - setback;
        holes = [.. holes.OrderBy(h => h.Middle.Y)];
        var tallest = holes.Max(h => (h.Most.Y - h.Least.Y) / 2);
        var (worst, at, left) = (0.0, 0.0, 1.0);
        var (from, last) = (0, double.NegativeInfinity);
        foreach (var row in holes)
        {
            var y = row.Middle.Y;
            var distance = y - setback;
            if (y - last < 1e-6 || distance <= 0 || distance >= height)
            {
                continue;
            }

            last = y;
            while (holes[from].Middle.Y < y - tallest)
            {
                from++;
            }

            var open = 0.0;
            for (var k = from; k < holes.Count && holes[k].Middle.Y <= y + tallest; k++)
            {
                open += Chord(holes[k], y);
            }

            var share = Math.Max(0, 1 - (open / Width(panel, distance / height)));
            var lacks = 1 - (distance / height) - share;
            if (lacks > worst + 1e-9)
            {
                (worst, at, left) = (lacks, distance, share);
            }
        }

        if (worst > 0)
        {
            findings.Add(
                MetalRules.FoldsAtHoles.At(
                    $"part.{spec.Name}.flange.{panel.Id}",
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Holes {Mm.Of(at)} beside the bend of {panel.Id} leave {100 * left:0} % of the metal, where {100 * (left + worst):0} % of the bend's moment acts."
                    ),
                    string.Create(CultureInfo.InvariantCulture, $"{100 * left:0} %"),
                    string.Create(CultureInfo.InvariantCulture, $"{100 * (left + worst):0} %")
                )
            );
        }
    }

    /// <summary>What a hole takes out of the line at a height; other shapes than round ones as wide as their box.</summary>
    private static double Chord(HoleCore hole, double y)
    {
        var off = y - hole.Middle.Y;
        if (hole.Points.Count == 1)
        {
            return 2 * Math.Sqrt(Math.Max(0, (hole.Radius * hole.Radius) - (off * off)));
        }

        return y > hole.Least.Y && y < hole.Most.Y ? hole.Most.X - hole.Least.X : 0;
    }

    /// <summary>Width of the flat at a share of its height.</summary>
    private static double Width(Panel panel, double share)
    {
        var root = panel.RootLength - panel.Start.FlatU - panel.End.FlatU;
        var slopes = (panel.Start.Slope + panel.End.Slope) * (panel.Height - panel.Bend!.SetbackM);
        return Math.Max(root - (share * slopes), 1e-9);
    }
}
