namespace Lampwright.Evaluation.Coupling;

/// <summary>Places of the numbers of one switch position in one scene, counted from the position's first place.</summary>
internal static class PositionRow
{
    public static readonly int ResistanceOhm = 0;
    public static readonly int CurrentA = 1;
    public static readonly int VoltageV = 2;
    public static readonly int EmitterW = 3;
    public static readonly int FluxLm = 4;
    public static readonly int FluxOutLm = 5;
    public static readonly int Lux = 6;
    public static readonly int Stops = 7;
    public static readonly int Ev = 8;
    public static readonly int Aperture = 9;
    public static readonly int HeatW = 10;
    public static readonly int JunctionC = 11;
    public static readonly int CaseC = 12;
    public static readonly int SinkC = 13;
    public static readonly int DriverC = 14;
    public static readonly int CompartmentC = 15;
    public static readonly int FrontC = 16;
    public static readonly int DriverLossW = 17;
    public static readonly int InputW = 18;
    public static readonly int CurrentMarginA = 19;
    public static readonly int JunctionMarginK = 20;

    /// <summary>Powers of the resistors follow, the fixed one first.</summary>
    public static readonly int FirstResistorW = 21;
}
