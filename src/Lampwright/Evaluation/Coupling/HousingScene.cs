using Lampwright.Heat.Network;

namespace Lampwright.Evaluation.Coupling;

/// <summary>The networks of one scene at rest, one for each switch position.</summary>
/// <remarks>
/// The network is laid once; from position to position only heats change. Each search begins where the slopes of the last rest (of the
/// same position in the round before, else of the position before) say that this one is.
/// </remarks>
internal sealed class HousingScene
{
    private static readonly double ZeroC = 273.15;

    // So little moves a rest along its slopes: the bend of the films then is a ten-millionth of a kelvin.
    private static readonly double NearK = 0.01;

    // And the row says the same to a hundredth of what is called rest, or the share that sheet takes still moves.
    private static readonly double SaidK = 2e-5;

    private HousingScene(HousingPoint?[] points, LightNetwork? laid, BrightestRest? brightest, HousingTrouble? worst) =>
        (Points, Laid, Brightest, Worst) = (points, laid, brightest, worst);

    /// <summary>The network of each position; null where nothing is set free.</summary>
    public HousingPoint?[] Points { get; }

    /// <summary>The network at its brightest position, for the errors of the methods.</summary>
    public BrightestRest? Brightest { get; }

    /// <summary>What the networks say most that the row does not yet, or which found no rest; null where there is no network.</summary>
    public HousingTrouble? Worst { get; }

    private LightNetwork? Laid { get; }

    /// <summary>The networks of a scene at the heats of a row.</summary>
    /// <param name="light">The light.</param>
    /// <param name="x">Nominal value of each variable.</param>
    /// <param name="row">The row.</param>
    /// <param name="scene">The scene.</param>
    /// <param name="before">What the last round found; null in the first.</param>
    public static HousingScene Of(CoupledLight light, double[] x, double[] row, int scene, HousingScene? before)
    {
        var count = light.Positions;
        var points = new HousingPoint?[count];
        var (laid, matrix, last, nodes) = (before?.Laid, (NetworkMatrix?)null, (HousingPoint?)null, Array.Empty<int>());
        BrightestRest? brightest = null;
        var (worst, where, fanRuns) = (-1.0, (Node: 0, Position: 0), Scene.All[scene].FanRuns);
        for (var i = 0; i < count; i++)
        {
            var heat = light.HeatAt(x, row, scene, fanRuns, i);
            if (light.Inputs.Map.Spec(heat, fanRuns) is not { } told)
            {
                continue;
            }

            // The heat at this junction is known; how it would change with the junction is for courses over time.
            var spec = told with
            {
                EmitterWPerK = 0,
            };
            var n = laid?.At(spec) ?? LightNetwork.Of(spec);
            if (matrix is null || !ReferenceEquals(n.Panels, laid?.Panels))
            {
                (laid, matrix) = (n, n.Network.Matrix());
                nodes = [n.CompartmentAir, n.Driver, .. light.Inputs.Map.Front(n)];
            }

            var (at, known) = (heat.Heats, before?.Points[i]);
            var kelvin = (known ?? last)?.GuessK(at) ?? [];
            var place = row.AsSpan(light.Place(scene, i), light.Size);
            if (known?.IsNear(kelvin, NearK) == true && MostMovedK(place, n, kelvin) <= SaidK)
            {
                (points[i], last) = (known, known);
                brightest = i == light.Brightest ? before!.Brightest : brightest;
            }
            else
            {
                if (kelvin.Length > 0)
                {
                    n.HangOn(kelvin);
                }

                var solve = n.Network.Steady(kelvin, matrix);
                if (solve.Result is not { } rest)
                {
                    return new(points, laid, null, Trouble(light, double.NaN, solve.WorstNode, scene, i));
                }

                kelvin = (double[])rest.Kelvin;
                points[i] = last = HousingPoint.Of(n, kelvin, matrix, at, nodes);
                brightest = i == light.Brightest ? new(n, spec, nodes, kelvin, heat, i) : brightest;
            }

            Moved(n.CompartmentAir, place[PositionRow.CompartmentC]);
            Moved(n.Driver, place[PositionRow.DriverC]);
            Moved(n.Base, place[PositionRow.SinkC]);

            void Moved(int node, double saidC)
            {
                var moved = Math.Abs(kelvin[node] - ZeroC - saidC);
                if (!(moved <= worst))
                {
                    (worst, where) = (moved, (node, i));
                }
            }
        }

        var named = worst < 0 ? "" : laid!.Network.Nodes[where.Node].Name;
        return new(points, laid, brightest, worst < 0 ? null : Trouble(light, worst, named, scene, where.Position));
    }

    private static double MostMovedK(ReadOnlySpan<double> place, LightNetwork n, ReadOnlySpan<double> kelvin)
    {
        var air = Math.Abs(kelvin[n.CompartmentAir] - ZeroC - place[PositionRow.CompartmentC]);
        var driver = Math.Abs(kelvin[n.Driver] - ZeroC - place[PositionRow.DriverC]);
        return Math.Max(Math.Max(air, driver), Math.Abs(kelvin[n.Base] - ZeroC - place[PositionRow.SinkC]));
    }

    private static HousingTrouble Trouble(CoupledLight light, double movedK, string node, int scene, int position) =>
        new(movedK, $"{node} at position {light.Inputs.Network.Switches(position)}", Scene.All[scene].Name);
}

/// <summary>The network of a scene at its brightest position.</summary>
/// <param name="Network">The network.</param>
/// <param name="Spec">What it was told.</param>
/// <param name="Nodes">Nodes that are read.</param>
/// <param name="Kelvin">Its temperatures at rest, K.</param>
/// <param name="Heat">What it is told of the position.</param>
/// <param name="Position">The position.</param>
internal sealed record BrightestRest(
    LightNetwork Network,
    LightNetworkSpec Spec,
    int[] Nodes,
    double[] Kelvin,
    CoupledHeat Heat,
    int Position
);
