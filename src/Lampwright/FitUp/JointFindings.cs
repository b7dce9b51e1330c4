using Lampwright.Findings;
using Lampwright.Tables;

namespace Lampwright.FitUp;

/// <summary>What a foreman would say of a joint.</summary>
internal static class JointFindings
{
    /// <summary>Findings of the screw.</summary>
    public static void OfScrew(
        JointLayers joint,
        MetricThread? thread,
        ScrewGrip? grip,
        ScrewReach? reach,
        FitUpLimits limits,
        List<Finding> findings
    )
    {
        var path = joint.Spec.Path + ".screw";
        if (joint.Spec.Screw is { } screw && thread is null)
        {
            findings.Add(
                FitUpRules.ScrewUnknown.At(
                    path + ".size",
                    $"'{screw.Size}' is not in the table of threads.",
                    screw.Size
                )
            );
        }

        if (grip is null || reach is not { } r || joint.Spec.Screw is null)
        {
            return;
        }

        if (grip.ThreadM <= 0)
        {
            findings.Add(
                FitUpRules.NothingHolds.At(
                    path,
                    $"The screw of '{joint.Spec.Name}' has no nut, and {joint.Layers[^1].Pattern.Id} is not tapped."
                )
            );
            return;
        }

        Length(joint, grip, r, limits, path, findings);
    }

    /// <summary>Findings of the holes in their places.</summary>
    public static void OfMeeting(
        JointLayers joint,
        Meeting meeting,
        Placing placing,
        bool isBridge,
        MetricThread? thread,
        FitUpLimits limits,
        List<Finding> findings
    )
    {
        var path = joint.Spec.Path;
        Turns(joint, meeting, placing, findings);
        if (thread is not null)
        {
            foreach (var p in joint.Layers.Select(l => l.Pattern))
            {
                if (!p.IsTapped && p.DiameterM > 0 && p.DiameterM < thread.DiameterM)
                {
                    findings.Add(
                        FitUpRules.ScrewDoesNotPass.At(
                            path,
                            Text.Of($"{thread.Size} does not pass the holes of {p.Id}, {Text.Mm(p.DiameterM)}."),
                            Text.Mm(p.DiameterM),
                            Text.Mm(thread.ClearMediumM)
                        )
                    );
                    return;
                }
            }
        }

        var most = meeting.Holes.Count == 0 ? 0 : meeting.Holes.Max(h => h.DrawnMissM);
        if (
            meeting.TiltRad > limits.ContradictionRad
            || meeting.GapM > limits.ContradictionM
            || (!isBridge && most > limits.ContradictionM)
        )
        {
            findings.Add(
                FitUpRules.Contradiction.At(
                    path,
                    Text.Of(
                        $"With all other joints made, the holes of '{joint.Spec.Name}' miss by {Text.Mm(most)}, its faces stand {Text.Mm(meeting.GapM)} apart and {meeting.TiltRad * 180 / Math.PI:0.#}° askew."
                    ),
                    Text.Mm(Math.Max(most, meeting.GapM)),
                    Text.Mm(limits.ContradictionM)
                )
            );
            return;
        }

        Miss(joint, meeting, path, findings);
    }

    private static void Miss(JointLayers joint, Meeting meeting, string path, List<Finding> findings)
    {
        if (meeting.Holes.Count == 0)
        {
            return;
        }

        var drawn = meeting.Holes.MaxBy(h => h.DrawnMissM - h.AllowsM)!;
        if (drawn.DrawnMissM > drawn.AllowsM + 1e-9)
        {
            findings.Add(
                FitUpRules.HolesMiss.At(
                    path,
                    $"{string.Join(" and ", drawn.Ids)} miss one another by {Text.Mm(drawn.DrawnMissM)} as drawn; {Text.Mm(drawn.AllowsM)} is allowed.",
                    Text.Mm(drawn.DrawnMissM),
                    Text.Mm(drawn.AllowsM)
                )
            );
            return;
        }

        var usual = meeting.Holes.MaxBy(h => h.UsualMissM - h.AllowsM)!;
        if (usual.UsualMissM > usual.AllowsM)
        {
            findings.Add(
                FitUpRules.HandMayMiss.At(
                    path,
                    $"{string.Join(" and ", usual.Ids)} may miss one another by {Text.Mm(usual.UsualMissM)} ({Words(joint.Spec.Marking)}, one hole in twenty more); {Text.Mm(usual.AllowsM)} is allowed.",
                    Text.Mm(usual.UsualMissM),
                    Text.Mm(usual.AllowsM)
                )
            );
        }
    }

    private static void Turns(JointLayers joint, Meeting meeting, Placing placing, List<Finding> findings)
    {
        for (var i = 1; i < joint.Layers.Count; i++)
        {
            if (!placing.Fits.TryGetValue((joint.Spec.Name, i), out var fit))
            {
                continue;
            }

            var turned = meeting.TurnsRad[i - 1];
            if (joint.Turn(i) is { } told && Math.Abs(PlaneFit.Wrapped(turned - told)) > 5 * Math.PI / 180)
            {
                findings.Add(
                    FitUpRules.TurnUnfit.At(
                        joint.Spec.Path + ".turn",
                        Text.Of($"The holes meet at {Text.Degrees(turned)}, not at {Text.Degrees(told)}."),
                        Text.Degrees(told),
                        Text.Degrees(turned)
                    )
                );
            }
            else if (joint.Turn(i) is null && fit.Alike > 1)
            {
                findings.Add(
                    FitUpRules.TakenByDefault.At(
                        joint.Spec.Path + ".turn",
                        Text.Of(
                            $"{fit.Alike} turns fit the holes of '{joint.Spec.Name}'; {Text.Degrees(turned)} is taken."
                        )
                    )
                );
            }
        }
    }

    private static void Length(
        JointLayers joint,
        ScrewGrip grip,
        ScrewReach reach,
        FitUpLimits limits,
        string path,
        List<Finding> findings
    )
    {
        var screw = joint.Spec.Screw!;
        var name = Text.Of($"{grip.Thread.Size} × {screw.LengthM * 1000:0.#}");
        var least = limits.LeastThreads * grip.Thread.PitchM;
        var needed = reach.GripM + (grip.IsNut ? grip.ThreadM : Math.Min(least, grip.ThreadM));
        if (screw.LengthM < needed - 1e-9)
        {
            findings.Add(
                FitUpRules.ScrewShort.At(
                    path + ".length",
                    $"{name} passes {Text.Mm(reach.GripM)} and needs {Text.Mm(needed)}; {Text.Mm(reach.EngagedM)} of thread hold.",
                    Text.Mm(screw.LengthM),
                    Text.Mm(needed)
                )
            );
        }
        else if (grip.IsBlind && reach.StandsOutM > 1e-9)
        {
            findings.Add(
                FitUpRules.ScrewBottoms.At(
                    path + ".length",
                    $"{name} is {Text.Mm(reach.StandsOutM)} longer than {Text.Mm(reach.GripM)} of layers and {Text.Mm(grip.ThreadM)} of hole.",
                    Text.Mm(screw.LengthM),
                    Text.Mm(reach.GripM + grip.ThreadM)
                )
            );
        }
        else if (reach.StandsOutM > limits.MostOutDiameters * grip.Thread.DiameterM)
        {
            findings.Add(
                FitUpRules.ScrewLong.At(
                    path + ".length",
                    $"{name} stands out {Text.Mm(reach.StandsOutM)}.",
                    Text.Mm(reach.StandsOutM),
                    Text.Mm(limits.MostOutDiameters * grip.Thread.DiameterM)
                )
            );
        }

        if (!grip.IsNut && grip.ThreadM < least - 1e-9)
        {
            findings.Add(
                FitUpRules.FewThreads.At(
                    path,
                    Text.Of(
                        $"{joint.Layers[^1].Pattern.Id} holds {grip.ThreadM / grip.Thread.PitchM:0.#} threads of {grip.Thread.Size} in {Text.Mm(grip.ThreadM)}."
                    ),
                    Text.Of($"{grip.ThreadM / grip.Thread.PitchM:0.#}"),
                    Text.Of($"{limits.LeastThreads:0.#}")
                )
            );
        }
    }

    private static string Words(HoleMarking marking) =>
        marking switch
        {
            HoleMarking.ByTemplate => "punched through the template",
            HoleMarking.ByHand => "scribed by hand",
            HoleMarking.CentrePunched => "punched through the mating part",
            _ => "drilled together",
        };
}
