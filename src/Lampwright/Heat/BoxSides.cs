namespace Lampwright.Heat;

/// <summary>The films inside and outside of a housing in one draw and scene; all explicit.</summary>
internal sealed class BoxSides
{
    // h = 1.42·(ΔT/L)^¼, simplified natural convection of an upright wall in air (memory).
    private const double SimpleFilm = 1.42;

    private readonly BoxSpec spec;
    private readonly double ambientK;
    private readonly double wallFilm;
    private readonly double wallRadiation;
    private readonly double caseFilm;
    private readonly double caseRadiation;
    private readonly double prandtlTerm;

    internal BoxSides(BoxSpec spec, double ambientK, double ventFlowM3PerS)
    {
        this.spec = spec;
        this.ambientK = ambientK;
        var air = Air.At(ambientK, spec.PressurePa);
        prandtlTerm = NaturalFilm.VerticalPlateTerm(air.Prandtl);
        VentWPerK = ventFlowM3PerS * air.Density * air.SpecificHeat;

        // Ra goes with the square of the density, the film with Ra^¼.
        var thin = Math.Sqrt(air.Density / 1.2) * SimpleFilm * spec.Factors.InsideFilm;
        double area = 0,
            perLength = 0;
        foreach (var panel in spec.Compartment)
        {
            area += panel.AreaM2;
            perLength += panel.AreaM2 / Fourth(panel.LengthM);
        }

        // Inside, things are some 20 K over the room.
        var radiation =
            spec.InsideEmissivity * spec.Factors.Emissivity * Radiation.CoefficientBlack(ambientK + 20, ambientK + 20);
        wallFilm = thin * perLength;
        wallRadiation = radiation * Math.Min(spec.DriverCaseM2, area);
        caseFilm = thin * spec.DriverCaseM2 / Fourth(spec.DriverCaseLengthM);
        caseRadiation = radiation * spec.DriverCaseM2;
    }

    /// <summary>Heat that the air through the compartment takes per kelvin, W/K.</summary>
    internal double VentWPerK { get; }

    /// <summary>Heat that panels give to the room, W.</summary>
    internal double OutW(IReadOnlyList<Panel> panels, double riseK)
    {
        if (!(riseK > 0))
        {
            return 0;
        }

        var film = Air.At(ambientK + riseK / 2, spec.PressurePa);
        var sum = 0.0;
        for (var i = 0; i < panels.Count; i++)
        {
            sum += panels[i].HeatW(riseK, ambientK, film, prandtlTerm, spec.Factors);
        }

        return sum;
    }

    /// <summary>Heat that one panel gives to the room, W.</summary>
    internal double OutW(Panel panel, double riseK) =>
        riseK > 0
            ? panel.HeatW(riseK, ambientK, Air.At(ambientK + riseK / 2, spec.PressurePa), prandtlTerm, spec.Factors)
            : 0;

    /// <summary>Air over the inside of the panels, K, when they pass a heat.</summary>
    internal double InsideDropK(double heatW) => DropK(wallFilm, wallRadiation, heatW);

    /// <summary>Driver's case over the air, K; 0 where its area is not known.</summary>
    internal double CaseDropK(double heatW) => CaseIsKnown ? DropK(caseFilm, caseRadiation, heatW) : 0;

    /// <summary>True where the area of the driver's case is given: a square millimetre or more.</summary>
    internal bool CaseIsKnown => spec.DriverCaseM2 >= 1e-6;

    /// <summary>Heat of the driver's case at a rise over the air, W.</summary>
    internal double CaseW(double riseK) => (caseFilm * Fourth(riseK) + caseRadiation) * riseK;

    /// <summary>Solution of (c·x^¼ + g)·x = heat by Newton; the function is convex and rising, so it cannot run away.</summary>
    private static double DropK(double c, double g, double heatW)
    {
        if (heatW <= 0 || !(c + g > 0))
        {
            return 0;
        }

        // Both parts alone give more than the sum does: start at the smaller and come down.
        var byRadiation = g > 0 ? heatW / g : double.PositiveInfinity;
        var byFilm = c > 0 ? Math.Pow(heatW / c, 0.8) : double.PositiveInfinity;
        var x = Math.Min(byRadiation, byFilm);
        for (var i = 0; i < 20; i++)
        {
            var film = c * Fourth(x);
            var step = ((film + g) * x - heatW) / (1.25 * film + g);
            x -= step;
            if (Math.Abs(step) < 1e-13 * x)
            {
                break;
            }
        }

        return x;
    }

    private static double Fourth(double x) => Math.Sqrt(Math.Sqrt(x));
}
