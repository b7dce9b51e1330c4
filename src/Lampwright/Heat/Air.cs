namespace Lampwright.Heat;

/// <summary>Dry air at a temperature and pressure, cheap enough for every draw.</summary>
/// <remarks>
/// <para>Viscosity, conductivity and specific heat are Chebyshev polynomials through <see cref="AirFormulas"/> at 101.325 kPa,
/// laid once when the type is first used; they do not depend on pressure here. Density is the ideal gas's.</para>
/// Validity: 200 to 600 K (held at the ends outside), 50 to 110 kPa.
/// Source: Lemmon and Jacobsen 2004; Lemmon et al. 2000; see <see cref="AirFormulas"/>.
/// Accuracy: within 1e-4 of the published formulas from 200 to 600 K.
/// Checked by: printed (Incropera table A.4, Cengel table A-15), invariant (the difference to the formulas).
/// </remarks>
public readonly record struct Air
{
    private const int Terms = 8;
    private const double LeastK = 200;
    private const double MostK = 600;
    private const double GasConstant = 287.055;

    private static readonly double[] ViscosityTerms = Fit(t =>
        AirFormulas.ViscosityPaS(t, AirFormulas.MolarDensity(t, 101325))
    );
    private static readonly double[] ConductivityTerms = Fit(t =>
        AirFormulas.ConductivityWPerMK(t, AirFormulas.MolarDensity(t, 101325))
    );
    private static readonly double[] SpecificHeatTerms = Fit(AirFormulas.SpecificHeatJPerKgK);

    private Air(double temperatureK, double density, double viscosity, double conductivity, double specificHeat)
    {
        TemperatureK = temperatureK;
        Density = density;
        Viscosity = viscosity;
        Conductivity = conductivity;
        SpecificHeat = specificHeat;
    }

    /// <summary>Temperature, K.</summary>
    public double TemperatureK { get; }

    /// <summary>Density, kg/m³.</summary>
    public double Density { get; }

    /// <summary>Dynamic viscosity, Pa·s.</summary>
    public double Viscosity { get; }

    /// <summary>Thermal conductivity, W/(m·K).</summary>
    public double Conductivity { get; }

    /// <summary>Specific heat at constant pressure, J/(kg·K).</summary>
    public double SpecificHeat { get; }

    /// <summary>Kinematic viscosity, m²/s.</summary>
    public double KinematicViscosity => Viscosity / Density;

    /// <summary>Thermal diffusivity, m²/s.</summary>
    public double Diffusivity => Conductivity / (Density * SpecificHeat);

    /// <summary>Prandtl number.</summary>
    public double Prandtl => Viscosity * SpecificHeat / Conductivity;

    /// <summary>Coefficient of volume expansion of the ideal gas, 1/K.</summary>
    public double Expansion => 1 / TemperatureK;

    /// <summary>Air at a temperature and pressure.</summary>
    /// <param name="temperatureK">Temperature, K, above 0.</param>
    /// <param name="pressurePa">Pressure, Pa, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Either is not above zero, or not a number.</exception>
    public static Air At(double temperatureK, double pressurePa)
    {
        Guard.Positive(temperatureK);
        Guard.Positive(pressurePa);
        var held = Math.Clamp(temperatureK, LeastK, MostK);
        var x = (2 * held - (LeastK + MostK)) / (MostK - LeastK);
        return new Air(
            temperatureK,
            pressurePa / (GasConstant * temperatureK),
            Clenshaw(ViscosityTerms, x),
            Clenshaw(ConductivityTerms, x),
            Clenshaw(SpecificHeatTerms, x)
        );
    }

    /// <summary>Rayleigh number gβΔT·l³/(να), 0 or above.</summary>
    /// <param name="riseK">Temperature of the wall over the air's, K; its magnitude counts.</param>
    /// <param name="lengthM">Characteristic length, m.</param>
    public double Rayleigh(double riseK, double lengthM) =>
        Physics.Gravity
        * Expansion
        * Math.Abs(riseK)
        * lengthM
        * lengthM
        * lengthM
        / (KinematicViscosity * Diffusivity);

    private static double[] Fit(Func<double, double> formula)
    {
        var terms = new double[Terms];
        for (var k = 0; k < Terms; k++)
        {
            for (var j = 0; j < Terms; j++)
            {
                var angle = Math.PI * (j + 0.5) / Terms;
                var t = 0.5 * ((LeastK + MostK) + Math.Cos(angle) * (MostK - LeastK));
                terms[k] += formula(t) * Math.Cos(k * angle) * (k == 0 ? 1.0 : 2.0) / Terms;
            }
        }

        return terms;
    }

    private static double Clenshaw(double[] terms, double x)
    {
        double b1 = 0,
            b2 = 0;
        for (var k = Terms - 1; k >= 1; k--)
        {
            (b1, b2) = (2 * x * b1 - b2 + terms[k], b1);
        }

        return x * b1 - b2 + terms[0];
    }
}
