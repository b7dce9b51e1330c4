using System.Diagnostics;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Coupling;
using Lampwright.Heat.Network;
using Lampwright.Heat.Time;

namespace Lampwright.Benchmarks.Problems;

/// <summary><c>curves</c>: the warm-up and the stop of the fan followed over time, at every switch position of a light.</summary>
/// <remarks>
/// The peer is the plain way: implicit Euler on the same network at a step that does not change, for one warm-up; <c>oneMs</c> is ours of that same one.
/// The answer has how far apart the two are. The file is <c>thirty-two.json</c> of this folder, or any design file.
/// </remarks>
internal sealed class CurvesProblem : Problem
{
    private static readonly double WarmS = 4 * 3600;
    private static readonly double StopS = 24 * 3600;
    private static readonly double Tolerance = 5e-4;

    // Short enough that the peer is as near as ours on a light whose fastest part takes some seconds.
    private static readonly double PeerStepS = 0.5;

    public override string Name => "curves";

    public override Prepared Load(string file)
    {
        var box = LightFile.Read(file).Box!;
        var light = box.Light;
        var warm = box.State(Scene.Normal, box.HasFan, "normal", light.Brightest)!;
        return new(
            () => All(box),
            found => new
            {
                Curves = ((HeatCourse[])found).Length,
                Steps = ((HeatCourse[])found).Sum(c => c.Steps),
                BrokenOff = ((HeatCourse[])found).Count(c => c.Stopped),
                ApartK = Math.Round(ApartK(Warm(warm), Plain(warm)), 3),
            }
        )
        {
            Also = [("oneMs", () => Warm(warm))],
            PeerAgainst = "oneMs",
            PeerMs = () =>
            {
                var start = Stopwatch.GetTimestamp();
                GC.KeepAlive(Plain(warm));
                return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            },
        };
    }

    // Networks, their rests and both courses of every position; without a fan only the warm-up.
    private static HeatCourse[] All(BoxStudy box)
    {
        var found = new (HeatCourse? Warm, HeatCourse? Stop)[box.Light.Positions];
        Parallel.For(
            0,
            found.Length,
            i =>
            {
                if (box.State(Scene.Normal, box.HasFan, "normal", i) is { } normal)
                {
                    found[i].Warm = Warm(normal);
                }

                if (
                    box.HasFan
                    && box.State(Scene.AtHighestAmbient, true, "hot", i)?.Kelvin is { } hot
                    && box.State(Scene.AtHighestAmbient, false, "stopped", i) is { } stopped
                )
                {
                    found[i].Stop = NetworkTransient.Follow(stopped.Light.Network, hot, StopS, Tolerance);
                }
            }
        );
        return [.. found.SelectMany(f => new[] { f.Warm, f.Stop }).OfType<HeatCourse>()];
    }

    private static HeatCourse Warm(BoxState state) =>
        NetworkTransient.Follow(state.Light.Network, Cold(state), WarmS, Tolerance);

    private static double[] Cold(BoxState state) => [.. state.Light.Network.Nodes.Select(_ => state.Spec.AmbientK)];

    // (C/h - J)·step = keeps, one step of Newton's a step of time.
    private static double[][] Plain(BoxState state)
    {
        var network = state.Light.Network;
        var (matrix, kelvin, keeps) = (network.Matrix(), Cold(state), new double[network.Free]);
        var stored = new double[network.Free];
        for (var i = 0; i < kelvin.Length; i++)
        {
            if (network.PlaceOf(i) >= 0)
            {
                stored[network.PlaceOf(i)] = network.Nodes[i].CapacityJPerK / PeerStepS;
            }
        }

        var course = new double[(int)(WarmS / PeerStepS) + 1][];
        course[0] = [.. kelvin];
        for (var step = 1; step < course.Length; step++)
        {
            network.Balance(kelvin, keeps, matrix.Values);
            if (!matrix.Factor(-1, stored))
            {
                throw new InvalidOperationException("The network has no slope.");
            }

            matrix.Solve(keeps);
            for (var i = 0; i < kelvin.Length; i++)
            {
                kelvin[i] += network.PlaceOf(i) >= 0 ? keeps[network.PlaceOf(i)] : 0;
            }

            course[step] = [.. kelvin];
        }

        return course;
    }

    private static double ApartK(HeatCourse ours, double[][] plain)
    {
        var worst = 0.0;
        // From the tenth second on: before, a step of the peer is longer than the junction takes.
        for (var step = (int)(10 / PeerStepS); step < plain.Length; step += 7)
        {
            for (var i = 0; i < plain[step].Length; i++)
            {
                worst = Math.Max(worst, Math.Abs(ours.KelvinAt(i, step * PeerStepS) - plain[step][i]));
            }
        }

        return worst;
    }
}
