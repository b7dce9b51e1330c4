namespace Lampwright.Heat;

/// <summary>A housing whose warm air leaves by its own draft and through the walls.</summary>
/// <remarks>
/// Draft: weight of the warm column against the losses of the openings, ρ·g·H·ΔT/T = a·Q² + b·Q.
/// Source: common form of stack flow, ideal gas. Checked by: invariant (heat in is heat out).
/// </remarks>
internal readonly struct Housing
{
    private readonly double draftPaM;
    private readonly double quadratic;
    private readonly double laminar;
    private readonly double capacityPerFlow;
    private readonly double wallsWPerK;
    private readonly double ambientK;

    /// <summary>The housing of a sink in a scene.</summary>
    internal Housing(in SinkScene scene)
        : this(scene.Cool, scene.Path, scene.Spec.DraftM, scene.Spec.WallsWPerK * scene.Spec.Factors.InsideFilm) { }

    /// <summary>A housing with openings and walls.</summary>
    /// <param name="cool">Air of the room.</param>
    /// <param name="path">What the air passes.</param>
    /// <param name="draftHeightM">Height of the warm column, m, 0 or above.</param>
    /// <param name="wallsWPerK">Conductance of the walls, W/K.</param>
    internal Housing(in Air cool, in AirPath path, double draftHeightM, double wallsWPerK)
    {
        ambientK = cool.TemperatureK;
        draftPaM = cool.Density * Physics.Gravity * Math.Max(0, draftHeightM);
        quadratic = 0.5 * cool.Density * path.QuadraticPerM4 * path.OpeningFactor;
        laminar = cool.Viscosity * path.LaminarPerM3 * path.OpeningFactor;
        capacityPerFlow = cool.Density * cool.SpecificHeat;
        this.wallsWPerK = wallsWPerK;
    }

    /// <summary>Heat that leaves with the air inside at a rise over the room, W.</summary>
    internal double LeavesW(double airRiseK) => (FlowM3PerS(airRiseK) * capacityPerFlow + wallsWPerK) * airRiseK;

    /// <summary>Flow by draft, m³/s.</summary>
    internal double FlowM3PerS(double airRiseK)
    {
        var pressure = draftPaM * airRiseK / (ambientK + airRiseK);
        if (pressure <= 0 || !double.IsFinite(quadratic) || !double.IsFinite(laminar))
        {
            return 0;
        }

        var denominator = laminar + Math.Sqrt(laminar * laminar + 4 * quadratic * pressure);
        return denominator > 0 ? 2 * pressure / denominator : 1e3;
    }
}
