using Lampwright.Geometry;
using Lampwright.Tables;

namespace Lampwright.FitUp;

/// <summary>What a joint looks like when its bodies are in their places.</summary>
/// <param name="Holes">Holes that one screw passes.</param>
/// <param name="TurnsRad">Turn of each layer against the one before it.</param>
/// <param name="GapM">Largest gap (or overlap) between layers that should touch, metres.</param>
/// <param name="TiltRad">Largest angle between layers that should lie flat on one another, radians.</param>
internal sealed record Meeting(
    IReadOnlyList<HoleMeeting> Holes,
    IReadOnlyList<double> TurnsRad,
    double GapM,
    double TiltRad
)
{
    /// <summary>Looks at a joint.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="places">Frames of all its bodies.</param>
    /// <param name="thread">Thread of its screw; null without one.</param>
    /// <param name="limits">Rules of thumb.</param>
    /// <param name="floats">True when nothing else holds the two sides together, so that the maker shifts them until the screws go in.</param>
    public static Meeting Of(
        JointLayers joint,
        IReadOnlyDictionary<string, Frame> places,
        MetricThread? thread,
        FitUpLimits limits,
        bool floats
    )
    {
        var first = joint.Towards(0);
        var place = places[joint.Layers[0].Body.Id];
        var (u, v) = (place.Direction(first.U), place.Direction(first.V));
        var layers = new Vec2[joint.Layers.Count][];
        for (var i = 0; i < layers.Length; i++)
        {
            var at = places[joint.Layers[i].Body.Id];
            layers[i] =
            [
                .. joint
                    .Layers[i]
                    .Pattern.Holes.Select(h => at.Out(h.Centre))
                    .Select(p => new Vec2(p.Dot(u), p.Dot(v))),
            ];
        }

        var slides = joint
            .Layers.Select(l => places[l.Body.Id].Direction(l.Pattern.SlideAlong))
            .Select(s => new Vec2(s.Dot(u), s.Dot(v)))
            .ToArray();
        var (gap, tilt, turns) = Planes(joint, places);
        var holes = new List<HoleMeeting>();
        foreach (var members in Stacked(layers))
        {
            holes.Add(
                Worst(joint, layers, slides, members, thread, limits, floats ? Share(layers.Min(l => l.Length)) : 1)
            );
        }

        return new(holes, turns, gap, tilt);
    }

    /// <summary>Part of the scatter that is left when the part was shifted and turned to the best fit: √((2n − 3)/2n), 0 for one hole.</summary>
    public static double Share(int holes) => holes < 2 ? 0 : Math.Sqrt(((2.0 * holes) - 3) / (2.0 * holes));

    /// <summary>Scatter of one hole against another along one axis, metres.</summary>
    public static double PairRmsM(HoleMarking marking, bool byHand, bool otherByHand, FitUpLimits limits)
    {
        double Alone(bool hand) =>
            !hand ? limits.BoughtRmsM
            : marking == HoleMarking.ByHand ? limits.ByHandRmsM
            : limits.TemplateRmsM;
        return (byHand || otherByHand, marking) switch
        {
            (true, HoleMarking.CentrePunched) => limits.CentrePunchedRmsM,
            (true, HoleMarking.DrilledTogether) => limits.DrilledTogetherRmsM,
            _ => Math.Sqrt((Alone(byHand) * Alone(byHand)) + (Alone(otherByHand) * Alone(otherByHand))),
        };
    }

    private static (double GapM, double TiltRad, double[] Turns) Planes(
        JointLayers joint,
        IReadOnlyDictionary<string, Frame> places
    )
    {
        var (gap, tilt) = (0.0, 0.0);
        var turns = new double[joint.Layers.Count - 1];
        for (var i = 1; i < joint.Layers.Count; i++)
        {
            var (a, b) = (joint.Towards(i - 1), joint.Back(i));
            var (fa, fb) = (places[joint.Layers[i - 1].Body.Id], places[joint.Layers[i].Body.Id]);
            var (da, db) = (fa.Direction(a.D), fb.Direction(b.D));
            var (u, v, other) = (fa.Direction(a.U), fa.Direction(a.V), fb.Direction(b.U));
            // Measured where the holes are: an angle between the planes must not show as a gap far away.
            var here = Middle(fa, a);
            var there = Middle(fb, b);
            gap = Math.Max(gap, Math.Abs((there - here).Dot(da)));
            tilt = Math.Max(tilt, Math.Acos(Math.Clamp(-da.Dot(db), -1, 1)));
            turns[i - 1] = PlaneFit.Wrapped(Math.Atan2(other.Dot(v), other.Dot(u)));
        }

        return (gap, tilt, turns);
    }

    private static Vec3 Middle(Frame frame, Contact side)
    {
        var sum = default(Vec2);
        foreach (var h in side.Holes)
        {
            sum += h;
        }

        var mean = sum / side.Holes.Length;
        return frame.Out((side.U * mean.X) + (side.V * mean.Y) + (side.D * side.Height));
    }

    /// <summary>Holes of all layers that belong to one screw, by index.</summary>
    private static IEnumerable<int[]> Stacked(Vec2[][] layers)
    {
        var chains = Enumerable.Range(0, layers[0].Length).Select(i => new List<int> { i }).ToList();
        for (var layer = 1; layer < layers.Length; layer++)
        {
            var next = PlaneFit.Pairs(layers[layer - 1], layers[layer]).ToDictionary(p => p.A, p => p.B);
            chains.RemoveAll(c => !next.ContainsKey(c[^1]));
            chains.ForEach(c => c.Add(next[c[^1]]));
        }

        return chains.Select(c => c.ToArray());
    }

    private static HoleMeeting Worst(
        JointLayers joint,
        Vec2[][] layers,
        Vec2[] slides,
        int[] members,
        MetricThread? thread,
        FitUpLimits limits,
        double share
    )
    {
        var ids = members.Select((m, i) => joint.Layers[i].Pattern.Holes[m].Id).ToArray();
        var (miss, allows, rms, worst) = (default(Vec2), 0.0, 0.0, double.NegativeInfinity);
        for (var i = 0; i < members.Length; i++)
        {
            for (var j = i + 1; j < members.Length; j++)
            {
                var (a, b) = (joint.Layers[i].Pattern, joint.Layers[j].Pattern);
                var apart = Slid(layers[j][members[j]] - layers[i][members[i]], slides[i], a.SlideM);
                apart = Slid(apart, slides[j], b.SlideM);
                var may = thread is null
                    ? limits.WithoutScrewM
                    : PositionTolerance.BetweenM(
                        HoleM(a, thread),
                        a.IsTapped,
                        HoleM(b, thread),
                        b.IsTapped,
                        thread.DiameterM
                    );
                var scatter = share * PairRmsM(joint.Spec.Marking, a.IsMadeByHand, b.IsMadeByHand, limits);
                var excess = apart.Length + (2 * scatter) - may;
                if (excess > worst)
                {
                    (miss, allows, rms, worst) = (apart, may, scatter, excess);
                }
            }
        }

        return new(ids, miss, allows, rms);
    }

    /// <summary>What is left of a miss when the screw slides in a slot, by half its travel to either side.</summary>
    private static Vec2 Slid(Vec2 apart, Vec2 along, double slideM)
    {
        if (!(slideM > 0) || !(along.Length > 1e-9))
        {
            return apart;
        }

        var unit = along.Unit;
        return apart - (unit * Math.Clamp(apart.Dot(unit), -slideM / 2, slideM / 2));
    }

    /// <summary>Diameter of a hole; a medium clearance hole where none is told.</summary>
    private static double HoleM(PatternSpec pattern, MetricThread thread) =>
        pattern.DiameterM > 0 ? pattern.DiameterM : thread.ClearMediumM;
}
