using System.Collections.Concurrent;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Heat;
using Lampwright.Heat.Network;
using Lampwright.Heat.Time;

namespace Lampwright.Evaluation.Boxes;

/// <summary>A light's box at nominal values, each part of it computed when it is first asked for.</summary>
internal sealed class BoxStudy
{
    private static readonly double ZeroC = 273.15;
    private static readonly double LongestS = 4 * 3600;

    // Long enough that what comes to harm at all has come to it (common practice, no source).
    private static readonly double StopS = 24 * 3600;

    private readonly double[] _x;
    private readonly double[] _row;
    private readonly ConcurrentDictionary<NetworkFactors, HeatCourse?> _stops = new();
    private readonly ConcurrentDictionary<NetworkFactors, HeatCourse?> _warms = new();
    private readonly ConcurrentDictionary<NetworkFactors, HeatCourse?> _cools = new();
    private readonly Lazy<BoxState?> _normal;
    private readonly Lazy<BoxState?> _hot;
    private readonly Lazy<BoxState?> _stopped;
    private readonly Lazy<BoxState?> _stoppedHot;
    private readonly Lazy<HeatCourse?> _fanStops;
    private readonly Lazy<IReadOnlyList<double>> _hotHalves;

    public BoxStudy(CoupledLight light, NetworkMap map, double[] x, double[] row)
    {
        (Light, Map, _x, _row) = (light, map, x, row);
        HasFan = light.Inputs.Parts.Fan is not null;
        _normal = new(() => State(Scene.Normal, HasFan, "normal", light.Brightest));
        _hot = new(() => State(Scene.AtHighestAmbient, HasFan, "hot", light.Brightest));
        _stopped = new(() => HasFan ? State(Scene.FanStopped, false, "fan stopped", light.Brightest) : null);
        _stoppedHot = new(() =>
            HasFan ? State(Scene.AtHighestAmbient, false, "fan stopped, hot", light.Brightest) : null
        );
        _fanStops = new(() => FanStopsUnder(NetworkFactors.Nominal));
        _hotHalves = new(() => Hot?.Halves(light.Inputs.Design.Place.AmbientMax.HalfWidth) ?? []);
    }

    /// <summary>The light.</summary>
    public CoupledLight Light { get; }

    /// <summary>What the networks are made from.</summary>
    public NetworkMap Map { get; }

    /// <summary>Whether a fan runs at all.</summary>
    public bool HasFan { get; }

    /// <summary>True where no housing keeps hands off the sink.</summary>
    public bool SinkIsOpen => Light.Inputs.Parts.Fan is not { Air.Count: > 1 };

    /// <summary>Scene normal, brightest position; null without a sink.</summary>
    public BoxState? Normal => _normal.Value;

    /// <summary>Highest ambient, fan as set.</summary>
    public BoxState? Hot => _hot.Value;

    /// <summary>Usual ambient, fan stopped; null without a fan.</summary>
    public BoxState? Stopped => _stopped.Value;

    /// <summary>Highest ambient, fan stopped; null without a fan.</summary>
    public BoxState? StoppedHot => _stoppedHot.Value;

    /// <summary>Course after the fan stops on the hottest day; null without a fan.</summary>
    public HeatCourse? FanStops => _fanStops.Value;

    /// <summary>Half widths of the bands in the scene hot, K.</summary>
    public IReadOnlyList<double> HotHalves => _hotHalves.Value;

    /// <summary>Hottest junction allowed, K.</summary>
    public double JunctionMaxK => Light.Inputs.Parts.Emitter.JunctionMax?.Nominal ?? CoupledLight.DefaultJunctionMaxK;

    /// <summary>Hottest case of the driver allowed, K.</summary>
    public double DriverMaxK => Light.Inputs.Parts.Driver?.CaseMax?.Nominal ?? HeatFindings.DriverCaseMaxK;

    /// <summary>Fixed parts that harm: junction, driver, resistors, diffuser.</summary>
    public IReadOnlyList<HarmLimit> PartLimits(LightNetwork n)
    {
        List<HarmLimit> limits = [new(n.Junction, JunctionMaxK, "junction"), new(n.Driver, DriverMaxK, "driver")];
        // At the end of its derating line a part bears no power at all: that is how hot it may become.
        limits.AddRange(
            n.Resistors.Select((node, k) => new HarmLimit(node, Light.Soldered[k].Part.ZeroAtK, Light.ResistorNames[k]))
        );
        if (n.Diffuser >= 0 && Light.Inputs.Parts.Diffuser?.TemperatureMax is { } most)
        {
            limits.Add(new(n.Diffuser, most.Nominal, "diffuser"));
        }

        return limits;
    }

    /// <summary>What a cut-out must prevent: those that are still below their limit while the fan runs, skins with them.</summary>
    public IReadOnlyList<HarmLimit> FaultLimits()
    {
        if (StoppedHot is not { } stopped || Hot?.Kelvin is not { } before)
        {
            return [];
        }

        var skins = stopped
            .Skins(Map.Sheet, SinkIsOpen)
            .Select(s => new HarmLimit(s.Node, s.LimitK, stopped.Light.Network.Nodes[s.Node].Name));
        return [.. PartLimits(stopped.Light).Concat(skins).Where(l => before[l.Node] < l.Kelvin)];
    }

    /// <summary>The network of any position in a scene; null without a sink.</summary>
    public BoxState? State(int scene, bool fanRuns, string name, int position) =>
        Map.Spec(Light.HeatAt(_x, _row, scene, fanRuns, position), fanRuns) is { } spec
            ? new BoxState(name, spec, fanRuns)
            : null;

    /// <summary>The emitter's heat and curves at the brightest position of a scene.</summary>
    public CoupledHeat HeatAt(int scene, bool fanRuns) => Light.HeatAt(_x, _row, scene, fanRuns, Light.Brightest);

    /// <summary>The nominal numbers of the road, every band closed.</summary>
    public Bands NominalBands => Bands.OfNominal(_row);

    /// <summary>What a position sets free in a scene.</summary>
    public CoupledHeat HeatAtPosition(int scene, int position) =>
        Light.HeatAt(_x, _row, scene, Scene.All[scene].FanRuns, position);

    /// <summary>The room of a scene, °C, nominal.</summary>
    public double AmbientC(int scene) => _row[Light.ScenePlace(scene, SceneRow.AmbientC)];

    /// <summary>A nominal number of a position.</summary>
    public double At(int scene, int position, int number) => _row[Light.Place(scene, position) + number];

    /// <summary>Course after the fan stops, under a set of errors; each is followed once.</summary>
    public HeatCourse? FanStopsUnder(NetworkFactors factors) => _stops.GetOrAdd(factors, FollowStop);

    private HeatCourse? FollowStop(NetworkFactors factors)
    {
        if (Hot is not { } hot || StoppedHot is not { } stopped)
        {
            return null;
        }

        var nominal = ReferenceEquals(factors, NetworkFactors.Nominal);
        var start = nominal ? hot.Kelvin : hot.RestUnder(factors);
        if (start is null)
        {
            return null;
        }

        // A course that broke off tells nothing of the harm that may follow: it is no course.
        var course = NetworkTransient.Follow(
            (nominal ? stopped.Light : stopped.Under(factors)).Network,
            start,
            StopS,
            5e-4
        );
        return course.Stopped ? null : course;
    }

    /// <summary>Course of the light being switched on, under a set of errors; each is followed once.</summary>
    public HeatCourse? WarmsUnder(NetworkFactors factors) => _warms.GetOrAdd(factors, FollowWarming);

    /// <summary>Course of the warm light being switched off, its fan with it, under a set of errors; each is followed once.</summary>
    public HeatCourse? CoolsUnder(NetworkFactors factors) => _cools.GetOrAdd(factors, FollowCooling);

    /// <summary>Names of the errors that the bands of rests and courses do not carry.</summary>
    public IReadOnlyList<string> UnfollowedErrors() =>
        [
            .. CourseBand
                .Unsolved(HasFan, f => Hot?.RestUnder(f) is not null && Normal?.RestUnder(f) is not null)
                .Concat(CourseBand.Unsolved(HasFan, f => WarmsUnder(f) is not null))
                .Concat(CourseBand.Unsolved(false, f => CoolsUnder(f) is not null))
                .Concat(FanStops is null ? [] : CourseBand.Unsolved(false, f => FanStopsUnder(f) is not null))
                .Distinct(StringComparer.Ordinal),
        ];

    private HeatCourse? FollowWarming(NetworkFactors factors)
    {
        if (Normal is not { } normal)
        {
            return null;
        }

        var network = normal.Under(factors).Network;
        return NetworkTransient.Follow(network, [.. network.Nodes.Select(_ => normal.Spec.AmbientK)], LongestS, 5e-4);
    }

    private HeatCourse? FollowCooling(NetworkFactors factors)
    {
        if (Normal is not { } normal || (Stopped ?? Normal) is not { } still)
        {
            return null;
        }

        var start = normal.RestUnder(factors);
        return start is null
            ? null
            : NetworkTransient.Follow(
                LightNetwork.Of(still.Dark with { Factors = factors }).Network,
                start,
                LongestS,
                5e-4
            );
    }

    /// <summary>Node of a place of the design file in the words a maker uses; -1 where it is not known.</summary>
    public static int NodeOf(LightNetwork n, string place) =>
        place.Trim() switch
        {
            "sink base" => n.Base,
            "emitter case" => n.Case,
            "channel air" => n.ChannelAir,
            "compartment air" => n.CompartmentAir,
            "driver" => n.Driver,
            var name => n.Network.IndexOf(name),
        };

    /// <summary>Kelvin as degrees Celsius.</summary>
    public static double C(double kelvin) => kelvin - ZeroC;
}
