using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Heat;
using Lampwright.Quantities;

namespace Lampwright.References.Heat.Truth;

/// <summary>What Lampwright says of a made light: nominal rises and their bands, by the draws of the evaluation.</summary>
internal static class TrueBands
{
    /// <summary>Nominal, 5th and 95th percentile of the rise of base and junction over the air, K.</summary>
    public static ((double Value, double Low, double High) Base, (double Value, double Low, double High) Junction) Of(
        Posed made,
        double heatW,
        int draws
    )
    {
        var parts = Parts(made);
        var sink = SinkModel.Prepare(made.Spec);
        var inputs = new CoupledInputs
        {
            Design = new LightDesign
            {
                Place = new Place
                {
                    Ambient = Value("ambient", made.AmbientK),
                    AmbientMax = Value("ambient", made.AmbientK),
                },
            },
            Parts = parts,
            Sink = sink,
            OutsideRange =
            [
                .. new[] { true, false }
                    .SelectMany(runs => sink.At(sink.Nominal, made.AmbientK.Nominal, runs, heatW)?.OutsideRange ?? [])
                    .Distinct(),
            ],
            Map = null!,
            Steps = null!,
            StepsSpec = null!,
            Told = null!,
            Fit = null!,
            Threshold = null!,
            Driver = default!,
            Network = null!,
            FixedIsOnBoard = true,
            ChosenBy = "",
            Light = null,
            Boxes = null!,
        };
        var variables = new Variables();
        var cooling = new CoolingDraws(inputs, variables);
        var columns = LatinHypercube.Columns(variables.All, draws, CancellationToken.None);
        double[] bases = new double[draws],
            junctions = new double[draws],
            x = variables.Nominal();
        var (nominalBase, nominalJunction) = Rises(x);
        for (var d = 0; d < draws; d++)
        {
            for (var v = 0; v < x.Length; v++)
            {
                x[v] = columns[v][d];
            }

            (bases[d], junctions[d]) = Rises(x);
        }

        var (baseLow, baseHigh) = OrderStatistics.Between(bases, 0.05, 0.95);
        var (low, high) = OrderStatistics.Between(junctions, 0.05, 0.95);
        return ((nominalBase, baseLow, baseHigh), (nominalJunction, low, high));

        (double, double) Rises(double[] at)
        {
            var factors = cooling.Factors(at);
            var spec = cooling.Spec(at, factors);
            var curve = cooling.Curve(at, spec, cooling.AmbientK(at, Scene.All[Scene.Normal]), made.FanRuns)!;
            var inside = cooling.InterfaceKPerW(at, factors) + cooling.JunctionKPerW(at);
            return (curve.BaseRiseK(heatW), curve.SourceRiseK(heatW) + heatW * inside);
        }
    }

    private static LightParts Parts(Posed made)
    {
        var fan = made.Spec.Fan is null
            ? null
            : new Fan("main")
            {
                Curve =
                [
                    .. made.Spec.Fan.Curve.Select(p => new Design.FanPoint(Exact(p.FlowM3PerS), Exact(p.PressurePa))),
                ],
                Rated = Exact(12),
                RunAt = Value("run_at", made.RunV),
            };
        return new(
            new Emitter("main")
            {
                JunctionToCase = Value("junction_to_case", made.JunctionKPerW),
                Body = new Size(Exact(made.BodyM), Exact(made.BodyM)),
            },
            null,
            new Sink("main") { Emissivity = Value("emissivity", made.Emissivity), Pipes = Pipes(made.Spec.Tower) },
            fan,
            new ThermalInterface("main", [], Value("thickness", made.LayerM), Value("conductivity", made.LayerWPerMK)),
            null,
            null
        );
    }

    private static Value Value(string path, Given given) => new(given.Nominal, given.HalfWidth, Origin.Given, path);

    // A leg's resistance as the file takes it where its maker says nothing.
    private static SinkPipes? Pipes(HeatPipeTower? tower) =>
        tower is null
            ? null
            : new(
                tower.Pipes,
                Exact(tower.PipeDiameterM),
                Value("pipes.resistance", new(tower.PipeKPerW, tower.PipeKPerW / 2)),
                null
            );

    private static Value Exact(double value) => Quantities.Value.Exact(value);
}
