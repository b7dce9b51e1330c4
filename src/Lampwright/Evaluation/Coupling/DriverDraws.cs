using Lampwright.Design;
using Lampwright.Evaluation.Draws;
using Lampwright.Quantities;
using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>The driver of a draw.</summary>
internal sealed class DriverDraws
{
    private readonly DriverModel _model;
    private readonly int _threshold;
    private readonly int _law;
    private readonly int _loss;
    private readonly List<(int Place, double Nominal)> _scales = [];
    private readonly int _efficiency;

    public DriverDraws(DriverModel model, SenseThreshold threshold, Driver driver, Variables variables)
    {
        _model = model;
        var errors = DriverModel.MethodErrors(threshold);
        (_threshold, _law, _loss) = (
            variables.Factor(errors[0]),
            variables.Factor(errors[1]),
            variables.Factor(errors[2])
        );
        _efficiency = variables.Of(driver.Efficiency);
        Scale(driver.Sense?.Resistance, variables);
        Scale(driver.Sense?.MeasuredAt ?? driver.Rated, variables);
    }

    /// <summary>The driver of one draw.</summary>
    public DriverModel At(ReadOnlySpan<double> x)
    {
        var threshold = x[_threshold];
        foreach (var (place, nominal) in _scales)
        {
            threshold *= x[place] / nominal;
        }

        return (_model with { Efficiency = Math.Clamp(x[_efficiency], 0.05, 1) }).With(threshold, x[_law], x[_loss]);
    }

    private void Scale(Value? value, Variables variables)
    {
        if (value is { HalfWidth: > 0, Nominal: not 0 } v)
        {
            _scales.Add((variables.Of(v), v.Nominal));
        }
    }
}
