using Lampwright.Findings;
using Lampwright.Tables;

namespace Lampwright.FitUp;

/// <summary>The station's entry: places bodies by their joints and says what fits.</summary>
/// <remarks>
/// Runs once at nominal. The draws use what it hands over: <see cref="PlacedBody.CentreOfMass"/> with <see cref="BalancePoint"/>,
/// <see cref="HoleMeeting.MissM"/> and <see cref="ScrewGrip.Reach"/>.
/// <para><b>Validity</b>: rigid bodies, joints with parallel axes. <b>Source</b>: Kabsch (1976) in the plane; ASME Y14.5, appendix B.
/// <b>Checked by</b>: <i>invariant</i> (a body placed by its holes lies where they were taken from), hand cases, K.G rows.</para>
/// </remarks>
public static class Fit
{
    /// <summary>Places every body that joints reach and looks at every joint.</summary>
    /// <param name="spec">Bodies, joints, the fixed body.</param>
    /// <returns>Places, joints hole by hole, findings. Never throws on a bad design.</returns>
    public static FitUpResult Of(FitUpSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var findings = new List<Finding>();
        if (spec.Bodies.Count == 0)
        {
            return new([], [], [], findings);
        }

        var fixedBody = FitUpFindings.FixedBody(spec, findings);
        var joints = Layers(spec, findings);
        var placing = Placing.Of(fixedBody, joints);
        var results = new List<JointResult>();
        var bridges = Bridges.Of(joints);
        for (var i = 0; i < bridges.Length; i++)
        {
            results.Add(Look(joints[i], bridges[i], placing, spec.Limits, findings));
        }

        var placed = new List<PlacedBody>();
        var unplaced = new List<string>();
        foreach (var body in spec.Bodies)
        {
            if (placing.Places.TryGetValue(body.Id, out var frame))
            {
                placed.Add(new(body.Id, frame, frame.Out(body.CentreOfMass), body.MassKg));
            }
            else
            {
                unplaced.Add(body.Id);
            }

            FitUpFindings.OfBody(body, isPlaced: placing.Places.ContainsKey(body.Id), findings);
        }

        return new(placed, unplaced, results, findings);
    }

    private static List<JointLayers> Layers(FitUpSpec spec, List<Finding> findings)
    {
        var patterns = new Dictionary<string, (BodySpec Body, PatternSpec Pattern)>(StringComparer.Ordinal);
        foreach (var body in spec.Bodies)
        {
            foreach (var pattern in body.Patterns)
            {
                patterns.TryAdd(pattern.Id, (body, pattern));
            }
        }

        var joints = new List<JointLayers>();
        foreach (var joint in spec.Joints)
        {
            var missing = joint
                .Stack.Where(p => !patterns.TryGetValue(p, out var it) || it.Pattern.Holes.Count == 0)
                .ToList();
            if (FitUpFindings.OfStack(joint, missing, [.. patterns.Keys], findings))
            {
                var found = joint.Stack.Select(p => patterns[p]).ToList();
                var far = FitUpFindings.Sides(joint, found.ConvertAll(f => f.Pattern), findings);
                if (FitUpFindings.OfCounts(joint, found.ConvertAll(f => f.Pattern), findings))
                {
                    joints.Add(new(joint, [.. found.Select((f, i) => new JointLayer(f.Body, f.Pattern, far[i]))]));
                }
            }
        }

        return joints;
    }

    private static JointResult Look(
        JointLayers joint,
        bool isBridge,
        Placing placing,
        FitUpLimits limits,
        List<Finding> findings
    )
    {
        var thread = joint.Spec.Screw is { } screw ? MetricThread.Named(screw.Size) : null;
        var grip = Grip(joint, thread);
        var reach = grip?.Reach(joint.Spec.Screw!.LengthM);
        JointFindings.OfScrew(joint, thread, grip, reach, limits, findings);
        if (!joint.Layers.All(l => placing.Places.ContainsKey(l.Body.Id)))
        {
            return new(joint.Spec, [], [], grip, reach);
        }

        var meeting = Meeting.Of(joint, placing.Places, thread, limits, isBridge);
        JointFindings.OfMeeting(joint, meeting, placing, isBridge, thread, limits, findings);
        return new(joint.Spec, meeting.Holes, meeting.TurnsRad, grip, reach);
    }

    private static ScrewGrip? Grip(JointLayers joint, MetricThread? thread)
    {
        if (joint.Spec.Screw is not { } screw || thread is null || NutAndWasher.Of(thread) is not { } sizes)
        {
            return null;
        }

        var last = joint.Layers[^1].Pattern;
        var isTapped = !screw.HasNut && last.IsTapped;
        var layers = joint.Layers.Sum(l => l.Pattern.ThicknessM) - (isTapped ? last.ThicknessM : 0);
        var held =
            screw.HasNut ? sizes.NutM
            : isTapped ? last.ThicknessM
            : 0;
        return new(layers, screw.Washers * sizes.WasherM, held, thread, screw.HasNut, isTapped && last.IsBlind);
    }
}
