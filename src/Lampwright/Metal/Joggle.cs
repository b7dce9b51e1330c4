using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Joggles made into the two opposite bends that they are.</summary>
/// <remarks>
/// Two bends of the angle α with a flat f between them set the strip off by D = (2R + T)(1 − cos α) + f·sin α (outside skin to outside
/// skin). With A = 2R + T and t = tan(α/2) that is (2A − D)t² + 2f·t − D = 0, which gives the steepest α that leaves a flat f.
/// <para><b>Validity</b>: 0 &lt; α ≤ 90°, equal bends. <b>Source</b>: derived. <b>Accuracy</b>: exact geometry; the allowance of each bend is that of
/// the sheet's method. <b>Checked by</b>: <i>invariant</i> (the folded strip lies D off its parent, parallel to it).</para>
/// </remarks>
public static class Joggle
{
    private static readonly double UsualAngle = Math.PI / 4;
    private static readonly double LeastFlatThicknesses = 0.1;

    /// <summary>The steepest angle whose two bends fit into a step, radians.</summary>
    /// <param name="offsetM">The step, metres, above 0.</param>
    /// <param name="radiusM">Inside radius of both bends, metres.</param>
    /// <param name="thicknessM">Thickness, metres.</param>
    /// <param name="flatM">Flat that is left between the bends, metres.</param>
    public static double SteepestRad(double offsetM, double radiusM, double thicknessM, double flatM = 0)
    {
        Guard.Positive(offsetM);
        Guard.Positive(thicknessM);
        var a = (2 * radiusM) + thicknessM;
        var square = (2 * a) - offsetM;
        if (square <= 0)
        {
            return Math.PI / 2;
        }

        var t = (Math.Sqrt((flatM * flatM) + (offsetM * square)) - flatM) / square;
        return Math.Min(2 * Math.Atan(t), Math.PI / 2);
    }

    /// <summary>The part with every joggle as two flanges; null when a step cannot be made, and a stop finding says why.</summary>
    internal static PartSpec? Expand(PartSpec spec, List<Finding> findings)
    {
        if (spec.Joggles.Count == 0)
        {
            return spec;
        }

        var flanges = new List<FlangeSpec>(spec.Flanges);
        foreach (var joggle in spec.Joggles)
        {
            if (!Fits(spec, joggle, out var offset, out var angle, findings))
            {
                return null;
            }

            var (r, t) = (spec.Sheet.InsideRadiusM, spec.Sheet.ThicknessM);
            var flat = (offset - (((2 * r) + t) * (1 - Math.Cos(angle)))) / Math.Sin(angle);
            var setback = BendAllowance.Setback(angle, r, t);
            var signed = joggle.Outwards ? -angle : angle;
            flanges.Add(
                new(joggle.Id + "_step", joggle.OnEdge, flat + (2 * setback), signed)
                {
                    StartOffsetM = joggle.StartOffsetM,
                    EndOffsetM = joggle.EndOffsetM,
                    Making = FlangeMaking.Joggle,
                    TableId = joggle.Id,
                }
            );
            flanges.Add(
                new(joggle.Id, joggle.Id + "_step.far", setback + joggle.LapM, -signed) { Making = FlangeMaking.Joggle }
            );
        }

        return spec with
        {
            Flanges = flanges,
            Joggles = [],
        };
    }

    internal static void Check(PartSpec spec, Panel panel, string path, List<Finding> findings)
    {
        // Two flanges, one word about them: on the strip beyond the step.
        if (panel.Spec!.TableId is null)
        {
            findings.Add(
                MetalRules
                    .JoggleTool.At(
                        path,
                        $"Joggle {panel.Id} turns {Mm.Degrees(panel.Bend!.AngleRad)} out and back within {Mm.Of(panel.Parent!.Height)}."
                    )
                    .OnBend(spec, panel)
            );
        }
    }

    private static bool Fits(
        PartSpec spec,
        JoggleSpec joggle,
        out double offset,
        out double angle,
        List<Finding> findings
    )
    {
        var (r, t) = (spec.Sheet.InsideRadiusM, spec.Sheet.ThicknessM);
        var path = $"part.{spec.Name}.joggle.{joggle.Id}";
        (offset, angle) = (joggle.OffsetM ?? t, 0);
        if (
            !(offset > 0)
            || !(joggle.LapM > 0)
            || !(r >= 0)
            || !(t > 0)
            || offset + joggle.LapM + r > spec.Limits.LongestM
        )
        {
            findings.Add(
                MetalRules.AbsurdSize.At(
                    path,
                    $"Joggle {joggle.Id} is set off by {Mm.Of(offset)} and laps {Mm.Of(joggle.LapM)}; that cannot be made.",
                    Mm.Of(Math.Min(offset, joggle.LapM)),
                    Mm.Of(0)
                )
            );
            return false;
        }

        var steepest = SteepestRad(offset, r, t);
        angle = joggle.AngleRad ?? Math.Min(UsualAngle, SteepestRad(offset, r, t, LeastFlatThicknesses * t));
        if (angle > 0 && angle <= steepest + 1e-12)
        {
            return true;
        }

        findings.Add(
            MetalRules.JoggleTooSteep.At(
                path + ".angle",
                $"Two bends of {Mm.Degrees(angle)} and {Mm.Of(r)} radius do not fit into a step of {Mm.Of(offset)}; {Mm.Degrees(steepest)} does.",
                Mm.Degrees(angle),
                Mm.Degrees(steepest)
            )
        );
        return false;
    }
}
