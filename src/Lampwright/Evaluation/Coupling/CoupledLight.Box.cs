using System.Collections.Concurrent;
using Lampwright.Heat.Network;
using Lampwright.Light;

namespace Lampwright.Evaluation.Coupling;

/// <summary>How the coupled light and the network of its box come to rest together.</summary>
internal sealed partial class CoupledLight
{
    private static readonly int MostRounds = 12;

    // Heat stored by a resistor for each watt of its rating: half a gram of ceramic (common practice, no source).
    private static readonly double ResistorJPerKAndW = 0.5;

    // A part that hot is long gone, which steps says; the network then need not look for a rest beyond the melting of all metals.
    private static readonly double MostResistorK = 2000;

    private readonly ConcurrentDictionary<(int Scene, bool FanRuns), SceneHeat> _sceneHeats = new();
    private Housing? _housing;

    /// <summary>Name of every resistor that is soldered.</summary>
    public IReadOnlyList<string> ResistorNames =>
        field ??= [.. Enumerable.Range(0, Soldered.Count).Select(i => SolderedPart.Name(Soldered, i))];

    /// <summary>Where the search for a common rest of steps and heat stood; null where it was found or there is no network.</summary>
    public HousingTrouble? Trouble { get; private set; }

    /// <summary>Rounds between steps and network until both came to rest; 0 where there is no network.</summary>
    public int Rounds { get; private set; }

    /// <summary>Share of the emitter's heat that sheet under the sink takes in a scene at a position, nominal.</summary>
    public double SeatShare(int scene, int position) =>
        _housing?.At(scene, position) is { } point ? HousingDraw.Nominal.SeatShare(point.SeatShare) : 0;

    /// <summary>What the network of the box is told of one switch position at nominal values.</summary>
    /// <param name="x">Nominal value of each variable.</param>
    /// <param name="row">The nominal row.</param>
    /// <param name="scene">Scene whose currents and heats hold.</param>
    /// <param name="fanRuns">Whether the fan runs, which may differ from the scene's.</param>
    /// <param name="position">Switch position.</param>
    public CoupledHeat HeatAt(ReadOnlySpan<double> x, ReadOnlySpan<double> row, int scene, bool fanRuns, int position)
    {
        var of = SceneHeatOf(x, row, scene, fanRuns);
        var at = row[Place(scene, position)..];
        var emitter = new EmitterAtCurrent(of.Emitter, at[PositionRow.CurrentA]);
        var hot = at[PositionRow.JunctionC] + ZeroC;
        double Heat(double t) => (emitter.CurrentA * emitter.VoltageV(t)) - (emitter.FluxLm(t) / of.BackLmPerW);

        // Forty kelvin is how far a stopped fan moves a junction before something must act.
        var slope = (Heat(hot + 40) - Heat(hot)) / 40;
        var radiant = of.LightShare * at[PositionRow.EmitterW] ?? at[PositionRow.FluxLm] / of.RadiationLmPerW;
        var resistors = new NetworkResistor[Soldered.Count];
        for (var k = 0; k < resistors.Length; k++)
        {
            var (place, part, share) = Soldered[k];
            var watts = share * at[PositionRow.FirstResistorW + place];
            resistors[k] = new(
                ResistorNames[k],
                watts,
                Math.Min(part.RisePerWattK, MostResistorK / Math.Max(watts, 1e-9)),
                ResistorJPerKAndW * part.RatingW
            );
        }

        return new CoupledHeat(
            of.Sink,
            of.Spec,
            of.Working,
            of.IsMeasured,
            of.AmbientK,
            at[PositionRow.HeatW],
            slope,
            hot,
            at[PositionRow.CaseC] + ZeroC,
            at[PositionRow.SinkC] + ZeroC,
            at[PositionRow.DriverLossW],
            resistors,
            radiant * row[CommonPlace(CommonRow.ReflectorAbsorbs)],
            radiant * row[CommonPlace(CommonRow.DiffuserAbsorbs)],
            at[PositionRow.FluxLm],
            emitter
        );
    }

    /// <summary>Heat at a position with the junction at a temperature, and the drop from it to the sink, on the hottest day at nominal values.</summary>
    /// <param name="x">Nominal value of each variable.</param>
    /// <param name="currentA">Current of the position, A.</param>
    /// <param name="junctionK">Junction, K.</param>
    public (double HeatW, double InsideK) AtJunction(ReadOnlySpan<double> x, double currentA, double junctionK)
    {
        var emitter = new EmitterAtCurrent(_emitter.At(x), currentA);
        var factors = _cooling.Factors(x);
        var optics = _optics?.At(x) ?? new LightResult(1, 0, 0, 0, 0, 0, 0, 1);
        var power = currentA * emitter.VoltageV(junctionK);
        var back = Math.Max(1 - optics.AbsorbedBase, 0.05);
        var light = _cooling.LightShare(x) * power ?? emitter.FluxLm(junctionK) / _cooling.RadiationLmPerW(x);
        var heat = Math.Max(0.05 * power, power - (light * back));
        return (
            heat,
            ((_cooling.JunctionIsElectrical ? power : heat) * _cooling.JunctionKPerW(x))
                + (heat * _cooling.InterfaceKPerW(x, factors))
        );
    }

    // Steps tells the network its heats, the network tells steps what air its resistors are in and what the sheet takes from the sink,
    // until neither moves the other. The network's slopes go with it, so that two rounds are the rule.
    private void Settle(double[] x, double[] row)
    {
        for (var round = 1; round <= MostRounds; round++)
        {
            var (found, trouble) = Housing.Of(this, x, row, _housing);
            Trouble = trouble;
            if (found is null)
            {
                return;
            }

            var moves = _housing is null || !found.IsAs(_housing);
            (_housing, Rounds) = (found, round);
            if (moves)
            {
                Row(x, row);
            }

            if (trouble is null)
            {
                return;
            }
        }
    }

    private SceneHeat SceneHeatOf(ReadOnlySpan<double> x, ReadOnlySpan<double> row, int scene, bool fanRuns)
    {
        if (_sceneHeats.TryGetValue((scene, fanRuns), out var known))
        {
            return known;
        }

        var spec = _cooling.Spec(x, _cooling.Factors(x));
        var ambient = Math.Clamp(row[ScenePlace(scene, SceneRow.AmbientC)] + ZeroC, 200, 400);
        var radiation = _cooling.RadiationLmPerW(x);
        var made = new SceneHeat(
            _cooling.Curve(x, spec, ambient, fanRuns),
            spec,
            _cooling.At(spec, ambient, fanRuns, row[Place(scene, Brightest) + PositionRow.HeatW]),
            _cooling.IsMeasuredWhen(fanRuns),
            ambient,
            _emitter.At(x),
            radiation,
            radiation / Math.Max(1 - (_optics?.At(x).AbsorbedBase ?? 0), 0.05),
            _cooling.LightShare(x)
        );
        return _sceneHeats.GetOrAdd((scene, fanRuns), made);
    }
}
