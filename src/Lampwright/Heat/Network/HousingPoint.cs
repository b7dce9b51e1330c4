namespace Lampwright.Heat.Network;

/// <summary>What is set free in a light, by where.</summary>
/// <param name="EmitterW">Heat through the emitter's back, W.</param>
/// <param name="DriverW">Loss of the driver, W.</param>
/// <param name="ChainW">Loss of all resistors of the chain, W.</param>
/// <param name="ReflectorW">Light absorbed in the reflector, W.</param>
/// <param name="DiffuserW">Light absorbed in the diffuser, W.</param>
public readonly record struct HousingHeat(
    double EmitterW,
    double DriverW,
    double ChainW,
    double ReflectorW,
    double DiffuserW
);

/// <summary>A light's network at rest, read about that point: rises of a few nodes over the room, for heats that differ a little.</summary>
/// <remarks>
/// <para>Exact at the point; about it a straight line over the five heats, the slopes taken from the balance at rest itself. So draws and
/// the coupled loop read in some nanoseconds what the network says, and no second model of the housing can say anything else.</para>
/// Validity: heats within a third of those of the point. Source: derived (implicit differentiation of the balance). Accuracy: a fiftieth of
/// what a fifth more heat changes. Checked by: invariant (the network itself at other heats).
/// </remarks>
public sealed class HousingPoint
{
    private static readonly int Heats = 5;

    private readonly double[] rises;
    private readonly double[] slopes;
    private readonly double[] kelvin;
    private readonly IReadOnlyList<double[]> all;

    private HousingPoint(
        LightNetwork light,
        double[] kelvin,
        IReadOnlyList<double[]> all,
        in HousingHeat heat,
        IReadOnlyList<int> nodes
    )
    {
        (Heat, this.kelvin, this.all) = (heat, kelvin, all);
        (rises, slopes) = (new double[nodes.Count], new double[nodes.Count * Heats]);
        for (var n = 0; n < nodes.Count; n++)
        {
            rises[n] = kelvin[nodes[n]] - kelvin[light.Room];
            for (var k = 0; k < Heats; k++)
            {
                slopes[(n * Heats) + k] = all[k][nodes[n]];
            }
        }

        var sunk = heat.EmitterW + light.OtherW;
        var seat = sunk > 0 ? light.SeatW(kelvin) / sunk : 0;
        SeatShare = double.IsFinite(seat) ? seat : 0;
    }

    /// <summary>Heats of the point.</summary>
    public HousingHeat Heat { get; }

    /// <summary>Share of the sink's heat that goes from the base into sheet, which is below 0 where the sheet warms the base.</summary>
    public double SeatShare { get; }

    /// <summary>Count of the nodes that can be read.</summary>
    public int Count => rises.Length;

    /// <summary>The point of a network at rest; null where the balance has no slope there.</summary>
    /// <param name="light">The network.</param>
    /// <param name="kelvin">Its temperatures at rest, K.</param>
    /// <param name="heat">Heats that it was told of.</param>
    /// <param name="nodes">Nodes that are to be read.</param>
    public static HousingPoint? Of(
        LightNetwork light,
        IReadOnlyList<double> kelvin,
        in HousingHeat heat,
        IReadOnlyList<int> nodes
    )
    {
        ArgumentNullException.ThrowIfNull(light);
        ArgumentNullException.ThrowIfNull(kelvin);
        ArgumentNullException.ThrowIfNull(nodes);
        double[] at = [.. kelvin];
        return light.Network.Slopes(at, Heated(light)) is { } found ? new(light, at, found, heat, nodes) : null;
    }

    /// <summary>The same where the slopes at rest are split already.</summary>
    internal static HousingPoint Of(
        LightNetwork light,
        double[] kelvin,
        NetworkMatrix matrix,
        in HousingHeat heat,
        IReadOnlyList<int> nodes
    ) => new(light, kelvin, light.Network.Slopes(matrix, Heated(light)), heat, nodes);

    private static int[] Heated(LightNetwork light)
    {
        var front = light.Reflector >= 0 ? light.Reflector : light.Diffuser;
        int Or(int node) => node >= 0 ? node : light.Room;
        return
        [
            light.Junction,
            light.Driver,
            light.CompartmentAir,
            Or(front),
            Or(light.Diffuser >= 0 ? light.Diffuser : front),
        ];
    }

    /// <summary>Whether other heats move no node by more than a temperature, K: the straight line then is as good as a new rest.</summary>
    /// <param name="guessK">What <see cref="GuessK"/> says of those heats.</param>
    /// <param name="mostK">The temperature, K.</param>
    internal bool IsNear(ReadOnlySpan<double> guessK, double mostK)
    {
        for (var i = 0; i < kelvin.Length; i++)
        {
            if (!(Math.Abs(guessK[i] - kelvin[i]) <= mostK))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Temperature of every node at other heats by the slopes, K: where the search for their rest best begins.</summary>
    /// <param name="heat">The other heats.</param>
    internal double[] GuessK(in HousingHeat heat)
    {
        var (guess, by) = ((double[])kelvin.Clone(), Over(heat));
        for (var k = 0; k < Heats; k++)
        {
            for (var i = 0; by[k] != 0 && i < guess.Length; i++)
            {
                guess[i] += all[k][i] * by[k];
            }
        }

        return guess;
    }

    private double[] Over(in HousingHeat heat) =>
        [
            heat.EmitterW - Heat.EmitterW,
            heat.DriverW - Heat.DriverW,
            heat.ChainW - Heat.ChainW,
            heat.ReflectorW - Heat.ReflectorW,
            heat.DiffuserW - Heat.DiffuserW,
        ];

    /// <summary>Rise of a node over the room at heats, K, 0 or above.</summary>
    /// <param name="node">Which of the nodes that were named.</param>
    /// <param name="heat">The heats.</param>
    public double RiseK(int node, in HousingHeat heat)
    {
        var s = slopes.AsSpan(node * Heats, Heats);
        return Math.Max(
            0,
            rises[node]
                + (s[0] * (heat.EmitterW - Heat.EmitterW))
                + (s[1] * (heat.DriverW - Heat.DriverW))
                + (s[2] * (heat.ChainW - Heat.ChainW))
                + (s[3] * (heat.ReflectorW - Heat.ReflectorW))
                + (s[4] * (heat.DiffuserW - Heat.DiffuserW))
        );
    }
}
