namespace Lampwright.Steps.Ways;

/// <summary>Voltage and inductor current after a step, with the estimated error of each.</summary>
internal readonly record struct WayStepResult(double V, double I, double ErrorV, double ErrorI)
{
    public bool Finite => double.IsFinite(V) && double.IsFinite(I);
}

/// <summary>One linearly implicit step of third order.</summary>
/// <remarks>
/// Stiff parts (an emitter without a capacitor, a clamp) die out in one step however long it is (L-stable, stiffly accurate), so the step follows what
/// is to be seen and not the fastest time constant.
/// <b>Validity</b>: smooth within the step; events end a step.
/// <b>Source</b>: RODAS3: A. Sandu and others, Benchmarking stiff ODE solvers for atmospheric chemistry problems II: Rosenbrock solvers,
/// Atmos. Environ. 31 (1997), sec. 3 (memory; its order is checked in the tests).
/// <b>Accuracy</b>: third order, error by its embedded second order. <b>Checked by</b>: invariant (order on known solutions), solver.
/// </remarks>
internal readonly ref struct WayStep
{
    private readonly WayDynamics _d;
    private readonly double _t;
    private readonly double _v;
    private readonly double _i;
    private readonly double _jvv;
    private readonly double _ft;

    public WayStep(WayDynamics dynamics, double t, double v, double i)
    {
        (_d, _t, _v, _i) = (dynamics, t, v, i);
        RateV = dynamics.RateV(t, v, i);
        RateI = dynamics.RateI(v, i);
        _jvv = dynamics.SlopeV(t, v, i, RateV);
        _ft = dynamics.SlopeT(t, v);
    }

    /// <summary>dV/dt where the step starts.</summary>
    public double RateV { get; }

    /// <summary>di/dt where the step starts.</summary>
    public double RateI { get; }

    /// <summary>The longest step that may be tried, in seconds: what grows must be followed, else it is taken for something that dies out.</summary>
    public double LongestS
    {
        get
        {
            var growth = _jvv > 0 ? 0.5 / _jvv : double.PositiveInfinity;
            return _d.Ripples ? Math.Min(growth, _d.RipplePeriodS / 40) : growth;
        }
    }

    /// <summary>The state a time <paramref name="h"/> later.</summary>
    public WayStepResult After(double h)
    {
        // (1/(γh) − J)·k = right side, γ = 1/2.
        var (a11, a12) = ((2 / h) - _jvv, -_d.SlopeVi);
        var (a21, a22) = (-_d.SlopeIv, (2 / h) - _d.SlopeIi);
        var det = (a11 * a22) - (a12 * a21);

        (double V, double I) Solve(double v, double i) =>
            (((a22 * v) - (a12 * i)) / det, ((a11 * i) - (a21 * v)) / det);

        var k1 = Solve(RateV + (0.5 * h * _ft), RateI);
        var k2 = Solve(RateV + (4 / h * k1.V) + (1.5 * h * _ft), RateI + (4 / h * k1.I));
        var (v3, i3) = (_v + (2 * k1.V), _i + (2 * k1.I));
        var k3 = Solve(_d.RateV(_t + h, v3, i3) + ((k1.V - k2.V) / h), _d.RateI(v3, i3) + ((k1.I - k2.I) / h));
        var (v4, i4) = (v3 + k3.V, i3 + k3.I);
        var k4 = Solve(
            _d.RateV(_t + h, v4, i4) + ((k1.V - k2.V - (8.0 / 3 * k3.V)) / h),
            _d.RateI(v4, i4) + ((k1.I - k2.I - (8.0 / 3 * k3.I)) / h)
        );
        return new(v4 + k4.V, i4 + k4.I, Math.Abs(k4.V), Math.Abs(k4.I));
    }
}
