namespace Lampwright.Tables;

/// <summary>The known error of a published method, drawn once as a named variable in Evaluation.</summary>
/// <param name="Name">Name of the variable, for example <c>heat.channel_film</c>.</param>
/// <param name="HalfWidth">Relative half-width of the 5 to 95 % band (0.08 is ±8 %), normally distributed.</param>
/// <param name="Source">Where the figure comes from.</param>
public sealed record MethodError(string Name, double HalfWidth, string Source);
