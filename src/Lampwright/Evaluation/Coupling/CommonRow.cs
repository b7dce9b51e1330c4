namespace Lampwright.Evaluation.Coupling;

/// <summary>Places of the numbers that hold for the whole light, counted from the first of them.</summary>
internal static class CommonRow
{
    public static readonly int ThresholdV = 0;
    public static readonly int LeadOhm = 1;
    public static readonly int Efficiency = 2;
    public static readonly int ReflectorAbsorbs = 3;
    public static readonly int DiffuserAbsorbs = 4;
    public static readonly int AxisCd = 5;
    public static readonly int Evenness = 6;
    public static readonly int InverseSquareError = 7;
    public static readonly int PercentFlicker = 8;
    public static readonly int ShutterResidual = 9;
    public static readonly int CareDistanceM = 10;
    public static readonly int JunctionToCaseK = 11;
    public static readonly int InterfaceK = 12;
    public static readonly int SpreadingK = 13;
    public static readonly int SinkToAirK = 14;
    public static readonly int Count = 15;
}

/// <summary>Places of the numbers of one scene, counted from the scene's first place.</summary>
internal static class SceneRow
{
    public static readonly int AmbientC = 0;
    public static readonly int FlowM3PerH = 1;
    public static readonly int PressurePa = 2;
    public static readonly int SinkKPerW = 3;
    public static readonly int Count = 4;
}

/// <summary>Places of the numbers of one resistor, counted from the resistor's first place.</summary>
internal static class PartRow
{
    public static readonly int MostW = 0;
    public static readonly int DeratedW = 1;
    public static readonly int HottestC = 2;
    public static readonly int Count = 3;
}
