namespace Lampwright.References.Heat.SecondTruth;

/// <summary>How the air gets to the fins.</summary>
internal enum Ways
{
    /// <summary>By its own warmth, channels upright or leaning.</summary>
    Rising,

    /// <summary>By its own warmth, channels level and open to above.</summary>
    Level,

    /// <summary>Blown in at one end.</summary>
    Blown,

    /// <summary>Blown at the tips, out at both ends.</summary>
    BlownAtTips,
}

/// <summary>A sink as it stands on the bench, with all that its maker cannot know. SI.</summary>
internal sealed record Reality
{
    // Of a tower the stack: across is up the stack, a fin's height is a plate's width.
    public required double AcrossM { get; init; }
    public required double AlongM { get; init; }
    public required double BaseM { get; init; }
    public required double Conductivity { get; init; }
    public int Fins { get; init; }
    public double FinM { get; init; }
    public double HeightM { get; init; }
    public double GapM { get; init; }
    public required double Emissivity { get; init; }
    public required double AmbientK { get; init; }
    public required double Pascal { get; init; }

    /// <summary>Angle of the channels to the vertical, rad, and how far the finned face looks up.</summary>
    public double TiltRad { get; init; }
    public double FaceUp { get; init; }
    public Ways Way { get; init; }

    /// <summary>Factor on the film between the fins: scatter of measurements about the marched channel.</summary>
    public double FilmFactor { get; init; } = 1;

    /// <summary>Factor on the film of the outer faces, and the draught of the room, m/s.</summary>
    public double FaceFactor { get; init; } = 1;
    public double DraughtMPerS { get; init; }

    /// <summary>The fan, the holes its air passes, and other losses as heads on an area.</summary>
    public Blower? Blower { get; init; }
    public IReadOnlyList<Holes> Vents { get; init; } = [];
    public (double Heads, double AreaM2)[] Turns { get; init; } = [];

    /// <summary>A filter's pressure at a flow; null for none.</summary>
    public (double Pa, double Flow)? Filter { get; init; }

    /// <summary>Speeds of a fifth of the channels each, over their mean: what the hub and the swirl make of the fan's air.</summary>
    public double[] Shares { get; init; } = [1, 1, 1, 1, 1];

    /// <summary>Factor on the pressure between the fins.</summary>
    public double DragFactor { get; init; } = 1;

    /// <summary>Chink between the sink and the duct, on three sides, m.</summary>
    public double ChinkM { get; init; }

    /// <summary>Walls of the housing round a stopped fan: area, factor on their films, height of the draft; 0 in the open.</summary>
    public double WallsM2 { get; init; }
    public double WallFactor { get; init; } = 1;
    public double DraftM { get; init; }

    /// <summary>From the base to the roots, K/W: heat pipes; 0 where the fins stand on the base.</summary>
    public double PipesKPerW { get; init; }

    /// <summary>Pipes that a plate sits on, their diameter, and the radius of a ring as large as a pipe's part of the plate; null for fins.</summary>
    public (int Count, double PipeM, double RoundM)? OnPipes { get; init; }

    /// <summary>Back of the base that the emitter leaves free, m².</summary>
    public double BackM2 { get; init; }

    /// <summary>Face of the base, m².</summary>
    public double FootM2 { get; init; }
}
