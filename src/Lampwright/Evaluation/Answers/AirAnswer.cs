namespace Lampwright.Evaluation.Answers;

/// <summary>What the fan's air passes, what that costs, and what would be better.</summary>
/// <param name="Losses">Losses at the working point in the scene normal, the costliest first; empty with no fan running.</param>
/// <param name="RunsAtV">Voltage the fan runs at, V; null where it is not given.</param>
/// <param name="FloorV">Least voltage that is advised: where it starts every time, else half of the rated one, V; null where that is not given.</param>
/// <param name="FanSteps">How slow the fan may run on the hottest day, for each switch position; empty where that cannot be said.</param>
/// <param name="Opening">What opening would give the wanted temperature; null where there is none to change, or where nobody asked
/// and the junction has its margin.</param>
public sealed record AirAnswer(
    IReadOnlyList<AirLossAt> Losses,
    double? RunsAtV,
    double? FloorV,
    IReadOnlyList<FanStep> FanSteps,
    OpeningForTemperature? Opening
);

/// <summary>What one thing in the air's way costs.</summary>
/// <param name="Path">Its path in the design file; that of the sink stands for its own channels.</param>
/// <param name="PressurePa">Pressure lost, Pa.</param>
public sealed record AirLossAt(string Path, Predicted PressurePa);

/// <summary>How slow the fan may run at one switch position on the hottest day.</summary>
/// <param name="Switches">Switch position.</param>
/// <param name="LeastV">
/// Least voltage that keeps the junction below its limit, V; its upper end does so for a light whose junction stands at the upper end of its band. Null
/// where none up to the rated one holds it.
/// </param>
/// <param name="IsSafe">False where the rated voltage, which then stands as the upper end, is not enough for such a light.</param>
/// <param name="NoiseDb">Difference of noise against the voltage as set, dB; null without such a voltage.</param>
public sealed record FanStep(string Switches, Predicted? LeastV, bool IsSafe, Predicted? NoiseDb);

/// <summary>The opening that would give a wanted temperature of the sink's base on the hottest day at the brightest position.</summary>
/// <param name="WantedC">The temperature, °C: as given, or that which leaves 10 K at the junction of the nominal light.</param>
/// <param name="Times">How many times the open area of all openings would have to be; 1 as drawn.</param>
/// <param name="IsReached">False when even openings so many times as large leave it hotter.</param>
/// <param name="BaseC">Base with such openings, °C.</param>
/// <param name="Openings">Each opening with its area.</param>
public sealed record OpeningForTemperature(
    double WantedC,
    Predicted Times,
    bool IsReached,
    Predicted BaseC,
    IReadOnlyList<OpeningArea> Openings
);

/// <summary>Area of one opening.</summary>
/// <param name="Path">Its path in the design file.</param>
/// <param name="OpenCm2">Open area as drawn, cm².</param>
/// <param name="WantedCm2">Open area that would give the temperature, cm².</param>
public sealed record OpeningArea(string Path, double OpenCm2, Predicted WantedCm2);
