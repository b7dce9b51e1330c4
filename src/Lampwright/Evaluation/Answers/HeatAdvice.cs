namespace Lampwright.Evaluation.Answers;

/// <summary>What limits the light in heat, and what one change would help most. At nominal values.</summary>
/// <param name="Limits">Each temperature against its limit, the nearest first; never empty.</param>
/// <param name="Helps">Changes of one stated step each, the one that helps most at the nearest limit first; each makes that or the junction cooler and neither hotter.</param>
public sealed record HeatAdvice(IReadOnlyList<HeatLimit> Limits, IReadOnlyList<HeatHelp> Helps)
{
    /// <summary>The limit that is nearest.</summary>
    public HeatLimit Nearest => Limits[0];
}

/// <summary>One temperature against its limit, brightest position.</summary>
/// <param name="What">What gets hot: <c>junction</c>, <c>driver</c>, <c>diffuser</c>, <c>front</c>, <c>sink</c>.</param>
/// <param name="Scene">The scene it is taken in.</param>
/// <param name="Path">Path of the limit in the design file, or of the thing where the limit is a standard's.</param>
/// <param name="ValueC">Temperature, °C.</param>
/// <param name="LimitC">Limit, °C.</param>
public sealed record HeatLimit(string What, string Scene, string Path, double ValueC, double LimitC)
{
    /// <summary>What is left, K; negative is too hot.</summary>
    public double MarginK => LimitC - ValueC;
}

/// <summary>One change and what comes of it; differences of two nominal results.</summary>
/// <param name="Path">Path of the value in the design file.</param>
/// <param name="Step">The change in words, with its numbers.</param>
/// <param name="LimitK">Change of the temperature at the nearest limit, K; negative is cooler.</param>
/// <param name="JunctionK">Change of the junction, scene hot, brightest position, K.</param>
/// <param name="SkinK">Change of the hottest skin, scene hot, K.</param>
/// <param name="MassKg">Mass that it adds, kg; negative is lighter, 0 where it adds none.</param>
/// <param name="NoiseDb">Noise that it adds by the fan laws, dB; 0 where it adds none.</param>
/// <param name="LightStops">Change of the brightest light, stops, scene normal; a cooler emitter gives a little more.</param>
/// <param name="Cost">What else it costs, in words.</param>
public sealed record HeatHelp(
    string Path,
    string Step,
    double LimitK,
    double JunctionK,
    double SkinK,
    double MassKg,
    double NoiseDb,
    double LightStops,
    string Cost
);
