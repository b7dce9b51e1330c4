namespace Lampwright.References.Heat.SecondTruth;

/// <summary>Where a rising curve crosses zero.</summary>
internal static class Crossing
{
    /// <summary>By the chord whose tired end is halved (Illinois); above 0 at high, below at low.</summary>
    public static double Of(Func<double, double> rising, double low, double high, double share = 1e-5)
    {
        double a = rising(low),
            b = rising(high);
        if (a >= 0 || b <= 0)
        {
            return a >= 0 ? low : high;
        }

        var side = 0;
        for (var i = 0; i < 60 && high - low > share * high; i++)
        {
            var x = (low * b - high * a) / (b - a);
            var y = rising(x);
            if (Math.Abs(y) < 1e-9)
            {
                return x;
            }

            if (y > 0)
            {
                (high, b) = (x, y);
                a = side == 1 ? a / 2 : a;
                side = 1;
            }
            else
            {
                (low, a) = (x, y);
                b = side == -1 ? b / 2 : b;
                side = -1;
            }
        }

        return (low * b - high * a) / (b - a);
    }
}
