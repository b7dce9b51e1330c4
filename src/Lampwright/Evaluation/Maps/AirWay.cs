using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Findings;
using Lampwright.Heat;

namespace Lampwright.Evaluation.Maps;

/// <summary>What the fan's air passes: openings of parts, one behind another or side by side, and what else the file names.</summary>
internal static class AirWay
{
    private static readonly double UsualSlotM = 5e-3;

    /// <summary>The losses in the order of the air.</summary>
    public static AirLoss[] Losses(IReadOnlyList<AirOpening> openings, LightParts parts)
    {
        if (parts.Fan is not { } fan)
        {
            return [];
        }

        var losses = new List<AirLoss>();
        var group = new List<AirLoss>();
        foreach (var id in fan.Air)
        {
            var loss = openings.FirstOrDefault(o => o.Id == id) is { } opening ? Of(opening) : null;
            if (loss is not null && fan.Beside.Contains(id, StringComparer.Ordinal))
            {
                group.Add(loss);
                continue;
            }

            Close(losses, group);
            if (loss is not null)
            {
                losses.Add(loss);
            }
        }

        Close(losses, group);
        losses.AddRange(fan.Losses.Select(l => Of(l, fan).Loss).OfType<AirLoss>());
        return [.. losses];
    }

    /// <summary>Losses of the fan that say too little to be counted.</summary>
    public static IEnumerable<Finding> Findings(Fan fan) =>
        fan
            .Losses.Select(l => (l.Path, Of(l, fan).Wants))
            .Where(l => l.Wants.Length > 0)
            .Select(l => HeatRules.DataConflict.At(l.Path, $"This loss is not counted: it wants {l.Wants}."));

    private static void Close(List<AirLoss> losses, List<AirLoss> group)
    {
        if (group.Count > 0)
        {
            losses.Add(AirLoss.SideBySide(group));
            group.Clear();
        }
    }

    private static AirLoss Of(AirOpening opening) =>
        opening.FieldM2 > 0
            ? AirLoss.PerforatedSheet(
                opening.Path,
                opening.FieldM2,
                Math.Min(1, opening.OpenM2 / opening.FieldM2),
                opening.HoleM
            )
            : AirLoss.Hole(opening.Path, opening.OpenM2);

    private static (AirLoss? Loss, string Wants) Of(FanLoss loss, Fan fan)
    {
        var (path, open) = (loss.Path, loss.Open?.Nominal);
        var area =
            loss.Size is { } s ? s.Width.Nominal * s.Height.Nominal
            : fan.Box is { } box ? box.Width.Nominal * box.Height.Nominal
            : 0;
        if (loss.Kind == "filter")
        {
            return loss is { Pressure: { } pressure, Flow: { } flow }
                ? (AirLoss.Filter(path, pressure.Nominal, flow.Nominal), "")
                : (null, "pressure and flow");
        }

        if (area <= 0)
        {
            return (null, "size");
        }

        if (loss.Kind == "turn")
        {
            return (AirLoss.Turn(path, area), "");
        }

        return (loss.Kind, open) switch
        {
            (_, null) => (null, "open"),
            (not ("expansion" or "contraction"), <= 1e-6) => (new AirLoss(path, double.PositiveInfinity), ""),
            ("guard", { } f) => (AirLoss.WireGuard(path, area, f), ""),
            ("slots", { } f) => (AirLoss.PerforatedSheet(path, area, f, 2 * (loss.Slot?.Nominal ?? UsualSlotM)), ""),
            ("grille", { } f) => (AirLoss.Of(path, AirLoss.ThickGrilleK(f), area) with { OpenM2 = area * f }, ""),
            ("expansion", { } f) => (AirLoss.Of(path, AirLoss.ExpansionK(f), area), ""),
            ("contraction", { } f) => (AirLoss.Of(path, AirLoss.ContractionK(f), area), ""),
            _ => (null, ""),
        };
    }
}
