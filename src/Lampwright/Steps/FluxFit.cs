namespace Lampwright.Steps;

/// <summary>Flux over current at the reference temperature.</summary>
/// <remarks>Constraint is empty, or the sentence that says what was held back and why.</remarks>
internal sealed record FluxFit(
    double FluxRefLm,
    double FluxRefA,
    FluxForm Form,
    double Shape,
    double HalfWidth,
    double ShapeHalfWidth,
    string HalfWidthSource,
    string Constraint
)
{
    /// <summary>Least half-width: makers state about ±7 % on a flux (memory).</summary>
    private static readonly double LeastHalfWidth = 0.07;

    private static readonly string FromPoints = "residuals of the fit, 1.645 s; at least the makers' 7 % (memory)";

    public static FluxFit From(EmitterPoint[] points, EmitterRated? rated)
    {
        var lit = points.Where(p => p.FluxLm is > 0).ToArray();
        var distinct = lit.Select(p => p.CurrentA).Distinct().Count();
        if (distinct >= 2)
        {
            return Fitted(lit, distinct);
        }

        var (flux, amps) =
            distinct == 1
                ? (lit.Average(p => p.FluxLm!.Value), lit[0].CurrentA)
                : (rated?.FluxLm ?? 0, rated?.CurrentA ?? points[^1].CurrentA);
        return new(
            flux > 0 && double.IsFinite(flux) ? flux : 0,
            amps,
            FluxForm.Saturating,
            EmitterDefaults.Droop,
            0.10,
            0.8,
            "one flux: makers' tolerance and a bend of common practice, no source",
            ""
        );
    }

    private static FluxFit Fitted(EmitterPoint[] lit, int distinct)
    {
        var reference = lit[^1].CurrentA;
        var saturating = Saturating(lit, reference);
        var power = Power(lit, reference);
        var best = power is not null && Rms(power, lit) < Rms(saturating, lit) - 1e-9 ? power : saturating;
        var s = Rms(best, lit) * Math.Sqrt((double)lit.Length / Math.Max(1, lit.Length - 2));
        var bend = distinct == 2 ? 0.3 : 0.15;
        return best with { HalfWidth = Math.Max(LeastHalfWidth, 1.645 * s), ShapeHalfWidth = bend };
    }

    // I/Φ = α + β·I is linear in the unknowns; weighting by Φ/I makes the residual a relative one.
    private static FluxFit Saturating(EmitterPoint[] lit, double reference)
    {
        double[] first = [.. lit.Select(p => p.FluxLm!.Value / p.CurrentA)];
        double[] second = [.. lit.Select(p => p.FluxLm!.Value)];
        double[] ones = [.. lit.Select(_ => 1.0)];
        var solved = LeastSquares.Solve([first, second], ones);
        if (solved is { } ab && ab[0] > 0 && ab[1] >= 0)
        {
            var shape = ab[1] * reference / ab[0];
            return new(
                reference / (ab[0] + (ab[1] * reference)),
                reference,
                FluxForm.Saturating,
                shape,
                0,
                0,
                FromPoints,
                ""
            );
        }

        if (solved is { } steep && steep[0] <= 0)
        {
            // So strong a bend that the saturating form has a pole: a level flux is the nearest thing it can say.
            var mean = lit.Average(p => p.FluxLm!.Value);
            var why = "The flux hardly rises or even falls with the current; the points should be looked at.";
            return new(mean, reference, FluxForm.Power, 0.05, 0, 0, FromPoints, why);
        }

        var efficacy = lit.Sum(p => p.FluxLm!.Value / p.CurrentA) / lit.Length;
        var straight = "The flux rises faster than the current, which emitters do not do; a straight line was taken.";
        return new(efficacy * reference, reference, FluxForm.Saturating, 0, 0, 0, FromPoints, straight);
    }

    private static FluxFit? Power(EmitterPoint[] lit, double reference)
    {
        double[] ones = [.. lit.Select(_ => 1.0)];
        double[] logs = [.. lit.Select(p => Math.Log(p.CurrentA / reference))];
        double[] flux = [.. lit.Select(p => Math.Log(p.FluxLm!.Value))];
        return LeastSquares.Solve([ones, logs], flux) is { } c && c[1] is > 0.05 and <= 1
            ? new(Math.Exp(c[0]), reference, FluxForm.Power, c[1], 0, 0, FromPoints, "")
            : null;
    }

    private static double Rms(FluxFit fit, EmitterPoint[] lit)
    {
        var sum = 0.0;
        foreach (var p in lit)
        {
            var x = p.CurrentA / fit.FluxRefA;
            var g = fit.Form == FluxForm.Power ? Math.Pow(x, fit.Shape) : x * (1 + fit.Shape) / (1 + (x * fit.Shape));
            var e = (fit.FluxRefLm * g / p.FluxLm!.Value) - 1;
            sum += e * e;
        }

        return Math.Sqrt(sum / lit.Length);
    }
}
