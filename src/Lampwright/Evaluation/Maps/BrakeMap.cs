using Lampwright.Design;
using Lampwright.Findings;
using Lampwright.Geometry;
using Lampwright.Metal;
using Lampwright.Metal.Bending;
using Lampwright.Quantities;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the order of bending what the design says of the brake.</summary>
internal static class BrakeMap
{
    // M.H6 of the trade: sets of about an inch, two and three (common practice, no source).
    private static readonly double[] UsualFingersM = [0.025, 0.05, 0.075];
    private static readonly double LeastAreaM2 = 1e-7;

    /// <summary>True where the maker has described what of his brake is in the way.</summary>
    public static bool IsDescribed(Brake brake) =>
        brake.Shape.Fingers is not null
        && (brake.Shape.Nose.Count > 0 || brake.Shape.FingerHeight.Origin != Origin.Default);

    /// <summary>The brake in section, or null with findings that say why there is none.</summary>
    public static BrakeMachine? Of(Brake brake, List<Finding> findings)
    {
        var shape = brake.Shape;
        if (shape.Fingers is { Count: 0 })
        {
            findings.Add(
                MetalRules.NoFingers.At(
                    "brake.fingers",
                    "The brake is said to have no fingers; no bend can be clamped."
                )
            );
            return null;
        }

        var (finger, clamp, bed, apron) = BrakeMachine.Sections(
            brake.Closing.Nominal,
            shape.FingerHeight.Nominal,
            shape.FingerDepth.Nominal,
            shape.BeamHeight.Nominal,
            shape.BedDepth.Nominal,
            shape.ApronDepth.Nominal,
            shape.ApronThickness.Nominal
        );
        var machine = new BrakeMachine
        {
            LengthM = brake.Length.Nominal,
            ClosingRad = brake.Closing.Nominal,
            FingerWidthsM = shape.Fingers is { } own ? [.. own.Select(f => f.Nominal)] : Usual(brake.Length.Nominal),
            Finger = Section("nose", shape.Nose, finger, findings),
            Clamp = Section("clamp", shape.Clamp, clamp, findings),
            Bed = Section("bed", shape.Bed, bed, findings),
            Apron = Section("apron", shape.Apron, apron, findings),
            OpeningM = shape.Opening.Nominal,
            LeastHoldM = shape.LeastHold.Nominal,
            EndGapM = shape.EndGap.Nominal,
            FingerGapM = shape.FingerGap.Nominal,
            NoseBackM = brake.NoseBack?.Nominal,
            NoseRadiusM = brake.NoseRadius?.Nominal,
        };
        return findings.Exists(f => f.Rule == MetalRules.BrakeSectionWrong) ? null : machine;
    }

    private static List<double> Usual(double length)
    {
        var (fingers, left) = (new List<double>(), length);
        for (var i = 0; left >= UsualFingersM[0] - 1e-9; i++)
        {
            var next = UsualFingersM[i % UsualFingersM.Length];
            next = next <= left + 1e-9 ? next : UsualFingersM[0];
            fingers.Add(next);
            left -= next;
        }

        return fingers.Count > 0 ? fingers : [length];
    }

    private static IReadOnlyList<Vec2> Section(
        string key,
        IReadOnlyList<Spot> given,
        Vec2[] usual,
        List<Finding> findings
    )
    {
        if (given.Count == 0)
        {
            return usual;
        }

        Vec2[] corners = [.. given.Select(s => new Vec2(s.X!.Nominal, s.Y!.Nominal))];
        var outline = new Outline([.. corners.Select(c => new Corner(c))]);
        var crosses = Crosses(corners);
        if (crosses || Math.Abs(outline.Area) < LeastAreaM2)
        {
            findings.Add(
                MetalRules.BrakeSectionWrong.At(
                    "brake." + key,
                    crosses
                        ? $"The section {key} of the brake crosses itself."
                        : $"The section {key} of the brake has no area."
                )
            );
        }

        return corners;
    }

    private static bool Crosses(Vec2[] p)
    {
        static double Side(Vec2 a, Vec2 b, Vec2 c) => (b - a).Cross(c - a);
        for (var i = 0; i < p.Length; i++)
        {
            for (var j = i + 1; j < p.Length; j++)
            {
                var (a, b, c, d) = (p[i], p[(i + 1) % p.Length], p[j], p[(j + 1) % p.Length]);
                var isNext = j == i + 1 || (i == 0 && j == p.Length - 1);
                if (!isNext && Side(a, b, c) * Side(a, b, d) <= 0 && Side(c, d, a) * Side(c, d, b) <= 0)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
