using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Evaluation.Dimming;

/// <summary>The numbers of all ways of dimming in a draw, with the emitter, driver and junction that the light has in that draw.</summary>
/// <remarks>A number that a way does not reach is NaN; its band is taken over the draws that have one.</remarks>
internal sealed class WaysRows : IRowPart
{
    private static readonly double ZeroC = 273.15;

    private readonly DimmingInputs _inputs;
    private readonly CoupledLight? _light;
    private readonly EmitterDraws _emitter;
    private readonly DriverDraws _driver;
    private readonly DriverModel _model;
    private readonly int _first;
    private readonly int _limit = -1;
    private readonly int _assumed = -1;
    private readonly int _capacitor = -1;
    private WayNumbers? _numbers;
    private int _junction = -1;

    /// <param name="inputs">What the comparison is made of.</param>
    /// <param name="light">The coupled light of the same design, null where there is none.</param>
    /// <param name="variables">Takes the variables; those of the coupled light are shared by name.</param>
    /// <param name="outputs">Hands out places.</param>
    public WaysRows(DimmingInputs inputs, CoupledLight? light, Variables variables, Outputs outputs)
    {
        (_inputs, _light) = (inputs, light);

        // Nothing tells the threshold of an unread board; its current is the rated one all the same.
        _model =
            DriverModel.From(inputs.Driver, inputs.Threshold)
            ?? new DriverModel(inputs.Driver.RatedA, 1, 0, inputs.Driver.Efficiency);
        _emitter = new(inputs.Fit, inputs.Parts, variables);
        _driver = new(_model, inputs.Threshold, inputs.Parts.Driver!, variables);

        // Where the driver's protection acts: as told with its spread, else anywhere in what is assumed of it (0 to 1).
        if (inputs.Parts.Driver!.OverVoltage is { } over)
        {
            _limit = variables.Of(over);
        }
        else
        {
            _assumed = variables.Between("steps.assumed_limit", 0.5, 0.5);
        }

        _capacitor = inputs.Parts.Driver!.OutputCapacitor is { } capacitor ? variables.Of(capacitor) : -1;
        _first = outputs.Add(WayRow.Count * WayNumbers.Count);
    }

    /// <summary>What the comparison is made of.</summary>
    public DimmingInputs Inputs => _inputs;

    /// <summary>What it says at nominal values; null before <see cref="Judge"/>.</summary>
    public WaysResult? Result { get; private set; }

    /// <summary>Place of a number of a way.</summary>
    public int Place(WayKind kind, int number) => _first + ((int)kind * WayRow.Count) + number;

    /// <summary>Judges all ways at nominal values, by the junctions that the light came to rest at.</summary>
    /// <param name="nominal">The nominal row, the coupled light's places filled.</param>
    /// <param name="isSettled">Whether the light came to rest; the usual temperatures stand in where it did not.</param>
    public WaysResult Judge(double[] nominal, bool isSettled)
    {
        var spec = _inputs.Spec;
        if (isSettled && _light is { HasSink: true } light)
        {
            double Junction(int scene) => nominal[light.Place(scene, light.Brightest) + PositionRow.JunctionC] + ZeroC;
            _junction = light.Place(Scene.Normal, light.Brightest) + PositionRow.JunctionC;
            spec = spec with
            {
                WarmJunctionK = Junction(Scene.Normal),
                HotJunctionK = Math.Max(Junction(Scene.Normal), Junction(Scene.AtHighestAmbient)),
            };
        }

        _numbers = new(spec);
        Result = WaysComparison.Of(spec);
        return Result;
    }

    /// <inheritdoc/>
    public double Row(ReadOnlySpan<double> x, Span<double> y)
    {
        if (_numbers is not { } numbers)
        {
            return 0;
        }

        var driver = _driver.At(x);
        var draw = numbers.Nominal with
        {
            Model = _emitter.At(x),
            JunctionK = _junction >= 0 ? Math.Clamp(y[_junction] + ZeroC, 200, 650) : numbers.Nominal.JunctionK,
            SetA = numbers.Nominal.SetA * (driver.CurrentA(_model.ReferenceOhm) / _model.CurrentA(_model.ReferenceOhm)),
            Efficiency = driver.Efficiency,
            LimitV = LimitV(x, numbers),
            OutputF =
                _capacitor >= 0 ? Math.Max(x[_capacitor], 0.05 * numbers.Nominal.OutputF) : numbers.Nominal.OutputF,
        };
        Span<WayNumber> all = stackalloc WayNumber[WayNumbers.Count];
        numbers.Of(draw, all);
        for (var i = 0; i < all.Length; i++)
        {
            var (from, way) = (_first + (i * WayRow.Count), all[i]);
            y[from + WayRow.LeastShare] = way.LightShare?.Least ?? double.NaN;
            y[from + WayRow.MostShare] = way.LightShare?.Most ?? double.NaN;
            y[from + WayRow.EfficiencyAtHalf] = way.EfficiencyAtHalf ?? double.NaN;
            y[from + WayRow.HeatAtHalfW] = way.HeatAtHalfW ?? double.NaN;
            y[from + WayRow.AddedHeatAtHalfW] = way.AddedHeatAtHalfW ?? double.NaN;
            y[from + WayRow.LeastA] = way.CurrentA?.Least ?? double.NaN;
            y[from + WayRow.MostA] = way.CurrentA?.Most ?? double.NaN;
        }

        return 0;
    }

    private double LimitV(ReadOnlySpan<double> x, WayNumbers numbers) =>
        _assumed >= 0 && numbers.AssumedLimitV is { } range ? range.Least + (x[_assumed] * (range.Most - range.Least))
        : _limit >= 0 && numbers.AssumedLimitV is null ? Math.Max(x[_limit], 1e-3)
        : numbers.Nominal.LimitV;
}
