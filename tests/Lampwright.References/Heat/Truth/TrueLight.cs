namespace Lampwright.References.Heat.Truth;

/// <summary>A light as it is, not as its maker thinks: sizes after the saw, the fan from its carton, the grease as it was spread.</summary>
internal sealed record TrueLight
{
    public required double AcrossM { get; init; }
    public required double AlongM { get; init; }
    public required double BaseM { get; init; }
    public required double ConductivityWPerMK { get; init; }
    public required int Fins { get; init; }
    public required double FinHeightM { get; init; }
    public required double FinM { get; init; }
    public required double Emissivity { get; init; }
    public required double PressurePa { get; init; }
    public required double AmbientK { get; init; }
    public required double TiltRad { get; init; }
    public required (double Across, double Along, double Width, double Depth) Source { get; init; }

    /// <summary>Layer under the emitter with its boundaries, m²K/W, and the junction, K/W.</summary>
    public required double LayerM2KPerW { get; init; }
    public required double JunctionKPerW { get; init; }

    public TrueFan? Fan { get; init; }
    public IReadOnlyList<TrueOpening> Openings { get; init; } = [];

    /// <summary>Share of the air that finds its way past the fins all the same.</summary>
    public double Leak { get; init; }

    /// <summary>How unevenly the air comes to the channels: standard deviation over mean.</summary>
    public double Uneven { get; init; }

    /// <summary>What the fan's turbulence adds to the film of the channels.</summary>
    public double Turbulence { get; init; }

    /// <summary>Air of the room that moves past, m/s.</summary>
    public double DraughtMPerS { get; init; }

    /// <summary>Where between two published correlations this light lies, 0 to 1: film, ends of channels, still film, view of channels.</summary>
    public required (double Film, double Ends, double Still, double View) Between { get; init; }

    /// <summary>Scatter of measured still films about their correlation.</summary>
    public double StillScatter { get; init; } = 1;

    /// <summary>Walls that the sink sees over the air that it is cooled by, K.</summary>
    public double WallsWarmerK { get; init; }

    public double GapM => (AcrossM - Fins * FinM) / (Fins - 1);
}

/// <summary>A fan as it runs: free flow and still pressure after speed, and the form of its curve.</summary>
internal sealed record TrueFan(double FreeM3PerS, double StillPa, double Bend, double Dip)
{
    public double PressurePa(double flow)
    {
        var x = flow / FreeM3PerS;
        return StillPa * Form(x);
    }

    /// <summary>Pressure over still pressure at a share of the free flow: most axial fans lie near a straight line, with a dip where they begin to stall.</summary>
    public double Form(double x) =>
        (1 - x) * (1 + Bend * x) - Dip * Math.Exp(-Math.Pow((x - 0.42) / 0.12, 2)) * (1 - x);
}

/// <summary>A field of holes: open share, diameter, area, how much the edges are broken (factor on the loss), and whether the air leaves there.</summary>
internal sealed record TrueOpening(double OpenShare, double HoleM, double FieldM2, double Edges, bool Leaves);
