using Lampwright.Design;
using Lampwright.Evaluation.Build;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Findings;

namespace Lampwright.Evaluation;

/// <summary>A design that every station has looked at. The nominal result is there at once; bands follow from draws.</summary>
/// <remarks>
/// Heavy work (fits, series, view factors, folding, placing) is done once, at nominal values. A draw then runs closed forms over
/// one row of numbers: first the coupled light, then metal, fit-up and balance, which read what came before.
/// </remarks>
public sealed class PreparedEvaluation
{
    private readonly LightDesign _design;
    private readonly Variables _variables = new();
    private readonly Outputs _outputs = new();
    private readonly List<IRowPart> _rowParts = [];
    private readonly List<Finding> _findings = [];
    private readonly CoupledLight? _light;
    private readonly MetalRows _metal;
    private readonly double[] _nominal;
    private readonly double _residualK;

    internal PreparedEvaluation(LightDesign design)
    {
        _design = design;
        var patterns = new HolePatterns(design);
        var (made, metalFindings) = MetalShop.Of(design, patterns);
        var inputs = CoupledPreparation.Of(
            design,
            AirOpenings.Of(design, made),
            parts => BoxMap.Of(design, parts, made),
            _findings
        );
        _findings.AddRange(metalFindings);
        if (inputs is not null)
        {
            _light = new(inputs, _variables, _outputs);
            _rowParts.Add(_light);
        }

        _metal = new(made, _variables, _outputs);
        _rowParts.Add(_metal);

        _nominal = new double[_outputs.Count];
        var x = _variables.Nominal();
        _light?.Decide(x, _nominal);
        foreach (var part in _rowParts)
        {
            _residualK = Math.Max(_residualK, part.Row(x, _nominal));
        }
    }

    /// <summary>Count of variables that scatter.</summary>
    public int UncertainInputs => _variables.All.Count(v => v.Scatter != Scatter.None);

    /// <summary>The nominal result; every band is closed.</summary>
    public LightEvaluation Nominal() => Lay(Bands.OfNominal(_nominal), []);

    /// <summary>The result with bands and the ranking of what matters most.</summary>
    /// <param name="draws">Count of draws, at least 16.</param>
    /// <param name="cancel">Stops the work.</param>
    public LightEvaluation WithBands(int draws, CancellationToken cancel = default)
    {
        Guard.InRange(draws, 16, 1_000_000);
        _metal.PrepareDraws();
        var columns = new double[_variables.All.Count][];
        Parallel.For(
            0,
            columns.Length,
            new ParallelOptions { CancellationToken = cancel },
            i => columns[i] = LatinHypercube.Column(_variables.All[i], draws)
        );
        var rows = new double[draws][];
        Parallel.For(
            0,
            draws,
            new ParallelOptions { CancellationToken = cancel },
            () => new double[columns.Length],
            (i, _, x) =>
            {
                for (var v = 0; v < columns.Length; v++)
                {
                    x[v] = columns[v][i];
                }

                var row = new double[_outputs.Count];
                foreach (var part in _rowParts)
                {
                    part.Row(x, row);
                }

                rows[i] = row;
                return x;
            },
            _ => { }
        );
        return Lay(Bands.Of(_nominal, rows, cancel), Ranked(rows, columns));
    }

    private LightEvaluation Lay(Bands bands, IReadOnlyList<Influence> influences) =>
        new()
        {
            Title = _design.Title,
            Draws = bands.Draws,
            Steps = _light is null ? null : StepsBuild.Of(_light, bands),
            Heat = _light is null ? null : HeatBuild.Of(_light, bands, null),
            Light = _light?.Inputs.Light is { } model
                ? LightBuild.Of(_light, model, bands, LightBuild.Picture(model))
                : null,
            Metal = MetalBuild.Of(_metal, bands),
            Findings = [.. _findings.OrderByDescending(f => f.Severity)],
            Influences = influences,
        };

    private List<Influence> Ranked(double[][] rows, double[][] columns)
    {
        var ranked = new List<Influence>();
        foreach (var (name, place) in Watched())
        {
            var values = new double[rows.Length];
            for (var i = 0; i < rows.Length; i++)
            {
                values[i] = rows[i][place];
            }

            ranked.AddRange(InfluenceRanking.Of(name, values, _variables.All, columns, 6));
        }

        return ranked;
    }

    private IEnumerable<(string Name, int Place)> Watched()
    {
        if (_light is not { } light)
        {
            yield break;
        }

        yield return (
            "junction in the scene hot, brightest position",
            light.Place(Scene.AtHighestAmbient, light.Brightest) + PositionRow.JunctionC
        );
        yield return (
            "lux at the subject, brightest position",
            light.Place(Scene.Normal, light.Brightest) + PositionRow.Lux
        );
        yield return ("current, brightest position", light.Place(Scene.Normal, light.Brightest) + PositionRow.CurrentA);
    }
}
