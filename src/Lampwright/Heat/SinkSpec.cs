namespace Lampwright.Heat;

/// <summary>How the fan's air passes the fins.</summary>
public enum AirEntry
{
    /// <summary>In at one end of the channels, out at the other.</summary>
    Ends,

    /// <summary>In at the fin tips and out at both ends, or the other way round.</summary>
    Tips,
}

/// <summary>A sink of plate fins, of pins, of a stack on heat pipes or a plain plate, with its fan and the openings its air passes.</summary>
/// <remarks>
/// The draws change any scalar with <c>with</c>. Footprints, the fan's points, the base thickness within the spreading series and the
/// channel's view factor stay as <see cref="SinkModel.Prepare"/> saw them.
/// </remarks>
public sealed record SinkSpec
{
    /// <summary>Base across the fins, m, above 0.</summary>
    public required double AcrossM { get; init; }

    /// <summary>Base along the fins, m, above 0.</summary>
    public required double AlongM { get; init; }

    /// <summary>Thickness of the base, m, above 0.</summary>
    public required double BaseThicknessM { get; init; }

    /// <summary>Conductivity of base and fins, W/(m·K), above 0.</summary>
    public required double ConductivityWPerMK { get; init; }

    /// <summary>Number of fins; fewer than 2 is a plain plate.</summary>
    public int FinCount { get; init; }

    /// <summary>Height of the fins over the base, m.</summary>
    public double FinHeightM { get; init; }

    /// <summary>Thickness of a fin, m.</summary>
    public double FinThicknessM { get; init; }

    /// <summary>Pins instead of fins; null where there are none.</summary>
    public PinArray? Pins { get; init; }

    /// <summary>A stack of plates on heat pipes instead of fins; null where there is none.</summary>
    public HeatPipeTower? Tower { get; init; }

    /// <summary>What stands on the base.</summary>
    public SinkForm Form =>
        Tower is not null ? SinkForm.Tower
        : Pins is not null ? SinkForm.Pins
        : FinCount >= 2 ? SinkForm.Fins
        : SinkForm.Plate;

    /// <summary>Where the emitters' backs touch; only the ratio of their shares counts. At least one.</summary>
    public required IReadOnlyList<Footprint> Footprints { get; init; }

    /// <summary>Emissivity of the fins, 0 to 1.</summary>
    public double Emissivity { get; init; } = 0.08;

    /// <summary>Pressure of the air, Pa.</summary>
    public double PressurePa { get; init; } = 101325;

    /// <summary>Angle between the channels and the vertical, rad, 0 (air can rise through) to π/2 (channels level).</summary>
    public double ChannelTiltRad { get; init; }

    /// <summary>
    /// How far the face that the fins stand on looks up, -1 (straight down) to 1; 0 for a base that stands upright. Null takes a level sink to
    /// look up.
    /// </summary>
    public double? FaceUp { get; init; }

    /// <summary>Share of the sink's faces that radiate to the room or to walls near its temperature, 0 to 1.</summary>
    public double OpenShare { get; init; } = 1;

    /// <summary>The fan; null where there is none.</summary>
    public FanSpec? Fan { get; init; }

    /// <summary>How the fan's air passes the fins.</summary>
    public AirEntry Entry { get; init; } = AirEntry.Ends;

    /// <summary>Share of the fan's air that passes beside the fins, 0 to 0.95 (<see cref="Bypass.Share"/>).</summary>
    public double BypassShare { get; init; }

    /// <summary>What the air passes besides the fins.</summary>
    public IReadOnlyList<AirLoss> AirLosses { get; init; } = [];

    /// <summary>True where the sink stands in a housing, so that with the fan stopped its air must pass the openings.</summary>
    public bool Housed { get; init; }

    /// <summary>
    /// Height that warm air rises between the openings of the housing when no fan runs, m, 0 or above; null takes the height the sink
    /// itself stands, by its tilt. Used when housed.
    /// </summary>
    public double? DraftHeightM { get; init; }

    /// <summary>
    /// Heat that the housing's walls let through per kelvin of the air inside, W/K, 0 or above; null takes 4 W/(m²·K), two still films in a
    /// row, over the outline of the sink (common practice, no source). Used when housed.
    /// </summary>
    public double? HousingConductanceWPerK { get; init; }

    /// <summary>Errors of the methods; 1 at nominal.</summary>
    public HeatFactors Factors { get; init; } = HeatFactors.Nominal;

    /// <summary>Gap between two fins, m; zero or below where they do not fit.</summary>
    public double GapM => FinCount < 2 ? AcrossM : (AcrossM - FinCount * FinThicknessM) / (FinCount - 1);

    /// <summary>Shares of gravity along the channels, up out of the face, and across the channels, each 0 to 1 but the second -1 to 1.</summary>
    internal (double Along, double Up, double Across) Gravity
    {
        get
        {
            double along = Math.Abs(Math.Cos(ChannelTiltRad)),
                rest = Math.Sqrt(Math.Max(0, 1 - (along * along))),
                up = Math.Clamp(FaceUp ?? rest, -rest, rest);
            return (along, up, Math.Sqrt(Math.Max(0, (rest * rest) - (up * up))));
        }
    }

    /// <summary>Heat of other emitters on the base, the same at every step, W.</summary>
    internal double OtherW
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Footprints.Count; i++)
            {
                sum += Footprints[i].OtherW;
            }

            return sum;
        }
    }

    /// <summary>Height of what stands on the base, m.</summary>
    internal double StandingM =>
        Form switch
        {
            SinkForm.Tower => Tower!.HeightM,
            SinkForm.Pins => Pins!.HeightM,
            _ => FinHeightM,
        };

    /// <summary>From the roots of the fins back to the base, K/W; 0 but for heat pipes.</summary>
    internal double RootKPerW => Tower is null ? 0 : Tower.PipesKPerW * Factors.HeatPipes;

    /// <summary>Height that warm air rises in the housing, m: as given, or the sink's own.</summary>
    internal double DraftM =>
        DraftHeightM
        ?? AlongM * Math.Abs(Math.Cos(ChannelTiltRad)) + (BaseThicknessM + StandingM) * Math.Sin(ChannelTiltRad);

    /// <summary>Conductance of the housing's walls, W/K: as given, or two still films over the sink's outline.</summary>
    internal double WallsWPerK =>
        HousingConductanceWPerK ?? 4.0 * (AcrossM * AlongM + 2 * (AcrossM + AlongM) * (BaseThicknessM + StandingM));

    /// <summary>Edges of the base all round, m²: on a small thick plate as much as its face.</summary>
    internal double EdgesM2 => 2 * (AcrossM + AlongM) * BaseThicknessM;

    /// <summary>Free area over frontal area between the fins, 0 to 1.</summary>
    public double OpenRatio => FinCount < 2 ? 1 : Math.Max(0, (FinCount - 1) * GapM / AcrossM);
}
