using Lampwright.Evaluation.Draws;
using Lampwright.Metal;

namespace Lampwright.Evaluation.Metalwork;

/// <summary>Sizes and masses of the blanks in a draw.</summary>
/// <remarks>
/// Exact at nominal values; a draw moves them by influence coefficients (central differences of the exact result over
/// thickness, inside radius and allowance), which are linear to far below a tenth of a millimetre within any stock's tolerance.
/// </remarks>
internal sealed class MetalRows : IRowPart
{
    private static readonly int Numbers = 4;
    private readonly IReadOnlyList<MadePart> _parts;
    private readonly int[][] _variables;
    private readonly double[] _nominal;
    private readonly int _first;
    private double[,]? _slopes;

    public MetalRows(IReadOnlyList<MadePart> parts, Variables variables, Outputs outputs)
    {
        _parts = parts;
        _first = outputs.Add(Numbers * parts.Count);
        _nominal = [.. parts.SelectMany(p => Figures(p.Blank))];
        _variables =
        [
            .. parts.Select(p =>
                (int[])
                    [
                        p.Sheet.Thickness is { } t
                            ? variables.Of(t)
                            : variables.Exact($"sheet.{p.Sheet.Name}.thickness", p.Result.Spec.Sheet.ThicknessM),
                        p.Sheet.Radius is { } r
                            ? variables.Of(r)
                            : variables.Between(
                                $"sheet.{p.Sheet.Name}.radius",
                                p.Result.Spec.Sheet.InsideRadiusM,
                                0.3 * p.Result.Spec.Sheet.InsideRadiusM
                            ),
                        variables.Factor("metal.allowance", 0.05),
                        variables.Factor("metal.density", 0.01),
                    ]
            ),
        ];
    }

    /// <summary>The parts.</summary>
    public IReadOnlyList<MadePart> Parts => _parts;

    /// <summary>Place of the width of a part's blank, mm; height, area (mm²) and mass (kg) follow.</summary>
    public int Place(int part) => _first + (part * Numbers);

    /// <summary>Makes the influence coefficients; rows before that are nominal.</summary>
    public void PrepareDraws() => _slopes ??= Slopes();

    /// <inheritdoc/>
    public double Row(ReadOnlySpan<double> x, Span<double> y)
    {
        for (var i = 0; i < _parts.Count; i++)
        {
            for (var n = 0; n < Numbers; n++)
            {
                var value = _nominal[(i * Numbers) + n];
                if (_slopes is not null)
                {
                    var spec = _parts[i].Result.Spec.Sheet;
                    value += _slopes[(i * Numbers) + n, 0] * (x[_variables[i][0]] - spec.ThicknessM);
                    value += _slopes[(i * Numbers) + n, 1] * (x[_variables[i][1]] - spec.InsideRadiusM);
                    value += _slopes[(i * Numbers) + n, 2] * (x[_variables[i][2]] - 1);
                    value *= n == 3 ? x[_variables[i][3]] : 1;
                }

                y[Place(i) + n] = value;
            }
        }

        return 0;
    }

    private double[,] Slopes()
    {
        var slopes = new double[_parts.Count * Numbers, 3];
        for (var i = 0; i < _parts.Count; i++)
        {
            var sheet = _parts[i].Result.Spec.Sheet;
            var (dt, dr, da) = (0.02 * sheet.ThicknessM, 0.05 * Math.Max(sheet.InsideRadiusM, 1e-4), 0.01);
            Difference(i, 0, dt, s => (sheet with { ThicknessM = sheet.ThicknessM + s }, MetalFactors.Nominal));
            Difference(i, 1, dr, s => (sheet with { InsideRadiusM = sheet.InsideRadiusM + s }, MetalFactors.Nominal));
            Difference(i, 2, da, s => (sheet, MetalFactors.Nominal with { Allowance = 1 + s }));
        }

        return slopes;

        void Difference(int i, int k, double step, Func<double, (SheetSpec, MetalFactors)> at)
        {
            if (Figures(at(step)) is not { } above || Figures(at(-step)) is not { } below)
            {
                return;
            }

            for (var n = 0; n < Numbers; n++)
            {
                slopes[(i * Numbers) + n, k] = (above[n] - below[n]) / (2 * step);
            }

            double[]? Figures((SheetSpec Sheet, MetalFactors Factors) of) =>
                _parts[i].Again(of.Sheet, of.Factors).Blank is { } blank ? MetalRows.Figures(blank) : null;
        }
    }

    private static double[] Figures(Blank blank) =>
        [blank.WidthM * 1000, blank.HeightM * 1000, blank.AreaM2 * 1e6, blank.MassKg];
}
