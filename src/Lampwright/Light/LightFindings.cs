using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Light;

/// <summary>Limits of the station's rules of thumb; a maker may override them in the design file.</summary>
/// <param name="SizesAway">Distance over largest size of the exit below which the inverse-square shortcut is spoken of; 5 (IES definitions 9.1.1).</param>
/// <param name="ShutterResidual">Modulation left by the exposure that is spoken of; 0.03, a twentieth of a stop (common practice, no source).</param>
/// <param name="EvennessLeast">Corner over centre below which it is spoken of; 0.7, half a stop (common practice, no source).</param>
/// <param name="LookingInFromM">Care distance from which it is spoken of; 0.2 m, the distance at which IEC 62471 judges lamps (memory).</param>
/// <param name="OpenMirrorShare">Mirrored share from which an open funnel's beam is not resolved; 0.3 (common practice, no source).</param>
/// <param name="MouthRatioMost">Longer over shorter side of the mouth that the funnel's method covers; 4 (comparison with a random walk).</param>
/// <param name="VisibilityMost">Largest stroboscopic visibility measure; 0.4 (EU 2019/2020, memory).</param>
public sealed record LightLimits(
    double SizesAway = 5,
    double ShutterResidual = 0.03,
    double EvennessLeast = 0.7,
    double LookingInFromM = 0.2,
    double OpenMirrorShare = 0.3,
    double VisibilityMost = 0.4,
    double MouthRatioMost = 4
);

/// <summary>What a foreman would say of the light.</summary>
public static class LightFindings
{
    /// <summary>All findings of the station.</summary>
    /// <param name="model">The prepared light.</param>
    /// <param name="nominal">Its nominal result.</param>
    /// <param name="largestFluxLm">Largest flux of the emitter over all switch positions, lumens, 0 or more.</param>
    /// <param name="ripple">Ripple of the light; null where it is not known.</param>
    /// <param name="limits">Limits of the rules of thumb; null for the defaults.</param>
    public static IReadOnlyList<Finding> Of(
        LightModel model,
        in LightResult nominal,
        double largestFluxLm,
        RippleSpec? ripple,
        LightLimits? limits = null
    )
    {
        ArgumentNullException.ThrowIfNull(model);
        limits ??= new LightLimits();
        var findings = new List<Finding>();
        OfShares(model.Spec, findings);
        OfShape(model.Spec, limits, findings);
        OfSubject(model.Spec, nominal, limits, findings);
        OfEyes(model.Spec, nominal, largestFluxLm, limits, findings);
        if (ripple is not null)
        {
            OfRipple(model.Spec, Flicker.Of(ripple, model.Spec.Subject.ShutterS), ripple, limits, findings);
        }

        return findings;
    }

    private static void OfShares(LightSpec spec, List<Finding> findings)
    {
        void Share(string path, string what, double value)
        {
            if (!(value >= 0 && value <= 1))
            {
                findings.Add(
                    LightRules.MoreThanAll.At(
                        path,
                        Text($"The {what} is {value:0.###}."),
                        Text($"{value:0.###}"),
                        "0 to 1"
                    )
                );
            }
        }

        if (spec.Funnel is { } funnel)
        {
            Share(spec.Paths.Reflector + ".reflectance", "reflectance of the reflector", funnel.WallReflectance);
            Share(spec.Paths.Reflector + ".specular", "mirrored share of the reflector", funnel.SpecularShare);
        }

        if (spec.Diffuser is { } diffuser)
        {
            Share(spec.Paths.Diffuser + ".transmittance", "transmittance of the diffuser", diffuser.Transmittance);
            Share(spec.Paths.Diffuser + ".reflectance", "reflectance of the diffuser", diffuser.Reflectance);
            var sum = diffuser.Transmittance + diffuser.Reflectance;
            if (sum > 1 + 1e-9)
            {
                findings.Add(
                    LightRules.MoreThanAll.At(
                        spec.Paths.Diffuser,
                        Text(
                            $"Transmittance {diffuser.Transmittance:0.###} and reflectance {diffuser.Reflectance:0.###} of the diffuser sum to {sum:0.###}."
                        ),
                        Text($"{sum:0.###}"),
                        "1"
                    )
                );
            }
        }
    }

    private static void OfShape(LightSpec spec, LightLimits limits, List<Finding> findings)
    {
        if (spec.Funnel is not { } funnel)
        {
            if (spec.Diffuser is not null)
            {
                findings.Add(
                    LightRules.DiffuserAlone.At(
                        spec.Paths.Diffuser,
                        "There is no reflector between emitter and diffuser; the diffuser is taken as close before the emitter and lit evenly."
                    )
                );
            }

            return;
        }

        var face = spec.Emitter;
        if (face.WidthM > funnel.SmallWidthM + 1e-9 || face.HeightM > funnel.SmallHeightM + 1e-9)
        {
            findings.Add(
                LightRules.OpeningCoversEmitter.At(
                    spec.Paths.Reflector,
                    Text(
                        $"The emitter's face is {face.WidthM * 1000:0.#} x {face.HeightM * 1000:0.#} mm, the small opening {funnel.SmallWidthM * 1000:0.#} x {funnel.SmallHeightM * 1000:0.#} mm."
                    ),
                    Text($"{funnel.SmallWidthM * 1000:0.#} x {funnel.SmallHeightM * 1000:0.#} mm"),
                    Text($"{face.WidthM * 1000:0.#} x {face.HeightM * 1000:0.#} mm")
                )
            );
        }

        var ratio =
            Math.Max(funnel.LargeWidthM, funnel.LargeHeightM) / Math.Min(funnel.LargeWidthM, funnel.LargeHeightM);
        if (ratio > limits.MouthRatioMost)
        {
            findings.Add(
                LightRules.FunnelNarrow.At(
                    spec.Paths.Reflector,
                    Text($"The sides of the mouth are as {ratio:0.0} to 1."),
                    Text($"{ratio:0.0}"),
                    Text($"{limits.MouthRatioMost:0.0}")
                )
            );
        }

        if (spec.Diffuser is { } diffuser)
        {
            if (diffuser.WidthM < funnel.LargeWidthM - 1e-6 || diffuser.HeightM < funnel.LargeHeightM - 1e-6)
            {
                findings.Add(
                    LightRules.DiffuserTooSmall.At(
                        spec.Paths.Diffuser,
                        Text(
                            $"The diffuser is {diffuser.WidthM * 1000:0.#} x {diffuser.HeightM * 1000:0.#} mm, the mouth {funnel.LargeWidthM * 1000:0.#} x {funnel.LargeHeightM * 1000:0.#} mm."
                        ),
                        Text($"{diffuser.WidthM * 1000:0.#} x {diffuser.HeightM * 1000:0.#} mm"),
                        Text($"{funnel.LargeWidthM * 1000:0.#} x {funnel.LargeHeightM * 1000:0.#} mm")
                    )
                );
            }
        }
        else if (funnel.SpecularShare > limits.OpenMirrorShare)
        {
            findings.Add(
                LightRules.OpenMirror.At(
                    spec.Paths.Reflector,
                    Text(
                        $"The open reflector mirrors {funnel.SpecularShare * 100:0} % of what it reflects; that light is spread evenly over the mouth here."
                    ),
                    Text($"{funnel.SpecularShare * 100:0} %"),
                    Text($"{limits.OpenMirrorShare * 100:0} %")
                )
            );
        }
    }

    private static void OfSubject(LightSpec spec, in LightResult nominal, LightLimits limits, List<Finding> findings)
    {
        var exit = LightExit.LargestM(spec);
        var distance = spec.Subject.DistanceM;
        if (distance < limits.SizesAway * exit)
        {
            findings.Add(
                LightRules.SubjectNear.At(
                    spec.Paths.Subject + ".distance",
                    Text(
                        $"The subject is {distance:0.##} m away, {distance / exit:0.0} times the exit's {exit * 1000:0} mm; the inverse-square shortcut reads high by {nominal.ShortcutError * 100:0.0} %."
                    ),
                    Text($"{distance:0.##} m"),
                    Text($"{limits.SizesAway * exit:0.##} m")
                )
            );
        }

        if (nominal.Evenness < limits.EvennessLeast)
        {
            findings.Add(
                LightRules.Uneven.At(
                    spec.Paths.Subject,
                    Text(
                        $"The subject's corners get {nominal.Evenness * 100:0} % of its centre ({-Math.Log2(Math.Max(nominal.Evenness, 1e-9)):0.0} stops less)."
                    ),
                    Text($"{nominal.Evenness * 100:0} %"),
                    Text($"{limits.EvennessLeast * 100:0} %")
                )
            );
        }
    }

    private static void OfEyes(
        LightSpec spec,
        in LightResult nominal,
        double largestFluxLm,
        LightLimits limits,
        List<Finding> findings
    )
    {
        if (spec.CctK <= 0)
        {
            return;
        }

        var threshold = BlueLight.ThresholdLux(spec.CctK);
        var care = BlueLight.CareDistanceM(nominal.AxisCdPerLm * largestFluxLm, threshold);
        if (care > limits.LookingInFromM)
        {
            var rule = care > spec.Subject.DistanceM ? LightRules.LookingInAtWork : LightRules.LookingIn;
            findings.Add(
                rule.At(
                    spec.Paths.Emitter,
                    Text(
                        $"Within {care:0.0} m on the axis the eye gets more than the {threshold:0} lx that stay within risk group 1 at {spec.CctK:0} K; the subject is {spec.Subject.DistanceM:0.##} m away."
                    ),
                    Text($"{care:0.0} m"),
                    Text($"{(rule == LightRules.LookingIn ? limits.LookingInFromM : spec.Subject.DistanceM):0.##} m")
                )
            );
        }

        if (spec.CctK > BlueLight.HighestCctK)
        {
            findings.Add(
                LightRules.ColourOutsideTable.At(
                    spec.Paths.Emitter + ".cct",
                    Text($"{spec.CctK:0} K lies above the table's {BlueLight.HighestCctK:0} K; its last row is taken."),
                    Text($"{spec.CctK:0} K"),
                    Text($"{BlueLight.HighestCctK:0} K")
                )
            );
        }
    }

    private static void OfRipple(
        LightSpec spec,
        in FlickerResult flicker,
        RippleSpec ripple,
        LightLimits limits,
        List<Finding> findings
    )
    {
        var path = spec.Paths.Driver + ".ripple";
        if (flicker.PercentFlicker > flicker.LowRiskLimit)
        {
            findings.Add(
                LightRules.FlickerRisk.At(
                    path,
                    Text(
                        $"The light ripples by {flicker.PercentFlicker * 100:0.0} % at {ripple.FrequencyHz:0} Hz; low risk ends at {flicker.LowRiskLimit * 100:0.0} %."
                    ),
                    Text($"{flicker.PercentFlicker * 100:0.0} %"),
                    Text($"{flicker.LowRiskLimit * 100:0.0} %")
                )
            );
        }

        if (flicker.ShutterResidual > limits.ShutterResidual)
        {
            findings.Add(
                LightRules.ShutterBands.At(
                    spec.Paths.Subject + ".shutter",
                    Text(
                        $"An exposure of {spec.Subject.ShutterS * 1000:0.##} ms leaves a modulation of {flicker.ShutterResidual * 100:0.0} % of the ripple at {ripple.FrequencyHz:0} Hz."
                    ),
                    Text($"{flicker.ShutterResidual * 100:0.0} %"),
                    Text($"{limits.ShutterResidual * 100:0.0} %")
                )
            );
        }

        if (flicker.VisibilityMeasure > limits.VisibilityMost)
        {
            findings.Add(
                LightRules.Stroboscopic.At(
                    path,
                    Text($"The stroboscopic visibility measure is {flicker.VisibilityMeasure:0.00}."),
                    Text($"{flicker.VisibilityMeasure:0.00}"),
                    Text($"{limits.VisibilityMost:0.00}")
                )
            );
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
