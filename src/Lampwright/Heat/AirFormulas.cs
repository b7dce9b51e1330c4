namespace Lampwright.Heat;

/// <summary>The published formulas of dry air's transport properties: the yardstick that <see cref="Air"/> is held against.</summary>
/// <remarks>
/// Validity: viscosity and conductivity 60 to 2000 K and to 70 MPa; specific heat of the ideal gas.
/// Source: Lemmon and Jacobsen 2004, Int. J. Thermophys. 25:21-69; Lemmon et al. 2000 (specific heat).
/// Accuracy: 1 % in viscosity, 2 % in conductivity (the authors').
/// Checked by: printed (the check table of the 2004 paper). Too slow for the draws, which use <see cref="Air"/>.
/// </remarks>
public static class AirFormulas
{
    private static readonly double[] Collision = [0.431, -0.4623, 0.08406, 0.005341, -0.00331];

    private static readonly (double N, double T, int D, int L)[] Viscosity =
    [
        (10.72, 0.2, 1, 0),
        (1.122, 0.05, 4, 0),
        (0.002019, 2.4, 9, 0),
        (-8.876, 0.6, 1, 1),
        (-0.02916, 3.6, 8, 1),
    ];

    private static readonly (double N, double T, int D, int L)[] Conductivity =
    [
        (8.743, 0.1, 1, 0),
        (14.76, 0, 2, 0),
        (-16.62, 0.5, 3, 2),
        (3.793, 2.7, 7, 2),
        (-6.142, 0.3, 7, 2),
        (-0.3778, 1.3, 11, 2),
    ];

    /// <summary>Dynamic viscosity, Pa·s.</summary>
    /// <param name="temperatureK">Temperature, K, 60 to 2000.</param>
    /// <param name="molarDensity">Density, mol/dm³, 0 or above; 0 is the dilute gas.</param>
    public static double ViscosityPaS(double temperatureK, double molarDensity)
    {
        var residual = Residual(Viscosity, temperatureK, molarDensity);
        return (DiluteViscosity(temperatureK) + residual) * 1e-6;
    }

    /// <summary>Thermal conductivity, W/(m·K).</summary>
    /// <param name="temperatureK">Temperature, K, 60 to 2000.</param>
    /// <param name="molarDensity">Density, mol/dm³, 0 or above; 0 is the dilute gas.</param>
    public static double ConductivityWPerMK(double temperatureK, double molarDensity)
    {
        var tau = 132.6312 / temperatureK;
        var dilute = 1.308 * DiluteViscosity(temperatureK) + 1.405 * Math.Pow(tau, -1.1) - 1.036 * Math.Pow(tau, -0.3);
        return (dilute + Residual(Conductivity, temperatureK, molarDensity)) * 1e-3;
    }

    /// <summary>Specific heat of the ideal gas at constant pressure, J/(kg·K).</summary>
    /// <param name="temperatureK">Temperature, K, 60 to 2000.</param>
    public static double SpecificHeatJPerKgK(double temperatureK)
    {
        var t = Guard.InRange(temperatureK, 60, 2000);
        double u = 3364.011 / t,
            v = 2242.45 / t,
            w = 11580.4 / t;
        var c =
            3.490888032
            + 2.395525583e-6 * t
            + 7.172111248e-9 * t * t
            - 3.115413101e-13 * t * t * t
            + 0.223806688 * Math.Pow(t, -1.5)
            + 0.791309509 * u * u * Math.Exp(u) / Square(Math.Exp(u) - 1)
            + 0.212236768 * v * v * Math.Exp(v) / Square(Math.Exp(v) - 1)
            + 0.197938904 * (2.0 / 3) * w * w * Math.Exp(-w) / Square(2.0 / 3 + Math.Exp(-w));
        return 8.31451 / 0.0289586 * c;
    }

    /// <summary>Density of the ideal gas in the unit of the transport formulas, mol/dm³.</summary>
    /// <param name="temperatureK">Temperature, K.</param>
    /// <param name="pressurePa">Pressure, Pa.</param>
    public static double MolarDensity(double temperatureK, double pressurePa) =>
        Guard.Positive(pressurePa) / (8.31451 * Guard.Positive(temperatureK)) * 1e-3;

    private static double DiluteViscosity(double temperatureK)
    {
        var x = Math.Log(Guard.InRange(temperatureK, 60, 2000) / 103.3);
        var lnOmega = 0.0;
        for (var i = Collision.Length - 1; i >= 0; i--)
        {
            lnOmega = lnOmega * x + Collision[i];
        }

        return 0.0266958 * Math.Sqrt(28.9586 * temperatureK) / (0.360 * 0.360 * Math.Exp(lnOmega));
    }

    private static double Residual((double N, double T, int D, int L)[] terms, double temperatureK, double molarDensity)
    {
        double tau = 132.6312 / temperatureK,
            delta = molarDensity / 10.4477,
            sum = 0;
        foreach (var (n, t, d, l) in terms)
        {
            var damping = l == 0 ? 1 : Math.Exp(-Math.Pow(delta, l));
            sum += n * Math.Pow(tau, t) * Math.Pow(delta, d) * damping;
        }

        return sum;
    }

    private static double Square(double x) => x * x;
}
