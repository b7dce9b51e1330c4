namespace Lampwright.Heat;

/// <summary>A function of one number whose zero is wanted; a struct, so that the inner loops allocate nothing.</summary>
internal interface IScalarFunction
{
    /// <summary>Value of the function.</summary>
    double At(double x);
}

/// <summary>Where a search for a zero ended.</summary>
/// <param name="X">The zero.</param>
/// <param name="Residual">Value of the function there.</param>
/// <param name="Iterations">Evaluations used inside the bracket.</param>
/// <param name="Converged">False when the ends have the same sign or the evaluations ran out.</param>
internal readonly record struct RootReport(double X, double Residual, int Iterations, bool Converged);

/// <summary>Zero of a function inside a bracket: inverse quadratic steps where they are safe, halving where not.</summary>
/// <remarks>Source: Chandrupatla 1997, Advances in Engineering Software 28:145-149. It never leaves the bracket.</remarks>
internal static class Root
{
    private const int MostIterations = 200;

    /// <summary>Zero of the function between two ends of opposite sign.</summary>
    /// <param name="f">The function; by reference, since a read-only one would be copied at every call.</param>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <param name="tolerance">Absolute width of the bracket at which to stop; 0 goes on to the last bits of the zero.</param>
    internal static RootReport Between<T>(ref T f, double from, double to, double tolerance)
        where T : struct, IScalarFunction
    {
        double a = to,
            b = from,
            fa = f.At(a),
            fb = f.At(b);
        if (fa == 0 || fb == 0)
        {
            return new RootReport(fa == 0 ? a : b, 0, 0, true);
        }

        if (!(fa * fb < 0))
        {
            var nearer = Math.Abs(fa) < Math.Abs(fb) ? (a, fa) : (b, fb);
            return new RootReport(nearer.Item1, nearer.Item2, 0, false);
        }

        double c = a,
            fc = fa,
            step = 0.5;
        for (var i = 1; i <= MostIterations; i++)
        {
            var x = a + step * (b - a);
            var fx = f.At(x);
            if (fx < 0 == fa < 0)
            {
                (c, fc) = (a, fa);
            }
            else
            {
                (c, fc, b, fb) = (b, fb, a, fa);
            }

            (a, fa) = (x, fx);
            var (best, fBest) = Math.Abs(fa) < Math.Abs(fb) ? (a, fa) : (b, fb);
            var width = Math.Abs(b - a);
            var least = (tolerance + 4e-16 * Math.Abs(best)) / width;
            if (least > 0.5 || fBest == 0)
            {
                return new RootReport(best, fBest, i, true);
            }

            step = Math.Clamp(NextStep(a, fa, b, fb, c, fc), least, 1 - least);
        }

        return new RootReport(a, fa, MostIterations, false);
    }

    private static double NextStep(double a, double fa, double b, double fb, double c, double fc)
    {
        double xi = (a - b) / (c - b),
            phi = (fa - fb) / (fc - fb);
        if (phi * phi >= xi || (1 - phi) * (1 - phi) >= 1 - xi)
        {
            return 0.5;
        }

        return fa / (fb - fa) * (fc / (fb - fc)) + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb));
    }
}
