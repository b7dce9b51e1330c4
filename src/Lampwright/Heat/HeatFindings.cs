using System.Globalization;
using Lampwright.Findings;

namespace Lampwright.Heat;

/// <summary>What this station has to say about a design: each method gives the findings of one thing.</summary>
public static partial class HeatFindings
{
    /// <summary>Room below the maker's junction limit that is worth having, K (common practice, no source).</summary>
    public static readonly double JunctionMarginK = 10;

    /// <summary>Case of a driver whose maker states nothing, K: 70 °C (common practice, no source).</summary>
    public static readonly double DriverCaseMaxK = 343.15;

    /// <summary>Share of rated voltage below which many fans do not start (common practice, no source).</summary>
    public static readonly double FanStartRatio = 0.5;

    /// <summary>Difference in size between fan and sink that is worth a note (common practice, no source).</summary>
    public static readonly double FanSizeRatio = 0.10;

    /// <summary>Share of air beside the fins that is worth a note (common practice, no source).</summary>
    public static readonly double BypassNoted = 0.10;

    /// <summary>Shape of a sink, its fan and its air path: HEA005 to HEA008, HEA012, HEA013, HEA016, HEA017; HEA008 for pins and stacks too.</summary>
    /// <param name="spec">The sink.</param>
    /// <param name="sinkPath">Path of the sink in the design file.</param>
    /// <param name="fanPath">Path of the fan in the design file.</param>
    public static IReadOnlyList<Finding> Sink(SinkSpec spec, string sinkPath, string fanPath)
    {
        ArgumentNullException.ThrowIfNull(spec);
        List<Finding> findings = [];
        if (Standing(spec, sinkPath) is { } standing)
        {
            findings.Add(standing);
        }

        if (spec.Form == SinkForm.Fins && spec.GapM <= 1e-5)
        {
            var fins = spec.FinCount * spec.FinThicknessM;
            findings.Add(
                HeatRules.FinsDoNotFit.At(
                    $"{sinkPath}.fins",
                    $"{spec.FinCount} fins of {Mm(spec.FinThicknessM)} need {Mm(fins)}; the base is {Mm(spec.AcrossM)} across.",
                    Mm(fins),
                    Mm(spec.AcrossM)
                )
            );
        }

        foreach (var f in spec.Footprints.Where(f => Overhangs(f, spec)))
        {
            findings.Add(
                HeatRules.FootprintOverhangs.At(
                    $"{sinkPath}.emitters",
                    $"An emitter of {Mm(f.WidthM)} by {Mm(f.DepthM)} at {Mm(f.CentreAcrossM)}, {Mm(f.CentreAlongM)} reaches beyond the base of {Mm(spec.AcrossM)} by {Mm(spec.AlongM)}."
                )
            );
        }

        if (spec.Fan is { } fan)
        {
            AddFan(findings, spec, fan, fanPath);
        }

        return findings;
    }

    /// <summary>How a sink works in one scene: HEA009, HEA014.</summary>
    /// <param name="result">The sink, solved.</param>
    /// <param name="sinkPath">Path of the sink in the design file.</param>
    /// <param name="fanPath">Path of the fan in the design file.</param>
    /// <param name="scene">Name of the scene.</param>
    public static IReadOnlyList<Finding> Working(SinkResult result, string sinkPath, string fanPath, string scene)
    {
        ArgumentNullException.ThrowIfNull(result);
        List<Finding> findings = [];
        foreach (var name in result.OutsideRange)
        {
            findings.Add(
                HeatRules.OutsideRange.At(sinkPath, Outside(name, result) + " Its band is doubled.", scene: scene)
            );
        }

        if (result.InStall)
        {
            findings.Add(
                HeatRules.FanInStall.At(
                    $"{fanPath}.curve",
                    $"The fan works at {N(result.FlowM3PerS * 3600)} m³/h, where its pressure grows with flow.",
                    $"{N(result.FlowM3PerS * 3600)} m³/h",
                    scene: scene
                )
            );
        }

        return findings;
    }

    /// <summary>A junction against its limit: HEA001, HEA002.</summary>
    /// <param name="junctionK">Junction temperature, K.</param>
    /// <param name="mostK">Limit, K.</param>
    /// <param name="path">Path of the limit in the design file.</param>
    /// <param name="scene">Name of the scene.</param>
    /// <param name="where">The switch position, for the message.</param>
    public static Finding? Junction(double junctionK, double mostK, string path, string scene, string where)
    {
        if (junctionK > mostK)
        {
            return HeatRules.JunctionTooHot.At(
                path,
                $"The junction comes to {C(junctionK)} at {where}; its limit is {C(mostK)}.",
                C(junctionK),
                C(mostK),
                scene
            );
        }

        return mostK - junctionK < JunctionMarginK
            ? HeatRules.JunctionMarginSmall.At(
                path,
                $"The junction comes to {C(junctionK)} at {where}, {N(mostK - junctionK)} K below its limit.",
                C(junctionK),
                C(mostK),
                scene
            )
            : null;
    }

    /// <summary>A surface against what may be touched for a time: HEA003.</summary>
    /// <param name="surfaceK">Temperature, K.</param>
    /// <param name="material">What it is made of.</param>
    /// <param name="contactS">Time of contact, s; 10 is the usual one of a housing.</param>
    /// <param name="path">Path in the design file.</param>
    /// <param name="scene">Name of the scene.</param>
    public static Finding? Surface(double surfaceK, TouchMaterial material, double contactS, string path, string scene)
    {
        var limit = TouchLimits.LimitK(TouchStandard.Equipment, material, contactS);
        return limit is { } most && surfaceK > most
            ? HeatRules.SurfaceTooHot.At(
                path,
                $"The surface comes to {C(surfaceK)}; {Name(material)} touched for {N(contactS)} s may have {C(most)}.",
                C(surfaceK),
                C(most),
                scene
            )
            : null;
    }

    /// <summary>A handle or knob against the burn threshold of 1 min: HEA004.</summary>
    /// <param name="handleK">Temperature, K.</param>
    /// <param name="material">What it is made of.</param>
    /// <param name="path">Path in the design file.</param>
    /// <param name="scene">Name of the scene.</param>
    public static Finding? Handle(double handleK, TouchMaterial material, string path, string scene)
    {
        var limit = TouchLimits.LimitK(TouchStandard.BurnThreshold, material, 60);
        return limit is { } most && handleK > most
            ? HeatRules.HandleBurns.At(
                path,
                $"The handle comes to {C(handleK)}; {Name(material)} held for a minute burns from {C(most)}.",
                C(handleK),
                C(most),
                scene
            )
            : null;
    }

    /// <summary>A driver's case against its limit: HEA010.</summary>
    /// <param name="caseK">Temperature of the case, K.</param>
    /// <param name="mostK">The maker's limit, K; null takes <see cref="DriverCaseMaxK"/>.</param>
    /// <param name="path">Path in the design file.</param>
    /// <param name="scene">Name of the scene.</param>
    public static Finding? Driver(double caseK, double? mostK, string path, string scene)
    {
        var most = mostK ?? DriverCaseMaxK;
        return caseK > most
            ? HeatRules.DriverTooHot.At(
                path,
                $"The driver's case comes to {C(caseK)}; {C(most)} is its limit.",
                C(caseK),
                C(most),
                scene
            )
            : null;
    }

    /// <summary>A solve that found no temperature: HEA011.</summary>
    /// <param name="path">Path in the design file.</param>
    /// <param name="heatW">The heat, W.</param>
    /// <param name="scene">Name of the scene.</param>
    public static Finding NotSolved(string path, double heatW, string scene) =>
        HeatRules.NotSolved.At(
            path,
            $"No temperature up to 3000 K of rise carries {N(heatW)} W away.",
            $"{N(heatW)} W",
            scene: scene
        );

    /// <summary>A sink measured with the fan running, asked for with the fan stopped: HEA015.</summary>
    /// <param name="path">Path of the measured resistance in the design file.</param>
    /// <param name="scene">The scene that is not covered.</param>
    /// <param name="times">How many times the measured resistance stands in; 1 for still air that stands in for a fan.</param>
    public static Finding MeasuredForOneFanState(string path, string scene, double times) =>
        HeatRules.MeasuredForOneFanState.At(
            path,
            times > 1
                ? $"The measured resistance holds with the fan running; in this scene {N(times)} times of it stand in, a guess that may be off by a factor of two."
                : "The trials hold with the fan stopped; with the fan running the sink is taken to be as hot, which is more than it will be.",
            scene: scene
        );

    private static void AddFan(List<Finding> findings, SinkSpec spec, FanSpec fan, string fanPath)
    {
        if (!FanCurve.IsUsable(fan.Curve))
        {
            findings.Add(
                HeatRules.FanCurveUnusable.At(
                    $"{fanPath}.curve",
                    $"The {fan.Curve.Count} points are no curve: flow must grow from point to point, and none may be negative."
                )
            );
            return;
        }

        for (var i = 1; i < fan.Curve.Count; i++)
        {
            if (fan.Curve[i].PressurePa > fan.Curve[i - 1].PressurePa)
            {
                findings.Add(
                    HeatRules.FanCurveRises.At(
                        $"{fanPath}.curve",
                        $"Pressure grows from {N(fan.Curve[i - 1].PressurePa)} Pa to {N(fan.Curve[i].PressurePa)} Pa while flow grows to {N(fan.Curve[i].FlowM3PerS * 3600)} m³/h."
                    )
                );
                break;
            }
        }

        foreach (var loss in spec.AirLosses.Where(l => !double.IsFinite(l.KPerAreaSquared)))
        {
            findings.Add(HeatRules.NoAirPath.At(loss.Path, "This is in the fan's way and has no opening."));
        }

        var start = fan.StartRatio > 0 ? fan.StartRatio : FanStartRatio;
        if (fan.VoltageRatio > 0 && fan.VoltageRatio < start)
        {
            findings.Add(
                HeatRules.FanMayNotStart.At(
                    $"{fanPath}.run_at",
                    fan.StartRatio > 0
                        ? $"It gets {N(fan.VoltageRatio * 100)} % of its rated voltage and starts at {N(start * 100)} %; it is taken to stand."
                        : $"It runs at {N(fan.VoltageRatio * 100)} % of its rated voltage.",
                    $"{N(fan.VoltageRatio * 100)} %",
                    $"{N(start * 100)} %"
                )
            );
        }

        if (spec.BypassShare > BypassNoted)
        {
            findings.Add(
                HeatRules.AirBesideFins.At(
                    fanPath,
                    $"About {Math.Round(spec.BypassShare * 100).ToString(CultureInfo.InvariantCulture)} % of the fan's air passes beside the fins; the temperatures reckon with it.",
                    $"{Math.Round(spec.BypassShare * 100).ToString(CultureInfo.InvariantCulture)} %",
                    $"{Math.Round(BypassNoted * 100).ToString(CultureInfo.InvariantCulture)} %"
                )
            );
        }

        if (fan.BoxAcrossM > 0 && Math.Abs(fan.BoxAcrossM / spec.AcrossM - 1) > FanSizeRatio)
        {
            findings.Add(
                HeatRules.FanDoesNotCoverSink.At(
                    $"{fanPath}.box",
                    $"The fan is {Mm(fan.BoxAcrossM)} across, the sink {Mm(spec.AcrossM)}.",
                    Mm(fan.BoxAcrossM),
                    Mm(spec.AcrossM)
                )
            );
        }
    }

    private static bool Overhangs(Footprint f, SinkSpec spec) =>
        f.CentreAcrossM - f.WidthM / 2 < -1e-6
        || f.CentreAcrossM + f.WidthM / 2 > spec.AcrossM + 1e-6
        || f.CentreAlongM - f.DepthM / 2 < -1e-6
        || f.CentreAlongM + f.DepthM / 2 > spec.AlongM + 1e-6;

    private static string Name(TouchMaterial material) =>
        material switch
        {
            TouchMaterial.Glass => "glass",
            TouchMaterial.Plastic => "plastic",
            TouchMaterial.Wood => "wood",
            _ => "metal",
        };

    private static string Outside(string name, SinkResult result)
    {
        if (name == HeatMethods.PinFilm.Name || name == HeatMethods.PinFriction.Name)
        {
            return $"The air between the pins has Re {N(result.ReDiameter)}; the method ({name}) holds to Re {N(PinFilm.MostRe)}, for pins twice as long as thick or longer and pitches across of 1.25 to 5 diameters.";
        }

        if (name != HeatMethods.NaturalChannelFilm.Name)
        {
            return $"With the fan running the air between the fins has Re* {N(result.ReStar)} and Re {N(result.ReDiameter)}; the method ({name}) holds from Re* {N(ChannelFilm.LeastReStar)} to {N(ChannelFilm.MostReStar)} and up to Re 2300.";
        }

        return result.ChannelTiltRad > Math.PI / 3
            ? $"The fins' channels lie {result.ChannelTiltRad * 180 / Math.PI:0}° off the upright, as the joints place the sink; air that nothing drives hardly rises through them, and the method ({name}) holds up to 60°."
            : $"Still air between the fins has an Elenbaas number of {N(result.Elenbaas)}; the method ({name}) holds from 0.1 to 100000: the gaps are too narrow or too wide.";
    }

    private static string N(double x) => x.ToString("G3", CultureInfo.InvariantCulture);

    private static string Mm(double metres) => (metres * 1e3).ToString("0.##", CultureInfo.InvariantCulture) + " mm";

    private static string C(double kelvin) =>
        (kelvin - Physics.ZeroCelsius).ToString("0.0", CultureInfo.InvariantCulture) + " °C";
}
