namespace Lampwright.Files.Charts;

/// <summary>A curve with the area between it and zero filled, so that a gap in it is seen as a gap.</summary>
/// <param name="Name">Name of the series.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Points">Its points, by rising first coordinate.</param>
public sealed record AreaLayer(string Name, Tint Tint, IReadOnlyList<(double X, double Y)> Points)
    : ChartLayer(Name, Tint);

/// <summary>Points that matter, each with its words beside it; words of all such layers keep clear of each other.</summary>
/// <param name="Name">What they have in common.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Pins">The points.</param>
/// <param name="IsOpen">Whether they are drawn as open rings instead of filled dots.</param>
public sealed record PinLayer(string Name, Tint Tint, IReadOnlyList<Pin> Pins, bool IsOpen = false)
    : ChartLayer(Name, Tint);

/// <summary>A point that matters.</summary>
/// <param name="X">First coordinate.</param>
/// <param name="Y">Second coordinate.</param>
/// <param name="Words">What it is, in a few words.</param>
/// <param name="Numbers">Its numbers with their units, as text.</param>
public sealed record Pin(double X, double Y, string Words, string Numbers);

/// <summary>Moments at which something happens, as lines across the chart with names above it.</summary>
/// <param name="Name">What they have in common.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Moments">The moments, in order.</param>
public sealed record MomentLayer(string Name, Tint Tint, IReadOnlyList<Moment> Moments) : ChartLayer(Name, Tint);

/// <summary>A moment at which something happens.</summary>
/// <param name="X">When, on the first axis.</param>
/// <param name="Words">What, in a few words; empty for one that is drawn without a name.</param>
public sealed record Moment(double X, string Words);

/// <summary>Stretches of the first axis that tell what lies in them when they are pointed at; nothing of them is drawn.</summary>
/// <param name="Name">Name of the series.</param>
/// <param name="Tint">Colour of the series.</param>
/// <param name="Tells">The stretches.</param>
public sealed record TellLayer(string Name, Tint Tint, IReadOnlyList<Tell> Tells) : ChartLayer(Name, Tint);

/// <summary>What a stretch of the first axis tells.</summary>
/// <param name="From">Its begin.</param>
/// <param name="To">Its end.</param>
/// <param name="At">Where it is, as text.</param>
/// <param name="Text">What is there, as text with units.</param>
/// <param name="Low">Least number in it.</param>
/// <param name="High">Greatest number in it.</param>
public sealed record Tell(double From, double To, string At, string Text, double Low, double High);
