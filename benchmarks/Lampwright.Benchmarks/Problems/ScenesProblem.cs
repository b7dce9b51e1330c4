using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;

namespace Lampwright.Benchmarks.Problems;

/// <summary><c>scenes</c>: every switch position of a light in the three scenes, to the common rest of current, light and heat.</summary>
/// <remarks>
/// <c>ms</c> is that from the inputs on; <c>heatMs</c> the part of the network alone: all its rests from scratch; <c>bandsMs</c> 512 draws with their bands.
/// The file is <c>thirty-two.json</c> of this folder, or any design file.
/// </remarks>
internal sealed class ScenesProblem : Problem
{
    private static readonly int Draws = 512;

    public override string Name => "scenes";

    public override Prepared Load(string file)
    {
        var light = LightFile.Read(file).Coupled!;
        var (settled, x, row) = Settled(light.Inputs, new Variables());
        return new(
            () => Settled(light.Inputs, new Variables()).Row,
            _ => new
            {
                Positions = settled.Positions,
                Rounds = settled.Rounds,
                JunctionC = Enumerable
                    .Range(0, Scene.All.Count)
                    .Select(s => Math.Round(row[settled.Place(s, settled.Brightest) + PositionRow.JunctionC], 6))
                    .ToArray(),
            }
        )
        {
            Also = [("heatMs", () => Housing.Of(settled, x, row, null)), ("bandsMs", () => WithBands(light.Inputs))],
        };
    }

    private static (CoupledLight Light, double[] X, double[] Row) Settled(CoupledInputs inputs, Variables variables)
    {
        var outputs = new Outputs();
        var light = new CoupledLight(inputs, variables, outputs);
        var (x, row) = (variables.Nominal(), new double[outputs.Count]);
        light.Decide(x, row);
        return (light, x, row);
    }

    private static Bands WithBands(CoupledInputs inputs)
    {
        var variables = new Variables();
        var (light, _, row) = Settled(inputs, variables);
        var table = DrawTable.Of(variables.All, [light], row.Length, Draws, CancellationToken.None);
        return Bands.Of(row, table.Rows, CancellationToken.None);
    }
}
