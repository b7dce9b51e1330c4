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
    private Sensitivity[]? _slopes;

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
                        variables.Factor(MetalMethods.MethodErrors(p.Result.Spec.Sheet)[0]),
                        variables.Factor(MetalMethods.Density),
                    ]
            ),
        ];
    }

    /// <summary>The parts.</summary>
    public IReadOnlyList<MadePart> Parts => _parts;

    /// <summary>Place of the width of a part's blank, mm; height, area (mm²) and mass (kg) follow.</summary>
    public int Place(int part) => _first + (part * Numbers);

    /// <summary>Makes the influence coefficients; rows before that are nominal.</summary>
    public void PrepareDraws() =>
        _slopes ??= [
            .. _parts.SelectMany(p =>
                PartSensitivities.Of(p.Result.Spec) is { } s
                    ? new[] { In(s.Width, 1000), In(s.Height, 1000), In(s.Area, 1e6), s.Mass }
                    : new Sensitivity[Numbers]
            ),
        ];

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
                    value += _slopes[(i * Numbers) + n]
                        .Change(
                            x[_variables[i][0]] - spec.ThicknessM,
                            x[_variables[i][1]] - spec.InsideRadiusM,
                            x[_variables[i][2]] - 1
                        );
                    value *= n == 3 ? x[_variables[i][3]] : 1;
                }

                y[Place(i) + n] = value;
            }
        }

        return 0;
    }

    private static Sensitivity In(Sensitivity s, double factor) =>
        new(s.PerThickness * factor, s.PerRadius * factor, s.PerAllowance * factor);

    private static double[] Figures(Blank blank) =>
        [blank.WidthM * 1000, blank.HeightM * 1000, blank.AreaM2 * 1e6, blank.MassKg];
}
