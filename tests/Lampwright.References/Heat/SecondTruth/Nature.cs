namespace Lampwright.References.Heat.SecondTruth;

/// <summary>Chance, as reality uses it.</summary>
internal sealed class Nature(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>Equally likely between two limits.</summary>
    public double Between(double low, double high) => low + (high - low) * _random.NextDouble();

    /// <summary>Normal about 0 with a deviation of 1.</summary>
    public double Normal() =>
        Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());

    /// <summary>A factor about 1, log-normal.</summary>
    public double Factor(double deviation) => Math.Exp(deviation * Normal());

    /// <summary>What a value stated with a spread really is: nine in ten makers' spreads hold (JCGM 100:2008, 4.3.5 reads a limit so).</summary>
    public double True(double stated, double spread) => stated + spread / 1.645 * Normal();

    /// <summary>Whole number from one to another, both counted.</summary>
    public int Whole(int low, int high) => _random.Next(low, high + 1);

    /// <summary>Whether something happens.</summary>
    public bool Happens(double share) => _random.NextDouble() < share;
}

/// <summary>Air by the kinetic theory's fits, at a temperature and pressure.</summary>
/// <remarks>
/// Sutherland's law for viscosity (1.716e-5 Pa·s at 273 K, 111 K) and for conductivity (0.0241 W/(m·K), 194 K) and the ideal gas:
/// White, Viscous Fluid Flow, table 1-2 and 1-3 (from memory). Heat capacity 1007 J/(kg·K).
/// </remarks>
internal readonly record struct Gas(double Kelvin, double Pascal)
{
    /// <summary>Heat capacity, J/(kg·K).</summary>
    public static double Cp => 1007;

    /// <summary>Density, kg/m³.</summary>
    public double Density => Pascal / (287.06 * Kelvin);

    /// <summary>Conductivity, W/(m·K).</summary>
    public double Conductivity => 0.0241 * Math.Pow(Kelvin / 273, 1.5) * (273 + 194) / (Kelvin + 194);

    /// <summary>Viscosity, Pa·s.</summary>
    public double Viscosity => 1.716e-5 * Math.Pow(Kelvin / 273, 1.5) * (273 + 111) / (Kelvin + 111);

    /// <summary>Viscosity over density, m²/s.</summary>
    public double Nu => Viscosity / Density;

    /// <summary>gβΔT/(να)·L³ of a rise over a room, gβ/ν² times Prandtl.</summary>
    public double Rayleigh(double riseK, double lengthM) =>
        9.81 / Kelvin * Math.Max(riseK, 0) * Math.Pow(lengthM, 3) / (Nu * Nu) * (Viscosity * Cp / Conductivity);
}
