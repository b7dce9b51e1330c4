using Lampwright.Design;
using Lampwright.Evaluation;

namespace Lampwright.Files.Charts;

/// <summary>The unit that the maker likes to read temperatures in.</summary>
/// <param name="Sign"><c>°C</c> or <c>°F</c>.</param>
/// <param name="Factor">What °C are multiplied by; also for differences in K.</param>
/// <param name="Offset">What is added after that, for temperatures only.</param>
public sealed record TemperatureUnit(string Sign, double Factor, double Offset)
{
    /// <summary>Degrees Celsius.</summary>
    public static TemperatureUnit Celsius { get; } = new("°C", 1, 0);

    /// <summary>Degrees Fahrenheit.</summary>
    public static TemperatureUnit Fahrenheit { get; } = new("°F", 1.8, 32);

    /// <summary>The unit that a design asks for.</summary>
    public static TemperatureUnit Of(Show? show) => show?.Temperature == "degF" ? Fahrenheit : Celsius;

    /// <summary>A temperature given in °C.</summary>
    public double From(double celsius) => (celsius * Factor) + Offset;

    /// <summary>A temperature given in °C.</summary>
    public Predicted From(Predicted celsius) => celsius.In(Factor, Offset);
}
