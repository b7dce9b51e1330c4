using System.Collections.Concurrent;
using Lampwright.Heat;
using Lampwright.Heat.Network;
using Lampwright.Heat.Time;

namespace Lampwright.Evaluation.Boxes;

/// <summary>One state of a light as a network: its spec, the network and where it rests.</summary>
internal sealed class BoxState
{
    private static readonly double TouchS = 5;

    private readonly Lazy<NetworkSolve> _rest;
    private readonly ConcurrentDictionary<NetworkFactors, IReadOnlyList<double>?> _under = new();

    public BoxState(string name, LightNetworkSpec spec, bool fanRuns)
    {
        (Name, Spec, FanRuns) = (name, spec, fanRuns);
        Light = LightNetwork.Of(spec);
        _rest = new(() => Light.Network.Steady());
    }

    /// <summary>Name of the scene.</summary>
    public string Name { get; }

    /// <summary>What it is made of.</summary>
    public LightNetworkSpec Spec { get; }

    /// <summary>Whether the fan runs.</summary>
    public bool FanRuns { get; }

    /// <summary>The network.</summary>
    public LightNetwork Light { get; }

    /// <summary>Where it rests, or where the search stood.</summary>
    public NetworkSolve Solve => _rest.Value;

    /// <summary>Temperatures at rest, K; null where none were found.</summary>
    public IReadOnlyList<double>? Kelvin => _rest.Value.Result?.Kelvin;

    /// <summary>The same state under a set of errors.</summary>
    public LightNetwork Under(NetworkFactors factors) => Light.Under(factors);

    /// <summary>Temperatures at rest under a set of errors, K, each sought once; null where none were found.</summary>
    public IReadOnlyList<double>? RestUnder(NetworkFactors factors) =>
        _under.GetOrAdd(factors, f => Under(f).Network.Steady([.. Kelvin ?? []]).Result?.Kelvin);

    /// <summary>The state with everything off.</summary>
    public LightNetworkSpec Dark =>
        Spec with
        {
            EmitterW = 0,
            EmitterWPerK = 0,
            DriverW = 0,
            Resistors = [.. Spec.Resistors.Select(r => r with { HeatW = 0 })],
            ReflectorW = 0,
            DiffuserW = 0,
        };

    /// <summary>Half widths of the bands of all nodes at rest, K.</summary>
    public IReadOnlyList<double> Halves(double ambientHalfK) =>
        Kelvin is { } rest
            ? CourseBand.Halves(FanRuns, rest, RestUnder, ambientHalfK)
            : new double[Light.Network.Nodes.Count];

    /// <summary>Skins: panels that a hand reaches, and the diffuser; each with the limit for a touch of a few seconds.</summary>
    /// <param name="sheet">The panels.</param>
    /// <param name="sinkIsOpen">True where no housing keeps hands off the sink.</param>
    public IEnumerable<(int Node, TouchMaterial Material, double LimitK)> Skins(SheetPanels sheet, bool sinkIsOpen)
    {
        (int, TouchMaterial, double) Skin(int node, TouchMaterial material) =>
            (node, material, TouchLimits.LimitK(TouchStandard.Equipment, material, TouchS) ?? double.PositiveInfinity);
        for (var i = 0; i < sheet.Panels.Count; i++)
        {
            if (!sheet.Covered.Contains(i))
            {
                yield return Skin(Light.Panels[i], TouchMaterial.Metal);
            }
        }

        if (Light.Diffuser >= 0)
        {
            yield return Skin(Light.Diffuser, TouchMaterial.Plastic);
        }

        if (sinkIsOpen)
        {
            yield return Skin(Light.Fins, TouchMaterial.Metal);
        }
    }
}
