using Lampwright.Evaluation;

namespace Lampwright.Files.Charts;

/// <summary>A chart: axes and layers, without a size or a place to be drawn on.</summary>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="X">First axis.</param>
/// <param name="Y">Second axis.</param>
/// <param name="Layers">What is drawn, from the back to the front.</param>
public sealed record Chart(string Title, Axis X, Axis Y, IReadOnlyList<ChartLayer> Layers)
{
    /// <summary>One sentence that says what to see in it; also its description for people who hear the page.</summary>
    public string Says { get; init; } = "";

    /// <summary>True when one unit is as long on both axes, as on a map.</summary>
    public bool IsToScale { get; init; }

    /// <summary>A second upward axis at the right, for layers that are <see cref="ChartLayer.OnSecond"/>; null for none.</summary>
    public Axis? Second { get; init; }
}

/// <summary>An axis.</summary>
/// <param name="Label">What it counts.</param>
/// <param name="Unit">Unit, or empty.</param>
public sealed record Axis(string Label, string Unit)
{
    /// <summary>Least value shown; null takes it from what is drawn.</summary>
    public double? Least { get; init; }

    /// <summary>Most value shown; null takes it from what is drawn.</summary>
    public double? Most { get; init; }

    /// <summary>Names of the places 0, 1, 2 … instead of numbers; empty for an axis of numbers.</summary>
    public IReadOnlyList<string> Places { get; init; } = [];

    /// <summary>Distance of ticks; null lets the axis choose.</summary>
    public double? Tick { get; init; }

    /// <summary>Label and unit in one.</summary>
    public string Caption => Unit.Length == 0 ? Label : $"{Label}, {Unit}";
}

/// <summary>Something that a chart draws.</summary>
/// <param name="Name">Name of the series, shown beside it; empty for none.</param>
/// <param name="Tint">Colour.</param>
public abstract record ChartLayer(string Name, Tint Tint)
{
    /// <summary>Whether it is read on the axis at the right; only where the chart has one.</summary>
    public bool OnSecond { get; init; }
}

/// <summary>A curve.</summary>
/// <param name="Name">Name of the series.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Points">Its points.</param>
/// <param name="Dashed">Whether it is dashed.</param>
public sealed record LineLayer(string Name, Tint Tint, IReadOnlyList<(double X, double Y)> Points, bool Dashed = false)
    : ChartLayer(Name, Tint)
{
    /// <summary>How many of its points tell their number when pointed at, evenly taken.</summary>
    public int MostReadouts { get; init; } = int.MaxValue;

    /// <summary>Width of the line against that of other curves.</summary>
    public double Boldness { get; init; } = 1;
}

/// <summary>Predicted numbers at places: a dot for the nominal, a bar for the band.</summary>
/// <param name="Name">Name of the series.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Points">Place and number.</param>
/// <param name="Joined">Whether a thin line leads from dot to dot.</param>
/// <param name="Shift">Sideways shift of the dots in shares of a place, so that series stand beside each other.</param>
public sealed record DotLayer(
    string Name,
    Tint Tint,
    IReadOnlyList<(double X, Predicted Y)> Points,
    bool Joined = false,
    double Shift = 0
) : ChartLayer(Name, Tint);

/// <summary>Bars that stand between two levels, as the steps of a staircase.</summary>
/// <param name="Name">Name of the series.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Bars">Place, lower level, upper level, the number it shows and its text.</param>
public sealed record BarLayer(string Name, Tint Tint, IReadOnlyList<Bar> Bars) : ChartLayer(Name, Tint);

/// <summary>A bar between two levels.</summary>
/// <param name="X">Place.</param>
/// <param name="From">One level.</param>
/// <param name="To">Other level.</param>
/// <param name="Size">The number it shows.</param>
/// <param name="Text">What stands beside it.</param>
public sealed record Bar(double X, double From, double To, Predicted Size, string Text);

/// <summary>A level that matters, across the whole chart.</summary>
/// <param name="Name">What it is, shown at its end.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Level">The level.</param>
public sealed record LevelLayer(string Name, Tint Tint, double Level) : ChartLayer(Name, Tint);

/// <summary>One point that matters, with its name beside it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Tint">Colour.</param>
/// <param name="X">First coordinate.</param>
/// <param name="Y">Second coordinate, with its band.</param>
/// <param name="XBand">Band of the first coordinate; null for none.</param>
public sealed record MarkLayer(string Name, Tint Tint, double X, Predicted Y, Predicted? XBand = null)
    : ChartLayer(Name, Tint);

/// <summary>A field of shares over the whole area of the axes, as a map.</summary>
/// <param name="Name">Name of the series.</param>
/// <param name="Tint">Colour of the most.</param>
/// <param name="Rows">Shares, rows from bottom to top.</param>
public sealed record CellsLayer(string Name, Tint Tint, IReadOnlyList<IReadOnlyList<double>> Rows)
    : ChartLayer(Name, Tint);
