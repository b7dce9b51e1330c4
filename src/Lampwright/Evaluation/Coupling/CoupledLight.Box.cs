namespace Lampwright.Evaluation.Coupling;

/// <summary>What the box is told of the coupled light.</summary>
internal sealed partial class CoupledLight
{
    /// <summary>What the network of the box is told of one switch position at nominal values.</summary>
    /// <param name="x">Nominal value of each variable.</param>
    /// <param name="row">The nominal row.</param>
    /// <param name="scene">Scene whose currents and heats hold.</param>
    /// <param name="fanRuns">Whether the fan runs, which may differ from the scene's.</param>
    /// <param name="position">Switch position.</param>
    public CoupledHeat HeatAt(ReadOnlySpan<double> x, ReadOnlySpan<double> row, int scene, bool fanRuns, int position)
    {
        var at = row[Place(scene, position)..];
        var spec = _cooling.Spec(x, _cooling.Factors(x));
        var ambient = Math.Clamp(row[ScenePlace(scene, SceneRow.AmbientC)] + ZeroC, 200, 400);
        var emitter = new EmitterAtCurrent(_emitter.At(x), at[PositionRow.CurrentA]);
        var radiation = _cooling.RadiationLmPerW(x);
        var back = radiation / Math.Max(1 - (_optics?.At(x).AbsorbedBase ?? 0), 0.05);
        var hot = at[PositionRow.JunctionC] + ZeroC;
        double Heat(double t) => (emitter.CurrentA * emitter.VoltageV(t)) - (emitter.FluxLm(t) / back);
        var chain = 0.0;
        for (var k = 0; k < _chain.Resistors; k++)
        {
            chain += at[PositionRow.FirstResistorW + k];
        }

        // Forty kelvin is how far a stopped fan moves a junction before something must act.
        var slope = (Heat(hot + 40) - Heat(hot)) / 40;
        var radiant = at[PositionRow.FluxLm] / radiation;
        return new CoupledHeat(
            _cooling.Curve(x, spec, ambient, fanRuns),
            spec,
            ambient,
            at[PositionRow.HeatW],
            slope,
            hot,
            at[PositionRow.CaseC] + ZeroC,
            at[PositionRow.SinkC] + ZeroC,
            at[PositionRow.DriverLossW],
            chain,
            radiant * row[CommonPlace(CommonRow.ReflectorAbsorbs)],
            radiant * row[CommonPlace(CommonRow.DiffuserAbsorbs)],
            at[PositionRow.FluxLm],
            emitter
        );
    }
}
