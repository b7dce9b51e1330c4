using Lampwright.Design;
using Lampwright.Evaluation.Draws;
using Lampwright.Heat;

namespace Lampwright.Evaluation.Coupling;

/// <summary>A sink's trials in the shop, as a curve of rise over heat for each state of the fan.</summary>
/// <remarks>
/// With the fan the mean resistance. Without it one trial goes on with heat to the power 0.8, as natural convection does; from several the power is
/// found by least squares in the logarithms and kept between 0.6 and 1.
/// </remarks>
internal sealed class TrialDraws
{
    private readonly List<(int Power, int Rise)> _running = [];
    private readonly List<(int Power, int Rise)> _still = [];

    public TrialDraws(Sink? sink, bool hasFan, Variables variables)
    {
        foreach (var trial in sink?.Trials ?? [])
        {
            // Without a fan in the light every trial is one in still air.
            (trial.FanStopped || !hasFan ? _still : _running).Add(
                (variables.Of(trial.Power), variables.Of(trial.Rise))
            );
        }
    }

    /// <summary>True where any trial was made.</summary>
    public bool Any => _running.Count + _still.Count > 0;

    /// <summary>True where a trial covers the state of the fan.</summary>
    public bool Covers(bool fanRuns) => (fanRuns ? _running : _still).Count > 0;

    /// <summary>Mean resistance with the fan in one draw, K/W; 0 where it was not tried.</summary>
    public double RunningKPerW(ReadOnlySpan<double> x)
    {
        var sum = 0.0;
        foreach (var (power, rise) in _running)
        {
            sum += x[rise] / x[power];
        }

        return _running.Count == 0 ? 0 : sum / _running.Count;
    }

    /// <summary>Rise over heat for a state that was tried, in one draw.</summary>
    public SinkCurve Curve(ReadOnlySpan<double> x, bool fanRuns)
    {
        if (fanRuns)
        {
            return SinkCurve.Power(RunningKPerW(x), 1);
        }

        double meanP = 0,
            meanR = 0,
            spread = 0,
            common = 0;
        foreach (var (power, rise) in _still)
        {
            meanP += Math.Log(x[power]) / _still.Count;
            meanR += Math.Log(x[rise]) / _still.Count;
        }

        foreach (var (power, rise) in _still)
        {
            var p = Math.Log(x[power]) - meanP;
            spread += p * p;
            common += p * (Math.Log(x[rise]) - meanR);
        }

        var exponent = spread > 0.01 ? Math.Clamp(common / spread, 0.6, 1) : 0.8;
        return SinkCurve.Power(Math.Exp(meanR - (exponent * meanP)), exponent);
    }
}
