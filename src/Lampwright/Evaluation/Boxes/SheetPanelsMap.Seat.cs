using Lampwright.Heat;
using Lampwright.Heat.Network;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Boxes;

/// <summary>The sheet that the sink lies on.</summary>
internal sealed partial class SheetPanelsMap
{
    // Thin painted sheet that its screws alone press to a sink: air of a tenth of a millimetre, 0.026/1e-4, and what touches (derived; the
    // gap is a guess without a source, HEA046). Flat faces with paste pass ten times that, a bent sheet that touches at its screws alone a third.
    internal static readonly double SeatWPerM2K = 300;

    // Film and radiation on both sides of a sheet together: common practice, no source.
    private static readonly double BothSidesWPerM2K = 10;

    // Of the sink's outline this much lies on the sheet, the rest on its hole for the emitter; and never the whole face (common practice, no source).
    private static readonly double UnderShare = 0.85;
    private static readonly double MostOfFace = 0.9;

    /// <summary>What else a joint holds, from the sink outwards, at whichever end of the stack the sink stands.</summary>
    /// <param name="stack">Ids of the stack, in order.</param>
    /// <param name="sinkPath">Path of the sink.</param>
    internal static IEnumerable<string> FromSink(IReadOnlyList<string> stack, string sinkPath)
    {
        bool IsSink(string id) => id.StartsWith(sinkPath + ".", StringComparison.Ordinal);
        var outwards = IsSink(stack[0]) ? stack : stack.Reverse();
        return outwards.Where(id => !IsSink(id));
    }

    private void Seat()
    {
        if (_parts.Sink is not { Across: { } across, Along: { } along })
        {
            return;
        }

        var joint = _design.Joints.FirstOrDefault(j =>
            j.Stack.Any(id => id.StartsWith(_parts.SinkPath + ".", StringComparison.Ordinal))
        );
        if (joint is null)
        {
            return;
        }

        var under = UnderShare * across.Nominal * along.Nominal;
        var (before, carries) = (-1, 0.0);
        List<string> sheets =
        [
            .. FromSink(joint.Stack, _parts.SinkPath)
                .Where(id => PanelOf(id) is not null && _made.Any(m => m.Name == Owner(id))),
        ];
        var last = sheets.Count > 0 ? sheets[^1] : "";
        foreach (var id in sheets)
        {
            if (PanelOf(id) is not { } panel || _made.FirstOrDefault(m => m.Name == Owner(id)) is not { } part)
            {
                continue;
            }

            var p = _panels[panel];
            var (sheet, material) = (part.Folded.ThicknessM, HeatMaterial.OfGrade(part.Sheet.Material));
            var area = Math.Min(under, MostOfFace * p.InsideM2);
            var patch = _panels.Count;
            var stored = material.DensityKgPerM3 * material.SpecificHeatJPerKgK * sheet;

            // The sheet round the patch is a fin; this much lies between the patch and its mean temperature.
            var spread = SheetFin.ToMeanWPerK(
                material.ConductivityWPerMK,
                sheet,
                area,
                Math.Max(p.InsideM2 - area, 0.05 * area),
                BothSidesWPerM2K
            );

            // The far side of the last sheet is in the room: it cools, and a hand finds it.
            var outside = ReferenceEquals(id, last) ? Math.Min(area, p.Outside.AreaM2) : 0;
            _panels.Add(
                new(p.Name + ", under the sink", p.Outside with { AreaM2 = outside }, 0, area * stored, PanelZone.None)
            );
            _panels[panel] = p with
            {
                Outside = p.Outside with { AreaM2 = Math.Max(0, p.Outside.AreaM2 - (p.Outside.AreaM2 > 0 ? area : 0)) },
                InsideM2 = p.InsideM2 - area,
                CapacityJPerK = Math.Max(0.1 * p.CapacityJPerK, p.CapacityJPerK - (area * stored)),
            };
            if (outside <= 0)
            {
                _ = _covered.Add(patch);
            }

            _bridges.Add(new(patch, panel, spread, false));
            var gives =
                BothSidesWPerM2K
                * _panels.Where(q => Owner(q.Name) == part.Name).Sum(q => q.Outside.AreaM2 + q.InsideM2)
                / 2;
            carries += 1 / ((1 / spread) + (1 / Math.Max(gives, 1e-3)));
            if (before < 0)
            {
                _seats.Add(new(patch, SeatWPerM2K * area, 0));
            }
            else
            {
                _bridges.Add(new(before, patch, SeatWPerM2K * area, true));
            }

            before = patch;
        }

        // All sheets of the stack, one on the other, carry off side by side what the first takes over.
        if (_seats.Count > 0)
        {
            _seats[0] = _seats[0] with { SheetWPerK = carries };
        }
    }
}
