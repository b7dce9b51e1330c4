namespace Lampwright.References.Heat.SecondTruth;

/// <summary>Outer faces in the air of a room: still but for its draughts, at any tilt.</summary>
/// <remarks>
/// Thin layer and turbulent limits joined by Raithby and Hollands, as in Rohsenow, Hartnett and Cho, Handbook of Heat Transfer, 3rd ed. (1998), chapter 4
/// (from memory): conduction layer Nu = 2.0/ln(1 + 2.0/(0.515·Ra^¼)) on a vertical plate in air, 2.8/ln(1 + 2.8/(0.835·0.515·Ra^¼)) on one that
/// looks up with Ra on area over perimeter, 2.5/ln(1 + 2.5/(0.527·Ra^(1/5)/(1 + (1.9/Pr)^0.9)^(2/9))) on one that looks down. At a tilt the
/// greatest of the three, each with its share of gravity, counts. Scatter 6 %: Jaffer, Thermo 3 (2023) 148, finds 3.8 to 5.4 % rms between
/// such formulas and the published measurements of plates at each tilt. A room's air moves at up to 0.1 m/s even where nobody
/// feels it (ISO 7730, draught limits; from memory), which the laminar plate of Pohlhausen turns into a film that joins in cubes.
/// </remarks>
internal sealed class Faces(double kelvin, double pascal, double draughtMPerS, double factor)
{
    private static readonly double StefanBoltzmann = 5.670e-8;

    /// <summary>Heat of a face by convection, W.</summary>
    /// <param name="areaM2">Area, m².</param>
    /// <param name="lengthM">Length up the face, m.</param>
    /// <param name="perimeterM">Perimeter, m.</param>
    /// <param name="up">How far it looks up, -1 to 1.</param>
    /// <param name="riseK">Rise over the air, K.</param>
    public double ConvectedW(double areaM2, double lengthM, double perimeterM, double up, double riseK)
    {
        if (areaM2 <= 0 || riseK <= 0)
        {
            return 0;
        }

        var air = new Gas(kelvin + riseK / 2, pascal);
        var across = areaM2 / perimeterM;
        double steep = Math.Sqrt(Math.Max(0, 1 - up * up)),
            upright = Math.Pow(air.Rayleigh(riseK, lengthM) * steep + 1e-9, 0.25) * 0.515,
            over = air.Rayleigh(riseK, across) * Math.Max(0, up),
            under = air.Rayleigh(riseK, across) * Math.Max(0, -up);
        var h = Layer(2.0, upright) * air.Conductivity / lengthM;
        if (over > 1)
        {
            h = Math.Max(h, Layer(2.8, 0.835 * 0.515 * Math.Pow(over, 0.25)) * air.Conductivity / across);
        }

        if (under > 1)
        {
            h = Math.Max(
                h,
                Layer(2.5, 0.527 * Math.Pow(under, 0.2) / Math.Pow(1 + Math.Pow(1.9 / 0.71, 0.9), 2.0 / 9))
                    * air.Conductivity
                    / across
            );
        }

        var drawn = 0.664 * Math.Sqrt(draughtMPerS * lengthM / air.Nu) * 0.892 * air.Conductivity / lengthM;
        return Math.Cbrt(Math.Pow(h * factor, 3) + Math.Pow(drawn, 3)) * areaM2 * riseK;
    }

    /// <summary>Heat of a face by radiation to a room at the air's temperature, W.</summary>
    public double RadiatedW(double areaM2, double emissivity, double riseK) =>
        areaM2 * emissivity * StefanBoltzmann * (Math.Pow(kelvin + riseK, 4) - Math.Pow(kelvin, 4));

    private static double Layer(double c, double thin) => c / Math.Log(1 + c / Math.Max(thin, 1e-9));
}
