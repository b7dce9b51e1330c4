namespace Lampwright.Heat;

/// <summary>Temperatures of the housing from the heat that its parts take up.</summary>
/// <remarks>
/// <para>Front: absorbed light leaves through the outer panels. Compartment: driver and chain warm its air, which gives heat to the
/// panels over an inside film and to air that the fan sends through.</para>
/// Validity: sheet metal even in temperature over each group of panels; no heat between front, compartment and sink but by air.
/// Source: films of <see cref="Panel"/>; inside h = 1.42·(ΔT/L)^¼ (Holman, simplified; memory).
/// Accuracy: 15 % outside, 30 % inside. Checked by: invariant (heat in is heat out), printed (the films).
/// </remarks>
public static class BoxModel
{
    private static readonly double MostRiseK = 3000;

    // A nanowatt warms nothing that anybody could measure.
    private static readonly double LeastW = 1e-9;

    /// <summary>Rises over heat for one draw in one scene: about 5 µs, some 700 bytes.</summary>
    /// <param name="draw">The housing as drawn.</param>
    /// <param name="ambientK">Room, K, 200 to 400.</param>
    /// <param name="ventFlowM3PerS">Air that the fan sends through the compartment, m³/s of room air, 0 or above.</param>
    public static BoxCurve Curve(BoxSpec draw, double ambientK, double ventFlowM3PerS)
    {
        var sides = Sides(draw, ambientK, ventFlowM3PerS);
        var rises = RiseCurve.NodeRisesK;
        Span<double> front = stackalloc double[rises.Length],
            diffuser = stackalloc double[rises.Length],
            total = stackalloc double[rises.Length],
            airRises = stackalloc double[rises.Length],
            driver = stackalloc double[rises.Length];
        for (var i = 0; i < rises.Length; i++)
        {
            front[i] = sides.OutW(draw.Front, rises[i]);
            diffuser[i] = draw.Diffuser is { } face ? sides.OutW(face, rises[i]) : front[i];
            var panels = sides.OutW(draw.Compartment, rises[i]);
            airRises[i] = rises[i] + sides.InsideDropK(panels);
            total[i] = panels + sides.VentWPerK * airRises[i];
            driver[i] = sides.CaseW(rises[i]);
        }

        return new BoxCurve(
            new RiseCurve(front, rises),
            new RiseCurve(diffuser, rises),
            draw.Diffuser is not null,
            new RiseCurve(total, airRises),
            new RiseCurve(total, rises),
            sides.CaseIsKnown ? new RiseCurve(driver, rises) : null,
            sides.VentWPerK
        );
    }

    /// <summary>The housing at one set of heats, solved exactly. For nominal values.</summary>
    /// <param name="spec">The housing.</param>
    /// <param name="ambientK">Room, K, 200 to 400.</param>
    /// <param name="ventFlowM3PerS">Air that the fan sends through the compartment, m³/s of room air, 0 or above.</param>
    /// <param name="heat">What warms it.</param>
    /// <returns>The result, or null where no temperature up to 3000 K of rise carries the heat away (HEA011).</returns>
    public static BoxResult? At(BoxSpec spec, double ambientK, double ventFlowM3PerS, BoxHeat heat)
    {
        var sides = Sides(spec, ambientK, ventFlowM3PerS);
        var frontW = heat.ReflectorW + (spec.Diffuser is null ? heat.DiffuserW : 0);
        var front = Rise(new PanelsBalance(sides, spec.Front, null, frontW), frontW);
        var diffuser = spec.Diffuser is { } face
            ? Rise(new PanelsBalance(sides, [], face, heat.DiffuserW), heat.DiffuserW)
            : front;
        var inW = heat.DriverW + heat.ChainW + sides.VentWPerK * heat.InletRiseK;
        var skin = Rise(new CompartmentBalance(sides, spec.Compartment, inW), inW);
        if (front is not { } f || diffuser is not { } d || skin is not { } s)
        {
            return null;
        }

        var panels = sides.OutW(spec.Compartment, s);
        var air = s + sides.InsideDropK(panels);
        var vent = sides.VentWPerK * (air - heat.InletRiseK);
        var outer = panels + sides.OutW(spec.Front, f) + (spec.Diffuser is { } lens ? sides.OutW(lens, d) : 0);
        var all = heat.ReflectorW + heat.DiffuserW + heat.DriverW + heat.ChainW;
        return new BoxResult(
            f,
            d,
            air,
            s,
            air + sides.CaseDropK(heat.DriverW),
            outer,
            vent,
            all > LeastW ? (all - outer - vent) / all : 0
        );
    }

    private static BoxSides Sides(BoxSpec spec, double ambientK, double ventFlowM3PerS)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.InRange(ambientK, 200, 400);
        Guard.InRange(ventFlowM3PerS, 0, 100);
        return new BoxSides(spec, ambientK, ventFlowM3PerS);
    }

    private static double? Rise<T>(T balance, double heatW)
        where T : struct, IScalarFunction
    {
        if (heatW < LeastW)
        {
            return 0;
        }

        var found = Root.Between(ref balance, 0, MostRiseK, 0);
        return found.Converged && Math.Abs(found.Residual) <= 1e-7 * heatW ? found.X : null;
    }

    private readonly struct PanelsBalance(BoxSides sides, IReadOnlyList<Panel> panels, Panel? one, double heatW)
        : IScalarFunction
    {
        /// <inheritdoc/>
        public double At(double x) => sides.OutW(panels, x) + (one is null ? 0 : sides.OutW(one, x)) - heatW;
    }

    private readonly struct CompartmentBalance(BoxSides sides, IReadOnlyList<Panel> panels, double heatW)
        : IScalarFunction
    {
        /// <inheritdoc/>
        public double At(double x)
        {
            var out_ = sides.OutW(panels, x);
            return out_ + sides.VentWPerK * (x + sides.InsideDropK(out_)) - heatW;
        }
    }
}
