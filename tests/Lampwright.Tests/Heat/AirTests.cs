using Lampwright.Heat;

namespace Lampwright.Tests.Heat;

public sealed class AirTests
{
    [Fact]
    public void Cheap_air_keeps_within_a_ten_thousandth_of_the_published_formulas()
    {
        for (var t = 200.0; t <= 600; t += 2.5)
        {
            var air = Air.At(t, 101325);
            var density = AirFormulas.MolarDensity(t, 101325);
            Assert.Equal(1, air.Viscosity / AirFormulas.ViscosityPaS(t, density), 1e-4);
            Assert.Equal(1, air.Conductivity / AirFormulas.ConductivityWPerMK(t, density), 1e-4);
            Assert.Equal(1, air.SpecificHeat / AirFormulas.SpecificHeatJPerKgK(t), 1e-4);
        }
    }

    [Fact]
    public void Air_without_temperature_or_pressure_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Air.At(0, 101325));
        Assert.Throws<ArgumentOutOfRangeException>(() => Air.At(300, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Atmosphere.PressurePa(20000));
    }
}
