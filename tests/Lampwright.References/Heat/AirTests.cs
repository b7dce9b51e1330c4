using Lampwright.Heat;

namespace Lampwright.References.Heat;

public sealed class AirTests
{
    // Lemmon and Jacobsen 2004, check table. [published, second-hand]
    [Theory]
    [InlineData("H.AP-01a", 300, 0, 18.5230, 26.3529)]
    [InlineData("H.AP-02", 300, 5, 21.3241, 32.6062)]
    public void Transport_formulas_meet_their_paper(string id, double t, double density, double viscosity, double k)
    {
        var inputs = $"T {t} K, density {density} mol/dm3";
        Check.Relative(id, viscosity, AirFormulas.ViscosityPaS(t, density) * 1e6, 1e-5, inputs);
        Check.Relative(id, k, AirFormulas.ConductivityWPerMK(t, density) * 1e3, 1e-5, inputs);
    }

    // Air at 101.325 kPa by the same formulas, table of references/heat.md section 6. [derived]
    [Theory]
    [InlineData(250, 1.4119, 1003.3, 16.038, 11.359, 22.564, 15.929, 0.7131)]
    [InlineData(270, 1.3073, 1003.8, 17.060, 13.050, 24.119, 18.379, 0.7100)]
    [InlineData(273.15, 1.2923, 1003.9, 17.218, 13.324, 24.360, 18.777, 0.7096)]
    [InlineData(280, 1.2606, 1004.2, 17.560, 13.929, 24.883, 19.656, 0.7086)]
    [InlineData(288.15, 1.2250, 1004.5, 17.962, 14.663, 25.499, 20.723, 0.7076)]
    [InlineData(290, 1.2172, 1004.6, 18.052, 14.831, 25.638, 20.968, 0.7073)]
    [InlineData(293.15, 1.2041, 1004.7, 18.206, 15.120, 25.874, 21.388, 0.7069)]
    [InlineData(298.15, 1.1839, 1004.9, 18.448, 15.582, 26.247, 22.061, 0.7063)]
    [InlineData(300, 1.1766, 1005.0, 18.537, 15.755, 26.384, 22.312, 0.7061)]
    [InlineData(320, 1.1031, 1006.1, 19.488, 17.667, 27.854, 25.098, 0.7039)]
    [InlineData(330, 1.0696, 1006.8, 19.954, 18.655, 28.578, 26.537, 0.7030)]
    [InlineData(350, 1.0085, 1008.3, 20.867, 20.691, 30.003, 29.504, 0.7013)]
    [InlineData(360, 0.9805, 1009.2, 21.315, 21.739, 30.706, 31.030, 0.7006)]
    [InlineData(370, 0.9540, 1010.2, 21.758, 22.807, 31.402, 32.584, 0.7000)]
    [InlineData(390, 0.9051, 1012.4, 22.628, 25.001, 32.775, 35.770, 0.6989)]
    [InlineData(400, 0.8825, 1013.6, 23.055, 26.127, 33.453, 37.402, 0.6985)]
    public void Air_meets_the_table(
        double t,
        double rho,
        double cp,
        double mu,
        double nu,
        double k,
        double alpha,
        double pr
    )
    {
        var air = Air.At(t, 101325);
        var inputs = $"T {t} K, 101325 Pa";
        Check.Relative("air rho", rho, air.Density, 1e-3, inputs);
        Check.Relative("air cp", cp, air.SpecificHeat, 1e-3, inputs);
        Check.Relative("air mu", mu, air.Viscosity * 1e6, 1e-3, inputs);
        Check.Relative("air nu", nu, air.KinematicViscosity * 1e6, 1e-3, inputs);
        Check.Relative("air k", k, air.Conductivity * 1e3, 1e-3, inputs);
        Check.Relative("air alpha", alpha, air.Diffusivity * 1e6, 1e-3, inputs);
        Check.Relative("air Pr", pr, air.Prandtl, 1e-3, inputs);
    }

    // Incropera table A.4; densities for 100.0 kPa. [published, second-hand; 250 K and densities: memory]
    [Theory]
    [InlineData("H.AP-03a", 250, 11.44, 22.3, 0.720, 1.3947)]
    [InlineData("H.AP-03a", 300, 15.89, 26.3, 0.707, 1.1614)]
    [InlineData("H.AP-03a", 400, 26.41, 33.8, 0.690, 0.8711)]
    [InlineData("H.AP-03b", 350, 20.92, 30.0, 0.700, 0.9950)]
    public void Air_meets_Incropera(string id, double t, double nu, double k, double pr, double rho)
    {
        var air = Air.At(t, 101325);
        var inputs = $"T {t} K";
        Check.Relative(id, nu, air.KinematicViscosity * 1e6, 0.013, inputs);
        Check.Relative(id, k, air.Conductivity * 1e3, 0.013, inputs);
        Check.Relative(id, pr, air.Prandtl, 0.013, inputs);
        Check.Relative(id, rho, Air.At(t, 100000).Density, 0.013, inputs + ", 100 kPa");
    }

    // Cengel table A-15. [published, second-hand]
    [Theory]
    [InlineData(45, 0.02699, 0.7241, 1.750e-5)]
    [InlineData(55, 0.02772, 0.7215, 1.847e-5)]
    [InlineData(60, 0.02808, 0.7202, 1.896e-5)]
    [InlineData(80, 0.02953, 0.7154, 2.097e-5)]
    public void Air_meets_Cengel(double celsius, double k, double pr, double nu)
    {
        var air = Air.At(celsius + 273.15, 101325);
        var inputs = $"{celsius} degC";
        Check.Relative("H.AP-04", k, air.Conductivity, 0.03, inputs);
        Check.Relative("H.AP-04", pr, air.Prandtl, 0.03, inputs);
        Check.Relative("H.AP-04", nu, air.KinematicViscosity, 0.03, inputs);
    }

    // US Standard Atmosphere 1976. [05 published, second-hand; 06a derived]
    [Theory]
    [InlineData("H.AP-05", 0, 288.15, 101325, 1.2250)]
    [InlineData("H.AP-05", 2000, 275.15, 79501, 1.0066)]
    [InlineData("H.AP-05", 4000, 262.17, 61660, 0.8193)]
    [InlineData("H.AP-06a", 500, 284.90, 95461, 1.1673)]
    [InlineData("H.AP-06a", 1000, 281.65, 89876, 1.1117)]
    [InlineData("H.AP-06a", 2500, 271.91, 74692, 0.9570)]
    public void Atmosphere_thins_with_altitude(string id, double z, double t, double p, double rho)
    {
        var inputs = $"altitude {z} m";
        Check.Relative(id, t, Atmosphere.TemperatureK(z), 1e-4, inputs);
        Check.Relative(id, p, Atmosphere.PressurePa(z), 1e-4, inputs);
        Check.Relative(id, rho, Atmosphere.Density(z), 1e-4, inputs);
    }

    // H.AP-06a, last three: density at 25 degC at altitude. [derived]
    [Theory]
    [InlineData(500, 1.115)]
    [InlineData(1000, 1.050)]
    [InlineData(2500, 0.873)]
    public void Room_air_thins_with_altitude(double z, double rho) =>
        Check.Relative(
            "H.AP-06a",
            rho,
            Air.At(298.15, Atmosphere.PressurePa(z)).Density,
            1e-3,
            $"altitude {z} m, 25 degC"
        );
}
