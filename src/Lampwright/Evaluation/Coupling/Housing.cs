using Lampwright.Heat;
using Lampwright.Heat.Network;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Where the search for a common rest of steps and heat stood.</summary>
/// <param name="MovedK">What the last round still moved, K; not a number where a network found no rest of its own.</param>
/// <param name="Where">What it moved, at which position, in words.</param>
/// <param name="Scene">Name of the scene.</param>
internal sealed record HousingTrouble(double MovedK, string Where, string Scene);

/// <summary>The network of the light at rest, at every switch position in the three scenes, ready for the draws.</summary>
/// <remarks>
/// Each position is a network solved at nominal heats, with its slopes. A draw takes its own heats by these slopes, and the errors of the
/// methods as powers that are found once a scene, at its brightest position.
/// </remarks>
internal sealed class Housing
{
    private static readonly double SettledK = 2e-3;
    private static readonly double Trial = 1.15;

    private static readonly Func<NetworkFactors, double, NetworkFactors>[] Errors =
    [
        (f, v) => f with { PanelFilm = v },
        (f, v) => f with { InsideFilm = v },
        (f, v) => f with { Emissivity = v },
        (f, v) => f with { Contact = v },
        (f, v) => f with { AirFlow = v },
    ];

    // Place of the flow among the errors, the last.
    private static readonly int FlowError = Errors.Length - 1;

    private readonly HousingScene[] _scenes;
    private readonly Lazy<double[]?[]> _powers;

    private Housing(HousingScene[] scenes)
    {
        _scenes = scenes;
        _powers = new(() => [.. _scenes.Select(s => PowersOf(s.Brightest))]);
    }

    /// <summary>Place of the compartment's air among the nodes of a point.</summary>
    public static int Air => 0;

    /// <summary>Place of the driver's case.</summary>
    public static int Driver => 1;

    /// <summary>First place of the front's skins.</summary>
    public static int Front => 2;

    /// <summary>The network of a position; null where nothing is set free there or the light has no sink.</summary>
    public HousingPoint? At(int scene, int position) => _scenes[scene].Points[position];

    /// <summary>Whether it holds the very rests of another, so that nothing that was read off that one changes.</summary>
    public bool IsAs(Housing other)
    {
        for (var s = 0; s < _scenes.Length; s++)
        {
            for (var i = 0; i < _scenes[s].Points.Length; i++)
            {
                if (!ReferenceEquals(At(s, i), other.At(s, i)))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>
    /// The networks at the heats of a row, and what they say that the row does not yet; null where the light has none, or one found no rest.
    /// </summary>
    public static (Housing? Found, HousingTrouble? Trouble) Of(
        CoupledLight light,
        double[] x,
        double[] row,
        Housing? before
    )
    {
        var scenes = new HousingScene[Scene.All.Count];
        Parallel.For(0, scenes.Length, s => scenes[s] = HousingScene.Of(light, x, row, s, before?._scenes[s]));
        if (scenes.FirstOrDefault(s => s.Worst is { MovedK: double.NaN }) is { } lost)
        {
            return (null, lost.Worst);
        }

        var worst = scenes.Select(s => s.Worst).MaxBy(w => w?.MovedK ?? -1);
        return worst is null ? (null, null) : (new(scenes), worst.MovedK <= SettledK ? null : worst);
    }

    /// <summary>How a draw differs from nominal in a scene.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="factors">Errors of the methods.</param>
    /// <param name="contact">Error of joints.</param>
    /// <param name="airFlow">Error of the flow through the housing.</param>
    /// <param name="curve">The draw's sink.</param>
    public HousingDraw Draw(int scene, HeatFactors factors, double contact, double airFlow, SinkCurve? curve)
    {
        ReadOnlySpan<double> errors = [factors.PanelFilm, factors.InsideFilm, factors.Emissivity, contact, airFlow];
        if (_scenes[scene].Brightest is not { } full || !errors.ContainsAnyExcept(1))
        {
            return HousingDraw.Nominal;
        }

        // More air than the network was told of counts as an error of the flow.
        var flow =
            full.Heat.Sink is { FlowM3PerS: > 0 } nominal && curve is { FlowM3PerS: > 0 }
                ? airFlow * curve.FlowM3PerS / nominal.FlowM3PerS
                : airFlow;
        if (_powers.Value[scene] is not { } powers)
        {
            return HousingDraw.Nominal;
        }

        var count = powers.Length / Errors.Length;
        var times = new double[count];
        for (var n = 0; n < count; n++)
        {
            var log = 0.0;
            for (var e = 0; e < Errors.Length; e++)
            {
                log += powers[(n * Errors.Length) + e] * Math.Log(e == FlowError ? flow : errors[e]);
            }

            times[n] = Math.Exp(Math.Clamp(log, -1.5, 1.5));
        }

        // A sink that is worse than nominal gives more to the sheet beside it.
        var sinkW = full.Heat.HeatW * (1 - Math.Clamp(At(scene, full.Position)?.SeatShare ?? 0, -20, 0.95));
        var worse =
            full.Heat.Sink is { } own && curve is not null && own.BaseRiseK(sinkW) > 0
                ? curve.BaseRiseK(sinkW) / own.BaseRiseK(sinkW)
                : 1;
        return new(times, times[^1] * worse);
    }

    private static double[]? PowersOf(BrightestRest? full)
    {
        if (full is null)
        {
            return null;
        }

        // Rises of the nodes that are read, then the sheet's conductance from the base.
        double[] Read(LightNetwork n, IReadOnlyList<double> kelvin)
        {
            var rise = kelvin[n.Base] - kelvin[n.Room];
            return [.. full.Nodes.Select(i => kelvin[i] - kelvin[n.Room]), rise > 0 ? n.SeatW(kelvin) / rise : 0];
        }

        var nominal = Read(full.Network, full.Kelvin);
        var powers = new double[nominal.Length * Errors.Length];
        for (var e = 0; e < Errors.Length; e++)
        {
            // Where one end has no rest the other tells the power as well; the box names an error that has none at either end.
            foreach (var trial in (ReadOnlySpan<double>)[Trial, 1 / Trial])
            {
                var moved = full.Network.Under(Errors[e](NetworkFactors.Nominal, trial));
                if (moved.Network.Steady(full.Kelvin).Result is not { } rest)
                {
                    continue;
                }

                var then = Read(moved, rest.Kelvin);
                for (var n = 0; n < nominal.Length; n++)
                {
                    var ratio = nominal[n] > 1e-6 ? then[n] / nominal[n] : 1;
                    powers[(n * Errors.Length) + e] = ratio > 0 ? Math.Log(ratio) / Math.Log(trial) : 0;
                }

                break;
            }
        }

        return powers;
    }
}

/// <summary>What one draw does to the network of a scene.</summary>
/// <param name="Times">How many times its nominal rises each node has; null at nominal.</param>
/// <param name="SeatTimes">How many times its nominal share against the sink's own faces the sheet takes.</param>
internal readonly record struct HousingDraw(double[]? Times, double SeatTimes)
{
    /// <summary>The nominal draw.</summary>
    public static HousingDraw Nominal => new(null, 1);

    /// <summary>Share of the emitter's heat that sheet under the sink takes.</summary>
    /// <param name="nominal">That share at nominal.</param>
    public double SeatShare(double nominal)
    {
        // Two ways side by side; sheet that warms the base keeps its share.
        var own = 1 - Math.Clamp(nominal, -20, 0.95);
        return nominal <= 0 ? 1 - own : 1 - (own / (own + ((1 - own) * SeatTimes)));
    }
}
