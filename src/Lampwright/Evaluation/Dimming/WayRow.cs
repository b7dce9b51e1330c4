namespace Lampwright.Evaluation.Dimming;

/// <summary>Places of the numbers of one way of dimming.</summary>
internal static class WayRow
{
    /// <summary>Least light as a share of that at the driver's own current.</summary>
    public static int LeastShare => 0;

    /// <summary>Most light, the same.</summary>
    public static int MostShare => 1;

    /// <summary>Power in the emitter over power from the supply at half of the light.</summary>
    public static int EfficiencyAtHalf => 2;

    /// <summary>All heat at half of the light but the emitter's, W.</summary>
    public static int HeatAtHalfW => 3;

    /// <summary>The part of it in what was added, W.</summary>
    public static int AddedHeatAtHalfW => 4;

    /// <summary>Least emitter current, A.</summary>
    public static int LeastA => 5;

    /// <summary>Greatest emitter current, A.</summary>
    public static int MostA => 6;

    /// <summary>Count of places.</summary>
    public static int Count => 7;
}
